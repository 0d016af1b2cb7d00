package hotidle.answer.phrase;

/** How many limits of a build fail, are not known, close and hold. */
public final class LimitCountPhrase {

    private LimitCountPhrase() {}

    public static String of(int duties, long fail, long notKnown, long close, long hold) {
        return "Of " + CountPhrase.of(fail + notKnown + close + hold, "limit") + " at "
                + CountPhrase.of(duties, "driving condition") + ": " + fail
                + (fail == 1 ? " fails, " : " fail, ") + notKnown + " not known, " + close + " narrow, " + hold
                + (hold == 1 ? " holds." : " hold.");
    }
}
