package hotidle.answer.phrase;

/** Words in the picture of drawn units. */
public final class SpreadPicturePhrase {

    public static final String HOLDS = "holds";
    public static final String FAILS = "FAILS";
    public static final String OPEN = "not known";
    public static final String INTERVAL = "share that holds, with the 95 % interval of its sampling error";
    public static final String UNITS_ACROSS = "share of the units drawn [%]";
    public static final String WORTH_ACROSS =
            "part of the doubt whether limits hold that is gone once it is measured [%]";
    public static final String SETTLES = "settles, with its standard error";

    private SpreadPicturePhrase() {}

    /** How many of the units drawn are sound. */
    public static String title(String build, String share, long units) {
        return build + ": all limits hold in " + share + " of " + CountPhrase.of(units, "unit") + " drawn";
    }

    /** At which driving conditions. */
    public static String subtitle(String circuit, java.util.List<String> duties) {
        return circuit + " at " + String.join(", ", duties) + "; limits that do not hold in every unit, worst first";
    }

    /** The same where each holds in every unit. */
    public static String sure(String circuit, java.util.List<String> duties) {
        return circuit + " at " + String.join(", ", duties) + "; every limit holds in every unit, closest first";
    }

    /** What is most worth measuring. */
    public static String worth(String fit) {
        return "Most worth measuring before the build: " + fit;
    }

    /** The same where nothing stands out. */
    public static final String NO_WORTH = "No fit stands out of the sampling error; draw more with --pairs";
}
