package hotidle.plots;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/**
 * Draws a speed chart: curves, marks, level lines of the set pressure, texts beside the onsets, legend.
 *
 * @param chart what to draw
 * @param scale of the picture
 */
record SpeedDrawing(SpeedChart chart, Axes scale) {
    /** Data sets of the plot, in this order. */
    static final int CURVES = 0;

    static final int ONSETS = 1;
    static final int UNLOADS = 2;
    static final int UNSOLVED = 3;

    /** Size of the marks in the legend against those on the curves. */
    private static final double SMALLER = 0.7;

    /** A level line names this many builds at most. */
    private static final int MOST_NAMES = 2;

    /** Marks so near to each other, as a share of the height, are told in one text (chosen). */
    private static final double TOGETHER = 0.03;

    private static final BasicStroke RING = new BasicStroke(2.5f);

    void paint(Graphics2D g, Rectangle2D area) {
        Style.paint(g, area, drawn(area.getWidth()), legend());
    }

    /** The chart without its legend, on a page so wide [px]. */
    JFreeChart drawn(double width) {
        return drawn(width, callouts());
    }

    /** The same without the names of the level lines, which another chart of the picture has. */
    JFreeChart enlarged(double width) {
        return drawn(width, new Callouts(onsets()));
    }

    private JFreeChart drawn(double width, Callouts texts) {
        JFreeChart drawn = Style.chart(
                chart.title(),
                chart.subtitle(),
                data(this::points),
                new CurveRenderer(
                        chart.curves().stream().map(PressureCurve::points).toList()),
                scale,
                chart.axis());
        XYPlot plot = drawn.getXYPlot();
        Style.other(plot, chart.other(), width);
        addMarks(plot, ONSETS, this::onset, row -> Marks.onset(), true);
        addMarks(plot, UNLOADS, this::unloads, row -> Marks.unloads(), false);
        addMarks(plot, UNSOLVED, SpeedDrawing::unsolved, Marks::unsolved, false);
        sets().forEach((set, builds) ->
                plot.addRangeMarker(new ValueMarker(set, setInk(builds), Style.THIN_DASHED), Layer.BACKGROUND));
        GaugePoints.add(plot, chart.read());
        plot.addAnnotation(texts);
        return drawn;
    }

    /** Texts beside the onsets and at the right end of each level line. */
    Callouts callouts() {
        List<Callouts.Callout> texts = new ArrayList<>(onsets());
        Map<Double, List<PressureCurve>> sets = sets();
        sets.forEach((set, curves) -> texts.add(Callouts.Callout.along(
                "set " + Style.known(set) + " " + chart.unit() + (sets.size() > 1 ? whose(curves) : ""),
                setInk(curves),
                scale.high(),
                set)));
        return new Callouts(texts);
    }

    private List<Callouts.Callout> onsets() {
        Map<PressureCurve.SweepPoint, List<PressureCurve>> together = new LinkedHashMap<>();
        for (PressureCurve curve : chart.curves()) {
            onset(curve)
                    .forEach(at -> together.computeIfAbsent(
                                    together.keySet().stream()
                                            .filter(other -> other.speed() == at.speed()
                                                    && near(other.pressure(), at.pressure()))
                                            .findFirst()
                                            .orElse(at),
                                    any -> new ArrayList<>())
                            .add(curve));
        }
        return together.entrySet().stream()
                .map(one -> Callouts.Callout.beside(
                        PressureCurve.onsetLabel(one.getValue()),
                        one.getValue().size() > 1
                                ? Style.INK
                                : LineLook.ALL
                                        .get(chart.curves()
                                                .indexOf(one.getValue().get(0)))
                                        .ink(),
                        one.getKey().speed(),
                        one.getKey().pressure()))
                .toList();
    }

    /** Whether two marks at one speed lie on each other. */
    private boolean near(double one, double other) {
        return Math.abs(one - other) < TOGETHER * scale.tops().get(chart.axis());
    }

    private static String whose(List<PressureCurve> curves) {
        return curves.size() > MOST_NAMES
                ? ""
                : ": " + curves.stream().map(PressureCurve::build).collect(Collectors.joining(", "));
    }

    /** One entry per curve, then the marks that occur. */
    Legend legend() {
        List<Legend.KeySample> entries = new ArrayList<>();
        for (int i = 0; i < chart.curves().size(); i++) {
            LineLook look = LineLook.ALL.get(i);
            entries.add(new Legend.KeySample(chart.curves().get(i).legend(), (g, box) -> line(g, box, look)));
        }
        CurveRenderer.striped(
                        chart.curves().stream().map(PressureCurve::points).toList(),
                        scale.tops().get(chart.axis()))
                .ifPresent(entries::add);
        entries.add(new Legend.KeySample("set pressure commanded", (g, box) -> {
            g.setPaint(Style.INK);
            g.setStroke(Style.THIN_DASHED);
            g.draw(middle(box));
        }));
        if (chart.curves().stream().anyMatch(curve -> curve.onset().isPresent())) {
            entries.add(new Legend.KeySample("the regulator begins to hold the line", (g, box) -> {
                g.setPaint(Style.INK);
                g.setStroke(RING);
                g.draw(moved(Marks.onset(), box, 0, SMALLER));
            }));
        }
        if (chart.curves().stream().anyMatch(curve -> curve.unloads().isPresent())) {
            entries.add(unloading());
        }
        entries.addAll(GaugePoints.legend(chart.read()));
        return new Legend(entries);
    }

    /** The mark of one event, in every chart over speed. */
    static Legend.KeySample unloading() {
        return new Legend.KeySample("the secondary is unloaded", (g, box) -> {
            g.setPaint(Style.INK);
            g.fill(moved(Marks.unloads(), box, 3, SMALLER));
        });
    }

    private XYSeriesCollection data(Function<PressureCurve, List<PressureCurve.SweepPoint>> points) {
        XYSeriesCollection data = new XYSeriesCollection();
        for (PressureCurve curve : chart.curves()) {
            XYSeries series = new XYSeries(curve.build(), false);
            points.apply(curve).forEach(point -> series.add(point.speed(), point.pressure()));
            data.addSeries(series);
        }
        return data;
    }

    private List<PressureCurve.SweepPoint> points(PressureCurve curve) {
        return curve.points();
    }

    /** The onset on the curve, or on the level of the set pressure where the curve has a gap. */
    private List<PressureCurve.SweepPoint> onset(PressureCurve curve) {
        return curve.onset().stream()
                .mapToObj(speed -> new PressureCurve.SweepPoint(speed, curve.at(speed)))
                .map(point -> point.solved() ? point : new PressureCurve.SweepPoint(point.speed(), curve.set()))
                .toList();
    }

    private List<PressureCurve.SweepPoint> unloads(PressureCurve curve) {
        return curve.unloads().stream()
                .mapToObj(speed -> new PressureCurve.SweepPoint(speed, curve.at(speed)))
                .toList();
    }

    private static List<PressureCurve.SweepPoint> unsolved(PressureCurve curve) {
        return curve.points().stream()
                .filter(point -> !point.solved())
                .map(point -> new PressureCurve.SweepPoint(point.speed(), 0))
                .toList();
    }

    private void addMarks(
            XYPlot plot,
            int index,
            Function<PressureCurve, List<PressureCurve.SweepPoint>> points,
            IntFunction<Shape> shape,
            boolean ring) {
        boolean cross = index == UNSOLVED;
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        renderer.setUseOutlinePaint(true);
        renderer.setUseFillPaint(true);
        renderer.setDrawOutlines(ring || cross);
        for (int i = 0; i < chart.curves().size(); i++) {
            Color colour = LineLook.ALL.get(i).colour();
            renderer.setSeriesShape(i, shape.apply(i));
            renderer.setSeriesFillPaint(i, ring ? Color.WHITE : colour);
            renderer.setSeriesOutlinePaint(i, colour);
            renderer.setSeriesOutlineStroke(i, RING);
        }
        plot.setDataset(index, data(points));
        plot.setRenderer(index, renderer);
    }

    private Map<Double, List<PressureCurve>> sets() {
        return chart.curves().stream()
                .collect(Collectors.groupingBy(PressureCurve::set, TreeMap::new, Collectors.toList()));
    }

    /** A level line takes the colour of its curve, or grey where several share it. */
    private Color setInk(List<PressureCurve> curves) {
        return curves.size() == 1 && chart.curves().size() > 1
                ? LineLook.ALL.get(chart.curves().indexOf(curves.get(0))).ink()
                : Style.INK;
    }

    static void line(Graphics2D g, Rectangle2D box, LineLook look) {
        g.setPaint(look.colour());
        g.setStroke(look.stroke());
        g.draw(middle(box));
        g.fill(moved(look.marker(), box, 0, 1));
    }

    static Line2D middle(Rectangle2D box) {
        return new Line2D.Double(box.getMinX(), box.getCenterY(), box.getMaxX(), box.getCenterY());
    }

    static Shape moved(Shape shape, Rectangle2D box, double down, double size) {
        AffineTransform move = AffineTransform.getTranslateInstance(box.getCenterX(), box.getCenterY() + down);
        move.scale(size, size);
        return move.createTransformedShape(shape);
    }
}
