package hotidle.answer.phrase;

import java.util.List;

/** What is said of a circuit file that is written on the live page. */
public final class WrittenCircuitPhrase {

    private WrittenCircuitPhrase() {}

    /** Of a drawing of a file with errors. */
    public static final String NOT_DRAWN = "a file with errors is not drawn; mend them first";

    /** Of a file that is too long [kB]. */
    public static String tooLong(int kilobytes) {
        return "a circuit of more than " + kilobytes + " kB is not checked here; save it and ask 'hotidle check'";
    }

    /** Of a circuit that is not ready. */
    public static String notReady(String name, List<String> ready) {
        return "there is no ready circuit " + name + "; ready circuits: " + String.join(", ", ready);
    }
}
