package hotidle.plots;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * Line pressure against engine speed, one curve per build.
 *
 * @param title    of the chart
 * @param subtitle circuit, duty, temperature, where the data come from; may be empty
 * @param unit     of all pressures, as it is to be read: {@code psi}, {@code bar}
 * @param curves   one per build
 * @param read     what gauges read
 * @param other    a second unit of the upright axis, where there is room for it
 */
public record SpeedChart(
        String title,
        String subtitle,
        String unit,
        List<PressureCurve> curves,
        List<GaugePoint> read,
        Optional<OtherUnit> other)
        implements Chart {

    /** As many curves as there are looks that differ in lightness, dashes and marker. */
    public static final int MOST_CURVES = LineLook.ALL.size();

    /** Without readings. */
    public SpeedChart(String title, String subtitle, String unit, List<PressureCurve> curves) {
        this(title, subtitle, unit, curves, List.of(), Optional.empty());
    }

    /** Checks the number of curves and their names. */
    public SpeedChart {
        curves = List.copyOf(curves);
        read = List.copyOf(read);
        Require.that(
                !curves.isEmpty() && curves.size() <= MOST_CURVES,
                "a speed chart shows 1 to " + MOST_CURVES + " curves, not " + curves.size());
        Require.distinct("curves", curves.stream().map(PressureCurve::build).toList());
    }

    /** Title of the upright axis. */
    public String axis() {
        return "line pressure [" + unit + "]";
    }

    /** Its curves, the set pressure and the marks. */
    @Override
    public int explained() {
        return curves.size() + 2;
    }

    @Override
    public Axes scale() {
        return Axes.ofCurves(
                axis(),
                curves.stream().mapToDouble(PressureCurve::low),
                curves.stream().mapToDouble(PressureCurve::high),
                DoubleStream.concat(
                        read.stream().mapToDouble(GaugePoint::high),
                        curves.stream()
                                .flatMapToDouble(curve -> DoubleStream.concat(
                                        DoubleStream.of(curve.set()),
                                        curve.points().stream().mapToDouble(PressureCurve.SweepPoint::pressure)))));
    }

    /** The same at low speeds only, under another title. */
    SpeedChart upTo(double speed, String otherTitle) {
        return new SpeedChart(
                otherTitle,
                "",
                unit,
                curves.stream().map(curve -> curve.upTo(speed)).toList(),
                read.stream().filter(point -> point.speed() <= speed).toList(),
                other);
    }

    @Override
    public void paint(Graphics2D graphics, Rectangle2D area, Axes scale) {
        new SpeedDrawing(this, scale).paint(graphics, area);
    }
}
