package hotidle.answer.phrase;

/** What stands over and beside the chart of one part on its own. */
public final class PartChartPhrase {

    private PartChartPhrase() {}

    /** Over it: what is drawn against what is varied. */
    public static String title(boolean film, String kind, String varied) {
        return (film ? "Least film" : "Flow") + " of " + ArticlePhrase.of(kind) + " against " + varied;
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
