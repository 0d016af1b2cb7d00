package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hotidle.cli.Run;
import hotidle.result.SolveCount;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The numbers of a live page are those of the commands for the same state. Past 300 lines, since each thing that can be turned or asked
 * there has its statement here, over one server.
 */
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
                .properties()
                .forEach(node -> assertEquals(
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

    /** A line that holds is no leave to set it so: what may be set is what window finds, with what fails there. */
    @Test
    void whatMayBeSetIsThatOfWindow() throws Exception {
        JsonNode none = visitor.answer("window", IDLE);
        JsonNode window = command(
                        "window",
                        "shuttle-five",
                        "--build",
                        "worn",
                        "--try",
                        "60..260/100psi",
                        "--speed",
                        "600..3600/1000rpm")
                .at("/builds/0");
        assertEquals(0, none.get("ranges").size(), none.toString());
        String because = window.get("summary").asText().split("because ", -1)[1];
        assertTrue(
                none.get("said").asText().startsWith("May be set to NO PRESSURE from 60 psi to 260 psi"),
                none.toString());
        assertTrue(none.get("said").asText().endsWith(because), none + " " + because);

        JsonNode held = visitor.answer("window", "{\"build\": \"restored\", \"duty\": \"hot-idle\"}");
        JsonNode told = command(
                        "window",
                        "shuttle-five",
                        "--build",
                        "restored",
                        "--try",
                        "60..260/100psi",
                        "--speed",
                        "600..3600/1000rpm")
                .at("/builds/0");
        assertEquals(1, held.get("ranges").size(), held.toString());
        same(
                told.at("/all_hold/0/low_pa").asDouble(),
                held.at("/ranges/0/low_pa").asDouble());
        same(
                told.at("/all_hold/0/high_pa").asDouble(),
                held.at("/ranges/0/high_pa").asDouble());
        assertTrue(held.get("said").asText().startsWith("May be set from "), held.toString());
        assertTrue(
                held.get("said")
                        .asText()
                        .contains("; below, " + told.at("/all_hold/0/low_by").asText()),
                held.toString());

        JsonNode lower = visitor.answer(
                "window", "{\"build\": \"restored\", \"duty\": \"hot-idle\", \"set_pressure_pa\": 500000}");
        assertEquals(held.get("ranges"), lower.get("ranges"), "it does not depend on what is set");
    }

    @Test
    void aVerdictSolvesNothingTwiceAndIsTheSameAsOneThatSolvesAllAnew() throws Exception {
        String turned = "{\"build\": \"worn\", \"duty\": \"hot-idle\", \"engine_speed_rpm\": 725}";
        try (Visitor fresh = new Visitor("shuttle-five")) {
            long before = SolveCount.now().states();
            JsonNode anew = fresh.answer("verdict", turned);
            long all = SolveCount.now().states() - before;
            fresh.answer("verdict", IDLE);
            before = SolveCount.now().states();
            assertEquals(anew, fresh.answer("verdict", turned));
            long again = SolveCount.now().states() - before;
            assertTrue(2 * again < all, again + " states in place of " + all);
        }
        visitor.answer("verdict", IDLE);
        try (Visitor fresh = new Visitor("shuttle-five")) {
            assertEquals(fresh.answer("verdict", turned), visitor.answer("verdict", turned));
        }
    }

    @Test
    void aJobMovesTheLineByWhatTheUnitDoesWithoutItAndWithItAndSaysSoToldOrDone() throws Exception {
        JsonNode jobs = visitor.answer("jobs", IDLE).get("jobs");
        JsonNode unit = visitor.answer("unit", IDLE).get("jobs");
        assertEquals(unit.size(), jobs.size());
        boolean starving = false;
        for (int i = 0; i < jobs.size(); i++) {
            JsonNode job = jobs.get(i);
            String name = job.get("name").asText();
            assertEquals(unit.get(i).get("name").asText(), name);
            String done = IDLE.replace("}", ", \"jobs\": [\"" + name + "\"]}");
            same(
                    visitor.answer("state", done).get("line_pa").asDouble(),
                    job.get("after_pa").asDouble());
            same(
                    visitor.answer("state", IDLE).get("line_pa").asDouble(),
                    job.get("before_pa").asDouble());
            assertEquals(job, visitor.answer("jobs", done).get("jobs").get(i), "the same once it is done");
            assertEquals(
                    job.get("starves").asBoolean(), job.get("moves").asText().contains("NOT ALONE"), name);
            starving |= job.get("starves").asBoolean();
        }
        assertTrue(starving, "the regulator's bore feeds the lubrication while the line is low");
    }

    @Test
    void howFarASetPressureGoesIsToldAndNothingBeyondItIsTaken() throws Exception {
        JsonNode ends = visitor.answer("unit", IDLE).get("set_pressures");
        for (String end : List.of("low", "high")) {
            double pressure = ends.get(end).asDouble();
            assertEquals(200, set(pressure).statusCode(), end);
            HttpResponse<String> beyond = set(end.equals("low") ? 0.9 * pressure : 1.1 * pressure);
            assertEquals(422, beyond.statusCode());
            assertTrue(beyond.body().contains("between 50 and 400 psi (3.45 and 27.58 bar)"), beyond.body());
        }
    }

    private static HttpResponse<String> set(double pressure) throws Exception {
        return visitor.posted(
                "state", Visitor.question("set", 1, "{\"build\": \"worn\", \"set_pressure_pa\": " + pressure + "}"));
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

    @Test
    void aJobIsThatOfTheOptionAndWhatAFitCostsThatOfLeaks() throws Exception {
        double after = visitor.answer("state", "{\"build\": \"worn\", \"jobs\": [\"pump\"]}")
                .get("line_pa")
                .asDouble();
        JsonNode told =
                command("compare", "shuttle-five", "--build", "worn", "--job", "pump", "--speed", "600..3600/3000rpm");
        double best = Double.MAX_VALUE;
        for (JsonNode build : told.get("builds")) {
            for (JsonNode state : build.get("states")) {
                boolean idle = state.get("duty").asText().equals("hot-idle");
                best = idle
                        ? Math.min(best, Math.abs(state.at("/pressures_pa/line").asDouble() / after - 1))
                        : best;
            }
        }
        assertEquals(0, best, 1e-9);
        JsonNode costs = visitor.answer("costs", IDLE);
        JsonNode leaks =
                command("leaks", "shuttle-five", "--build", "worn", "--speed", "600..3600/3000rpm", "--steps", "1");
        JsonNode repairs = leaks.get("repairs");
        assertEquals(repairs.size(), costs.get("fits").size());
        double now = Math.min(
                leaks.at("/before/line_pa").asDouble(),
                leaks.at("/before/set_pressure_pa").asDouble());
        for (int i = 0; i < repairs.size(); i++) {
            JsonNode fit = costs.get("fits").get(i);
            assertEquals(repairs.get(i).get("repair"), fit.get("repair"));
            double held = Math.min(
                    repairs.get(i).at("/after/line_pa").asDouble(),
                    repairs.get(i).at("/after/set_pressure_pa").asDouble());
            assertEquals(held - now, fit.get("line_pa").asDouble(), 1e-9 * now);
        }
        String alone = Run.of("leaks", "shuttle-five", "--build", "worn", "--speed", "600..3600/3000rpm")
                .out()
                .replaceAll("\\s+", " ");
        String notAlone = costs.get("not_alone").asText();
        assertTrue(notAlone.startsWith("Not alone: ") && alone.contains("Not alone: "), notAlone + " in " + alone);
        for (JsonNode fit : costs.get("fits")) {
            assertEquals(
                    notAlone.contains(fit.get("repair").asText()),
                    fit.get("starves").asBoolean(),
                    fit.get("repair").asText());
        }
        for (JsonNode job : visitor.answer("unit", IDLE).get("jobs")) {
            assertTrue(job.get("sizes").size() > 0, job.toString());
        }
    }

    /** The drawing, for which a page asks again and again while it is laid out. */
    private static String drawn(Visitor visitor, String state) throws Exception {
        JsonNode answer = visitor.answer("drawing", state);
        while (answer.get("svg").isNull()) {
            assertTrue(answer.get("tried").asInt() <= answer.get("ways").asInt(), answer.toString());
            answer = visitor.answer("drawing", state);
        }
        return answer.get("svg").asText();
    }

    @Test
    void aPageThatSaysWhichPartItIsIsDrawnOnceAndItsWordsComeWithEachState() throws Exception {
        try (Visitor rig = new Visitor("training-rig")) {
            String svg = drawn(rig, "{}");
            assertTrue(svg.startsWith("<svg") && svg.contains("data-piece=\"box "), svg.substring(0, 200));
            assertEquals(
                    svg,
                    rig.answer("drawing", "{\"build\": \"one-hole\"}")
                            .get("svg")
                            .asText());
            String question = Visitor.question("drawn", 1, "{}").replace("\"units\"", "\"drawn\": true, \"units\"");
            JsonNode labels = new ObjectMapper()
                    .readTree(rig.posted("state", question).body())
                    .get("labels");
            for (JsonNode line : labels.get("lines")) {
                assertTrue(svg.contains("lead " + line.get("line").asText() + "\""), line.toString());
            }
            for (JsonNode net : labels.get("nets")) {
                assertTrue(net.get("heading").asText().startsWith(net.get("net").asText()), net.toString());
                assertTrue(net.get("title").asText().startsWith(net.get("net").asText()), net.toString());
            }
            assertTrue(labels.get("high").asText().endsWith("psi"));
        }
    }

    @Test
    void filesOfThePageAreReadByTheCommands(@org.junit.jupiter.api.io.TempDir java.nio.file.Path folder)
            throws Exception {
        String state = sized("hub-face.clearance", 4e-5);
        double line = visitor.answer("state", state).get("line_pa").asDouble();
        JsonNode build = visitor.answer("build-file", state);
        java.nio.file.Path file = folder.resolve(build.get("name").asText());
        java.nio.file.Files.writeString(file, build.get("text").asText());
        JsonNode swept = command(
                        "sweep",
                        file.toString(),
                        "--build",
                        "changed",
                        "--duty",
                        "hot-idle",
                        "--speed",
                        "600..700/50rpm")
                .at("/builds/0/states/1");
        same(swept.at("/pressures_pa/line").asDouble(), line);
        JsonNode sheet = visitor.answer("sheet-file", state);
        assertEquals("shuttle-five-sheet.csv", sheet.get("name").asText());
        assertTrue(sheet.get("text").asText().contains("hub-face"));
        String noted = visitor.answer(
                        "build-file",
                        "{\"build\": \"worn\", \"jobs\": [\"pump\"], \"faults\": [\"spring-weak@regulator:20%\"]}")
                .get("text")
                .asText();
        assertTrue(noted.startsWith("# after the jobs pump; "), noted);
        assertTrue(noted.contains("--fault spring-weak@regulator:20%"), noted);
    }
}
