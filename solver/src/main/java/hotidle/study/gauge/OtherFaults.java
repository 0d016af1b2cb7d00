package hotidle.study.gauge;

import hotidle.fault.FaultKind;
import hotidle.fault.UnitFault;
import hotidle.study.SpeedSweep;
import hotidle.study.TellingReading;
import hotidle.study.ToldApart;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Tap;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Faults that a handout names beside those of its units, so that a learner has to choose: each shows at its gauges, and at no size reads
 * as one of the units does.
 *
 * <pre>
 * Looked at   every gauge port, in the ranges shown, at the slowest, the middle and the fastest speed shown
 * Sizes       {@link #SIZES} of them, {@link UnitFault#sizeAt}, and the sound build; between two of them readings are taken to lie on a
 *             straight line ({@link #BETWEEN} points of it)
 * Drawn       in a shuffled order, two of a kind at most, until there are enough
 * </pre>
 */
public final class OtherFaults {

    /** Sizes of a fault that are solved (chosen). */
    private static final int SIZES = 6;

    /** Points between two of them (chosen). */
    private static final int BETWEEN = 10;

    /** Faults of a kind at most, so that a handout does not name one kind alone (chosen). */
    private static final int OF_A_KIND = 2;

    private final Adjustable sound;
    private final List<DutyPoint> duties;
    private final List<Double> speeds;
    private final double[] fresh;
    private final List<double[]> units;

    private OtherFaults(Adjustable sound, ToldApart shown) {
        this.sound = sound;
        duties = shown.sweeps().stream().map(range -> range.get(0).duty()).toList();
        List<Double> all = shown.sweeps().get(0).get(0).shown().stream()
                .map(outcome -> outcome.conditions().speed())
                .toList();
        speeds = List.of(all.get(0), all.get((all.size() - 1) / 2), all.get(all.size() - 1));
        fresh = read(shown.also(sound.unit(), speeds)).orElse(new double[0]);
        units = IntStream.range(0, shown.sweeps().get(0).size())
                .mapToObj(unit -> unit(shown, unit))
                .flatMap(Optional::stream)
                .filter(read -> apart(read, fresh))
                .toList();
    }

    private Optional<double[]> unit(ToldApart shown, int number) {
        return read(shown.also(shown.sweeps().get(0).get(number).unit(), speeds));
    }

    /**
     * Which faults a handout's gauges cannot tell: those that at some size read as one of its units does.
     *
     * @param sound  build over which the faults are laid
     * @param shown  the units of the handout
     * @param named  faults that are looked at
     * @return of each unit, in order; none of one that reads as the sound build or has no state
     */
    public static List<List<UnitFault>> alike(Adjustable sound, ToldApart shown, List<UnitFault> named) {
        OtherFaults others = new OtherFaults(sound, shown);
        Map<UnitFault, List<double[]>> paths = new LinkedHashMap<>();
        named.forEach(fault -> paths.put(fault, others.path(fault)));
        return IntStream.range(0, shown.sweeps().get(0).size())
                .mapToObj(number -> others.unit(shown, number)
                        .filter(read -> apart(read, others.fresh))
                        .map(read -> named.stream()
                                .filter(fault -> passes(paths.get(fault), read))
                                .toList())
                        .orElse(List.of()))
                .toList();
    }

    /**
     * Some of them.
     *
     * @param sound build over which the faults are laid
     * @param shown the units of the handout
     * @param laid  faults of its units
     * @param count how many at most
     * @param seed  the same, the same faults
     */
    public static List<UnitFault> of(
            Adjustable sound, ToldApart shown, List<UnitFault> laid, List<UnitFault> possible, int count, long seed) {
        OtherFaults others = new OtherFaults(sound, shown);
        List<UnitFault> shuffled = new ArrayList<>(possible.stream()
                .filter(fault -> laid.stream().noneMatch(one -> one.name().equals(fault.name())))
                .toList());
        Collections.shuffle(shuffled, new Random(seed));
        List<UnitFault> found = new ArrayList<>();
        for (UnitFault fault : shuffled) {
            if (found.size() < count && ofKind(found, fault.kind()) < OF_A_KIND && others.fits(fault)) {
                found.add(fault);
            }
        }
        return found;
    }

    private static long ofKind(List<UnitFault> found, FaultKind kind) {
        return found.stream().filter(one -> one.kind() == kind).count();
    }

    /** Whether it shows, and reads as none of the units. */
    private boolean fits(UnitFault fault) {
        List<double[]> path = path(fault);
        return path.stream().anyMatch(read -> apart(read, fresh))
                && units.stream().noneMatch(unit -> passes(path, unit));
    }

    /** What all gauges read at rising sizes of a fault, from none on where its size says how much is wrong. */
    private List<double[]> path(UnitFault fault) {
        List<double[]> path = new ArrayList<>();
        if (fault.kind().graded()) {
            path.add(fresh);
        }
        for (int i = fault.kind().graded() ? 1 : 0; i <= SIZES; i++) {
            fault.in(sound, fault.sizeAt((double) i / SIZES))
                    .flatMap(unit -> read(duties.stream()
                            .map(duty -> SpeedSweep.run(unit, duty, speeds))
                            .toList()))
                    .ifPresent(path::add);
        }
        return path;
    }

    /** Whether readings that change along straight lines come to lie on others. */
    private static boolean passes(List<double[]> path, double[] unit) {
        for (int i = 1; i < path.size(); i++) {
            for (int k = 0; k <= BETWEEN; k++) {
                if (!apart(between(path.get(i - 1), path.get(i), (double) k / BETWEEN), unit)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static double[] between(double[] from, double[] to, double way) {
        return IntStream.range(0, from.length)
                .mapToDouble(i -> from[i] + way * (to[i] - from[i]))
                .toArray();
    }

    private static boolean apart(double[] one, double[] other) {
        return IntStream.range(0, Math.min(one.length, other.length))
                .anyMatch(i -> TellingReading.apart(one[i], other[i]));
    }

    /** What all gauges read [Pa], by range, gauge and speed; empty where a state is missing. */
    private static Optional<double[]> read(List<SpeedSweep> ranges) {
        List<Double> read = new ArrayList<>();
        for (SpeedSweep range : ranges) {
            if (range.shown().stream().anyMatch(outcome -> outcome.state().isEmpty())) {
                return Optional.empty();
            }
            for (Tap tap : range.unit().taps()) {
                range.states().forEach(state -> read.add(state.pressure(tap.node())));
            }
        }
        return Optional.of(read.stream().mapToDouble(one -> one).toArray());
    }
}
