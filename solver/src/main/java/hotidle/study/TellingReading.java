package hotidle.study;

import hotidle.result.Outcome;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Tap;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A gauge reading at which two units differ.
 *
 * @param speed engine speed [rev/s]
 * @param value of the one [Pa]
 * @param other of the other [Pa]
 */
public record TellingReading(Tap tap, String range, double speed, double value, double other) {

    /** No nearer to each other do two readings stand apart: two gauges, each off by 1 psi (assumed) [Pa]. */
    public static final double APART = 2 * SetPressure.PSI;

    /** A difference that is a smaller share of the reading is not seen on a chart of a hand's width (chosen) [-]. */
    private static final double SEEN = 0.03;

    /** Whether two readings [Pa] stand apart for whoever reads them off a gauge or a chart: {@link #APART}, and 3 % of the larger. */
    public static boolean apart(double one, double other) {
        double off = Math.abs(one - other);
        return off > APART && off > SEEN * Math.max(Math.abs(one), Math.abs(other));
    }

    /** Whether they stand {@link #apart(double, double)}. */
    public boolean seen() {
        return apart(value, other);
    }

    /** By how much they differ [Pa]. */
    public double off() {
        return Math.abs(value - other);
    }

    /**
     * Where two units stand {@link #apart}, most first, each gauge of a range once.
     *
     * @param one   in some ranges, over the same speeds
     * @param other in the same ranges
     * @param at    numbers of the speeds that are looked at
     */
    public static List<TellingReading> of(List<SpeedSweep> one, List<SpeedSweep> other, List<Integer> at) {
        List<TellingReading> found = new ArrayList<>();
        for (int range = 0; range < one.size(); range++) {
            for (Tap tap : one.get(range).unit().taps()) {
                SpeedSweep mine = one.get(range);
                SpeedSweep theirs = other.get(range);
                at.stream()
                        .flatMap(i -> at(mine, theirs, tap, i))
                        .max(Comparator.comparingDouble(TellingReading::off))
                        .filter(TellingReading::seen)
                        .ifPresent(found::add);
            }
        }
        found.sort(Comparator.comparingDouble((TellingReading reading) -> -reading.off()));
        return found;
    }

    private static Stream<TellingReading> at(SpeedSweep one, SpeedSweep other, Tap tap, int i) {
        Outcome mine = one.shown().get(i);
        Optional<Double> value = mine.state().map(state -> state.pressure(tap.node()));
        Optional<Double> theirs = other.shown().get(i).state().map(state -> state.pressure(tap.node()));
        return value.isPresent() && theirs.isPresent()
                ? Stream.of(new TellingReading(
                        tap, one.duty().range(), mine.conditions().speed(), value.get(), theirs.get()))
                : Stream.empty();
    }
}
