package hotidle.study;

import hotidle.assess.Consumers;
import hotidle.assess.Margin;
import hotidle.assess.OilBudget;
import hotidle.assess.Roles;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.newton.Linearised;
import hotidle.newton.Series;
import hotidle.newton.SolvedState;
import hotidle.part.OwnState;
import hotidle.part.PumpChamber;
import hotidle.part.PumpInlet;
import hotidle.part.SpoolValve;
import hotidle.result.Outcome;
import hotidle.result.Solution;
import hotidle.study.search.SignChange;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The search of a {@link HeldLine}: where the regulator stands with the worst served just served. Work space of one search. Past 300
 * lines, since each way to begin it and to narrow it down works in that space.
 */
final class HeldLineSearch {

    /** The position is found to this share of the spool's travel (ours) [-]. */
    private static final double NARROW = 1e-9;

    /** How far beyond where a state leads to is looked, so that it is caught between two: this times the way to it (ours) [-]. */
    private static final double BEYOND = 1.2;

    /** A headroom this small is none: rounding (ours) [-]. */
    private static final double NIL = 1e-12;

    private final Transmission unit;
    private final DutyPoint duty;
    private final Roles roles;
    private final double set;
    private final Optional<HeldLine.HeldStates> before;
    private final Optional<Solution> free;
    private final TreeMap<Double, Solution> known = new TreeMap<>();
    private final TreeMap<Double, SolvedState> solved = new TreeMap<>();
    private Series series;
    private Network lineHeld;
    private OptionalDouble slope = OptionalDouble.empty();
    private int solves;

    /** Whether the seat and the feed wide open were asked. */
    private boolean ends;

    /** What gets too little even with the feed wide open: more opening does not help it, so that it does not count. */
    private Optional<Margin> hungriest = Optional.empty();

    private Set<String> hungry = Set.of();

    HeldLineSearch(Transmission unit, DutyPoint duty) {
        this(unit, duty, Roles.of(unit), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * A search that starts from what was found of a unit alike.
     *
     * @param free   the unit's state at the duty with its line free, from which it starts where nothing was found of a unit alike
     * @param series that it is solved on where there is one, of whose states before it takes none
     */
    HeldLineSearch(
            Transmission unit,
            DutyPoint duty,
            Roles roles,
            Optional<HeldLine.HeldStates> before,
            Optional<Solution> free,
            Optional<Series> series) {
        this.before = before;
        this.free = free;
        this.series = series.orElse(null);
        this.unit = unit;
        this.duty = duty;
        this.roles = roles;
        set = unit.setPressure(unit.conditions(duty)).orElseThrow();
    }

    HeldLine run() {
        double low = roles.spool().spring().low();
        double high = Stream.of(roles.unloading(), roles.bypass(), roles.destroking())
                .flatMap(Optional::stream)
                .mapToDouble(SpoolValve.Opening::edge)
                .filter(edge -> edge > low)
                .min()
                .orElse(roles.spool().spring().end());
        Optional<HeldLine> near = before.filter(found -> !found.hungry()).flatMap(found -> near(found, low, high));
        return near.orElseGet(() -> whole(low, high));
    }

    /**
     * Where a unit alike has its regulator, and beyond where that leads to. Where those two lie on either side the ends are not asked:
     * the headroom of each that is served grows with the opening, so that none goes hungry there and none is served further shut.
     */
    private Optional<HeldLine> near(HeldLine.HeldStates found, double low, double high) {
        if (found.position() <= low) {
            return solve(low, Optional.of(found.served()))
                    .state()
                    .filter(seated -> headroom(seated) >= 0)
                    .map(seated -> known(seated, low));
        }
        double position = found.position();
        Optional<Solution> first = inside(low, position, high)
                ? solve(position, Optional.of(found.served())).state()
                : Optional.empty();
        if (first.isEmpty() || found.slope().isEmpty()) {
            return Optional.empty();
        }
        double headroom = headroom(first.get());
        if (Math.abs(headroom) < NIL) {
            return Optional.of(known(first.get(), position));
        }
        double beyond = position - BEYOND * headroom / found.slope().getAsDouble();
        return inside(low, beyond, high)
                ? solve(beyond, Optional.empty())
                        .state()
                        .filter(second -> headroom(second) * headroom < 0)
                        .map(second -> narrow(low, high))
                : Optional.empty();
    }

    private static boolean inside(double low, double position, double high) {
        return low < position && position < high;
    }

    private HeldLine whole(double low, double high) {
        ends = true;
        Outcome shut = solve(low, before.map(HeldLine.HeldStates::shut).or(() -> free));
        Outcome open = solve(high, before.map(HeldLine.HeldStates::open));
        for (Outcome outcome : List.of(shut, open)) {
            if (outcome.state().isEmpty()) {
                return unknown(low, outcome);
            }
        }
        Solution seated = shut.state().orElseThrow();
        Solution wide = open.state().orElseThrow();
        hungriest = served(wide).stream()
                .filter(one -> one.headroom() < 0)
                .min(Comparator.comparingDouble(Margin::headroom));
        hungry = served(wide).stream()
                .filter(one -> one.headroom() < 0)
                .map(Margin::part)
                .collect(Collectors.toSet());
        return headroom(seated) >= 0 ? known(seated, low) : narrow(low, high);
    }

    private static HeldLine unknown(double position, Outcome outcome) {
        return new HeldLine(position, Optional.empty(), outcome.unsolved());
    }

    /** The headroom of the worst served grows with the opening; the regulator stands where it is just not below nil. */
    private HeldLine narrow(double low, double high) {
        double fails = known.descendingMap().entrySet().stream()
                .filter(one -> headroom(one.getValue()) < 0)
                .findFirst()
                .orElseThrow()
                .getKey();
        double holds = known.tailMap(fails).entrySet().stream()
                .filter(one -> headroom(one.getValue()) >= 0)
                .findFirst()
                .orElseThrow()
                .getKey();
        SignChange search = new SignChange(
                holds, headroom(known.get(holds)), fails, headroom(known.get(fails)), NARROW * (high - low));
        before.ifPresent(found -> search.foretell(found.position(), found.slope()));
        slope = OptionalDouble.of(search.slope());
        while (search.open()) {
            double x = search.next();
            Outcome outcome =
                    solve(x, before.filter(found -> found.position() == x).map(HeldLine.HeldStates::served));
            if (outcome.state().isEmpty()) {
                return unknown(x, outcome);
            }
            Solution state = outcome.state().get();
            double headroom = headroom(state);
            if (Math.abs(headroom) < NIL) {
                return known(state, x);
            }
            search.tell(x, headroom);
            slope = OptionalDouble.of(search.slope());
        }
        return known(known.get(search.holds()), search.holds());
    }

    /** Solves from a start, or else from the state known whose position is nearest; what is known is not solved again. */
    private Outcome solve(double position, Optional<Solution> start) {
        if (known.containsKey(position)) {
            return Outcome.of(known.get(position));
        }
        Network network = network(position);
        series = series == null ? new Series(network) : series.onwards(network);
        start.or(() -> nearest(position)).ifPresentOrElse(series::restart, series::restart);
        between(position).ifPresent(series::guess);
        solves++;
        if (series.solve(unit.conditions(duty))) {
            solved.put(position, series.kept());
        }
        Outcome outcome = series.outcome();
        outcome.state().ifPresent(state -> known.put(position, state));
        return outcome;
    }

    /** A guess from the states known on either side. */
    private Optional<SolvedState> between(double position) {
        Map.Entry<Double, SolvedState> below = solved.lowerEntry(position);
        Map.Entry<Double, SolvedState> above = solved.higherEntry(position);
        return below == null || above == null
                ? Optional.empty()
                : Optional.of(SolvedState.between(
                        below.getValue(),
                        above.getValue(),
                        (position - below.getKey()) / (above.getKey() - below.getKey())));
    }

    private Optional<Solution> nearest(double position) {
        return known.keySet().stream()
                .min(Comparator.comparingDouble(at -> Math.abs(at - position)))
                .map(known::get);
    }

    /** States that it has asked for. */
    int solves() {
        return solves;
    }

    /** The series that it has solved with. */
    Series series() {
        return series;
    }

    /** What another unit's search can start from: what was found last, where nothing was found here. */
    Optional<HeldLine.HeldStates> found(HeldLine line) {
        return line.unsolved().isPresent()
                ? before
                : Optional.of(new HeldLine.HeldStates(
                        ends
                                ? known.firstEntry().getValue()
                                : before.orElseThrow().shut(),
                        ends
                                ? known.lastEntry().getValue()
                                : before.orElseThrow().open(),
                        known.get(line.position()),
                        line.position(),
                        slope,
                        !hungry.isEmpty()));
    }

    /** The unit's network with the line held and the regulator held at a position [m]. */
    Network network(double position) {
        SpoolValve valve = roles.spool();
        Placed held = roles.regulator()
                .with(new SpoolValve(
                        valve.ports(), valve.openings(), valve.areas(), valve.spring(), OptionalDouble.of(position)));
        if (lineHeld == null) {
            List<Node> nodes = unit.network().nodes().stream()
                    .map(node -> node.name().equals(roles.line()) ? Node.held(node.name(), set) : node)
                    .toList();
            lineHeld = new Network(nodes, unit.network().parts());
        }
        return lineHeld.with(held);
    }

    /** Of the worst served; nil where nothing needs to be. */
    private double headroom(Solution state) {
        return served(state).stream()
                .filter(one -> !hungry.contains(one.part()))
                .mapToDouble(Margin::headroom)
                .min()
                .orElse(0);
    }

    /** What must be served, and how well it is. */
    List<Margin> served(Solution state) {
        return Consumers.of(roles, duty, state);
    }

    private HeldLine known(Solution state, double position) {
        return new HeldLine(position, Optional.of(balance(state)), Optional.empty());
    }

    /** What comes into the line held, and what leaves it. */
    HeldLine.LineBalance balance(Solution state) {
        Set<String> pumps = pumps();
        double supply = 0;
        double demand = 0;
        for (Solution.PartStream stream : state.streams()) {
            boolean leaves = stream.from().equals(roles.line());
            boolean enters = stream.to().equals(roles.line());
            double out = leaves ? stream.mass() : enters ? -stream.mass() : 0;
            if (pumps.contains(stream.part())) {
                supply -= out;
            } else {
                demand += out;
            }
        }
        double density = OilBudget.inletDensity(unit, roles, state);
        return new HeldLine.LineBalance(
                supply / density,
                demand / density,
                roles.inlet()
                        .map(placed -> state.own(placed.name(), PumpInlet.FILLING))
                        .orElse(1.0),
                roles.chambers().stream()
                        .mapToDouble(placed -> slide(placed, state))
                        .min()
                        .orElse(1),
                state,
                hungriest.map(Margin::part));
    }

    private static double slide(Placed placed, Solution state) {
        return ((PumpChamber) placed.part())
                .slide()
                .map(slide -> slide.share(state.own(placed.name(), OwnState.POSITION)))
                .orElse(1.0);
    }

    /** What brings oil into the line. */
    private Set<String> pumps() {
        return Stream.concat(roles.chambers().stream(), roles.check().stream())
                .map(Placed::name)
                .collect(Collectors.toSet());
    }

    /** Slopes by each unknown of supply over demand, exact. */
    double[] slopes(Linearised linearised, Solution state) {
        Set<String> pumps = pumps();
        HeldLine.LineBalance now = balance(state);
        double density = OilBudget.inletDensity(unit, roles, state);
        double[] brought = linearised.leaving(roles.line(), pumps::contains);
        double[] taken = linearised.leaving(roles.line(), part -> !pumps.contains(part));
        double[] slopes = new double[taken.length];
        for (int i = 0; i < slopes.length; i++) {
            slopes[i] = (-brought[i] - now.supply() / now.demand() * taken[i]) / (now.demand() * density);
        }
        return slopes;
    }
}
