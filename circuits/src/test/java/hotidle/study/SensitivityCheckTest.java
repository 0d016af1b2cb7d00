package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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

    /** A little tighter, and the second chamber of the worn unit joins the held line; then its faces count a hundred times as much. */
    @Test
    void aSlopeBesideTheSpeedAtWhichASecondChamberJoinsIsToldToHoldToOneSide() {
        Adjustable worn = SensitivityCheck.circuit("shuttle-five").adjustable("worn");
        List<WearSize> faces = Stream.of("primary.face-clearance", "secondary.face-clearance")
                .map(size -> worn.dimension(size).orElseThrow())
                .toList();
        Sensitivity found =
                Sensitivity.study(new Adjustable(worn.unit(), faces, worn.remake()), SensitivityCheck.SPEEDS, () -> {});
        DutyPoint idle = worn.unit().duty("hot-idle").orElseThrow();
        for (WearSize size : faces) {
            Sensitivity.Rate rate = found.rates().stream()
                    .filter(one -> one.dimension().equals(size)
                            && one.key().kind() == Margin.Kind.REGULATION
                            && one.key().duty().equals(idle.name()))
                    .findFirst()
                    .orElseThrow();
            double tighter = change(worn, idle, size, -2e-7) / -2e-7;
            double wider = change(worn, idle, size, 2e-7) / 2e-7;
            assertEquals(rate.slope(), wider, 0.02 * Math.abs(wider), size.name());
            boolean bent = Math.abs(tighter - wider) > 0.2 * Math.abs(wider);
            assertEquals(size.name().startsWith("secondary"), bent, size.name() + ": " + tighter + " and " + wider);
            assertEquals(bent, rate.oneSided(), size.name());
        }
    }

    private static double change(Adjustable unit, DutyPoint duty, WearSize size, double by) {
        return headroom(unit.with(size, size.value() + by).orElseThrow(), duty) - headroom(unit.unit(), duty);
    }

    private static double headroom(Transmission unit, DutyPoint duty) {
        HeldLine.LineBalance held = HeldLine.at(unit, duty).balance().orElseThrow();
        return held.supply() / held.demand() - 1;
    }
}
