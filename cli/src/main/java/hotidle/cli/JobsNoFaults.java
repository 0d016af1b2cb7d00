package hotidle.cli;

import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Jobs done to the build that is asked for, where a fault over it is no question. */
final class JobsNoFaults {

    @Mixin
    private JobOption jobs;

    /** Known only to say what to ask instead. */
    @Option(names = "--fault", hidden = true)
    private String fault;

    /**
     * What is asked for.
     *
     * @throws WrongInputException where a fault is
     */
    BuildWork asked() {
        if (fault != null) {
            throw new WrongInputException(
                    "hotidle: --fault " + fault + ": a spring is set for a sound unit, not to make up for a fault"
                            + "\nmend: hotidle margins CIRCUIT --set PRESSURE --fault " + fault);
        }
        return new BuildWork(jobs.named(), Optional.empty(), new FaultOption());
    }
}
