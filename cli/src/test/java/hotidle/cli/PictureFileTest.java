package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that a command writes are looked at before anything is solved. */
class PictureFileTest {

    @TempDir
    Path folder;

    private static String refused(Path file, List<String> endings) {
        return assertThrows(WrongInputException.class, () -> PictureFile.check("--plot", file, endings))
                .getMessage();
    }

    @Test
    void aNameMayEndInAnyKindOfPictureInSmallOrLargeLetters() {
        assertDoesNotThrow(() -> PictureFile.check("--plot", folder.resolve("a.png")));
        assertDoesNotThrow(() -> PictureFile.check("--plot", folder.resolve("a.SVG")));
        assertDoesNotThrow(() -> PictureFile.check("--plot", Path.of("a.svg")), "in the folder one is in");
    }

    @Test
    void aNameThatEndsOtherwiseIsRefusedWithAllEndingsThatItMayHave() {
        String two = refused(folder.resolve("a.jpg"), List.of("png", "svg"));
        assertTrue(two.endsWith("names no kind of picture\nmend: end the name in .png or .svg"), two);
        String three = refused(folder.resolve("a"), List.of("png", "svg", "pdf"));
        assertTrue(three.endsWith("\nmend: end the name in .png, .svg or .pdf"), three);
        String one = refused(folder.resolve("png"), List.of("png"));
        assertTrue(one.endsWith("\nmend: end the name in .png"), one);
    }

    @Test
    void aFolderThatIsNotThereIsNamed() {
        String wrong = refused(folder.resolve("none").resolve("a.svg"), List.of("svg"));
        assertTrue(wrong.endsWith(": there is no folder " + folder.resolve("none")), wrong);
    }

    @Test
    void aPageIsNoPicture() {
        String wrong = assertThrows(WrongInputException.class, () -> HtmlFile.check("--out", folder.resolve("a.pdf")))
                .getMessage();
        assertTrue(wrong.contains("names no kind of page\nmend: end the name in .html"), wrong);
    }

    @Test
    void aTextFileThatIsThereIsNeverOverwritten() throws Exception {
        Path mine = Files.writeString(folder.resolve("mine.csv"), "filled in");
        String wrong = assertThrows(WrongInputException.class, () -> NewFile.write("--out", mine, "empty"))
                .getMessage();
        assertTrue(wrong.contains("is there already, and may be filled in\nmend: name a new file"), wrong);
        assertEquals("filled in", Files.readString(mine));
    }

    @Test
    void aNewTextFileHasAllOfItsText() throws Exception {
        Path file = folder.resolve("new.csv");
        NewFile.write("--out", file, "bore,Ø 14.02 mm\n");
        assertEquals("bore,Ø 14.02 mm\n", Files.readString(file));
    }
}
