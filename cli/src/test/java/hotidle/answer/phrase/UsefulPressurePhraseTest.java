package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.UsefulPressureSentence;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Margin;
import hotidle.study.TorqueHeld.Carrier;
import hotidle.study.UsefulPressure;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class UsefulPressurePhraseTest {

    private static String said(OptionalDouble from, String... unsolved) {
        Carrier shaft = new Carrier("input-shaft", false, 610, false);
        return UsefulPressureSentence.of(
                        UnitSystem.METRIC,
                        "made",
                        new UsefulPressure(Optional.of(shaft), "first", from, 4e5, 27e5, List.of(unsolved)))
                .orElseThrow();
    }

    @Test
    void theCrossingIsSaidInWords() {
        assertEquals(
                "made: more torque is held up to 14.00 bar set pressure; from there input-shaft gives first, in first at 610 N.m,"
                        + " and pressure buys leakage and heat alone.",
                said(OptionalDouble.of(14e5)));
    }

    @Test
    void whereThereIsNoneItIsSaidWhichSideGivesFirst() {
        assertEquals(
                "made: more torque is held up to 27.00 bar, the highest set pressure tried: clutches give first; input-shaft would"
                        + " bear 610 N.m in first.",
                said(OptionalDouble.empty()));
        assertTrue(said(OptionalDouble.of(4e5))
                .startsWith("made: from 4.00 bar set pressure, the lowest tried, on input-shaft"));
        assertTrue(UsefulPressureSentence.of(
                        UnitSystem.METRIC,
                        "made",
                        new UsefulPressure(Optional.empty(), "", OptionalDouble.empty(), 4e5, 27e5, List.of()))
                .isEmpty());
    }

    @Test
    void aStateThatWasNotFoundIsTold() {
        assertTrue(said(OptionalDouble.of(14e5), "third", "fourth")
                .endsWith(
                        "No steady state was found at some pressures in third, fourth, which counts as not holding."));
    }

    @Test
    void thePictureSaysTheSame() {
        TorquePicturePhrase phrase = new TorquePicturePhrase(UnitSystem.METRIC);
        assertEquals("14.00 bar: from here input-shaft gives first", phrase.crossing(14e5, "input-shaft"));
        assertEquals("set now: 10.00 bar", phrase.now(10e5));
        assertEquals(
                "above 18.50 bar fails: relief valve (relief) at stall",
                phrase.end(18.5e5, Margin.Kind.RELIEF, "relief", "stall"));
    }
}
