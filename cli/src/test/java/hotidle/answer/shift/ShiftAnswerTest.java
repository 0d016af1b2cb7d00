package hotidle.answer.shift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.ShiftFinding;
import hotidle.study.LockupHeat;
import hotidle.study.ShiftHeat;
import hotidle.study.ShiftHeat.Closing;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ShiftAnswerTest {

    private static final ShiftHeat.AskedShift ASKED = new ShiftHeat.AskedShift(2800 / 60.0, 600, 0.6, 0.002);

    /** 24 kJ on 200 cm², so 1.2 J/mm². */
    private static final Closing HOT = new Closing(
            10e5, 800, 400, 2 * Math.PI * 30, 0.2, 24e3, 150e3, OptionalDouble.of(0.02), OptionalDouble.of(300));

    private static final Closing BAND = new Closing(
            10e5, 800, 400, 2 * Math.PI * 30, 0.2, 24e3, 150e3, OptionalDouble.empty(), OptionalDouble.empty());

    private static ShiftAnswer answer(List<ShiftHeat> shifts, List<String> still, LockupHeat... lockups) {
        return new ShiftAnswer(UnitSystem.METRIC, "rig", "made", ASKED, shifts, still, 1.5, List.of(lockups));
    }

    private static ShiftHeat slides(Closing closing) {
        return new ShiftHeat("first", "second", "brake", ShiftFinding.FOUND, Optional.of(closing));
    }

    @Test
    void aShiftAboveCommonPracticeIsMarkedAndWearIsSaidNotToBeComputed() {
        String screen = answer(List.of(slides(HOT)), List.of("low-clutch")).screen();
        assertTrue(screen.contains("1.20!"), screen);
        assertTrue(screen.contains("7.50!"), screen);
        String words = screen.replaceAll("\\s+", " ");
        assertTrue(words.contains("(common practice)"), words);
        assertTrue(words.contains("Wear is not computed"), words);
        assertTrue(words.contains("Close at rest or hold alone, and are judged by 'margins': low-clutch."), words);
    }

    @Test
    void aBandHasNoHeatOverAreaAndAClutchThatNeverClosesSaysSo() {
        ShiftHeat never = new ShiftHeat("second", "third", "direct", ShiftFinding.NEVER, Optional.empty());
        ShiftAnswer answer = answer(List.of(slides(BAND), never), List.of());
        List<String> rows = answer.csv().lines().toList();
        assertEquals("first-second,brake,10.00,800,400,1800,0.20,24.00,-,-,-,slides", rows.get(1));
        assertEquals("second-third,direct,-,-,-,-,-,-,-,-,-,NEVER CLOSES", rows.get(2));
        assertTrue(answer.screen().contains("direct: NEVER CLOSES"), answer.screen());
        assertTrue(answer.complete());
    }

    @Test
    void aStateThatWasNotFoundLeavesTheAnswerIncomplete() {
        assertFalse(answer(
                        List.of(new ShiftHeat("first", "second", "brake", ShiftFinding.NO_STATE, Optional.empty())),
                        List.of())
                .complete());
        assertTrue(answer(List.of(), List.of()).screen().contains("the file gives no gearsets"));
    }

    @Test
    void jsonIsInSiAndTheLockupStandsBesideTheShifts() throws Exception {
        ShiftAnswer answer =
                answer(List.of(slides(HOT)), List.of(), new LockupHeat("cruise", 110, 2 * Math.PI, 518, 691, true));
        JsonNode json = new ObjectMapper().readTree(Json.text(answer.json()));
        assertEquals(1.2e6, json.at("/shifts/0/heat_over_area_j_m2").doubleValue(), 1);
        assertEquals(1800, json.at("/shifts/0/slip_rpm").doubleValue(), 1e-6);
        assertEquals(60, json.at("/lockup/0/slip_rpm").doubleValue(), 1e-6);
        assertTrue(json.at("/lockup/0/held_slipping_there").booleanValue());
        assertTrue(answer.full().contains("Lockup applied over 1.50 s"), answer.full());
    }
}
