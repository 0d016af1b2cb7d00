package hotidle.circuits.library;

import hotidle.assess.Figures;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.newton.SteadySolver;
import hotidle.result.Solution;
import hotidle.transmission.Transmission;
import java.util.Optional;

/** A ready circuit, solved at its duty points. */
record Ready(DescribedCircuit circuit) {

    static Ready of(String name) {
        return new Ready(CircuitReader.read(Library.text(name).orElseThrow(), name + ".yaml")
                .circuit()
                .orElseThrow());
    }

    Solution at(String build, String duty) {
        Transmission unit = circuit.unit(build);
        return new SteadySolver(unit.network())
                .solve(unit.conditions(unit.duty(duty).orElseThrow()), Optional.empty())
                .state()
                .orElseThrow();
    }

    Figures figures(String build, String duty) {
        return Figures.of(circuit.unit(build), at(build, duty));
    }
}
