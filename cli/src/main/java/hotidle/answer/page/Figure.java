package hotidle.answer.page;

/**
 * A picture on a page.
 *
 * @param svg        the picture, an element of its own with a name that is read aloud; empty for a photograph
 * @param photograph JPEG in Base64; empty for a drawing
 * @param caption    under it; says what is to be seen
 * @param looks      as a word of the style sheet; empty for any other
 */
public record Figure(String svg, String photograph, String caption, String looks) {

    /** A drawing: among the text, or on a sheet of its own and across. */
    public Figure(String svg, String caption, boolean sheet) {
        this(svg, "", caption, sheet ? "sheet" : "");
    }

    /**
     * A drawing that takes a sheet of its own.
     *
     * @param upright whether it is higher than wide; else it is printed across
     */
    public static Figure sheet(String svg, String caption, boolean upright) {
        return new Figure(svg, "", caption, upright ? "sheet upright" : "sheet");
    }

    /** A photograph [JPEG in Base64] with what is to be seen on it. */
    public static Figure photograph(String jpeg, String caption) {
        return new Figure("", jpeg, caption, "photograph");
    }
}
