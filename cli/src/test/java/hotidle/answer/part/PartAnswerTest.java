package hotidle.answer.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.PartDoubt;
import hotidle.assess.PartFlow;
import hotidle.circuits.single.LibraryMaterials;
import hotidle.circuits.single.OnePart;
import hotidle.network.Conditions;
import hotidle.oil.Oil;
import hotidle.oil.OilAt;
import hotidle.plots.LineChart;
import hotidle.result.Outcome;
import hotidle.result.Unsolved;
import hotidle.study.SinglePart;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A sharp-edged orifice of 1 mm in an oil of 10 mm²/s and 850 kg/m³, on its own under a drop of 5 bar. */
class PartAnswerTest {

    private static final double CELSIUS = 273.15;
    private static final double DROP = 5e5;
    private static final OnePart ORIFICE = OnePart.read(
                    "orifice", List.of("diameter=1mm"), LibraryMaterials.ofLibrary())
            .part()
            .orElseThrow();
    private static final PartConditions ASKED = new PartConditions(
            new Oil("bench", Oil.Walther.constant(10e-6), 850, 0, 0, 0, 0),
            false,
            40 + CELSIUS,
            true,
            Map.of(ORIFICE.ports().get(0), DROP, ORIFICE.ports().get(1), 0.0),
            Map.of());

    private static PartState solved(double drop) {
        Map<String, Double> pressures =
                Map.of(ORIFICE.ports().get(0), drop, ORIFICE.ports().get(1), 0.0);
        PartConditions asked = new PartConditions(ASKED.oil(), false, ASKED.temperature(), true, pressures, Map.of());
        Outcome outcome = SinglePart.run(
                ORIFICE.network(pressures),
                ORIFICE.conditions(asked.oil(), OilAt.STANDARD_ATMOSPHERE, asked.temperature()),
                ORIFICE.placed().name(),
                Map.of());
        Optional<PartFlow> flow = outcome.state().map(state -> PartFlow.of(ORIFICE.placed(), asked.oilAt(), state));
        return new PartState(ORIFICE, asked, outcome, flow, List.of(), List.of());
    }

    private static final PartState SOLVED = solved(DROP);

    private static PartState unsolved() {
        Conditions conditions = ORIFICE.conditions(ASKED.oil(), OilAt.STANDARD_ATMOSPHERE, ASKED.temperature());
        Outcome none = Outcome.of(conditions, new Unsolved(0.2, "orifice", List.of("Newton from rest")));
        return new PartState(ORIFICE, ASKED, none, Optional.empty(), List.of(), List.of());
    }

    private static PartAnswer answer(PartState state, UnitSystem units) {
        return new PartAnswer(state, Optional.empty(), units);
    }

    private static String row(String text, String label) {
        return text.lines()
                .filter(line -> line.startsWith(label))
                .findFirst()
                .orElseThrow(() -> new AssertionError(label + " in " + text))
                .replaceAll(" +", " ");
    }

    /** Some 0.65 of what the square root of the drop gives, 34 m/s through 0.785 mm²; at 5 bar near 1 L/min. */
    @Test
    void theFlowIsWhatTheRootOfTheDropGivesLessItsContraction() {
        double q = SOLVED.flow().orElseThrow().net().orElseThrow();
        double free = Math.PI / 4 * 1e-6 * Math.sqrt(2 * DROP / 850);
        assertTrue(q > 0.55 * free && q < 0.8 * free, q / free + " of the free flow");
        assertEquals(
                "flow " + hotidle.answer.format.Digits.four(q * 6e4) + " L/min",
                row(answer(SOLVED, UnitSystem.METRIC).full(), "flow "));
    }

    @Test
    void theDropIsShownInTheUnitsAskedFor() {
        assertEquals(
                "pressure drop 5 bar", row(answer(SOLVED, UnitSystem.METRIC).full(), "pressure drop"));
        assertEquals(
                "pressure drop 72.52 psi", row(answer(SOLVED, UnitSystem.SHOP).full(), "pressure drop"));
    }

    @Test
    void lawSourceAndOilAreSaidWithTheNumbers() {
        String screen = answer(SOLVED, UnitSystem.METRIC).full();
        assertTrue(screen.startsWith("orifice: "), screen);
        assertEquals("oil bench at 40 degC (temperature by default)", row(screen, "oil"));
        assertEquals(" viscosity 8.5 mPa.s", row(screen, "  viscosity"));
        assertEquals(" density 850 kg/m3", row(screen, "  density"));
        assertTrue(screen.contains("\nlaw     ") && screen.contains("\nsource  "), screen);
    }

    @Test
    void whatIsLeftToTheProgramIsListedWithItsSource() {
        String screen = answer(SOLVED, UnitSystem.METRIC).full();
        assertTrue(screen.contains("\nleft to the program\n"), screen);
        ORIFICE.defaults().forEach((key, value) -> assertTrue(screen.contains("  " + key + " " + value.text() + ": ")));
        assertFalse(ORIFICE.defaults().containsKey("diameter"), "that one was given");
    }

    @Test
    void aDoubtStandsUnderWarningsAndInEveryForm() {
        PartState doubtful = new PartState(
                ORIFICE,
                ASKED,
                SOLVED.outcome(),
                SOLVED.flow(),
                List.of(new PartDoubt(PartDoubt.Concern.STARVED, "inlet")),
                List.of());
        PartAnswer answer = answer(doubtful, UnitSystem.METRIC);
        assertTrue(answer.full().contains("\nwarnings\n  the inlet is starved"), answer.screen());
        assertTrue(answer.csv().contains("\nwarning,the inlet is starved"), answer.csv());
        assertTrue(Json.tree(answer.json()).at("/warnings/0").textValue().startsWith("the inlet is starved"));
        assertFalse(answer(SOLVED, UnitSystem.METRIC).full().contains("warnings"));
    }

    @Test
    void theRecordIsInSiButItsTemperature() {
        JsonNode json = Json.tree(answer(SOLVED, UnitSystem.SHOP).json());
        assertEquals("orifice", json.get("part").textValue());
        assertTrue(json.get("solved").booleanValue());
        assertEquals(
                SOLVED.flow().orElseThrow().net().orElseThrow(),
                json.get("flow_m3_s").doubleValue());
        assertEquals(DROP, json.get("pressure_drop_pa").doubleValue(), 1e-6);
        assertEquals(
                DROP * json.get("flow_m3_s").doubleValue(), json.get("power_w").doubleValue(), 1e-9);
        assertEquals(40, json.at("/oil/temperature_c").doubleValue(), 1e-9);
        assertEquals(8.5e-3, json.at("/oil/viscosity_pa_s").doubleValue(), 1e-9);
        assertTrue(json.at("/oil/by_default").booleanValue());
        assertFalse(json.has("unsolved"));
    }

    @Test
    void aPartWithoutAStateHasAReasonAndNoNumber() {
        PartAnswer none = answer(unsolved(), UnitSystem.METRIC);
        assertFalse(none.complete());
        assertTrue(answer(SOLVED, UnitSystem.METRIC).complete());
        assertTrue(row(none.full(), "no state").contains("not solved: orifice does not settle"), none.screen());
        assertFalse(none.full().contains("L/min"), none.screen());
        JsonNode json = Json.tree(none.json());
        assertFalse(json.get("solved").booleanValue() || json.has("flow_m3_s"), json.toString());
        assertEquals("orifice", json.at("/unsolved/culprit").textValue());
        assertEquals(Map.of(), unsolved().numbers());
    }

    private static PartChart chart(List<PartState> states) {
        return new PartChart(
                "orifice",
                false,
                "drop",
                "drop [bar]",
                List.of("diameter=1mm"),
                List.of(1.0, 5.0).subList(0, states.size()),
                states);
    }

    @Test
    void theChartHasTheFlowAtEachValueAndAHoleWhereItIsNotKnown() {
        LineChart chart = chart(List.of(SOLVED, unsolved())).chart(UnitSystem.METRIC);
        assertEquals("Flow of an orifice against drop", chart.title());
        assertEquals("diameter=1mm; bench at 40 degC", chart.subtitle());
        assertEquals(
                6e4 * SOLVED.flow().orElseThrow().net().orElseThrow(),
                chart.points().get(0).y(),
                1e-9);
        assertTrue(Double.isNaN(chart.points().get(1).y()));
    }

    @Test
    void thereIsNothingToDrawWhereNoValueIsKnown() {
        assertTrue(chart(List.of(SOLVED, unsolved())).any());
        assertFalse(chart(List.of(unsolved())).any());
        assertTrue(answer(SOLVED, UnitSystem.METRIC).picture().isEmpty(), "no chart was asked for");
        assertTrue(new PartAnswer(SOLVED, Optional.of(chart(List.of(solved(1e5), SOLVED))), UnitSystem.METRIC)
                .picture()
                .isPresent());
    }

    @Test
    void helpNamesEveryKeyWithItsUnitsAndWhatHappensWhereItIsLeftOut() {
        String first = KindHelp.keys(ORIFICE.kind(), false);
        assertTrue(!first.contains("(from memory)") && first.contains("hotidle part orifice --help --full"), first);
        String help = KindHelp.keys(ORIFICE.kind(), true);
        assertTrue(help.contains("\n  diameter=  "), help);
        assertTrue(help.contains("\n      needed\n"), help);
        assertTrue(help.contains("\n      left out: 0 mm, "), help);
        assertTrue(help.contains("or with --drop PRESSURE from the first to the second"), help);
    }
}
