package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hotidle.cli.Run;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The numbers of a live page are those of the commands for the same state. */
class LiveAnswersTest {

    private static final String IDLE = "{\"build\": \"worn\", \"duty\": \"hot-idle\"}";

    private static Visitor visitor;

    @BeforeAll
    static void open() throws IOException {
        visitor = new Visitor("shuttle-five");
    }

    @AfterAll
    static void close() {
        assertEquals(List.of(), visitor.faults);
        visitor.close();
    }

    private static JsonNode command(String... words) throws IOException {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--format", "json"));
        return new ObjectMapper().readTree(Run.of(all.toArray(String[]::new)).out());
    }

    private static void same(double expected, double now) {
        assertEquals(expected, now, 1e-9 * Math.abs(expected));
    }

    @Test
    void theCurveIsThatOfSweep() throws Exception {
        JsonNode curve = visitor.answer("state", IDLE).get("curve");
        JsonNode states = command("sweep", "shuttle-five", "--build", "worn", "--speed", "500..4000/50rpm")
                .at("/builds/0/states");
        int matched = 0;
        for (int i = 0; i < curve.get("engine_speed_rpm").size(); i++) {
            for (JsonNode state : states) {
                if (Math.abs(state.get("engine_speed_rpm").asDouble()
                                - curve.get("engine_speed_rpm").get(i).asDouble())
                        < 1e-6) {
                    same(
                            state.at("/pressures_pa/line").asDouble(),
                            curve.get("line_pa").get(i).asDouble());
                    matched++;
                }
            }
        }
        assertEquals(71, matched);
    }

    @Test
    void theStateIsThatOfCompareAndItsOilThatOfLeaks() throws Exception {
        JsonNode answer = visitor.answer("state", IDLE);
        JsonNode told = command("compare", "shuttle-five", "--build", "worn", "--speed", "600..3600/3000rpm")
                .at("/builds/0/states");
        JsonNode idle = null;
        for (JsonNode state : told) {
            idle = state.get("duty").asText().equals("hot-idle") ? state : idle;
        }
        JsonNode expected = idle;
        answer.at("/state/pressures_pa")
                .fields()
                .forEachRemaining(node -> assertEquals(
                        expected.at("/pressures_pa").get(node.getKey()).asDouble(),
                        node.getValue().asDouble(),
                        1e-9 * expected.at("/pressures_pa/line").asDouble(),
                        node.getKey()));
        same(expected.at("/figures/leak_m3_s").asDouble(), sum(answer, "leaks"));
        same(expected.at("/pressures_pa/line").asDouble(), answer.get("line_pa").asDouble());
    }

    private static double sum(JsonNode answer, String fate) {
        double sum = 0;
        for (JsonNode end : answer.get("oil")) {
            sum += end.get("fate").asText().equals(fate) ? end.get("flow_m3_s").asDouble() : 0;
        }
        return sum;
    }

    @Test
    void theVerdictAndEachLimitAreThoseOfMargins() throws Exception {
        JsonNode answer = visitor.answer("verdict", IDLE);
        JsonNode margins = command("margins", "shuttle-five", "--build", "worn", "--speed", "600..3600/1000rpm")
                .at("/builds/0");
        assertEquals(margins.get("summary").asText(), answer.get("summary").asText());
        int matched = 0;
        for (JsonNode limit : answer.get("limits")) {
            for (JsonNode state : margins.get("states")) {
                for (JsonNode margin : state.get("margins")) {
                    if (state.get("duty").equals(limit.get("duty"))
                            && margin.get("margin").equals(limit.get("margin"))
                            && margin.get("part").equals(limit.get("part"))) {
                        same(
                                margin.get("headroom").asDouble(),
                                limit.get("headroom").asDouble());
                        assertEquals(margin.get("verdict"), limit.get("verdict"));
                        assertEquals(margin.get("why"), limit.get("why"));
                        matched++;
                    }
                }
            }
        }
        assertEquals(answer.get("limits").size(), matched);
        assertEquals("fails", answer.get("verdict").asText());
        assertTrue(answer.get("no_stall").asText().startsWith("IDLE PRESSURE IS LOW"));
    }

    @Test
    void aFaultAndAnotherSetPressureAreThoseOfTheOptions() throws Exception {
        JsonNode weak = visitor.answer(
                "state",
                "{\"build\": \"restored\", \"duty\": \"hot-idle\", \"faults\": [\"spring-weak@regulator:20%\"]}");
        JsonNode told = command(
                        "sweep",
                        "shuttle-five",
                        "--build",
                        "restored",
                        "--speed",
                        "500..4000/50rpm",
                        "--fault",
                        "spring-weak@regulator:20%")
                .at("/builds/0/states");
        same(told.get(told.size() - 1).at("/pressures_pa/line").asDouble(), last(weak));
        JsonNode raised = visitor.answer("state", "{\"build\": \"restored\", \"set_pressure_pa\": 1500000}");
        JsonNode set = command(
                        "sweep",
                        "shuttle-five",
                        "--build",
                        "restored",
                        "--speed",
                        "500..4000/50rpm",
                        "--set",
                        "1500kPa")
                .at("/builds/0/states");
        same(set.get(set.size() - 1).at("/pressures_pa/line").asDouble(), last(raised));
    }

    private static double last(JsonNode answer) {
        JsonNode line = answer.at("/curve/line_pa");
        return line.get(line.size() - 1).asDouble();
    }

    @Test
    void aTighterHubRaisesTheLineAtIdleAndPutBackItIsTheSameToTheLastBit() throws Exception {
        double worn = visitor.answer("state", IDLE).get("line_pa").asDouble();
        JsonNode sizes = visitor.answer("unit", IDLE).get("sizes");
        JsonNode face = null;
        for (JsonNode size : sizes) {
            face = size.get("name").asText().equals("hub-face.clearance") ? size : face;
        }
        double tight = visitor.answer(
                        "state", sized("hub-face.clearance", face.get("fresh").asDouble()))
                .get("line_pa")
                .asDouble();
        assertTrue(tight > worn * 1.01, tight + " against " + worn);
        assertEquals(
                worn,
                visitor.answer(
                                "state",
                                sized("hub-face.clearance", face.get("value").asDouble()))
                        .get("line_pa")
                        .asDouble());
    }

    private static String sized(String size, double value) {
        return "{\"build\": \"worn\", \"duty\": \"hot-idle\", \"sizes\": {\"" + size + "\": " + value + "}}";
    }

    @Test
    void eightPagesAtOnceDoNotMix() throws Exception {
        List<Double> alone = new ArrayList<>();
        List<String> states = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            states.add("{\"build\": \"worn\", \"duty\": \"hot-idle\", \"engine_speed_rpm\": " + (600 + 40 * i) + "}");
            alone.add(visitor.answer("state", states.get(i)).get("line_pa").asDouble());
        }
        ExecutorService pages = Executors.newFixedThreadPool(8);
        List<Callable<List<Double>>> work = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            int page = i;
            work.add(() -> {
                List<Double> lines = new ArrayList<>();
                for (int n = 1; n <= 5; n++) {
                    String body = visitor.posted("state", Visitor.question("page " + page, n, states.get(page)))
                            .body();
                    lines.add(new ObjectMapper().readTree(body).get("line_pa").asDouble());
                }
                return lines;
            });
        }
        List<Future<List<Double>>> all = pages.invokeAll(work);
        pages.shutdown();
        for (int i = 0; i < 8; i++) {
            for (double line : all.get(i).get()) {
                assertEquals(alone.get(i), line);
            }
        }
    }
}
