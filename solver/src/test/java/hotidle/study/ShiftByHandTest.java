package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.ShiftFinding;
import hotidle.study.ShiftHeat.AskedShift;
import hotidle.study.ShiftHeat.Closing;
import hotidle.transmission.Transmission;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Shifts of a loss-free train, worked by hand. */
class ShiftByHandTest {

    private static final double SPEED = 2400 / 60.0;
    private static final double FALL = (1 - TenNodesByRatio.SECOND / TenNodesByRatio.FIRST) * 2 * Math.PI * SPEED;
    private static final double INERTIA = 0.8;
    private static final Transmission UNIT = TenNodesByRatio.worn(1);

    private static List<ShiftHeat> shifts(double torque) {
        return ShiftHeat.of(UNIT, new AskedShift(SPEED, torque, INERTIA, 0.002));
    }

    private static Closing second(double torque) {
        return shifts(torque).get(0).closing().orElseThrow();
    }

    @Test
    void withoutEngineTorqueTheClutchTakesInertiaTimesTheFallSquaredOverTwo() {
        double energy = INERTIA * FALL * FALL / 2;
        assertEquals(energy, second(0).heat(), 1e-9 * energy);
    }

    /** Linings of 6 surfaces wear evenly: μ·z·(ro + ri)/2 = 0.10·6·0.06 = 0.036 m, on p·40 cm² less 500 N. */
    @Test
    void theClutchCarriesWhatItsPressureClampsAndSlipsAsLongAsThatTakes() {
        Closing closing = second(50);
        assertEquals(0.036 * (closing.pressure() * 0.004 - 500), closing.torque(), 1e-9 * closing.torque());
        assertEquals(TenNodesByRatio.SHARE * 50, closing.asked(), 1e-12);
        assertEquals(FALL / TenNodesByRatio.SHARE, closing.slip(), 1e-9 * closing.slip());
        double time = INERTIA * FALL / (closing.torque() / TenNodesByRatio.SHARE - 50);
        assertEquals(time, closing.time(), 1e-9 * time);
        assertEquals(closing.torque() * closing.slip() * time / 2, closing.heat(), 1e-9 * closing.heat());
    }

    @Test
    void heatAndPowerSpreadOverSixRingsAndWarmTheSteel() {
        Closing closing = second(50);
        double area = 6 * Math.PI * (0.07 * 0.07 - 0.05 * 0.05);
        assertEquals(area, closing.area().orElseThrow(), 1e-12);
        assertEquals(closing.heat() / area, closing.heatOverArea().orElseThrow(), 1e-9 * closing.heat() / area);
        assertEquals(closing.power() / area, closing.powerOverArea().orElseThrow(), 1e-9 * closing.power() / area);
        double rise = 2 * closing.heat() / area / (0.002 * 7850 * 470);
        assertEquals(rise, closing.steel().orElseThrow(), 1e-9 * rise);
    }

    @Test
    void moreEngineTorqueMakesMoreHeatAndTooMuchNeverCloses() {
        assertTrue(second(60).heat() > second(30).heat()
                && second(30).heat() > second(0).heat());
        double carried = second(60).torque() / TenNodesByRatio.SHARE;
        // its line is commanded at every torque alike
        ShiftHeat never = shifts(1.01 * carried).get(0);
        assertEquals(ShiftFinding.NEVER, never.why());
        assertTrue(never.closing().isEmpty());
        assertEquals(ShiftFinding.FOUND, shifts(0.99 * carried).get(0).why());
    }

    @Test
    void rangesAreShiftedThroughByFallingRatioAndAShiftWithoutANewClutchIsNoneOfOne() {
        List<ShiftHeat> all = shifts(50);
        assertEquals(
                List.of("first", "second"), all.stream().map(ShiftHeat::from).toList());
        assertEquals(List.of("second", "third"), all.stream().map(ShiftHeat::to).toList());
        assertEquals(List.of("direct", ""), all.stream().map(ShiftHeat::clutch).toList());
        assertEquals(
                List.of(ShiftFinding.FOUND, ShiftFinding.NOT_ONE),
                all.stream().map(ShiftHeat::why).toList());
        assertEquals(List.of("low"), ShiftHeat.still(UNIT, all), "it slides in no shift");
        assertEquals(List.of("direct", "low"), ShiftHeat.still(UNIT, List.of()));
    }

    @Test
    void aShiftNeedsATurbineThatTurnsAndPlatesThatTakeHeat() {
        assertThrows(IllegalArgumentException.class, () -> new AskedShift(0, 50, INERTIA, 0.002));
        assertThrows(IllegalArgumentException.class, () -> new AskedShift(SPEED, -1, INERTIA, 0.002));
        assertThrows(IllegalArgumentException.class, () -> new AskedShift(SPEED, 50, 0, 0.002));
        assertThrows(IllegalArgumentException.class, () -> new AskedShift(SPEED, 50, INERTIA, Double.NaN));
    }

    @Test
    void withoutAGearTrainNoShiftIsLookedAt() {
        assertEquals(List.of(), ShiftHeat.of(TenNodes.worn(1), new AskedShift(SPEED, 50, INERTIA, 0.002)));
    }
}
