package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.HiddenFaultPhrase;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.cli.Run;
import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * A lesson from hidden to revealed, and that nothing that is sent before tells the fault. Past 300 lines, since it walks through whole
 * lessons, and each answer of them is searched.
 */
class LiveLessonTest {

    private static final String SET = "spring-weak@regulator:40%";
    private static final String LINE_AT_IDLE =
            "{\"tap\": \"line\", \"range\": \"first\", \"engine_speed_rpm\": 650, \"sump_temperature_c\": 110}";
    private static final String LINE_FASTER =
            "{\"tap\": \"line\", \"range\": \"third\", \"engine_speed_rpm\": 1500, \"sump_temperature_c\": 110}";

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

    private static JsonNode lesson(String kind, String lesson) throws Exception {
        return visitor.about(kind, "lesson", lesson);
    }

    private static String refused(Visitor by, String kind, String lesson) throws Exception {
        HttpResponse<String> response = by.sentAbout(kind, "lesson", lesson);
        assertEquals(422, response.statusCode(), response.body());
        return new ObjectMapper().readTree(response.body()).get("refused").asText();
    }

    private static String code(String fault, String phrase) throws Exception {
        return lesson("lesson-code", "{\"fault\": \"" + fault + "\", \"phrase\": \"" + phrase + "\"}")
                .get("code")
                .asText();
    }

    private static String ticket(String code, String phrase) throws Exception {
        return lesson("lesson-open", "{\"code\": \"" + code + "\", \"phrase\": \"" + phrase + "\"}")
                .get("ticket")
                .asText();
    }

    private static String drawn(long number, String difficulty) throws Exception {
        return lesson("lesson-draw", "{\"number\": " + number + ", \"difficulty\": \"" + difficulty + "\"}")
                .get("ticket")
                .asText();
    }

    private static JsonNode read(String ticket, String reading) throws Exception {
        return lesson("lesson-read", "{\"ticket\": \"" + ticket + "\", \"readings\": [" + reading + "]}");
    }

    private static JsonNode revealed(String ticket, String answer, String... readings) throws Exception {
        return lesson(
                "lesson-reveal",
                "{\"ticket\": \"" + ticket + "\", \"answer\": \"" + answer + "\", \"readings\": ["
                        + String.join(",", readings) + "]}");
    }

    @Test
    void aTeachersFaultIsReadOnTheGaugesAndRevealedInTheEnd() throws Exception {
        String ticket = ticket(code(SET, ""), "");
        JsonNode idle = read(ticket, LINE_AT_IDLE);
        assertTrue(idle.get("pressure_pa").asDouble() < idle.get("sound_low_pa").asDouble(), idle.toString());
        JsonNode revealed = revealed(ticket, "spring-weak@regulator", LINE_AT_IDLE, LINE_FASTER);
        assertEquals(SET, revealed.get("fault").asText());
        assertTrue(
                revealed.get("gentlest")
                        .asText()
                        .matches(
                                "The gentlest test that shows it: .* rpm .* psi where .* psi is read with no fault put in\\."),
                revealed.get("gentlest").asText());
        assertEquals("You are right.", revealed.get("judged").asText());
        assertEquals(
                "Hidden in fresh: regulator: spring weak or broken, 40 % weaker.",
                revealed.get("said").asText());
        for (JsonNode line : revealed.get("read")) {
            assertEquals(
                    line.get("pressure_pa").asDouble(),
                    line.get("answer_pa").asDouble(),
                    0.02 * line.get("sound_pa").asDouble(),
                    "the right answer at its best size reads as the fault does");
            assertTrue(line.get("pressure_pa").asDouble()
                    < 0.9 * line.get("sound_pa").asDouble());
        }
        JsonNode curve = revealed.get("curve");
        assertEquals(61, curve.get("engine_speed_rpm").size());
        assertEquals(61, curve.get("answer_pa").size());
        assertNotEquals(curve.get("sound_pa"), curve.get("fault_pa"));
        assertEquals(
                "hotidle compare shuttle-five --build fresh --fault " + SET,
                revealed.get("command").asText());
    }

    @Test
    void aReadingIsThatOfTheCommandsWithTheFaultToTheDialsDivision() throws Exception {
        String ticket = ticket(code(SET, ""), "");
        JsonNode compared = new ObjectMapper()
                .readTree(Run.of(
                                "sweep",
                                "shuttle-five",
                                "--build",
                                "fresh",
                                "--fault",
                                SET,
                                "--speed",
                                "600..700/50rpm",
                                "--format",
                                "json")
                        .out());
        double line = Double.NaN;
        double sump = Double.NaN;
        for (JsonNode state : compared.at("/builds/0/states")) {
            if (Math.abs(state.get("engine_speed_rpm").asDouble() - 650) < 1e-6) {
                line = state.at("/pressures_pa/line").asDouble();
                sump = state.at("/temperatures_c/sump").asDouble(110);
            }
        }
        JsonNode read = read(
                ticket,
                "{\"tap\": \"line\", \"range\": \"first\", \"engine_speed_rpm\": 650, \"sump_temperature_c\": " + sump
                        + "}");
        assertEquals(line, read.get("pressure_pa").asDouble(), 501);
    }

    @Test
    void theSameNumberIsTheSameLessonAndItsTicketIsAnother() throws Exception {
        String one = drawn(7, "easy");
        String again = drawn(7, "easy");
        assertNotEquals(one, again);
        assertEquals(read(one, LINE_AT_IDLE), read(again, LINE_AT_IDLE));
        JsonNode revealed = revealed(one, "");
        assertEquals(revealed.get("fault"), revealed(again, "").get("fault"));
        assertEquals("You gave no answer.", revealed.get("judged").asText());
        Set<String> faults = new HashSet<>(List.of(revealed.get("fault").asText()));
        for (long number = 8; number < 11; number++) {
            faults.add(revealed(drawn(number, "easy"), "").get("fault").asText());
        }
        assertTrue(faults.size() >= 3, faults.toString());
    }

    @Test
    void aDrawnFaultShowsAtSomeGauge() throws Exception {
        try (Visitor bench = new Visitor("training-rig")) {
            for (String difficulty : List.of("easy", "medium", "hard")) {
                String ticket = bench.about(
                                "lesson-draw", "lesson", "{\"number\": 3, \"difficulty\": \"" + difficulty + "\"}")
                        .get("ticket")
                        .asText();
                JsonNode shows = bench.about("lesson-reveal", "lesson", "{\"ticket\": \"" + ticket + "\"}")
                        .at("/shows/0");
                double off = Math.abs(shows.get("pressure_pa").asDouble()
                        - shows.get("sound_pa").asDouble());
                assertTrue(off > 4 * 6895, difficulty + " " + shows);
            }
        }
    }

    @Test
    void anotherLeakOfTheSameGalleryIsAsRightAsAGaugeCanTell() throws Exception {
        JsonNode offer = lesson("lesson-offer", "{}");
        assertEquals("fresh", offer.get("build").asText());
        String wide = "plate-warped@plate-direct:500%";
        String ticket = ticket(code(wide, ""), "");
        Map<String, String> judged = new HashMap<>();
        for (JsonNode fault : offer.get("faults")) {
            String name = fault.get("name").asText();
            if (name.endsWith("direct") || name.contains("direct-") || name.startsWith("plate-warped")) {
                judged.put(name, revealed(ticket, name).get("judged").asText());
            }
        }
        assertEquals("You are right.", judged.get("plate-warped@plate-direct"));
        assertTrue(judged.values().stream().anyMatch(said -> said.startsWith("You are right as far")), "" + judged);
        assertTrue(judged.values().stream().anyMatch(said -> said.startsWith("The kind is right")), "" + judged);
        assertEquals(
                "It was something else.",
                revealed(ticket, "oil-aerated").get("judged").asText());
    }

    @Test
    void takingEachTimeWhatIsSaidToTellMostComesToTheFault() throws Exception {
        try (Visitor bench = new Visitor("training-rig")) {
            String code = bench.about("lesson-code", "lesson", "{\"fault\": \"orifice-wrong@second:1.6mm\"}")
                    .get("code")
                    .asText();
            String ticket = bench.about("lesson-open", "lesson", "{\"code\": \"" + code + "\"}")
                    .get("ticket")
                    .asText();
            String begin = "{\"ticket\": \"" + ticket + "\", \"readings\": [";
            assertEquals(HiddenFaultPhrase.READINGS, refused(bench, "lesson-review", begin + "]}"));
            StringBuilder taken = new StringBuilder(bench.about("lesson-reveal", "lesson", begin + "]}")
                    .at("/shows/0/at")
                    .toString());
            JsonNode review = bench.about("lesson-review", "lesson", begin + taken + "]}");
            assertTrue(review.get("told").asText().startsWith("Your 1 reading leaves "), review.toString());
            for (int i = 0;
                    i < 3
                            && !review.get("found").asBoolean()
                            && !review.get("best").isNull();
                    i++) {
                taken.append(",").append(review.get("best"));
                review = bench.about("lesson-review", "lesson", begin + taken + "]}");
            }
            assertTrue(review.get("found").asBoolean(), review.toString());
            // the gauge behind a weak relief spring reads nothing of it before the relief valve opens
            String weak = bench.about("lesson-code", "lesson", "{\"fault\": \"spring-weak@relief:20%\"}")
                    .get("code")
                    .asText();
            String other = bench.about("lesson-open", "lesson", "{\"code\": \"" + weak + "\"}")
                    .get("ticket")
                    .asText();
            JsonNode nothing = bench.about(
                    "lesson-review",
                    "lesson",
                    "{\"ticket\": \"" + other
                            + "\", \"readings\": [{\"tap\": \"line\", \"range\": \"bench\", \"engine_speed_rpm\": 400}]}");
            assertEquals("as with no fault put in", nothing.get("after").asText());
            assertEquals(HiddenFaultPhrase.SHOWS_ELSEWHERE, nothing.get("next").asText());
        }
    }

    @Test
    void nothingThatIsSentBeforeItIsRevealedHoldsTheFault() throws Exception {
        List<String> others = List.of("state", "unit", "sheet-file", "build-file");
        Map<String, String> before = asked(others);
        List<String> sent = new ArrayList<>();
        for (String phrase : List.of("", "monday")) {
            String code = code("valve-stuck@regulator:1.25mm", phrase);
            sent.add(code);
            HttpResponse<String> opened = visitor.sentAbout(
                    "lesson-open", "lesson", "{\"code\": \"" + code + "\", \"phrase\": \"" + phrase + "\"}");
            sent.add(opened.body() + opened.headers().map());
            String ticket =
                    new ObjectMapper().readTree(opened.body()).get("ticket").asText();
            for (String reading : List.of(LINE_AT_IDLE, LINE_FASTER)) {
                HttpResponse<String> read = visitor.sentAbout(
                        "lesson-read", "lesson", "{\"ticket\": \"" + ticket + "\", \"readings\": [" + reading + "]}");
                assertEquals(200, read.statusCode(), read.body());
                sent.add(read.body() + read.headers().map());
            }
            for (String wrong :
                    List.of("{\"tap\": \"nosuch\", \"range\": \"first\", \"engine_speed_rpm\": 650}", "{}")) {
                HttpResponse<String> read = visitor.sentAbout(
                        "lesson-read", "lesson", "{\"ticket\": \"" + ticket + "\", \"readings\": [" + wrong + "]}");
                assertEquals(422, read.statusCode(), read.body());
                sent.add(read.body());
            }
        }
        for (String body : sent) {
            String low = body.toLowerCase(java.util.Locale.ROOT);
            for (String word : List.of("stuck", "regulator", "spool", "valve", "1.25", "0.00125")) {
                assertFalse(low.contains(word), word + " in " + body);
            }
        }
        assertEquals(before, asked(others), "no other answer knows of the lesson");
        assertEquals(sent.get(0).length(), code("oil-aerated:20%", "").length(), "a code's length tells nothing");
    }

    private static Map<String, String> asked(List<String> kinds) throws Exception {
        Map<String, String> answers = new HashMap<>();
        for (String kind : kinds) {
            answers.put(
                    kind,
                    visitor.answer(kind, "{\"build\": \"worn\", \"duty\": \"hot-idle\"}")
                            .toString());
        }
        return answers;
    }

    @Test
    void aPhraseOpensACodeAfterARestartAndATicketDoesNot() throws Exception {
        String code = code(SET, "monday");
        String ticket = ticket(code, "Monday");
        String without = code(SET, "");
        try (Visitor restarted = new Visitor("shuttle-five")) {
            JsonNode opened =
                    restarted.about("lesson-open", "lesson", "{\"code\": \"" + code + "\", \"phrase\": \"monday\"}");
            assertEquals("fresh", opened.get("build").asText());
            assertEquals(
                    HiddenFaultPhrase.OVER,
                    refused(
                            restarted,
                            "lesson-read",
                            "{\"ticket\": \"" + ticket + "\", \"readings\": [" + LINE_AT_IDLE + "]}"));
            assertEquals(
                    HiddenFaultPhrase.WRONG_CODE, refused(restarted, "lesson-open", "{\"code\": \"" + without + "\"}"));
        }
    }

    @Test
    void aWrongCodeAnotherPhraseAndACodeOfAnotherCircuitSaySo() throws Exception {
        String code = code(SET, "monday");
        assertEquals(HiddenFaultPhrase.WRONG_CODE, refused(visitor, "lesson-open", "{\"code\": \"7777-7777\"}"));
        assertEquals(
                HiddenFaultPhrase.WRONG_CODE,
                refused(visitor, "lesson-open", "{\"code\": \"" + code + "\", \"phrase\": \"tuesday\"}"));
        assertEquals(HiddenFaultPhrase.WRONG_CODE, refused(visitor, "lesson-open", "{\"code\": \"" + code + "\"}"));
        try (Visitor other = new Visitor("vane-six")) {
            assertEquals(
                    HiddenFaultPhrase.OTHER_CIRCUIT,
                    refused(other, "lesson-open", "{\"code\": \"" + code + "\", \"phrase\": \"monday\"}"));
        }
    }

    @Test
    void aFaultThatNoGaugeShowsIsNotGivenAndOneThatIsNoneIsRefused() throws Exception {
        assertEquals(
                HiddenFaultPhrase.DOES_NOT_SHOW,
                refused(visitor, "lesson-code", "{\"fault\": \"spring-weak@regulator:0%\"}"));
        assertTrue(refused(visitor, "lesson-code", "{\"fault\": \"spring-weak@nosuch:20%\"}")
                .startsWith("no part nosuch can have it"));
        assertTrue(refused(visitor, "lesson-draw", "{\"build\": \"nosuch\", \"difficulty\": \"easy\"}")
                .contains("nosuch"));
        assertEquals(HiddenFaultPhrase.NO_DIFFICULTY, refused(visitor, "lesson-draw", "{\"difficulty\": \"cruel\"}"));
    }

    @Test
    void aReadingOutsideWhatCanBeSetIsRefused() throws Exception {
        String ticket = drawn(1, "easy");
        for (String reading : List.of(
                LINE_AT_IDLE.replace("650", "99"),
                LINE_AT_IDLE.replace("650", "1e9"),
                LINE_AT_IDLE.replace("110", "900"),
                LINE_AT_IDLE.replace("110", "-273"))) {
            assertEquals(
                    HiddenFaultPhrase.BOUNDS,
                    refused(
                            visitor,
                            "lesson-read",
                            "{\"ticket\": \"" + ticket + "\", \"readings\": [" + reading + "]}"));
        }
        for (String reading : List.of(
                LINE_AT_IDLE.replace("line", "nosuch"),
                LINE_AT_IDLE.replace("line", "cooler"),
                LINE_AT_IDLE.replace("first", "nosuch"))) {
            assertEquals(
                    HiddenFaultPhrase.NO_GAUGE,
                    refused(
                            visitor,
                            "lesson-read",
                            "{\"ticket\": \"" + ticket + "\", \"readings\": [" + reading + "]}"));
        }
        assertEquals(
                HiddenFaultPhrase.READINGS,
                refused(visitor, "lesson-read", "{\"ticket\": \"" + ticket + "\", \"readings\": []}"));
    }

    @Test
    void whatIsOfferedIsWhatListFaultsNames() throws Exception {
        JsonNode offer = lesson("lesson-offer", "{\"build\": \"worn\"}");
        List<String> offered = new ArrayList<>();
        offer.get("faults").forEach(fault -> offered.add(fault.get("name").asText()));
        List<String> possible = UnitFaults.of(
                        CircuitReader.read(Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
                                .circuit()
                                .orElseThrow()
                                .adjustable("worn"))
                .stream()
                .map(UnitFault::name)
                .toList();
        assertEquals(possible, offered);
    }

    @Test
    void aBenchOfOneTemperatureOnWhichNothingIsCommandedGivesLessonsToo() throws Exception {
        try (Visitor bench = new Visitor("training-rig")) {
            JsonNode offer = bench.about("lesson-offer", "lesson", "{}");
            assertTrue(offer.get("taps").size() == 3, offer.toString());
            String ticket = bench.about("lesson-draw", "lesson", "{\"number\": 5, \"difficulty\": \"easy\"}")
                    .get("ticket")
                    .asText();
            JsonNode read = bench.about(
                    "lesson-read",
                    "lesson",
                    "{\"ticket\": \"" + ticket
                            + "\", \"readings\": [{\"tap\": \"line\", \"range\": \"bench\", \"engine_speed_rpm\": 500}]}");
            assertTrue(read.get("pressure_pa").asDouble() > 0, read.toString());
            assertFalse(bench.about("lesson-reveal", "lesson", "{\"ticket\": \"" + ticket + "\"}")
                    .get("fault")
                    .asText()
                    .isEmpty());
        }
    }

    @Test
    void aCircuitWithoutGaugePortsGivesNone() {
        String text = Library.text("training-rig").orElseThrow();
        LiveUnit unit = new LiveUnit(
                CircuitReader.read(text.substring(0, text.indexOf("taps:")), "rig.yaml")
                        .circuit()
                        .orElseThrow(),
                "rig.yaml",
                Quantity.UnitSystem.SHOP,
                "as-written");
        WrongStateException none = assertThrows(WrongStateException.class, () -> new Lessons(unit).of(null));
        assertEquals(HiddenFaultPhrase.NO_TAPS, none.getMessage());
    }
}
