package hotidle.answer.phrase;

/** That regulation is not judged, why, and what to write to have it judged. */
public final class NotCommandedPhrase {

    /** There is no valve that could regulate. */
    public static final String NO_VALVE =
            "Regulation is not judged: the circuit has no spool-valve, so nothing in it regulates the line.";

    private NotCommandedPhrase() {}

    /** Of a circuit in which more than one valve may be meant, or none for sure. */
    public static String anyValve() {
        return write("<node>", "<spool-valve>", "<its first opening>");
    }

    /** The section to write, by names of the circuit: the line, the valve that regulates it and its first opening. */
    public static String write(String line, String regulator, String edge) {
        return "Regulation is not judged: the circuit asks for no line pressure that could be held. To have it judged add"
                + " command: {line: " + line + ", regulator: " + regulator + ", edge: " + edge
                + "}, then the spring's own set pressure is what must be held; with a solenoid also solenoid,"
                + " line-pressure and pilot-pressure (circuits/README.md, step 4).";
    }
}
