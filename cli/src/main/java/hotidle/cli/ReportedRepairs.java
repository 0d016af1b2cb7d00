package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.answer.jobs.JobsAnswer;
import hotidle.answer.leaks.LeaksAnswer;
import hotidle.assess.Assessment;
import hotidle.assess.Roles;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.JobPlace;
import hotidle.study.JobStudy;
import hotidle.study.LeakStudy;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import hotidle.transmission.Workshop;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * What a report tells of the repair of a build.
 *
 * @param unit the build
 */
record ReportedRepairs(Quantity.UnitSystem units, DescribedCircuit circuit, Transmission unit) {

    /** Repairs that are put in order. */
    private static final int STEPS = 12;

    Optional<LeaksAnswer> leaks() {
        Roles roles = Roles.of(unit);
        if (roles.chambers().isEmpty()) {
            return Optional.empty();
        }
        DutyPoint duty = unit.duties().get(0);
        LeakStudy study = LeakStudy.of(
                circuit.adjustable(unit.build()), duty, onsets(), STEPS, LeaksAnswer.MOST_ALONE, ReportRun::quiet);
        return Optional.of(new LeaksAnswer(
                units,
                circuit.about(),
                circuit.abouts(),
                unit,
                roles,
                duty,
                study.outcome(),
                study.outcome().state().map(state -> Assessment.of(unit, duty, roles, state)),
                study.found(),
                false));
    }

    /** All that is told of jobs. */
    Optional<JobsAnswer> jobs() {
        return jobs((shop, duty) -> JobStudy.of(shop, ReportRun.BY, duty, onsets(), searched(), ReportRun::quiet));
    }

    /** Which jobs it takes, and nothing beside it. */
    Optional<JobsAnswer> needed() {
        return jobs((shop, duty) -> JobStudy.needed(shop, ReportRun.BY, duty, onsets(), searched()));
    }

    private Optional<JobsAnswer> jobs(BiFunction<Workshop, DutyPoint, JobStudy> asked) {
        if (Roles.of(unit).chambers().isEmpty()) {
            return Optional.empty();
        }
        Optional<Workshop> named = circuit.workshop(unit.build());
        Workshop shop = named.orElseGet(() -> JobPlace.workshop(circuit.adjustable(unit.build())));
        DutyPoint duty = unit.duties().get(0);
        return Optional.of(new JobsAnswer(units, shop, named.isPresent(), false, duty, asked.apply(shop, duty)));
    }

    private static List<Double> onsets() {
        return ReportRun.series(LeaksCommand.ONSET_SPEEDS);
    }

    private List<Double> searched() {
        return OptionValues.searched(null, unit, JobRun.STEP);
    }
}
