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
import hotidle.transmission.Command;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.SetPressure;
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

    private static List<GaugeReading.Row> candidates(Transmission unit, double speed, double temperature) {
        TestPoint at = new TestPoint(speed, temperature, "first", OptionalDouble.empty(), OptionalDouble.empty());
        return CandidateReadings.of(
                unit,
                List.of(new GaugeReading(
                        Meter.of(unit, "line").orElseThrow(), at, GaugeReading.Sense.EXACT, 1e6, 1e4)));
    }

    @Test
    void whatWasReadIsNotAskedForAgain() {
        List<GaugeReading.Row> rows = candidates(FIVE.unit("fresh"), 660 / 60.0, 273.15 + 108);
        List<Double> speeds = rows.stream()
                .filter(row ->
                        row.meter().name().equals("line") && row.at().range().equals("first"))
                .filter(row -> row.at().commanded().isEmpty())
                .map(row -> Math.rint(60 * row.at().speed()))
                .toList();
        assertEquals(List.of(1000.0, 1500.0), speeds);
        assertTrue(rows.stream().allMatch(row -> row.at().temperature() == 273.15 + 108));
    }

    @Test
    void coolReadingsAreToBeTakenHotToo() {
        assertEquals(
                List.of(350.0, 273.15 + 110),
                candidates(FIVE.unit("fresh"), 10, 350).stream()
                        .map(row -> row.at().temperature())
                        .distinct()
                        .toList());
    }

    @Test
    void theHighestCommandIsAskedForWhereTheUnitIdlesBelowIt() {
        Transmission six = circuit("vane-six").unit();
        double highest = six.commanded()
                .flatMap(Command::pilot)
                .orElseThrow()
                .lineByTorque()
                .highest();
        assertTrue(candidates(six, 10, 380).stream()
                .anyMatch(row -> row.at().commanded().equals(OptionalDouble.of(highest))));
    }

    /** Its line pressure is the same at every torque, and 60 psi by the spring alone. */
    @Test
    void theSpringAloneIsReadWhereTheRegulatorHolds() {
        List<TestPoint> other = candidates(FIVE.unit("fresh"), 10, 380).stream()
                .map(GaugeReading.Row::at)
                .filter(at -> at.commanded().isPresent())
                .toList();
        assertFalse(other.isEmpty());
        assertTrue(other.stream()
                .allMatch(at -> Math.abs(at.commanded().getAsDouble() - 60 * SetPressure.PSI) < 1
                        && at.speed() == AcceptanceSheet.SPEED));
    }
}
