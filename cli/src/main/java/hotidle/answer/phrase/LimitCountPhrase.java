package hotidle.answer.phrase;

/** How many limits of a build fail, are close and hold. */
public final class LimitCountPhrase {

    private LimitCountPhrase() {}

    public static String of(int duties, long fail, long close, long hold) {
        return "Of " + (fail + close + hold) + " limits at " + duties + " duty points: " + fail + " fail, " + close
                + " close, " + hold + " hold.";
    }
}
