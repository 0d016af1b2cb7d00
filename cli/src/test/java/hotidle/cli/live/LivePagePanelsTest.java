package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hotidle.answer.format.Quantity;
import hotidle.circuits.Library;
import hotidle.cli.Run;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Gauges, a lesson and a circuit that is written on the page, used in a browser from beginning to end. */
@ExtendWith(LiveBrowser.class)
class LivePagePanelsTest {

    /** Nodes at which the gauges of shuttle-five sit. */
    private static final Map<String, String> NODES =
            Map.of("line", "line", "low", "low", "converter", "apply", "lube", "lube");

    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** Keeps what the program answers, whole. */
    private static final String KEEP = """
            window.told = [];
            const asked = window.fetch;
            window.fetch = async (...all) => {
              const answer = await asked(...all);
              const copy = answer.clone();
              window.told.push([String(all[0]), await copy.text()]);
              return answer;
            };
            """;

    private static JsonNode told(LivePage page, String kind) throws Exception {
        return MAPPER.readTree(
                (String) page.js("return window.told.filter(([at]) => at === 'api/' + arguments[0]).pop()[1]", kind));
    }

    @Test
    void gaugesShowThePressuresOfCompareAndReadingsWhatTheProgramSaysOfThem(LivePage page) throws Exception {
        page.open(LivePage.IDLE);
        page.until("document.querySelectorAll('.scales li').length > 3");
        JsonNode idle = null;
        for (JsonNode state : MAPPER.readTree(Run.of(
                                "compare",
                                "shuttle-five",
                                "--build",
                                "worn",
                                "--speed",
                                "600..3600/3000rpm",
                                "--format",
                                "json")
                        .out())
                .at("/builds/0/states")) {
            idle = state.get("duty").asText().equals("hot-idle") ? state : idle;
        }
        int matched = 0;
        for (List<String> gauge : page.lists("return [...document.querySelectorAll('.scales li')].map((one) =>"
                + " [one.querySelector('h3').textContent, one.querySelector('.figures').textContent])")) {
            if (NODES.containsKey(gauge.get(0))) {
                double pressure =
                        idle.at("/pressures_pa/" + NODES.get(gauge.get(0))).asDouble();
                assertEquals(
                        Quantity.PRESSURE.with(Quantity.UnitSystem.SHOP, pressure) + " "
                                + Quantity.PRESSURE.with(Quantity.UnitSystem.METRIC, pressure),
                        gauge.get(1),
                        gauge.get(0));
                matched++;
            }
        }
        assertEquals(4, matched);
        page.js(KEEP);
        page.type("[aria-label^='Read at line [']", "90");
        page.until("document.querySelector('.causes .sentence')");
        page.settled();
        JsonNode causes = told(page, "causes").get("told");
        assertEquals(causes.get("verdict").asText(), page.text(".causes .sentence"));
        List<String> named = new ArrayList<>();
        causes.get("causes").forEach(one -> named.add(one.asText()));
        assertEquals(named, page.texts(".causes .shares li"));
        page.click("#undo");
        page.settled();
        assertEquals("", page.js("return document.querySelector(\"[aria-label^='Read at line [']\").value"));
    }

    @Test
    void aLessonGoesFromAHiddenFaultToWhatItWasAndTellsItNowhereBefore(LivePage page) throws Exception {
        try (Visitor rig = new Visitor("training-rig")) {
            page.open(rig, "build=worn");
            page.js(KEEP);
            page.click("#lesson .fold");
            page.until("document.querySelectorAll('#lesson .begin select option').length > 0");
            assertEquals("worn", page.find("#lesson .begin select").getDomProperty("value"), "the build of the page");
            page.type("#lesson .begin input[type=number]", "11");
            press(page, "Hide a fault");
            page.until(
                    "document.querySelector('#lesson .sentence[role=status]').textContent.includes('no reading taken yet')");
            page.until("document.querySelector('#gauges .beside').checkVisibility()"
                    + " && !document.querySelector('.scales').checkVisibility()"); // of a unit without the fault
            List<String> offered = new ArrayList<>();
            told(page, "lesson-offer")
                    .get("faults")
                    .forEach(fault -> offered.add(fault.get("name").asText()));
            assertTrue(offered.size() > 3, offered.toString());
            readTheGauge(page);
            readTheGauge(page);
            String before = page.js(
                            "return document.documentElement.outerHTML + JSON.stringify(window.told) + location.href"
                                    + " + Object.values(sessionStorage).join() + history.state + document.cookie")
                    .toString();
            Set<Integer> counts = new HashSet<>();
            for (String name : offered) {
                counts.add(before.split("\"" + Pattern.quote(name) + "\\\\?\"", -1).length);
            }
            assertEquals(1, counts.size(), "a fault is named more often than another: " + counts);
            page.driver.navigate().refresh();
            page.settled();
            page.until("document.querySelectorAll('#lesson .readings tbody tr').length === 2");
            page.js(KEEP);
            page.js(
                    "[...document.querySelectorAll('#lesson button')].find((one) => one.textContent.startsWith('That is my answer')).click()");
            page.until("!document.querySelector('#lesson .revealed').hidden");
            page.until("document.querySelector('.scales').checkVisibility()");
            JsonNode revealed = told(page, "lesson-reveal");
            String text = page.text("#lesson .revealed");
            assertTrue(offered.stream().anyMatch(name -> revealed.toString().contains(name)), revealed.toString());
            for (JsonNode read : revealed.get("read")) {
                String shown = Quantity.PRESSURE.with(
                        Quantity.UnitSystem.SHOP, read.get("pressure_pa").asDouble());
                assertTrue(text.contains(shown), shown + " in " + text);
            }
            assertTrue((Long) page.js("return document.querySelectorAll('#lesson .revealed canvas').length") > 0, text);
            page.until("window.told.some(([at]) => at === 'api/lesson-review') && window.awaited === 0");
            PageChecks.tidyAtAnyWidth(page, "lesson");
            PageChecks.cleanAtAnyWidth(page, "a lesson after its end");
            PageChecks.keysReachAll(page);
            press(page, "Another lesson");
            page.type("#lesson .begin input[type=number]", "12");
            press(page, "Hide a fault");
            page.until(
                    "document.querySelector('#lesson .sentence[role=status]').textContent.includes('no reading taken yet')");
            page.leave();
        }
    }

    private static void press(LivePage page, String name) {
        page.js(
                "[...document.querySelectorAll('#lesson button')].find((one) => one.textContent === arguments[0]).click()",
                name);
    }

    private static void readTheGauge(LivePage page) {
        long rows = (Long) page.js("return document.querySelectorAll('#lesson .readings tbody tr').length");
        press(page, "Read the gauge");
        page.until("document.querySelectorAll('#lesson .readings tbody tr').length === " + (rows + 1));
    }

    /** Marks a piece of the text, as a mouse does. */
    private static final String MARK = """
            const field = document.getElementById('written');
            const at = field.value.indexOf(arguments[0]);
            field.focus();
            field.setSelectionRange(at, at + arguments[0].length);
            return at
            """;

    private static void retype(LivePage page, String old, String other) {
        assertTrue((Long) page.js(MARK, old) >= 0, old);
        page.driver.switchTo().activeElement().sendKeys(other);
    }

    @Test
    void threeFaultsTypedIntoACircuitAreToldAtTheirLinesAsCheckDoes(LivePage page, @TempDir Path folder)
            throws Exception {
        try (Visitor rig = new Visitor("training-rig")) {
            page.open(rig, "build=worn");
            page.click("#write .fold");
            page.until("document.querySelectorAll('#write select option').length > 0");
            page.js("document.querySelector('#write select').value = 'training-rig'");
            page.js(
                    "[...document.querySelectorAll('#write button')].find((one) => one.textContent === 'Begin with it').click()");
            page.until("document.getElementById('written').value.startsWith('# training-rig')");
            page.until("document.getElementById('written-said').textContent.startsWith('No error')");
            retype(page, "10 mm2/s", "10 furlong");
            retype(page, "12 cm3/rev", "-12 cm3/rev");
            retype(page, "port: third gauge", "prt: third gauge");
            page.until("document.getElementById('written-said').textContent.startsWith('3 errors')");
            String text = (String) page.js("return document.getElementById('written').value");
            assertEquals(
                    Library.text("training-rig")
                            .orElseThrow()
                            .replace("10 mm2/s", "10 furlong")
                            .replace("12 cm3/rev", "-12 cm3/rev")
                            .replace("port: third gauge", "prt: third gauge"),
                    text);
            Path file = Files.writeString(folder.resolve("circuit.yaml"), text);
            List<String> places = new ArrayList<>();
            Matcher place = Pattern.compile("(?m)^.*circuit.yaml:(\\d+):(\\d+): error: (.*)$")
                    .matcher(Run.of("check", file.toString()).err());
            while (place.find()) {
                places.add("line " + place.group(1) + ", column " + place.group(2) + " error: " + place.group(3));
            }
            List<String> seen = page.texts("#write .problems li");
            assertEquals(3, places.size(), places.toString());
            for (int i = 0; i < places.size(); i++) {
                assertTrue(seen.get(i).startsWith(places.get(i)), seen.get(i) + " against " + places.get(i));
            }
            page.click("#write .problems li:nth-child(2) button");
            String marked = (String) page.js("const field = document.activeElement;"
                    + " return field.value.slice(field.selectionStart, field.selectionEnd)");
            assertFalse(marked.isEmpty());
            retype(page, "10 furlong", "10 mm2/s");
            retype(page, "-12 cm3/rev", "12 cm3/rev");
            retype(page, "prt: third gauge", "port: third gauge");
            page.until("document.getElementById('written-said').textContent.startsWith('No error')");
            page.until("document.querySelector('#write .picture:not(.old) svg')");
            page.leave();
        }
    }

    /** On paper a heading stands there, which the page has above it. */
    @Test
    void theDrawingBeginsAtTheTopOfItsPanel(LivePage page) throws Exception {
        try (Visitor visitor =
                new Visitor("training-rig", Library.text("training-rig").orElseThrow(), Visitor.SEARCHED)) {
            page.open(visitor, "");
            page.unfoldTheDrawing();
            double above = ((Number) page.js("const svg = document.querySelector('#drawing .picture svg');"
                            + " return svg.getBBox().y - svg.viewBox.baseVal.y"))
                    .doubleValue();
            assertTrue(above >= 4 && above <= 5, "room above [mm]: " + above);
            page.leave();
        }
    }
}
