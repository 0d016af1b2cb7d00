package hotidle.study;

import hotidle.duty.Unit;
import hotidle.network.Group;
import hotidle.network.Placed;
import hotidle.part.PumpChamber;
import hotidle.part.ReliefValve;
import hotidle.part.SpoolValve;
import hotidle.result.State;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Where the oil goes that the pump displaces, path by path. Every flow is a mass, counted in litres as the pump takes them in: so
 * the sum closes, whatever air and temperature do to volumes on the way.
 *
 * @param displaced displacement times speed times filling [m³/s]
 * @param paths     all ends of that oil, the largest of each fate first
 */
public record OilBudget(double displaced, List<Path> paths) {

    /** What becomes of oil. */
    public enum Fate {
        SLIP("slip in the pump"),
        LEAK("leaks"),
        USED("used"),
        RECIRCULATED("sent back to the inlet by the regulator"),
        SPILLED("spilled by the relief valve");

        private final String words;

        Fate(String words) {
            this.words = words;
        }

        /** For readers. */
        public String words() {
            return words;
        }
    }

    /**
     * One end of the oil.
     *
     * @param part  that it passes last
     * @param name  path through it, empty where it has one only
     * @param group heading under which it is booked
     * @param fate  what becomes of it
     * @param flow  [m³/s], below zero where oil comes in
     */
    public record Path(String part, String name, Group group, Fate fate, double flow) {
        /** Name of part and path. */
        public String key() {
            return name.isEmpty() ? part : part + "." + name;
        }
    }

    public OilBudget {
        paths = List.copyOf(paths);
    }

    /** The budget of a state. */
    public static OilBudget of(Unit unit, State state) {
        Roles roles = Roles.of(unit);
        Map<String, Placed> parts = new HashMap<>();
        unit.network().parts().forEach(placed -> parts.put(placed.name(), placed));
        Set<String> inlets =
                roles.chambers().stream().map(chamber -> chamber.nodes().get(0)).collect(Collectors.toSet());
        double density = inletDensity(unit, state);
        double displaced = 0;
        List<Path> paths = new ArrayList<>();
        for (State.PartStream stream : state.streams()) {
            Placed placed = parts.get(stream.part());
            double flow = stream.mass() / density;
            if (placed.part() instanceof PumpChamber) {
                if (stream.name().equals("swept")) {
                    displaced += flow;
                } else {
                    double back = inlets.contains(stream.from()) ? -flow : flow;
                    paths.add(new Path(placed.name(), stream.name(), placed.group(), Fate.SLIP, back));
                }
            } else {
                end(placed, stream, roles.sumps(), inlets, state)
                        .ifPresent(end -> paths.add(new Path(
                                placed.name(), stream.name(), end.group, end.fate, end.backwards ? -flow : flow)));
            }
        }
        paths.sort(Comparator.comparing(Path::fate)
                .thenComparing(Path::group)
                .thenComparing(Comparator.comparingDouble(Path::flow).reversed()));
        return new OilBudget(displaced, paths);
    }

    private record End(Group group, Fate fate, boolean backwards) {}

    /** Where a stream ends: in a sump or back at the pump's inlet; empty where it does neither, or only comes from the sump. */
    private static java.util.Optional<End> end(
            Placed placed, State.PartStream stream, Set<String> sumps, Set<String> inlets, State state) {
        boolean fromSump = sumps.contains(stream.from());
        boolean toSump = sumps.contains(stream.to());
        boolean fromInlet = inlets.contains(stream.from());
        boolean toInlet = inlets.contains(stream.to());
        boolean intake = (fromSump || fromInlet) && (toSump || toInlet);
        if (intake || !(fromSump || toSump || fromInlet || toInlet)) {
            return java.util.Optional.empty();
        }
        boolean backwards = fromSump || fromInlet;
        return java.util.Optional.of(fate(placed, stream, toInlet || fromInlet, backwards, state));
    }

    /** A land that is shut leaks, whatever it does when open; a relief valve leaks until it lifts. */
    private static End fate(Placed placed, State.PartStream stream, boolean back, boolean backwards, State state) {
        if (placed.part() instanceof SpoolValve valve) {
            if (shut(placed, valve, stream, state)) {
                return new End(Group.VALVE_BODY, Fate.LEAK, backwards);
            }
            return new End(placed.group(), back ? Fate.RECIRCULATED : Fate.USED, backwards);
        }
        if (placed.part() instanceof ReliefValve) {
            boolean open = state.measure(placed.name(), "lift_m") > 0;
            return new End(placed.group(), open ? Fate.SPILLED : Fate.LEAK, backwards);
        }
        return new End(placed.group(), placed.group().leak() ? Fate.LEAK : Fate.USED, backwards);
    }

    private static boolean shut(Placed placed, SpoolValve valve, State.PartStream stream, State state) {
        double x = state.own(placed.name(), "position");
        return valve.openings().stream()
                .filter(opening -> opening.name().equals(stream.name()))
                .anyMatch(opening -> opening.opensUp() ? x <= opening.edge() : x >= opening.edge());
    }

    /** Density of the oil at the pump's inlet [kg/m³]: one litre of the budget weighs a thousandth of it. */
    static double inletDensity(Unit unit, State state) {
        Placed chamber = Roles.of(unit).chambers().get(0);
        return state.conditions()
                .setting(chamber)
                .oil()
                .density(state.pressure(chamber.nodes().get(0)));
    }

    /** All oil of a fate [m³/s]. */
    public double flow(Fate fate) {
        return paths.stream()
                .filter(path -> path.fate() == fate)
                .mapToDouble(Path::flow)
                .sum();
    }

    /** Slip and leaks: what the pump delivers for nothing [m³/s]. */
    public double lost() {
        return flow(Fate.SLIP) + flow(Fate.LEAK);
    }

    /** Share of the oil displaced that no path accounts for [-]. */
    public double unexplained() {
        double ends = paths.stream().mapToDouble(Path::flow).sum();
        return displaced == 0 ? 0 : Math.abs(displaced - ends) / displaced;
    }
}
