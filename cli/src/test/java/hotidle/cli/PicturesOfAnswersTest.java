package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Numbers in the pictures of answers are those of the answers: read back from the SVG. */
class PicturesOfAnswersTest {

    private static final String READINGS = "src/test/golden/files/readings-rig.csv";

    @TempDir
    Path folder;

    private JsonNode json;
    private List<String> texts;
    private String err;

    private void draw(String option, String... words) throws IOException {
        Path file = folder.resolve("drawn.svg");
        List<String> all = new ArrayList<>(Arrays.asList(words));
        all.addAll(List.of(option, file.toString(), "--format", "json"));
        Run run = Run.of(all.toArray(String[]::new));
        assertEquals(0, run.code(), run.err());
        json = new ObjectMapper().readTree(run.out());
        err = run.err();
        String svg = Files.readString(file);
        assertTrue(onA5(svg) >= 2, "letters of " + onA5(svg) + " mm");
        texts = Pattern.compile("<text[^>]*>([^<]*)</text>")
                .matcher(svg)
                .results()
                .map(text -> text.group(1).strip().replace("&gt;", ">").replace("&lt;", "<"))
                .toList();
    }

    /** Height of the smallest letters where the picture is printed as large as a sheet of A5 within a margin of 4 mm holds it [mm]. */
    private static double onA5(String svg) {
        Matcher box = Pattern.compile("viewBox=\"0 0 (\\d+) (\\d+)\"").matcher(svg);
        assertTrue(box.find(), "a picture with a size");
        double wide = Double.parseDouble(box.group(1));
        double high = Double.parseDouble(box.group(2));
        double scale = Math.max(Math.min(202 / wide, 140 / high), Math.min(140 / wide, 202 / high));
        return scale
                * Pattern.compile("font-size[=:]\"? ?([0-9.]+)")
                        .matcher(svg)
                        .results()
                        .mapToDouble(size -> Double.parseDouble(size.group(1)))
                        .min()
                        .orElseThrow();
    }

    private void shows(String text) {
        assertTrue(texts.contains(text), text + " in " + texts);
    }

    private static String rounded(String format, double number) {
        return String.format(Locale.ROOT, format, number);
    }

    @Test
    void everyGaugeReadingStandsInItsPicture() throws IOException {
        draw("--plot", "gauge", "training-rig", "--readings", READINGS, "--units", "metric");
        boolean agrees = json.get("agrees").booleanValue();
        assertFalse(agrees, "the rig's readings are of a fault");
        int out = 0;
        for (JsonNode reading : json.get("readings")) {
            out += reading.get("stands_out").booleanValue() ? 1 : 0;
            boolean pressure = reading.get("reads").textValue().equals("pressure_pa");
            String value = pressure
                    ? rounded("%.2f bar", reading.get("value").doubleValue() / 1e5)
                    : rounded("%.1f L/min", reading.get("value").doubleValue() * 6e4);
            String sense = reading.get("sense").textValue();
            shows((sense.equals("exact") ? "" : sense + " ")
                    + value
                    + (reading.get("stands_out").booleanValue() ? ", STANDS OUT" : ""));
        }
        int stood = out;
        assertTrue(texts.stream().anyMatch(text -> text.contains("DO NOT AGREE") && text.contains(stood + " stand")));
        double share = json.at("/groups/0/believed").doubleValue();
        assertTrue(
                texts.stream().anyMatch(text -> text.startsWith(rounded("%.0f %%", 100 * share))),
                share + " in " + texts);
    }

    @Test
    void everyFitThatTakesALimitAwayHasWhatIsLeftBesideItsBar() throws IOException {
        draw(
                "--plot",
                "wear",
                "crescent-four",
                "--build",
                "restored",
                "--speed",
                "600..3600/3000rpm",
                "--fit",
                "regulator.bore",
                "--fit",
                "pump.face-clearance",
                "--units",
                "metric");
        int gone = 0;
        for (JsonNode fit : json.at("/builds/0/fits")) {
            if (fit.get("gone_at").isNumber() && fit.get("unit").textValue().equals("m")) {
                gone++;
                double left = Math.abs(
                        fit.get("gone_at").doubleValue() - fit.get("as_is").doubleValue());
                String said = rounded("left %.1f um", 1e6 * left);
                assertTrue(texts.stream().anyMatch(text -> text.startsWith(said + " (")), said + " in " + texts);
                assertTrue(texts.stream()
                        .anyMatch(text -> text.startsWith(fit.get("fit").textValue())));
            }
        }
        assertTrue(gone > 0, json.toString());
    }

    @Test
    void everyLimitInDoubtHasItsShareBesideItsBar() throws IOException {
        draw("--plot", "spread", "crescent-four", "--build", "worn", "--samples", "250", "--pairs", "4");
        int shown = 0;
        for (JsonNode margin : json.get("margins")) {
            double holds = margin.at("/holds/share").doubleValue();
            if (holds > 0.01 && holds < 0.99) {
                shown++;
                String share = rounded("%.0f %% (", 100 * holds);
                assertTrue(texts.stream().anyMatch(text -> text.startsWith(share)), share + " in " + texts);
            }
        }
        assertTrue(shown > 0, json.get("margins").toString());
        String all = rounded("%.0f %% (", 100 * json.at("/all_hold/share").doubleValue());
        assertTrue(texts.stream().anyMatch(text -> text.contains("all limits hold in " + all)), all + " in " + texts);
    }

    @Test
    void everyShiftHasItsHeatOverAreaBesideItsBar() throws IOException {
        draw("--plot", "shift", "crescent-four", "--inertia", "0.4kg.m2");
        int found = 0;
        for (JsonNode shift : json.get("shifts")) {
            if (shift.get("heat_over_area_j_m2").isNumber()) {
                found++;
                double heat = shift.get("heat_over_area_j_m2").doubleValue();
                shows(rounded("%.2f", heat / 1e6) + (heat > 1e6 ? "!" : ""));
            }
        }
        assertTrue(found > 0, json.toString());
    }

    @Test
    void eachGaugePortHasAChartThatSaysWhatItReads() throws IOException {
        draw(
                "--plot-taps",
                "sweep",
                "training-rig",
                "--speed",
                "600..1800/600rpm",
                "--readings",
                READINGS,
                "--units",
                "metric");
        assertTrue(texts.stream().anyMatch(text -> text.contains(" bar at 600 rpm, ")), texts.toString());
        assertTrue(err.contains("drawn: "), err);
    }

    /** What is asserted is in {@code draw}: letters that are large enough on a small sheet. */
    @Test
    void curvesTorqueMapsAndPartsCanBeReadOnASmallSheet() throws IOException {
        String[] builds = {"--build", "fresh", "--build", "worn", "--build", "restored"};
        List<String> sweep = new ArrayList<>(List.of("sweep", "crescent-four", "--speed", "600..3000/1200rpm"));
        sweep.addAll(List.of(builds));
        draw("--plot", sweep.toArray(String[]::new));
        builds(texts);
        draw("--plot-film", sweep.toArray(String[]::new));
        builds(texts);
        draw("--plot", "torque", "crescent-four", "--try", "100..180/80psi", "--set-by", "spring");
        draw(
                "--plot",
                "map",
                "crescent-four",
                "--build",
                "restored",
                "--speed",
                "600..3600/3000rpm",
                "--try",
                "100..200/100psi",
                "--vary",
                "regulator.clearance=0.02..0.08/0.06mm");
        draw(
                "--plot",
                "part",
                "annular-gap",
                "bore=14.06mm",
                "valve=14mm",
                "length=8mm",
                "--drop",
                "150psi",
                "--vary",
                "length=1..12mm");
    }

    private static void builds(List<String> texts) {
        for (String build : List.of("fresh", "worn", "restored")) {
            assertTrue(texts.stream().anyMatch(text -> text.contains(build)), build + " in " + texts);
        }
    }

    @Test
    void whatCannotBeDrawnIsSaidAndTheAnswerStands() throws IOException {
        Path file = folder.resolve("none.png");
        Run run = Run.of("shift", "vane-six", "--inertia", "0.4kg.m2", "--plot", file.toString());
        assertEquals(0, run.code(), run.err());
        assertTrue(run.err().contains("not drawn: "), run.err());
        assertFalse(Files.exists(file));
        assertEquals(
                2,
                Run.of("wear", "training-rig", "--plot", folder.resolve("a.gif").toString())
                        .code());
    }

    @Test
    void aPictureIsAPdfWhereItsNameEndsSo() throws IOException {
        Path file = folder.resolve("rig.pdf");
        assertEquals(
                0,
                Run.of(
                                "sweep",
                                "training-rig",
                                "--speed",
                                "600..1800/600rpm",
                                "--plot-taps",
                                file.toString(),
                                "--size",
                                "slide")
                        .code());
        assertTrue(
                new String(Files.readAllBytes(file), java.nio.charset.StandardCharsets.ISO_8859_1).startsWith("%PDF-"));
    }
}
