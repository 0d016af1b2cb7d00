package hotidle.answer.gauge;

import static hotidle.answer.gauge.MadeReadings.LINE;
import static hotidle.answer.gauge.MadeReadings.PSI;
import static hotidle.answer.gauge.MadeReadings.answer;
import static hotidle.answer.gauge.MadeReadings.bore;
import static hotidle.answer.gauge.MadeReadings.cause;
import static hotidle.answer.gauge.MadeReadings.findings;
import static hotidle.answer.gauge.MadeReadings.group;
import static hotidle.answer.gauge.MadeReadings.share;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.fault.FaultKind;
import hotidle.fault.UnitFault;
import hotidle.study.gauge.Cause;
import hotidle.study.gauge.GaugeFindings;
import hotidle.study.gauge.GaugeReading;
import hotidle.study.gauge.NextReading;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Causes in a spreadsheet and as JSON. */
class GaugeTableTest {

    private static final Cause SPRING = cause(share(FaultKind.SPRING_WEAK, "regulator"), 0.2, 0.7, 0.05, true);
    private static final Cause STUCK = cause(
            new UnitFault(FaultKind.VALVE_STUCK, "shift", List.of(), 0, 4e-3, (unit, size) -> unit),
            2e-3,
            0.2,
            Double.NaN,
            true);

    @Test
    void aCauseIsARowWithItsSizeAndWhatThatCounts() {
        List<String> rows = answer(findings(false, List.of(group(0.7, SPRING)), 0.3, List.of()), List.of())
                .csv()
                .lines()
                .toList();
        assertEquals("fault,part,size,from,to,size counts,share,misfit left,hidden up to,can show", rows.get(0));
        assertEquals("spring-weak,regulator,0.2,0.1,0.4,share,0.7,3.2,0.05,yes", rows.get(1));
    }

    @Test
    void aFaultThatHasNoDegreeHidesUpToNoSize() {
        GaugeAnswer answer = answer(findings(false, List.of(group(0.7, STUCK)), 0.3, List.of()), List.of());
        assertTrue(answer.csv().lines().toList().get(1).endsWith(",-,yes"), answer.csv());
        assertTrue(
                answer.full().lines().anyMatch(line -> line.matches("valve-stuck@shift .* off its rest +-")),
                answer.full());
        JsonNode cause = Json.tree(answer.json()).at("/causes/0");
        assertTrue(cause.get("hidden_up_to").isNull(), cause.toString());
        assertEquals("position", cause.get("size_counts").textValue());
    }

    @Test
    void whatAReadingHidesIsToldAsASizeOfTheFit() {
        Cause bore = cause(bore("regulator"), 0.25, 0.7, 0.5, true);
        String full = answer(
                        UnitSystem.METRIC,
                        findings(false, List.of(group(0.7, bore)), 0.3, List.of()),
                        List.of(),
                        true,
                        java.util.OptionalDouble.empty(),
                        List.of())
                .full();
        String row = full.substring(full.indexOf("hidden up to"));
        assertTrue(row.contains("bore 14.030 mm, wear limit"), "best size, folded in its column: " + full);
        assertTrue(row.contains("bore 14.040 mm, wear limit"), "hidden up to: " + full);
        assertEquals(2, row.split("within wear", -1).length - 1, full);
    }

    @Test
    void jsonIsInSiAndSaysWhichReadingsStandOut() {
        GaugeFindings found = findings(false, List.of(group(0.7, SPRING)), 0.3, List.of());
        JsonNode json = Json.tree(answer(found, List.of()).json());
        JsonNode reading = json.at("/readings/0");
        assertEquals(60 * PSI, reading.get("value").doubleValue(), 1e-6);
        assertEquals(600, reading.at("/place/speed_rpm").doubleValue(), 1e-9);
        assertEquals(100, reading.at("/place/oil_temperature_c").doubleValue(), 1e-9);
        assertEquals("pressure_pa", reading.get("reads").textValue());
        assertTrue(reading.get("stands_out").booleanValue());
        assertTrue(reading.at("/place/commanded_pressure_pa").isNull(), "nothing is said of the command");
        assertEquals("spring-weak@regulator", json.at("/groups/0/faults/0").textValue());
        assertEquals(0.3, json.get("none_of_these").doubleValue(), 1e-12);
    }

    @Test
    void aPairIsTwoFaultsWithTheirSizes() {
        GaugeFindings.Pair pair =
                new GaugeFindings.Pair(SPRING.fault().of(0.2), STUCK.fault().of(2e-3), 0.4, 1.5);
        JsonNode json = Json.tree(answer(findings(false, List.of(group(0.5, SPRING)), 0.1, List.of(pair)), List.of())
                .json());
        assertEquals("valve-stuck@shift", json.at("/pairs/0/other_fault").textValue());
        assertEquals(2e-3, json.at("/pairs/0/other_size").doubleValue(), 1e-12);
        assertEquals(1.5, json.at("/pairs/0/chi_square_left").doubleValue(), 1e-12);
    }

    @Test
    void theNextReadingsStandInTheirOrderWithWhatASoundUnitReads() {
        NextReading next = new NextReading(
                new GaugeReading.Row(LINE, MadeReadings.IDLE),
                0.8,
                List.of(new NextReading.Prediction(SPRING, 50 * PSI)),
                100 * PSI,
                PSI);
        JsonNode json =
                Json.tree(answer(findings(false, List.of(group(0.5, SPRING)), 0.1, List.of()), List.of(next, next))
                        .json());
        assertEquals(2, json.get("next_readings").size());
        assertEquals(50 * PSI, json.at("/next_readings/0/predicted/0/value").doubleValue(), 1e-6);
        assertEquals(100 * PSI, json.at("/next_readings/1/sound").doubleValue(), 1e-6);
    }
}
