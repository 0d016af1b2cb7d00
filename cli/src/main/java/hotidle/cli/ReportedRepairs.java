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
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import hotidle.transmission.Workshop;
import java.util.Optional;

/**
 * What a report tells of the repair of the build named first.
 *
 * @param unit that build
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
                circuit.adjustable(unit.build()),
                duty,
                ReportRun.series(LeaksCommand.ONSET_SPEEDS),
                STEPS,
                LeaksAnswer.MOST_ALONE,
                ReportRun::quiet);
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

    Optional<JobsAnswer> jobs() {
        if (Roles.of(unit).chambers().isEmpty()) {
            return Optional.empty();
        }
        Optional<Workshop> named = circuit.workshop(unit.build());
        Adjustable build = circuit.adjustable(unit.build());
        Workshop shop = named.orElseGet(() -> JobPlace.workshop(build));
        DutyPoint duty = unit.duties().get(0);
        JobStudy study = JobStudy.of(
                shop,
                ReportRun.BY,
                duty,
                ReportRun.series(LeaksCommand.ONSET_SPEEDS),
                OptionValues.searched(null, unit, JobRun.STEP),
                ReportRun::quiet);
        return Optional.of(new JobsAnswer(units, shop, named.isPresent(), false, duty, study));
    }
}
