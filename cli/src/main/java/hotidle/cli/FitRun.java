package hotidle.cli;

import hotidle.answer.leaks.LeaksAnswer;
import hotidle.assess.Assessment;
import hotidle.assess.Roles;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.LeakStudy;
import hotidle.study.Repairs;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;

/**
 * Tries fits one by one and in order, for {@code leaks}.
 *
 * @param steps   repairs that are put in order
 * @param faulted whether a fault lies over the build
 */
record FitRun(CommandSpec spec, OutputOptions shared, int steps, boolean faulted) {

    /** Tries and prints; the speeds are those over which the onset of regulation is searched [rev/s]. */
    int run(DescribedCircuit described, Adjustable build, DutyPoint duty, List<Double> speeds) {
        Transmission unit = build.unit();
        Roles roles = Roles.of(unit);
        LeakStudy study = study(build, duty, speeds);
        LeaksAnswer answer = new LeaksAnswer(
                shared.units(),
                described.about(),
                described.abouts(),
                unit,
                roles,
                duty,
                study.outcome(),
                study.outcome().state().map(state -> Assessment.of(unit, duty, roles, state)),
                study.found(),
                faulted);
        return Printed.print(spec, shared, answer);
    }

    private LeakStudy study(Adjustable build, DutyPoint duty, List<Double> speeds) {
        int offered = Repairs.of(build).size();
        Progress progress =
                new Progress(spec.commandLine().getErr(), "trying repairs", offered + Math.min(steps, offered));
        LeakStudy study = LeakStudy.of(build, duty, speeds, steps, LeaksAnswer.MOST_ALONE, progress::step);
        progress.end();
        return study;
    }
}
