package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.create.UnitAnswers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a dozen answers to new are read as, from options and from a file. */
class NewAnswersTest {

    @TempDir
    Path folder;

    private static String refused(Map<String, String> given) {
        return assertThrows(WrongInputException.class, () -> NewAnswers.of(given))
                .getMessage();
    }

    private Map<String, String> file(String text) throws IOException {
        return AnswersFile.read(Files.writeString(folder.resolve("answers.csv"), text), NewQuestions.ALL);
    }

    @Test
    void whatIsNotAnsweredStaysOpen() {
        UnitAnswers none = NewAnswers.of(Map.of());
        assertTrue(none.numbers().isEmpty());
        assertTrue(none.ranges().isEmpty());
        assertTrue(none.clutches().isEmpty());
        assertTrue(none.faces().isEmpty());
    }

    @Test
    void answersAreReadInTheirUnits() {
        UnitAnswers answers = NewAnswers.of(Map.of(
                "displacement",
                "24cm3/rev",
                "cooler-flow",
                "8L/min",
                "bores",
                "18",
                "ranges",
                "reverse, first;second",
                "clutch",
                "forward-clutch=135cm2,direct=90cm2"));
        assertEquals(24e-6, answers.number("displacement").orElseThrow(), 1e-12);
        assertEquals(8e-3 / 60, answers.number("cooler-flow").orElseThrow(), 1e-12);
        assertEquals(18, answers.number("bores").orElseThrow());
        assertEquals(List.of("reverse", "first", "second"), answers.ranges());
        assertEquals(90e-4, answers.clutches().get("direct"), 1e-12);
    }

    @Test
    void unitsAndRangesAreTakenAsTheTradeWritesThem() {
        UnitAnswers answers = NewAnswers.of(
                Map.of("displacement", "1.46 cu in", "clutch", "direct=14 sq in", "ranges", "R,1,2, 3rd fourth"));
        assertEquals(1.46 * 16.387064e-6, answers.number("displacement").orElseThrow(), 1e-12);
        assertEquals(14 * 6.4516e-4, answers.clutches().get("direct"), 1e-12);
        assertEquals(List.of("reverse", "first", "second", "third", "fourth"), answers.ranges());
        assertEquals(
                answers.number("displacement"),
                NewAnswers.of(Map.of("displacement", "1.46in\u00b3")).number("displacement"));
    }

    @Test
    void aDisplacementIsTakenInTheMillilitresOfADataSheet() {
        for (String text : List.of("24mL", "24 ml", "24 cc", "24 mL/rev", "24ml/rev", "24 cm3/rev")) {
            assertEquals(
                    24e-6,
                    NewAnswers.of(Map.of("displacement", text))
                            .number("displacement")
                            .orElseThrow(),
                    1e-15,
                    text);
        }
    }

    @Test
    void facesAreCountedWithTheirMeanRadiusWhereItIsKnown() {
        UnitAnswers answers = NewAnswers.of(Map.of("faces", "forward-clutch=10, direct = 8x68mm; low=12 x 2.7in"));
        assertEquals(10, answers.faces().get("forward-clutch").count());
        assertTrue(answers.faces().get("forward-clutch").meanRadius().isEmpty());
        assertEquals(0.068, answers.faces().get("direct").meanRadius().orElseThrow(), 1e-12);
        assertEquals(2.7 * 0.0254, answers.faces().get("low").meanRadius().orElseThrow(), 1e-12);
    }

    @Test
    void facesThatAreNoCountOrHaveNoUnitOfTheirRadiusAreRefused() {
        for (String text : List.of("direct", "=8", "direct=0", "direct=many", "direct=8x")) {
            assertTrue(refused(Map.of("faces", text)).endsWith("forward-clutch=10x68mm"), text);
        }
        assertTrue(refused(Map.of("faces", "direct=8x68")).contains("a number without its unit"));
        assertTrue(refused(Map.of("faces", "direct=8x0mm")).contains("must be above zero"));
    }

    @Test
    void theHelpNamesTheQuestionsInTheOrderInWhichTheyAreAsked() {
        String help = Run.of("new", "--help").out().replaceAll("\\s+", " ");
        assertTrue(help.contains("in this order: " + String.join(", ", NewQuestions.ALL) + "."), help);
    }

    @Test
    void whatIsNotAboveZeroIsRefused() {
        assertEquals("hotidle: --set-pressure 0psi: it must be above zero", refused(Map.of("set-pressure", "0psi")));
        assertTrue(refused(Map.of("displacement", "-1cm3/rev")).contains("must be above zero"));
        assertTrue(refused(Map.of("clutch", "forward-clutch=0cm2")).contains("--clutch"));
    }

    @Test
    void boresAreAWholeNumber() {
        for (String text : List.of("0", "1.5", "-3", "100", "many")) {
            assertEquals(
                    "hotidle: --bores " + text + ": write a whole number from 1 to 99", refused(Map.of("bores", text)));
        }
    }

    @Test
    void aClutchWithoutANameOrAnAreaIsRefusedWithAnExample() {
        for (String text : List.of("forward-clutch", "=135cm2")) {
            assertTrue(refused(Map.of("clutch", text)).endsWith("forward-clutch=135cm2"), text);
        }
        assertTrue(refused(Map.of("clutch", "forward-clutch=135mm")).startsWith("hotidle: --clutch 135mm"));
    }

    @Test
    void aFileOfAnswersIsRowsOfQuestionAndAnswer() throws IOException {
        assertEquals(
                Map.of("displacement", "24cm3/rev", "bores", "18"),
                file("question,answer\ndisplacement, 24cm3/rev \nset-pressure,\n\nbores,18,a remark\n"));
    }

    @Test
    void theMarkThatASpreadsheetPutsInFrontIsNoPartOfAQuestion() throws IOException {
        assertEquals(Map.of("bores", "18"), file("\uFEFFquestion,answer\nbores,18\n"));
        assertEquals(Map.of("bores", "18"), file("\uFEFFbores,18\n"));
    }

    @Test
    void aFileInAnotherAlphabetIsRefusedWithWhatToSaveItAs() throws IOException {
        Path latin = Files.write(folder.resolve("latin.csv"), new byte[] {'b', (byte) 0xF6, '\n'});
        String wrong = assertThrows(WrongInputException.class, () -> AnswersFile.read(latin, NewQuestions.ALL))
                .getMessage();
        assertTrue(wrong.endsWith("cannot be read: its letters are not UTF-8; save it as CSV UTF-8"), wrong);
    }

    @Test
    void aRowThatIsNoQuestionIsRefusedWithTheNearestOne() {
        String wrong = assertThrows(WrongInputException.class, () -> file("displacment,24cm3/rev\n"))
                .getMessage();
        assertTrue(wrong.contains("row 1: displacment is no question"), wrong);
        assertTrue(wrong.contains("displacement"), wrong);
    }

    @Test
    void aFileThatCannotBeReadAsRowsIsRefusedInOneMessage() {
        String quote = assertThrows(WrongInputException.class, () -> file("bores,\"18\"x\n"))
                .getMessage();
        assertTrue(quote.contains("cannot be read"), quote);
        String none = assertThrows(
                        WrongInputException.class, () -> AnswersFile.read(folder.resolve("none.csv"), NewQuestions.ALL))
                .getMessage();
        assertTrue(none.contains("cannot be read"), none);
    }

    /** A cooler of 1.5 gallons is no cooler of 1.5 litres. */
    @Test
    void aBareNumberIsNotGivenAUnitThatMayBeAnother() {
        String wrong = refused(Map.of("cooler-flow", "1.5"));
        assertTrue(wrong.contains("give it in one of these"), wrong);
        assertTrue(wrong.contains("L/min") && wrong.contains("gpm"), wrong);
        assertTrue(refused(Map.of("clutch", "forward-clutch=20"))
                .startsWith("hotidle: --clutch forward-clutch=20, a number"));
    }

    @Test
    void answersThatAreKeptAreReadBack() throws IOException {
        Path kept = folder.resolve("kept.csv");
        Map<String, String> answers = Map.of("ranges", "reverse,first", "bores", "18");
        AnswersFile.write(kept, answers);
        assertEquals(answers, AnswersFile.read(kept, NewQuestions.ALL));
        assertThrows(WrongInputException.class, () -> AnswersFile.write(folder.resolve("none/kept.csv"), answers));
    }
}
