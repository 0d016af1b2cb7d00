package hotidle.newton;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
}
