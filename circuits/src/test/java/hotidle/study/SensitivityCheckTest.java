package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.transmission.Adjustable;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A sample of what {@link SensitivityCheck} compares for every size of every ready circuit. */
class SensitivityCheckTest {

    private static void agree(String circuit, String build, List<String> sizes, int least) {
        Adjustable whole = SensitivityCheck.circuit(circuit).adjustable(build);
        List<WearSize> some =
                sizes.stream().map(size -> whole.dimension(size).orElseThrow()).toList();
        List<SensitivityCheck.Compared> compared = SensitivityCheck.compare(whole, some);
        assertTrue(compared.size() >= least, compared.size() + " slopes");
        assertEquals(
                List.of(), compared.stream().filter(one -> !(one.error() <= 1)).toList());
    }

    /** Among them the slide's stop, which lets go next to where the worn unit stands. */
    @Test
    void slopesAgreeWithNewSolvesOfTheWornVanePump() {
        agree("vane-six", "worn", List.of("regulator.bore", "pump.face-clearance", "brake-2.seal-gap"), 100);
    }

    @Test
    void slopesAgreeWithNewSolvesOfTheWornCrescentPump() {
        Adjustable whole = SensitivityCheck.circuit("crescent-four").adjustable("worn");
        List<String> everyTwelfth = IntStream.range(0, whole.dimensions().size())
                .filter(i -> i % 12 == 0)
                .mapToObj(i -> whole.dimensions().get(i).name())
                .toList();
        agree("crescent-four", "worn", everyTwelfth, 100);
    }

    @Test
    void slopesAgreeWithNewSolvesOfTheRestoredShuttle() {
        agree("shuttle-five", "restored-raised", List.of("hub-bushing.bore", "plate-shift.feeler"), 100);
    }
}
