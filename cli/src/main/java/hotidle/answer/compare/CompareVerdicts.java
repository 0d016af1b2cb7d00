package hotidle.answer.compare;

import hotidle.answer.HubReading;
import hotidle.assess.Figures;
import hotidle.assess.IdlePressure;
import hotidle.study.Comparison;
import hotidle.study.SpeedSweep;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** What is made of a comparison: which change counts, which film is the worst, where the pump takes most power. */
final class CompareVerdicts {

    /** A change smaller than this share is called no change (assumed). */
    private static final double NOTHING = 0.02;

    /** Soon after the primary begins to bypass, the secondary is unloaded: up to this multiple of that speed (assumed). */
    private static final double UNLOADED_BY = 1.1;

    private CompareVerdicts() {}

    /** Whether a figure has not changed to speak of. */
    static boolean same(double was, double is) {
        return Math.abs(is - was) <= NOTHING * Math.max(Math.abs(was), Math.abs(is));
    }

    /** Whether more pressure is asked than before, and the pump cannot give it. */
    static boolean noMoreOil(Figures was, Figures is) {
        return is.set().orElse(Double.NaN) > was.set().orElse(Double.NaN) * (1 + NOTHING)
                && !is.regulated()
                && is.line() < was.line() * (1 + NOTHING);
    }

    /** Whether the secondary no longer balances the primary's side load at a speed [rev/s]. */
    static boolean unbalanced(SpeedSweep sweep, double speed) {
        OptionalDouble unloading = sweep.unloading();
        OptionalDouble bypassing = sweep.bypassing();
        return unloading.isPresent()
                && bypassing.isPresent()
                && speed >= unloading.getAsDouble()
                && speed <= UNLOADED_BY * bypassing.getAsDouble();
    }

    /** The cell whose oil leaves the hub its thinnest film over all speeds; one in metal contact before any other. */
    static Comparison.BuildAtDuty worstFilm(Stream<Comparison.BuildAtDuty> cells) {
        return cells.min(Comparator.comparingDouble(CompareVerdicts::film)).orElseThrow();
    }

    private static double film(Comparison.BuildAtDuty cell) {
        return cell.sweep().contactSpeeds().isEmpty()
                ? cell.sweep()
                        .thinnestFilm()
                        .map(state -> HubReading.of(cell.roles(), state).least().orElseThrow())
                        .orElse(Double.POSITIVE_INFINITY)
                : -1;
    }

    /** The solved cell whose pump takes most power; empty where none takes any. */
    static Optional<Comparison.BuildAtDuty> mostPower(Comparison comparison) {
        return comparison.cells().stream()
                .filter(cell -> cell.figures().isPresent())
                .max(Comparator.comparingDouble(
                        cell -> cell.figures().orElseThrow().pumpPower()))
                .filter(cell -> cell.figures().orElseThrow().pumpPower() > 0);
    }

    /** Builds with low pressure at idle, which are not to be stall-tested. */
    static List<String> lowAtIdle(Comparison comparison) {
        return comparison.cells().stream()
                .filter(cell -> IdlePressure.low(
                        cell.unit(),
                        cell.duty(),
                        cell.figures().stream().mapToDouble(Figures::line).findFirst(),
                        cell.figures().map(Figures::set).orElse(OptionalDouble.empty())))
                .map(cell -> cell.unit().build())
                .toList();
    }
}
