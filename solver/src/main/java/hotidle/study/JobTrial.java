package hotidle.study;

import hotidle.assess.Margin;
import hotidle.assess.Roles;
import hotidle.network.Placed;
import hotidle.newton.Series;
import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.Collectors;

/**
 * Asks of units of one shape whether they keep every limit, the limits that have failed most first. Each is started from the states
 * of the first unit, so that what is found depends neither on the order of units nor on that of limits.
 */
final class JobTrial {

    private final Map<String, DutyChain> chains;
    private final List<DutyCheck> stages;
    private final Map<DutyCheck, LongAdder> failed = new ConcurrentHashMap<>();
    private final Map<DutyCheck, Double> failedAt = new ConcurrentHashMap<>();
    private final Map<String, List<Solution>> hubStates = new HashMap<>();

    /** Limits of a duty that are judged by the same solves. */
    private record DutyCheck(String duty, Solves solves, Set<Judgement.Key> keys) {

        /** How many units it has found to fail for what it costs. */
        double worth(long failures) {
            return failures / solves.cost;
        }
    }

    /** What limits are judged by, and roughly how many states it takes (counted on ready circuits). */
    private enum Solves {
        STATE(1),
        LINE_HELD(8),
        HUB_OVER_SPEED(20);

        private final double cost;

        Solves(double cost) {
            this.cost = cost;
        }

        static Solves of(Margin.Kind kind, String part, Optional<String> hub) {
            if (kind == Margin.Kind.REGULATION) {
                return LINE_HELD;
            }
            return hub.filter(part::equals).isPresent() ? HUB_OVER_SPEED : STATE;
        }
    }

    /** What a unit comes to. */
    enum TrialFate {
        KEEPS,
        FAILS,
        /** Nothing that is known fails, but a state was not found. */
        NOT_KNOWN
    }

    /**
     * A trial from the states of a unit.
     *
     * @param judged the unit, at all its duties
     * @param chains of all duties, as they stand there
     */
    JobTrial(List<Judgement> judged, Map<String, DutyChain> chains) {
        this.chains = BoundarySearch.branch(chains);
        Map<String, Map<Solves, Set<Judgement.Key>>> found = new LinkedHashMap<>();
        Set<Judgement.Key> failing = new LinkedHashSet<>(failing(judged));
        for (Judgement one : judged) {
            Optional<String> hub = Roles.of(one.unit()).hub().map(Placed::name);
            hubStates.put(
                    one.duty().name(),
                    one.hub().stream().flatMap(HubOverSpeed::states).toList());
            for (Margin margin : one.margins()) {
                found.computeIfAbsent(one.duty().name(), duty -> new EnumMap<>(Solves.class))
                        .computeIfAbsent(Solves.of(margin.kind(), margin.part(), hub), any -> new LinkedHashSet<>())
                        .add(Judgement.Key.of(one.duty(), margin));
            }
        }
        stages = found.entrySet().stream()
                .flatMap(duty -> duty.getValue().entrySet().stream()
                        .map(stage -> new DutyCheck(duty.getKey(), stage.getKey(), stage.getValue())))
                .toList();
        stages.forEach(stage -> {
            failed.put(stage, new LongAdder());
            failed.get(stage)
                    .add(stage.keys().stream().filter(failing::contains).count());
        });
    }

    /** Whether some limit of a unit is found to fail, by the least work: those first that have failed most for what they cost. */
    boolean fails(Transmission unit) {
        return stages.stream()
                .sorted(Comparator.comparingDouble(
                        stage -> -stage.worth(failed.get(stage).sum())))
                .anyMatch(stage -> fails(stage, unit));
    }

    private boolean fails(DutyCheck stage, Transmission unit) {
        Optional<Margin> failing = failing(whereItFailed(stage, unit), stage)
                .or(() -> failing(chains.get(stage.duty()).branch().margins(unit, stage.keys()), stage));
        failing.ifPresent(margin -> {
            failed.get(stage).increment();
            margin.speed().ifPresent(speed -> failedAt.put(stage, speed));
        });
        return failing.isPresent();
    }

    private static Optional<Margin> failing(Map<Judgement.Key, Margin> found, DutyCheck stage) {
        return found.entrySet().stream()
                .filter(one -> stage.keys().contains(one.getKey()))
                .map(Map.Entry::getValue)
                .filter(margin -> margin.verdict() == Margin.Verdict.FAILS)
                .findFirst();
    }

    /**
     * The limits of the hub at the speed at which another unit has failed: what fails there needs no search over all speeds.
     */
    private Map<Judgement.Key, Margin> whereItFailed(DutyCheck stage, Transmission unit) {
        Optional<Double> speed = Optional.ofNullable(failedAt.get(stage));
        Optional<Solution> start = speed.flatMap(wanted -> hubStates.get(stage.duty()).stream()
                .min(Comparator.comparingDouble(
                        state -> Math.abs(state.conditions().speed() - wanted))));
        if (start.isEmpty()) {
            return Map.of();
        }
        DutyPoint duty = unit.duty(stage.duty()).orElseThrow();
        Series series = new Series(unit.network());
        series.restart(start.get());
        return series.solve(unit.conditions(duty).atSpeed(speed.get()))
                ? Judgement.at(unit, duty, series.state())
                : Map.of();
    }

    /** A unit at all its duties. */
    List<Judgement> judged(Transmission unit) {
        return BoundarySearch.judged(unit, BoundarySearch.branch(chains));
    }

    /** Whether a unit keeps every limit; a limit that is not known is no failure. */
    static TrialFate fate(List<Judgement> judged) {
        boolean fails = judged.stream().anyMatch(one -> !one.dragging().isEmpty())
                || !failing(judged).isEmpty();
        return fails
                ? TrialFate.FAILS
                : judged.stream().allMatch(Judgement::known) ? TrialFate.KEEPS : TrialFate.NOT_KNOWN;
    }

    /** Those that fail, in the order of {@link BuildVerdict#firstFails}. */
    static List<Judgement.Key> failing(List<Judgement> judged) {
        return keys(judged, Margin.Verdict.FAILS);
    }

    /** The same for a reader: a clutch that holds and slips with one coefficient of friction has one limit, not two. */
    static List<Judgement.Key> failingApart(List<Judgement> judged) {
        Set<Judgement.Key> again = judged.stream()
                .flatMap(one -> one.margins().stream()
                        .filter(margin -> margin.kind() == Margin.Kind.APPLY_SLIDING && holdsAlike(one, margin))
                        .map(margin -> Judgement.Key.of(one.duty(), margin)))
                .collect(Collectors.toSet());
        return failing(judged).stream().filter(key -> !again.contains(key)).toList();
    }

    private static boolean holdsAlike(Judgement judged, Margin slipping) {
        return judged.margins().stream()
                .anyMatch(margin -> margin.kind() == Margin.Kind.APPLY
                        && margin.part().equals(slipping.part())
                        && margin.needed() == slipping.needed());
    }

    private static List<Judgement.Key> keys(List<Judgement> judged, Margin.Verdict verdict) {
        List<JobStudy.JudgedLimit> found = new ArrayList<>();
        judged.forEach(one -> one.margins().stream()
                .filter(margin -> margin.verdict() == verdict)
                .forEach(margin -> found.add(new JobStudy.JudgedLimit(Judgement.Key.of(one.duty(), margin), margin))));
        return found.stream()
                .sorted(BuildVerdict.firstFails(BuildVerdict.of(judged)))
                .map(JobStudy.JudgedLimit::key)
                .toList();
    }

    /** The limit with the least headroom; empty where none is judged. */
    static Optional<JobStudy.JudgedLimit> least(List<Judgement> judged) {
        return judged.stream()
                .flatMap(one -> one.least().stream()
                        .map(margin -> new JobStudy.JudgedLimit(Judgement.Key.of(one.duty(), margin), margin)))
                .min(Comparator.comparingDouble(limit -> limit.margin().headroom()));
    }
}
