package hotidle.cli;

import hotidle.circuits.DescribedCircuit;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.util.List;

/**
 * Builds after what is done to them.
 *
 * @param circuit with them in it
 * @param names   of them, in the order asked for
 */
record WorkedBuilds(DescribedCircuit circuit, List<String> names) {

    WorkedBuilds {
        names = List.copyOf(names);
    }

    /** Their units. */
    List<Transmission> units() {
        return adjustable().stream().map(Adjustable::unit).toList();
    }

    /** The same with the sizes that can be changed. */
    List<Adjustable> adjustable() {
        return names.stream().map(circuit::adjustable).toList();
    }

    /** The first of them. */
    Adjustable first() {
        return circuit.adjustable(names.get(0));
    }
}
