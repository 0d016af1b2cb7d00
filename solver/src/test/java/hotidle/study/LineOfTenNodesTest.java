package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.LineVerdict;
import hotidle.newton.SteadySolver;
import hotidle.result.Solution;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Line pressure that ten nodes with a brake, a clutch and a shaft need for each engine torque. */
class LineOfTenNodesTest {

    private static final double SPEED = TenNodesWithTrain.SPEED;

    private static Transmission unit(double wear, boolean rising) {
        return TenNodesWithTrain.unit(
                wear, 3, TenNodesWithTrain.STRONG, rising ? TenNodesWithTrain.RISING : TenNodesWithTrain.LEVEL);
    }

    private static List<LineNeeded> of(Transmission unit, String range) {
        return LineNeeded.of(unit, SPEED).stream()
                .filter(row -> row.range().equals(range))
                .toList();
    }

    /** Half of 1.8 times the engine's torque and the factor over the linings' arm, the spring, and what the orifice takes. */
    @Test
    void whatIsNeededFollowsFromLiningsAndSpringByHandAndTheLossOnTheWayComesOnTop() {
        Transmission unit = unit(1, false);
        for (LineNeeded row : of(unit, "first")) {
            double clamping = TenNodesWithTrain.FACTOR
                    * row.torque()
                    * 0.5
                    * TenNodesWithTrain.CONVERTER
                    / TenNodesWithTrain.arm(3);
            double piston = (clamping + TenNodesWithTrain.SPRING) / TenNodesWithTrain.AREA;
            Solution state = new SteadySolver(unit.network())
                    .solve(unit.conditions(
                            TorqueConditions.of(unit, unit.range("first").orElseThrow(), SPEED)
                                    .duty(row.torque(), SPEED)))
                    .state()
                    .orElseThrow();
            double lost = state.pressure("line") - state.pressure("brake-apply");
            assertTrue(lost > 0.03 * state.pressure("line"), "the bleed draws through the orifice");
            assertEquals(piston + lost, row.needed().orElseThrow(), 1e-6 * piston);
            assertEquals(state.pressure("line"), row.line().orElseThrow(), 1e-6 * piston);
            assertEquals("brake", row.clutch());
        }
    }

    /** Eighths of the highest torque of the duty points, 320 N·m; with a rising command its rows and eighths of its last. */
    @Test
    void torquesAreTheRowsOfTheCommandAndEighthsOfItsLast() {
        assertEquals(
                List.of(40.0, 80.0, 120.0, 160.0, 200.0, 240.0, 280.0, 320.0),
                of(unit(1, false), "second").stream().map(LineNeeded::torque).toList());
        assertEquals(
                List.of(37.5, 75.0, 100.0, 112.5, 150.0, 187.5, 225.0, 262.5, 300.0),
                of(unit(1, true), "second").stream().map(LineNeeded::torque).toList());
    }

    @Test
    void aRowIsShortFromTheTorqueOnThatTheBuildHolds() {
        Transmission unit = unit(1, true);
        TorqueHeld.atOneSpeed(unit, SPEED).forEach(held -> {
            List<LineNeeded> rows = of(unit, held.range());
            double torque = held.held().orElseThrow().torque();
            rows.forEach(
                    row -> assertEquals(row.torque() > torque, row.verdict() == LineVerdict.SHORT, row.toString()));
        });
        List<LineNeeded> first = of(unit, "first");
        assertEquals(LineVerdict.SHORT, first.get(first.size() - 1).verdict());
    }

    @Test
    void moreTorqueNeedsMoreAndIsCommandedMore() {
        List<LineNeeded> rows = of(unit(1, true), "first");
        for (int i = 0; i < rows.size(); i++) {
            double commanded = TenNodesWithTrain.RISING.at(rows.get(i).torque());
            assertEquals(commanded, rows.get(i).commanded().orElseThrow(), 1e-6 * commanded);
            assertTrue(i == 0
                    || rows.get(i).needed().orElseThrow()
                            > rows.get(i - 1).needed().orElseThrow());
        }
    }

    @Test
    void aWornPumpBringsLessAtIdleThanAtSpeedAndAFreshOneNearlyTheSame() {
        LineNeeded worn = of(unit(4, false), "first").get(0);
        assertTrue(worn.idle().orElseThrow() < 0.9 * worn.line().orElseThrow(), worn.toString());
        assertTrue(worn.slow().orElseThrow() > worn.idle().orElseThrow());
        LineNeeded fresh = of(unit(1, false), "first").get(0);
        assertTrue(fresh.idle().orElseThrow() > 0.9 * fresh.line().orElseThrow(), fresh.toString());
    }

    private static LineVerdict verdict(double needed, OptionalDouble line) {
        OptionalDouble none = OptionalDouble.empty();
        return new LineNeeded("first", 100, "brake", OptionalDouble.of(needed), none, line, none, none).verdict();
    }

    @Test
    void aLineWithinAQuarterAboveWhatIsNeededFits() {
        assertEquals(LineVerdict.SHORT, verdict(10e5, OptionalDouble.of(9.99e5)));
        assertEquals(LineVerdict.FITS, verdict(10e5, OptionalDouble.of(10e5)));
        assertEquals(LineVerdict.FITS, verdict(10e5, OptionalDouble.of(12.4e5)));
        assertEquals(LineVerdict.WASTES, verdict(10e5, OptionalDouble.of(12.6e5)));
        assertEquals(LineVerdict.NOT_KNOWN, verdict(10e5, OptionalDouble.empty()));
    }
}
