package hotidle.circuits.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Figures;
import hotidle.network.Placed;
import hotidle.newton.SteadySolver;
import hotidle.part.Converter;
import hotidle.part.OwnState;
import hotidle.part.Setting;
import hotidle.result.Solution;
import hotidle.study.HeldLine;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class VaneSixTest {

    private static final Ready UNIT = Ready.of("vane-six");

    /**
     * V = z·(V_max − V_min), M. G. Rabie, Fluid Power Engineering, 2009, p. 134 (found): of many thin vanes what lies between the
     * ring's farthest and nearest radius from the rotor's centre, π·((R + e)² − (R − e)²)·b, and a thousand spaces summed up; slide: p·700 mm² = 160 N + 150 N/mm·(1.78 mm − e).
     */
    @Test
    void displacementAndSlideFollowFromTheEccentricityByHand() {
        int between = 0;
        for (String build : UNIT.circuit().units().keySet()) {
            for (DutyPoint duty : UNIT.circuit().unit().duties()) {
                Solution state = UNIT.at(build, duty.name());
                double e = state.own("pump", OwnState.POSITION);
                double moved = Math.PI * (Math.pow(0.033 + e, 2) - Math.pow(0.033 - e, 2)) * 0.028 * duty.speed();
                assertEquals(moved, state.flow("pump.swept"), 1e-9 * moved, build + " " + duty.name());
                // a thousand spaces sweep 1 - (pi/1000)^2/6 of that
                assertEquals(swept(e) * duty.speed(), moved, 1e-5 * moved, build + " " + duty.name());
                if (e > 0.000145 && e < 0.00177) {
                    between++;
                    double spring = 160 + 150_000 * (0.00178 - e);
                    assertEquals(spring, state.pressure("control") * 700e-6, 1e-6 * spring, build + " " + duty.name());
                }
            }
        }
        assertTrue(between >= 10, between + " states with the slide between its stops");
    }

    /** Of a thousand spaces 28 mm wide, by the chord of the ring of 66 mm seen from the rotor's centre. */
    private static double swept(double e) {
        int spaces = 1000;
        return spaces * (space(e, 0, spaces) - space(e, Math.PI, spaces));
    }

    private static double space(double e, double middle, int spaces) {
        int steps = 20;
        double step = 2 * Math.PI / spaces / steps;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double angle = middle - Math.PI / spaces + (i + 0.5) * step;
            double ring = e * Math.cos(angle) + Math.sqrt(0.033 * 0.033 - Math.pow(e * Math.sin(angle), 2));
            sum += (ring * ring - 0.029 * 0.029) / 2 * step;
        }
        return sum * 0.028;
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
        assertTrue(stuck.reliefOpen(), "the relief valve ends it");
        assertTrue(!UNIT.figures("worn-slide-stuck", "hot-idle").reliefOpen(), "not at idle");
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

    /**
     * The slide is pushed back because the line has more oil than it needs: whatever the converter asks for, so long as it gets it,
     * such a pump is not short of oil.
     */
    @Test
    void aPumpThatPushesItsSlideBackWithAllServedCouldHoldItsLine() {
        Transmission fresh = UNIT.circuit().unit("fresh");
        DutyPoint idle = fresh.duty("hot-idle").orElseThrow();
        for (double psi : new double[] {110, 140, 170, 200}) {
            Transmission set = SetPressure.of(fresh, psi * SetPressure.PSI);
            Solution state = new SteadySolver(set.network())
                    .solve(set.conditions(idle), Optional.empty())
                    .state()
                    .orElseThrow();
            assertTrue(state.own("pump", OwnState.POSITION) < 0.0017, psi + " psi: the slide is pushed back");
            double gets = state.measure("converter", Converter.CHARGE).orElseThrow();
            for (double share : new double[] {0.5, 0.9, 0.98}) {
                Placed placed = set.network().part("converter").orElseThrow();
                Converter converter = (Converter) placed.part();
                Placed asking = placed.with(new Converter(converter.open(), share * gets, converter.lockup()));
                HeldLine held = HeldLine.at(
                        set.with(set.network().with(asking), set.commanded().orElseThrow()), idle);
                HeldLine.LineBalance balance = held.balance().orElseThrow();
                assertTrue(
                        balance.supply() > balance.demand(),
                        psi + " psi, " + share + ": " + balance.supply() + " of " + balance.demand());
            }
        }
    }
}
