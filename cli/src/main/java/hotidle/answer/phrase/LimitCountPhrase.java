package hotidle.answer.phrase;

/** How many limits of a build fail, are not known, close and hold. */
public final class LimitCountPhrase {

    private LimitCountPhrase() {}

    public static String of(int duties, long fail, long notKnown, long close, long hold) {
        return "Of " + (fail + notKnown + close + hold) + " limits at " + duties + " driving conditions: " + fail
                + " fail, " + notKnown + " not known, " + close + " narrow, " + hold + " hold.";
    }
}
