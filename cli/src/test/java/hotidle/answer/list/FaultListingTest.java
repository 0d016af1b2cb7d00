package hotidle.answer.list;

import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.ReadyCircuits;
import hotidle.circuits.DescribedCircuit;
import hotidle.fault.UnitFaults;
import org.junit.jupiter.api.Test;

/** Faults of a ready circuit as they are listed. */
class FaultListingTest {

    private static String listed(String name) {
        DescribedCircuit circuit = ReadyCircuits.read(name);
        return new FaultListing(
                        name, UnitFaults.of(circuit.adjustable(circuit.unit().build())))
                .text()
                .replaceAll("\\s+", " ");
    }

    @Test
    void partsThatTakeOneSizeShareAnExampleAndHolesHaveTheirOwn() {
        String text = listed("training-rig");
        assertTrue(text.contains("pump-slipping@ pump; for example pump-slipping@pump:250%"), text);
        assertTrue(text.contains("oil-aerated, of the whole unit; for example oil-aerated:15%"), text);
        assertTrue(text.contains("orifice-wrong@ first:1.4mm, second:1.6mm, third:1mm, bleed:1mm"), text);
    }

    @Test
    void whatIsThereOrNotHasNoSize() {
        String text = listed("shuttle-five");
        assertTrue(text.contains("check-ball-missing@ secondary-check valve-stuck@ regulator:1mm"), text);
    }
}
