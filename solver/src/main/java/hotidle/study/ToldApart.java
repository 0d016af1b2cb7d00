package hotidle.study;

import hotidle.part.Setting;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Units over engine speed in the range of their first driving condition, and in as many others as it takes to tell them apart by their
 * gauges: each time that range is added which tells most pairs apart that were not yet, {@link TellingReading#APART}; of equal ones a forward range.
 *
 * @param sweeps in each of the ranges, of each unit
 * @param alike  pairs of units that read alike in all of these, since no range tells them apart, or there are too many ranges
 */
public record ToldApart(List<List<SpeedSweep>> sweeps, List<AlikePair> alike) {

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
        List<List<SpeedSweep>> chosen = new ArrayList<>(List.of(swept(units, first, speeds)));
        List<AlikePair> left = alike(chosen.get(0), pairs(units.size()));
        if (left.isEmpty()) {
            return new ToldApart(chosen, left);
        }
        List<List<SpeedSweep>> others = new ArrayList<>();
        units.get(0).ranges().stream()
                .filter(range -> !range.name().equals(first.range()))
                .sorted(Comparator.comparing((Range range) -> !range.forward()))
                .forEach(range -> others.add(swept(units, in(units.get(0), first, range.name()), speeds)));
        while (!left.isEmpty() && chosen.size() < most) {
            List<SpeedSweep> best = null;
            List<AlikePair> still = left;
            for (List<SpeedSweep> range : others) {
                List<AlikePair> then = alike(range, left);
                if (then.size() < still.size()) {
                    best = range;
                    still = then;
                }
            }
            if (best == null) {
                break;
            }
            chosen.add(best);
            left = still;
        }
        return new ToldApart(chosen, left);
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

    private static List<AlikePair> alike(List<SpeedSweep> range, List<AlikePair> among) {
        List<Integer> all =
                IntStream.range(0, range.get(0).shown().size()).boxed().toList();
        return among.stream()
                .filter(pair -> TellingReading.of(List.of(range.get(pair.one())), List.of(range.get(pair.other())), all)
                        .isEmpty())
                .toList();
    }
}
