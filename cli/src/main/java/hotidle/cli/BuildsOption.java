package hotidle.cli;

import hotidle.circuits.DescribedCircuit;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.util.List;
import picocli.CommandLine.Option;

/** The builds that a command shows side by side. */
final class BuildsOption {

    @Option(
            names = "--build",
            paramLabel = "BUILD",
            description = "a build; give it again for each. Default: the circuit's first")
    private List<String> named = List.of();

    /** As they were written. */
    List<String> named() {
        return List.copyOf(named);
    }

    /**
     * Their units, each once; that of the circuit's first build where none was named.
     *
     * @throws WrongInputException where one is not in the circuit
     */
    List<Transmission> units(DescribedCircuit circuit) {
        return Circuits.units(circuit, named);
    }

    /** The same with the sizes that can be changed. */
    List<Adjustable> adjustable(DescribedCircuit circuit) {
        return Circuits.adjustable(circuit, named);
    }

    /**
     * Refuses more builds than stay readable side by side.
     *
     * @param shown by what: a command or an option
     * @throws WrongInputException where they are more
     */
    static void atMost(int most, List<?> builds, String shown) {
        if (builds.size() > most) {
            throw new WrongInputException(
                    "hotidle: " + shown + " shows " + most + " builds at most\nmend: name fewer builds");
        }
    }
}
