package hotidle.plots;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/**
 * A figure against engine speed, one curve per build, with the speeds from which the secondary is unloaded.
 *
 * @param title    of the chart
 * @param subtitle what stays the same; may be empty
 * @param axis     title of the upright axis, with its unit
 * @param level    a limit to compare with; empty without one
 * @param open     up to which it is not known above that limit whether it holds; empty where that is known
 * @param curves   one per build
 * @param read     what gauges read
 * @param bottom   lower end of the upright axis, which its title tells; empty for zero
 */
public record FigureChart(
        String title,
        String subtitle,
        String axis,
        Optional<LimitLine> level,
        Optional<LimitLine> open,
        List<FigureCurve> curves,
        List<GaugePoint> read,
        OptionalDouble bottom)
        implements Chart {

    /** As many curves as there are looks. */
    public static final int MOST_CURVES = LineLook.ALL.size();

    /** Ground on which it is not known whether a figure holds. */
    private static final Color OPEN = new Color(0xe4, 0xe4, 0xe4);

    /** Texts of more marks than this would lie on each other and on the curves: they stand in the legend (chosen). */
    private static final int MOST_TEXTS = 2;

    /** Marks of this chart are drawn as a dot of this radius [px]. */
    private static final double DOT = 6;

    /**
     * A limit.
     *
     * @param value on the upright axis
     * @param text  as it is to be read
     */
    public record LimitLine(double value, String text) {}

    /** Room above the curves of an axis that does not begin at zero, as a share of what is shown (chosen). */
    private static final double ROOM = 0.08;

    /** From zero up. */
    public FigureChart(
            String title,
            String subtitle,
            String axis,
            Optional<LimitLine> level,
            Optional<LimitLine> open,
            List<FigureCurve> curves,
            List<GaugePoint> read) {
        this(title, subtitle, axis, level, open, curves, read, OptionalDouble.empty());
    }

    /** The same on an upright axis that begins elsewhere, below all that is drawn. */
    public FigureChart from(double low) {
        return new FigureChart(title, subtitle, axis, level, open, curves, read, OptionalDouble.of(low));
    }

    /** Without readings. */
    public FigureChart(
            String title,
            String subtitle,
            String axis,
            Optional<LimitLine> level,
            Optional<LimitLine> open,
            List<FigureCurve> curves) {
        this(title, subtitle, axis, level, open, curves, List.of());
    }

    /** Checks the number of curves, their names, and that there is something to draw. */
    public FigureChart {
        curves = List.copyOf(curves);
        read = List.copyOf(read);
        Require.that(
                !curves.isEmpty() && curves.size() <= MOST_CURVES,
                "a chart shows 1 to " + MOST_CURVES + " curves, not " + curves.size());
        Require.distinct("curves", curves.stream().map(FigureCurve::build).toList());
        Require.that(
                curves.stream().flatMap(curve -> curve.points().stream()).anyMatch(PressureCurve.SweepPoint::solved),
                "a chart has no point to show");
        Require.that(
                bottom.isEmpty()
                        || heights(limits(level, open), curves, read)
                                .allMatch(value -> !(value < bottom.getAsDouble())),
                "an upright axis begins below all that is drawn");
    }

    @Override
    public int explained() {
        return curves.size() + limits().size();
    }

    @Override
    public Axes scale() {
        return Axes.ofCurves(
                axis,
                curves.stream().mapToDouble(curve -> curve.points().get(0).speed()),
                curves.stream()
                        .mapToDouble(curve ->
                                curve.points().get(curve.points().size() - 1).speed()),
                heights(limits(), curves, read));
    }

    private static DoubleStream heights(List<LimitLine> limits, List<FigureCurve> curves, List<GaugePoint> read) {
        return DoubleStream.concat(
                read.stream().mapToDouble(GaugePoint::high),
                DoubleStream.concat(
                        limits.stream().mapToDouble(LimitLine::value),
                        curves.stream()
                                .flatMapToDouble(curve ->
                                        curve.points().stream().mapToDouble(PressureCurve.SweepPoint::pressure))));
    }

    /** On an upright scale of its own: a gauge of 30 psi would be a flat line beside one of 300. */
    @Override
    public void paint(Graphics2D graphics, Rectangle2D area, Axes scale) {
        Axes own = new Axes(scale.low(), scale.high(), scale().tops(), scale.bands(), scale.key());
        Style.paint(graphics, area, drawn(own), legend());
    }

    /** The chart without its legend. */
    JFreeChart drawn(Axes scale) {
        JFreeChart drawn = Style.chart(
                title,
                subtitle,
                data(FigureCurve::points),
                new CurveRenderer(curves.stream().map(FigureCurve::points).toList()),
                scale,
                axis);
        XYPlot plot = drawn.getXYPlot();
        bottom.ifPresent(low -> {
            double top = heights(limits(), curves, read)
                    .filter(Double::isFinite)
                    .max()
                    .orElseThrow();
            plot.getRangeAxis().setRange(low, top + ROOM * (top - low));
        });
        marks(plot, SpeedDrawing.ONSETS, FigureChart::marked, true);
        marks(plot, SpeedDrawing.UNLOADS, FigureChart::unloads, false);
        marks(plot, SpeedDrawing.UNSOLVED, curve -> List.of(), false);
        level.ifPresent(low -> open.ifPresent(
                high -> plot.addRangeMarker(new IntervalMarker(low.value(), high.value(), OPEN), Layer.BACKGROUND)));
        limits().forEach(limit ->
                plot.addRangeMarker(new ValueMarker(limit.value(), Style.INK, Style.THIN_DASHED), Layer.BACKGROUND));
        GaugePoints.add(plot, read);
        plot.addAnnotation(callouts(scale));
        return drawn;
    }

    /** Texts beside the marks and at the right end of the limit. */
    Callouts callouts(Axes scale) {
        List<Callouts.Callout> texts = new ArrayList<>();
        for (int i = 0; i < curves.size() && !crowded(); i++) {
            int look = i;
            curves.get(i)
                    .mark()
                    .ifPresent(mark -> texts.add(Callouts.Callout.beside(
                            mark.text(), LineLook.ALL.get(look).ink(), mark.speed(), mark.value())));
        }
        limits().forEach(limit ->
                texts.add(Callouts.Callout.along(limit.text(), Style.INK, scale.high(), limit.value())));
        return new Callouts(texts);
    }

    private boolean crowded() {
        return curves.stream().filter(curve -> curve.mark().isPresent()).count() > MOST_TEXTS;
    }

    private List<LimitLine> limits() {
        return limits(level, open);
    }

    private static List<LimitLine> limits(Optional<LimitLine> level, Optional<LimitLine> open) {
        return Stream.concat(level.stream(), open.stream()).toList();
    }

    Legend legend() {
        List<Legend.KeySample> entries = new ArrayList<>();
        for (int i = 0; i < curves.size(); i++) {
            LineLook look = LineLook.ALL.get(i);
            String text = crowded() ? curves.get(i).told() : curves.get(i).legend();
            entries.add(new Legend.KeySample(text, (g, box) -> SpeedDrawing.line(g, box, look)));
        }
        CurveRenderer.striped(
                        curves.stream().map(FigureCurve::points).toList(),
                        scale().tops().get(axis) - bottom.orElse(0))
                .ifPresent(entries::add);
        if (open.isPresent()) {
            entries.add(new Legend.KeySample("not known whether it holds", (g, box) -> {
                g.setPaint(OPEN);
                g.fill(box);
                g.setPaint(Style.INK);
                g.setStroke(Style.HAIRLINE);
                g.draw(box);
            }));
        }
        if (curves.stream().anyMatch(curve -> curve.unloads().isPresent())) {
            entries.add(SpeedDrawing.unloading());
        }
        entries.addAll(GaugePoints.legend(read));
        return new Legend(entries);
    }

    private XYSeriesCollection data(Function<FigureCurve, List<PressureCurve.SweepPoint>> points) {
        XYSeriesCollection data = new XYSeriesCollection();
        for (FigureCurve curve : curves) {
            XYSeries series = new XYSeries(curve.build(), false);
            points.apply(curve).forEach(point -> series.add(point.speed(), point.pressure()));
            data.addSeries(series);
        }
        return data;
    }

    private static List<PressureCurve.SweepPoint> marked(FigureCurve curve) {
        return curve.mark().stream()
                .map(mark -> new PressureCurve.SweepPoint(mark.speed(), mark.value()))
                .toList();
    }

    private static List<PressureCurve.SweepPoint> unloads(FigureCurve curve) {
        return curve.unloads().stream()
                .mapToObj(speed -> new PressureCurve.SweepPoint(speed, PressureCurve.at(curve.points(), speed)))
                .toList();
    }

    private void marks(
            XYPlot plot, int index, Function<FigureCurve, List<PressureCurve.SweepPoint>> points, boolean dot) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        for (int i = 0; i < curves.size(); i++) {
            renderer.setSeriesPaint(i, LineLook.ALL.get(i).colour());
            renderer.setSeriesShape(i, dot ? new Ellipse2D.Double(-DOT, -DOT, 2 * DOT, 2 * DOT) : Marks.unloads());
        }
        plot.setDataset(index, data(points));
        plot.setRenderer(index, renderer);
    }
}
