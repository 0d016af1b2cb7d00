package hotidle.circuits.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.transmission.Transmission;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A sheet of readings stays what somebody wrote, whatever is made of it. */
class WrittenReadingsTest {

    private static final Transmission UNIT = CircuitReader.read(
                    Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
            .circuit()
            .orElseThrow()
            .unit("fresh");

    private static final Map<String, String> LINE = Map.of(
            "tap", "line",
            "range", "first",
            "engine speed", "650",
            "oil temperature", "230",
            "temperature unit", "degF",
            "reading", "148",
            "unit", "psi",
            "gauge accuracy", "2 %",
            "note", "=warm, after \"the\" drive");

    private static MeasurementSheet sheet(String text) {
        return MeasurementSheet.of("readings.csv", text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void whatIsWrittenIsReadAgainCellByCell() {
        WrittenReadings written = new WrittenReadings(List.of(LINE, Map.of("tap", "low", "range", "first")));
        String csv = written.csv();
        assertTrue(csv.contains("'=warm"), "no spreadsheet takes a note for a formula: " + csv);
        assertEquals(written, WrittenReadings.of(sheet("\uFEFF" + csv)));
        assertEquals(
                ReadingsReader.read(sheet(csv), UNIT).readings(),
                written.read(UNIT).readings());
        assertEquals(1, written.read(UNIT).readings().size(), "a row without a reading is not taken yet");
    }

    @Test
    void aSheetWithColumnsInAnotherOrderAndDecimalCommasIsTakenAsItStands() {
        WrittenReadings written = WrittenReadings.of(
                sheet(
                        "reading;tap;sound from;range;oil temperature;engine speed;unit;gauge accuracy\n10,2;line;9;first;110 degC;650;bar;0,2\n;;;;;;;\n"));
        assertEquals(1, written.rows().size());
        assertEquals("10,2", written.rows().get(0).get("reading"));
        assertFalse(written.rows().get(0).containsKey("sound from"), "what a sound unit reads is worked out anew");
        assertEquals(10.2e5, written.read(UNIT).readings().get(0).value(), 1e-6);
    }

    @Test
    void eachRowIsJudgedAlone() {
        WrittenReadings written =
                new WrittenReadings(List.of(LINE, Map.of("tap", "nosuch", "reading", "3"), Map.of("tap", "low")));
        assertFalse(written.only(0).read(UNIT).wrong());
        assertTrue(written.only(1).read(UNIT).problems().get(0).message().contains("no tap 'nosuch'"));
        assertTrue(written.taken(1));
        assertFalse(written.taken(2));
    }

    @Test
    void noSheetIsWithoutEndAndNoColumnUnknown() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new WrittenReadings(Collections.nCopies(WrittenReadings.MOST + 1, LINE)));
        assertThrows(IllegalArgumentException.class, () -> new WrittenReadings(List.of(Map.of("nosuch", "1"))));
    }
}
