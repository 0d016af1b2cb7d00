package hotidle.circuits.torture;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.network.RandomCircuit;
import hotidle.torture.Case;
import hotidle.torture.Damage;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Random;

/** Where cases come from: half of them random circuits, half of them ready circuits in all their builds, damaged at random. */
final class Yard {

    private final List<Transmission> units;

    Yard() {
        units = Library.names().stream().flatMap(name -> units(name).stream()).toList();
    }

    private static List<Transmission> units(String name) {
        DescribedCircuit circuit = CircuitReader.read(Library.text(name).orElseThrow(), name + ".yaml")
                .circuit()
                .orElseThrow();
        return circuit.builds().stream()
                .map(build -> circuit.unit(build.name()))
                .toList();
    }

    /** The case of a seed and a number. */
    Case draw(long seed, long number) {
        Random random = new Random(seed * 1_000_003 + number);
        // the first draw of neighbouring seeds is nearly the same
        long own = random.nextLong();
        Random fresh = new Random(own);
        if (number % 2 == 0) {
            RandomCircuit circuit = RandomCircuit.any(own);
            return new Case("random circuit", circuit.network(), circuit.conditions());
        }
        return Damage.of(units.get(fresh.nextInt(units.size())), fresh);
    }
}
