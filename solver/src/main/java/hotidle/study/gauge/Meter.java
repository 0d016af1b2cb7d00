package hotidle.study.gauge;

import hotidle.network.Placed;
import hotidle.newton.Linearised;
import hotidle.newton.Series;
import hotidle.part.Cooler;
import hotidle.part.LubeBranch;
import hotidle.part.Passage;
import hotidle.result.Solution;
import hotidle.transmission.Tap;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is read: the pressure at a gauge tap, or the flow through a part that lies in a line which can be opened.
 *
 * @param name  of the tap, or of the part
 * @param node  whose pressure is read, or from which the flow comes
 * @param reads which of both
 */
public record Meter(String name, String node, Reads reads) {

    /** What a meter reads. */
    public enum Reads {
        /** Gauge pressure [Pa]. */
        PRESSURE,
        /** Volume flow at the part's temperature [m³/s]. */
        FLOW
    }

    /** All meters that can be fitted to a unit: its taps, then cooler, passages and lubrication branches. */
    public static List<Meter> of(Transmission unit) {
        List<Meter> meters = new ArrayList<>();
        for (Tap tap : unit.taps()) {
            meters.add(new Meter(tap.name(), tap.node(), Reads.PRESSURE));
        }
        for (Placed placed : unit.network().parts()) {
            boolean line = placed.part() instanceof Cooler
                    || placed.part() instanceof Passage
                    || placed.part() instanceof LubeBranch;
            if (line && meters.stream().noneMatch(meter -> meter.name().equals(placed.name()))) {
                meters.add(new Meter(placed.name(), placed.nodes().get(0), Reads.FLOW));
            }
        }
        return meters;
    }

    /** The meter of a name. */
    public static Optional<Meter> of(Transmission unit, String name) {
        return of(unit).stream().filter(meter -> meter.name().equals(name)).findFirst();
    }

    /** What it reads of the state solved last [Pa] or [m³/s]. */
    double read(Series series) {
        return solved(series) ? read(series, Optional.empty()) : read(series.state());
    }

    /** The same where that state is known whole, if one of the meters asks for more of it than a {@link #solved} pressure. */
    double read(Series series, Optional<Solution> whole) {
        return solved(series) ? series.value(series.number(node)) : read(whole.orElseThrow());
    }

    /** Whether it reads an unknown of a series, for which a state need not be made whole. */
    boolean solved(Series series) {
        return reads == Reads.PRESSURE && series.knows(node);
    }

    private double read(Solution state) {
        return reads == Reads.PRESSURE ? state.pressure(node) : state.flow(name);
    }

    /** Its slopes by each unknown; that the density of a flow changes with pressure is left out, which is below 1 % of them. */
    double[] slopes(Linearised linearised, Series series, Optional<Solution> whole) {
        double[] slopes = new double[linearised.size()];
        if (reads == Reads.PRESSURE) {
            if (series.knows(node)) {
                slopes[series.number(node)] = 1;
            }
            return slopes;
        }
        double perMass = perMass(whole.orElseThrow());
        double[] mass = linearised.leaving(node, name::equals);
        for (int i = 0; i < slopes.length; i++) {
            slopes[i] = mass[i] * perMass;
        }
        return slopes;
    }

    /** Volume over mass of the oil through the part [m³/kg]. */
    private double perMass(Solution state) {
        return state.streams().stream()
                .filter(stream -> stream.part().equals(name) && stream.mass() != 0)
                .mapToDouble(stream -> stream.volume() / stream.mass())
                .findFirst()
                .orElse(0);
    }
}
