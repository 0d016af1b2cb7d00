package hotidle.plots;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The letters of a map's cells, each where no line runs through it.
 *
 * @param heavy pieces of the thick line and of dashed ones, on which a letter could not be read
 * @param close pieces of the thin line
 * @param taken by names and marks
 */
record MapLetters(List<Line2D> heavy, List<Line2D> close, List<Rectangle2D> taken) {

    private static final Font LETTER = Style.SMALL;
    private static final double ROOM = 1.1;

    /** From a letter to the middle of a line beside it [px]. */
    private static final double CLEAR = 4;

    private static final double EDGE = 2;

    /** Tried one after the other: the middle, then the sides, then the corners. */
    private static final int[][] WAYS = {{0, 0}, {-1, 0}, {1, 0}, {0, -1}, {0, 1}, {-1, -1}, {1, -1}, {-1, 1}, {1, 1}};

    /** Draws a letter where it fits into its cell beside the lines; its neighbours have the same one. */
    void draw(Graphics2D g, String letter, Rectangle2D box) {
        FontMetrics font = g.getFontMetrics(LETTER);
        double wide = font.stringWidth(letter);
        double high = font.getAscent();
        if (box.getHeight() <= ROOM * high || box.getWidth() <= ROOM * wide) {
            return;
        }
        place(box, wide, high - font.getDescent()).ifPresent(place -> {
            g.setFont(LETTER);
            g.setPaint(Color.BLACK);
            g.drawString(letter, (float) place.getMinX(), (float) place.getMaxY());
        });
    }

    /** The first place off all lines and names, else off the thin line no more; empty where there is none. */
    Optional<Rectangle2D> place(Rectangle2D box, double wide, double high) {
        double sideways = Math.max(0, (box.getWidth() - wide) / 2 - EDGE);
        double upright = Math.max(0, (box.getHeight() - high) / 2 - EDGE);
        List<Rectangle2D> places = new ArrayList<>();
        for (int[] way : WAYS) {
            places.add(new Rectangle2D.Double(
                    box.getCenterX() - wide / 2 + way[0] * sideways,
                    box.getCenterY() - high / 2 + way[1] * upright,
                    wide,
                    high));
        }
        List<Rectangle2D> off = places.stream()
                .filter(place -> free(place, heavy, CLEAR) && taken.stream().noneMatch(place::intersects))
                .toList();
        return off.stream()
                .filter(place -> free(place, close, CLEAR / 2))
                .findFirst()
                .or(() -> off.stream().findFirst());
    }

    private static boolean free(Rectangle2D place, List<Line2D> lines, double clear) {
        Rectangle2D wide = new Rectangle2D.Double(
                place.getX() - clear,
                place.getY() - clear,
                place.getWidth() + 2 * clear,
                place.getHeight() + 2 * clear);
        return lines.stream().noneMatch(wide::intersectsLine);
    }
}
