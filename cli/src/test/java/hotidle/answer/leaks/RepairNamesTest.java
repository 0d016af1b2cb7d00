package hotidle.answer.leaks;

import static hotidle.answer.leaks.MadeRepairs.bore;
import static hotidle.answer.leaks.MadeRepairs.effect;
import static hotidle.answer.leaks.MadeRepairs.names;
import static hotidle.answer.leaks.MadeRepairs.scores;
import static hotidle.answer.leaks.MadeRepairs.step;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.format.Json;
import hotidle.study.Repairs;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a repair is called on the screen, and its record. */
class RepairNamesTest {

    private static final Repairs.Step ONE = step(effect(8, 2, 18, OptionalDouble.of(900)), bore("bore-14", 40));
    private static final Repairs.Step RINGS = step(effect(8, 2, 18), bore("ring-1", 40), scores("ring-1"));

    @Test
    void aShortNoteOfThePartStandsBesideItsNameAndALongOneDoesNot() {
        assertEquals(
                "bore-14.bore (accumulator)",
                names(Map.of("bore-14", "accumulator")).called(ONE.repair()));
        assertEquals(
                "bore-14.bore",
                names(Map.of("bore-14", "accumulator of the low clutch")).called(ONE.repair()));
        assertEquals("bore-14.bore", names(Map.of()).called(ONE.repair()));
    }

    @Test
    void oneSizeGoesBackToItsValueAndSeveralAreDoneAsNew() {
        assertEquals("bore-14.bore back to 14.000 mm", names(Map.of()).job(ONE.repair()));
        assertEquals("ring-1 as new", names(Map.of()).job(RINGS.repair()));
        assertEquals("14.040 mm", names(Map.of()).from(ONE.repair()));
        assertEquals("2 sizes", names(Map.of()).from(RINGS.repair()));
        assertEquals("new", names(Map.of()).to(RINGS.repair()));
    }

    @Test
    void everySizeOfARepairIsListedWithItsOwnUnit() {
        assertEquals(
                "bore 14.040 mm to 14.000 mm; orifice-slip-area 0.40 mm2 to 0.10 mm2",
                names(Map.of()).sizes(RINGS.repair()));
    }

    @Test
    void theRecordOfARepairIsInSiButItsOnset() {
        JsonNode json = Json.tree(RepairRecord.all(List.of(ONE)).get(0));
        assertEquals("bore-14.bore", json.get("repair").textValue());
        assertEquals(0.01404, json.at("/sizes/bore-14.bore/from").doubleValue(), 1e-15);
        assertEquals(0.014, json.at("/sizes/bore-14.bore/to").doubleValue());
        assertEquals("m", json.at("/sizes/bore-14.bore/unit").textValue());
        assertEquals(8e5, json.at("/after/line_pa").doubleValue(), 1e-6);
        assertEquals(18 / 6e4, json.at("/after/lost_m3_s").doubleValue(), 1e-15);
        assertEquals(900, json.at("/after/onset_rpm").doubleValue(), 1e-9);
    }

    @Test
    void anOnsetThatIsNotThereIsNullInTheRecord() {
        JsonNode json = Json.tree(RepairRecord.all(List.of(RINGS)).get(0));
        assertEquals(true, json.at("/after/onset_rpm").isNull());
        assertEquals("m2", json.at("/sizes/ring-1.orifice-slip-area/unit").textValue());
    }
}
