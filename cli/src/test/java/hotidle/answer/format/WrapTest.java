package hotidle.answer.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class WrapTest {

    @Test
    void aNarrowTerminalGetsNarrowLinesAndNoneAreWiderThanAHundred() {
        assertEquals(80, Wrap.width("80"));
        assertEquals(100, Wrap.width("240"));
        assertEquals(60, Wrap.width("20"), "a table needs some width");
        assertEquals(100, Wrap.width(""));
        assertEquals(100, Wrap.width("wide"));
    }

    @Test
    void textIsBrokenAtBlanksAndANumberStaysWithItsPercentSign() {
        String text = "The pump has no more oil to give, so a higher set pressure raises nothing: 91 % is lost.";
        assertTrue(Wrap.lines(text, "", "  ", 60).lines().allMatch(line -> line.length() <= 60));
        assertTrue(Wrap.lines(text, "", "  ", 20).contains("91 %"), "in one line");
        assertEquals(2, Wrap.lines(text, "", "  ", 60).lines().count());
    }
}
