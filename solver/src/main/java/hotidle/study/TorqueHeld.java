package hotidle.study;

import hotidle.geartrain.Drive.Driven;
import hotidle.geartrain.Link;
import hotidle.network.Placed;
import hotidle.newton.SteadySolver;
import hotidle.part.Clutch;
import hotidle.result.Outcome;
import hotidle.result.Solution;
import hotidle.result.Unsolved;
import hotidle.transmission.Curve;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The highest engine torque that a build holds in one range, at the pressure that it really has there. The line is commanded for that
 * torque and then solved, so that a pump which does not bring what is commanded counts. A clutch counts with its holding friction and
 * the factor of its file, and without the head of its drum where the turbine's speed is not known; lockup is off.
 *
 * <pre>
 * Numerics  torques are tried at each row of the command, up to the first that is not held, and halved between that and the row
 *           before; beyond the last row the last command holds and the torque follows at once. Above the first that is not held
 *           nothing is looked for
 * </pre>
 *
 * @param range       the range
 * @param ratio       of the gear train [-]; empty where it is not given
 * @param at          under what it was found
 * @param held        what it holds; empty where nothing was found
 * @param unsolved    why nothing was found
 */
public record TorqueHeld(
        String range, OptionalDouble ratio, TorqueConditions at, Optional<Held> held, Optional<Unsolved> unsolved) {

    /** Torque is found to this share. */
    private static final double SHARE = 1e-4;

    /** The lowest speed at which this share of the torque is still held is told: the rise over the set pressure is less (chosen). */
    private static final double STILL = 0.9;

    /**
     * What is held.
     *
     * @param torque    highest engine torque [N·m]
     * @param line      line pressure there [Pa]
     * @param commanded set pressure there [Pa]; empty where nothing is commanded
     * @param beyond    whether it lies beyond the last row of the command, which is held on
     * @param from      lowest engine speed from which nine tenths of it are held [rev/s]; empty where they are at the slowest duty point
     * @param links     all that carries, the first to give first
     */
    public record Held(
            double torque,
            double line,
            OptionalDouble commanded,
            boolean beyond,
            OptionalDouble from,
            List<Carrier> links) {
        public Held {
            links = List.copyOf(links);
        }
    }

    /**
     * Something that carries.
     *
     * @param name   of the clutch or link
     * @param clutch whether line pressure makes it hold
     * @param torque highest engine torque that it carries at the pressure there [N·m]
     * @param shared whether it shares its load with another in a way that is not known, and is judged alone
     */
    public record Carrier(String name, boolean clutch, double torque, boolean shared) {}

    /** What one build holds in each range in which something is applied, in the order of the file. */
    public static List<TorqueHeld> of(Transmission unit, double speed) {
        return unit.ranges().stream().filter(range -> !range.applied().isEmpty()).toList().parallelStream()
                .map(range -> new Search(unit, range, TorqueConditions.of(unit, range, speed)).held())
                .toList();
    }

    private record Search(Transmission unit, Range range, TorqueConditions at) {

        /** A state and what each clutch carries in it. */
        private record Tried(Outcome outcome, List<Carrier> clutches) {
            double least() {
                return clutches.stream().mapToDouble(Carrier::torque).min().orElse(Double.POSITIVE_INFINITY);
            }
        }

        TorqueHeld held() {
            OptionalDouble ratio =
                    range.driven().stream().mapToDouble(Driven::ratio).findFirst();
            List<Carrier> links = links();
            double bearable = links.stream().mapToDouble(Carrier::torque).min().orElse(Double.POSITIVE_INFINITY);
            Tried nothing = tried(0, at.speed());
            if (nothing.outcome.unsolved().isPresent()) {
                return new TorqueHeld(range.name(), ratio, at, Optional.empty(), nothing.outcome.unsolved());
            }
            double held = Math.min(bearable, byPressure(nothing));
            Tried there = tried(held, at.speed());
            return there.outcome
                    .state()
                    .map(state -> new TorqueHeld(
                            range.name(), ratio, at, Optional.of(held(held, state, there, links)), Optional.empty()))
                    .orElseGet(
                            () -> new TorqueHeld(range.name(), ratio, at, Optional.empty(), there.outcome.unsolved()));
        }

        private Held held(double torque, Solution state, Tried there, List<Carrier> links) {
            List<Carrier> all = new ArrayList<>(there.clutches);
            all.addAll(links);
            all.sort(Comparator.comparingDouble(Carrier::torque));
            String line = unit.commanded().map(command -> command.line()).orElseThrow();
            return new Held(
                    torque,
                    state.pressure(line),
                    unit.setPressure(state.conditions()),
                    torque > lastRow(),
                    from(torque),
                    all);
        }

        /** The torque that all clutches hold. */
        private double byPressure(Tried nothing) {
            double below = 0;
            Tried before = nothing;
            for (double row : rows()) {
                Tried here = tried(row, at.speed());
                if (!(here.least() >= row)) {
                    return between(below, row);
                }
                below = row;
                before = here;
            }
            return before.least();
        }

        private double between(double low, double high) {
            double held = low;
            double not = high;
            while (not - held > SHARE * high) {
                double middle = (held + not) / 2;
                if (tried(middle, at.speed()).least() >= middle) {
                    held = middle;
                } else {
                    not = middle;
                }
            }
            return held;
        }

        /** Lowest speed from which on nearly the same is held. */
        private OptionalDouble from(double torque) {
            double slow =
                    unit.duties().stream().mapToDouble(DutyPoint::speed).min().orElse(at.speed());
            double asked = STILL * torque;
            if (slow >= at.speed() || tried(asked, slow).least() >= asked) {
                return OptionalDouble.empty();
            }
            double not = slow;
            double held = at.speed();
            while (held - not > 10 / 60.0) {
                double middle = (held + not) / 2;
                if (tried(asked, middle).least() >= asked) {
                    held = middle;
                } else {
                    not = middle;
                }
            }
            return OptionalDouble.of(held);
        }

        private List<Double> rows() {
            return unit.commanded().flatMap(command -> command.pilot()).stream()
                    .flatMap(pilot -> pilot.lineByTorque().points().stream())
                    .map(Curve.Knot::x)
                    .filter(torque -> torque > 0)
                    .toList();
        }

        private double lastRow() {
            List<Double> rows = rows();
            return rows.isEmpty() ? Double.POSITIVE_INFINITY : rows.get(rows.size() - 1);
        }

        private List<Carrier> links() {
            if (unit.gears().isEmpty() || range.driven().isEmpty()) {
                return List.of();
            }
            Transmission.Gears gears = unit.gears().get();
            List<Carrier> links = new ArrayList<>();
            for (Link link : gears.links()) {
                link.share(gears.train(), range.driven().get())
                        .ifPresent(share -> links.add(new Carrier(
                                link.name(), false, link.rating() / share / at.torqueRatio(), shared(link.carries()))));
            }
            return links;
        }

        private boolean shared(String name) {
            return range.driven()
                    .map(driven -> driven.loads().get(name))
                    .map(load -> load.shared())
                    .orElse(false);
        }

        private Tried tried(double torque, double speed) {
            Outcome outcome =
                    new SteadySolver(unit.network()).solve(unit.conditions(at.duty(torque, speed)), Optional.empty());
            return new Tried(outcome, outcome.state().map(this::clutches).orElse(List.of(none())));
        }

        /** In place of clutches where no state was found: what is not known does not hold. */
        private static Carrier none() {
            return new Carrier("", true, Double.NaN, false);
        }

        private List<Carrier> clutches(Solution state) {
            List<Carrier> found = new ArrayList<>();
            for (Placed placed : unit.network().parts()) {
                Range.Applied applied = range.applied().get(placed.name());
                if (applied != null && applied.torqueShare() != 0 && placed.part() instanceof Clutch clutch) {
                    double capacity =
                            clutch.capacity(state.pressure(placed.nodes().get(0)), head(state, placed, applied), false);
                    double torque = capacity / clutch.factor() / Math.abs(applied.torqueShare()) / at.torqueRatio();
                    found.add(new Carrier(placed.name(), true, torque, shared(placed.name())));
                }
            }
            return found;
        }

        private double head(Solution state, Placed placed, Range.Applied applied) {
            Clutch clutch = (Clutch) placed.part();
            double density = state.conditions().setting(placed).oil().liquidDensity();
            double turning = clutch.head(
                    density, applied.speedRatio() * state.conditions().speed());
            return at.torqueRatio() == 1 ? turning : Math.min(turning, 0);
        }
    }
}
