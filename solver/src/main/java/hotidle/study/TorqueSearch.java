package hotidle.study;

import hotidle.geartrain.Drive.Driven;
import hotidle.geartrain.Link;
import hotidle.network.Placed;
import hotidle.newton.Series;
import hotidle.newton.SolvedState;
import hotidle.part.Clutch;
import hotidle.result.Outcome;
import hotidle.result.Solution;
import hotidle.study.TorqueHeld.Carrier;
import hotidle.study.TorqueHeld.Held;
import hotidle.transmission.Curve;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Looks for the engine torque that a build holds in one range, on one thread. Each state is started from the last one at its speed, or at the
 * nearest speed asked before.
 */
final class TorqueSearch {

    /** Torque is found to this share. */
    private static final double SHARE = 1e-4;

    /** The lowest speed at which this share of the torque is still held is told: the rise over the set pressure is less (chosen). */
    private static final double STILL = 0.9;

    private final Transmission unit;
    private final Range range;
    private final TorqueConditions at;
    private final Map<Double, SolvedState> bySpeed;
    private Optional<Series> series;

    TorqueSearch(Transmission unit, Range range, double speed) {
        this(unit, range, speed, Optional.empty(), new TreeMap<>());
    }

    private TorqueSearch(
            Transmission unit, Range range, double speed, Optional<Series> series, Map<Double, SolvedState> bySpeed) {
        this.unit = unit;
        this.range = range;
        at = TorqueConditions.of(unit, range, speed);
        this.series = series;
        this.bySpeed = bySpeed;
    }

    /** The search in the same range of a unit alike; this one is not asked any more. */
    TorqueSearch onwards(Transmission other) {
        Optional<Series> next = series.map(one -> one.onwards(other.network()));
        Range same = other.range(range.name()).orElseThrow();
        return new TorqueSearch(other, same, at.speed(), next, next.equals(series) ? bySpeed : new TreeMap<>());
    }

    Transmission unit() {
        return unit;
    }

    Range range() {
        return range;
    }

    TorqueConditions at() {
        return at;
    }

    /** A state and what each clutch carries in it. */
    record Tried(Outcome outcome, List<Carrier> clutches) {

        /** Torque that all clutches hold [N·m], infinite without any; empty where no state was found. */
        OptionalDouble least() {
            return outcome.unsolved().isPresent()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(
                            clutches.stream().mapToDouble(Carrier::torque).min().orElse(Double.POSITIVE_INFINITY));
        }

        /** Whether all clutches hold a torque [N·m]: what is not known does not hold. */
        boolean holds(double torque) {
            return least().orElse(Double.NEGATIVE_INFINITY) >= torque;
        }
    }

    /** @param slower whether the lowest speed that holds it is looked for too */
    TorqueHeld held(boolean slower) {
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
                        range.name(),
                        ratio,
                        at,
                        Optional.of(held(held, state, there, links, slower)),
                        Optional.empty()))
                .orElseGet(() -> new TorqueHeld(range.name(), ratio, at, Optional.empty(), there.outcome.unsolved()));
    }

    private Held held(double torque, Solution state, Tried there, List<Carrier> links, boolean slower) {
        List<Carrier> all = new ArrayList<>(there.clutches);
        all.addAll(links);
        all.sort(Comparator.comparingDouble(Carrier::torque));
        String line = unit.commanded().map(command -> command.line()).orElseThrow();
        return new Held(
                torque,
                state.pressure(line),
                unit.setPressure(state.conditions()),
                torque > lastRow(),
                slower ? from(torque) : OptionalDouble.empty(),
                all);
    }

    /** The torque that all clutches hold. */
    private double byPressure(Tried nothing) {
        double below = 0;
        Tried before = nothing;
        for (double row : rows()) {
            Tried here = tried(row, at.speed());
            if (!here.holds(row)) {
                return between(below, row);
            }
            below = row;
            before = here;
        }
        return before.least().orElseThrow();
    }

    private double between(double low, double high) {
        double held = low;
        double not = high;
        while (not - held > SHARE * high) {
            double middle = (held + not) / 2;
            if (tried(middle, at.speed()).holds(middle)) {
                held = middle;
            } else {
                not = middle;
            }
        }
        return held;
    }

    /** Lowest speed from which on nearly the same is held. */
    private OptionalDouble from(double torque) {
        double slow = unit.duties().stream().mapToDouble(DutyPoint::speed).min().orElse(at.speed());
        double asked = STILL * torque;
        if (slow >= at.speed() || tried(asked, slow).holds(asked)) {
            return OptionalDouble.empty();
        }
        double not = slow;
        double held = at.speed();
        while (held - not > 10 / 60.0) {
            double middle = (held + not) / 2;
            if (tried(asked, middle).holds(asked)) {
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

    /** What carries by its rating. */
    List<Carrier> links() {
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

    /** The state in which the line is commanded for an engine torque [N·m] at an engine speed [rev/s]. */
    Tried tried(double torque, double speed) {
        Series solving = series.orElseGet(() -> new Series(unit.network()));
        series = Optional.of(solving);
        nearest(speed).ifPresentOrElse(solving::restart, solving::restart);
        if (solving.solve(unit.conditions(at.duty(torque, speed)))) {
            bySpeed.put(speed, solving.kept());
        }
        Outcome outcome = solving.outcome();
        return new Tried(outcome, outcome.state().map(this::clutches).orElse(List.of()));
    }

    private Optional<SolvedState> nearest(double speed) {
        return bySpeed.entrySet().stream()
                .min(Comparator.comparingDouble(found -> Math.abs(found.getKey() - speed)))
                .map(Map.Entry::getValue);
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

    /** Force of the oil that turns with the drum [N]; none that helps where the turbine speed is not known. */
    double head(Solution state, Placed placed, Range.Applied applied) {
        Clutch clutch = (Clutch) placed.part();
        double density = state.conditions().setting(placed).oil().liquidDensity();
        double turning =
                clutch.head(density, applied.speedRatio() * state.conditions().speed());
        return at.torqueRatio() == 1 ? turning : Math.min(turning, 0);
    }
}
