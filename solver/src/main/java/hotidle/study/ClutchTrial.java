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

/** Asks of set pressures whether all clutches hold an engine torque in every range, each state started from that at the one before. */
final class ClutchTrial {

    /** Pressures are narrowed down to this share (chosen) [-]. */
    private static final double NARROW = 1e-3;

    private final Window.Raised raised;
    private final double torque;
    private final double speed;
    private final Set<String> unsolved = new TreeSet<>();
    private List<TorqueSearch> searches = List.of();

    /**
     * A trial.
     *
     * @param raised makes the unit for each set pressure
     * @param torque of the engine [N·m]
     * @param speed  of the engine [rev/s]
     */
    ClutchTrial(Window.Raised raised, double torque, double speed) {
        this.raised = raised;
        this.torque = torque;
        this.speed = speed;
    }

    /** Torque of the engine that it asks about [N·m]. */
    double torque() {
        return torque;
    }

    /** Ranges in which a state looked for up to now was not found, so that it counts as not holding. */
    Set<String> unsolved() {
        return unsolved;
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
                .flatMap(range -> new TorqueSearch(unit, range, speed)
                        .links().stream().map(link -> new Borne(range.name(), link)))
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
        boolean all = true;
        for (TorqueSearch search : at(pressure)) {
            TorqueSearch.Tried tried = search.tried(torque, speed);
            if (tried.outcome().unsolved().isPresent()) {
                unsolved.add(search.range().name());
            }
            all &= tried.holds(torque);
        }
        return all;
    }

    /** The clutch that carries least at a set pressure [Pa] while the line is commanded for the torque; empty where no state was found. */
    Optional<Borne> weakest(double pressure) {
        return at(pressure).stream()
                .flatMap(search -> search.tried(torque, speed).clutches().stream()
                        .map(clutch -> new Borne(search.range().name(), clutch)))
                .min(Comparator.comparingDouble(one -> one.link().torque()));
    }

    private static List<Range> applying(Transmission unit) {
        return unit.ranges().stream()
                .filter(range -> !range.applied().isEmpty())
                .toList();
    }

    /** The searches of all ranges at a set pressure [Pa]. */
    private List<TorqueSearch> at(double pressure) {
        Transmission unit = raised.to(pressure, Set.of());
        searches = searches.isEmpty()
                ? applying(unit).stream()
                        .map(range -> new TorqueSearch(unit, range, speed))
                        .toList()
                : searches.stream().map(search -> search.onwards(unit)).toList();
        return searches;
    }
}
