package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.answer.jobs.JobsAnswer;
import hotidle.answer.report.Findings;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.HeldRanges;
import hotidle.study.TorqueConditions;
import hotidle.study.TorqueHeld;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/**
 * What a report asks when it is known what fails: jobs of the builds that do, beside the one whose jobs are told in full, and what the
 * first holds with its jobs done where a report tells of it.
 */
final class OtherRepairs {

    private OtherRepairs() {}

    /** What is found, with this; {@code err} gets the progress. */
    static Findings with(Findings found, Quantity.UnitSystem units, DescribedCircuit circuit, PrintWriter err) {
        var failing = found.otherFailing();
        Progress progress = new Progress(err, "looking for jobs", failing.size() + 1);
        try (SideBySide studies = new SideBySide(progress)) {
            List<Supplier<Optional<JobsAnswer>>> asked = failing.stream()
                    .map(unit -> studies.study(() -> new ReportedRepairs(units, circuit, unit).jobs()))
                    .toList();
            var torque = studies.study(() -> repairedTorque(found));
            studies.begin();
            return found.with(
                    asked.stream().map(Supplier::get).flatMap(Optional::stream).toList(), torque.get());
        } finally {
            progress.end();
        }
    }

    private static OptionalDouble repairedTorque(Findings found) {
        return found.repairedUnit()
                .filter(TorqueConditions::given)
                .flatMap(unit -> new HeldRanges(TorqueHeld.of(unit, TorqueConditions.USUAL_SPEED)).least())
                .flatMap(TorqueHeld::held)
                .map(held -> OptionalDouble.of(held.torque()))
                .orElse(OptionalDouble.empty());
    }
}
