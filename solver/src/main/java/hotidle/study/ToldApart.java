package hotidle.study;

import hotidle.part.Setting;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Units over engine speed in the range of their first driving condition, and in as many others as it takes to tell them apart well by
 * their gauges: for each pair a reading that stands {@link TellingReading#apart}, by a quarter as much at least as the one at which they differ
 * most in any range. Each time that range is added which does so for most of the pairs left; of equal ones a forward range, and of
 * these that in which the pairs differ most.
 *
 * @param sweeps in each of the ranges, of each unit
 * @param alike  pairs of units that read alike in all of these, since no range tells them apart, or there are too many ranges
 */
public record ToldApart(List<List<SpeedSweep>> sweeps, List<AlikePair> alike) {

    /** A range tells two units well that shows so much of what most tells them (chosen) [-]. */
    private static final double WELL = 0.25;

    /** Two units by their numbers. */
    public record AlikePair(int one, int other) {}

    public ToldApart {
        sweeps = List.copyOf(sweeps);
        alike = List.copyOf(alike);
    }

    /**
     * Of units of one circuit.
     *
     * @param speeds [rev/s], rising
     * @param most   ranges at most
     */
    public static ToldApart of(List<Transmission> units, List<Double> speeds, int most) {
        DutyPoint first = units.get(0).duties().get(0);
        List<List<SpeedSweep>> all = new ArrayList<>(List.of(swept(units, first, speeds)));
        units.get(0).ranges().stream()
                .filter(range -> !range.name().equals(first.range()))
                .sorted(Comparator.comparing((Range range) -> !range.forward()))
                .forEach(range -> all.add(swept(units, in(units.get(0), first, range.name()), speeds)));
        List<PairApart> pairs = pairs(units.size()).stream()
                .map(pair -> new PairApart(
                        pair, all.stream().map(range -> furthest(range, pair)).toList()))
                .toList();
        List<Boolean> forward = all.stream()
                .map(range -> units.get(0).ranges().stream()
                        .anyMatch(one -> one.forward()
                                && one.name().equals(range.get(0).duty().range())))
                .toList();
        List<Integer> chosen = chosen(pairs, forward, most);
        return new ToldApart(
                chosen.stream().map(all::get).toList(),
                pairs.stream()
                        .filter(pair ->
                                chosen.stream().allMatch(range -> pair.off().get(range) == 0))
                        .map(PairApart::pair)
                        .toList());
    }

    /**
     * How far two units stand apart.
     *
     * @param off in each range, at the reading at which they differ most [Pa]; 0 where none tells them
     */
    private record PairApart(AlikePair pair, List<Double> off) {
        /** Whether a range tells them well. */
        boolean toldIn(int range) {
            return off.get(range) > 0
                    && off.get(range)
                            >= WELL * off.stream().mapToDouble(one -> one).max().orElseThrow();
        }
    }

    /** Numbers of the ranges that are shown, that of the first driving condition first. */
    private static List<Integer> chosen(List<PairApart> pairs, List<Boolean> forward, int most) {
        List<Integer> chosen = new ArrayList<>(List.of(0));
        while (chosen.size() < most) {
            List<PairApart> left = pairs.stream()
                    .filter(pair -> chosen.stream().noneMatch(pair::toldIn))
                    .toList();
            Optional<Integer> best = IntStream.range(1, forward.size())
                    .boxed()
                    .filter(range -> left.stream().anyMatch(pair -> pair.toldIn(range)))
                    .max(Comparator.comparingLong((Integer range) -> left.stream()
                                    .filter(pair -> pair.toldIn(range))
                                    .count())
                            .thenComparing(forward::get)
                            .thenComparingDouble(range -> left.stream()
                                    .mapToDouble(pair -> pair.off().get(range))
                                    .sum())
                            .thenComparing(Comparator.reverseOrder()));
            if (best.isEmpty()) {
                break;
            }
            chosen.add(best.get());
        }
        return chosen;
    }

    /** Another unit in the same ranges, over the same speeds. */
    public List<SpeedSweep> also(Transmission unit, List<Double> speeds) {
        return sweeps.stream()
                .map(range -> SpeedSweep.run(unit, range.get(0).duty(), speeds))
                .toList();
    }

    /** A driving condition in another range, with the solenoids of that range where a driving condition tells them. */
    private static DutyPoint in(Transmission unit, DutyPoint first, String range) {
        Map<String, Double> commands = unit.duties().stream()
                .filter(duty -> duty.range().equals(range) && duty.lockup() == Setting.Lockup.OFF)
                .map(DutyPoint::commands)
                .findFirst()
                .orElse(Map.of());
        return first.inRange(range).with(first.lockup(), commands);
    }

    private static List<SpeedSweep> swept(List<Transmission> units, DutyPoint duty, List<Double> speeds) {
        return units.stream().map(unit -> SpeedSweep.run(unit, duty, speeds)).toList();
    }

    private static List<AlikePair> pairs(int units) {
        return IntStream.range(0, units)
                .boxed()
                .flatMap(i -> IntStream.range(i + 1, units).mapToObj(k -> new AlikePair(i, k)))
                .toList();
    }

    private static double furthest(List<SpeedSweep> range, AlikePair pair) {
        List<Integer> all =
                IntStream.range(0, range.get(0).shown().size()).boxed().toList();
        return TellingReading.of(List.of(range.get(pair.one())), List.of(range.get(pair.other())), all).stream()
                .mapToDouble(TellingReading::off)
                .findFirst()
                .orElse(0);
    }
}
