package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.ReadyCircuits;
import hotidle.answer.gauge.GaugeAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.gauge.GaugeFindings;
import hotidle.study.gauge.GaugeFindings.Agreement;
import hotidle.study.gauge.GaugeFindings.ExpectedReading;
import hotidle.study.gauge.GaugeReading;
import hotidle.study.gauge.Meter;
import hotidle.study.gauge.TestPoint;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.io.PrintWriter;
import java.io.Writer;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a run of gauge, torque, wear or a handout is asked before anything is solved. */
class GaugeRunTest {

    private static final DescribedCircuit FIVE = ReadyCircuits.read("shuttle-five");
    private static final DescribedCircuit BENCH = ReadyCircuits.read("valve-body-bench");

    private static GaugeRun run(DescribedCircuit circuit) {
        return new GaugeRun(
                new PrintWriter(Writer.nullWriter()),
                circuit.adjustable(circuit.builds().get(0).name()));
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
    void theHardestPointIsTheSlowestIdleWithTheHighestCommand() {
        Transmission unit = FIVE.unit();
        GaugeAnswer.Hardest hardest = run(FIVE).hardest();
        assertEquals(unit.duties().stream().mapToDouble(DutyPoint::speed).min().orElseThrow(), hardest.speed(), 1e-12);
        double highest = unit.command().pilot().orElseThrow().lineByTorque().highest();
        assertEquals(highest, hardest.commanded().orElseThrow(), 1e-9);
        assertTrue(hardest.temperature().isPresent());
    }

    @Test
    void aBenchHasNoCommandAndNoLowIdle() {
        GaugeRun bench = run(BENCH);
        assertTrue(bench.hardest().commanded().isEmpty());
        assertEquals(List.of(), bench.low(read("supply", 5, -20)));
    }

    @Test
    void aLineReadFarBelowASoundOneAtIdleIsLowWhateverTheFileGives() {
        String line = FIVE.unit().command().line();
        assertEquals(List.of(FIVE.unit().build()), run(FIVE).low(read(line, 10, -20)));
    }

    @Test
    void torqueIsAskedOnlyOfAUnitThatAppliesClutchesWarm() {
        TorqueRun.check(FIVE.unit(), Options.of(new SetBy()), 8e5, "8..20/4bar");
        String low = assertThrows(
                        WrongInputException.class,
                        () -> TorqueRun.check(
                                FIVE.unit(), Options.of(new SetBy(), "--set-by", "spring"), 1e5, "1..20/4bar"))
                .getMessage();
        assertTrue(low.startsWith("hotidle: --set 1..20/4bar: "), low);
        assertTrue(low.contains("cannot be set so\nwhy:  "), low);
    }

    @Test
    void moreUnitsThanAChartTellsApartMakeNoHandout() {
        List<String> many = Collections.nCopies(40, "worn");
        FaultOption faults = Options.of(new FaultOption());
        assertEquals(1, Circuits.units(FIVE, many).size(), "the same build is one unit");
        String[] words = new String[24];
        for (int i = 0; i < 12; i++) {
            words[2 * i] = "--fault";
            words[2 * i + 1] = "oil-aerated:" + (2 * i + 2) + "%";
        }
        FaultOption dozen = Options.of(new FaultOption(), words);
        LessonRun run = new LessonRun(FIVE, List.of(), dozen, 1);
        String wrong = assertThrows(
                        WrongInputException.class,
                        () -> run.answer(
                                hotidle.answer.format.Quantity.UnitSystem.SHOP,
                                "a.html",
                                List.of(),
                                new hotidle.answer.report.MadeOf("", "", List.of())))
                .getMessage();
        assertTrue(wrong.contains("units at most\nmend: name fewer builds and faults"), wrong);
        assertEquals(List.of(), faults.written());
    }
}
