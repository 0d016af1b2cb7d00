package hotidle.answer.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** A first screen while it is written. */
class FirstScreenRoomTest {

    private static final String FOOT = "the caution\n";

    @Test
    void theFootStandsLastAndItsLinesAreCounted() {
        FirstScreen screen = new FirstScreen(FOOT).add("heading\n");
        assertEquals(Wrap.LINES - 2, screen.room());
        assertEquals("heading\nthe caution\n", screen.text());
    }

    @Test
    void whatHasNoRoomIsLeftOutWholeAndWhatHasIsKept() {
        FirstScreen screen = new FirstScreen(FOOT).add("line\n".repeat(Wrap.LINES - 3));
        assertFalse(screen.addWhereRoom("one\ntwo\nthree\n"));
        assertTrue(screen.addWhereRoom("one\ntwo\n"));
        assertFalse(screen.addWhereRoom("three\n"));
        assertEquals(Wrap.LINES, screen.text().lines().count());
        assertFalse(screen.text().contains("three"));
        assertTrue(screen.text().endsWith("two\nthe caution\n"));
    }

    @Test
    void whatHasToBeThereIsThereThoughItLeavesNoRoom() {
        FirstScreen screen = new FirstScreen(FOOT).add("line\n".repeat(Wrap.LINES + 2));
        assertTrue(screen.room() < 0);
        assertFalse(screen.addWhereRoom("more\n"));
        assertTrue(screen.text().endsWith("the caution\n"));
    }
}
