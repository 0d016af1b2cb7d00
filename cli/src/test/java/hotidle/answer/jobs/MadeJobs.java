package hotidle.answer.jobs;

import hotidle.answer.ReadyCircuits;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Margin;
import hotidle.study.JobStudy;
import hotidle.study.JobStudy.JobSet;
import hotidle.study.JobStudy.JobState;
import hotidle.study.Judgement;
import hotidle.study.Repairs;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Job;
import hotidle.transmission.JobCost;
import hotidle.transmission.Transmission;
import hotidle.transmission.Workshop;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What jobs come to, made by hand on a ready circuit: nothing is solved. */
final class MadeJobs {

    static final Transmission UNIT = ReadyCircuits.read("crescent-four").unit();

    static final Job PUMP = new Job("pump", "new gears", OptionalDouble.of(4), OptionalDouble.of(380));
    static final Job RINGS = new Job("rings", "", OptionalDouble.of(1.5), OptionalDouble.of(45.5));
    static final Job BORES = new Job("bores", "", OptionalDouble.empty(), OptionalDouble.of(200));

    static final Judgement.Key LINE = new Judgement.Key("hot-idle", Margin.Kind.REGULATION, "");
    static final Judgement.Key FILM_AT_STALL = new Judgement.Key("stall", Margin.Kind.FILM, "hub");
    static final Judgement.Key FILM_AT_CLIMB = new Judgement.Key("climb", Margin.Kind.FILM, "hub");

    private MadeJobs() {}

    /** 9 bar of 10 bar asked for, 0.6 L/min of lubrication, 6 L/min lost. */
    static Repairs.Effect effect(double line) {
        return new Repairs.Effect(
                line, OptionalDouble.of(10e5), line >= 10e5, 1e-5, 1e-4, List.of(), 1, OptionalDouble.of(12));
    }

    static JobState state(List<Job> jobs, Judgement.Key... failing) {
        return new JobState(jobs, Optional.of(effect(9e5)), List.of(failing), true);
    }

    static JobState unsolved(List<Job> jobs) {
        return new JobState(jobs, Optional.empty(), List.of(), false);
    }

    static JobSet set(Job... jobs) {
        return new JobSet(
                List.of(jobs),
                Optional.of(new JobStudy.JudgedLimit(
                        LINE, Margin.of(Margin.Kind.REGULATION, "", 1.1, 1, Margin.Scale.PRESSURE))),
                List.of());
    }

    /** A study of pump and rings. */
    static JobStudy study(
            JobCost measure,
            Optional<JobSet> chosen,
            List<JobSet> equal,
            Optional<JobSet> fewest,
            List<List<Job>> notKnown,
            Optional<JobState> all,
            Optional<JobStudy.Ceiling> ceiling) {
        return new JobStudy(
                measure,
                state(List.of(), LINE),
                false,
                List.of(state(List.of(PUMP)), unsolved(List.of(RINGS))),
                chosen,
                chosen.map(set -> state(set.jobs())),
                equal,
                fewest,
                Optional.empty(),
                notKnown,
                2,
                all,
                ceiling);
    }

    /** The same where a set keeps every limit. */
    static JobStudy kept(JobCost measure, JobSet chosen) {
        return study(
                measure,
                Optional.of(chosen),
                List.of(),
                Optional.empty(),
                List.of(),
                Optional.of(state(List.of(PUMP, RINGS))),
                Optional.empty());
    }

    /** The same where none does. */
    static JobStudy none(Optional<JobState> all, Optional<JobStudy.Ceiling> ceiling) {
        return study(JobCost.JOBS, Optional.empty(), List.of(), Optional.empty(), List.of(), all, ceiling);
    }

    static JobsAnswer answer(UnitSystem units, JobStudy study, Job... jobs) {
        return new JobsAnswer(
                units,
                new Workshop(UNIT, List.of(jobs), done -> Adjustable.fixed(UNIT)),
                true,
                false,
                UNIT.duties().get(0),
                study);
    }
}
