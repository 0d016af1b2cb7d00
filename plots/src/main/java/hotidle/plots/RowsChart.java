package hotidle.plots;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Things one below the other on one level axis, each with its name to the left, pieces of a bar, a mark and a text to the right:
 * wear of fits, shares of causes, readings beside what is expected. It keeps its own scale, whatever else is on the picture.
 *
 * @param title    of the chart
 * @param subtitle what stays the same; may be empty
 * @param across   title of the level axis, with its unit
 * @param low      its lower end
 * @param high     its upper end
 * @param rows     from the top down
 * @param places   places along the axis with a meaning, in the legend
 * @param key      what each look means; those without an entry are not explained
 * @param mark     what a mark means; empty where no row has one
 */
public record RowsChart(
        String title,
        String subtitle,
        String across,
        double low,
        double high,
        List<ChartRow> rows,
        Optional<LinePlace> places,
        Map<RowLook, String> key,
        String mark)
        implements Chart {

    /** More rows would be too small to read (chosen). */
    public static final int MOST_ROWS = 40;

    /** Fewer rows keep their height and leave the rest free (chosen). */
    static final int LEAST_ROWS = 6;

    /** Of one row where letters are easy to read [px]. */
    private static final int ROW = 26;

    /** Of title, axis and legend [px]. */
    private static final int AROUND = 170;

    /** Of the upright axis, which has names in place of a scale. */
    private static final String NAMES = "";

    /**
     * A row.
     *
     * @param name   to the left
     * @param pieces of its bar; may be empty
     * @param mark   on it; empty without one
     * @param text   to the right; may be empty
     */
    public record ChartRow(String name, List<RowPiece> pieces, Optional<RowMark> mark, String text) {
        public ChartRow {
            pieces = List.copyOf(pieces);
        }
    }

    /** A piece of a bar between two places of the axis. */
    public record RowPiece(RowLook look, double from, double to) {}

    /**
     * A mark.
     *
     * @param at   where; beyond an end of the axis it becomes an arrow there
     * @param low  lower end of what it may be
     * @param high upper end of the same
     */
    public record RowMark(double at, double low, double high) {}

    /** A place along the axis and what it means. */
    public record LinePlace(double at, String text) {}

    /** Checks that there is something to draw. */
    public RowsChart {
        rows = List.copyOf(rows);
        key = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(key));
        Require.that(
                !rows.isEmpty() && rows.size() <= MOST_ROWS,
                "a chart shows 1 to " + MOST_ROWS + " rows, not " + rows.size());
        Require.that(high > low, "an axis from " + low + " to " + high + " shows nothing");
    }

    /** Height at which so many rows can be read [px]. */
    public static int height(int rows) {
        return Math.max(AROUND + ROW * Math.max(rows, LEAST_ROWS), Picture.LEAST);
    }

    @Override
    public Axes scale() {
        return new Axes(low, high, Map.of(NAMES, 1.0), List.of(), false);
    }

    @Override
    public void paint(Graphics2D graphics, Rectangle2D area, Axes scale) {
        RowsDrawing drawing = new RowsDrawing(this);
        boolean beside = drawing.textsBeside(graphics, area.getWidth());
        Style.paint(graphics, area, drawing.drawn(beside), drawing.legend(beside));
    }
}
