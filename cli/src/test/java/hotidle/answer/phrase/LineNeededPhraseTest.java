package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.LineVerdict;
import hotidle.study.LineNeeded;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class LineNeededPhraseTest {

    private final LineNeededPhrase metric = new LineNeededPhrase(UnitSystem.METRIC);

    private static LineNeeded row(OptionalDouble needed, double line) {
        return new LineNeeded(
                "first",
                600,
                "low-clutch",
                needed,
                OptionalDouble.of(10e5),
                OptionalDouble.of(line),
                OptionalDouble.of(9e5),
                OptionalDouble.empty());
    }

    @Test
    void aLineBelowWhatIsNeededIsShortAndOneFarAboveWastes() {
        assertEquals(LineVerdict.SHORT, row(OptionalDouble.of(10.1e5), 10e5).verdict());
        assertEquals(LineVerdict.FITS, row(OptionalDouble.of(8e5), 10e5).verdict());
        assertEquals(LineVerdict.WASTES, row(OptionalDouble.of(7.9e5), 10e5).verdict());
        assertEquals(LineVerdict.NOT_KNOWN, row(OptionalDouble.empty(), 10e5).verdict());
        assertEquals("SHORT", LineNeededPhrase.verdict(LineVerdict.SHORT));
        assertTrue(LineNeededPhrase.NOTES.contains("more than 25 % above"));
    }

    @Test
    void theFirstShortTorqueOfEachRangeIsNamedAndWasteIsCounted() {
        String first = metric.isShort("first", 600, 10.1e5, 10e5);
        assertEquals("600 N.m in first (needs 10.10 bar, has 10.00)", first);
        assertEquals(
                "made: of the engine torques tried in steps, the first that its line is too low for is 600 N.m in first (needs"
                        + " 10.10 bar, has 10.00). The most that it holds lies between that step and the one before. At 3 of"
                        + " the 8 steps of all ranges the line is more than 25 % above what the torque needs.",
                metric.summary("made", List.of(first), 3, 8));
        assertEquals(
                "made: its line is enough for every engine torque tried in steps.",
                metric.summary("made", List.of(), 0, 8));
    }
}
