package hotidle.plots;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/**
 * Several numbers against another, a line each, with the point that matters and places along the level axis.
 *
 * @param title    of the chart
 * @param subtitle what stays the same; may be empty
 * @param across   title of the level axis, with its unit
 * @param axis     title of the upright axis, with its unit
 * @param missing  what a gap in a line means
 * @param lines    a few
 * @param mark     the point that matters; empty without one
 * @param places   along the level axis
 */
public record LinesChart(
        String title,
        String subtitle,
        String across,
        String axis,
        String missing,
        List<Line> lines,
        Optional<Marked> mark,
        List<AtPlace> places)
        implements Chart {

    /** As many lines as there are looks. */
    public static final int MOST_LINES = LineLook.ALL.size();

    /**
     * A line.
     *
     * @param name   in the legend
     * @param look   number of its look, below {@link #MOST_LINES}; the same name has the same one in all charts of a picture
     * @param points with rising x, at least two
     */
    public record Line(String name, int look, List<LineChart.Point> points) {
        public Line {
            points = List.copyOf(points);
            Require.that(look >= 0 && look < MOST_LINES, "look " + look + " is none of " + MOST_LINES);
        }

        private LineLook drawn() {
            return LineLook.ALL.get(look);
        }
    }

    /** A point with a text beside it. */
    public record Marked(double x, double y, String text) {}

    /** A place on the level axis with a text. */
    public record AtPlace(double x, String text) {}

    /** Checks the number of lines, their names and points. */
    public LinesChart {
        lines = List.copyOf(lines);
        places = List.copyOf(places);
        Require.that(
                !lines.isEmpty() && lines.size() <= MOST_LINES,
                "a chart shows 1 to " + MOST_LINES + " lines, not " + lines.size());
        Require.distinct("lines", lines.stream().map(Line::name).toList());
        for (Line line : lines) {
            Require.speeds(
                    "line '" + line.name() + "'",
                    line.points().stream().map(LineChart.Point::x).toList());
        }
        Require.that(
                lines.stream().flatMap(line -> line.points().stream()).anyMatch(point -> Double.isFinite(point.y())),
                "a chart has no point to show");
    }

    @Override
    public int explained() {
        return lines.size();
    }

    @Override
    public Axes scale() {
        Axes curves = Axes.ofCurves(
                axis,
                lines.stream().mapToDouble(line -> line.points().get(0).x()),
                lines.stream()
                        .mapToDouble(line ->
                                line.points().get(line.points().size() - 1).x()),
                lines.stream().flatMap(line -> line.points().stream()).mapToDouble(LineChart.Point::y));
        return new Axes(
                curves.low(),
                curves.high(),
                Map.of(axis, curves.tops().get(axis) * (1 + PlaceLabels.room(places.size()))),
                List.of(),
                false);
    }

    @Override
    public void paint(Graphics2D graphics, Rectangle2D area, Axes scale) {
        Style.paint(graphics, area, drawn(scale), legend());
    }

    /** The chart without its legend. */
    JFreeChart drawn(Axes scale) {
        XYSeriesCollection data = new XYSeriesCollection();
        for (Line line : lines) {
            XYSeries series = new XYSeries(line.name(), false);
            line.points().forEach(point -> series.add(point.x(), point.y()));
            data.addSeries(series);
        }
        CurveRenderer renderer =
                new CurveRenderer(points(), lines.stream().map(Line::drawn).toList());
        JFreeChart chart = Style.chart(title, subtitle, data, renderer, scale, axis);
        XYPlot plot = chart.getXYPlot();
        ((NumberAxis) plot.getDomainAxis()).setLabel(across);
        dot(plot);
        plot.addAnnotation(new PlaceLabels(places));
        plot.addAnnotation(callouts());
        return chart;
    }

    private List<List<PressureCurve.SweepPoint>> points() {
        return lines.stream()
                .map(line -> line.points().stream()
                        .map(point -> new PressureCurve.SweepPoint(point.x(), point.y()))
                        .toList())
                .toList();
    }

    /** The mark as a ring; the other sets of marks of a speed chart stay empty. */
    private void dot(XYPlot plot) {
        XYSeries series = new XYSeries("", false);
        mark.ifPresent(point -> series.add(point.x(), point.y()));
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        renderer.setSeriesPaint(0, Style.INK);
        renderer.setSeriesShape(0, Marks.onset());
        plot.setDataset(SpeedDrawing.ONSETS, new XYSeriesCollection(series));
        plot.setRenderer(SpeedDrawing.ONSETS, renderer);
        for (int index : new int[] {SpeedDrawing.UNLOADS, SpeedDrawing.UNSOLVED}) {
            plot.setDataset(index, new XYSeriesCollection());
            plot.setRenderer(index, new XYLineAndShapeRenderer(false, true));
        }
    }

    /** The text beside the mark, off the lines of the places. */
    Callouts callouts() {
        return new Callouts(
                mark.stream()
                        .map(point -> Callouts.Callout.beside(point.text(), Style.INK, point.x(), point.y()))
                        .toList(),
                places.stream().map(AtPlace::x).toList());
    }

    private Legend legend() {
        List<Legend.KeySample> entries = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            LineLook look = lines.get(i).drawn();
            entries.add(new Legend.KeySample(legends().get(i), (g, box) -> SpeedDrawing.line(g, box, look)));
        }
        CurveRenderer.striped(points(), scale().tops().get(axis)).ifPresent(entries::add);
        return new Legend(entries);
    }

    private String legend(Line line) {
        long gaps = line.points().stream()
                .filter(point -> !Double.isFinite(point.y()))
                .count();
        return gaps == 0
                ? line.name()
                : line.name() + "; " + missing + " at " + gaps + " of "
                        + line.points().size() + " points (gap)";
    }

    /** What the legend says of each line. */
    List<String> legends() {
        return lines.stream().map(this::legend).toList();
    }
}
