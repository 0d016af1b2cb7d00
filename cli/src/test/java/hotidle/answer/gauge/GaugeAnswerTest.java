package hotidle.answer.gauge;

import static hotidle.answer.gauge.MadeReadings.COOLER;
import static hotidle.answer.gauge.MadeReadings.LINE;
import static hotidle.answer.gauge.MadeReadings.PSI;
import static hotidle.answer.gauge.MadeReadings.answer;
import static hotidle.answer.gauge.MadeReadings.bore;
import static hotidle.answer.gauge.MadeReadings.cause;
import static hotidle.answer.gauge.MadeReadings.findings;
import static hotidle.answer.gauge.MadeReadings.group;
import static hotidle.answer.gauge.MadeReadings.share;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.ReadyCircuits;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.GaugePhrase;
import hotidle.fault.FaultKind;
import hotidle.study.gauge.Cause;
import hotidle.study.gauge.GaugeFindings;
import hotidle.study.gauge.GaugeReading;
import hotidle.study.gauge.NextReading;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is said of gauge readings, by findings made by hand. Past 300 lines: each thing that can be found has its statement here. */
class GaugeAnswerTest {

    private static final Cause SPRING = cause(share(FaultKind.SPRING_WEAK, "regulator"), 0.2, 0.7, 0.05, true);
    private static final Cause BORE = cause(bore("regulator"), 0.5, 0.2, 0.4, true);
    private static final Cause FILTER = cause(share(FaultKind.FILTER_BLOCKED, "filter"), 0.3, 0.1, 0.9, false);

    private static String words(String screen) {
        return screen.replaceAll("\\s+", " ");
    }

    private static List<String> shares(String screen) {
        return screen.lines().filter(line -> line.matches(" +<?\\d+ % .*")).toList();
    }

    @Test
    void readingsThatAgreeHaveNoCauseAndNoShareOfOne() {
        GaugeAnswer answer = answer(findings(true, List.of(group(0.9, SPRING)), 0.1, List.of()), List.of());
        assertTrue(words(answer.screen()).contains("THEY AGREE with a sound build"), answer.screen());
        assertFalse(answer.screen().contains("What explains them"), answer.screen());
        String row = answer.full()
                .lines()
                .filter(line -> line.startsWith("spring-weak@regulator"))
                .findFirst()
                .orElseThrow();
        assertTrue(row.matches("spring-weak@regulator +- .*"), row);
    }

    @Test
    void partByPartTheSameIsToldAsOnTheScreen() {
        GaugeAnswer answer =
                answer(findings(false, List.of(group(0.7, SPRING), group(0.2, BORE)), 0.1, List.of()), List.of());
        ToldReadings told = answer.told();
        String full = words(answer.full());
        assertFalse(told.agrees());
        assertTrue(full.contains(told.verdict()) && told.verdict().contains("THEY DO NOT AGREE"), told.verdict());
        assertTrue(full.contains(told.standsOut()), told.standsOut());
        assertTrue(full.contains(told.over()));
        assertEquals(3, told.causes().size(), "two groups and none of these");
        told.causes().forEach(cause -> assertTrue(full.contains(cause), cause));
        assertEquals(GaugePhrase.NOTHING_NEXT, told.nothingNext());
        assertEquals(List.of("fault", "share", "best size", "hidden up to"), told.faultsHead());
        assertEquals("spring-weak@regulator", told.faults().get(0).get(0));
        assertEquals("", told.noStall());
    }

    @Test
    void ofReadingsThatAgreeNoCauseIsTold() {
        ToldReadings told = answer(findings(true, List.of(group(0.9, SPRING)), 0.1, List.of()), List.of())
                .told();
        assertTrue(told.agrees());
        assertEquals(List.of(), told.causes());
        assertEquals(List.of(), told.next());
        assertEquals("", told.over() + told.nothingNext());
    }

    @Test
    void theHardestPointIsTheSlowestIdleWithTheHighestCommand() {
        Transmission unit = ReadyCircuits.read("shuttle-five").unit();
        GaugeAnswer.Hardest hardest = GaugeAnswer.Hardest.of(unit);
        assertEquals(unit.duties().stream().mapToDouble(DutyPoint::speed).min().orElseThrow(), hardest.speed(), 1e-12);
        double highest = unit.command().pilot().orElseThrow().lineByTorque().highest();
        assertEquals(highest, hardest.commanded().orElseThrow(), 1e-9);
        assertTrue(hardest.temperature().isPresent());
        assertTrue(GaugeAnswer.Hardest.of(ReadyCircuits.read("valve-body-bench").unit())
                .commanded()
                .isEmpty());
    }

    @Test
    void theMostLikelyGroupStandsFirstAndNoneOfTheseLast() {
        GaugeAnswer answer =
                answer(findings(false, List.of(group(0.7, SPRING), group(0.2, BORE)), 0.1, List.of()), List.of());
        List<String> shares = shares(answer.screen());
        assertEquals(3, shares.size(), answer.screen());
        assertTrue(shares.get(0).contains("70 %") && shares.get(0).contains("spring weak"), shares.get(0));
        assertTrue(shares.get(2).contains("none of these"), shares.get(2));
        assertFalse(shares.get(2).contains("leaves a misfit"), shares.get(2));
    }

    @Test
    void whereOnlyOneSingleFaultIsLeftNoReadingIsAskedForToTellItApart() {
        GaugeAnswer one = answer(findings(false, List.of(group(1, SPRING)), 0, List.of()), List.of());
        assertTrue(words(one.screen()).contains(GaugePhrase.ONE_LEFT), one.screen());
    }

    @Test
    void aPairThatIsMoreLikelyThanAnySingleFaultStandsFirstAndWhatIsNotNamedIsCounted() {
        GaugeFindings.Pair pair =
                new GaugeFindings.Pair(SPRING.fault().of(0.2), BORE.fault().of(0.5), 0.5, 1.5);
        GaugeAnswer answer = answer(findings(false, List.of(group(0.1, SPRING)), 0.01, List.of(pair)), List.of());
        List<String> shares = shares(answer.screen());
        assertTrue(shares.get(0).contains("50 %") && answer.screen().contains("together with"), answer.screen());
        assertTrue(shares.get(3).contains("39 %  other faults and pairs of faults"), answer.screen());
        assertTrue(new GaugePicture(answer).causes().orElseThrow().title().contains(" + "), "the picture has it too");
    }

    @Test
    void aCauseThatWouldNotAgreeWithTheReadingsEitherIsSaidToFitPoorly() {
        Cause poor = new Cause(SPRING.fault(), 0.2, 0.1, 0.3, 18, 1, 0.1, true);
        String screen = words(answer(findings(false, List.of(group(1, poor)), 0, List.of()), List.of())
                .screen());
        assertTrue(screen.contains("NOTHING TRIED FITS THEM WELL."), screen);
        assertTrue(screen.contains("misfit 18.0, FITS POORLY"), screen);
        assertTrue(screen.contains(GaugePhrase.FIRST_CHECK), "nothing is told apart among poor causes: " + screen);
    }

    @Test
    void whereNoneOfTheseIsMoreLikelyThanTheBestFaultItStandsFirstWithTheMisfitThatIsLeft() {
        GaugeAnswer answer = answer(findings(false, List.of(group(0.2, SPRING)), 0.8, List.of()), List.of());
        assertTrue(
                words(answer.screen())
                        .contains(
                                "80 % none of these, each reading off in a way of its own: the best single fault leaves a misfit of 3.2"),
                answer.screen());
    }

    @Test
    void whereNoFaultCouldBeSolvedNoMisfitIsTold() {
        GaugeAnswer answer = answer(findings(false, List.of(), 1, List.of()), List.of());
        assertTrue(answer.screen().contains("none of these"), answer.screen());
        assertFalse(answer.screen().contains("NaN"), answer.screen());
        assertFalse(answer.screen().contains("misfit of"), answer.screen());
    }

    @Test
    void faultsThatTheReadingsCannotTellApartShareOneShareAndAreCountedBeyondFour() {
        Cause[] alike = IntStream.range(0, 7)
                .mapToObj(i -> cause(bore("valve-" + i), 0.5, 0.1, 0.4, true))
                .toArray(Cause[]::new);
        GaugeAnswer answer = answer(findings(false, List.of(group(0.7, alike)), 0.3, List.of()), List.of());
        String screen = words(answer.screen());
        assertTrue(
                screen.contains("one of these 7, which these readings cannot tell apart: valve-0 (bore worn)"), screen);
        assertTrue(screen.contains(" and 2 more; misfit 3.2"), screen);
        assertFalse(words(answer.full()).contains("more; misfit"), "in full all of them are named");
    }

    @Test
    void aReadingThatStandsOutIsToldBesideWhatASoundBuildReads() {
        GaugeAnswer answer = answer(findings(false, List.of(group(0.9, SPRING)), 0.1, List.of()), List.of());
        String screen = words(answer.screen());
        assertTrue(
                screen.contains("line-tap at 600 rpm in drive, 212 degF: reads 60 psi, a sound build 92 to 108 psi"),
                screen);
    }

    @Test
    void ofManyReadingsThatStandOutTheFirstScreenNamesThreeAndCountsTheOthers() {
        GaugeFindings one = findings(false, List.of(group(0.9, SPRING)), 0.1, List.of());
        GaugeFindings many = new GaugeFindings(
                IntStream.range(0, 8).mapToObj(i -> one.readings().get(0)).toList(),
                IntStream.range(0, 8).mapToObj(i -> one.expected().get(0)).toList(),
                one.agreement(),
                0,
                one.groups(),
                one.none(),
                one.pairs(),
                one.causes(),
                one.notSolved());
        assertTrue(words(answer(many, List.of()).screen()).contains("; and 5 more."));
        assertFalse(words(answer(many, List.of()).full()).contains("; and 5 more."));
    }

    @Test
    void aNeedleOnItsStopIsToldAsBelowAndStandsOutOnlyWhereASoundBuildReadsMore() {
        GaugeFindings low = new GaugeFindings(
                List.of(MadeReadings.reads(LINE, GaugeReading.Sense.BELOW, 60 * PSI)),
                List.of(new GaugeFindings.ExpectedReading(30 * PSI, 4 * PSI, 7.5)),
                new GaugeFindings.Agreement(0, 0, 1, true),
                0,
                List.of(),
                0,
                List.of(),
                List.of(),
                List.of());
        GaugeAnswer answer = answer(low, List.of());
        assertTrue(answer.screen().contains("No single reading stands out."), answer.screen());
        assertTrue(answer.full().contains("below 60 psi"), answer.full());
    }

    @Test
    void aFlowMeterIsReadAsAFlow() {
        GaugeFindings flow = new GaugeFindings(
                List.of(MadeReadings.reads(COOLER, GaugeReading.Sense.EXACT, 5e-5)),
                List.of(new GaugeFindings.ExpectedReading(1e-4, 5e-6, -10)),
                new GaugeFindings.Agreement(100, 1, 1e-9, false),
                0,
                List.of(group(0.9, SPRING)),
                0.1,
                List.of(),
                List.of(SPRING),
                List.of());
        GaugeAnswer answer = answer(UnitSystem.METRIC, flow, List.of(), true, OptionalDouble.empty(), List.of());
        assertTrue(
                words(answer.screen())
                        .contains(
                                "cooler flow at 600 rpm in drive, 100 degC: reads 3.0 L/min, a sound build 5.4 to 6.6"),
                answer.screen());
    }

    @Test
    void twoFaultsAtOnceAreToldOnlyWhereTheyAreWorthALine() {
        GaugeFindings.Pair likely =
                new GaugeFindings.Pair(SPRING.fault().of(0.2), BORE.fault().of(0.5), 0.3, 1.5);
        GaugeFindings.Pair hardly =
                new GaugeFindings.Pair(SPRING.fault().of(0.2), FILTER.fault().of(0.5), 0.01, 1.5);
        String screen =
                words(answer(findings(false, List.of(group(0.5, SPRING)), 0.1, List.of(likely, hardly)), List.of())
                        .screen());
        assertTrue(
                screen.contains("regulator (spring weak or broken), 20 % weaker together with regulator (bore worn)"),
                screen);
        assertFalse(screen.contains("filter"), screen);
    }

    @Test
    void theNextReadingSaysWhatEachCauseWouldMakeOfIt() {
        NextReading next = new NextReading(
                new GaugeReading.Row(
                        LINE,
                        new hotidle.study.gauge.TestPoint(
                                10, 373.15, "reverse", OptionalDouble.of(180 * PSI), OptionalDouble.empty())),
                0.8,
                List.of(new NextReading.Prediction(SPRING, 120 * PSI), new NextReading.Prediction(BORE, 160 * PSI)),
                178 * PSI,
                3 * PSI);
        GaugeFindings open = findings(false, List.of(group(0.5, SPRING), group(0.4, BORE)), 0.1, List.of());
        String screen = words(answer(open, List.of(next)).screen());
        assertTrue(
                screen.contains(
                        "Read next, engine without load: line-tap at 600 rpm in reverse, 212 degF with 180 psi commanded:"
                                + " 120 psi if regulator (spring weak or broken), 160 psi if regulator (bore worn)."),
                screen);
        assertTrue(words(answer(open, List.of()).screen()).contains(GaugePhrase.NOTHING_NEXT));
    }

    @Test
    void readingsThatAllStandOnTheRegulatorTellNothingOfLeaksAndSayWhereToRead() {
        GaugeFindings regulated = regulated(2);
        String commanded =
                words(answer(UnitSystem.SHOP, regulated, List.of(), true, OptionalDouble.of(383.15), List.of())
                        .screen());
        assertTrue(
                commanded.contains(
                                "The reading stands on the regulator: it gives less back where more leaks, so it tells nothing")
                        && commanded.contains(
                                "at the lowest idle (540 rpm or less), with the oil as hot as it gets (230 degF"
                                        + " or more) and the highest command (200 psi)"),
                commanded);
        String bench = words(answer(UnitSystem.SHOP, regulated, List.of(), false, OptionalDouble.empty(), List.of())
                .screen());
        assertTrue(bench.contains("with the oil as hot as it gets and the highest command."), bench);
        assertFalse(bench.contains("- degF"), bench);
    }

    /** Readings that agree, all on the regulator, with a bore that could be worn so far past what they see. */
    private static GaugeFindings regulated(double hidden) {
        Cause bore = cause(bore("regulator"), 0.5, 0.2, hidden, true);
        return new GaugeFindings(
                List.of(MadeReadings.reads(LINE, GaugeReading.Sense.EXACT, 100 * PSI)),
                List.of(new GaugeFindings.ExpectedReading(100 * PSI, 4 * PSI, 0)),
                new GaugeFindings.Agreement(0, 1, 1, true),
                1,
                List.of(),
                0,
                List.of(),
                List.of(bore),
                List.of());
    }

    @Test
    void whereALeakOfAUsualSizeWouldShowNothingIsSaidOfTheRegulator() {
        assertFalse(answer(regulated(0.5), List.of()).screen().contains("stand on the regulator"));
    }

    @Test
    void aLowLineAtIdleForbidsTheStallTestAndABenchHasNoVehicle() {
        GaugeFindings found = findings(false, List.of(group(0.9, SPRING)), 0.1, List.of());
        GaugeAnswer low = answer(UnitSystem.SHOP, found, List.of(), true, OptionalDouble.empty(), List.of("worn"));
        assertTrue(low.screen().contains("IDLE PRESSURE IS LOW with worn: no stall test"), low.screen());
        assertTrue(low.full().contains("IDLE PRESSURE IS LOW with worn"), low.full());
        GaugeAnswer bench = answer(UnitSystem.SHOP, found, List.of(), false, OptionalDouble.empty(), List.of());
        assertFalse(bench.screen().contains("vehicle"), bench.screen());
    }

    @Test
    void theFirstScreenFitsHoweverManyCausesThereAre() {
        List<GaugeFindings.Group> groups = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            int number = i;
            groups.add(group(
                    0.15,
                    IntStream.range(0, 6)
                            .mapToObj(j ->
                                    cause(bore("a-rather-long-name-of-a-valve-" + number + j), 0.5, 0.1, 0.4, true))
                            .toArray(Cause[]::new)));
        }
        List<String> lines = answer(findings(false, groups, 0.1, List.of()), List.of())
                .screen()
                .lines()
                .toList();
        assertTrue(lines.size() <= Wrap.LINES, String.join("\n", lines));
        lines.forEach(line -> assertTrue(line.length() <= Wrap.WIDTH, line));
    }

    @Test
    void faultsThatCannotShowAreCounted() {
        GaugeAnswer answer =
                answer(findings(false, List.of(group(0.7, SPRING), group(0.2, FILTER)), 0.1, List.of()), List.of());
        assertTrue(
                words(answer.screen()).contains("1 of 2 possible faults cannot show in these readings"),
                answer.screen());
        assertTrue(answer.full().lines().anyMatch(line -> line.matches("filter-blocked@filter .* any size")));
    }

    @Test
    void aFaultThatCouldNotBeSolvedLeavesTheAnswerIncomplete() {
        GaugeFindings found = findings(true, List.of(), 0, List.of());
        assertTrue(answer(found, List.of()).complete());
        GaugeFindings open = new GaugeFindings(
                found.readings(),
                found.expected(),
                found.agreement(),
                0,
                List.of(),
                0,
                List.of(),
                List.of(),
                List.of("valve-stuck@regulator"));
        assertFalse(answer(open, List.of()).complete());
    }

    @Test
    void atIdleTheRowsTellTheReadingTheBandOfASoundBuildAndHowFarOffItIs() {
        String row = new GaugeRows(answer(findings(true, List.of(), 0, List.of()), List.of()))
                .readings()
                .csv()
                .lines()
                .toList()
                .get(1);
        assertEquals("line-tap,drive,600,212 degF,60 psi,92 to 108,-10.0", row);
    }
}
