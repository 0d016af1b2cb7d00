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

/** The commands as a user meets them. */
class CommandsTest {

    private static final String[] COMPARE = {
        "compare",
        "--full",
        "shuttle-five",
        "--build",
        "fresh",
        "--build",
        "worn",
        "--build",
        "worn-raised",
        "--build",
        "restored-raised",
        "--speed",
        "400..4000/100rpm"
    };

    @TempDir
    Path folder;

    private static String[] with(String[] arguments, String... more) {
        String[] all = java.util.Arrays.copyOf(arguments, arguments.length + more.length);
        System.arraycopy(more, 0, all, arguments.length, more.length);
        return all;
    }

    @Test
    void compareTellsTheStoryInWords() {
        Run run = Run.of(COMPARE);
        assertEquals(0, run.code(), run.err());
        for (String duty : List.of("hot-idle", "stall", "full-throttle-shift", "road-cruise", "cold-start")) {
            assertTrue(run.out().contains("\n" + duty + " ("), duty);
        }
        for (String words : List.of(
                "fresh holds its 150 psi at hot-idle",
                "worn cannot hold its 150 psi at hot-idle",
                "regulator on its seat",
                "worn-raised cannot hold its 240 psi at hot-idle",
                "The pump has no more oil to give",
                "restored-raised holds its 240 psi at hot-idle",
                "The speed from which it holds moves from",
                "the secondary stops balancing the primary's side load",
                "The unit maker's")) {
            assertTrue(run.out().replaceAll("\\s+", " ").contains(words), words + " is not in\n" + run.out());
        }
        String plain = run.out().substring(run.out().indexOf("In plain words"));
        assertTrue(plain.lines().allMatch(line -> line.length() <= 100), "a line is too long to read");
    }

    @Test
    void compareGivesTheSameNumbersInEverySystemOfUnits() throws Exception {
        JsonNode root = new ObjectMapper()
                .readTree(Run.of(with(COMPARE, "--format", "json")).out());
        double line = root.at("/builds/1/states/0/pressures_pa/line").doubleValue();
        String metric = row(Run.of(with(COMPARE, "--units", "metric")).out(), "line pressure [bar]");
        assertTrue(metric.contains(String.format(java.util.Locale.ROOT, "%.2f", line / 1e5)), metric);
        String shop = row(Run.of(COMPARE).out(), "line pressure [psi]");
        assertTrue(shop.contains(" " + Math.round(line / 6894.757293168) + " "), shop);
    }

    private static String row(String text, String label) {
        return text.lines().filter(line -> line.startsWith(label)).findFirst().orElseThrow();
    }

    @Test
    void compareIsTheSameOnEveryRun() {
        String[] json = with(COMPARE, "--format", "json");
        assertEquals(Run.of(json).out(), Run.of(json).out());
    }

    @Test
    void sweepPrintsATableAndACsvOfAllItsSpeeds() {
        Run table = Run.of("sweep", "shuttle-five", "--speed", "600..1000/100rpm", "--full");
        assertEquals(0, table.code(), table.err());
        assertTrue(table.out().contains("rising and falling sweeps agree"), table.out());
        Run csv = Run.of("sweep", "shuttle-five", "--build", "worn", "--speed", "600..1000/100rpm", "--format", "csv");
        assertEquals(6, csv.out().lines().count());
        assertTrue(csv.out().startsWith("build,duty,"));
    }

    @Test
    void aHigherSetPressureIsReachedByCommandAndSpring() throws Exception {
        JsonNode root = new ObjectMapper()
                .readTree(Run.of(
                                "sweep",
                                "shuttle-five",
                                "--set",
                                "200psi",
                                "--speed",
                                "2000..2001/1rpm",
                                "--format",
                                "json")
                        .out());
        assertEquals(
                200 * 6894.757293168,
                root.at("/builds/0/states/0/set_pressure_pa").doubleValue(),
                1);
    }

    @Test
    void picturesAreDrawnAsPngAndSvg() throws Exception {
        for (String name : List.of("sweep.png", "sweep.svg")) {
            Path file = folder.resolve(name);
            Run run = Run.of(
                    "sweep",
                    "shuttle-five",
                    "--build",
                    "worn",
                    "--speed",
                    "600..2000/200rpm",
                    "--plot",
                    file.toString());
            assertEquals(0, run.code(), run.err());
            assertTrue(Files.size(file) > 10_000);
        }
        assertTrue(Files.readString(folder.resolve("sweep.svg")).contains("worn: nothing under "));
    }

    @Test
    void aTemperatureAskedForTwiceIsSweptOnceAndNearOnesAreDrawnApart() throws Exception {
        String[] twice = {"sweep", "shuttle-five", "--temperature", "80degC", "--temperature", "80degC"};
        String[] more = {"--build", "worn", "--speed", "600..1200/600rpm", "--plot"};
        Path file = folder.resolve("near.svg");
        Run once = Run.of(with(with(twice, more), file.toString()));
        assertEquals(0, once.code(), once.err());
        assertEquals(
                1,
                once.out()
                        .lines()
                        .filter(line -> line.startsWith("shuttle-five, worn"))
                        .count());
        twice[5] = "80.2degC";
        Run near = Run.of(with(with(twice, more), file.toString(), "--units", "metric"));
        assertEquals(0, near.code(), near.err());
        assertTrue(Files.readString(file).contains("worn at 80.2 degC"), "the name of a curve");
    }

    @Test
    void theFilmOfTheHubIsDrawnOverSpeedWhereThereIsAHub() throws Exception {
        Path file = folder.resolve("film.svg");
        Run run = Run.of(
                "sweep",
                "shuttle-five",
                "--build",
                "worn",
                "--build",
                "restored",
                "--speed",
                "600..2000/200rpm",
                "--plot-film",
                file.toString());
        assertEquals(0, run.code(), run.err());
        String drawn = Files.readString(file);
        for (String word : List.of("Hub film: ", "worn: thinnest", "restored: thinnest", "load [lbf]")) {
            assertTrue(drawn.contains(word), word);
        }
        Path none = folder.resolve("none.svg");
        Run bench = Run.of("sweep", "training-rig", "--speed", "600..800/100rpm", "--plot-film", none.toString());
        assertEquals(HotIdle.WRONG_INPUT, bench.code(), bench.out());
        assertTrue(bench.err().contains("no hub bushing"), bench.err());
        assertTrue(Files.notExists(none));
    }

    @Test
    void listNamesCircuitsBuildsOilsPartsAndUnits() {
        Run run = Run.of("list", "--full");
        assertEquals(0, run.code());
        for (String word : List.of(
                "shuttle-five",
                "restored-part-throttle",
                "shuttle-atf-used",
                "annular-gap",
                "spool-valve",
                "psi",
                "L/min")) {
            assertTrue(run.out().contains(word), word);
        }
    }

    @Test
    void checkListsWearingSizesAndWhatIsLeftToTheProgram() {
        Run run = Run.of("check", "shuttle-five", "--full");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("hub-bushing.bore") && run.out().contains("left to the program"), run.out());
    }

    @Test
    void checkGroupsWhatIsLeftToTheProgramByWhatItConcerns() {
        List<String> said =
                Run.of("check", "shuttle-five", "--full").out().lines().toList();
        int valves = said.indexOf("  spool-valve (4 of them)");
        int several = said.indexOf("  parts of several kinds");
        assertTrue(valves > 0 && several > valves, String.join("\n", said));
        assertTrue(
                said.subList(valves, several).contains("    shim 0 mm: no shims (assumed)"), String.join("\n", said));
        assertTrue(
                said.stream().anyMatch(line -> line.startsWith("    region sump: ") && line.endsWith("[57 in all]")));
        int each = said.size() - said.indexOf("left to the program");
        assertTrue(each > 200, each + " lines, one for each part");
    }
}
