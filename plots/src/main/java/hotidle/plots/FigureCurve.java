package hotidle.plots;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One figure of one build against speed.
 *
 * @param build   its name
 * @param points  by rising speed, the figure in place of a pressure, NaN in a gap
 * @param mark    the point that matters most; empty without one
 * @param unloads speed from which the secondary is unloaded [rpm]; empty if it is not
 * @param gap     why points are missing, for example metal contact
 */
public record FigureCurve(
        String build,
        List<PressureCurve.SweepPoint> points,
        Optional<LabelledPoint> mark,
        OptionalDouble unloads,
        String gap) {

    /**
     * A point with a text beside it.
     *
     * @param speed [rpm]
     * @param value on the upright axis
     * @param text  as it is to be read
     */
    public record LabelledPoint(double speed, double value, String text) {}

    /** Checks the speeds. */
    public FigureCurve {
        points = List.copyOf(points);
        Require.speeds(
                "curve '" + build + "'",
                points.stream().map(PressureCurve.SweepPoint::speed).toList());
    }

    /** The same with the text of its mark, which names the build, in place of the name. */
    String told() {
        return mark.map(point -> point.text() + legend().substring(build.length()))
                .orElseGet(this::legend);
    }

    /** What the legend says of it. */
    String legend() {
        long missing = points.stream().filter(point -> !point.solved()).count();
        return missing == 0 ? build : build + "; " + gap + " at " + Style.speeds(missing) + " (gap)";
    }
}
