package hotidle.plots.scheme;

import java.util.List;

/**
 * A sheet of paper lying on its side or standing (ISO 216) [mm].
 *
 * @param name   for example A3
 * @param width  of the sheet
 * @param height of the sheet
 */
public record Paper(String name, int width, int height) {

    /** Left free at every edge. */
    static final double MARGIN = 5;

    private static final List<Paper> SIZES = List.of(
            new Paper("A4", 297, 210),
            new Paper("A4", 210, 297),
            new Paper("A3", 420, 297),
            new Paper("A3", 297, 420),
            new Paper("A2", 594, 420),
            new Paper("A2", 420, 594),
            new Paper("A1", 841, 594),
            new Paper("A1", 594, 841),
            new Paper("A0", 1189, 841),
            new Paper("A0", 841, 1189));

    /** How many sizes of paper up a drawing's paper is [-]; large where none holds it. */
    static int step(double width, double height) {
        int at = SIZES.indexOf(holding(width, height));
        return at < 0 ? SIZES.size() : at / 2;
    }

    /** The smallest sheet that holds a drawing [mm] with its letters full size; where none does, one as large as it takes. */
    static Paper holding(double width, double height) {
        return SIZES.stream()
                .filter(paper -> width <= paper.width - 2 * MARGIN && height <= paper.height - 2 * MARGIN)
                .findFirst()
                .orElseGet(() -> new Paper("a sheet of its own", (int) Math.ceil(width + 2 * MARGIN), (int)
                        Math.ceil(height + 2 * MARGIN)));
    }
}
