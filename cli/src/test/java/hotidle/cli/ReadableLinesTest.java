package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Wrap;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ReadableLinesTest {

    private static final String LONG = "word ".repeat(30).strip();

    @Test
    void aLongMessageIsBrokenAtBlanksAndLosesNoWord() {
        String broken = ReadableLines.broken("hotidle: " + LONG);
        assertTrue(broken.lines().allMatch(line -> line.length() <= Wrap.WIDTH), broken);
        assertEquals("hotidle: " + LONG, broken.replaceAll("\\s+", " "));
    }

    @Test
    void whatFollowsALabelStandsBehindIt() {
        String broken = ReadableLines.broken("  why:  " + LONG);
        assertTrue(broken.startsWith("  why:  word"), broken);
        assertTrue(broken.lines().skip(1).allMatch(line -> line.startsWith("        word")), broken);
    }

    @Test
    void aLineQuotedFromAFileStaysAboveItsMark() {
        String quoted = "      " + LONG + "\n" + " ".repeat(120) + "^^^^";
        assertEquals(quoted, ReadableLines.broken(quoted));
    }

    @Test
    void aShortLineAndABlankOneStayAsTheyAre() {
        assertEquals("one  two\n\nthree", ReadableLines.broken("one  two\n\nthree"));
    }

    @Test
    void allThatIsPrintedAsALineIsBroken() {
        StringWriter kept = new StringWriter();
        new ReadableLines(kept).println("mend: " + LONG);
        assertTrue(kept.toString().lines().count() > 1, kept.toString());
    }
}
