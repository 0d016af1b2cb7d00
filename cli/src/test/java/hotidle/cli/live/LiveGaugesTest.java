package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hotidle.answer.ReadyCircuits;
import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity;
import hotidle.cli.Run;
import hotidle.fault.UnitFaults;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Gauges of the live page show what the commands do, and readings typed in there say what {@code gauge} says of them. Past 300 lines:
 * every setting and every wrong row of one server.
 */
class LiveGaugesTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String IDLE = "{\"build\": \"worn\", \"duty\": \"hot-idle\"}";

    @TempDir
    private static Path folder;

    private static Visitor visitor;
    private static Path sample;

    @BeforeAll
    static void open() throws IOException {
        visitor = new Visitor("shuttle-five");
        sample = folder.resolve("readings.csv");
        Files.writeString(sample, """
                tap,range,engine speed,oil temperature,temperature unit,reading,unit,gauge accuracy
                line,first,650,230,degF,152,psi,2 %
                direct,third,650,230,degF,120,psi,2 %
                """);
    }

    @AfterAll
    static void close() {
        assertEquals(List.of(), visitor.faults);
        visitor.close();
    }

    private static JsonNode command(String... words) throws IOException {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--format", "json"));
        return MAPPER.readTree(Run.of(all.toArray(String[]::new)).out());
    }

    private static void same(double expected, double now) {
        assertEquals(expected, now, 1e-9 * Math.abs(expected));
    }

    private static long number;

    private static HttpResponse<String> posted(String kind, String state, JsonNode gauges) throws Exception {
        ObjectNode question = (ObjectNode) MAPPER.readTree(Visitor.question("gauges", ++number, state));
        question.set("gauges", gauges);
        return visitor.posted(kind, question.toString());
    }

    private static JsonNode answer(String kind, String state, JsonNode gauges) throws Exception {
        HttpResponse<String> response = posted(kind, state, gauges);
        assertEquals(200, response.statusCode(), response.body());
        return MAPPER.readTree(response.body());
    }

    private static LiveUnit unit() {
        return new LiveUnit(ReadyCircuits.read("shuttle-five"), "shuttle-five", Quantity.UnitSystem.SHOP, "worn");
    }

    private static LiveQuestion question(String state, JsonNode gauges) throws IOException {
        ObjectNode question = (ObjectNode) json(Visitor.question("alone", 1, state));
        question.set("gauges", gauges);
        return Json.read(question.toString().getBytes(StandardCharsets.UTF_8), LiveQuestion.class);
    }

    private static JsonNode json(String text) throws IOException {
        return MAPPER.readTree(text);
    }

    /** The rows of a sheet as the page takes them over. */
    private static ObjectNode taken(Path sheet) throws Exception {
        ObjectNode gauges = MAPPER.createObjectNode();
        gauges.put("file", sheet.getFileName().toString());
        ObjectNode handed = gauges.deepCopy().put("sheet", Files.readString(sheet));
        JsonNode answered = answer("readings-taken", IDLE, handed);
        assertTrue(answered.get("good").asBoolean(), answered.toString());
        gauges.set("readings", answered.get("rows"));
        return gauges;
    }

    @Test
    void gaugesInADrivingConditionShowThePressuresOfCompareAndOfTheCurve() throws Exception {
        JsonNode shown = answer("gauges", IDLE, json("{}"));
        JsonNode told = command("compare", "shuttle-five", "--build", "worn", "--speed", "600..3600/3000rpm")
                .at("/builds/0/states");
        JsonNode idle = null;
        for (JsonNode state : told) {
            idle = state.get("duty").asText().equals("hot-idle") ? state : idle;
        }
        JsonNode nodes = json("{\"line\": \"line\", \"low\": \"low\", \"converter\": \"apply\", \"lube\": \"lube\"}");
        for (JsonNode gauge : shown.get("gauges")) {
            if (nodes.has(gauge.get("tap").asText())) {
                same(
                        idle.at("/pressures_pa/"
                                        + nodes.get(gauge.get("tap").asText()).asText())
                                .asDouble(),
                        gauge.get("pressure_pa").asDouble());
            }
        }
        assertEquals(7, shown.get("gauges").size());
        assertEquals("hot-idle", shown.get("like").asText());
        same(
                idle.get("engine_speed_rpm").asDouble(),
                shown.get("engine_speed_rpm").asDouble());
        same(
                visitor.answer("state", IDLE).get("line_pa").asDouble(),
                shown.at("/gauges/0/pressure_pa").asDouble());
    }

    @Test
    void eachReadingStandsBesideWhatGaugeExpectsThereAndItsCausesAreThoseOfTheCommand() throws Exception {
        ObjectNode gauges = taken(sample);
        JsonNode told = command("gauge", "shuttle-five", "--build", "worn", "--readings", sample.toString());
        JsonNode beside = answer("gauges", IDLE, gauges).get("readings");
        for (int i = 0; i < 2; i++) {
            same(
                    told.at("/readings/" + i + "/sound_mean").asDouble(),
                    beside.get(i).get("model").asDouble());
            same(
                    told.at("/readings/" + i + "/value").asDouble(),
                    beside.get(i).get("value").asDouble());
        }
        String faulty = IDLE.replace("}", ", \"faults\": [\"spring-weak@regulator:30%\"]}");
        assertTrue(answer("ahead", faulty, gauges).get("solved").asBoolean(), "what they are compared with, first");
        JsonNode answered = answer("causes", faulty, gauges);
        ObjectNode whole = (ObjectNode) told;
        whole.putNull("fits_together");
        assertEquals(
                whole,
                answered.get("gauge"),
                "all fits together are not asked for; a fault laid over is none of a sound build");
        JsonNode agreement = answer("agreement", faulty, gauges);
        assertEquals(answered.at("/told/verdict"), agreement.at("/told/verdict"), "told at once");
        assertEquals(answered.at("/gauge/readings"), agreement.at("/gauge/readings"));
        assertEquals(0, agreement.at("/gauge/causes").size());
        JsonNode likely = answer("likely", faulty, gauges);
        assertEquals(answered.at("/told/causes"), likely.at("/told/causes"), "then the causes");
        assertEquals(0, likely.at("/told/next").size());
        assertEquals(answered, answer("causes", faulty, gauges), "remembered or not");
        String verdict = answered.at("/told/verdict").asText();
        assertTrue(verdict.startsWith("worn, 2 readings of readings.csv: THEY DO NOT AGREE"), verdict);
        assertTrue(answered.at("/told/causes").size() > 1);
        assertEquals(
                UnitFaults.of(ReadyCircuits.read("shuttle-five").adjustable("worn"))
                        .size(),
                answered.at("/told/faults").size());
    }

    @Test
    void whatThePageHandsOutGaugeReadsAndSaysTheSameOfAChangedBuildAndOfWhatWasSet() throws Exception {
        String changed = IDLE.replace("}", ", \"sizes\": {\"hub-face.clearance\": 4e-5}}");
        ObjectNode gauges = (ObjectNode)
                json(
                        "{\"range\": \"reverse\", \"engine_speed_rpm\": 1500, \"sump_temperature_c\": 80,"
                                + " \"commanded_pa\": 1200000, \"readings\": [{\"tap\": \"line\", \"range\": \"reverse\","
                                + " \"engine speed\": \"1500\", \"oil temperature\": \"80\", \"temperature unit\": \"degC\","
                                + " \"commanded pressure\": \"12 bar\", \"reading\": \"9\", \"unit\": \"bar\", \"gauge accuracy\": \"2 %\"}]}");
        JsonNode file = answer("readings-file", changed, gauges);
        assertEquals("shuttle-five-readings.csv", file.get("name").asText());
        Path readings = folder.resolve(file.get("name").asText());
        Files.writeString(readings, file.get("text").asText());
        assertEquals(gauges.get("readings"), taken(readings).get("readings"), "what is handed out is taken back");
        JsonNode build = answer("build-file", changed, gauges);
        Path circuit = folder.resolve(build.get("name").asText());
        Files.writeString(circuit, build.get("text").asText());
        JsonNode told = command("gauge", circuit.toString(), "--build", "changed", "--readings", readings.toString());
        JsonNode shown = answer("gauges", changed, gauges);
        same(
                told.at("/readings/0/sound_mean").asDouble(),
                shown.at("/gauges/0/pressure_pa").asDouble());
        same(
                told.at("/readings/0/sound_mean").asDouble(),
                shown.at("/readings/0/model").asDouble());
        assertEquals("reverse", shown.get("range").asText());
        JsonNode gauge = answer("causes", changed, gauges).get("gauge");
        assertEquals("worn, changed", gauge.get("build").asText());
        for (String number : List.of("chi_square", "probability", "none_of_these")) {
            assertEquals(told.get(number).asDouble(), gauge.get(number).asDouble(), 1e-6, number);
        }
        assertEquals(told.at("/causes/0/fault"), gauge.at("/causes/0/fault"));
        assertEquals(
                told.at("/causes/0/believed").asDouble(),
                gauge.at("/causes/0/believed").asDouble(),
                1e-6);
    }

    @Test
    void coldOilHoldsTheLineWhereHotOilDoesNot() throws Exception {
        double warm = answer("gauges", IDLE, json("{\"sump_temperature_c\": 20}"))
                .at("/gauges/0/pressure_pa")
                .asDouble();
        assertTrue(warm
                > answer("gauges", IDLE, json("{}")).at("/gauges/0/pressure_pa").asDouble());
    }

    @Test
    void aReportIsAskedForOfTheBuildAsThePageHasItAndSaysWhatItLeavesOut() throws Exception {
        ObjectNode gauges = taken(sample);
        String written = answer("report-file", IDLE, gauges).get("text").asText();
        assertTrue(written.contains("changed=Optional.empty, build=worn, units=SHOP, notes=[]"), written);
        assertTrue(written.contains("sheet=readings.csv"), written);
        String state = "{\"build\": \"worn\", \"engine_speed_rpm\": 700, \"faults\": [\"spring-weak@regulator:30%\"],"
                + " \"sizes\": {\"hub-face.clearance\": 4e-5}}";
        JsonNode changed = answer("report-file", state, gauges);
        assertEquals("shuttle-five-report.html", changed.get("name").asText());
        String text = changed.get("text").asText();
        assertTrue(text.contains("name=shuttle-five-changed.yaml"), text);
        assertTrue(text.contains("build=changed"), text);
        assertTrue(text.contains("without its faults"), text);
        assertTrue(text.contains("driving conditions as written"), text);
        assertTrue(answer("report-file", IDLE, json("{}")).get("text").asText().contains("readings=Optional.empty"));
    }

    @Test
    void aFaultLaidOverMovesTheGauges() throws Exception {
        String faulty = "{\"build\": \"worn\", \"duty\": \"hot-idle\", \"faults\": [\"spring-weak@regulator:30%\"]}";
        ObjectNode gauges = taken(sample);
        gauges.put("engine_speed_rpm", 2000);
        double sound =
                answer("gauges", IDLE, gauges).at("/gauges/0/pressure_pa").asDouble();
        assertTrue(answer("gauges", faulty, gauges).at("/gauges/0/pressure_pa").asDouble() < 0.98 * sound);
    }

    @Test
    void aReadingThatCannotBeIsLeftOutWithItsReasonAndTheOthersCount() throws Exception {
        ObjectNode gauges = taken(sample);
        ArrayNode rows = (ArrayNode) gauges.get("readings");
        rows.add(json(
                "{\"tap\": \"line\", \"range\": \"first\", \"engine speed\": \"650\", \"oil temperature\": \"230 degF\","
                        + " \"reading\": \"152 apples\", \"gauge accuracy\": \"2 %\"}"));
        rows.add(json("{\"tap\": \"low\", \"range\": \"first\"}"));
        JsonNode beside = answer("gauges", IDLE, gauges).get("readings");
        assertFalse(beside.get(2).get("taken").asBoolean());
        assertTrue(beside.get(2).get("wrong").asText().contains("152 apples"), beside.toString());
        assertTrue(beside.get(2).get("mend").asText().contains("psi"), beside.toString());
        assertEquals("", beside.get(3).get("wrong").asText(), "one that is yet to be taken is not wrong");
        assertEquals(
                2,
                new LiveGauges(unit())
                        .readings(question(IDLE, gauges))
                        .orElseThrow()
                        .readings()
                        .size());
        HttpResponse<String> none = posted("causes", IDLE, json("{}"));
        assertEquals(422, none.statusCode());
        assertTrue(none.body().contains("no reading is taken yet"), none.body());
    }

    @Test
    void aSheetWithAnErrorIsNotTakenOverAtAllAndSaysWhatGaugeSays() throws Exception {
        String text = """
                tap,range,engine speed,oil temperature,reading,unit,gauge accuracy
                line,first,650,230 degF,152,psi,2 %
                lyne,first,650,230 degF,152,psi,2 %
                """;
        JsonNode refused = answer(
                "readings-taken",
                IDLE,
                MAPPER.createObjectNode().put("sheet", text).put("file", "day.csv"));
        assertFalse(refused.get("good").asBoolean());
        assertEquals(0, refused.get("rows").size());
        String said = refused.at("/problems/0").asText();
        assertTrue(said.startsWith("day.csv:3:1: error: there is no tap 'lyne'") && said.contains("line"), said);
        JsonNode empty = answer(
                "readings-taken",
                IDLE,
                MAPPER.createObjectNode()
                        .put(
                                "sheet",
                                Run.of("sheet", "shuttle-five", "--readings", "--units", "shop")
                                        .out()));
        assertTrue(empty.get("good").asBoolean(), "a sheet that is yet to be filled in is taken over");
        assertTrue(empty.get("rows").size() > 5);
    }

    @Test
    void workAtCausesEndsWithTheFaultThatIsBeingSolvedOnceNobodyWaits() throws Exception {
        LiveQuestion asked = question(IDLE, taken(sample));
        AtomicInteger steps = new AtomicInteger();
        Runnable second = () -> {
            if (steps.incrementAndGet() > 1) {
                throw new Newest.GivenUpException("a newer question has come");
            }
        };
        LiveGauges gauges = new LiveGauges(unit());
        assertThrows(Newest.GivenUpException.class, () -> gauges.causes(asked, Quantity.UnitSystem.SHOP, second));
        int all = UnitFaults.of(unit().circuit().adjustable("worn")).size();
        assertTrue(steps.get() < all / 2, steps + " of " + all);
        assertEquals("state", LiveAnswers.outdoneBy("causes"));
        assertEquals("state", LiveAnswers.outdoneBy("ahead"));
    }

    @Test
    void aScriptInANoteATapOrAFileNameStaysText() throws Exception {
        String script = "<script>alert(1)</script><img src=x onerror=alert(2)>";
        ObjectNode gauges = taken(sample);
        ((ObjectNode) gauges.at("/readings/0")).put("note", script);
        gauges.put("file", script);
        HttpResponse<String> shown = posted("gauges", IDLE, gauges);
        assertEquals(
                "application/json; charset=utf-8",
                shown.headers().firstValue("Content-Type").orElseThrow());
        Path written = folder.resolve("script.csv");
        Files.writeString(
                written, answer("readings-file", IDLE, gauges).get("text").asText());
        assertEquals(script, taken(written).at("/readings/0/note").asText());
        ((ObjectNode) gauges.at("/readings/0")).put("tap", script);
        JsonNode wrong = answer("gauges", IDLE, gauges).at("/readings/0");
        assertEquals("there is no tap '" + script + "'", wrong.get("wrong").asText());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "3",
                "[]",
                "{\"surprise\": 1}",
                "{\"readings\": 3}",
                "{\"readings\": [null]}",
                "{\"readings\": [{\"tap\": null}]}",
                "{\"readings\": [{\"nosuch column\": \"3\"}]}",
                "{\"engine_speed_rpm\": \"fast\"}"
            })
    void brokenGaugesAreRefusedAndSaySo(String gauges) throws Exception {
        for (String kind : List.of("gauges", "ahead", "causes", "readings-file", "readings-taken")) {
            HttpResponse<String> refused = posted(kind, IDLE, json(gauges));
            assertEquals(400, refused.statusCode(), kind + " " + gauges + " " + refused.body());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"range\": \"ninth\"}",
                "{\"engine_speed_rpm\": 1e9}",
                "{\"sump_temperature_c\": 900}",
                "{\"commanded_pa\": -1}"
            })
    void gaugesThatCannotBeSetSoAreRefusedWithTheirReason(String gauges) throws Exception {
        HttpResponse<String> refused = posted("gauges", IDLE, json(gauges));
        assertEquals(422, refused.statusCode(), refused.body());
    }
}
