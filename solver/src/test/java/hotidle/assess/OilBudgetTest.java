package hotidle.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.network.Group;
import hotidle.newton.SteadySolver;
import hotidle.part.PumpChamber;
import hotidle.result.Solution;
import hotidle.study.TenNodes;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.List;
import org.junit.jupiter.api.Test;

class OilBudgetTest {

    private static Solution state(Transmission unit, double rpm) {
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
            Transmission unit = TenNodes.worn(wear);
            for (double rpm : new double[] {400, 650, 1200, 3000, 6000}) {
                Solution state = state(unit, rpm);
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
        Transmission worn = TenNodes.worn(4);
        Solution seated = state(worn, 650);
        assertEquals(0, seated.own("regulator", "position"));
        OilBudget starved = OilBudget.of(worn, seated);
        assertEquals(OilBudget.Fate.LEAK, path(starved, "regulator.bypass").fate());
        assertEquals(OilBudget.Fate.LEAK, path(starved, "regulator.unload").fate());
        assertEquals(0, starved.flow(OilBudget.Fate.RECIRCULATED));
        Transmission fresh = TenNodes.worn(1);
        OilBudget open = OilBudget.of(fresh, state(fresh, 3000));
        assertEquals(OilBudget.Fate.RECIRCULATED, path(open, "regulator.bypass").fate());
        assertTrue(open.flow(OilBudget.Fate.RECIRCULATED) > 0.5 * open.displaced());
        assertTrue(path(open, "primary.tip-drag").flow() < 0, "what tips drag forward makes up for slip");
    }

    /** Where unload and bypass open one after the other, the bypass lets by a little while it is shut: no loss any more. */
    @Test
    void aShutLandBesideAnOpenOneLosesNothing() {
        Transmission fresh = TenNodes.worn(1);
        Solution unloading = java.util.stream.IntStream.rangeClosed(4, 40)
                .mapToObj(i -> state(fresh, 50.0 * i))
                .filter(one -> one.own("regulator", "position") > 0.9e-3 && one.own("regulator", "position") < 1.5e-3)
                .findFirst()
                .orElseThrow();
        OilBudget budget = OilBudget.of(fresh, unloading);
        assertEquals(
                OilBudget.Fate.RECIRCULATED, path(budget, "regulator.unload").fate());
        assertEquals(
                OilBudget.Fate.RECIRCULATED, path(budget, "regulator.bypass").fate());
        assertTrue(path(budget, "regulator.bypass").flow() > 0);
    }

    /** What compare and sweep show of a fate is the volume of the very streams that leaks books there. */
    @Test
    void figuresTellOfEachStreamWhatTheBudgetTells() {
        for (double wear = 1; wear <= 4; wear++) {
            Transmission unit = TenNodes.worn(wear);
            for (double rpm : new double[] {400, 650, 1200, 3000, 6000}) {
                Solution state = state(unit, rpm);
                OilBudget budget = OilBudget.of(unit, state);
                Figures figures = Figures.of(unit, state);
                assertEquals(passing(state, budget, OilBudget.Fate.SLIP), figures.slip(), 1e-18);
                assertEquals(passing(state, budget, OilBudget.Fate.LEAK), figures.leak(), 1e-18);
                assertEquals(passing(state, budget, OilBudget.Fate.RECIRCULATED), figures.recirculated(), 1e-18);
                assertEquals(passing(state, budget, OilBudget.Fate.SPILLED), figures.spilled(), 1e-18);
                assertEquals(budget.displaced(), figures.swept(), 1e-12 * figures.swept());
            }
        }
    }

    private static double passing(Solution state, OilBudget budget, OilBudget.Fate fate) {
        return budget.paths().stream()
                .filter(path -> path.fate() == fate)
                .mapToDouble(path -> Math.copySign(state.flow(path.key()), path.flow()))
                .sum();
    }

    @Test
    void aReliefValveLeaksUntilItLiftsAndSpillsThen() {
        Transmission unit = TenNodes.worn(1);
        OilBudget shut = OilBudget.of(unit, state(unit, 1000));
        assertEquals(OilBudget.Fate.LEAK, path(shut, "relief").fate());
        Transmission raised = SetPressure.of(unit, 500 * TenNodes.PSI);
        OilBudget lifted = OilBudget.of(raised, state(raised, 3000));
        assertEquals(OilBudget.Fate.SPILLED, path(lifted, "relief").fate());
        assertTrue(lifted.flow(OilBudget.Fate.SPILLED) > 0.3 * lifted.displaced());
        assertTrue(lifted.unexplained() < 1e-9);
    }

    private static OilBudget.Path leak(Group group, double litresPerMinute) {
        double flow = litresPerMinute / 6e4;
        return new OilBudget.Path("bore", "", group, OilBudget.Fate.LEAK, flow, flow);
    }

    /** Of 10 L/min, 0.05 L/min is half a per cent. */
    @Test
    void aPathBelowHalfAPerCentOfTheOilIsSmallButAStarvedLubeBranchIsNews() {
        OilBudget budget = new OilBudget(10 / 6e4, List.of());
        assertTrue(budget.small(leak(Group.VALVE_BODY, 0.049)));
        assertTrue(budget.small(leak(Group.VALVE_BODY, -0.049)), "as small when it brings oil back");
        assertFalse(budget.small(leak(Group.VALVE_BODY, 0.051)));
        assertFalse(budget.small(leak(Group.LUBE, 0)));
    }

    @Test
    void aBudgetThatLeavesADropOpenDoesNotClose() {
        assertTrue(new OilBudget(10 / 6e4, List.of(leak(Group.PUMP, 10))).closes());
        assertFalse(new OilBudget(10 / 6e4, List.of(leak(Group.PUMP, 9.9999))).closes());
        assertFalse(new OilBudget(10 / 6e4, List.of(leak(Group.PUMP, 10.0001))).closes(), "too much is as wrong");
        assertTrue(new OilBudget(0, List.of()).closes(), "a pump that stands");
    }
}
