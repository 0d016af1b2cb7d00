package hotidle.study;

import hotidle.study.TorqueHeld.Carrier;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The highest set pressure that still buys torque. Clutches hold more with pressure, what has a rating does not: from the crossing on
 * that gives first, in the range that loads it most, and a higher pressure buys leakage and heat alone.
 *
 * @param weakest  what by its rating carries least engine torque in any range; empty where nothing has a rating
 * @param range    in which it does; empty where nothing has a rating
 * @param pressure lowest set pressure tried at which every clutch holds that torque in every range [Pa]; empty where none does
 * @param lowest   tried [Pa]
 * @param highest  tried [Pa]
 * @param unsolved ranges in which a state looked for was not found, so that it counts as not holding
 */
public record UsefulPressure(
        Optional<Carrier> weakest,
        String range,
        OptionalDouble pressure,
        double lowest,
        double highest,
        List<String> unsolved) {

    /** Pressures are narrowed down to this share (chosen) [-]. */
    private static final double NARROW = 1e-3;

    public UsefulPressure {
        unsolved = List.copyOf(unsolved);
    }

    /** What a range bears by ratings. */
    private record Borne(Range range, Carrier link) {}

    /**
     * Looks for it.
     *
     * @param unit      commanded
     * @param raised    makes it for each set pressure
     * @param pressures tried [Pa], rising, two or more
     * @param speed     of the engine [rev/s]
     * @throws IllegalArgumentException where no duty point under load gives the temperatures of all regions
     */
    public static UsefulPressure of(Transmission unit, Window.Raised raised, List<Double> pressures, double speed) {
        double lowest = pressures.get(0);
        double highest = pressures.get(pressures.size() - 1);
        Optional<Borne> least = applying(unit).stream()
                .flatMap(range -> search(unit, range, speed).links().stream().map(link -> new Borne(range, link)))
                .min(Comparator.comparingDouble(one -> one.link().torque()));
        if (least.isEmpty()) {
            return new UsefulPressure(Optional.empty(), "", OptionalDouble.empty(), lowest, highest, List.of());
        }
        Trial trial = new Trial(raised, least.get().link().torque(), speed, new java.util.TreeSet<>());
        OptionalDouble crossing = trial.lowest(pressures);
        return new UsefulPressure(
                Optional.of(least.get().link()),
                least.get().range().name(),
                crossing,
                lowest,
                highest,
                List.copyOf(trial.unsolved));
    }

    /** Whether it lies between two of the pressures tried; else clutches give first at all of them, or at none. */
    public boolean crosses() {
        return pressure.isPresent() && pressure.getAsDouble() > lowest;
    }

    private static List<Range> applying(Transmission unit) {
        return unit.ranges().stream()
                .filter(range -> !range.applied().isEmpty())
                .toList();
    }

    private static TorqueSearch search(Transmission unit, Range range, double speed) {
        return new TorqueSearch(unit, range, TorqueConditions.of(unit, range, speed));
    }

    /** An engine torque [N·m] that clutches hold at a set pressure, or do not. */
    private record Trial(Window.Raised raised, double torque, double speed, Set<String> unsolved) {

        OptionalDouble lowest(List<Double> pressures) {
            for (int i = 0; i < pressures.size(); i++) {
                if (holds(pressures.get(i))) {
                    return OptionalDouble.of(
                            i == 0 ? pressures.get(0) : between(pressures.get(i - 1), pressures.get(i)));
                }
            }
            return OptionalDouble.empty();
        }

        private double between(double low, double high) {
            double not = low;
            double held = high;
            while (held - not > NARROW * high) {
                double middle = (held + not) / 2;
                if (holds(middle)) {
                    held = middle;
                } else {
                    not = middle;
                }
            }
            return held;
        }

        private boolean holds(double pressure) {
            Transmission unit = raised.to(pressure, Set.of());
            boolean all = true;
            for (Range range : applying(unit)) {
                TorqueSearch.Tried tried = search(unit, range, speed).tried(torque, speed);
                if (tried.outcome().unsolved().isPresent()) {
                    unsolved.add(range.name());
                }
                all &= tried.least() >= torque;
            }
            return all;
        }
    }
}
