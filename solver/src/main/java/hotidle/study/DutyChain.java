package hotidle.study;

import hotidle.assess.Assessment;
import hotidle.assess.Margin;
import hotidle.assess.Roles;
import hotidle.network.Conditions;
import hotidle.newton.Series;
import hotidle.result.Outcome;
import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Units of one shape judged at one duty point, one after the other, each started from the states of the one before: at the slowest
 * speed searched, at the duty's own, and with the line held. Keep one for each thread; what it finds depends on the order alone.
 */
final class DutyChain {

    private final String duty;
    private final List<Double> speeds;
    private final WorkSpace work;
    private final Map<Double, HubAlike> bySpeed;
    private Optional<Solution> slowest;
    private Optional<Solution> own;
    private Optional<HeldLine.HeldStates> held;

    /**
     * A chain that starts cold.
     *
     * @param speeds engine speeds searched for the hub's film and load [rev/s], rising
     */
    DutyChain(String duty, List<Double> speeds) {
        this(duty, speeds, new WorkSpace(), new HashMap<>(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private DutyChain(
            String duty,
            List<Double> speeds,
            WorkSpace work,
            Map<Double, HubAlike> bySpeed,
            Optional<Solution> slowest,
            Optional<Solution> own,
            Optional<HeldLine.HeldStates> held) {
        this.duty = duty;
        this.speeds = speeds;
        this.work = work;
        this.bySpeed = bySpeed;
        this.slowest = slowest;
        this.own = own;
        this.held = held;
    }

    /** What units are solved on one after the other, without making it anew for each. For one thread, whatever chains use it. */
    static final class WorkSpace {
        private Optional<Series> free = Optional.empty();
        private Optional<Series> lineHeld = Optional.empty();

        private Series series(Transmission unit) {
            Series series = free.map(one -> one.onwards(unit.network())).orElseGet(() -> new Series(unit.network()));
            free = Optional.of(series);
            return series;
        }
    }

    /** Another chain that goes on from where this one stands, for any thread. */
    DutyChain branch() {
        return branch(new WorkSpace());
    }

    /** The same on a work space. */
    DutyChain branch(WorkSpace on) {
        return new DutyChain(duty, speeds, on, new HashMap<>(bySpeed), slowest, own, held);
    }

    /** Judges all limits. */
    Judgement judged(Transmission unit) {
        return judged(unit, unit.duty(duty).orElseThrow());
    }

    Judgement judged(Transmission unit, DutyPoint point) {
        Roles roles = Roles.of(unit);
        Series series = work.series(unit);
        Optional<HubOverSpeed> hub = hub(unit, point, roles, series);
        Outcome outcome = own(unit, point, hub, series);
        Optional<HeldLine> line = line(unit, point, roles, outcome);
        List<Margin> margins = new ArrayList<>();
        Map<String, Double> dragging = new TreeMap<>();
        Map<String, Double> leaky = new TreeMap<>();
        Optional<Assessment> assessed = outcome.state().map(state -> Assessment.of(unit, point, roles, state));
        assessed.ifPresent(one -> {
            Limits limits = new Limits(one);
            margins.addAll(limits.all(line, hub));
            dragging.putAll(limits.dragging());
            leaky.putAll(limits.leaky());
        });
        return new Judgement(unit, point, outcome, assessed, hub, line, margins, dragging, leaky);
    }

    /** Some margins of the duty, solved without what others need; those that are not judged, or whose state is not found, are missing. */
    Map<Judgement.Key, Margin> margins(Transmission unit, Set<Judgement.Key> keys) {
        DutyPoint point = unit.duty(duty).orElseThrow();
        if (!point.judged()) {
            return Map.of();
        }
        Roles roles = Roles.of(unit);
        Series series = work.series(unit);
        boolean searched =
                keys.stream().anyMatch(key -> key.kind() == Margin.Kind.FILM || key.kind() == Margin.Kind.UNIT_LOAD);
        boolean regulation = keys.stream().anyMatch(key -> key.kind() == Margin.Kind.REGULATION);
        Optional<HubOverSpeed> hub = searched ? hub(unit, point, roles, series) : Optional.empty();
        Outcome outcome = own(unit, point, hub, series);
        Optional<HeldLine> line = regulation ? line(unit, point, roles, outcome) : Optional.empty();
        Map<Judgement.Key, Margin> found = new LinkedHashMap<>();
        outcome.state()
                .ifPresent(state -> new Limits(Assessment.of(unit, point, roles, state))
                        .all(line, hub)
                        .forEach(margin -> {
                            Judgement.Key key = Judgement.Key.of(point, margin);
                            if (keys.contains(key)) {
                                found.put(key, margin);
                            }
                        }));
        return found;
    }

    private Optional<HubOverSpeed> hub(Transmission unit, DutyPoint point, Roles roles, Series series) {
        return roles.hub().map(placed -> {
            slowest.ifPresent(series::restart);
            HubOverSpeed over =
                    HubOverSpeed.search(series, unit.network(), roles, unit.conditions(point), speeds, bySpeed);
            slowest = over.slowest().or(() -> slowest);
            return over;
        });
    }

    /** Started from the state below it in the sweep of the hub where there is one, as the engine would come to it. */
    private Outcome own(Transmission unit, DutyPoint point, Optional<HubOverSpeed> hub, Series series) {
        Conditions conditions = unit.conditions(point);
        Optional<Solution> below = hub.flatMap(HubOverSpeed::below);
        if (below.filter(state -> state.conditions().speed() == point.speed()).isPresent()) {
            own = below;
            return Outcome.of(below.get());
        }
        series.restart();
        below.or(() -> own).ifPresent(series::restart);
        series.solve(conditions);
        Outcome outcome = series.outcome();
        own = outcome.state().or(() -> own);
        return outcome;
    }

    private Optional<HeldLine> line(Transmission unit, DutyPoint point, Roles roles, Outcome free) {
        return unit.commanded().map(command -> {
            HeldLineSearch search = new HeldLineSearch(unit, point, roles, held, free.state(), work.lineHeld);
            HeldLine line = search.run();
            work.lineHeld = Optional.of(search.series());
            held = search.found(line);
            return line;
        });
    }
}
