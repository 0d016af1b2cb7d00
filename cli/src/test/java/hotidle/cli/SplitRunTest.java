package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.study.spread.SpreadRun;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A long run shared out among machines. */
class SplitRunTest {

    @TempDir
    Path folder;

    private static SpreadRun.RunPart part(String... words) {
        return Options.of(new SplitRun(), words).checked();
    }

    @Test
    void aPartIsWrittenByItsNumberOfHowMany() {
        assertEquals(new SpreadRun.RunPart(3, 10), part("--part", "3/10"));
        assertEquals(new SpreadRun.RunPart(10, 10), part("--part", "10/10"));
    }

    @Test
    void withoutAPartTheWholeRunIsMeant() {
        assertEquals(SpreadRun.RunPart.WHOLE, part());
    }

    @Test
    void whatIsNoPartOfARunIsRefused() {
        for (String text : List.of("0/10", "11/10", "3", "3/", "/3", "a/b", "-1/3", "1/10001", "1.5/3", "3/10 ", "")) {
            String wrong = assertThrows(WrongInputException.class, () -> part("--part", text))
                    .getMessage();
            assertTrue(wrong.startsWith("hotidle: --part " + text + " is no part of a run\nmend: write 3/10"), wrong);
        }
    }

    @Test
    void aFileThatIsThereAlreadyIsNotOverwrittenAndThatIsSaidBeforeAnythingIsDrawn() throws Exception {
        Path kept = Files.writeString(folder.resolve("kept"), "mine");
        String wrong = assertThrows(WrongInputException.class, () -> part("--keep", kept.toString()))
                .getMessage();
        assertTrue(wrong.contains("is there already"), wrong);
        assertEquals("mine", Files.readString(kept));
        assertThrows(
                WrongInputException.class,
                () -> part("--keep", folder.resolve("none").resolve("kept").toString()));
    }
}
