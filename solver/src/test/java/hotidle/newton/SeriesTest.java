package hotidle.newton;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.network.Conditions;
import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.part.AnnularGap;
import hotidle.part.OwnState;
import hotidle.part.SpoolValve;
import hotidle.result.Solution;
import hotidle.study.TenNodes;
import hotidle.transmission.Transmission;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A series of states gives what single solves give. */
class SeriesTest {

    private final Transmission unit = TenNodes.worn(2);
    private final Conditions conditions = unit.conditions(unit.duties().get(0));
    private final Series series = new Series(unit.network());

    private void assertAsSingle(Conditions asked) {
        Solution single = new SteadySolver(unit.network()).solve(asked).state().orElseThrow();
        assertTrue(series.solve(asked));
        double line = single.pressure("line");
        assertEquals(line, series.value(series.number("line")), 1e-8 * (1 + Math.abs(line)));
        double position = single.own("regulator", OwnState.POSITION);
        assertEquals(position, series.value(series.number("regulator.position")), 1e-10);
        assertEquals(line, series.state().pressure("line"), 1e-8 * (1 + Math.abs(line)));
    }

    @Test
    void eachStateOfASweepIsTheOneSolvedAlone() {
        for (double rpm = 400; rpm < 4000; rpm += 50) {
            assertAsSingle(conditions.atSpeed(rpm / 60));
        }
    }

    @Test
    void aLeapInSpeedAndATurnBackAreNoHindrance() {
        for (double rpm : new double[] {700, 750, 800, 850, 6000, 5950, 5900, 300, 300, 310, 300, 0, 650}) {
            assertAsSingle(conditions.atSpeed(rpm / 60));
        }
    }

    @Test
    void anotherDutyIsSettledAnew() {
        assertAsSingle(conditions);
        assertAsSingle(new Conditions(
                conditions.speed(),
                "reverse",
                conditions.lockup(),
                conditions.oil(),
                conditions.ambient(),
                conditions.temperatures(),
                conditions.commands()));
        assertAsSingle(conditions.atSpeed(20));
    }

    @Test
    void aSweepInSmallStepsTakesFewFactorisations() {
        int steps = 0;
        int states = 0;
        for (double rpm = 400; rpm < 4000; rpm += 10) {
            assertTrue(series.solve(conditions.atSpeed(rpm / 60)));
            steps += series.steps();
            states++;
        }
        assertTrue(steps <= 5 * states, steps + " steps for " + states + " states");
    }

    @Test
    void whatIsNotSolvedForHasNoNumber() {
        assertThrows(IllegalArgumentException.class, () -> series.number("sump"));
    }

    @Test
    void otherSizesAreTakenOverAndTheShapeMustBeTheSame() {
        assertTrue(series.solve(conditions));
        for (double worn : new double[] {1, 4, 1.5, 6, 2}) {
            Transmission other = TenNodes.worn(worn);
            series.use(other.network());
            assertTrue(series.solve(conditions));
            Solution single =
                    new SteadySolver(other.network()).solve(conditions).state().orElseThrow();
            assertEquals(single.pressure("line"), series.value(series.number("line")), 1e-3);
            assertEquals(
                    single.own("regulator", OwnState.POSITION),
                    series.state().own("regulator", OwnState.POSITION),
                    1e-10);
        }
        Network less = new Network(
                unit.network().nodes(),
                unit.network().parts().subList(1, unit.network().parts().size()));
        assertThrows(IllegalArgumentException.class, () -> series.use(less));
    }

    /** All other parts stay the same objects, so that what was settled of them is kept. */
    @Test
    void oneWornPartAfterTheOtherIsTakenOver() {
        assertTrue(series.solve(conditions));
        Network now = unit.network();
        double speed = conditions.speed();
        for (Placed worn : TenNodes.worn(6).network().parts()) {
            now = now.with(worn);
            series.use(now);
            speed += 0.1;
            assertTrue(series.solve(conditions.atSpeed(speed)));
            Solution single = new SteadySolver(now)
                    .solve(conditions.atSpeed(speed))
                    .state()
                    .orElseThrow();
            assertEquals(single.pressure("line"), series.value(series.number("line")), 1e-3, worn.name());
        }
    }

    @Test
    void aPartPutWhereItIsColderIsSettledAnewWithTheDensityOfItsOil() {
        Map<String, Double> temperatures = new HashMap<>(conditions.temperatures());
        temperatures.put("cold", 270.0);
        Conditions given = new Conditions(
                conditions.speed(),
                conditions.range(),
                conditions.lockup(),
                conditions.oil(),
                conditions.ambient(),
                temperatures,
                conditions.commands());
        Placed gap = unit.network().parts().stream()
                .filter(placed -> placed.part() instanceof AnnularGap)
                .findFirst()
                .orElseThrow();
        Network moved = unit.network()
                .with(new Placed(gap.name(), gap.part(), "cold", gap.group(), gap.nodes(), gap.signals()));
        Equations kept = new Equations(unit.network(), Laws.OWN);
        kept.set(given);
        for (Network next : List.of(moved, unit.network())) {
            kept.use(next);
            kept.set(given);
            Equations own = new Equations(next, Laws.OWN);
            own.set(given);
            assertEquals(own.massScale(), kept.massScale());
        }
    }

    /** Where a stop moves with the size, the series must know the new one. */
    @Test
    void aStopThatMovesIsTakenOver() {
        Network shorter = new Network(
                unit.network().nodes(),
                unit.network().parts().stream()
                        .map(placed -> placed.part() instanceof SpoolValve valve
                                ? placed.with(new SpoolValve(
                                        valve.ports(),
                                        valve.openings(),
                                        valve.areas(),
                                        valve.spring(),
                                        OptionalDouble.of(valve.spring().low())))
                                : placed)
                        .toList());
        assertTrue(series.solve(conditions.atSpeed(50)));
        series.use(shorter);
        assertTrue(series.solve(conditions.atSpeed(50)));
        Solution single =
                new SteadySolver(shorter).solve(conditions.atSpeed(50)).state().orElseThrow();
        assertEquals(single.pressure("line"), series.value(series.number("line")), 1e-3);
    }

    private int stepsAt(double rpm) {
        assertTrue(series.solve(conditions.atSpeed(rpm / 60)));
        return series.steps();
    }

    @Test
    void aSeriesThatForgetsStartsAsCold() {
        int cold = stepsAt(650);
        assertTrue(stepsAt(655) < cold, "from the state before");
        series.restart();
        assertEquals(cold, stepsAt(650));
        series.restart();
        assertEquals(cold, stepsAt(650), "and again");
    }

    @Test
    void aSeriesGoesOnFromAStateThatIsGiven() {
        Solution given =
                new SteadySolver(unit.network()).solve(conditions).state().orElseThrow();
        double rpm = 60 * conditions.speed();
        stepsAt(4000);
        series.restart(given);
        assertTrue(stepsAt(rpm) <= 1, "it is there already");
        SolvedState kept = series.kept();
        stepsAt(4000);
        series.restart(kept);
        assertEquals(0, stepsAt(rpm));
        assertAsSingle(conditions);
    }

    @Test
    void aStateThatIsKeptComesBackWhole() {
        assertTrue(series.solve(conditions));
        Solution then = series.state();
        SolvedState kept = series.kept();
        stepsAt(3000);
        Solution back = series.state(kept);
        assertEquals(then.pressures(), back.pressures());
        assertEquals(then.states(), back.states());
        assertEquals(then.imbalance(), back.imbalance(), 1e-20);
        assertEquals(then.forceError(), back.forceError(), 1e-15);
        assertEquals(then.method(), back.method());
        assertEquals(then.flow("relief"), back.flow("relief"));
        assertEquals(conditions.speed(), back.conditions().speed());
    }

    @Test
    void aGuessIsTakenWhereItIsNearerThanTheStateBefore() {
        stepsAt(650);
        SolvedState near = series.kept();
        stepsAt(4000);
        SolvedState far = series.kept();
        series.guess(near);
        assertEquals(0, stepsAt(650), "it is the answer");
        assertTrue(stepsAt(4000) > 0);
        stepsAt(650);
        series.guess(far);
        assertEquals(0, stepsAt(650), "what is there already is nearer");
        Series other = new Series(unit.network());
        other.guess(near);
        assertTrue(other.solve(conditions.atSpeed(650 / 60.0)));
        assertEquals(0, other.steps(), "a guess alone is a start");
        other.restart();
        assertTrue(other.solve(conditions.atSpeed(650 / 60.0)));
        assertTrue(other.steps() > 3, "and is used once");
    }

    /** Where a valve has just latched, Newton from the state before ends nowhere; from one beyond it is there in a few steps. */
    @Test
    void whereNewtonFailsAStateBeyondIsStartedFromAheadOfTimeSteps() {
        Transmission latch = Latch.unit();
        Conditions own = latch.conditions(latch.duties().get(0));
        Series valve = new Series(latch.network());
        assertTrue(valve.solve(own.atSpeed(6)));
        SolvedState open = valve.kept();
        valve.restart();
        assertTrue(valve.solve(own.atSpeed(1)));
        SolvedState shut = valve.kept();
        int position = valve.number("latch.position");
        assertTrue(valve.solve(own.atSpeed(1.25)));
        int alone = valve.steps();
        double latched = valve.value(position);
        assertEquals("pseudo-transient continuation", valve.kept().method());
        valve.restart(shut);
        valve.otherwise(open);
        assertTrue(valve.solve(own.atSpeed(1.25)));
        assertTrue(valve.steps() < alone / 2, valve.steps() + " steps, " + alone + " alone");
        assertEquals(latched, valve.value(position), 1e-9);
        valve.restart(shut);
        assertTrue(valve.solve(own.atSpeed(1.25)));
        assertEquals(alone, valve.steps(), "it is used once");
        valve.restart(shut);
        valve.otherwise(open);
        assertTrue(valve.solve(own.atSpeed(1.2)));
        assertTrue(valve.value(position) < latched / 2, "the state before counts first where it leads to one");
    }

    @Test
    void anotherNetworkOfTheSameShapeIsGoneOnWithAndOneOfAnotherIsBegun() {
        assertTrue(series.solve(conditions));
        Transmission other = TenNodes.worn(5);
        assertSame(series, series.onwards(other.network()));
        assertTrue(series.solve(conditions));
        Series cold = new Series(other.network());
        assertTrue(cold.solve(conditions));
        assertEquals(cold.steps(), series.steps(), "from no state");
        assertEquals(cold.value(cold.number("line")), series.value(series.number("line")), 1e-6);
        Network more = Latch.unit().network();
        Series begun = series.onwards(more);
        assertNotSame(series, begun);
        assertTrue(begun.knows("out") && !series.knows("out") && series.knows("line"));
        assertTrue(begun.solve(conditions));
    }

    @Test
    void whatCameOfTheQuestionIsToldWhole() {
        assertTrue(series.solve(conditions));
        assertEquals(
                series.state().pressures(),
                series.outcome().state().orElseThrow().pressures());
        assertTrue(series.measures("no such part").isEmpty());
        Series thirsty = new Series(
                new MadeEquations(
                                MadeEquations.line(p -> 1 + p * p * 1e-10, p -> 2 * p * 1e-10),
                                MadeEquations.place(place -> place - 2e-3, place -> 1))
                        .equations(),
                Newton.POLISHED);
        assertFalse(thirsty.solve(conditions));
        assertEquals("node line", thirsty.outcome().unsolved().orElseThrow().culprit());
    }
}
