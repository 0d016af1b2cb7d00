package hotidle.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.oil.Oil;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What slips back in a pump, and what its tips keep back of it. */
class PumpSlipTest {

    private static final double SWEPT = 20e-6;
    private static final PumpSlip.Lost NOTHING = PumpSlip.Lost.NONE;

    private static PumpChamber gears(Optional<Fit> hub) {
        PumpSlip.Tip tip = new PumpSlip.Tip("tip", Fit.same(0.08416, 0.084), 1.5e-3, 4, 0.024, 0.084, hub);
        return pump(new PumpSlip(List.of(), List.of(tip), 0, PumpSlip.Fitted.NONE, 1e-12, NOTHING));
    }

    private static PumpChamber pump(PumpSlip slip) {
        return new PumpChamber(SWEPT, slip, new PumpChamber.Drag(0, 0, 0), Optional.empty());
    }

    private static double delivered(PumpChamber pump, double rise, double speed, double... hub) {
        Setting setting = new Setting(speed, "any", Setting.Lockup.OFF, Oil.fixed(800, 0.006), 0);
        Reading in =
                hub.length == 0 ? Reading.of(pump.form(), 0, rise, 1) : Reading.of(pump.form(), 0, rise, 1, hub[0]);
        return pump.law(setting).measures(in).stream()
                .filter(one -> one.measure().equals(PumpChamber.DELIVERED))
                .findFirst()
                .orElseThrow()
                .value();
    }

    @Test
    void noPumpDeliversMoreThanItSweeps() {
        for (double speed : new double[] {5, 12, 50, 100}) {
            for (double rise : new double[] {0, 10, 1e3, 1e4, 1e5, 1e6}) {
                double share = delivered(gears(Optional.empty()), rise, speed) / (SWEPT * speed);
                assertTrue(share <= 1 + 1e-12, share + " at " + rise + " Pa and " + speed + " 1/s");
            }
        }
    }

    /** At 10 bar the tips drag U·h/2 against their slip: π·84 mm·10 1/s·80 µm·24 mm/2. */
    @Test
    void underPressureTheTipsKeepBackAllThatTheyDrag() {
        double still = delivered(gears(Optional.empty()), 1e6, 1e-9);
        double turning = delivered(gears(Optional.empty()), 1e6, 10) - SWEPT * 10;
        double drag = Math.PI * 0.084 * 10 * 80e-6 * 0.024 / 2;
        assertEquals(drag, turning - still, 0.03 * drag);
    }

    /** Clearances 5 % wider at 10 bar: 1.1³/1.05³ at twice that. */
    @Test
    void theSlipOfATestedPumpGrowsFasterThanItsPressure() {
        PumpChamber tested =
                pump(new PumpSlip(List.of(), List.of(), 0, new PumpSlip.Fitted(1e-13, 0.05 / 1e6), 1e-12, NOTHING));
        double once = SWEPT * 20 - delivered(tested, 1e6, 20);
        double twice = SWEPT * 20 - delivered(tested, 2e6, 20);
        assertEquals(2 * Math.pow(1.1 / 1.05, 3), twice / once, 1e-3);
    }

    @Test
    void speedTakesALittleOfTheDisplacement() {
        PumpChamber pump = pump(new PumpSlip(
                List.of(), List.of(), 0, PumpSlip.Fitted.NONE, 1e-12, new PumpSlip.Lost(0, 0.002 * 60 / 1000)));
        assertEquals(1 / 1.006, delivered(pump, 0, 50) / (SWEPT * 50), 1e-9);
    }

    private static double reported(PumpChamber pump, double speed, Measure measure) {
        Setting setting = new Setting(speed, "any", Setting.Lockup.OFF, Oil.fixed(800, 0.006), 0);
        return pump.law(setting).measures(Reading.of(pump.form(), 0, 0, 1)).stream()
                .filter(one -> one.measure().equals(measure))
                .findFirst()
                .orElseThrow()
                .value();
    }

    /** Two faces 20 µm from their pocket, 20 to 31.5 mm in diameter, turning twice as fast as the engine: μ·π·ω²·(ro⁴ − ri⁴)/(2·h). */
    @Test
    void whatTheOilBetweenItsFacesShearsIsPartOfThePumpsPower() {
        PumpSlip.Face face = new PumpSlip.Face("face", Fit.same(0.01304, 0.013), 0.01, 0.01575, 0.6, 2, 2);
        PumpChamber pump = pump(new PumpSlip(List.of(face), List.of(), 0, PumpSlip.Fitted.NONE, 1e-12, NOTHING));
        double omega = 2 * 2 * Math.PI * 15;
        double fourths = Math.pow(0.01575, 4) - Math.pow(0.01, 4);
        double watts = 2 * 0.006 * Math.PI * omega * omega * fourths / (2 * 20e-6);
        assertEquals(watts, reported(pump, 15, PumpChamber.POWER), 1e-9 * watts);
        assertEquals(watts, reported(pump, 15, PumpSlip.FACE_DRAG), 1e-9 * watts);
        assertEquals(watts / (2 * Math.PI * 15), reported(pump, 15, PumpChamber.TORQUE), 1e-9 * watts);
        assertEquals(0, reported(pump, 0, PumpChamber.TORQUE), "a pump that stands shears nothing");
    }

    /** Off centre by half of its clearance a gear leaks 1 + 1.5·0.5² times as much; touching, 2.5 times, kept just below. */
    @Test
    void aHubOffCentreOpensTheTipClearance() {
        PumpChamber pump = gears(Optional.of(Fit.same(0.05008, 0.05)));
        double centred = -delivered(pump, 10, 1e-9, 0);
        assertEquals(1 + 1.5 * 0.25, -delivered(pump, 10, 1e-9, 1) / centred, 3e-3);
        PumpChamber worn = gears(Optional.of(Fit.same(0.0503, 0.05)));
        double touching = -delivered(worn, 10, 1e-9, 1) / centred;
        assertTrue(touching > 2.4 && touching < 2.5, touching + " times as much");
    }
}
