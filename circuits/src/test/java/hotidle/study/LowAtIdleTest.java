package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** A unit whose pump has no oil to spare at idle is not stall-tested (common practice). */
class LowAtIdleTest {

    private static final DescribedCircuit CIRCUIT = CircuitReader.read(
                    Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
            .circuit()
            .orElseThrow();

    /** At 90 psi its line is held, and converter and lubrication go short for it. */
    @Test
    void aLowerSetPressureAloneMakesNoWornUnitFitForAStallTest() {
        for (double psi : new double[] {150, 102, 90}) {
            Transmission worn = SetPressure.of(CIRCUIT.unit("worn"), psi * SetPressure.PSI);
            assertEquals(List.of("worn"), LowAtIdle.of(List.of(worn)), psi + " psi");
            Judgement judged = Judgement.of(
                    worn,
                    worn.duty("hot-idle").orElseThrow(),
                    DoubleStream.of(650 / 60.0).boxed().toList());
            assertEquals(true, judged.lowAtIdle(), psi + " psi");
        }
    }

    @Test
    void aUnitWithOilToSpareHasNoWarning() {
        assertEquals(List.of(), LowAtIdle.of(List.of(CIRCUIT.unit("fresh"), CIRCUIT.unit("restored-raised"))));
    }
}
