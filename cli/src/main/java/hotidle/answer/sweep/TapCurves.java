package hotidle.answer.sweep;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.Rpm;
import hotidle.plots.FigureCurve;
import hotidle.plots.PressureCurve;
import hotidle.result.Outcome;
import hotidle.study.SpeedSweep;
import hotidle.transmission.Tap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the gauge ports of some swept units read. */
public record TapCurves(Quantity.UnitSystem units, List<SpeedSweep> sweeps) {

    /** A gauge that reads less in every unit at every speed tells nothing (chosen) [Pa]. */
    private static final double NOTHING = 7000;

    /** Gauges that read something in some unit, those of the file's beginning first. */
    public List<Tap> taps() {
        return sweeps.get(0).unit().taps().stream()
                .filter(tap -> sweeps.stream()
                        .flatMap(sweep -> sweep.states().stream())
                        .anyMatch(state -> state.pressure(tap.node()) > NOTHING))
                .toList();
    }

    /**
     * A unit's gauge over engine speed.
     *
     * @param name    in the legend
     * @param missing what a gap means
     */
    public FigureCurve curve(String name, SpeedSweep sweep, Tap tap, String missing) {
        return new FigureCurve(
                name,
                sweep.shown().stream()
                        .map(outcome -> new PressureCurve.SweepPoint(
                                Rpm.of(outcome.conditions().speed()), pressure(outcome, tap)))
                        .toList(),
                Optional.empty(),
                OptionalDouble.empty(),
                missing);
    }

    private double pressure(Outcome outcome, Tap tap) {
        return outcome.state()
                .map(state -> Quantity.PRESSURE.value(units, state.pressure(tap.node())))
                .orElse(Double.NaN);
    }
}
