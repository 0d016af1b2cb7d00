package hotidle.answer.torque;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.answer.torque.TorqueAnswer.BuildTorque;
import hotidle.study.AskedTorque;
import hotidle.study.TorqueHeld.Carrier;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Whether a build holds the engine torque that a customer asks for. */
class AskedTorqueTest {

    private static String said(double torque, Optional<AskedTorque> asked) {
        BuildTorque build = MadeTorque.build("made", torque, asked);
        return new AskedSentence(UnitSystem.METRIC).of(build, build.asked().orElseThrow());
    }

    @Test
    void aBuildThatHoldsItSaysFromWhichPressureOnAndWhatGivesFirst() {
        assertEquals(
                "made holds 700 N.m in every range as it is, set to 10.00 bar, and from 12.00 bar set pressure on; first to give is"
                        + " reverse-brake, in reverse, at 800 N.m.",
                said(800, MadeTorque.from12(700)));
    }

    @Test
    void aBuildThatWouldHoldItAtAHigherPressureSaysWhatGivesNow() {
        assertEquals(
                "made does NOT hold 700 N.m as it is, set to 10.00 bar: reverse-brake, in reverse, gives at 600 N.m. It would from 12.00"
                        + " bar set pressure on.",
                said(600, MadeTorque.from12(700)));
    }

    @Test
    void noPressureHelpsAgainstAWeakShaft() {
        assertEquals(
                "made does NOT hold 900 N.m at any set pressure: input-shaft bears 850 N.m, in first.",
                said(600, MadeTorque.never(900)));
    }

    @Test
    void clutchesThatHoldItAtNoPressureTriedSaySo() {
        AskedTorque none = new AskedTorque(
                700,
                "first",
                Optional.of(new Carrier("low-clutch", true, 690, false)),
                OptionalDouble.empty(),
                4e5,
                4e5,
                27e5,
                List.of("third"));
        assertEquals(
                "made does NOT hold 700 N.m at any set pressure tried, up to 27.00 bar, where low-clutch carries 690 N.m, in first."
                        + " No steady state was found at some pressures in third, which counts as not holding.",
                said(600, Optional.of(none)));
    }

    @Test
    void aPumpThatNoLongerHoldsTheLineEndsThePressures() {
        AskedTorque between =
                new AskedTorque(700, "", Optional.empty(), OptionalDouble.of(4e5), 20e5, 4e5, 27e5, List.of());
        assertTrue(said(600, Optional.of(between)).endsWith("It would from 4.00 bar to 20.00 bar set pressure."));
    }

    @Test
    void aCellSaysItShort() {
        AskedSentence metric = new AskedSentence(UnitSystem.METRIC);
        assertEquals("yes", cell(metric, 800, MadeTorque.from12(700)));
        assertEquals("NO, from 12.00 bar", cell(metric, 600, MadeTorque.from12(700)));
        assertEquals("NO", cell(metric, 600, MadeTorque.never(900)));
    }

    private static String cell(AskedSentence sentence, double torque, Optional<AskedTorque> asked) {
        return sentence.cell(MadeTorque.build("made", torque, asked), asked.orElseThrow());
    }

    @Test
    void theScreenAnswersWhatWasAskedInPlaceOfWhatWasNot() {
        TorqueAnswer answer = new TorqueAnswer(
                UnitSystem.METRIC,
                "rig",
                "",
                List.of(MadeTorque.build("made", 600, MadeTorque.from12(700))),
                false,
                List.of());
        assertTrue(answer.screen().contains("made does NOT hold 700 N.m"), answer.screen());
        assertTrue(answer.screen().contains("'hotidle window'"), answer.screen());
        assertTrue(answer.complete());
    }

    @Test
    void jsonHasWhatWasAsked() {
        AskedRecord record = AskedRecord.of(MadeTorque.build("made", 800, MadeTorque.from12(700)))
                .orElseThrow();
        assertEquals(Optional.of(true), record.holds());
        assertEquals(12e5, record.fromPa().orElseThrow());
        assertTrue(
                AskedRecord.of(MadeTorque.build("made", 800, Optional.empty())).isEmpty());
        AskedRecord weak = AskedRecord.of(MadeTorque.build("made", 600, MadeTorque.never(900)))
                .orElseThrow();
        assertEquals(Optional.of("input-shaft"), weak.gives());
        assertTrue(weak.fromPa().isEmpty() && weak.toPa().isEmpty());
    }
}
