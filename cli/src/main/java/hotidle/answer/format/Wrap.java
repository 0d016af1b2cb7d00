package hotidle.answer.format;

/** Breaks text into lines of a width, at blanks. */
public final class Wrap {

    /** Characters in a line of text that is meant to be read, where the terminal is not narrower (chosen). */
    private static final int WIDEST = 100;

    /** Characters below which tables could not be read any more (chosen). */
    private static final int NARROWEST = 60;

    /** Characters in a line of text that is meant to be read. */
    public static final int WIDTH = width(System.getProperty("hotidle.columns", ""));

    /** Lines of a first screen, which a terminal shows without scrolling (chosen). */
    public static final int LINES = 24;

    private Wrap() {}

    /** The width of a terminal of so many columns, as its launcher says them; of one that says nothing the widest. */
    static int width(String columns) {
        return columns.matches("[1-9]\\d{0,4}")
                ? Math.max(NARROWEST, Math.min(WIDEST, Integer.parseInt(columns)))
                : WIDEST;
    }

    /**
     * The text in lines; a number stays with its percent sign.
     *
     * @param first  in front of the first line
     * @param others in front of all others
     */
    public static String lines(String text, String first, String others) {
        return lines(text, first, others, WIDTH);
    }

    /** The same in a width. */
    static String lines(String text, String first, String others, int width) {
        StringBuilder all = new StringBuilder();
        StringBuilder line = new StringBuilder(first);
        boolean empty = true;
        for (String word : text.strip().split("\\s+(?!%)", -1)) {
            if (!empty && line.length() + 1 + word.length() > width) {
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
