package hotidle.transmission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.newton.SteadySolver;
import hotidle.part.SpoolValve;
import hotidle.study.TenNodes;
import hotidle.transmission.SetPressure.By;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Other set pressures for the ten nodes, whose regulator has 180 mm² under the line against 270 mm² under the pilot and a spring of
 * 6 N/mm that its first land presses by 0.3 mm; at 150 psi the pilot is asked for 60.
 */
class SetPressureTest {

    private static final double PSI = SetPressure.PSI;
    private static final Transmission UNIT = TenNodes.worn(1);

    private static double preload(Transmission unit) {
        return ((SpoolValve) unit.network().part("regulator").orElseThrow().part())
                .spring()
                .preload();
    }

    /** By the balance of the spool. */
    private static double balance(double line, double pilot) {
        return 180e-6 * line * PSI - 270e-6 * pilot * PSI - 6000 * 0.3e-3;
    }

    private static double lineAtIdle(Transmission unit) {
        return new SteadySolver(unit.network())
                .solve(unit.conditions(unit.duties().get(0)))
                .state()
                .orElseThrow()
                .pressure("line");
    }

    @Test
    void aPressureIsToldInBothUnitsOfTheTrade() {
        assertEquals("145 psi (10.0 bar)", SetPressure.told(1e6));
    }

    @Test
    void commandAndSpringTogetherBalanceAtThePressureAskedFor() {
        assertEquals(balance(150, 60), preload(UNIT), 1e-6);
        Transmission lower = SetPressure.of(UNIT, 120 * PSI);
        assertEquals(balance(120, 40), preload(lower), 1e-6, "at 120 psi the pilot is asked for 40");
        assertEquals(120 * PSI, lower.highestSet(), 1e-6 * PSI);
        assertTrue(lower.command().tablesHold());
        assertTrue(lineAtIdle(lower) < lineAtIdle(UNIT) - 20 * PSI);
    }

    @Test
    void byTheSpringAloneThePilotStaysAndTheTablesHoldNoMore() {
        Transmission higher = SetPressure.of(UNIT, 170 * PSI, By.SPRING);
        assertEquals(balance(170, 60), preload(higher), 1e-6);
        assertEquals(170 * PSI, higher.highestSet(), 1e-6 * PSI);
        assertFalse(higher.command().tablesHold());
        assertEquals(
                UNIT.command().pilot().orElseThrow().lineByTorque(),
                higher.command().pilot().orElseThrow().lineByTorque());
    }

    /** 60 psi of pilot on half as much area again as the line's hold 90 psi without a spring. */
    @Test
    void byTheSpringAloneTheLineCannotBeSetBelowWhatThePilotHolds() {
        assertEquals(balance(91, 60), preload(SetPressure.of(UNIT, 91 * PSI, By.SPRING)), 1e-6);
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> SetPressure.of(UNIT, 89 * PSI, By.SPRING));
        assertTrue(refused.getMessage().contains("90 psi (6.2 bar)"), refused.getMessage());
    }

    @Test
    void withoutAPilotTheSpringAloneSetsTheLine() {
        Command bare = new Command("line", "regulator", "feed", Optional.empty());
        Transmission unit = SetPressure.of(UNIT.with(UNIT.network(), bare), 100 * PSI);
        assertEquals(balance(100, 0), preload(unit), 1e-6, "the solenoid is asked for nothing");
        assertEquals(100 * PSI, unit.highestSet(), 1e-6 * PSI);
    }

    @Test
    void noPressureAndNoForwardRangeAreRefused() {
        for (double wrong : new double[] {0, -1, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> SetPressure.of(UNIT, wrong));
            assertThrows(IllegalArgumentException.class, () -> SetPressure.of(UNIT, wrong, By.SPRING));
        }
        Transmission backwards = new Transmission(
                "reverse-only",
                "new",
                UNIT.network(),
                UNIT.oil(),
                UNIT.ambient(),
                List.of(new Range("reverse", false, Map.of())),
                UNIT.commanded(),
                UNIT.duties(),
                List.of());
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> SetPressure.of(backwards, 100 * PSI));
        assertEquals("reverse-only has no forward range", refused.getMessage());
    }
}
