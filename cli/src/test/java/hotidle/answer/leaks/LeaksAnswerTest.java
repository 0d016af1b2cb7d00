package hotidle.answer.leaks;

import static hotidle.answer.ReadyCircuits.rpm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.ReadyCircuits;
import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.answer.phrase.RepairPhrase;
import hotidle.assess.Assessment;
import hotidle.assess.OilBudget;
import hotidle.assess.Roles;
import hotidle.circuits.DescribedCircuit;
import hotidle.newton.SteadySolver;
import hotidle.result.Outcome;
import hotidle.study.LeakStudy;
import hotidle.study.RepairFindings;
import hotidle.study.Repairs;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The worn pump of the training rig at its slow duty point, on which nothing is commanded. */
class LeaksAnswerTest {

    private static final DescribedCircuit RIG = ReadyCircuits.read("training-rig");
    private static final Transmission WORN = RIG.unit("worn");
    private static final DutyPoint SLOW = WORN.duties().get(0);
    private static final Outcome SOLVED = new SteadySolver(WORN.network()).solve(WORN.conditions(SLOW));
    private static final OilBudget BUDGET = OilBudget.of(WORN, SOLVED.state().orElseThrow());

    /** Not by an initialiser: the study's threads call the step, which is this class's own, and would wait for it for ever. */
    private static Repairs repairs;

    @BeforeAll
    static void tryRepairs() {
        repairs = Repairs.study(RIG.adjustable("worn"), SLOW, rpm(400, 800), 3, () -> {})
                .orElseThrow();
    }

    private static LeaksAnswer answer(UnitSystem units, boolean lowAtIdle) {
        return answer(units, lowAtIdle, false);
    }

    private static LeaksAnswer answer(UnitSystem units, boolean lowAtIdle, boolean faulted) {
        return new LeaksAnswer(
                units,
                RIG.about(),
                RIG.abouts(),
                WORN,
                Roles.of(WORN),
                SLOW,
                SOLVED,
                SOLVED.state().map(state -> Assessment.of(WORN, SLOW, state)),
                Optional.of(new LeakStudy.Found(
                        BUDGET, repairs, RepairFindings.of(repairs, false, 15), lowAtIdle, 400 / 60.0)),
                faulted);
    }

    private static final LeaksAnswer UNSOLVED = new LeaksAnswer(
            UnitSystem.SHOP,
            RIG.about(),
            RIG.abouts(),
            WORN,
            Roles.of(WORN),
            SLOW,
            ReadyCircuits.unsolved(WORN, SLOW),
            Optional.empty(),
            Optional.empty(),
            false);

    /** In SI no rounding hides a gap. */
    @Test
    void theFirstScreenAccountsForAllThatThePumpDisplaces() {
        List<Double> flows = answer(UnitSystem.SI, false)
                .screen()
                .lines()
                .dropWhile(line -> !line.startsWith("loses most"))
                .skip(2)
                .takeWhile(line -> line.contains(" %"))
                .map(line -> line.replaceAll("^.{2,}?  +(-?[0-9.]+) .*", "$1"))
                .map(Double::valueOf)
                .toList();
        assertEquals(
                BUDGET.displaced(),
                flows.stream().mapToDouble(Double::doubleValue).sum(),
                flows.size() * 0.5e-7);
    }

    @Test
    void whoReadsOfFitsIsSentToJobsUnlessAFaultLiesOverThem() {
        assertTrue(answer(UnitSystem.SHOP, true).screen().contains("\n" + RepairPhrase.NEXT_JOBS + "\n"));
        assertFalse(answer(UnitSystem.SHOP, true, true).screen().contains("--by job"));
    }

    @Test
    void aBenchIsToldItsLinePressureAndNoSetPressure() {
        String said = answer(UnitSystem.METRIC, false)
                .full()
                .lines()
                .filter(line -> line.startsWith("worn at slow"))
                .findFirst()
                .orElseThrow();
        double line = SOLVED.state().orElseThrow().pressure("line");
        assertEquals(
                String.format(
                        java.util.Locale.ROOT,
                        "worn at slow: 400 rpm, bench, sump 40 degC, line %.2f bar.",
                        line / 1e5),
                said);
    }

    @Test
    void theWarningAgainstAStallTestStandsOnlyWhereIdlePressureIsLow() {
        assertTrue(answer(UnitSystem.SHOP, true).full().contains("IDLE PRESSURE IS LOW with worn"));
        assertFalse(answer(UnitSystem.SHOP, false).full().contains("IDLE PRESSURE IS LOW"));
    }

    @Test
    void theRowsOfASpreadsheetAreThePathsAndThenTheRepairs() {
        long rows = answer(UnitSystem.SI, false).csv().lines().count();
        assertEquals(
                1
                        + BUDGET.paths().size()
                        + repairs.alone().size()
                        + repairs.order().size(),
                rows);
        assertTrue(answer(UnitSystem.METRIC, false)
                .csv()
                .startsWith("kind,name,group or sizes,fate,L/min,share,line bar,lube L/min,onset rpm\n"));
    }

    @Test
    void theRecordAddsUpToWhatThePumpDisplaces() {
        JsonNode json = Json.tree(answer(UnitSystem.SHOP, false).json());
        double displaced = json.at("/oil_budget/displaced_m3_s").doubleValue();
        double sum = 0;
        for (JsonNode path : json.at("/oil_budget/paths")) {
            sum += path.get("flow_m3_s").doubleValue();
            assertEquals(
                    path.get("flow_m3_s").doubleValue() / displaced,
                    path.get("share").doubleValue(),
                    1e-12);
        }
        assertEquals(12e-6 * 400 / 60, displaced, 1e-9, "12 cm3 a turn at 400 rpm");
        assertEquals(displaced, sum, 1e-9 * displaced);
        assertEquals(repairs.alone().size(), json.get("repairs").size());
        assertEquals(repairs.before().line(), json.at("/before/line_pa").doubleValue());
        assertTrue(json.at("/before/set_pressure_pa").isNull(), "nothing is commanded");
    }

    @Test
    void aUnitAsNewLosesLessThanTheWornOne() {
        JsonNode json = Json.tree(answer(UnitSystem.SHOP, false).json());
        assertTrue(json.at("/all_as_new/lost_m3_s").doubleValue()
                < json.at("/before/lost_m3_s").doubleValue());
        assertTrue(json.at("/all_as_new/line_pa").doubleValue()
                > json.at("/before/line_pa").doubleValue());
    }

    @Test
    void whereNoStateIsFoundThereIsAReasonAndNoBudget() {
        assertFalse(UNSOLVED.complete());
        assertTrue(answer(UnitSystem.SHOP, false).complete());
        assertTrue(UNSOLVED.full()
                .replaceAll("\\s+", " ")
                .startsWith("worn at slow: not solved: node line does not settle"));
        assertFalse(UNSOLVED.full().contains("gpm"), UNSOLVED.screen());
        JsonNode json = Json.tree(UNSOLVED.json());
        assertFalse(json.has("oil_budget") || json.has("before") || json.has("repairs"), json.toString());
        assertFalse(json.at("/builds/0/states/0/solved").booleanValue());
        assertEquals(2, UNSOLVED.csv().lines().count());
        assertTrue(UNSOLVED.csv().contains("\nunsolved,"), UNSOLVED.csv());
    }

    @Test
    void oilIsDrawnInNoPicture() {
        assertTrue(answer(UnitSystem.SHOP, false).picture().isEmpty());
    }
}
