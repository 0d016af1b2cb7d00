package hotidle.transmission;

import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.part.SpoolSpring;
import hotidle.part.SpoolValve;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One thing changed alone on the regulator, so that the highest set pressure of the forward ranges becomes another one; pilot and
 * throttle pressure stay as they are.
 *
 * <pre>
 * Preload   another spring of the same rate and length: F0' = F(p) − k·x, F(p) the net opening force of all known pressures with the
 *           line at p, x where the first edge begins to open
 * Shim      the same spring pressed together by more: (F0' − F0)/k; its coils touch earlier by as much
 * Rate      another spring of the same free length in the same place: k' = F(p)/(F0/k + x)
 * Boost     another area on which a signal presses with the spring: A' = A + (F(p) − F0 − k·x)/p', p' the signal; as a full land of
 *           diameter √(4·A/π)
 * Source    balance of the spool, H. E. Merritt, Hydraulic Control Systems, 1967, §5-2 (from memory)
 * Range     where the set pressure is quoted: {@link Transmission#highestSet}
 * </pre>
 *
 * @param lever    what is changed
 * @param signal   node that presses on the boost; empty for all others
 * @param now      as it is: preload [N], shim added [m], rate [N/m], area [m²]
 * @param needed   as it must be; empty where nothing does it
 * @param unit     with the change; empty where nothing does it
 * @param obstacle why nothing does it
 */
public record SpringChange(
        Lever lever,
        String signal,
        double now,
        OptionalDouble needed,
        Optional<Transmission> unit,
        Optional<SpringObstacle> obstacle) {

    /** What can be changed. */
    public enum Lever {
        PRELOAD,
        SHIM,
        RATE,
        BOOST
    }

    /** Why something cannot be changed so far. */
    public enum SpringObstacle {
        /** The spring would have to pull: signals alone hold more. */
        SPRING_WOULD_PULL,
        /** The spring would be loose with the spool on its seat. */
        SPRING_LOOSE,
        /** The coils would touch before the first opening opens. */
        COILS_TOUCH,
        /** No signal pushes on it while the highest set pressure is asked for. */
        NO_SIGNAL,
        /** The area would have to be less than none. */
        LESS_THAN_NO_AREA
    }

    /**
     * Everything that may be changed, each alone.
     *
     * @param pressure highest set pressure in the forward ranges that is wanted [Pa], above zero
     * @throws NotCommandedException where nothing commands the line
     */
    public static List<SpringChange> of(Transmission unit, double pressure) {
        Command command = unit.command().onOtherSpring();
        return new Solve(unit, command, pressure).all();
    }

    /** Between the coils' touching and the upper stop [m]: below zero the spring goes solid first; empty where it is not known. */
    public OptionalDouble overStop() {
        return unit.map(SpringChange::spring)
                .filter(spring -> spring.bind().isPresent())
                .map(spring -> OptionalDouble.of(spring.bind().getAsDouble() - spring.high()))
                .filter(left -> lever != Lever.RATE)
                .orElse(OptionalDouble.empty());
    }

    private static SpoolSpring spring(Transmission unit) {
        return ((SpoolValve) unit.network()
                        .part(unit.command().regulator())
                        .orElseThrow()
                        .part())
                .spring();
    }

    private record Solve(Transmission unit, Command command, double pressure) {

        private Placed placed() {
            return unit.network().part(command.regulator()).orElseThrow();
        }

        private SpoolValve valve() {
            return (SpoolValve) placed().part();
        }

        private List<Control> controls() {
            return unit.forwardControls().stream().map(command::atHighest).toList();
        }

        List<SpringChange> all() {
            SpoolSpring spring = valve().spring();
            double preload = controls().stream()
                    .mapToDouble(control -> command.preloadFor(unit.network(), control, pressure))
                    .min()
                    .orElseThrow();
            List<SpringChange> changes = new ArrayList<>(
                    List.of(byPreload(spring, preload), byShim(spring, (preload - spring.preload()) / spring.rate())));
            changes.add(byRate(spring, preload));
            for (int i = 0; i < valve().areas().size(); i++) {
                if (valve().areas().get(i).area() < 0) {
                    changes.add(byBoost(i));
                }
            }
            return changes;
        }

        private SpringChange byPreload(SpoolSpring spring, double preload) {
            return change(
                    Lever.PRELOAD, spring.preload(), preload, loose(spring, preload), spring.withPreload(preload));
        }

        private Optional<SpringObstacle> loose(SpoolSpring spring, double preload) {
            if (preload >= 0) {
                return Optional.empty();
            }
            boolean pulls = preload + spring.rate() * command.edgePosition(valve()) < 0;
            return Optional.of(pulls ? SpringObstacle.SPRING_WOULD_PULL : SpringObstacle.SPRING_LOOSE);
        }

        private SpringChange byShim(SpoolSpring spring, double shim) {
            double preload = spring.preload() + spring.rate() * shim;
            double bind = spring.bind().orElse(Double.POSITIVE_INFINITY) - shim;
            Optional<SpringObstacle> obstacle = bind <= command.edgePosition(valve())
                    ? Optional.of(SpringObstacle.COILS_TOUCH)
                    : loose(spring, preload);
            return change(Lever.SHIM, 0, shim, obstacle, obstacle.isPresent() ? spring : spring.shimmed(shim));
        }

        private SpringChange byRate(SpoolSpring spring, double preload) {
            double edge = command.edgePosition(valve());
            double pressed = spring.preload() / spring.rate() + edge;
            double force = preload + spring.rate() * edge;
            Optional<SpringObstacle> obstacle = Optional.empty();
            if (!(pressed > 0) || spring.preload() < 0) {
                obstacle = Optional.of(SpringObstacle.SPRING_LOOSE);
            } else if (!(force > 0)) {
                obstacle = Optional.of(SpringObstacle.SPRING_WOULD_PULL);
            }
            double rate = force / pressed;
            return change(
                    Lever.RATE,
                    spring.rate(),
                    rate,
                    obstacle,
                    obstacle.isPresent() ? spring : spring.with(rate, spring.preload() / spring.rate() * rate));
        }

        private SpringChange change(
                Lever lever, double now, double needed, Optional<SpringObstacle> obstacle, SpoolSpring other) {
            return new SpringChange(
                    lever,
                    "",
                    now,
                    obstacle.isPresent() ? OptionalDouble.empty() : OptionalDouble.of(needed),
                    obstacle.isPresent() ? Optional.empty() : Optional.of(with(valve().with(other))),
                    obstacle);
        }

        /** The least area that any control asks for: that one is the first to reach the pressure. */
        private SpringChange byBoost(int index) {
            SpoolValve.Area area = valve().areas().get(index);
            String node = placed().nodes().get(area.port());
            double least = Double.POSITIVE_INFINITY;
            for (Control control : controls()) {
                double signal = signal(area, node, control);
                double force = command.preloadFor(unit.network(), control, pressure)
                        - valve().spring().preload();
                if (signal > 0) {
                    least = Math.min(least, -area.area() + force / signal);
                }
            }
            Optional<SpringObstacle> obstacle = Optional.empty();
            if (!Double.isFinite(least)) {
                obstacle = Optional.of(SpringObstacle.NO_SIGNAL);
            } else if (!(least > 0)) {
                obstacle = Optional.of(SpringObstacle.LESS_THAN_NO_AREA);
            }
            Optional<Transmission> made = obstacle.isPresent()
                    ? Optional.empty()
                    : Optional.of(with(valve().with(index, new SpoolValve.Area(area.port(), -least, area.ranges()))));
            // another forward range may be held higher by what the boost does not touch
            if (made.isPresent() && made.get().highestSet() > pressure + EXACT) {
                obstacle = Optional.of(SpringObstacle.NO_SIGNAL);
                made = Optional.empty();
            }
            return new SpringChange(
                    Lever.BOOST,
                    node,
                    -area.area(),
                    made.isPresent() ? OptionalDouble.of(least) : OptionalDouble.empty(),
                    made,
                    obstacle);
        }

        /** A set pressure is the one asked for within this: a hundredth of a psi [Pa]. */
        private static final double EXACT = 70;

        private double signal(SpoolValve.Area area, String node, Control control) {
            return area.fedIn(control.range())
                    ? new Signals(unit.network(), command.line(), control)
                            .at(node, pressure)
                            .map(Signals.Known::value)
                            .orElse(0.0)
                    : 0;
        }

        private Transmission with(SpoolValve other) {
            Network network = unit.network().with(placed().with(other));
            return unit.with(network, command);
        }
    }
}
