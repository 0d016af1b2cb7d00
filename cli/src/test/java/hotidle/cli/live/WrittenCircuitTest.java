package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hotidle.circuits.Library;
import hotidle.cli.Run;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A circuit file that is written on the page is told what is wrong with it, as check tells it. */
class WrittenCircuitTest {

    private static Visitor visitor;

    @TempDir
    Path folder;

    @BeforeAll
    static void open() throws IOException {
        visitor = new Visitor("training-rig");
    }

    @AfterAll
    static void close() {
        assertEquals(List.of(), visitor.faults);
        visitor.close();
    }

    private static JsonNode asked(String kind, String text) throws Exception {
        return visitor.about(kind, "text", new ObjectMapper().writeValueAsString(text));
    }

    private static String refused(String kind, String text) throws Exception {
        HttpResponse<String> response = visitor.sentAbout(kind, "text", new ObjectMapper().writeValueAsString(text));
        assertEquals(422, response.statusCode(), response.body());
        return new ObjectMapper().readTree(response.body()).get("refused").asText();
    }

    @Test
    void aFileWithThreeFaultsGivesTheThreeMessagesOfCheckWithLineAndColumn() throws Exception {
        String text = Library.text("training-rig")
                .orElseThrow()
                .replace("viscosity: 10 mm2/s", "viscosity: 10 furlong")
                .replace("displacement: 12 cm3/rev", "displacement: -12 cm3/rev")
                .replace("port: third gauge", "prt: third gauge");
        JsonNode answer = asked("write-check", text);
        assertFalse(answer.get("good").asBoolean());
        assertEquals("3 errors", answer.get("summary").asText());
        Path file = folder.resolve("circuit.yaml");
        Files.writeString(file, text);
        String printed = Run.of("check", file.toString()).err().replace(file.toString(), "circuit.yaml");
        List<String> places = new ArrayList<>();
        for (JsonNode problem : answer.get("problems")) {
            assertTrue(printed.contains(problem.get("text").asText()), problem + " in " + printed);
            places.add("circuit.yaml:" + problem.get("line") + ":" + problem.get("column") + ": "
                    + problem.get("severity").asText() + ": "
                    + problem.get("said").asText());
        }
        assertEquals(3, places.size(), places.toString());
        assertEquals(
                printed.lines()
                        .filter(line -> line.matches("circuit.yaml:\\d+:\\d+: .*"))
                        .toList(),
                places);
    }

    @Test
    void aGoodFileIsSummedUpAsCheckDoesAndIsDrawn() throws Exception {
        String text = Library.text("training-rig").orElseThrow();
        JsonNode answer = asked("write-check", text);
        assertTrue(answer.get("good").asBoolean(), answer.toString());
        assertEquals(0, answer.get("problems").size());
        assertEquals(
                Run.of("check", "training-rig", "--units", "shop").out(),
                answer.get("summary").asText());
        String svg = asked("write-drawing", text).get("svg").asText();
        assertTrue(svg.startsWith("<svg") && svg.contains("data-piece=\"box relief\""), svg.substring(0, 200));
        assertFalse(svg.contains("psi"), "no pressures are known of it");
    }

    @Test
    void theTextThatAnEmptyFieldBeginsWithIsGoodAndStandsOnAReadyCircuit() throws Exception {
        JsonNode offer = asked("write-offer", "");
        JsonNode answer = asked("write-check", offer.get("start").asText());
        assertTrue(answer.get("good").asBoolean(), answer.toString());
        assertEquals(0, answer.get("problems").size(), answer.toString());
        for (JsonNode ready : offer.get("ready")) {
            assertEquals(
                    Library.text(ready.asText()).orElseThrow(),
                    asked("write-begin", ready.asText()).get("text").asText());
        }
        assertTrue(refused("write-begin", "nosuch").contains("training-rig"));
    }

    @Test
    void noFileOfThisMachineIsRead() throws Exception {
        Path file = folder.resolve("secret.yaml");
        Files.writeString(file, Library.text("training-rig").orElseThrow());
        JsonNode answer = asked("write-check", "circuit: mine\nbased-on: " + file + "\n");
        assertFalse(answer.get("good").asBoolean());
        assertTrue(
                answer.at("/problems/0/said").asText().contains("neither a file nor a ready circuit"),
                answer.toString());
        assertTrue(refused("write-begin", "../../secret").contains("no ready circuit"));
    }

    @Test
    void whatIsTooLongOrNotGoodIsRefused() throws Exception {
        assertTrue(
                refused("write-check", "#".repeat(WrittenCircuit.LONGEST + 1)).contains("128 kB"));
        assertTrue(refused("write-drawing", "circuit: none\nparts: 3\n").contains("mend them first"));
        assertEquals(1, asked("write-check", "").get("problems").size());
    }
}
