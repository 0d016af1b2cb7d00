package hotidle.cli;

import hotidle.assess.Roles;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.text.Dimension;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Where the oil of a build goes, and what each repair wins back. */
@Command(
        name = "leaks",
        mixinStandardHelpOptions = true,
        description =
                "Shows where every bit of oil goes at a driving condition, what each repair wins back, and in which order"
                        + " repairs are best done.")
final class LeaksCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions options;

    @Mixin
    private OneBuildOption build;

    @Option(names = "--duty", paramLabel = "CONDITION", description = "driving condition. Default: the first")
    String duty;

    /** Engine speeds over which the onset of regulation is searched, where none are given. */
    static final String ONSET_SPEEDS = "400..4000/100rpm";

    @Option(
            names = "--speed",
            paramLabel = "SPEEDS",
            description = "engine speeds searched for the speed from which the line is held. Default: " + ONSET_SPEEDS)
    String speed;

    @Option(
            names = "--by",
            defaultValue = "fit",
            paramLabel = "WHAT",
            description =
                    "fit: each fit is a repair; job: what a shop does in one go, and the smallest set of jobs that"
                            + " keeps every limit. Default: ${DEFAULT-VALUE}")
    RepairBy by;

    /** What is a repair. */
    enum RepairBy {
        FIT,
        JOB
    }

    @Mixin
    private AfterWork work;

    @Option(
            names = "--steps",
            paramLabel = "COUNT",
            defaultValue = "12",
            description = "repairs that are put in order. Default: ${DEFAULT-VALUE}")
    int steps;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        DescribedCircuit asWritten = options.load();
        boolean faulted = work.asked().faults().given();
        if (by == RepairBy.JOB && faulted) {
            throw new WrongInputException("hotidle: --fault beside --by job: what a job makes of a fault is not known"
                    + "\nmend: --by fit tries each fit, worn by a fault too; or write the worn size into a --sheet");
        }
        WorkedBuilds worked = options.after(work.asked(), asWritten, List.of(build.of(asWritten)));
        DescribedCircuit described = worked.circuit();
        Adjustable chosen = worked.first();
        Transmission unit = chosen.unit();
        DutyPoint at = duty == null ? unit.duties().get(0) : OptionValues.duty(unit, duty);
        List<Double> speeds = OptionValues.series("--speed", speed == null ? ONSET_SPEEDS : speed, Dimension.SPEED);
        if (steps < 0) {
            throw new WrongInputException("hotidle: --steps " + steps + ": allowed is 0 or more");
        }
        if (Roles.of(unit).chambers().isEmpty()) {
            throw new WrongInputException("hotidle: " + unit.circuit() + " has no pump, so there is no oil budget");
        }
        return by == RepairBy.JOB
                ? new JobRun(spec, options.shared, work).run(described, chosen, at, speeds, speed)
                : new FitRun(spec, options.shared, steps, faulted).run(described, chosen, at, speeds);
    }
}
