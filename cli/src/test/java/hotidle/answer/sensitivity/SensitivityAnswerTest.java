package hotidle.answer.sensitivity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.answer.phrase.SensitivityPhrase;
import hotidle.assess.Margin;
import hotidle.study.Judgement;
import hotidle.study.LeftOut;
import hotidle.study.Sensitivity;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Made slopes of two limits by a bore that wears, a hole that does not, and a scored pump; nothing is solved. */
class SensitivityAnswerTest {

    private static final Judgement.Key LINE = new Judgement.Key("hot-idle", Margin.Kind.REGULATION, "pump");
    private static final Judgement.Key COOLER = new Judgement.Key("cruise", Margin.Kind.COOLER, "cooler");
    private static final WearSize BORE = new WearSize(
            "regulator",
            "bore",
            WearSize.SizeKind.LENGTH,
            0.01606,
            0.01602,
            OptionalDouble.of(0.0161),
            OptionalDouble.empty());
    private static final WearSize HOLE = new WearSize(
            "feed",
            "diameter",
            WearSize.SizeKind.LENGTH,
            0.8e-3,
            0.8e-3,
            OptionalDouble.empty(),
            OptionalDouble.empty());
    private static final WearSize SCORES = new WearSize(
            "pump",
            "orifice-slip-area",
            WearSize.SizeKind.AREA,
            4e-7,
            1e-7,
            OptionalDouble.empty(),
            OptionalDouble.empty());

    private static final Sensitivity.Rate BORE_ON_LINE = new Sensitivity.Rate(BORE, LINE, -4000, false);
    private static final Sensitivity.Rate BORE_ON_COOLER = new Sensitivity.Rate(BORE, COOLER, -9000, false);
    private static final Sensitivity.Rate SCORES_ON_LINE = new Sensitivity.Rate(SCORES, LINE, -1e6, false);

    private static final LeftOut NOTHING =
            new LeftOut(LeftOut.LeftOutCause.NOTHING_NEEDED, Optional.of(Margin.Kind.RELIEF), "relief", "cruise");

    private static Sensitivity found(List<Sensitivity.Rate> rates, List<LeftOut> leftOut, List<String> unsolved) {
        Map<Judgement.Key, Margin> margins = new LinkedHashMap<>();
        margins.put(COOLER, Margin.of(Margin.Kind.COOLER, "cooler", 1.5e-4, 1e-4, Margin.Scale.FLOW));
        margins.put(LINE, Margin.of(Margin.Kind.REGULATION, "pump", 0.8e-4, 1e-4, Margin.Scale.FLOW));
        return new Sensitivity(margins, rates, leftOut, unsolved);
    }

    private static SensitivityAnswer answer(UnitSystem units, Sensitivity found) {
        return new SensitivityAnswer(
                units, "rig", "a bench", List.of(new SensitivityAnswer.BuildSlopes("worn", found)), List.of("worn"));
    }

    private static SensitivityAnswer answer(UnitSystem units, Sensitivity.Rate... rates) {
        return answer(units, found(List.of(rates), List.of(), List.of()));
    }

    private static String said(SensitivityAnswer answer) {
        return answer.full().replaceAll("\\s+", " ");
    }

    @Test
    void aLowIdleForbidsTheStallTestHereToo() {
        SensitivityAnswer answer = answer(UnitSystem.METRIC, BORE_ON_LINE);
        String loud = "IDLE PRESSURE IS LOW with worn: no stall test";
        assertTrue(answer.screen().contains(loud) && answer.full().contains(loud), answer.screen());
    }

    @Test
    void theLimitWithTheLeastHeadroomIsTheOneThatIsRankedBy() {
        assertTrue(said(answer(UnitSystem.METRIC, BORE_ON_LINE))
                .contains("worn: least headroom -20 %, regulation (pump) at hot-idle. A size"));
    }

    /** 0.01 mm of the bore are 0.04 of headroom, 4 points; 0.1 mm² of the scores are 0.1. */
    @Test
    void effectsAreCountedInTheStepThatIsMeasuredTheStrongestFirst() {
        List<String> lines = answer(UnitSystem.METRIC, BORE_ON_LINE, SCORES_ON_LINE)
                .full()
                .lines()
                .toList();
        String scores = lines.stream()
                .filter(line -> line.startsWith("pump."))
                .findFirst()
                .orElseThrow();
        String bore = lines.stream()
                .filter(line -> line.startsWith("regulator."))
                .findFirst()
                .orElseThrow();
        assertTrue(scores.matches("pump\\.orifice-slip-area +0\\.40 mm2 +-10\\.00 .*"), scores);
        assertTrue(bore.matches("regulator\\.bore +16\\.060 mm +-4\\.00 .*"), bore);
        assertTrue(lines.indexOf(scores) < lines.indexOf(bore));
    }

    /** A thousandth of an inch is 2.54 hundredths of a millimetre. */
    @Test
    void aShopCountsPerThousandthOfAnInch() {
        assertTrue(said(answer(UnitSystem.SHOP, BORE_ON_LINE)).contains("regulator.bore 0.6323 in -10.16"));
    }

    @Test
    void besideEachSizeStandsTheLimitThatItMovesMost() {
        assertTrue(said(answer(UnitSystem.METRIC, BORE_ON_LINE, BORE_ON_COOLER))
                .contains("regulator.bore 16.060 mm -4.00 cooler (cooler) at cruise -9.00"));
    }

    @Test
    void aSizeBelowAMillimetreIsToldAsAClearance() {
        String said = said(answer(UnitSystem.METRIC, new Sensitivity.Rate(HOLE, LINE, 2000, false)));
        assertTrue(said.contains("feed.diameter 800.0 um +2.00"), said);
    }

    @Test
    void aWornFitThatHelpsIsNoReasonToLeaveItButAHoleThatHelpsIsNoFit() {
        Sensitivity.Rate bore = new Sensitivity.Rate(BORE, LINE, 4000, false);
        Sensitivity.Rate hole = new Sensitivity.Rate(HOLE, LINE, 4000, false);
        String care = SensitivityPhrase.PLUS_IS_NO_REPAIR;
        assertTrue(said(answer(UnitSystem.METRIC, bore)).contains(care));
        assertFalse(said(answer(UnitSystem.METRIC, hole)).contains(care));
        assertFalse(said(answer(UnitSystem.METRIC, BORE_ON_LINE)).contains(care));
    }

    @Test
    void aSlopeToOneSideOnlyIsMarkedAndTheMarkExplained() {
        Sensitivity.Rate edge = new Sensitivity.Rate(BORE, LINE, -4000, true);
        SensitivityAnswer answer = answer(UnitSystem.METRIC, edge);
        assertTrue(said(answer).contains("-4.00 *"), answer.full());
        assertTrue(said(answer).contains(SensitivityPhrase.ONE_SIDED));
        assertTrue(answer.csv().endsWith(",yes\n"), answer.csv());
        assertFalse(said(answer(UnitSystem.METRIC, BORE_ON_LINE)).contains("a stop takes hold"));
    }

    private static Sensitivity.Rate small(int number, double points) {
        WearSize size = new WearSize(
                "bore-" + number,
                "bore",
                WearSize.SizeKind.LENGTH,
                0.014,
                0.014,
                OptionalDouble.of(0.0141),
                OptionalDouble.empty());
        return new Sensitivity.Rate(size, LINE, -points * 1e-2 / 1e-5, false);
    }

    @Test
    void sizesThatMoveNothingToSpeakOfAreCounted() {
        String said = said(answer(UnitSystem.METRIC, BORE_ON_LINE, small(1, 0.01), small(2, 0.04)));
        assertTrue(said.contains("2 more sizes move it by 0.05 points or less each."), said);
        assertFalse(said.contains("bore-1.bore"), said);
        assertTrue(said(answer(UnitSystem.METRIC, small(1, 0.01))).contains(SensitivityPhrase.NONE_MOVES_IT));
    }

    @Test
    void ofManySizesTheStrongestTwentyFiveAreShownAndTheNextOneBoundsTheRest() {
        List<Sensitivity.Rate> many = new ArrayList<>();
        for (int i = 1; i <= 30; i++) {
            many.add(small(i, 40 - i));
        }
        String screen =
                answer(UnitSystem.METRIC, found(many, List.of(), List.of())).full();
        assertEquals(25, screen.lines().filter(line -> line.startsWith("bore-")).count());
        assertTrue(screen.contains("5 more sizes move it by 14.00 points or less each."), screen);
    }

    @Test
    void anAnswerWithADutyThatIsNotSolvedIsNotComplete() {
        SensitivityAnswer answer =
                answer(UnitSystem.METRIC, found(List.of(BORE_ON_LINE), List.of(NOTHING), List.of("stall")));
        assertFalse(answer.complete());
        assertTrue(
                said(answer)
                        .contains(
                                "Not counted: relief-valve (relief) at cruise: nothing is needed. Not known at stall: no steady state"));
        assertEquals(
                "stall",
                Json.tree(answer.json()).at("/builds/0/unsolved_duties/0").textValue());
        assertTrue(answer(UnitSystem.METRIC, BORE_ON_LINE).complete());
    }

    @Test
    void whereNoLimitIsKnownNothingIsRanked() {
        SensitivityAnswer answer =
                answer(UnitSystem.METRIC, new Sensitivity(Map.of(), List.of(), List.of(), List.of("stall")));
        assertTrue(said(answer).contains("nothing can be ranked. Not known at stall"), answer.full());
        assertEquals(1, answer.csv().lines().count());
        assertTrue(Json.tree(answer.json()).at("/builds/0/least").isNull());
    }

    @Test
    void aSpreadsheetGetsEverySlopeInTheUnitsOfTheUser() {
        List<String> rows = answer(UnitSystem.METRIC, BORE_ON_LINE, BORE_ON_COOLER)
                .csv()
                .lines()
                .toList();
        assertEquals("worn,regulator.bore,16.06,mm,regulation,pump,hot-idle,-0.2,-0.04,0.01 mm,no", rows.get(1));
        assertEquals("worn,regulator.bore,16.06,mm,cooler,cooler,cruise,0.5,-0.09,0.01 mm,no", rows.get(2));
    }

    @Test
    void theRecordHasTheSlopesThemselvesInSi() {
        JsonNode build = Json.tree(
                        answer(UnitSystem.SHOP, BORE_ON_LINE, SCORES_ON_LINE).json())
                .at("/builds/0");
        assertEquals("regulation", build.at("/least/margin").textValue());
        assertEquals(-0.2, build.at("/least/headroom").doubleValue(), 1e-12);
        assertEquals(-4000, build.at("/sensitivities/0/headroom_by_size").doubleValue());
        assertEquals(0.01606, build.at("/sensitivities/0/now").doubleValue());
        assertEquals("m2", build.at("/sensitivities/1/size_unit").textValue());
        assertFalse(build.at("/sensitivities/1/one_sided").booleanValue());
    }

    @Test
    void whatHasNoSlopeIsNamedWithItsReason() {
        LeftOut line =
                new LeftOut(LeftOut.LeftOutCause.HELD_LINE_UNSOLVED, Optional.of(Margin.Kind.REGULATION), "", "stall");
        LeftOut film = new LeftOut(
                LeftOut.LeftOutCause.VALUE_NOT_KNOWN, Optional.of(Margin.Kind.FILM), "hub-bushing", "stall");
        LeftOut nil = new LeftOut(LeftOut.LeftOutCause.SIZE_IS_NIL, Optional.empty(), "relief.leak-clearance", "");
        LeftOut fixed = new LeftOut(LeftOut.LeftOutCause.SIZE_IS_FIXED, Optional.empty(), "plate.gap", "");
        assertEquals(
                List.of(
                        "regulation at stall: no steady state was found with the line held",
                        "film (hub-bushing) at stall: its value is not known",
                        "relief.leak-clearance: is nil here",
                        "plate.gap: cannot be made a little larger and smaller"),
                NotCounted.of(List.of(line, film, nil, fixed)));
    }
}
