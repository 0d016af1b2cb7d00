package hotidle.answer.format;

/** Breaks text into lines of a width, at blanks. */
public final class Wrap {

    /** Characters in a line of text that is meant to be read (chosen). */
    public static final int WIDTH = 100;

    /** Lines of a first screen, which a terminal shows without scrolling (chosen). */
    public static final int LINES = 24;

    private Wrap() {}

    /**
     * The text in lines; a number stays with its percent sign.
     *
     * @param first  in front of the first line
     * @param others in front of all others
     */
    public static String lines(String text, String first, String others) {
        StringBuilder all = new StringBuilder();
        StringBuilder line = new StringBuilder(first);
        boolean empty = true;
        for (String word : text.strip().split("\\s+(?!%)", -1)) {
            if (!empty && line.length() + 1 + word.length() > WIDTH) {
                all.append(line.toString().stripTrailing()).append('\n');
                line = new StringBuilder(others);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        return all.append(line.toString().stripTrailing()).append('\n').toString();
    }
}
