package hotidle.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.network.Group;
import hotidle.newton.SteadySolver;
import hotidle.part.OwnState;
import hotidle.part.PumpChamber;
import hotidle.part.PumpInlet;
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
                double filling = state.own("pump-inlet", PumpInlet.FILLING);
                assertEquals(swept * filling, budget.displaced(), 1e-12 * swept);
            }
        }
    }

    /** It is there to be pumped again, so that no bore of the regulator counts as a loss in one state and not in the next. */
    @Test
    void whatComesBackPastTheRegulatorIsNoLossItsLandsShutOrOpen() {
        Transmission worn = TenNodes.worn(4);
        Solution seated = state(worn, 650);
        assertEquals(0, seated.own("regulator", OwnState.POSITION));
        OilBudget starved = OilBudget.of(worn, seated);
        assertEquals(
                OilBudget.Fate.RECIRCULATED, path(starved, "regulator.bypass").fate());
        assertEquals(
                OilBudget.Fate.RECIRCULATED, path(starved, "regulator.unload").fate());
        assertTrue(starved.flow(OilBudget.Fate.RECIRCULATED) > 0.01 * starved.displaced(), "past shut lands");
        Transmission fresh = TenNodes.worn(1);
        OilBudget open = OilBudget.of(fresh, state(fresh, 3000));
        assertEquals(OilBudget.Fate.RECIRCULATED, path(open, "regulator.bypass").fate());
        assertTrue(open.flow(OilBudget.Fate.RECIRCULATED) > 0.5 * open.displaced());
        assertTrue(path(open, "primary.tip-drag").flow() < 0, "what tips drag forward makes up for slip");
    }

    /** As the regulator begins to unload, the line hardly moves, and so does what is lost. */
    @Test
    void noOilLostComesOrGoesWhereALandBeginsToOpen() {
        Transmission worn = TenNodes.worn(3);
        double edge = 0.9e-3;
        OilBudget before = null;
        int crossed = 0;
        for (double rpm = 500; rpm < 3000; rpm += 2) {
            Solution state = state(worn, rpm);
            OilBudget budget = OilBudget.of(worn, state);
            boolean shut = state.own("regulator", OwnState.POSITION) < edge;
            if (before != null && !shut) {
                crossed++;
                double share = budget.lost() / budget.displaced() - before.lost() / before.displaced();
                assertTrue(Math.abs(share) < 2e-3, "what is lost leaps by " + share + " of what the pump displaces");
                assertTrue(path(budget, "regulator.unload").flow() > 5e-3 * budget.displaced());
                break;
            }
            before = shut ? budget : null;
        }
        assertEquals(1, crossed, "the regulator begins to unload in this range");
    }

    /** The figures are those of the budget, counted as the pump takes oil in: they add up to what it displaces, in every state. */
    @Test
    void theFiguresOfAStateAddUpToWhatThePumpDisplaces() {
        for (double wear = 1; wear <= 4; wear++) {
            Transmission unit = TenNodes.worn(wear);
            for (double rpm : new double[] {400, 650, 1200, 3000, 6000}) {
                Solution state = state(unit, rpm);
                OilBudget budget = OilBudget.of(unit, state);
                Figures figures = Figures.of(unit, state);
                double used = figures.used().values().stream()
                        .mapToDouble(Double::doubleValue)
                        .sum();
                double all = figures.lost() + used + figures.recirculated() + figures.spilled();
                assertEquals(figures.swept(), all, 1e-9 * figures.swept());
                assertEquals(budget.lost(), figures.lost(), 1e-12 * figures.swept());
                assertEquals(budget.displaced(), figures.swept());
                assertEquals(
                        passing(unit, state, budget, OilBudget.Fate.LEAK), figures.leak(), 1e-12 * figures.swept());
                assertEquals(
                        passing(unit, state, budget, OilBudget.Fate.SLIP), figures.slip(), 1e-12 * figures.swept());
            }
        }
    }

    /** Mass of the very streams that a fate has, over the density at the pump's inlet. */
    private static double passing(Transmission unit, Solution state, OilBudget budget, OilBudget.Fate fate) {
        double density = OilBudget.inletDensity(unit, Roles.of(unit), state);
        return budget.paths().stream()
                .filter(path -> path.fate() == fate)
                .mapToDouble(path -> Math.copySign(mass(state, path.key()) / density, path.flow()))
                .sum();
    }

    private static double mass(Solution state, String key) {
        return state.streams().stream()
                .filter(stream ->
                        key.equals(stream.name().isEmpty() ? stream.part() : stream.part() + "." + stream.name()))
                .mapToDouble(Solution.PartStream::mass)
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
        return new OilBudget.Path("bore", "", group, OilBudget.Fate.LEAK, flow);
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
    void aFlowOfRoundingNeitherLosesOilNorBringsAnyBack() {
        OilBudget budget = new OilBudget(10 / 6e4, List.of());
        for (double rounding : new double[] {0, 1e-23, -1e-23, 9e-9, -9e-9}) {
            assertFalse(budget.passes(leak(Group.VALVE_BODY, rounding)), "" + rounding);
        }
        assertTrue(budget.passes(leak(Group.VALVE_BODY, 1.1e-8)));
        assertTrue(budget.passes(leak(Group.VALVE_BODY, -1.1e-8)));
    }

    @Test
    void aBudgetThatLeavesADropOpenDoesNotClose() {
        assertTrue(new OilBudget(10 / 6e4, List.of(leak(Group.PUMP, 10))).closes());
        assertFalse(new OilBudget(10 / 6e4, List.of(leak(Group.PUMP, 9.9999))).closes());
        assertFalse(new OilBudget(10 / 6e4, List.of(leak(Group.PUMP, 10.0001))).closes(), "too much is as wrong");
        assertTrue(new OilBudget(0, List.of()).closes(), "a pump that stands");
    }
}
