package hotidle.plots;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;

/**
 * Headroom over two numbers: a field of cells with the lines at which nothing is left and at which it becomes narrow.
 *
 * @param title    of the chart
 * @param subtitle what stays the same; may be empty
 * @param across   title of the level axis, with its unit
 * @param axis     title of the upright axis, with its unit
 * @param xs       rising, two or more
 * @param ys       rising, two or more
 * @param cells    a row for each y, in it a cell for each x
 * @param close    headroom [%] up to which a limit is narrow
 * @param key      what each letter of the cells means
 * @param marks    points with a name
 * @param levels   level lines with a name, on the upright axis
 */
public record MapChart(
        String title,
        String subtitle,
        String across,
        String axis,
        List<Double> xs,
        List<Double> ys,
        List<List<Tile>> cells,
        double close,
        Map<String, String> key,
        List<NamedPoint> marks,
        List<LevelLine> levels)
        implements Chart {

    /**
     * A cell around one solved point.
     *
     * @param headroom [%], minus infinity where it fails by an amount that is not known, NaN where nothing is known
     * @param letter   of the limit that decides, explained in the key; empty where nothing is known
     * @param open     whether a limit is left out of which it is not known whether it holds
     * @param limits   headroom [%] of each limit that decides somewhere, by its letter; NaN where it fails by an amount not known
     */
    public record Tile(double headroom, String letter, boolean open, Map<String, Double> limits) {

        public Tile {
            limits = Map.copyOf(limits);
        }

        boolean known() {
            return !Double.isNaN(headroom);
        }
    }

    /** A point with its name. */
    public record NamedPoint(String name, double x, double y) {}

    /** A level with its name. */
    public record LevelLine(String name, double y) {}

    /** Checks that cells and axes fit. */
    public MapChart {
        xs = List.copyOf(xs);
        ys = List.copyOf(ys);
        cells = cells.stream().map(List::copyOf).toList();
        key = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(key));
        marks = List.copyOf(marks);
        levels = List.copyOf(levels);
        rises(xs);
        rises(ys);
        int columns = xs.size();
        Require.that(
                cells.size() == ys.size() && cells.stream().allMatch(row -> row.size() == columns),
                "a map needs a row of cells for each of its " + ys.size() + " levels, each of " + columns + " cells");
    }

    private static void rises(List<Double> axis) {
        Require.that(axis.size() >= 2, "an axis of a map has " + axis.size() + " points; it needs at least 2");
        for (int i = 1; i < axis.size(); i++) {
            Require.that(axis.get(i) > axis.get(i - 1), "the points of a map must rise along both axes");
        }
    }

    /** Edges of the cells along an axis: half way between neighbours, and as far beyond the ends. */
    static double[] edges(List<Double> axis) {
        int n = axis.size();
        double[] edges = new double[n + 1];
        for (int i = 1; i < n; i++) {
            edges[i] = (axis.get(i - 1) + axis.get(i)) / 2;
        }
        edges[0] = axis.get(0) - (axis.get(1) - axis.get(0)) / 2;
        edges[n] = axis.get(n - 1) + (axis.get(n - 1) - axis.get(n - 2)) / 2;
        return edges;
    }

    /** Whether a limit is left out at some point that is known. */
    boolean openSomewhere() {
        return cells.stream().flatMap(List::stream).anyMatch(cell -> cell.known() && cell.open);
    }

    /** Whether at each of them, so that no cell need be marked. */
    boolean openEverywhere() {
        return openSomewhere() && cells.stream().flatMap(List::stream).allMatch(cell -> !cell.known() || cell.open);
    }

    @Override
    public Axes scale() {
        double[] x = edges(xs);
        double[] y = edges(ys);
        double low = marks.stream().mapToDouble(NamedPoint::x).reduce(x[0], Math::min);
        double high = marks.stream().mapToDouble(NamedPoint::x).reduce(x[x.length - 1], Math::max);
        return new Axes(low, high, Map.of(axis, top(y)), List.of(), false);
    }

    private double top(double[] edges) {
        return marks.stream().mapToDouble(NamedPoint::y).reduce(edges[edges.length - 1], Math::max);
    }

    /** Lower end of the upright axis. */
    double bottom() {
        return marks.stream().mapToDouble(NamedPoint::y).reduce(edges(ys)[0], Math::min);
    }

    @Override
    public void paint(Graphics2D graphics, Rectangle2D area, Axes scale) {
        new MapDrawing(this, scale).paint(graphics, area);
    }
}
