package hotidle.plots;

import java.io.Serial;
import java.util.List;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;

/** Curves with a marker at about every twelfth of their length, and at each point that stands alone in a gap. */
final class CurveRenderer extends XYLineAndShapeRenderer {
    @Serial
    private static final long serialVersionUID = 1L;

    private static final int MARKERS = 12;

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
