package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ProgressTest {

    private static final long SECOND = 1_000_000_000L;

    private final StringWriter text = new StringWriter();
    private long now;

    private Progress bar(int all, boolean terminal) {
        return new Progress(new PrintWriter(text), "judging", all, terminal, () -> now, new Stop());
    }

    private void step(Progress bar, long seconds) {
        now += seconds * SECOND;
        bar.step();
    }

    @Test
    void itSaysWhatIsLeftAsIfTheRestWentAsFast() {
        Progress bar = bar(4, true);
        step(bar, 5);
        assertTrue(
                text.toString().endsWith("\rjudging [#######.......................] 1/4, 15 s left"), text.toString());
        step(bar, 1);
        assertTrue(text.toString().stripTrailing().endsWith("] 2/4, 6 s left"), text.toString());
        bar.end();
        assertTrue(text.toString().endsWith(" \r"), text.toString());
    }

    @Test
    void moreThanAMinuteAndAHalfIsSaidInMinutes() {
        step(bar(30, true), 20);
        assertTrue(text.toString().endsWith("1/30, 10 min left"), text.toString());
    }

    @Test
    void aShorterLineLeavesNothingOfTheLongerOne() {
        Progress bar = bar(2, true);
        step(bar, 1000);
        String before = text.toString();
        step(bar, 0);
        String after = text.toString().substring(before.length());
        assertTrue(after.length() >= before.length(), after);
    }

    @Test
    void workOfLessThanTwoSecondsShowsNone() {
        Progress bar = bar(3, true);
        now += SECOND / 2;
        bar.step();
        bar.step();
        bar.step();
        bar.end();
        assertEquals("", text.toString());
    }

    @Test
    void withoutATerminalThereIsNone() {
        Progress bar = bar(3, false);
        step(bar, 100);
        bar.end();
        assertEquals("", text.toString());
    }

    @Test
    void moreStepsThanForeseenLeaveTheBarFull() {
        Progress bar = bar(1, true);
        step(bar, 3);
        step(bar, 3);
        assertTrue(
                text.toString().stripTrailing().endsWith("[##############################] 2/1, 0 s left"),
                text.toString());
    }
}
