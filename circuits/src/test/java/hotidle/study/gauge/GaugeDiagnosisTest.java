package hotidle.study.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.study.AtDuty;
import hotidle.study.gauge.GaugeFindings.Agreement;
import hotidle.study.gauge.GaugeFindings.ExpectedReading;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Whether idle pressure is low by what was read, and what gauges show at one point. */
class GaugeDiagnosisTest {

    private static final DescribedCircuit FIVE = circuit("shuttle-five");

    private static DescribedCircuit circuit(String name) {
        return CircuitReader.read(Library.text(name).orElseThrow(), name + ".yaml")
                .circuit()
                .orElseThrow();
    }

    /** A line read so many deviations off. */
    private static GaugeFindings read(String node, double speed, double off) {
        TestPoint at = new TestPoint(speed, 373.15, "drive", OptionalDouble.empty(), OptionalDouble.empty());
        return new GaugeFindings(
                List.of(new GaugeReading(
                        new Meter("tap", node, Meter.Reads.PRESSURE), at, GaugeReading.Sense.EXACT, 4e5, 1e4)),
                List.of(new ExpectedReading(8e5, 4e4, off)),
                new Agreement(100, 1, 1e-9, false),
                0,
                List.of(),
                1,
                List.of(),
                List.of(),
                List.of());
    }

    @Test
    void aLineReadFarBelowASoundOneAtIdleIsLowWhateverTheFileGives() {
        assertTrue(GaugeDiagnosis.low(
                FIVE.unit("fresh"), read(FIVE.unit().command().line(), 10, -20)));
    }

    @Test
    void aLineReadAsASoundOneIsLowOnlyWhereTheModelHasItLow() {
        String line = FIVE.unit().command().line();
        assertFalse(GaugeDiagnosis.low(FIVE.unit("fresh"), read(line, 10, 0)));
        assertTrue(GaugeDiagnosis.low(FIVE.unit("worn"), read(line, 10, 0)));
    }

    @Test
    void aBenchHasNoLowIdle() {
        assertFalse(GaugeDiagnosis.low(circuit("valve-body-bench").unit(), read("supply", 5, -20)));
    }

    @Test
    void gaugesAtIdleShowWhatTheDrivingConditionHas() {
        Transmission worn = FIVE.unit("worn");
        DutyPoint idle = worn.duty("hot-idle").orElseThrow();
        TestPoint at = new TestPoint(
                idle.speed(),
                idle.temperatures().get("sump"),
                idle.range(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        GaugesAt gauges = GaugesAt.of(worn, at);
        double line = AtDuty.solved(worn, idle).state().orElseThrow().pressure("line");
        assertEquals(line, gauges.shown(Meter.of(worn, "line").orElseThrow()).orElseThrow(), 1e-9 * line);
        double cooler = AtDuty.solved(worn, idle).state().orElseThrow().flow("cooler");
        assertEquals(
                cooler, gauges.shown(Meter.of(worn, "cooler").orElseThrow()).orElseThrow(), 1e-9 * Math.abs(cooler));
    }
}
