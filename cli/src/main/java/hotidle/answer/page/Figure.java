package hotidle.answer.page;

import java.util.List;

/**
 * A picture on a page.
 *
 * @param svg        the picture, an element of its own with a name that is read aloud; empty for a photograph
 * @param photograph JPEG in Base64; empty for a drawing
 * @param caption    under it; says what is to be seen
 * @param looks      as a word of the style sheet; empty for any other
 * @param halves     in which it is printed, a sheet each; none where it is printed whole
 */
public record Figure(String svg, String photograph, String caption, String looks, List<Half> halves) {

    /** The longer side of A4 [mm]. */
    private static final int SHEET = 297;

    /** What is drawn, for halves to show it again. */
    private static final String DRAWN = "drawn";

    public Figure {
        halves = List.copyOf(halves);
    }

    /**
     * A half of a drawing, as high as an upright sheet or higher.
     *
     * @param view  what is seen of it, as SVG's viewBox has it [mm]
     * @param turns SVG's transform of the drawing; empty where it is not turned
     * @param drawn id of what it shows
     */
    public record Half(String view, String turns, String drawn) {}

    private Figure(String svg, String photograph, String caption, String looks) {
        this(svg, photograph, caption, looks, List.of());
    }

    /** A drawing: among the text, or on a sheet of its own and across. */
    public Figure(String svg, String caption, boolean sheet) {
        this(svg, "", caption, sheet ? "sheet" : "");
    }

    /**
     * A drawing that takes a sheet of its own: upright or across, and where it is larger than A4 in two halves, since its letters would
     * be too small to read.
     *
     * @param svg    an element with its title, then all that is drawn
     * @param width  of the drawing [mm]
     * @param height of the drawing [mm]
     */
    public static Figure sheet(String svg, String caption, int width, int height) {
        boolean upright = height > width;
        if (!larger(width, height)) {
            return new Figure(svg, "", caption, upright ? "sheet upright" : "sheet");
        }
        String drawn = svg.replaceFirst("</title>", "</title><g id=\"" + DRAWN + "\">")
                .replaceFirst("</svg>\\s*$", "</g></svg>");
        List<Half> halves = upright
                ? List.of(turned(width, height / 2.0, 1), turned(width, height / 2.0, 2))
                : List.of(
                        new Half("0 0 " + width / 2.0 + " " + height, "", DRAWN),
                        new Half(width / 2.0 + " 0 " + width / 2.0 + " " + height, "", DRAWN));
        return new Figure(drawn, "", caption, upright ? "sheet upright halved" : "sheet halved", halves);
    }

    /** The upper or the lower half, lying on its side: its top is at the right of the sheet. */
    private static Half turned(double width, double half, int number) {
        return new Half("0 0 " + half + " " + width, "translate(" + number * half + " 0) rotate(90)", DRAWN);
    }

    /** Whether a drawing [mm] is printed in halves. */
    public static boolean larger(int width, int height) {
        return Math.max(width, height) > SHEET;
    }

    /** A photograph [JPEG in Base64] with what is to be seen on it. */
    public static Figure photograph(String jpeg, String caption) {
        return new Figure("", jpeg, caption, "photograph");
    }
}
