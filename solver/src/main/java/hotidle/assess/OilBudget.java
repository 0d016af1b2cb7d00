package hotidle.assess;

import hotidle.network.Group;
import hotidle.network.Placed;
import hotidle.part.Orifice;
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
        /** Is lost past a fit. */
        LEAK,
        /** Does something on its way to the sump. */
        USED,
        /** Is sent back to the inlet by the regulator. */
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
     * @param volume the same as it passes, at the pressure and temperature there [m³/s]
     * @param back   whether it ends at the pump's inlet, not in the sump
     */
    public record Path(String part, String name, Group group, Fate fate, double flow, double volume, boolean back) {

        /** A path that ends in the sump. */
        public Path(String part, String name, Group group, Fate fate, double flow, double volume) {
            this(part, name, group, fate, flow, volume, false);
        }

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
                    paths.add(new Path(
                            placed.name(),
                            stream.name(),
                            placed.group(),
                            Fate.SLIP,
                            sign * flow,
                            sign * stream.volume()));
                }
            } else {
                end(placed, stream, roles.sumps(), inlets, state).ifPresent(end -> {
                    double sign = end.backwards ? -1 : 1;
                    paths.add(new Path(
                            placed.name(),
                            stream.name(),
                            end.group,
                            end.fate,
                            sign * flow,
                            sign * stream.volume(),
                            inlets.contains(stream.to()) || inlets.contains(stream.from())));
                });
            }
        }
        paths.sort(Comparator.comparing(Path::fate)
                .thenComparing(Path::group)
                .thenComparing(Comparator.comparingDouble(Path::flow).reversed()));
        return new OilBudget(displaced, paths);
    }

    private record End(Group group, Fate fate, boolean backwards) {}

    /** Where a stream ends: in a sump or back at the pump's inlet; empty where it does neither, or only comes from the sump. */
    private static Optional<End> end(
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
     * A land that is shut leaks, whatever it does when open; but what a valve's shut lands let back to the pump costs nothing once
     * another of them gives oil back, for the pump then has oil to spare. A relief valve leaks until it lifts. A hole that
     * was drilled is no leak.
     */
    private static End fate(
            Placed placed, Solution.PartStream stream, Set<String> inlets, boolean backwards, Solution state) {
        if (placed.part() instanceof SpoolValve valve) {
            double x = state.own(placed.name(), "position");
            boolean back = inlets.contains(stream.to()) || inlets.contains(stream.from());
            boolean open = valve.openings().stream()
                    .filter(opening -> back
                            ? inlets.contains(placed.nodes().get(opening.to()))
                            : opening.name().equals(stream.name()))
                    .anyMatch(opening -> opening.opensUp() ? x > opening.edge() : x < opening.edge());
            if (!open) {
                return new End(Group.VALVE_BODY, Fate.LEAK, backwards);
            }
            return new End(placed.group(), back ? Fate.RECIRCULATED : Fate.USED, backwards);
        }
        if (placed.part() instanceof ReliefValve) {
            boolean open = state.measure(placed.name(), ReliefValve.LIFT).orElseThrow() > 0;
            return new End(placed.group(), open ? Fate.SPILLED : Fate.LEAK, backwards);
        }
        boolean leak = placed.group().leak() && !(placed.part() instanceof Orifice);
        return new End(placed.group(), leak ? Fate.LEAK : Fate.USED, backwards);
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

    /** Volumes of a fate as they pass, by heading [m³/s]. */
    Map<Group, Double> volumes(Fate fate) {
        Map<Group, Double> volumes = new EnumMap<>(Group.class);
        paths.stream()
                .filter(path -> path.fate() == fate)
                .forEach(path -> volumes.merge(path.group(), path.volume(), Double::sum));
        return volumes;
    }

    /** Volume of a fate as it passes [m³/s]. */
    double volume(Fate fate) {
        return volumes(fate).values().stream().mapToDouble(Double::doubleValue).sum();
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

    /**
     * Slip and leaks but for what shut lands let back to the pump's inlet [m³/s]. That counts as a leak only while no land of the same
     * valve is open to there; without it, builds are counted alike whatever their regulator does.
     */
    public double lostAlike() {
        return flow(Fate.SLIP)
                + paths.stream()
                        .filter(path -> path.fate() == Fate.LEAK && !path.back())
                        .mapToDouble(Path::flow)
                        .sum();
    }

    /** Whether a path is too small for a line of its own; a lube branch never is, for a starved one is news. */
    public boolean small(Path path) {
        return path.group() != Group.LUBE && Math.abs(path.flow()) < SMALL * displaced;
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
