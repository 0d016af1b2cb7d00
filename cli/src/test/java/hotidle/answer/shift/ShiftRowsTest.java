package hotidle.answer.shift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.answer.phrase.ShiftPhrase;
import hotidle.assess.ShiftFinding;
import hotidle.study.LockupHeat;
import hotidle.study.ShiftHeat;
import hotidle.study.ShiftHeat.Closing;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Shifts in rows, in words and as JSON; figures made by hand. */
class ShiftRowsTest {

    /** Closes at 10 bar, carries 800 N.m where 400 N.m is asked, slips 1800 rpm for 0.2 s: 24 kJ on 200 cm2, 300 K. */
    private static final Closing CLOSING = new Closing(
            10e5, 800, 400, 2 * Math.PI * 30, 0.2, 24e3, 150e3, OptionalDouble.of(0.02), OptionalDouble.of(300));

    private static ShiftHeat shift(String clutch, ShiftFinding why) {
        return new ShiftHeat(
                "first", "second", clutch, why, why == ShiftFinding.FOUND ? Optional.of(CLOSING) : Optional.empty());
    }

    private static ShiftRows rows(UnitSystem units, ShiftHeat... shifts) {
        return new ShiftRows(units, List.of(shifts), List.of());
    }

    @Test
    void figuresStandInTheUnitsOfTheReader() {
        List<String> metric = rows(UnitSystem.METRIC, shift("brake", ShiftFinding.FOUND))
                .table()
                .body()
                .get(0);
        assertEquals(
                List.of(
                        "first-second",
                        "brake",
                        "10.00",
                        "800",
                        "400",
                        "1800",
                        "0.20",
                        "24.00",
                        "1.20!",
                        "7.50!",
                        "300"),
                metric.subList(0, 11));
        List<String> shop = rows(UnitSystem.SHOP, shift("brake", ShiftFinding.FOUND))
                .table()
                .body()
                .get(0);
        assertEquals("145", shop.get(2));
        assertEquals("590", shop.get(3));
        assertEquals("540", shop.get(10), "a rise has no offset");
        assertTrue(rows(UnitSystem.SHOP).table().head().contains("at psi"));
    }

    @Test
    void aShiftInWhichNotOneClutchClosesHasNoName() {
        List<String> row = rows(UnitSystem.METRIC, shift("", ShiftFinding.NOT_ONE))
                .table()
                .body()
                .get(0);
        assertEquals("-", row.get(1));
        assertEquals(9, row.stream().skip(2).filter("-"::equals).count());
        assertEquals("not one clutch closes", row.get(11));
    }

    @Test
    void onTheFirstScreenTheReasonStandsBehindTheClutch() {
        List<String> row = rows(UnitSystem.METRIC, shift("direct", ShiftFinding.STATIC))
                .brief()
                .body()
                .get(0);
        assertEquals("direct: closes without slip", row.get(1));
        List<String> found = rows(UnitSystem.METRIC, shift("direct", ShiftFinding.FOUND))
                .brief()
                .body()
                .get(0);
        assertEquals("direct", found.get(1));
        assertEquals(9, found.size());
    }

    @Test
    void everyReasonHasItsOwnWords() {
        Set<String> said = new HashSet<>();
        for (ShiftFinding finding : ShiftFinding.values()) {
            said.add(ShiftPhrase.why(finding));
        }
        assertEquals(ShiftFinding.values().length, said.size());
    }

    @Test
    void whatLiningsBearIsMarkedAboveTheirLimitAndNotAtIt() {
        assertEquals("1.00", ShiftPhrase.overArea(ShiftPhrase.LIMIT));
        assertEquals("1.01!", ShiftPhrase.overArea(1.01 * ShiftPhrase.LIMIT));
        assertEquals("3.00", ShiftPhrase.powerOverArea(ShiftPhrase.POWER_LIMIT));
        assertEquals("3.03!", ShiftPhrase.powerOverArea(1.01 * ShiftPhrase.POWER_LIMIT));
    }

    @Test
    void theHeadingSaysUnderWhatItIsAsked() {
        assertEquals(
                "rig, worn: each shift up at 2800 rpm of the turbine with 600 N.m on it, kept, and 0.60 kg.m2 on its side",
                new ShiftPhrase(UnitSystem.METRIC).heading("rig", "worn", 2800 / 60.0, 600, 0.6));
    }

    @Test
    void aLockupIsToldByItsDutyWithWhatHoldingItSlippingWouldCost() {
        ShiftRows rows = new ShiftRows(
                UnitSystem.METRIC, List.of(), List.of(new LockupHeat("cruise", 110, 2 * Math.PI, 518, 691, true)));
        assertEquals(
                List.of("cruise", "110", "60", "0.52", "0.69"),
                rows.lockup().body().get(0));
    }

    @Test
    void jsonLeavesOpenWhatWasNotFound() {
        ShiftAnswer answer = new ShiftAnswer(
                UnitSystem.SHOP,
                "rig",
                "worn",
                new ShiftHeat.AskedShift(2800 / 60.0, 600, 0.6, 0.002),
                List.of(shift("", ShiftFinding.NOT_ONE), shift("brake", ShiftFinding.FOUND)),
                List.of("low-clutch"),
                1,
                List.of());
        JsonNode shifts = Json.tree(answer.json()).get("shifts");
        assertTrue(shifts.at("/0/clutch").isNull());
        assertTrue(shifts.at("/0/heat_j").isNull());
        assertEquals("not_one", shifts.at("/0/says").textValue());
        assertEquals(24e3, shifts.at("/1/heat_j").doubleValue(), 1e-9);
        assertEquals(1.2e6, shifts.at("/1/heat_over_area_j_m2").doubleValue(), 1e-6);
        assertFalse(answer.full().contains("Lockup applied"), "none is asked of");
    }
}
