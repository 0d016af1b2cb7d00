package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.ReadyCircuits;
import hotidle.assess.Margin;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.Judgement;
import hotidle.study.spread.DrawnUnit;
import hotidle.study.spread.ExactSum;
import hotidle.study.spread.MarginTally;
import hotidle.study.spread.SizePrior;
import hotidle.study.spread.SobolSums;
import hotidle.study.spread.SpreadQuestion;
import hotidle.study.spread.SpreadRun;
import hotidle.study.spread.SpreadTally;
import hotidle.study.spread.Unmeasured;
import hotidle.transmission.Adjustable;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Parts of a run as they are kept, and a row for each unit drawn; counts made by hand, nothing is drawn. */
class SpreadPartsTest {

    private static final DescribedCircuit CIRCUIT = ReadyCircuits.read("crescent-four");
    private static final Adjustable BUILD = CIRCUIT.adjustable("worn");
    private static final List<SizePrior> SIZES = Unmeasured.of(BUILD, Unmeasured.FitState.WORN);
    private static final SpreadQuestion QUESTION = new SpreadQuestion(BUILD, SIZES, List.of("hot-idle"), 100, 0, 1);
    private static final Judgement.Key KEY = new Judgement.Key("hot-idle", Margin.Kind.REGULATION, "pump, first");

    @TempDir
    Path folder;

    private static ExactSum sum(long count, String sum) {
        return new ExactSum(count, new BigDecimal(sum), new BigDecimal("0.1"));
    }

    private static SpreadTally tally(long drawn, Judgement.Key key) {
        List<ExactSum> each = Collections.nCopies(SIZES.size(), sum(2, "-0.3333333333333333"));
        SobolSums sums = new SobolSums(sum(4, "1e-17"), each, each, 1);
        return new SpreadTally(
                drawn,
                1,
                2,
                3,
                4,
                5,
                600,
                List.of(new MarginTally(key, 70, 20, 10, sum(drawn, "12.345678901234567"), sums, sums)));
    }

    private Path kept(int number, int of, SpreadQuestion question, SpreadTally tally) throws IOException {
        Path file = folder.resolve("part-" + number + "-" + question.seed());
        return Files.writeString(file, SpreadParts.text(question, new SpreadRun.RunPart(number, of), tally));
    }

    private static String refused(SpreadQuestion question, Path... files) {
        return assertThrows(WrongInputException.class, () -> SpreadParts.joined(question, List.of(files)))
                .getMessage();
    }

    @Test
    void aPartIsReadBackToItsLastDigit() throws IOException {
        SpreadTally whole = tally(100, KEY);
        assertEquals(whole, SpreadParts.joined(QUESTION, List.of(kept(1, 1, QUESTION, whole))));
    }

    @Test
    void partsAddUpInAnyOrder() throws IOException {
        Path first = kept(1, 2, QUESTION, tally(60, KEY));
        Path second = kept(2, 2, QUESTION, tally(40, KEY));
        SpreadTally sum = SpreadParts.joined(QUESTION, List.of(first, second));
        assertEquals(100, sum.drawn());
        assertEquals(1200, sum.solves());
        assertEquals(140, sum.margins().get(0).holds());
        assertEquals(sum, SpreadParts.joined(QUESTION, List.of(second, first)));
    }

    @Test
    void aPartThatIsMissingIsNamed() throws IOException {
        String wrong = refused(QUESTION, kept(2, 4, QUESTION, tally(40, KEY)));
        assertEquals("hotidle: --join: of 4 parts these are missing: 1, 3, 4", wrong);
    }

    @Test
    void aPartThatIsThereTwiceOrOfAnotherDivisionDoesNotGoWithTheOthers() throws IOException {
        Path first = kept(1, 2, QUESTION, tally(60, KEY));
        assertTrue(refused(QUESTION, first, first).contains("is part 1 of 2, which does not go with the others"));
        Path third = kept(2, 3, QUESTION, tally(60, KEY));
        assertTrue(refused(QUESTION, first, third).contains("is part 2 of 3, which does not go with the others"));
    }

    @Test
    void aPartOfAnotherRunIsRefused() throws IOException {
        SpreadQuestion other = new SpreadQuestion(BUILD, SIZES, List.of("hot-idle"), 100, 0, 2);
        assertTrue(refused(QUESTION, kept(1, 1, other, tally(100, KEY))).contains("is of another run: circuit, build"));
    }

    @Test
    void partsInWhichOtherLimitsWereJudgedDoNotAddUp() throws IOException {
        Path first = kept(1, 2, QUESTION, tally(60, KEY));
        Path second = kept(2, 2, QUESTION, tally(40, new Judgement.Key("stall", Margin.Kind.FILM, "hub")));
        assertTrue(refused(QUESTION, first, second).contains("other limits were judged"));
    }

    @Test
    void aFileThatIsNoPartOrIsDamagedIsRefusedWithItsLine() throws IOException {
        Path other = Files.writeString(folder.resolve("other"), "unit,possible\n");
        assertTrue(refused(QUESTION, other).endsWith("was not written by --keep"));
        assertTrue(refused(QUESTION, Files.writeString(folder.resolve("empty"), ""))
                .endsWith("was not written by --keep"));
        assertTrue(refused(QUESTION, folder.resolve("none")).endsWith("is not there"));
        Path part = kept(1, 1, QUESTION, tally(100, KEY));
        List<String> lines = Files.readAllLines(part);
        Path cut = Files.write(folder.resolve("cut"), lines.subList(0, lines.size() - 1));
        assertTrue(refused(QUESTION, cut)
                .contains("is damaged at line " + (lines.size() - 1) + "\nmend: run its part again"));
        Path count = Files.writeString(
                folder.resolve("count"), Files.readString(part).replaceFirst("\n100 1 2", "\n100 1"));
        assertTrue(refused(QUESTION, count).contains("is damaged at line 2"), refused(QUESTION, count));
    }

    @Test
    void aUnitDrawnIsARowWithItsSizesAndHeadrooms() throws IOException {
        Path file = folder.resolve("draws.csv");
        double[] half = new double[SIZES.size()];
        java.util.Arrays.fill(half, 0.5);
        Margin margin = Margin.of(Margin.Kind.REGULATION, "pump, first", 1.1, 1, Margin.Scale.PRESSURE);
        try (DrawsFile draws = DrawsFile.of(file, QUESTION, List.of(KEY))) {
            draws.take(0, new DrawnUnit(half, false, List.of(), Map.of(KEY, margin)));
            draws.take(1, new DrawnUnit(half, true, List.of(), Map.of()));
            draws.take(2, new DrawnUnit(half, false, List.of("hot-idle"), Map.of()));
        }
        List<String> rows = Files.readAllLines(file);
        assertEquals(4, rows.size());
        assertTrue(
                rows.get(0)
                        .startsWith(
                                "unit,possible,unsolved," + SIZES.get(0).size().name()),
                rows.get(0));
        assertTrue(rows.get(0).contains("pump, first hot-idle\""), "a comma is quoted");
        assertTrue(rows.get(1).startsWith("0,yes,," + SIZES.get(0).quantile(0.5)), rows.get(1));
        assertTrue(rows.get(1).contains(",0.1"), rows.get(1));
        assertTrue(rows.get(2).startsWith("1,no,,") && rows.get(2).endsWith(","), "no headroom where there is no unit");
        assertTrue(rows.get(3).startsWith("2,yes,hot-idle,"), rows.get(3));
    }

    @Test
    void withoutAFileNoRowIsWrittenAndOneThatIsThereIsNotOverwritten() throws IOException {
        try (DrawsFile none = DrawsFile.of(null, QUESTION, List.of(KEY))) {
            none.take(0, new DrawnUnit(new double[SIZES.size()], true, List.of(), Map.of()));
        }
        Path mine = Files.writeString(folder.resolve("mine.csv"), "mine");
        assertThrows(WrongInputException.class, () -> DrawsFile.of(mine, QUESTION, List.of(KEY)));
        assertEquals("mine", Files.readString(mine));
    }
}
