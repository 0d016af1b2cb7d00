package hotidle.study;

import hotidle.study.TorqueHeld.Carrier;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/**
 * Asks of set pressures whether all clutches hold an engine torque in every range.
 *
 * @param raised   makes the unit for each set pressure
 * @param torque   of the engine [N·m]
 * @param speed    of the engine [rev/s]
 * @param unsolved ranges in which a state looked for was not found, so that it counts as not holding; grows while it is asked
 */
record ClutchTrial(Window.Raised raised, double torque, double speed, Set<String> unsolved) {

    /** Pressures are narrowed down to this share (chosen) [-]. */
    private static final double NARROW = 1e-3;

    ClutchTrial(Window.Raised raised, double torque, double speed) {
        this(raised, torque, speed, new TreeSet<>());
    }

    /**
     * Something that carries, and the range in which it is loaded.
     *
     * @param range its name
     * @param link  with the engine torque that it carries there
     */
    record Borne(String range, Carrier link) {}

    /** What by its rating carries least engine torque in any range, whatever the pressure; empty where nothing has a rating. */
    static Optional<Borne> leastRated(Transmission unit, double speed) {
        return applying(unit).stream()
                .flatMap(
                        range -> search(unit, range, speed).links().stream().map(link -> new Borne(range.name(), link)))
                .min(Comparator.comparingDouble(one -> one.link().torque()));
    }

    /** Lowest set pressure at which they hold [Pa], between the pressures tried; empty where they hold at none of them. */
    OptionalDouble lowest(List<Double> pressures) {
        for (int i = 0; i < pressures.size(); i++) {
            if (holds(pressures.get(i))) {
                return OptionalDouble.of(i == 0 ? pressures.get(0) : between(pressures.get(i - 1), pressures.get(i)));
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

    /** Whether they hold at a set pressure [Pa]. */
    boolean holds(double pressure) {
        Transmission unit = raised.to(pressure, Set.of());
        boolean all = true;
        for (Range range : applying(unit)) {
            TorqueSearch.Tried tried = search(unit, range, speed).tried(torque, speed);
            if (tried.outcome().unsolved().isPresent()) {
                unsolved.add(range.name());
            }
            all &= tried.holds(torque);
        }
        return all;
    }

    /** The clutch that carries least at a set pressure [Pa] while the line is commanded for the torque; empty where no state was found. */
    Optional<Borne> weakest(double pressure) {
        Transmission unit = raised.to(pressure, Set.of());
        return applying(unit).stream()
                .flatMap(range -> search(unit, range, speed).tried(torque, speed).clutches().stream()
                        .filter(clutch -> !Double.isNaN(clutch.torque()))
                        .map(clutch -> new Borne(range.name(), clutch)))
                .min(Comparator.comparingDouble(one -> one.link().torque()));
    }

    private static List<Range> applying(Transmission unit) {
        return unit.ranges().stream()
                .filter(range -> !range.applied().isEmpty())
                .toList();
    }

    private static TorqueSearch search(Transmission unit, Range range, double speed) {
        return new TorqueSearch(unit, range, TorqueConditions.of(unit, range, speed));
    }
}
