package hotidle.circuits.text;

/**
 * What is wrong, wherever it stands.
 *
 * @param code    what sort of thing
 * @param subject whose fault it is, for example "orifice 'cooler-feed'"; empty where the sentence says it
 * @param key     that it concerns; empty for none in particular
 * @param says    what is wrong, a sentence that goes on from the subject
 * @param why     the rule that is broken; empty where the sentence says it
 * @param remedy  what to write instead
 */
public record Fault(ProblemCode code, String subject, String key, String says, String why, Remedy remedy) {

    /** Longest sentence, since what a user wrote stands in it. */
    private static final int LONGEST = 300;

    /** Keeps no more of what a user wrote than may be shown. */
    public Fault {
        subject = cut(subject);
        says = cut(says);
    }

    /** A fault whose sentence is complete. */
    public static Fault of(ProblemCode code, String message, String why, String mend) {
        return new Fault(code, "", "", message, why, Remedy.words(mend));
    }

    /** Whether it is that a key is missing in the part of this label. */
    public boolean misses(String label, String name) {
        return code == ProblemCode.MISSING_KEY && subject.equals(label) && key.equals(name);
    }

    /** The same with another remedy. */
    public Fault with(Remedy other) {
        return new Fault(code, subject, key, says, why, other);
    }

    /** What is wrong, in one line. */
    public String message() {
        String oneLine = cut(subject.isEmpty() ? says : subject + " " + says).replaceAll("\\s+", " ");
        return oneLine.length() > LONGEST ? oneLine.substring(0, LONGEST) + "..." : oneLine;
    }

    private static String cut(String text) {
        return text.length() > 2 * LONGEST ? text.substring(0, 2 * LONGEST) : text;
    }
}
