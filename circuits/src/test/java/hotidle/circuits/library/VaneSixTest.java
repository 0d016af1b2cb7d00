package hotidle.circuits.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Figures;
import hotidle.part.Converter;
import hotidle.part.Setting;
import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import org.junit.jupiter.api.Test;

class VaneSixTest {

    private static final Ready UNIT = Ready.of("vane-six");

    /**
     * V = π/2·(66 + 58 mm)·e·28 mm, A. Esposito, Fluid Power with Applications, §5.5 (from memory); slide: p·700 mm² = 160 N
     * + 70 N/mm·(3.8 mm − e).
     */
    @Test
    void displacementAndSlideFollowFromTheEccentricityByHand() {
        int between = 0;
        for (String build : UNIT.circuit().units().keySet()) {
            for (DutyPoint duty : UNIT.circuit().unit().duties()) {
                Solution state = UNIT.at(build, duty.name());
                double e = state.own("pump", "position");
                double moved = Math.PI / 2 * 0.124 * e * 0.028 * duty.speed();
                assertEquals(moved, state.flow("pump.swept"), 1e-9 * moved, build + " " + duty.name());
                if (e > 0.00031 && e < 0.00379) {
                    between++;
                    double spring = 160 + 70_000 * (0.0038 - e);
                    assertEquals(spring, state.pressure("control") * 700e-6, 1e-6 * spring, build + " " + duty.name());
                }
            }
        }
        assertTrue(between >= 10, between + " states with the slide between its stops");
    }

    @Test
    void wearCostsPowerBeforeItCostsPressure() {
        for (String duty : new String[] {"hot-idle", "stall", "road-cruise", "climbing"}) {
            Figures fresh = UNIT.figures("fresh", duty);
            Figures worn = UNIT.figures("worn", duty);
            assertEquals(fresh.line(), worn.line(), 0.01 * fresh.line(), duty);
            assertTrue(worn.pumpPower() > 1.2 * fresh.pumpPower(), duty);
            assertTrue(UNIT.figures("restored", duty).pumpPower() < 1.02 * fresh.pumpPower(), duty);
        }
    }

    @Test
    void aRegulatorThatSticksShortOfTheSlideLetsTheLineClimb() {
        Figures worn = UNIT.figures("worn", "road-cruise");
        Figures stuck = UNIT.figures("worn-slide-stuck", "road-cruise");
        assertTrue(stuck.line() > 2 * worn.line() && stuck.pumpPower() > 3 * worn.pumpPower());
    }

    @Test
    void theLubeBoostGivesTheLubricationMoreThanTheCoolerPasses() {
        assertTrue(UNIT.figures("fresh", "climbing").lube()
                > 1.5 * UNIT.figures("fresh", "climbing").cooler().orElseThrow());
        assertEquals(
                UNIT.figures("fresh", "hot-idle").cooler().orElseThrow(),
                UNIT.figures("fresh", "hot-idle").lube(),
                0.02 * UNIT.figures("fresh", "hot-idle").cooler().orElseThrow());
    }

    /** Where lockup is said to be on, the new unit's apply side has more pressure than its release side. */
    @Test
    void noDutyPointHasALockupThatNothingApplies() {
        Transmission fresh = UNIT.circuit().unit("fresh");
        for (DutyPoint duty : fresh.duties()) {
            if (duty.lockup() != Setting.Lockup.OFF) {
                assertTrue(
                        UNIT.at("fresh", duty.name())
                                        .measure("converter", Converter.APPLY_LESS_RELEASE)
                                        .orElseThrow()
                                > 0,
                        duty.name());
            }
        }
    }
}
