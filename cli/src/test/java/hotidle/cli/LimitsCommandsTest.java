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

/** window and wear as a user meets them. */
class LimitsCommandsTest {

    private static Run window(String... more) {
        return run(List.of("window", "shuttle-five", "--try", "60..360/150psi", "--speed", "600..3600/600rpm"), more);
    }

    private static Run map(String... more) {
        return run(List.of("map", "shuttle-five", "--try", "60..360/150psi", "--speed", "600..3600/600rpm"), more);
    }

    private static Run wear(String... more) {
        return run(List.of("wear", "shuttle-five", "--speed", "600..3600/600rpm", "--fit", "hub-bushing.bore"), more);
    }

    private static Run run(List<String> first, String... more) {
        List<String> all = new java.util.ArrayList<>(first);
        all.addAll(List.of(more));
        return Run.of(all.toArray(new String[0]));
    }

    @Test
    void theWornUnitHasNoWindowForAReasonAndTheRestoredOneHas() {
        Run run = window("--build", "worn", "--build", "restored", "--full");
        assertEquals(0, run.code(), run.err());
        String words = run.out().replaceAll("\\s+", " ");
        assertTrue(
                words.contains(
                        "worn: NO SET PRESSURE from 60 psi to 360 psi holds every limit, because apply, holding (low-clutch) at stall needs at"
                                + " least 1"),
                words);
        assertTrue(words.contains("at hot-idle allows at most"), words);
        assertTrue(words.contains("restored: every limit that is known holds from 13"), words);
        assertTrue(
                words.contains("pump inlet pump-inlet <= 60 psi >= 360 psi"),
                "a limit that no pressure tried has reached says between which it looked");
        assertTrue(run.out().indexOf("wheels blocked") < run.out().indexOf("set pressure that each limit allows"));
    }

    @Test
    void windowGivesEveryPointTriedInJsonAndARowALimitInCsv() throws Exception {
        JsonNode build = new ObjectMapper()
                .readTree(window("--build", "restored", "--format", "json").out())
                .at("/builds/0");
        assertEquals(3, build.get("points").size());
        JsonNode all = build.at("/all_hold/0");
        assertTrue(all.get("low_pa").doubleValue() < all.get("high_pa").doubleValue());
        assertTrue(all.get("low_by").textValue().contains("reverse-brake"));
        String csv = window("--build", "restored", "--format", "csv").out();
        assertTrue(csv.contains("restored,unit-load,hub-bushing,<=60,"), csv);
        assertTrue(csv.lines().anyMatch(line -> line.startsWith("restored,all,")), csv);
    }

    @Test
    void wearSaysAtWhichSizeWhichLimitIsGoneInMillimetresAndInches() throws Exception {
        Run run = wear("--build", "restored-raised", "--full");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("hub film (hub-bushing), reverse-stall"), run.out());
        assertTrue(run.out().replaceAll("\\s+", " ").contains("all fits together may wear to"), run.out());
        JsonNode fit = new ObjectMapper()
                .readTree(wear("--build", "restored-raised", "--format", "json").out())
                .at("/builds/0/fits/0");
        assertEquals("hub-bushing.bore", fit.get("fit").textValue());
        double gone = fit.get("gone_at").doubleValue();
        assertTrue(gone > 0.050055 && gone < 0.0502, gone + " m");
        assertTrue(run.out().contains(String.format(java.util.Locale.ROOT, " %.3f ", gone * 1e3)), run.out());
        assertTrue(wear("--format", "csv", "--build", "restored-raised").out().contains("hub-bushing.bore,0.05007,"));
    }

    @Test
    void theHeadlineOfAWornBuildSaysHowWornItIsAndThatAllTogetherCountsFromNew() {
        String fresh = four("fresh");
        assertTrue(fresh.contains("fresh: all fits together may wear to"), fresh);
        String worn = four("worn");
        assertTrue(
                worn.matches(
                        ".* worn: \\d+ of its \\d+ fits are worn already, \\d+ to 1\\d\\d % of the way from new to their written limits"
                                + " \\([1-9]\\d* past theirs\\). Counted from new, not from there, all fits together may wear to .*"),
                worn);
    }

    private static String four(String build) {
        Run run = Run.of(
                "wear",
                "crescent-four",
                "--build",
                build,
                "--fit",
                "plate.gap",
                "--full",
                "--speed",
                "800..2400/800rpm");
        assertEquals(0, run.code(), run.err());
        return run.out().replaceAll("\\s+", " ");
    }

    @Test
    void wrongInputIsToldWithWhatIsRight() {
        assertEquals(2, window("--set", "100psi").code());
        Run run = Run.of("wear", "shuttle-five", "--fit", "hub-bushing.bor");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("hub-bushing.bore"), run.err());
    }

    private static final String VARY = "hub-bushing.clearance=0.06..0.14/0.08mm";

    @Test
    void theMapNamesBuildLimitAndLineAndItsNumbersComeInEveryForm(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("map.svg");
        Run run = map("--build", "restored-raised", "--vary", VARY, "--plot", file.toString(), "--units", "metric");
        assertEquals(0, run.code(), run.err());
        String svg = Files.readString(file);
        assertTrue(svg.contains("hub-bushing.clearance [mm]"), "axis");
        assertTrue(svg.contains("set pressure [bar]"), "axis");
        assertTrue(svg.contains("restored-raised: +"), "its own point");
        assertTrue(svg.contains("as measured: "), "the point before repair");
        assertTrue(svg.contains("An estimate, not an approval"), "caution");
        assertTrue(run.out().contains("restored-raised with that size as measured, hub-bushing.clearance 0.135 mm"));
        JsonNode map = new ObjectMapper()
                .readTree(map("--build", "restored-raised", "--vary", VARY, "--format", "json")
                        .out())
                .at("/builds/0/map");
        // three pressures and the build's own, two sizes and those of both marks
        assertEquals(4 * 4, map.get("points").size());
        assertEquals("restored-raised", map.at("/named_points/0/name").textValue());
        assertEquals(0.055e-3, map.at("/named_points/0/size").doubleValue(), 1e-12);
        String csv = map("--build", "restored-raised", "--vary", VARY, "--format", "csv")
                .out();
        assertEquals(1 + 4 * 4 + 3, csv.lines().count(), csv);
        assertEquals(List.of("map.svg"), List.of(folder.toFile().list()));
    }

    @Test
    void aSizeThatIsNotThereIsAnsweredWithTheNearestAndNothingIsDrawn(@TempDir Path folder) {
        String file = folder.resolve("map.png").toString();
        String[][] wrong = {
            {"hub-bushin.clearance=0.02..0.15mm", "did you mean hub-bushing"},
            {"hub-bushing.clearence=0.02..0.15mm", "did you mean clearance"},
            {"hub-bushing=0.02..0.15mm", "valid: bore, clearance, hub"},
            {"hub-bushing.clearance=0.15..0.02mm", "exchange the two ends"},
            {"hub-bushing.clearance=0.02..0.15psi", "is the unit of a pressure"},
            {"hub-bushing.clearance=0.02..0.15", "a number without its unit"},
            {"hub-bushing.clearance=0..0.15mm", "above zero"},
            {"hub-bushing.bore=49..51mm", "49mm is impossible"},
            {"hub-bushing.clearance=0.02..0.15/0.001mm", "60 at most"},
            {"hub-bushing.clearance", "write --vary hub-bushing.clearance=0.02..0.15mm"}
        };
        for (String[] one : wrong) {
            Run run = map("--build", "worn-raised", "--vary", one[0], "--plot", file);
            assertEquals(2, run.code(), one[0] + ": " + run.err());
            assertTrue(run.err().contains(one[1]), one[0] + ": " + run.err());
            assertEquals("", run.out());
        }
        assertEquals(2, map("--plot", file).code());
        assertEquals(0, folder.toFile().list().length);
    }
}
