package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.CustomerPhrase.Looks;
import hotidle.assess.Margin;
import hotidle.fault.FaultKind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ReportPhraseTest {

    @Test
    void theQuestionCountsTheBuilds() {
        assertTrue(ReportPhrase.question(List.of("worn")).startsWith("Does this build hold"));
        assertTrue(ReportPhrase.question(List.of("worn", "restored")).startsWith("Which of these 2 builds holds"));
    }

    @Test
    void whatIsLeftOutIsSaidWithTheReason() {
        assertEquals(List.of(), ReportPhrase.leftOut(true, true, true, true, true, true));
        List<String> bench = ReportPhrase.leftOut(false, false, false, false, false, false);
        assertEquals(6, bench.size());
        bench.forEach(line -> assertTrue(line.startsWith("Not in it: "), line));
    }

    @Test
    void aBuildSaysWhatItStandsOn() {
        assertEquals("worn: 180 000 km (on fresh)", ReportPhrase.build("worn", "180 000 km", Optional.of("fresh")));
        assertEquals("fresh", ReportPhrase.build("fresh", "", Optional.empty()));
    }

    @Test
    void whatWasWrittenIsCounted() {
        assertEquals(
                "Written: 1 section, 2 tables, 0 pictures; opens in any browser, without a network",
                ReportPhrase.written(1, 2, 0));
    }

    @Test
    void aCustomerIsToldInPlainWords() {
        assertEquals("worn DOES NOT HOLD: no oil.", CustomerPhrase.verdict("worn", Looks.FAILS, "no oil."));
        assertEquals("worn may or may not hold, which is NOT KNOWN.", CustomerPhrase.verdict("worn", Looks.OPEN, ""));
        assertTrue(CustomerPhrase.verdict("new", Looks.NARROW, "film.").contains("less than a tenth to spare: film."));
        assertTrue(CustomerPhrase.verdict("new", Looks.HOLDS, "").endsWith("more than a tenth to spare."));
    }

    @Test
    void aCustomerIsToldWhatMayBeSetAndWhatMustBeRepaired() {
        CustomerPhrase psi = new CustomerPhrase(Quantity.UnitSystem.SHOP);
        assertEquals(
                "As it is it may be set: 132 to 268 psi; it is set to 150 psi.",
                psi.maySet(
                        CustomerPhrase.AS_IT_IS, List.of(psi.range(132 * 6894.757, 268 * 6894.757)), 150 * 6894.757));
        assertEquals(
                "Built as worn it may be set: NOTHING. No pressure from 60 to 400 psi makes it hold.",
                psi.mayNotSet(CustomerPhrase.built("worn"), 60 * 6894.757, 400 * 6894.757));
        assertEquals(
                "Must be repaired: pump and regulator, in 5 hours. After these repairs it holds.",
                CustomerPhrase.repair(List.of("pump", "regulator"), ", in 5 hours", false));
        assertEquals(
                "Must be repaired: rings. After these repairs it holds, with less than a tenth to spare.",
                CustomerPhrase.repair(List.of("rings"), "", true));
    }

    @Test
    void aCustomerIsToldOfWhichBuildEachNumberIs() {
        assertEquals(
                "The unit as it is (worn) DOES NOT HOLD.",
                CustomerPhrase.verdict(CustomerPhrase.asItIs("worn"), Looks.FAILS, ""));
        assertEquals(
                "If it is built as restored (all fits new), it holds, with more than a tenth to spare.",
                CustomerPhrase.verdict(CustomerPhrase.builtAs("restored", "all fits new"), Looks.HOLDS, ""));
        assertEquals("If it is built as rebuilt, it", CustomerPhrase.builtAs("rebuilt", ""));
        assertEquals("worn after these repairs", CustomerPhrase.repaired("worn"));
        assertTrue(CustomerPhrase.lowAtIdle(CustomerPhrase.AFTER_REPAIRS)
                .startsWith("After these repairs, its oil pressure at idle is LOW: never race the engine"));
    }

    @Test
    void aCustomerIsToldOnceWhatIsNotKnownAndWhatTellsOffersApart() {
        CustomerPhrase psi = new CustomerPhrase(Quantity.UnitSystem.SHOP);
        assertEquals(
                "in first, with the engine at 650 rpm and the oil at 230 degF",
                psi.at("first", 650 / 60.0, Optional.of(383.15)));
        assertEquals("in first, with the engine at 600 rpm", psi.at("first", 10, Optional.empty()));
        assertEquals("As it is, here:", CustomerPhrase.because("here"));
        assertEquals(
                "Then it carries 738 lbf.ft of engine torque in every gear.", psi.carries(CustomerPhrase.THEN, 1000));
        assertEquals(
                "All of this is as far as is known. NOT KNOWN, and no failure either: the oil film under the pump hub; oil"
                        + " through the cooler.",
                CustomerPhrase.notKnown(
                        List.of(CustomerLimitPhrase.of(Margin.Kind.FILM), CustomerLimitPhrase.of(Margin.Kind.COOLER))));
        assertTrue(CustomerPhrase.notJudged(true).endsWith(", but for the parts that were given a rating."));
        assertTrue(CustomerPhrase.notJudged(false).endsWith("converter."));
        for (String said :
                List.of(CustomerPhrase.CAUTION, CustomerPhrase.OTHER_WORK, CustomerPhrase.lowAtIdle("Now"))) {
            assertFalse(said.contains("stall"), "an owner does not know it: " + said);
        }
    }

    /** No word of the trade in what a customer reads first, and no two limits told alike but the two of a clutch. */
    @Test
    void everyLimitHasWordsForWhoDoesNotKnowTheTrade() {
        for (Margin.Kind kind : Margin.Kind.values()) {
            for (String said : List.of(
                    CustomerLimitPhrase.fails(kind, "at stall"), CustomerLimitPhrase.nearest(kind, "at stall"))) {
                assertTrue(said.endsWith(" (at stall)."), said);
                assertFalse(said.matches(".*\\b(regulation|apply|charge|headroom|margin)\\b.*"), said);
            }
        }
        assertEquals(
                Margin.Kind.values().length - 1,
                Stream.of(Margin.Kind.values())
                        .map(kind -> CustomerLimitPhrase.fails(kind, ""))
                        .distinct()
                        .count());
    }

    @Test
    void aHandoutCallsItsUnitsByLetters() {
        assertEquals("unit A", LessonPhrase.unit(0));
        assertEquals("unit F", LessonPhrase.unit(5));
        assertTrue(LessonPhrase.question(3).contains("3 units"));
        assertTrue(LessonPhrase.question(1).contains("this unit"));
        assertTrue(LessonPhrase.task(1).get(0).startsWith("One unit"));
        assertEquals(
                "hotidle: in first some of these units read alike; the handout shows third and reverse too, to tell them apart",
                LessonPhrase.moreRanges("first", List.of("third", "reverse")));
        assertTrue(LessonPhrase.alike("fresh", "worn", false).contains("in the ranges shown"));
        assertEquals("check ball missing", LessonPhrase.wrong("check ball missing", ""));
        assertEquals(
                "hotidle: --fault oil-aerated:1%: no gauge shows it, in any range at any speed, so that nobody could find it;"
                        + " gauges show spring-weak@regulator:20%\nmend: leave it out, or write oil-aerated:8%, which shows",
                LessonPhrase.notSeen(
                        "oil-aerated:1%", true, Optional.of("oil-aerated:8%"), List.of("spring-weak@regulator:20%")));
        assertTrue(LessonPhrase.notSeen("check-ball-missing", false, Optional.empty(), List.of())
                .endsWith("in the ranges shown at any speed, so that nobody could find it"
                        + "\nmend: leave it out: no size of it that was tried shows"));
    }

    @Test
    void aHandoutSaysHowManyUnitsAreFaulty() {
        assertEquals(
                "3 units have one of the faults listed below, each its own; 1 unit has none.",
                LessonPhrase.someAreFaulty(3, 1));
        assertEquals("1 unit has one of the faults listed below; 2 units have none.", LessonPhrase.someAreFaulty(1, 2));
        assertEquals("2 units have one of the faults listed below, each its own.", LessonPhrase.someAreFaulty(2, 0));
    }

    @Test
    void aHandoutSaysWhereAnAxisBeginsAndWhatIsNotDrawn() {
        assertEquals("pressure [psi], from 130", LessonPhrase.axisFrom(Quantity.UnitSystem.SHOP, 130));
        assertEquals("lube (28 psi)", LessonPhrase.between("lube", "28", "28", "psi"));
        assertEquals("line (150 to 171 psi)", LessonPhrase.between("line", "150", "171", "psi"));
        assertTrue(LessonPhrase.alikeAt("first", List.of("lube (28 psi)", "low (90 psi)"))
                .endsWith("at lube (28 psi), low (90 psi): not drawn."));
        assertEquals(
                "low, first, 650 rpm [psi]", LessonPhrase.readAt(Quantity.UnitSystem.SHOP, "low", "first", 650 / 60.0));
    }

    @Test
    void whatAFaultDoesToTheOilNamesNoReading() {
        for (FaultKind kind : FaultKind.values()) {
            String does = FaultOilPhrase.does(kind);
            assertTrue(does.matches("[A-Z].*\\."), does);
            assertFalse(does.matches("(?i).*\\b(gauge|reads?|rpm|idle|low|high|psi)\\b.*"), does);
        }
        assertTrue(FaultOilPhrase.does(FaultKind.PUMP_SLIPPING).contains("from its outlet to its inlet"));
    }

    @Test
    void howToReadAHandoutNamesNoFault() {
        String how = String.join(" ", LessonPhrase.howToRead(true, true, true));
        for (FaultKind kind : FaultKind.values()) {
            assertFalse(how.contains(kind.about()), kind.about());
        }
    }

    @Test
    void aGaugeThatReadsAsAnotherIsSaidNotToBeDrawn() {
        assertEquals(
                "In first gauge low reads as gauge line does in each unit: not drawn.",
                LessonPhrase.sameAs("first", "low", "line"));
    }

    @Test
    void howToReadAHandoutNamesNothingThatTheCircuitLacks() {
        String rig = String.join(" ", LessonPhrase.howToRead(false, false, false));
        assertFalse(rig.matches(".*(regulator|converter|lubrication|clutch|selector).*"), rig);
        assertTrue(rig.endsWith("another gauge off, look at what lies between the two."), rig);
        String whole = String.join(" ", LessonPhrase.howToRead(true, true, true));
        assertTrue(whole.contains("look between the selector and that clutch's piston."), whole);
    }

    @Test
    void aDrawingLargerThanASheetSaysThatItIsPrintedInHalves() {
        assertEquals("", ReportPhrase.paper("A4", false));
        assertTrue(LessonPhrase.drawing("unit", ReportPhrase.paper("A3", true))
                .endsWith("(dials); drawn for A3, in print in two halves, a sheet each, to be laid together."));
    }

    @Test
    void readingsOfAHandoutSayToWhatTheLineShouldBeSet() {
        assertEquals(
                "Readings in drive [bar]; as it should be, the line is set to 10.00 bar",
                LessonPhrase.readings(Quantity.UnitSystem.METRIC, "drive", OptionalDouble.of(1e6)));
        assertEquals(
                "Readings in drive [bar]",
                LessonPhrase.readings(Quantity.UnitSystem.METRIC, "drive", OptionalDouble.empty()));
    }

    @Test
    void aWordIsExplainedInAFullSentence() {
        assertEquals("leaks: oil lost.", CustomerPhrase.word("leaks", "oil lost"));
        assertTrue(CustomerPhrase.WORDS.stream()
                .allMatch(word ->
                        TermPhrase.ALL.stream().anyMatch(term -> term.word().equals(word))));
    }
}
