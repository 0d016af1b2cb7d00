package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Units judged at the temperatures of their own heat, with an oil that bears so little that a climb is too hot for it. */
class OwnHeatTest {

    @TempDir
    private Path folder;

    private String tender;

    @BeforeEach
    void anOilThatBearsLittle() throws IOException {
        tender = Run.changed(
                folder, "shuttle-five", "  case-loss: 25 W/K\n", "  case-loss: 25 W/K\n  oil-limit: 100 degC\n");
    }

    private Run ask(String command, String... more) {
        List<String> words = new ArrayList<>(List.of(command, tender, "--build", "fresh", "--temperature", "balance"));
        words.addAll(List.of(more));
        return Run.of(words.toArray(new String[0]));
    }

    @Test
    void whereHeatLeavesNoTemperatureNothingIsJudgedAndThatIsSaid() throws IOException {
        Run run = ask("margins", "--speed", "600..3600/3000rpm");
        assertEquals(0, run.code(), run.err());
        String said = run.out().replaceAll("\\s+", " ");
        assertTrue(said.contains("fresh at climb: NOT JUDGED"), said);
        assertTrue(said.contains("oil limit in "), said);
        JsonNode json = new ObjectMapper()
                .readTree(ask("margins", "--speed", "600..3600/3000rpm", "--format", "json")
                        .out());
        assertTrue(json.get("no_temperature").findValuesAsText("duty").contains("climb"), json.toString());
        assertTrue(json.at("/builds/0/states").findValuesAsText("duty").stream().noneMatch("climb"::equals));
    }

    @Test
    void aBuildIsComparedWhereItComesToATemperature() {
        Run run = ask("compare", "--speed", "600..3600/1500rpm");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("fresh at climb: NOT JUDGED"), run.out());
        assertTrue(run.out().lines().count() <= 24, run.out());
    }

    @Test
    void noSetPressureHoldsWhereTheOilGetsTooHot() throws IOException {
        JsonNode points = new ObjectMapper()
                .readTree(ask("window", "--try", "120..180/60psi", "--speed", "600..3600/3000rpm", "--format", "json")
                        .out())
                .at("/builds/0/points");
        assertEquals(2, points.size());
        int hot = 0;
        for (JsonNode point : points) {
            List<String> none = new ArrayList<>();
            point.get("no_temperature_duties").forEach(duty -> none.add(duty.textValue()));
            List<String> judged = point.get("margins").findValuesAsText("duty");
            assertTrue(none.stream().noneMatch(judged::contains), none + " are judged");
            assertEquals(0, point.get("unsolved_duties").size());
            hot += none.size();
        }
        assertTrue(hot > 0, points.toString());
    }
}
