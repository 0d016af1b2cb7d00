package hotidle.circuits;

import hotidle.circuits.text.Problem;
import java.util.List;
import java.util.Optional;

/**
 * What came of reading a file.
 *
 * @param circuit  the circuit; empty where there is an error
 * @param problems all errors and warnings, in the order of the file
 */
public record ReadCircuit(Optional<DescribedCircuit> circuit, List<Problem> problems) {

    public ReadCircuit {
        problems = List.copyOf(problems);
    }
}
