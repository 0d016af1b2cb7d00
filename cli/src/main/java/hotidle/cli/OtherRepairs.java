package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.answer.jobs.JobsAnswer;
import hotidle.answer.report.Findings;
import hotidle.circuits.DescribedCircuit;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Jobs of the builds of a report that fail, beside the one whose jobs are told in full: which these are is known with all else. */
final class OtherRepairs {

    private OtherRepairs() {}

    /** What is found, with these; {@code err} gets the progress. */
    static Findings with(Findings found, Quantity.UnitSystem units, DescribedCircuit circuit, PrintWriter err) {
        var failing = found.otherFailing();
        Progress progress = new Progress(err, "looking for jobs", failing.size());
        try (SideBySide studies = new SideBySide(progress)) {
            List<Supplier<Optional<JobsAnswer>>> asked = failing.stream()
                    .map(unit -> studies.study(() -> new ReportedRepairs(units, circuit, unit).jobs()))
                    .toList();
            studies.begin();
            return found.with(asked.stream().map(Supplier::get).flatMap(Optional::stream).toList());
        } finally {
            progress.end();
        }
    }
}
