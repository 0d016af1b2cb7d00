package hotidle.study.gauge;

import hotidle.fault.UnitFault;
import hotidle.network.Conditions;
import hotidle.newton.Series;
import hotidle.newton.SolvedState;
import hotidle.newton.SteadySolver;
import hotidle.result.Solution;
import hotidle.transmission.Adjustable;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * Units of one build with a fault each that were solved, kept for who asks again: what they read at a test point depends neither on what
 * else is read nor on what the gauges showed. What is found with them has the same bits as without. May be used by many threads.
 */
public final class SolvedFaults {

    /** Once more test points were asked for, all is forgotten: each holds some megabytes (chosen). */
    private static final int MOST_POINTS = 12;

    private final Tolerances tolerances;
    private final List<Tolerances.Shift> shifts;
    private final List<Meter> meters;
    private final SteadySolver solver;
    private final Series series;
    private final Map<TestPoint, Optional<SoundState>> sound = new ConcurrentHashMap<>();
    private final Map<TestPoint, Optional<DeliverySpread>> spreads = new ConcurrentHashMap<>();
    private final Map<Chain, List<Optional<MetersAtPoint>>> solved = new ConcurrentHashMap<>();

    /** Of a build; nothing is solved yet. */
    public SolvedFaults(Adjustable build) {
        tolerances = Tolerances.of(build);
        shifts = tolerances.shifts();
        meters = Meter.of(build.unit());
        solver = new SteadySolver(build.unit().network());
        series = new Series(build.unit().network());
    }

    /**
     * Solves what readings are compared with, for who will ask soon what may explain such readings.
     *
     * @param readings whose meters, test points and gauges count; their values do not
     * @param step     called after each fault, from any thread; what it throws ends the work
     * @throws UnsolvedPointException where the sound unit has no state at a test point
     */
    public void solve(List<GaugeReading> readings, Runnable step) {
        GaugeTable.of(this, readings, step);
    }

    Tolerances tolerances() {
        return tolerances;
    }

    List<Tolerances.Shift> shifts() {
        return shifts;
    }

    /** All of the unit: which of them are read next time is not known. */
    List<Meter> meters() {
        return meters;
    }

    /**
     * The sound unit at a test point.
     *
     * @param whole its state
     * @param start the same for a series to start from
     */
    record SoundState(Solution whole, SolvedState start) {

        /** From a cold start; empty where none is found. */
        static Optional<SoundState> of(SteadySolver solver, Series series, Conditions conditions) {
            return solver.solve(conditions).state().map(state -> new SoundState(state, series.start(state)));
        }
    }

    /** A fault told by its name: the same of the same build. */
    private record SizedByName(String fault, double size) {
        static SizedByName of(UnitFault.Sized one) {
            return new SizedByName(one.fault().name(), one.size());
        }
    }

    /** Units that are solved one from the other at a test point. */
    private record Chain(List<List<SizedByName>> units, BitSet asked, TestPoint point, StartStates.Start from) {}

    /** The state of the sound unit at a test point, from a cold start. */
    synchronized Optional<SoundState> sound(TestPoint point) {
        if (!sound.containsKey(point) && sound.size() >= MOST_POINTS) {
            forget();
        }
        return sound.computeIfAbsent(
                point,
                at -> SoundState.of(
                        solver, series, at.conditions(tolerances.build().unit())));
    }

    /** By how much sound units differ at a test point in the oil that they have to spare. */
    Optional<DeliverySpread> spread(TestPoint point, Supplier<Optional<DeliverySpread>> solve) {
        return spreads.computeIfAbsent(point, unused -> solve.get());
    }

    private void forget() {
        sound.clear();
        spreads.clear();
        solved.clear();
    }

    /** What a chain of units comes to; pairs of faults, which hardly anybody asks for again, are not kept. */
    List<Optional<MetersAtPoint>> of(
            List<List<UnitFault.Sized>> units,
            Set<Integer> asked,
            TestPoint point,
            StartStates.Start from,
            Supplier<List<Optional<MetersAtPoint>>> solve) {
        if (units.stream().anyMatch(faults -> faults.size() > 1)) {
            return solve.get();
        }
        BitSet these = new BitSet();
        asked.forEach(these::set);
        List<List<SizedByName>> named = units.stream()
                .map(faults -> faults.stream().map(SizedByName::of).toList())
                .toList();
        return solved.computeIfAbsent(new Chain(named, these, point, from), unused -> solve.get());
    }
}
