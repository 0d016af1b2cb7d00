package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.HiddenFaultPhrase.Judged;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a lesson says of a fault, an answer and readings. */
class HiddenFaultPhraseTest {

    private static final HiddenFaultPhrase METRIC = new HiddenFaultPhrase(Quantity.UnitSystem.METRIC);

    @Test
    void aPlaceNamesGaugeSpeedRangeAndTemperatureWhereThereIsOne() {
        assertEquals(
                "line at 650 rpm in first, 110 degC",
                METRIC.place("line", 650 / 60.0, "first", OptionalDouble.of(383.15)));
        assertEquals("line at 650 rpm in bench", METRIC.place("line", 650 / 60.0, "bench", OptionalDouble.empty()));
    }

    @Test
    void oneReadingLeavesCausesAndSoundOnesTellNothing() {
        assertEquals(
                "Your 1 reading leaves 5 likely causes, counting as one what no gauge tells apart; the fault itself holds 34 %.",
                HiddenFaultPhrase.told(1, 1, false, 0.34, 5));
        assertEquals(
                "Your 2 readings agree with a unit in which no fault is put within what tolerances and gauge leave open: nothing was found yet.",
                HiddenFaultPhrase.told(2, 2, true, 0, 0));
        assertEquals(
                "Of your 40 readings the 24 that are furthest from those with no fault put in leave 2 likely causes, counting as one what"
                        + " no gauge tells apart; the fault itself holds 60 %.",
                HiddenFaultPhrase.told(24, 40, false, 0.6, 2));
        assertEquals("1 likely cause left, the fault 97 %", HiddenFaultPhrase.after(false, 0.97, 1));
        assertEquals("as with no fault put in", HiddenFaultPhrase.after(true, 0, 0));
    }

    @Test
    void theGentlestTestSaysWhatIsReadWithTheFaultAndWithout() {
        assertEquals(
                "The gentlest test that shows it: line at 650 rpm in park, 4.00 bar where 7.00 bar is read with no fault put in.",
                METRIC.gentlest("line at 650 rpm in park", 4e5, 7e5));
    }

    @Test
    void theNextReadingSaysWhatEachCauseWouldMakeOfIt() {
        assertEquals(
                "Expected to tell most next: line at 650 rpm in first: 9.50 bar if regulator (spring weak or broken), 5.00 bar if"
                        + " oil low.",
                METRIC.next(
                        "line at 650 rpm in first",
                        List.of("regulator (spring weak or broken)", "oil low"),
                        List.of(9.5e5, 5e5)));
    }

    @Test
    void theAnswerIsNamedWithTheSizeThatFitsAndTheFaultWithItsOwn() {
        assertEquals(
                "You said: cooler: cooler blocked. Your readings are met best by 80 % blocked, well or badly: the curves show it.",
                HiddenFaultPhrase.answer("cooler: cooler blocked", "80 % blocked", true));
        assertEquals(
                "You said: check-3: check ball missing.",
                HiddenFaultPhrase.answer("check-3: check ball missing", "", true));
        assertEquals(
                "Hidden in fresh: check-3: check ball missing.",
                HiddenFaultPhrase.fault("fresh", "check-3: check ball missing", ""));
    }

    @Test
    void eachWayAnAnswerCanStandToTheFaultIsSaidOtherwise() {
        assertEquals(
                Judged.values().length,
                new HashSet<>(Arrays.stream(Judged.values())
                                .map(judged -> HiddenFaultPhrase.judged(judged, false))
                                .toList())
                        .size());
    }

    @Test
    void anotherFaultThatTheReadingsDoNotTellFromItIsNotJustWrong() {
        for (Judged judged : Judged.values()) {
            boolean other = judged == Judged.KIND || judged == Judged.PART || judged == Judged.WRONG;
            assertEquals(
                    other,
                    HiddenFaultPhrase.judged(judged, true).contains("your readings do not tell the two apart"),
                    judged.name());
        }
    }
}
