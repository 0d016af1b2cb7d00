package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** torque as a user meets it. */
class TorqueCommandTest {

    private static Run torque(String... more) {
        List<String> all = new java.util.ArrayList<>(
                List.of("torque", "crescent-four", "--build", "fresh", "--try", "100..300/100psi"));
        all.addAll(List.of(more));
        return Run.of(all.toArray(new String[0]));
    }

    @Test
    void theScreenSaysWhatIsHeldWhatGivesFirstAndFromWhichPressureOnNothingIsWon() {
        Run run = torque();
        assertEquals(0, run.code(), run.err());
        String words = run.out().replaceAll("\\s+", " ");
        assertTrue(
                words.matches(".*fresh holds 324 lbf.ft of engine torque in every range \\(driving conditions ask up to"
                        + " \\d+\\); low-reverse-brake gives first, in reverse.*"),
                words);
        assertTrue(
                words.matches(
                        ".*more torque is held up to 17\\d psi set pressure; from there input-shaft gives first.*"),
                words);
        assertTrue(words.contains("An estimate from your own figures, not an approval"), words);
    }

    @Test
    void whatALineNeedsIsARowARangeAndTorque() {
        List<String> rows = torque("--needed", "--format", "csv", "--units", "metric")
                .out()
                .lines()
                .toList();
        assertEquals(
                "build,range,engine N.m,needs bar,for,commanded bar,has at 2000 rpm,at 1000 rpm,at idle,says",
                rows.get(0));
        assertEquals(1 + 5 * 8, rows.size());
        assertTrue(rows.get(8).startsWith("fresh,reverse,390,"), rows.get(8));
        assertTrue(
                rows.stream().anyMatch(row -> row.endsWith(",wastes")),
                "a small torque at the full throttle's command");
    }

    @Test
    void thePictureHasALineALinkAndTheCrossing(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("torque.svg");
        Run run = torque("--plot", file.toString());
        assertEquals(0, run.code(), run.err());
        assertTrue(run.err().contains("drawn: "), run.err());
        String svg = Files.readString(file);
        assertTrue(svg.contains("input-shaft") && svg.contains("low-reverse-brake"));
        assertTrue(svg.contains("from here input-shaft gives first"));
    }

    @Test
    void stagesStandSideBySideWithWhatIsLeftOfThem() throws Exception {
        Run run = torque("--build", "restored", "--stages");
        String words = run.out().replaceAll("\\s+", " ");
        assertTrue(words.contains("holds in every range 324 lbf.ft"), words);
        assertTrue(words.contains("more set pressure helps up to 17"), words);
        JsonNode json = new ObjectMapper()
                .readTree(torque("--build", "restored", "--stages", "--from", "worn", "--format", "json")
                        .out());
        assertEquals("worn", json.get("before").textValue());
        assertEquals("input-shaft", json.at("/stages/0/useful_pressure/link").textValue());
        assertEquals(
                "pump",
                json.at("/stages/0/jobs/0").textValue(),
                "the file names no jobs, so that they are those by place");
    }
}
