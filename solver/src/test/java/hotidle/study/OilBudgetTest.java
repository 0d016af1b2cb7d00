package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.duty.SetPressure;
import hotidle.duty.Unit;
import hotidle.newton.SteadySolver;
import hotidle.part.PumpChamber;
import hotidle.result.State;
import org.junit.jupiter.api.Test;

class OilBudgetTest {

    private static State state(Unit unit, double rpm) {
        return new SteadySolver(unit.network())
                .solve(unit.conditions(unit.duties().get(0)).atSpeed(rpm / 60))
                .state()
                .orElseThrow();
    }

    private static OilBudget.Path path(OilBudget budget, String key) {
        return budget.paths().stream()
                .filter(path -> path.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /** Displacement times speed times filling is slip and everything that ends in the sump or comes back, whatever the state. */
    @Test
    void everyLitreThatThePumpDisplacesIsAccountedFor() {
        for (double wear = 1; wear <= 4; wear++) {
            Unit unit = TenNodes.worn(wear);
            for (double rpm : new double[] {400, 650, 1200, 3000, 6000}) {
                State state = state(unit, rpm);
                OilBudget budget = OilBudget.of(unit, state);
                assertTrue(budget.unexplained() < 1e-9, wear + " at " + rpm + ": " + budget.unexplained());
                double swept = 0;
                for (var chamber : Roles.of(unit).chambers()) {
                    swept += ((PumpChamber) chamber.part()).displacement() * rpm / 60;
                }
                double filling = state.own("pump-inlet", "filling");
                assertEquals(swept * filling, budget.displaced(), 1e-12 * swept);
            }
        }
    }

    @Test
    void aRegulatorOnItsSeatLeaksAndAnOpenOneSendsBack() {
        Unit worn = TenNodes.worn(4);
        State seated = state(worn, 650);
        assertEquals(0, seated.own("regulator", "position"));
        OilBudget starved = OilBudget.of(worn, seated);
        assertEquals(OilBudget.Fate.LEAK, path(starved, "regulator.bypass").fate());
        assertEquals(OilBudget.Fate.LEAK, path(starved, "regulator.unload").fate());
        assertEquals(0, starved.flow(OilBudget.Fate.RECIRCULATED));
        Unit fresh = TenNodes.worn(1);
        OilBudget open = OilBudget.of(fresh, state(fresh, 3000));
        assertEquals(OilBudget.Fate.RECIRCULATED, path(open, "regulator.bypass").fate());
        assertTrue(open.flow(OilBudget.Fate.RECIRCULATED) > 0.5 * open.displaced());
        assertTrue(path(open, "primary.tip-drag").flow() < 0, "what tips drag forward makes up for slip");
    }

    @Test
    void aReliefValveLeaksUntilItLiftsAndSpillsThen() {
        Unit unit = TenNodes.worn(1);
        OilBudget shut = OilBudget.of(unit, state(unit, 1000));
        assertEquals(OilBudget.Fate.LEAK, path(shut, "relief").fate());
        Unit raised = SetPressure.of(unit, 500 * TenNodes.PSI);
        OilBudget lifted = OilBudget.of(raised, state(raised, 3000));
        assertEquals(OilBudget.Fate.SPILLED, path(lifted, "relief").fate());
        assertTrue(lifted.flow(OilBudget.Fate.SPILLED) > 0.3 * lifted.displaced());
        assertTrue(lifted.unexplained() < 1e-9);
    }
}
