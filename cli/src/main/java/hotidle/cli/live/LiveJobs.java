package hotidle.cli.live;

import hotidle.answer.format.Quantity;
import hotidle.answer.live.LiveJobsRecord;
import hotidle.answer.phrase.JobMovesPhrase;
import hotidle.study.JobGain;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Job;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;

/** What each job moves that can be done to a build: the unit without it beside the unit with it, all else as the page has it. */
record LiveJobs(LiveUnit unit) {

    /** Tries them; {@code step} is run between two of them and throws once nobody waits. */
    LiveJobsRecord moves(AskedState asked, Quantity.UnitSystem units, Runnable step) {
        DutyPoint duty = unit.looked(unit.unit(asked), asked);
        List<String> names =
                unit.workshop(unit.build(asked)).jobs().stream().map(Job::name).toList();
        return new LiveJobsRecord(names.parallelStream()
                .map(name -> {
                    step.run();
                    return moves(asked, units, duty, name);
                })
                .toList());
    }

    private LiveJobsRecord.JobMoves moves(AskedState asked, Quantity.UnitSystem units, DutyPoint duty, String name) {
        try {
            return LiveJobsRecord.JobMoves.of(
                    units, duty.name(), name, JobGain.of(made(asked, name, false), made(asked, name, true), duty));
        } catch (WrongStateException impossible) {
            return LiveJobsRecord.JobMoves.notKnown(name, JobMovesPhrase.impossible(impossible.getMessage()));
        }
    }

    /** As the page has it, but for one job that is done or is not; jobs are done in the order in which they were chosen. */
    private Transmission made(AskedState asked, String name, boolean done) {
        List<String> jobs = new ArrayList<>(asked.jobs());
        if (done && !jobs.contains(name)) {
            jobs.add(name);
        } else if (!done) {
            jobs.remove(name);
        }
        return unit.unit(asked.withJobs(jobs));
    }
}
