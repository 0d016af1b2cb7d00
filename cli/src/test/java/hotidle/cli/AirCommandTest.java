package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** air as a builder meets it: a reading before and after a repair. */
class AirCommandTest {

    private static final String[] BORE = {
        "air", "shuttle-five", "manual-valve-front", "--blocked", "25inHg", "--hole", "1mm=5inHg"
    };

    private static Run run(String... more) {
        return Run.of(Stream.concat(Stream.of(BORE), Stream.of(more)).toArray(String[]::new));
    }

    private static JsonNode readings(String... more) throws Exception {
        Run run = run(
                Stream.concat(Stream.of(more), Stream.of("--format", "json")).toArray(String[]::new));
        return new ObjectMapper().readTree(run.out()).get("readings");
    }

    @Test
    void aRepairedBoreLeaksLess() throws Exception {
        JsonNode found = readings("--reading", "14inHg", "--reading", "22inHg");
        assertTrue(found.at("/0/oil_leak_m3_s").doubleValue()
                > 2 * found.at("/1/oil_leak_m3_s").doubleValue());
        assertTrue(found.at("/0/bore_m").doubleValue() > found.at("/1/bore_m").doubleValue());
    }

    /** What the sheet is told makes the part leak what was tested. */
    @Test
    void theBoreToWriteLeaksWhatWasTested() throws Exception {
        JsonNode found = readings("--reading", "18inHg", "--drop", "150psi").get(0);
        Run part = Run.of(
                "part",
                "annular-gap",
                "bore=" + found.get("bore_m").asText() + "m",
                "valve=14mm",
                "length=9mm",
                "eccentricity=0.5",
                "--drop",
                "150psi",
                "--temperature",
                "110degC",
                "--format",
                "json");
        assertEquals(0, part.code(), part.err());
        double told = found.get("oil_leak_hot_m3_s").doubleValue();
        double flow = flow(new ObjectMapper().readTree(part.out()));
        assertEquals(told, flow, 0.02 * told, "entry and exit of the land count in service");
    }

    private static double flow(JsonNode part) {
        return part.findValue("flow_m3_s").doubleValue();
    }

    @Test
    void aReadingBeyondTheCalibrationIsADashAndCodeOne() {
        Run run = run("--reading", "3inHg");
        assertEquals(1, run.code(), run.err());
        assertTrue(run.out().contains("beyond what the stand was calibrated"), run.out());
    }

    @Test
    void aPressureTestReadsAsWell() {
        Run run = Run.of(
                "air",
                "shuttle-five",
                "manual-valve-front",
                "--pressure",
                "--blocked",
                "40psi",
                "--hole",
                "1mm=10psi",
                "--reading",
                "30psi");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("bore to write"), run.out());
    }
}
