package hotidle.answer;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.result.Outcome;
import hotidle.result.Unsolved;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.Arrays;
import java.util.List;

/** What the tests of answers are made of. */
public final class ReadyCircuits {

    /** One pound per square inch [Pa]. */
    public static final double PSI = 6894.757293168;

    private ReadyCircuits() {}

    /** A ready circuit. */
    public static DescribedCircuit read(String name) {
        return CircuitReader.read(Library.text(name).orElseThrow(), name + ".yaml")
                .circuit()
                .orElseThrow();
    }

    /** Engine speeds [rev/s]. */
    public static List<Double> rpm(double... speeds) {
        return Arrays.stream(speeds).mapToObj(speed -> speed / 60).toList();
    }

    /** That no state was found, since the line did not settle. */
    public static Outcome unsolved(Transmission unit, DutyPoint duty) {
        return Outcome.of(unit.conditions(duty), new Unsolved(0.3, "node line", List.of("Newton from rest")));
    }
}
