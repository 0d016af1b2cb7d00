package hotidle.answer.phrase;

/** How much a circuit file holds. */
public final class CircuitHoldsPhrase {

    private CircuitHoldsPhrase() {}

    /** All of it in one line. */
    public static String of(String circuit, int nodes, int parts, int builds, int sizes, int warnings) {
        return circuit + ": no mistake found, " + CountPhrase.of(warnings, "warning") + " ("
                + CountPhrase.of(nodes, "node")
                + ", " + CountPhrase.of(parts, "part") + ", " + CountPhrase.of(builds, "build") + ", "
                + CountPhrase.of(sizes, "size") + " that wear)";
    }
}
