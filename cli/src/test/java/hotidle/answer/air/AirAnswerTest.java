package hotidle.answer.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.answer.format.Wrap;
import hotidle.study.AirTest;
import hotidle.study.AirTest.AirDoubt;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What an air test of a land says, by values made by hand. */
class AirAnswerTest {

    /** Oil of 8 mPa.s under 10 bar. */
    private static final double DROP = 10e5;

    private static final double VISCOSITY = 8e-3;

    /** 1 L/min of air; in place of the file a tenth narrower than with the valve centred. */
    private static AirAnswer.Tested read(String reading, double clearance, AirDoubt... doubts) {
        return new AirAnswer.Tested(
                reading, Optional.of(new AirTest(1e-3 / 60, 1e-13, clearance, 0.9 * clearance, List.of(doubts))));
    }

    private static final AirAnswer.Tested BEYOND = new AirAnswer.Tested("3inHg", Optional.empty());

    private static AirAnswer answer(UnitSystem units, int holes, OptionalDouble limit, AirAnswer.Tested... readings) {
        return new AirAnswer(
                units, "rig", "land-2", 14e-3, limit, DROP, VISCOSITY, 4e-6, "hot-idle", holes, List.of(readings));
    }

    private static String words(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void theBoreToWriteIsTheValveAndTheClearanceOnBothSides() {
        JsonNode reading = Json.tree(answer(UnitSystem.SI, 3, OptionalDouble.empty(), read("18inHg", 20e-6))
                        .json())
                .at("/readings/0");
        assertEquals(14e-3 + 2 * 18e-6, reading.get("bore_m").doubleValue(), 1e-12);
        assertEquals(18e-6, reading.get("clearance_as_in_the_file_m").doubleValue(), 1e-12);
        assertEquals(20e-6, reading.get("clearance_centred_m").doubleValue(), 1e-12);
    }

    @Test
    void oilLeaksMoreThroughTheGapThatWarmthHasOpened() {
        JsonNode reading = Json.tree(answer(UnitSystem.SI, 3, OptionalDouble.empty(), read("18inHg", 20e-6))
                        .json())
                .at("/readings/0");
        double cold = reading.get("oil_leak_m3_s").doubleValue();
        double hot = reading.get("oil_leak_hot_m3_s").doubleValue();
        assertEquals(Math.pow(20.0 / 18, 3), hot / cold, 1e-9, "2 um of 18 um more, cubed");
    }

    @Test
    void aBoreThatComesOutPastItsLimitIsMarkedAndTheLimitTold() {
        AirAnswer past =
                answer(UnitSystem.METRIC, 3, OptionalDouble.of(14.03e-3), read("10inHg", 20e-6), read("22inHg", 10e-6));
        assertTrue(past.full().contains("14.036 mm *"), past.full());
        assertTrue(past.full().contains("14.018 mm"), past.full());
        assertFalse(past.full().contains("14.018 mm *"), past.full());
        assertTrue(past.full().contains("* past its wear limit of 14.030 mm."), past.full());
    }

    @Test
    void withoutAWrittenLimitNoBoreIsPastIt() {
        AirAnswer none = answer(UnitSystem.METRIC, 3, OptionalDouble.empty(), read("10inHg", 200e-6));
        assertFalse(none.full().contains("*"), none.full());
    }

    @Test
    void aReadingBeyondTheCalibrationIsADashAndLeavesTheAnswerIncomplete() {
        AirAnswer answer = answer(UnitSystem.SHOP, 3, OptionalDouble.empty(), read("18inHg", 20e-6), BEYOND);
        assertFalse(answer.complete());
        assertTrue(answer.full().lines().anyMatch(line -> line.matches("3inHg( +-){6}")), answer.full());
        assertTrue(words(answer.full()).contains("beyond what the stand was calibrated with"), answer.full());
        JsonNode beyond = Json.tree(answer.json()).at("/readings/1");
        assertTrue(beyond.get("bore_m").isNull());
        assertTrue(beyond.get("oil_leak_m3_s").isNull());
        assertEquals(
                "land-2,3inHg,-,-,-,gpm,-,-,-,in,",
                answer.csv().lines().toList().get(2));
    }

    @Test
    void whereEveryReadingIsWithinTheCalibrationNothingIsSaidOfBeyond() {
        AirAnswer answer = answer(UnitSystem.SHOP, 3, OptionalDouble.empty(), read("18inHg", 20e-6));
        assertTrue(answer.complete());
        assertFalse(answer.full().contains("A dash"), answer.full());
    }

    @Test
    void twoPointsAreSaidToBeFewAndThreeAreNot() {
        assertTrue(words(answer(UnitSystem.SHOP, 2, OptionalDouble.empty(), read("18inHg", 20e-6))
                        .full())
                .contains("Straight between two calibration points"));
        assertFalse(words(answer(UnitSystem.SHOP, 3, OptionalDouble.empty(), read("18inHg", 20e-6))
                        .full())
                .contains("Straight between two calibration points"));
    }

    @Test
    void eachDoubtIsSaidOnceHoweverManyReadingsRaiseIt() {
        String full = words(answer(
                        UnitSystem.METRIC,
                        3,
                        OptionalDouble.empty(),
                        read("10inHg", 5e-6, AirDoubt.SLIPS),
                        read("11inHg", 5e-6, AirDoubt.SLIPS),
                        read("3inHg", 300e-6, AirDoubt.CHOKES, AirDoubt.TURBULENT))
                .full());
        assertEquals(2, full.split("air slips along its walls", -1).length, full);
        assertTrue(full.contains("near choking"), full);
        assertTrue(full.contains("may be turbulent"), full);
    }

    @Test
    void doubtsStandBehindTheirOwnReadingInASpreadsheet() {
        List<String> rows = answer(
                        UnitSystem.METRIC,
                        3,
                        OptionalDouble.empty(),
                        read("3inHg", 300e-6, AirDoubt.CHOKES, AirDoubt.TURBULENT),
                        read("20inHg", 20e-6))
                .csv()
                .lines()
                .toList();
        assertTrue(rows.get(1).endsWith(",mm,chokes turbulent"), rows.get(1));
        assertTrue(rows.get(2).endsWith(",mm,"), rows.get(2));
    }

    @Test
    void theHeadingTellsLandDropOilAndCalibration() {
        String metric = words(answer(UnitSystem.METRIC, 3, OptionalDouble.empty(), read("18inHg", 20e-6))
                .full());
        assertTrue(metric.startsWith("land-2 of rig, tested with air on a stand that 3 holes calibrated;"), metric);
        assertTrue(metric.contains("under 10.00 bar at 8 mPa.s (hot-idle)"), metric);
        String shop = words(answer(UnitSystem.SHOP, 3, OptionalDouble.empty(), read("18inHg", 20e-6))
                .full());
        assertTrue(shop.contains("under 145 psi at 8 mPa.s (hot-idle)"), shop);
    }

    @Test
    void noLineIsWiderThanAScreen() {
        answer(UnitSystem.SHOP, 2, OptionalDouble.of(14.001e-3), read("18inHg", 20e-6, AirDoubt.values()), BEYOND)
                .full()
                .lines()
                .forEach(line -> assertTrue(line.length() <= Wrap.WIDTH, line));
    }
}
