package hotidle.answer.phrase;

/** How many there are of something. */
public final class CountPhrase {

    private CountPhrase() {}

    /** A number with its noun, whose plural has an s: 1 node, 2 nodes. */
    public static String of(long count, String noun) {
        return count + " " + noun + (count == 1 ? "" : "s");
    }
}
