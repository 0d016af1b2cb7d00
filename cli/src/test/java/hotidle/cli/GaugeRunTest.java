package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.ReadyCircuits;
import hotidle.circuits.DescribedCircuit;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What torque or a handout is asked before anything is solved. */
class GaugeRunTest {

    private static final DescribedCircuit FIVE = ReadyCircuits.read("shuttle-five");

    @Test
    void torqueIsAskedOnlyOfAUnitThatAppliesClutchesWarm() {
        TorqueRun.check(FIVE.unit(), Options.of(new SetBy()), 8e5, "--try 8..20/4bar");
        String low = assertThrows(
                        WrongInputException.class,
                        () -> TorqueRun.check(
                                FIVE.unit(), Options.of(new SetBy(), "--set-by", "spring"), 1e5, "--try 1..20/4bar"))
                .getMessage();
        assertTrue(low.startsWith("hotidle: --try 1..20/4bar: "), low);
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
                                new hotidle.answer.report.MadeOf("", "", List.of()),
                                new java.io.PrintWriter(java.io.Writer.nullWriter())))
                .getMessage();
        assertTrue(wrong.contains("units at most\nmend: name fewer builds and faults"), wrong);
        assertEquals(List.of(), faults.written());
    }
}
