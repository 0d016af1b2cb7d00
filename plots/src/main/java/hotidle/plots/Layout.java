package hotidle.plots;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where charts lie on the page. Where the number leaves cells over, the first chart takes them. An upright page has fewer columns; two
 * charts lie beside each other where they would be too low one above the other.
 */
final class Layout {
    /** Most charts that stay readable on one page. */
    static final int MOST = 6;

    /** Least size of the cell of a chart with title, axes and legend around its curves (chosen) [px]. */
    private static final double NARROWEST = 270;

    private static final double LOWEST = 300;

    /** Most charts one above the other on an upright page (chosen). */
    private static final int MOST_UPRIGHT = 4;

    /** The same where it has no more than rows of bars [px]. */
    private static final double LOWEST_ROWS = 180;

    /** Height that each thing takes that a legend explains beyond the first two, where they do not stand in one row (chosen) [px]. */
    private static final double EXPLAINED = 22;

    private static final int FIRST = 2;
    private static final double ONE_ROW = 700;

    /** On a cell narrower than this each takes two lines (chosen) [px]. */
    private static final double TWO_LINES = 330;

    private Layout() {}

    /**
     * As many charts as can be read on a page of this size, at least one.
     *
     * @param explained how many things the legend of each explains
     */
    static int readable(List<Integer> explained, boolean rows, double width, double height) {
        int count = explained.size();
        while (count > 1 && !readable(explained, rows, cells(count, rows, width, height))) {
            count--;
        }
        return count;
    }

    private static boolean readable(List<Integer> explained, boolean rows, List<Rectangle2D> cells) {
        return IntStream.range(0, cells.size()).allMatch(i -> {
            double width = cells.get(i).getWidth();
            double lines = width >= ONE_ROW ? 0 : width >= TWO_LINES ? 1 : 2;
            double least = rows ? LOWEST_ROWS : LOWEST + lines * EXPLAINED * Math.max(0, explained.get(i) - FIRST);
            return width >= NARROWEST && cells.get(i).getHeight() >= least;
        });
    }

    private static int columns(int charts, boolean rows, double width, double height) {
        if (height > width) {
            boolean firstWide = charts % 2 == 1 && charts > 1;
            return charts > MOST_UPRIGHT || (firstWide && !rows) ? 2 : 1;
        }
        return switch (charts) {
            case 1 -> 1;
            case 2 -> rows || height >= 2 * LOWEST ? 1 : 2;
            case 3 -> 2;
            default -> 3;
        };
    }

    /**
     * Cells for so many charts [px], in reading order.
     *
     * @param rows whether one of them has rows of bars with their names, which are low and wide
     */
    static List<Rectangle2D> cells(int charts, boolean rows, double width, double height) {
        int columns = columns(charts, rows, width, height);
        int lines = (charts + columns - 1) / columns;
        double w = width / columns;
        double h = height / lines;
        int spare = lines * columns - charts;
        List<Rectangle2D> cells = new ArrayList<>();
        cells.add(new Rectangle2D.Double(0, 0, w * (1 + spare), h));
        for (int i = 1 + spare; i < lines * columns; i++) {
            int row = i / columns;
            cells.add(new Rectangle2D.Double(w * (i % columns), h * row, w, h));
        }
        return cells;
    }
}
