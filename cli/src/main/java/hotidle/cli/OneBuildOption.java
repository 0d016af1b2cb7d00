package hotidle.cli;

import hotidle.circuits.DescribedCircuit;
import hotidle.transmission.Adjustable;
import picocli.CommandLine.Option;

/** The one build that a command looks at. */
final class OneBuildOption {

    @Option(names = "--build", paramLabel = "BUILD", description = "a build. Default: the circuit's first")
    private String named;

    /**
     * The build; the circuit's first where none was named.
     *
     * @throws WrongInputException where it is not in the circuit
     */
    Adjustable of(DescribedCircuit circuit) {
        return Circuits.adjustable(circuit, named);
    }
}
