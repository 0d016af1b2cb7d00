package hotidle.cli;

import hotidle.circuits.DescribedCircuit;
import hotidle.transmission.Adjustable;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Whether builds are shown as stages that a shop quotes, and from which build they start. */
final class StageOptions {

    @Option(
            names = "--stages",
            description =
                    "builds side by side as stages that a shop quotes: torque, what gives first, set pressures that hold"
                            + " every limit, wear that is left, jobs")
    private boolean stages;

    @Option(
            names = "--from",
            paramLabel = "BUILD",
            description =
                    "with --stages: the build as it comes in. Default: the nearest one, not asked for, that the first"
                            + " build stands on; the first build itself where that one is as new")
    private String from;

    /** Whether they are. */
    boolean asked() {
        return stages;
    }

    /**
     * What makes stages of builds; empty where none are asked for.
     *
     * @param units as they are looked at
     * @param named the same as the file has them, without work done to them here
     * @throws WrongInputException where the build that comes in is not in the circuit
     */
    Optional<StageRun> of(TorqueRun run, DescribedCircuit described, List<Adjustable> units, List<Adjustable> named) {
        return stages ? Optional.of(StageRun.of(run, described, units, named, from)) : Optional.empty();
    }
}
