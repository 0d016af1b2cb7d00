package hotidle.answer.spread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.ReadyCircuits;
import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Margin;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.Judgement;
import hotidle.study.spread.ExactSum;
import hotidle.study.spread.MarginTally;
import hotidle.study.spread.SizePrior;
import hotidle.study.spread.SobolSums;
import hotidle.study.spread.SpreadFindings;
import hotidle.study.spread.SpreadQuestion;
import hotidle.study.spread.SpreadTally;
import hotidle.study.spread.Unmeasured;
import hotidle.transmission.Adjustable;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Counts of drawn units, made by hand: nothing is drawn or solved. */
class SpreadRowsTest {

    private static final DescribedCircuit CIRCUIT = ReadyCircuits.read("crescent-four");
    private static final Adjustable BUILD = CIRCUIT.adjustable("fresh");
    private static final List<SizePrior> SIZES = Unmeasured.of(BUILD, Unmeasured.FitState.WORN);
    private static final ExactSum NO_SUM = new ExactSum(0, BigDecimal.ZERO, BigDecimal.ZERO);

    private static SobolSums noSums() {
        List<ExactSum> none = Collections.nCopies(SIZES.size(), NO_SUM);
        return new SobolSums(NO_SUM, none, none, 0);
    }

    /** Headroom of 10 % in half of 100 units, 20 % in the others. */
    private static final ExactSum HEADROOM = new ExactSum(100, new BigDecimal("15"), new BigDecimal("2.5"));

    private static MarginTally margin(Margin.Kind kind, String part, long holds, long fails, long unknown) {
        return new MarginTally(
                new Judgement.Key("hot-idle", kind, part), holds, fails, unknown, HEADROOM, noSums(), noSums());
    }

    private static final MarginTally SURE = margin(Margin.Kind.COOLER, "cooler", 100, 0, 0);
    private static final MarginTally DOUBTFUL = margin(Margin.Kind.REGULATION, "pump", 70, 30, 0);
    private static final MarginTally OPEN = margin(Margin.Kind.FILM, "hub", 90, 0, 10);

    private static SpreadTally tally(long unsolved, MarginTally... margins) {
        return new SpreadTally(100, 0, unsolved, 60, 35, 0, 830, List.of(margins));
    }

    private static SpreadAnswer answer(SpreadTally tally, SpreadFindings findings) {
        return new SpreadAnswer(
                UnitSystem.METRIC,
                "",
                new SpreadQuestion(BUILD, SIZES, List.of("hot-idle"), 100, 0, 1),
                tally,
                findings,
                "");
    }

    private static SpreadAnswer answer(SpreadTally tally) {
        return answer(tally, SpreadFindings.of(SIZES, tally));
    }

    private static SpreadFindings worth(double... settles) {
        List<SpreadFindings.Worth> worth = new java.util.ArrayList<>();
        for (int i = 0; i < settles.length; i++) {
            worth.add(new SpreadFindings.Worth(SIZES.get(i), settles[i], 0.02));
        }
        return new SpreadFindings(SIZES, List.of(DOUBTFUL), List.of(SURE), worth);
    }

    @Test
    void aLimitThatHoldsInEveryUnitIsNotListedBesideOneThatDoesNot() {
        String screen = answer(tally(0, SURE, DOUBTFUL)).screen();
        assertTrue(screen.lines().anyMatch(line -> line.matches("regulation .*70 % .*30 %.*")), screen);
        assertFalse(screen.lines().anyMatch(line -> line.startsWith("cooler flow")), screen);
        assertTrue(screen.contains("1 more limit holds in every unit"), screen);
    }

    @Test
    void whereEveryLimitHoldsTheOnesWithLeastHeadroomAreListed() {
        String screen = answer(tally(0, SURE)).screen();
        assertTrue(screen.contains("100 %"), screen);
        assertFalse(screen.contains("more limit holds in every unit"), screen);
    }

    @Test
    void whereNoUnitHoldsALimitThatIsToldAsNone() {
        String screen = answer(tally(0, margin(Margin.Kind.REGULATION, "pump", 0, 100, 0)))
                .screen();
        assertTrue(
                screen.lines()
                        .anyMatch(line -> line.matches("regulation .* 0 % \\(0 to 4\\) +100 % \\(96 to 100\\) .*")),
                screen);
    }

    @Test
    void unitsInWhichALimitIsNotKnownAreToldAndAreNoFailures() {
        String row = answer(tally(3, OPEN))
                .full()
                .lines()
                .filter(line -> line.contains("10 %"))
                .findFirst()
                .orElseThrow();
        assertTrue(row.matches(".*90 % \\(.*\\) +0 % \\(.*\\) +10 % \\(.*\\).*"), row);
        assertFalse(answer(tally(3, OPEN)).complete(), "some states were not found");
    }

    @Test
    void theHeadroomIsToldWithItsDeviation() {
        String row = answer(tally(0, DOUBTFUL)).csv().lines().toList().get(1);
        assertTrue(row.startsWith("fresh,hot-idle,"), row);
        assertTrue(row.contains(",0.7,") && row.contains(",0.3,0,0.15,0.05025"), row);
    }

    @Test
    void theFitMostWorthMeasuringIsNamed() {
        SpreadRows rows = new SpreadRows(UnitSystem.METRIC, worth(0.4, 0.1));
        String said = rows.best(50);
        assertTrue(
                said.startsWith("Most worth measuring before the build: "
                        + SIZES.get(0).size().name() + ", which settles 40 % ± 2"),
                said);
        assertTrue(said.endsWith("of the doubt whether limits hold."), said);
    }

    @Test
    void aFitThatMayBeAsGoodIsNamedBesideIt() {
        String said = new SpreadRows(UnitSystem.METRIC, worth(0.4, 0.38)).best(50);
        assertTrue(said.contains(SIZES.get(1).size().name() + " cannot be told from it"), said);
    }

    @Test
    void whereNoneStandsOutOfTheSamplingErrorNoneIsNamed() {
        String said = new SpreadRows(UnitSystem.METRIC, worth(0.03, 0.02)).best(50);
        assertTrue(said.contains("no fit stands out"), said);
    }

    @Test
    void withoutPairsNothingIsSaidAndWithoutDoubtNothingIsWorthIt() {
        assertEquals("", new SpreadRows(UnitSystem.METRIC, worth(0.4)).best(0));
        assertTrue(new SpreadRows(UnitSystem.METRIC, worth()).best(50).startsWith("Nothing is in doubt"));
    }

    @Test
    void aSizeIsDrawnBetweenItsEndsAndToldInMetres() {
        JsonNode sizes = Json.tree(answer(tally(0, DOUBTFUL)).json()).get("sizes");
        assertEquals(SIZES.size(), sizes.size());
        for (JsonNode size : sizes) {
            assertTrue(size.get("low").doubleValue() <= size.get("median").doubleValue(), size.toString());
            assertTrue(size.get("median").doubleValue() <= size.get("high").doubleValue(), size.toString());
            assertTrue(size.get("settles").isNull(), "nothing was paired");
        }
    }

    @Test
    void aPartOfARunSaysThatItIsOne() {
        SpreadTally some = tally(0, DOUBTFUL);
        SpreadAnswer part = new SpreadAnswer(
                UnitSystem.METRIC,
                "",
                new SpreadQuestion(BUILD, SIZES, List.of("hot-idle"), 100, 0, 1),
                some,
                SpreadFindings.of(SIZES, some),
                "part 2 of 3 alone");
        assertTrue(part.screen().replaceAll("\\s+", " ").contains("seed 1, part 2 of 3 alone."), part.screen());
    }
}
