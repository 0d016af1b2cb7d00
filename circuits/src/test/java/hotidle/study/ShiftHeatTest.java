package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.ShiftFinding;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.study.ShiftHeat.Closing;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Heat of the shifts of the ready circuits with gear trains. */
class ShiftHeatTest {

    private static final double SPEED = 2800 / 60.0;
    private static final double OMEGA = 2 * Math.PI * SPEED;

    private static DescribedCircuit circuit(String name) {
        return CircuitReader.read(Library.text(name).orElseThrow(), name + ".yaml")
                .circuit()
                .orElseThrow();
    }

    private static final Transmission UNIT = circuit("shuttle-five").unit("restored");

    private static List<ShiftHeat> shifts(double torque, double inertia) {
        return ShiftHeat.of(UNIT, new ShiftHeat.AskedShift(SPEED, torque, inertia, 0.002));
    }

    @Test
    void eachShiftUpIsLookedAtInTheOrderOfItsRatios() {
        List<ShiftHeat> all = shifts(600, 1);
        assertEquals(
                List.of("second-brake", "direct-clutch", "overdrive-clutch", "second-brake"),
                all.stream().map(ShiftHeat::clutch).toList());
        all.forEach(shift -> assertEquals(ShiftFinding.FOUND, shift.why(), shift.toString()));
        assertEquals(List.of("low-clutch", "reverse-brake"), ShiftHeat.still(UNIT, all));
    }

    /**
     * Without torque of the engine and without losses the clutch takes the energy that the falling turbine gives up, less what it passes on
     * to the vehicle: I·(ω − ω2)²/2, whichever way it is reckoned. What meshes lose moves it by some per cent.
     */
    @Test
    void withoutEngineTorqueAndLossesTheHeatIsTheEnergyOfTheTurbinesFall() {
        String text = Library.text("shuttle-five")
                .orElseThrow()
                .replace("  output: output\n", "  output: output\n  mesh-efficiency: 100 %\n");
        Transmission lossFree =
                CircuitReader.read(text, "x.yaml").circuit().orElseThrow().unit("restored");
        List<ShiftHeat> bare = ShiftHeat.of(lossFree, new ShiftHeat.AskedShift(SPEED, 0, 1.5, 0.002));
        List<ShiftHeat> lossy = shifts(0, 1.5);
        for (int i = 0; i < bare.size(); i++) {
            ShiftHeat shift = bare.get(i);
            double fall = 1 - ratio(shift.to()) / ratio(shift.from());
            double energy = 1.5 * fall * fall * OMEGA * OMEGA / 2;
            assertEquals(energy, shift.closing().orElseThrow().heat(), 1e-9 * energy, shift.to());
            assertEquals(energy, lossy.get(i).closing().orElseThrow().heat(), 0.1 * energy, shift.to());
        }
    }

    private static double ratio(String range) {
        return UNIT.range(range).orElseThrow().driven().orElseThrow().ratio();
    }

    @Test
    void moreEngineTorqueSlipsLongerAndTooMuchNeverCloses() {
        double light = shifts(300, 1).get(2).closing().orElseThrow().time();
        double heavy = shifts(900, 1).get(2).closing().orElseThrow().time();
        assertTrue(heavy > 1.5 * light);
        assertEquals(ShiftFinding.NEVER, shifts(3000, 1).get(2).why());
        assertTrue(shifts(3000, 1).get(2).closing().isEmpty());
    }

    @Test
    void plateAreaAndSteelFollowFromTheLiningsByHand() {
        Closing brake = shifts(600, 1).get(0).closing().orElseThrow();
        double area = 8 * Math.PI / 4 * (0.185 * 0.185 - 0.150 * 0.150);
        assertEquals(area, brake.area().orElseThrow(), 1e-9);
        assertEquals(brake.heat() / area, brake.heatOverArea().orElseThrow(), 1e-6);
        assertEquals(
                brake.heat() / area * 2 / (0.002 * 7850 * 470), brake.steel().orElseThrow(), 1e-6);
        assertEquals(brake.torque() * brake.slip(), brake.power(), 1e-6);
    }

    @Test
    void aBandHasNoAreaAndAUnitWithoutGearsNoShift() {
        Transmission four = circuit("crescent-four").unit();
        ShiftHeat second = ShiftHeat.of(four, new ShiftHeat.AskedShift(SPEED, 100, 0.5, 0.002))
                .get(0);
        assertEquals("intermediate-band", second.clutch());
        assertTrue(second.closing().orElseThrow().heatOverArea().isEmpty());
        Transmission six = circuit("vane-six").unit();
        assertFalse(six.ranges().stream().map(Range::driven).anyMatch(driven -> driven.isPresent()));
        assertEquals(List.of(), ShiftHeat.of(six, new ShiftHeat.AskedShift(SPEED, 100, 0.5, 0.002)));
    }

    @Test
    void aLockupHeldSlippingMakesTwiceTheHeatOfOneAppliedInTheSameTime() {
        List<LockupHeat> heats = LockupHeat.of(UNIT, 1.5);
        assertTrue(heats.stream().anyMatch(heat -> heat.duty().equals("light-cruise") && heat.slips()));
        heats.forEach(heat -> assertEquals(2 * heat.applied(), 1.5 * heat.held(), 1e-9 * heat.held()));
        LockupHeat cruise = heats.stream()
                .filter(heat -> heat.duty().equals("light-cruise"))
                .findFirst()
                .orElseThrow();
        assertEquals(110 * 0.03 * 1500 * 2 * Math.PI / 60, cruise.held(), 1e-6);
        assertTrue(heats.stream().noneMatch(heat -> heat.duty().equals("stall")));
        assertEquals(
                List.of(),
                LockupHeat.of(circuit("crescent-four").unit(), 1).stream()
                        .filter(LockupHeat::slips)
                        .toList());
    }
}
