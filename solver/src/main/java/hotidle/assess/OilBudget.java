package hotidle.assess;

import hotidle.network.Group;
import hotidle.network.Placed;
import hotidle.part.Orifice;
import hotidle.part.OwnState;
import hotidle.part.PumpChamber;
import hotidle.part.ReliefValve;
import hotidle.part.SpoolValve;
import hotidle.result.Solution;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    /** Paths below this share of the oil displaced are put together where space is short (assumed by us) [-]. */
    private static final double SMALL = 0.005;

    /** A budget that leaves more than this open is wrong: far above what rounding and Newton's steps leave (assumed by us) [-]. */
    private static final double CLOSED = 1e-9;

    /** What becomes of oil. */
    public enum Fate {
        /** Slips back in the pump. */
        SLIP,
        /** Is lost past a fit to the sump. */
        LEAK,
        /** Does something on its way to the sump. */
        USED,
        /** Comes back to the inlet past a valve, its land open or shut: it is still there to be pumped. */
        RECIRCULATED,
        /** Is spilled by relief and limit valves. */
        SPILLED
    }

    /**
     * One end of the oil.
     *
     * @param part   that it passes last
     * @param name   path through it, empty where it has one only
     * @param group  heading under which it is booked
     * @param fate   what becomes of it
     * @param flow   counted as the pump takes it in [m³/s], below zero where oil comes in
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
    public static OilBudget of(Transmission unit, Solution state) {
        return of(unit, Roles.of(unit), state);
    }

    /** The same, of roles already found. */
    static OilBudget of(Transmission unit, Roles roles, Solution state) {
        Map<String, Placed> parts = new HashMap<>();
        unit.network().parts().forEach(placed -> parts.put(placed.name(), placed));
        Set<String> inlets =
                roles.chambers().stream().map(chamber -> chamber.nodes().get(0)).collect(Collectors.toSet());
        double density = inletDensity(unit, roles, state);
        double displaced = 0;
        List<Path> paths = new ArrayList<>();
        for (Solution.PartStream stream : state.streams()) {
            Placed placed = parts.get(stream.part());
            double flow = stream.mass() / density;
            if (placed.part() instanceof PumpChamber) {
                if (stream.name().equals("swept")) {
                    displaced += flow;
                } else {
                    double sign = inlets.contains(stream.from()) ? -1 : 1;
                    paths.add(new Path(placed.name(), stream.name(), placed.group(), Fate.SLIP, sign * flow));
                }
            } else {
                end(placed, stream, roles.sumps(), inlets, state).ifPresent(end -> {
                    double sign = end.backwards ? -1 : 1;
                    paths.add(new Path(placed.name(), stream.name(), end.group, end.fate, sign * flow));
                });
            }
        }
        paths.sort(Comparator.comparing(Path::fate)
                .thenComparing(Path::group)
                .thenComparing(Comparator.comparingDouble(Path::flow).reversed()));
        return new OilBudget(displaced, paths);
    }

    private record Destination(Group group, Fate fate, boolean backwards) {}

    /** Where a stream ends: in a sump or back at the pump's inlet; empty where it does neither, or only comes from the sump. */
    private static Optional<Destination> end(
            Placed placed, Solution.PartStream stream, Set<String> sumps, Set<String> inlets, Solution state) {
        boolean fromSump = sumps.contains(stream.from());
        boolean toSump = sumps.contains(stream.to());
        boolean fromInlet = inlets.contains(stream.from());
        boolean toInlet = inlets.contains(stream.to());
        boolean intake = (fromSump || fromInlet) && (toSump || toInlet);
        if (intake || !(fromSump || toSump || fromInlet || toInlet)) {
            return Optional.empty();
        }
        boolean backwards = fromSump || fromInlet;
        return Optional.of(fate(placed, stream, inlets, backwards, state));
    }

    /**
     * A land to the sump that is shut leaks, whatever it does when open. What a valve lets back to the pump is counted as one, its
     * lands open or shut, so that nothing leaps where a land opens. A relief valve leaks until it lifts. A hole that was
     * drilled is no leak.
     */
    private static Destination fate(
            Placed placed, Solution.PartStream stream, Set<String> inlets, boolean backwards, Solution state) {
        if (placed.part() instanceof SpoolValve valve) {
            if (inlets.contains(stream.to()) || inlets.contains(stream.from())) {
                return new Destination(placed.group(), Fate.RECIRCULATED, backwards);
            }
            double x = state.own(placed.name(), OwnState.POSITION);
            boolean open = valve.openings().stream()
                    .filter(opening -> opening.name().equals(stream.name()))
                    .anyMatch(opening -> opening.opensUp() ? x > opening.edge() : x < opening.edge());
            return open
                    ? new Destination(placed.group(), Fate.USED, backwards)
                    : new Destination(Group.VALVE_BODY, Fate.LEAK, backwards);
        }
        if (placed.part() instanceof ReliefValve) {
            boolean open = state.measure(placed.name(), ReliefValve.LIFT).orElseThrow() > 0;
            return new Destination(placed.group(), open ? Fate.SPILLED : Fate.LEAK, backwards);
        }
        boolean leak = placed.group().leak() && !(placed.part() instanceof Orifice);
        return new Destination(placed.group(), leak ? Fate.LEAK : Fate.USED, backwards);
    }

    /**
     * Density of the oil at the pump's inlet [kg/m³]: one litre of the budget weighs a thousandth of it. Without a pump that of the
     * first part at ambient pressure.
     */
    public static double inletDensity(Transmission unit, Roles roles, Solution state) {
        Optional<Placed> pump = roles.chambers().stream().findFirst();
        Placed whose = pump.orElseGet(() -> unit.network().parts().get(0));
        double pressure =
                pump.map(chamber -> state.pressure(chamber.nodes().get(0))).orElse(0.0);
        return state.conditions().setting(whose).oil().density(pressure);
    }

    /** All oil of a fate by heading [m³/s]. */
    Map<Group, Double> flows(Fate fate) {
        Map<Group, Double> flows = new EnumMap<>(Group.class);
        paths.stream()
                .filter(path -> path.fate() == fate)
                .forEach(path -> flows.merge(path.group(), path.flow(), Double::sum));
        return flows;
    }

    /** All oil of a fate [m³/s]. */
    public double flow(Fate fate) {
        return paths.stream()
                .filter(path -> path.fate() == fate)
                .mapToDouble(Path::flow)
                .sum();
    }

    /**
     * Oil lost [m³/s]: all that slips back in the pump and all that leaks past fits to the sump. What comes back to the inlet past a
     * valve is not lost. The one count of it; whatever tells a loss of a state tells this.
     */
    public double lost() {
        return flow(Fate.SLIP) + flow(Fate.LEAK);
    }

    /** Whether a path is too small for a line of its own; a lube branch never is, for a starved one is news. */
    public boolean small(Path path) {
        return path.group() != Group.LUBE && Math.abs(path.flow()) < SMALL * displaced;
    }

    /** Whether a path passes oil at all: what is less than a closed budget may leave open is rounding. */
    public boolean passes(Path path) {
        return Math.abs(path.flow()) > CLOSED * displaced;
    }

    /** Whether all oil displaced is accounted for. */
    public boolean closes() {
        return unexplained() <= CLOSED;
    }

    /** Share of the oil displaced that no path accounts for [-]. */
    public double unexplained() {
        double ends = paths.stream().mapToDouble(Path::flow).sum();
        return displaced == 0 ? 0 : Math.abs(displaced - ends) / displaced;
    }
}
