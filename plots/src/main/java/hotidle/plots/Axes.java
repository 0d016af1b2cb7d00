package hotidle.plots;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * What the charts of one picture share, so that they can be compared by eye.
 *
 * @param low   least speed [rpm]
 * @param high  greatest speed [rpm]
 * @param tops  upper end of each kind of upright axis, by its title with the unit [the unit in the title]
 * @param bands names of all bands, in the order of their looks
 * @param key   whether the picture explains the bands once for several charts
 */
public record Axes(double low, double high, Map<String, Double> tops, List<String> bands, boolean key) {

    /** Keeps copies. */
    public Axes {
        tops = Map.copyOf(tops);
        bands = List.copyOf(bands);
    }

    /** Room above the topmost point of a chart of curves, as a multiple of it, for texts. */
    private static final double ROOM_ABOVE = 1.12;

    /**
     * Those of a chart of curves.
     *
     * @param axis title of the upright axis
     * @param lows  least place of each curve, at least one
     * @param highs greatest place of each
     * @param tops  heights that must be on the chart, at least one of them finite
     */
    static Axes ofCurves(String axis, DoubleStream lows, DoubleStream highs, DoubleStream tops) {
        double top = tops.filter(Double::isFinite).max().orElseThrow();
        return new Axes(
                lows.min().orElseThrow(),
                highs.max().orElseThrow(),
                Map.of(axis, top > 0 ? ROOM_ABOVE * top : 1),
                List.of(),
                false);
    }

    /** A scale that holds both. */
    public Axes merge(Axes other) {
        Map<String, Double> all = new LinkedHashMap<>(tops);
        other.tops.forEach((title, top) -> all.merge(title, top, Math::max));
        return new Axes(
                Math.min(low, other.low),
                Math.max(high, other.high),
                all,
                Stream.concat(bands.stream(), other.bands.stream()).distinct().toList(),
                key || other.key || (!bands.isEmpty() && !other.bands.isEmpty()));
    }
}
