package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.FatePhrase;
import hotidle.answer.phrase.HeadroomPhrase;
import hotidle.assess.OilBudget;
import hotidle.cli.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** What stands in each panel of the page in a browser is what the command says of the same state. */
@ExtendWith(LiveBrowser.class)
class LivePageNumbersTest {

    private static final String SPEEDS = "500..4000/50rpm";

    /** As the page has them. */
    private static final Map<String, String> VERDICTS =
            Map.of("fails", "FAILS", "close", "narrow", "holds", "holds", "not_known", "not known");

    private static JsonNode command(String... words) throws IOException {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--format", "json"));
        return new ObjectMapper().readTree(Run.of(all.toArray(String[]::new)).out());
    }

    private static String shown(Quantity quantity, double value) {
        return quantity.number(Quantity.UnitSystem.SHOP, value);
    }

    /** States of a build by their speed [rpm]. */
    private static Map<Long, JsonNode> bySpeed(JsonNode build) {
        Map<Long, JsonNode> states = new HashMap<>();
        for (JsonNode state : build.get("states")) {
            states.put(Math.round(state.get("engine_speed_rpm").asDouble()), state);
        }
        return states;
    }

    @Test
    void theCurveAndItsReferenceAreThoseOfSweep(LivePage page) throws IOException {
        page.open(LivePage.IDLE + "&kept=build%3Drestored%26duty%3Dhot-idle");
        page.click("#curve summary");
        page.until("document.querySelectorAll('#curve tbody tr').length > 0");
        JsonNode sweep = command("sweep", "shuttle-five", "--build", "worn", "--build", "restored", "--speed", SPEEDS);
        Map<Long, JsonNode> worn = bySpeed(sweep.at("/builds/0"));
        Map<Long, JsonNode> restored = bySpeed(sweep.at("/builds/1"));
        List<List<String>> rows = page.cells("#curve tbody tr");
        assertEquals(71, rows.size());
        for (List<String> row : rows) {
            long rpm = Long.parseLong(row.get(0).replace(" rpm", ""));
            JsonNode now = worn.get(rpm);
            assertEquals(
                    List.of(
                            rpm + " rpm",
                            shown(
                                    Quantity.PRESSURE,
                                    now.at("/pressures_pa/line").asDouble()),
                            shown(Quantity.PRESSURE, now.get("set_pressure_pa").asDouble()),
                            shown(
                                    Quantity.PRESSURE,
                                    restored.get(rpm).at("/pressures_pa/line").asDouble())),
                    row);
        }
        String line =
                shown(Quantity.PRESSURE, worn.get(650L).at("/pressures_pa/line").asDouble());
        assertTrue(page.text("#curve-under").startsWith("At 650 rpm: line " + line + " psi"), page.text("#curve"));
    }

    @Test
    void theVerdictAndEachOfItsLimitsAreThoseOfMargins(LivePage page) throws IOException {
        page.open(LivePage.IDLE);
        JsonNode margins = command("margins", "shuttle-five", "--build", "worn", "--speed", "600..3600/1000rpm")
                .at("/builds/0");
        assertEquals(margins.get("summary").asText(), page.text("#verdict .sentence"));
        List<String> told = new ArrayList<>();
        for (JsonNode state : margins.get("states")) {
            for (JsonNode margin : state.get("margins")) {
                JsonNode headroom = margin.get("headroom");
                told.add(String.join(
                        " | ",
                        HeadroomPhrase.of(headroom.isNull() ? Double.NEGATIVE_INFINITY : headroom.asDouble()) + " "
                                + VERDICTS.get(margin.get("verdict").asText()),
                        state.get("duty").asText(),
                        margin.get("why").asText()));
            }
        }
        List<?> seen = (List<?>)
                page.js(
                        "return [...document.querySelectorAll('#verdict tbody tr')].map((row) =>"
                                + " [row.cells[0], row.cells[1], row.querySelector('.how')].map((one) => one.textContent).join(' | '))");
        Set<String> notSeen = new TreeSet<>(told);
        seen.forEach(notSeen::remove);
        // a clutch that holds pulls through too: said only where it is not so
        notSeen.removeIf(one -> one.contains(" holds ") && one.contains("to pull through while slipping"));
        assertEquals(Set.of(), notSeen);
        assertTrue(seen.size() > 150, seen.size() + " limits");
        seen.removeAll(told);
        assertEquals(List.of(), seen);
    }

    /** Oil by what becomes of it and what it is booked under. */
    private static Map<String, Double> budget(JsonNode leaks) {
        Map<String, Double> flows = new LinkedHashMap<>();
        for (JsonNode path : leaks.at("/oil_budget/paths")) {
            OilBudget.Fate fate =
                    OilBudget.Fate.valueOf(path.get("fate").asText().toUpperCase(Locale.ROOT));
            double flow = path.get("flow_m3_s").asDouble();
            flows.merge(FatePhrase.of(fate), flow, Double::sum);
            if (fate == OilBudget.Fate.LEAK || fate == OilBudget.Fate.USED) {
                flows.merge(FatePhrase.of(fate) + " " + path.get("group").asText(), flow, Double::sum);
            }
        }
        return flows;
    }

    @Test
    void whereTheOilGoesAndWhatEachFitCostsIsWhatLeaksSays(LivePage page) throws IOException {
        page.open(LivePage.IDLE);
        JsonNode leaks =
                command("leaks", "shuttle-five", "--build", "worn", "--speed", "600..3600/3000rpm", "--steps", "1");
        Map<String, Double> budget = budget(leaks);
        String fate = "";
        List<List<String>> rows = page.cells("#oil tbody tr");
        for (List<String> row : rows) {
            boolean inner = !budget.containsKey(row.get(0));
            fate = inner ? fate : row.get(0);
            double flow = budget.get(inner ? fate + " " + row.get(0) : fate);
            assertEquals(shown(Quantity.TRICKLE, flow), row.get(1), row.toString());
            double displaced = leaks.at("/oil_budget/displaced_m3_s").asDouble();
            assertEquals(String.format(Locale.ROOT, "%.0f %%", 100 * flow / displaced), row.get(2), row.toString());
        }
        assertTrue(rows.size() >= 8, rows.toString());
        costs(page, leaks);
    }

    private static double held(JsonNode state) {
        return Math.min(
                state.get("line_pa").asDouble(), state.get("set_pressure_pa").asDouble());
    }

    private static void costs(LivePage page, JsonNode leaks) {
        Map<String, List<String>> rows = new HashMap<>();
        List<List<String>> cells = page.cells(".sheet tbody tr");
        List<?> fields = (List<?>) page.js(
                "return [...document.querySelectorAll('.sheet tbody input[type=number]')].map((one) => one.value)");
        List<?> names = (List<?>)
                page.js(
                        "return [...document.querySelectorAll('.sheet tbody input[type=range]')].map((one) => one.getAttribute('aria-label'))");
        for (int i = 0; i < cells.size(); i++) {
            List<String> row = new ArrayList<>(cells.get(i));
            row.set(5, fields.get(i).toString());
            rows.put(names.get(i).toString().replace(' ', '.'), row);
        }
        int matched = 0;
        for (JsonNode repair : leaks.get("repairs")) {
            String cost = shown(Quantity.PRESSURE, held(repair.get("after")) - held(leaks.get("before")));
            for (Map.Entry<String, JsonNode> size : repair.get("sizes").properties()) {
                List<String> row = rows.get(size.getKey());
                Quantity of = size.getValue().get("unit").asText().equals("m") ? Quantity.FIT : Quantity.AREA;
                assertEquals(shown(of, size.getValue().get("to").asDouble()), row.get(1), row.toString());
                assertEquals(shown(of, size.getValue().get("from").asDouble()), row.get(5), row.toString());
                assertEquals(cost, row.get(6).replace(" not alone", ""), row.toString());
                matched++;
            }
        }
        assertTrue(matched >= 31, matched + " sizes");
    }

    /** Words of the parts and nodes of a drawing, by what they belong to. */
    private static final String WORDS = """
            const root = arguments[0] ? new DOMParser().parseFromString(arguments[0], 'image/svg+xml') : document;
            return Object.fromEntries([...root.querySelectorAll('[data-piece]')]
              .filter((piece) => /^(box|tag) /.test(piece.getAttribute('data-piece')))
              .map((piece) => [piece.getAttribute('data-piece'),
                [...piece.querySelectorAll('text')].map((one) => one.textContent).filter((one) => one).join(' / ')]))
            """;

    @Test
    void theDrawingHasTheWordsOfDrawThoughItWasLaidOutForAnotherBuild(LivePage page, @TempDir Path folder)
            throws IOException {
        String circuit = System.getProperty("hotidle.drawn", "training-rig");
        try (Visitor drawn = new Visitor(circuit)) {
            page.open(drawn, "build=worn");
            page.unfoldTheDrawing();
            String other = page.texts("input[name=build] + span").get(0);
            page.choose("build", other);
            page.settled();
            List<String> duties = page.texts("input[name=duty] + span");
            page.choose("duty", duties.get(duties.size() - 1));
            page.settled();
            page.unfoldTheDrawing();
            Path file = folder.resolve("other.svg");
            Run draw = Run.of(
                    "draw", circuit, "--build", other, "--duty", duties.get(duties.size() - 1), "--plot", "" + file);
            assertEquals(0, draw.code(), draw.err());
            Map<?, ?> written = (Map<?, ?>) page.js(WORDS, Files.readString(file));
            assertTrue(written.size() > 8, written.toString());
            assertEquals(new TreeMap<>(written), new TreeMap<>((Map<?, ?>) page.js(WORDS)));
            page.leave();
        }
    }
}
