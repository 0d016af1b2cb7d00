package hotidle.study;

import hotidle.assess.Margin;
import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Job;
import hotidle.transmission.JobCost;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import hotidle.transmission.Workshop;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The work of one {@link JobStudy}. */
final class JobSearch {

    private final Workshop shop;
    private final SetPressure.By by;
    private final List<Double> speeds;
    private final Runnable step;
    private final Repairs.Bay bay;
    private final List<Judgement> now;
    private final JobTrial trial;
    private final Map<List<Job>, TriedJobs> tried = new ConcurrentHashMap<>();

    /** Sets of which every limit was asked, so that the search for the cheapest need not ask again. */
    private final Map<List<Job>, List<Judgement>> judged = new ConcurrentHashMap<>();

    /** What a set of jobs comes to; with the set where it keeps every limit. */
    private record TriedJobs(List<Job> jobs, JobTrial.TrialFate fate, Optional<JobStudy.JobSet> kept) {}

    /** What was found of levels of sets: those of the first at which one keeps every limit, and what is not known up to there. */
    private record Level(List<JobStudy.JobSet> kept, List<List<Job>> notKnown) {}

    JobSearch(
            Workshop shop, SetPressure.By by, DutyPoint duty, List<Double> onsets, List<Double> speeds, Runnable step) {
        this.shop = shop;
        this.by = by;
        this.speeds = speeds;
        this.step = step;
        Transmission unit = shop.unit();
        Map<String, DutyChain> chains = new BoundarySearch(speeds).chains(unit);
        now = BoundarySearch.judged(unit, chains);
        bay = Repairs.Bay.of(unit, duty, onsets, at(duty, now));
        trial = new JobTrial(now, chains);
    }

    JobStudy run() {
        List<JobStudy.JobState> alone = shop.jobs().parallelStream()
                .flatMap(job -> {
                    Optional<JobStudy.JobState> state = state(List.of(job));
                    step.run();
                    return state.stream();
                })
                .sorted(BEST)
                .toList();
        return study(alone, true);
    }

    /** What it takes, and nothing beside it. */
    JobStudy needed() {
        return study(List.of(), false);
    }

    /** @param others whether sets beside the one chosen are looked for */
    private JobStudy study(List<JobStudy.JobState> alone, boolean others) {
        JobSets sets = JobSets.of(shop.jobs());
        JobCost measure = JobCost.of(shop.jobs());
        Level least = first(sets.byCost(measure::cost));
        Optional<JobStudy.JobSet> chosen = best(least.kept());
        Optional<JobStudy.JobSet> fewest = !others || chosen.isEmpty() || measure == JobCost.JOBS
                ? Optional.empty()
                : best(first(sets.byCost(job -> 1)).kept())
                        .filter(set -> set.jobs().size() < chosen.get().jobs().size());
        return new JobStudy(
                measure,
                state(List.of(), shop.unit(), now),
                now.stream().anyMatch(Judgement::lowAtIdle),
                alone,
                chosen,
                chosen.flatMap(set -> state(set.jobs())),
                least.kept().stream()
                        .filter(set -> !set.equals(chosen.orElseThrow()))
                        .toList(),
                fewest,
                chosen.filter(set -> others && set.narrow()).flatMap(set -> easier(set, measure)),
                least.notKnown(),
                sets.most(),
                shop.jobs().isEmpty() ? Optional.empty() : state(shop.jobs()),
                chosen.isPresent() ? Optional.empty() : new JobCeiling(shop, by, trial, speeds).find());
    }

    /** As repairs are, the best first; those of which nothing is known last. */
    private static final Comparator<JobStudy.JobState> BEST =
            (one, other) -> one.effect().isPresent() && other.effect().isPresent()
                    ? Repairs.BETTER.compare(other.effect().get(), one.effect().get())
                    : Boolean.compare(other.effect().isPresent(), one.effect().isPresent());

    /** The build's own state at a duty; empty where it is none of its own, or was not found. */
    private static Optional<Solution> at(DutyPoint duty, List<Judgement> now) {
        return now.stream()
                .filter(one -> one.duty().equals(duty))
                .findFirst()
                .flatMap(one -> one.outcome().state());
    }

    private Optional<JobStudy.JobState> state(List<Job> jobs) {
        return shop.after(jobs).map(unit -> state(jobs, unit, judged.computeIfAbsent(jobs, any -> trial.judged(unit))));
    }

    private JobStudy.JobState state(List<Job> jobs, Transmission unit, List<Judgement> judged) {
        return new JobStudy.JobState(
                jobs,
                bay.effect(unit, true),
                JobTrial.failingApart(judged),
                judged.stream().allMatch(Judgement::known));
    }

    private Level first(List<List<List<Job>>> levels) {
        List<List<Job>> notKnown = new ArrayList<>();
        for (List<List<Job>> level : levels) {
            List<TriedJobs> all = level.parallelStream()
                    .map(set -> tried.computeIfAbsent(set, this::tried))
                    .toList();
            step.run();
            all.stream()
                    .filter(one -> one.fate() == JobTrial.TrialFate.NOT_KNOWN)
                    .forEach(one -> notKnown.add(one.jobs()));
            List<JobStudy.JobSet> kept =
                    all.stream().flatMap(one -> one.kept().stream()).toList();
            if (!kept.isEmpty()) {
                return new Level(kept, notKnown);
            }
        }
        return new Level(List.of(), notKnown);
    }

    private static Optional<JobStudy.JobSet> best(List<JobStudy.JobSet> kept) {
        return kept.stream().reduce((one, other) -> other.headroom() > one.headroom() ? other : one);
    }

    /** The cheapest set that is one job larger and keeps every limit with ease, of several the one with the larger least headroom. */
    private Optional<JobStudy.JobSet> easier(JobStudy.JobSet narrow, JobCost measure) {
        return shop.jobs().parallelStream()
                .filter(job -> !narrow.jobs().contains(job))
                .map(job -> shop.jobs().stream()
                        .filter(one -> one.equals(job) || narrow.jobs().contains(one))
                        .toList())
                .flatMap(set -> tried.computeIfAbsent(set, this::tried).kept().stream())
                .filter(set -> !set.narrow())
                .min(Comparator.comparingDouble((JobStudy.JobSet set) -> measure.cost(set.jobs()))
                        .thenComparing(Comparator.comparingDouble(JobStudy.JobSet::headroom)
                                .reversed()));
    }

    private TriedJobs tried(List<Job> jobs) {
        Optional<Transmission> unit = shop.after(jobs);
        boolean asked = judged.containsKey(jobs);
        if (unit.isEmpty() || (!asked && trial.fails(unit.get()))) {
            return new TriedJobs(jobs, JobTrial.TrialFate.FAILS, Optional.empty());
        }
        List<Judgement> found = asked ? judged.get(jobs) : trial.judged(unit.get());
        JobTrial.TrialFate fate = JobTrial.fate(found);
        return new TriedJobs(
                jobs,
                fate,
                fate == JobTrial.TrialFate.KEEPS
                        ? Optional.of(new JobStudy.JobSet(jobs, JobTrial.least(found), undecided(found)))
                        : Optional.empty());
    }

    /** Limits that neither fail nor hold. */
    private static List<Judgement.Key> undecided(List<Judgement> judged) {
        List<Judgement.Key> found = new ArrayList<>();
        judged.forEach(one -> one.margins().stream()
                .filter(margin -> margin.verdict() != Margin.Verdict.FAILS
                        && margin.verdict() != Margin.Verdict.CLOSE
                        && margin.verdict() != Margin.Verdict.HOLDS)
                .forEach(margin -> found.add(Judgement.Key.of(one.duty(), margin))));
        return found;
    }
}
