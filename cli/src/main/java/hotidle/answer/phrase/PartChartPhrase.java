package hotidle.answer.phrase;

/** What stands over and beside the chart of one part on its own. */
public final class PartChartPhrase {

    private PartChartPhrase() {}

    /** Over it where nothing is known at one of its ends: what is drawn against what is varied. */
    public static String title(boolean film, String kind, String varied) {
        return (film ? "Least film" : "Flow") + " of " + ArticlePhrase.of(kind) + " against " + varied;
    }

    /**
     * Over it: what comes of it.
     *
     * @param first value at the first of what is varied, with its unit
     * @param from  that, with its unit
     */
    public static String finding(
            boolean film, String kind, String varied, String first, String from, String last, String to) {
        return (film ? "Least film" : "Flow") + " of " + ArticlePhrase.of(kind) + ": " + first + " at " + varied + " "
                + from + ", " + last + " at " + to;
    }

    /** Beside it. */
    public static String axis(boolean film, String unit) {
        return (film ? "least film" : "flow") + " [" + unit + "]";
    }

    /** Why it has a gap. */
    public static String gap(boolean film) {
        return film ? "metal contact" : "unsolved";
    }

    /** What stands from port to port. */
    public static String drop(String pressure) {
        return "pressure drop " + pressure;
    }
}
