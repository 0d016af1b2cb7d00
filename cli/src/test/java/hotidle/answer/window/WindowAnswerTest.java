package hotidle.answer.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Margin;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.study.Judgement;
import hotidle.study.Window;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class WindowAnswerTest {

    private static final Transmission UNIT = CircuitReader.read(
                    Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
            .circuit()
            .orElseThrow()
            .unit();
    private static final Judgement.Key HOLDING = new Judgement.Key("stall", Margin.Kind.APPLY, "low-clutch");
    private static final Judgement.Key SLIPPING = new Judgement.Key("stall", Margin.Kind.APPLY_SLIDING, "low-clutch");
    private static final Judgement.Key PUMP = new Judgement.Key("hot-idle", Margin.Kind.REGULATION, "pump");
    private static final Window.PressureRange UP =
            new Window.PressureRange(9e5, Optional.of(HOLDING), 20e5, Optional.empty());

    private static Window.SetPoint tried(double pressure, String... unsolved) {
        Margin margin = Margin.of(Margin.Kind.APPLY, "low-clutch", pressure, 9e5, Margin.Scale.PRESSURE);
        return new Window.SetPoint(pressure, Map.of(HOLDING, margin), List.of(unsolved), List.of());
    }

    private static Window.Span span(Judgement.Key key, Window.PressureRange... ranges) {
        Optional<Judgement.Key> worst = ranges.length == 0 ? Optional.of(key) : Optional.empty();
        return new Window.Span(key.kind(), key.part(), List.of(ranges), worst, List.of());
    }

    private static WindowAnswer answer(
            List<Window.PressureRange> all, List<Window.SetPoint> tried, Window.Span... spans) {
        Window window = new Window(tried, List.of(spans), all);
        return new WindowAnswer(
                UnitSystem.METRIC,
                "rig",
                "",
                "",
                SetPressure.By.COMMAND_AND_SPRING,
                false,
                List.of(new WindowAnswer.BuildWindow(UNIT, window, Optional.empty())),
                List.of());
    }

    private static WindowAnswer held(List<Window.SetPoint> tried) {
        return answer(List.of(UP), tried, span(HOLDING, UP), span(SLIPPING, UP));
    }

    @Test
    void aRangeNamesTheLimitThatFailsBelowItAndThatNothingHigherWasTried() {
        WindowAnswer answer = held(List.of(tried(4e5), tried(20e5)));
        String words = answer.full().replaceAll("\\s+", " ");
        assertTrue(
                words.contains(
                        "every limit holds from 9.00 bar to 20.00 bar; below, apply, holding (low-clutch) at stall"
                                + " fails first; higher ones were not tried. The build is set to"),
                words);
        assertTrue(words.contains("Tried from 4.00 bar to 20.00 bar"), words);
        assertTrue(answer.complete());
        assertFalse(words.contains("NOT KNOWN"), words);
    }

    @Test
    void theTwoLimitsOfAClutchThatAreOneStandInOneRowOfTheScreenAndTwoOfTheSpreadsheet() {
        WindowAnswer answer = held(List.of(tried(4e5), tried(20e5)));
        assertTrue(answer.full().contains("apply, holding and slipping"), answer.screen());
        assertFalse(answer.full().contains("\napply, slipping"), answer.screen());
        List<String> rows = answer.csv().lines().toList();
        assertEquals(4, rows.size(), answer.csv());
        assertEquals(UNIT.build() + ",apply,low-clutch,9.00,stall,>=20.00,", rows.get(1));
        assertEquals(UNIT.build() + ",all,,9.00,stall,>=20.00,", rows.get(3));
    }

    /** Limits of eleven branches leave less room than the clutch does; it is the clutch that ends the range from below. */
    @Test
    void theLimitsThatEndTheRangeStandFirstHoweverManyOthersBind() {
        Window.PressureRange narrow = new Window.PressureRange(9e5, Optional.empty(), 20e5, Optional.of(PUMP));
        Window.Span[] spans = IntStream.rangeClosed(0, 11)
                .mapToObj(i -> i == 11
                        ? span(HOLDING, UP)
                        : span(new Judgement.Key("climb", Margin.Kind.LUBRICATION, "branch-" + i), narrow))
                .toArray(Window.Span[]::new);
        List<String> lines = answer(List.of(UP), List.of(tried(4e5), tried(20e5)), spans)
                .screen()
                .lines()
                .dropWhile(line -> !line.startsWith("what binds"))
                .skip(2)
                .toList();
        assertTrue(lines.get(0).startsWith("apply, holding (low-clutch) "), lines.get(0));
    }

    @Test
    void aLimitThatHoldsNowhereIsTheReasonAndNamesItsDuty() {
        WindowAnswer answer = answer(List.of(), List.of(tried(4e5), tried(20e5)), span(PUMP));
        String words = answer.full().replaceAll("\\s+", " ");
        assertTrue(
                words.contains(
                        "NO SET PRESSURE from 4.00 bar to 20.00 bar holds every limit, because regulation (pump) at"
                                + " hot-idle fails at every one tried."),
                words);
        assertTrue(answer.csv().contains(",regulation,pump,none,hot-idle,none,hot-idle"), answer.csv());
        JsonNode limit = Json.tree(answer.json()).at("/builds/0/limits/0");
        assertEquals("hot-idle", limit.get("worst_duty").textValue());
        assertEquals(0, limit.get("holds").size());
    }

    @Test
    void twoLimitsThatLeaveNothingBetweenThemAreBothTheReason() {
        Window.PressureRange down = new Window.PressureRange(4e5, Optional.empty(), 6e5, Optional.of(PUMP));
        WindowAnswer answer = answer(List.of(), List.of(tried(4e5), tried(20e5)), span(HOLDING, UP), span(PUMP, down));
        assertTrue(
                answer.full()
                        .replaceAll("\\s+", " ")
                        .contains(
                                "at stall needs at least 9.00 bar and regulation (pump) at hot-idle allows at most 6.00 bar."),
                answer.full());
        WindowAnswer hole = answer(List.of(), List.of(tried(4e5), tried(20e5)), span(HOLDING, UP));
        assertTrue(hole.full().replaceAll("\\s+", " ").contains("limits that hold apart do not hold together"));
    }

    @Test
    void aSetPressureAtWhichAStateWasNotFoundLeavesTheAnswerIncompleteAndIsNamed() {
        WindowAnswer answer = held(List.of(tried(4e5, "hot-idle"), tried(12e5), tried(20e5, "stall")));
        assertFalse(answer.complete());
        String words = answer.full().replaceAll("\\s+", " ");
        assertTrue(
                words.contains(
                        "NOT KNOWN in full at hot-idle, stall with 2 of the 3 set pressures tried, the first 4.00 bar"),
                words);
        JsonNode points = Json.tree(answer.json()).at("/builds/0/points");
        assertEquals("hot-idle", points.at("/0/unsolved_duties/0").textValue());
        assertEquals(0, points.at("/1/unsolved_duties").size());
    }

    /** A film at 12 bar that is thicker than its roughness asks and thinner than a published criterion does. */
    @Test
    void aLimitThatIsNotKnownWithinTheRangeIsNamedOnceAndMarkedInItsRow() {
        Judgement.Key key = new Judgement.Key("stall", Margin.Kind.FILM, "hub-bushing");
        Margin film = Margin.of(Margin.Kind.FILM, "hub-bushing", 3e-6, 2e-6, Margin.Scale.LENGTH)
                .unsureTo(7e-6);
        Window.Span span = new Window.Span(key.kind(), key.part(), List.of(UP), Optional.empty(), List.of(key));
        Window.SetPoint within = new Window.SetPoint(12e5, Map.of(key, film), List.of(), List.of());
        WindowAnswer answer = answer(List.of(UP), List.of(tried(4e5), within, tried(20e5)), span);
        String words = answer.full().replaceAll("\\s+", " ");
        assertTrue(words.contains("every limit that is known holds from 9.00 bar"), words);
        assertTrue(words.contains("Not known somewhere in that range, and left out: hub film"), words);
        assertEquals(
                2, words.split("hub film \\(hub-bushing\\) at stall|hub film \\* hub-bushing", -1).length - 1, words);
        assertTrue(answer.complete(), "every state was found");
        JsonNode build = Json.tree(answer.json()).at("/builds/0");
        assertEquals("film", build.at("/not_known/0/margin").textValue());
        assertEquals("stall", build.at("/limits/0/not_known_at/0").textValue());
        assertEquals("not_known", build.at("/points/1/margins/0/verdict").textValue());
    }

    @Test
    void theRecordHasEveryPressureTriedWithItsMarginsAndWhatEndsARange() {
        JsonNode build =
                Json.tree(held(List.of(tried(4e5), tried(20e5))).json()).at("/builds/0");
        assertEquals(4e5, build.at("/points/0/set_pressure_pa").doubleValue());
        assertEquals("fails", build.at("/points/0/margins/0/verdict").textValue());
        assertEquals(20e5 / 9e5 - 1, build.at("/points/1/margins/0/headroom").doubleValue(), 1e-12);
        assertEquals(
                "apply, holding (low-clutch) at stall",
                build.at("/all_hold/0/low_by").textValue());
        assertTrue(build.at("/all_hold/0/high_by").isNull());
        assertEquals("", build.at("/limits/0/worst_duty").textValue());
    }
}
