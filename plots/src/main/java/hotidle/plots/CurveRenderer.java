package hotidle.plots;

import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.Serial;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYItemRendererState;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.data.xy.XYDataset;

/**
 * Curves with a marker at about every twelfth of their length, and at each point that stands alone in a gap; where several lie on each
 * other, in stripes by turns.
 */
final class CurveRenderer extends XYLineAndShapeRenderer {
    @Serial
    private static final long serialVersionUID = 1L;

    private static final int MARKERS = 12;

    /** Height of a chart by which its legend goes [px]. */
    private static final double USUAL = 400;

    private static final String STRIPED = "in stripes: curves that lie on each other";

    private final transient List<List<PressureCurve.SweepPoint>> curves;

    /** Each curve in the look of its place. */
    CurveRenderer(List<List<PressureCurve.SweepPoint>> curves) {
        this(curves, LineLook.ALL.subList(0, curves.size()));
    }

    CurveRenderer(List<List<PressureCurve.SweepPoint>> curves, List<LineLook> looks) {
        super(true, true);
        this.curves = List.copyOf(curves);
        setDrawSeriesLineAsPath(true);
        for (int i = 0; i < curves.size(); i++) {
            LineLook look = looks.get(i);
            setSeriesPaint(i, look.colour());
            setSeriesStroke(i, look.stroke());
            setSeriesShape(i, look.marker());
        }
    }

    /** All of a curve at its last point, as one path a stretch. */
    @Override
    protected void drawPrimaryLineAsPath(
            XYItemRendererState state,
            Graphics2D g,
            XYPlot plot,
            XYDataset data,
            int pass,
            int series,
            int item,
            ValueAxis across,
            ValueAxis upright,
            Rectangle2D area) {
        if (item != state.getLastItemIndex()) {
            return;
        }
        g.setPaint(getSeriesPaint(series));
        for (SharedStretch stretch : SharedStretch.of(pixels(area, across, upright), series)) {
            List<Integer> with = stretch.curves();
            g.setStroke(
                    with.size() == 1 ? getSeriesStroke(series) : LineLook.stripes(with.indexOf(series), with.size()));
            g.draw(stretch.path());
        }
    }

    /**
     * What stripes mean; nothing where no curves lie on each other.
     *
     * @param top of the upright axis
     */
    static Optional<Legend.KeySample> striped(List<List<PressureCurve.SweepPoint>> curves, double top) {
        List<List<Point2D>> all = curves.stream()
                .map(curve -> curve.stream()
                        .map(point -> (Point2D) new Point2D.Double(point.speed(), USUAL * point.pressure() / top))
                        .toList())
                .toList();
        boolean some = IntStream.range(0, all.size())
                .mapToObj(own -> SharedStretch.of(all, own))
                .flatMap(List::stream)
                .anyMatch(stretch -> stretch.curves().size() > 1);
        return some ? Optional.of(new Legend.KeySample(STRIPED, CurveRenderer::stripes)) : Optional.empty();
    }

    private static void stripes(Graphics2D g, Rectangle2D box) {
        for (int turn = 0; turn < 2; turn++) {
            g.setPaint(LineLook.ALL.get(turn).colour());
            g.setStroke(LineLook.stripes(turn, 2));
            g.draw(SpeedDrawing.middle(box));
        }
    }

    private List<List<Point2D>> pixels(Rectangle2D area, ValueAxis across, ValueAxis upright) {
        return curves.stream()
                .map(curve -> curve.stream()
                        .map(point -> (Point2D) new Point2D.Double(
                                across.valueToJava2D(point.speed(), area, RectangleEdge.BOTTOM),
                                upright.valueToJava2D(point.pressure(), area, RectangleEdge.LEFT)))
                        .toList())
                .toList();
    }

    @Override
    public boolean getItemShapeVisible(int series, int item) {
        List<PressureCurve.SweepPoint> points = curves.get(series);
        int every = Math.max(1, points.size() / MARKERS);
        return (item + series * every / curves.size()) % every == 0 || alone(points, item);
    }

    private static boolean alone(List<PressureCurve.SweepPoint> points, int item) {
        boolean before = item > 0 && points.get(item - 1).solved();
        boolean after = item + 1 < points.size() && points.get(item + 1).solved();
        return !before && !after;
    }
}
