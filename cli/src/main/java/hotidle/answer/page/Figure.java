package hotidle.answer.page;

/**
 * A picture on a page.
 *
 * @param svg        the picture, an element of its own with a name that is read aloud; empty for a photograph
 * @param photograph JPEG in Base64; empty for a drawing
 * @param caption    under it; says what is to be seen
 * @param sheet      whether it takes a sheet of its own, printed across
 */
public record Figure(String svg, String photograph, String caption, boolean sheet) {

    /** A drawing. */
    public Figure(String svg, String caption, boolean sheet) {
        this(svg, "", caption, sheet);
    }

    /** A photograph [JPEG in Base64] with what is to be seen on it. */
    public static Figure photograph(String jpeg, String caption) {
        return new Figure("", jpeg, caption, false);
    }

    /** As a word of the style sheet; empty for any other. */
    public String looks() {
        return sheet ? "sheet" : photograph.isEmpty() ? "" : "photograph";
    }
}
