package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.circuits.WrittenFault;
import hotidle.fault.FaultKind;
import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.study.ToldApart;
import hotidle.transmission.Adjustable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A handout gives its key away nowhere but on the key's own page. */
class LessonTest {

    @TempDir
    Path folder;

    /** The handout that most tests read, made once. */
    private static String first;

    @BeforeAll
    static void oneIsMade(@TempDir Path kept) throws Exception {
        first = handout(kept, "1");
        assertEquals(List.of(), HtmlChecker.findings(kept.resolve("handout-1.html")));
    }

    private static String handout(Path folder, String seed) throws IOException {
        Path file = folder.resolve("handout-" + seed + ".html");
        Run run = lesson(
                "crescent-four",
                file,
                "--build",
                "worn",
                "--build",
                "restored",
                "--build",
                "worn-raised",
                "--seed",
                seed);
        assertEquals(0, run.code(), run.err());
        return Files.readString(file);
    }

    private static String key(String html) {
        return html.substring(html.indexOf("<section id=\"key\""));
    }

    /** A lesson of a circuit, written to a file. */
    private static Run lesson(String circuit, Path file, String... options) {
        List<String> words = new ArrayList<>(List.of("report", circuit, "--lesson", "--out", file.toString()));
        words.addAll(List.of(options));
        return Run.of(words.toArray(new String[0]));
    }

    @Test
    void noBuildIsNamedBeforeTheKey() {
        String html = first;
        String before = html.substring(0, html.indexOf("<section id=\"key\""));
        for (String name : List.of("worn", "restored", "raised", "--build", "--seed", "hotidle report")) {
            assertFalse(before.contains(name), name);
            assertTrue(key(html).contains(name), name);
        }
        assertTrue(before.contains(">unit A</text>"), "the curves are called by letters");
    }

    @Test
    void readingsAreThoseOfTheSweep() {
        String html = first;
        String letter = key(html).replaceAll("(?s).*>(unit [A-C])</th><td class=\"\"[^>]*>worn</td>.*", "$1");
        int column = letter.charAt(5) - 'A' + 1;
        String readings = html.substring(html.indexOf("<caption>Readings in "));
        String line = readings.substring(0, readings.indexOf("</table>"))
                .replaceAll("(?s).*<tr><th scope=\"row\" class=\"\">line</th>(.*?)</tr>.*", "$1");
        String csv = Run.of(
                        "sweep", "crescent-four", "--build", "worn", "--speed", "500..3500/100rpm", "--format", "csv")
                .out();
        String read = line.split("</td>", -1)[column].replaceAll(".*>", "");
        String[] last = csv.lines().reduce((one, later) -> later).orElseThrow().split(",", -1);
        assertTrue(List.of(last).contains(read), read + " in " + String.join(",", last));
    }

    @Test
    void anotherSeedGivesAnotherOrder() throws IOException {
        assertEquals(
                key(first).replaceAll(" --out \\S+", ""),
                key(handout(folder, "1")).replaceAll(" --out \\S+", ""));
        assertNotEquals(
                key(first).replaceAll("--seed \\d+ |handout-\\d+", ""),
                key(handout(folder, "3")).replaceAll("--seed \\d+ |handout-\\d+", ""));
    }

    @Test
    void eachFaultMakesAUnitAndIsNamedInTheKeyAlone() throws IOException {
        Path file = folder.resolve("faults.html");
        Run run = lesson("crescent-four", file, "--build", "fresh", "--fault", "spring-weak@regulator:20%");
        assertEquals(0, run.code(), run.err());
        String html = Files.readString(file);
        String before = html.substring(0, html.indexOf("<section id=\"key\""));
        assertFalse(before.contains("spring-weak") || before.contains("fresh"));
        assertTrue(key(html).contains(">spring-weak@regulator:20%</td>"));
        assertTrue(before.contains(">unit B</text>") && !before.contains("unit C"));
    }

    @Test
    void aPlateThatLeaksWithTheDirectClutchIsShownWhereThatIsAppliedAndReadsFurthestOff() {
        DescribedCircuit shuttle = CircuitReader.read(
                        Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
                .circuit()
                .orElseThrow();
        Adjustable fresh = shuttle.adjustable("fresh");
        UnitFault.Sized warped = WrittenFault.read(UnitFaults.of(fresh), "plate-warped@plate-direct:300%");
        ToldApart apart = ToldApart.of(
                List.of(fresh.unit(), warped.fault().in(fresh, warped.size()).orElseThrow()),
                List.of(650 / 60.0, 2000 / 60.0),
                3);
        assertEquals(
                List.of("first", "fourth"),
                apart.sweeps().stream()
                        .map(range -> range.get(0).duty().range())
                        .toList());
        assertEquals(List.of(), apart.alike());
    }

    @Test
    void theTrueFaultsStandAmongOthersAndAreNotMarkedBeforeTheKey() throws Exception {
        Path file = folder.resolve("candidates.html");
        Run run = lesson("crescent-four", file, "--fault", "spring-weak@regulator:20%", "--format", "json");
        assertEquals(0, run.code(), run.err());
        assertEquals(List.of(), HtmlChecker.findings(file));
        List<String> names = new ArrayList<>();
        new ObjectMapper().readTree(run.out()).get("candidates").forEach(name -> names.add(name.textValue()));
        assertTrue(names.contains("spring-weak@regulator"), names.toString());
        assertTrue(names.size() >= 3, names.toString());
        String before = Files.readString(file).replaceAll("(?s)<section id=\"key\".*", "");
        String outside = before.replaceAll("(?s)<table>\\s*<caption>What it may be</caption>.*?</table>", "");
        for (String name : names) {
            assertFalse(before.contains(name), "as the program writes it: " + name);
            String kind = FaultKind.of(name.replaceAll("@.*", "")).orElseThrow().about();
            assertEquals(
                    names.stream()
                            .filter(other -> kind(other).equals(kind(name)))
                            .count(),
                    before.split(">" + kind + "<", -1).length - 1,
                    kind + " stands once for each fault of its kind");
            assertFalse(outside.contains(kind), "in pictures, titles and captions: " + kind);
        }
    }

    private static String kind(String fault) {
        return fault.replaceAll("@.*", "");
    }

    @Test
    void aFaultThatNoGaugeShowsIsRefusedWithASizeThatDoes() {
        Path file = folder.resolve("unseen.html");
        Run run = lesson(
                "crescent-four", file, "--fault", "spring-weak@regulator:20%", "--fault", "spring-weak@regulator:0.1%");
        assertEquals(2, run.code(), run.out());
        assertTrue(run.err().contains("--fault spring-weak@regulator:0.1%: no gauge shows it"), run.err());
        assertTrue(run.err().contains("gauges show spring-weak@regulator:20%"), run.err());
        assertTrue(run.err().contains("or write spring-weak@regulator:"), run.err());
        assertFalse(Files.exists(file));
    }

    @Test
    void unitsThatNobodyCanTellApartAreToldToWhoMakesTheHandout() throws Exception {
        Path file = folder.resolve("alike.html");
        Run run = lesson(
                "training-rig",
                file,
                "--build",
                "worn",
                "--fault",
                "orifice-wrong@second:1.2mm",
                "--fault",
                "orifice-wrong@second:1.201mm");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.err().contains("read alike at every gauge, in every range"), run.err());
        assertTrue(run.err().contains("orifice-wrong@second:1.201mm"), run.err());
        String html = Files.readString(file);
        assertEquals(List.of(), HtmlChecker.findings(file));
        assertTrue(html.contains("<td class=\"number\">400</td>"), "the table begins at the driving condition's speed");
        assertTrue(key(html).contains("<summary>Show the key</summary>"));
    }

    @Test
    void aCircuitWithoutGaugePortsHasNothingToRead() throws IOException {
        String taps = """
                taps:
                  line: {node: line, port: first gauge, between: nothing}
                  middle: {node: middle, port: second gauge, between: nothing}
                  last: {node: last, port: third gauge, between: nothing}
                """;
        String circuit = Run.changed(folder, "training-rig", taps, "");
        Path file = folder.resolve("x.html");
        Run run = lesson(circuit, file);
        assertEquals(2, run.code());
        assertTrue(run.err().contains("has no gauge ports"), run.err());
        assertFalse(Files.exists(file));
    }
}
