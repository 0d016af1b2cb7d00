package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Margin;
import hotidle.assess.MarginNote;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is said of a margin: briefly, and why it is so. */
class MarginPhrasesTest {

    private static final double PSI = 6894.757293168;
    private static final double GPM = 3.785411784e-3 / 60;

    private static final MarginPhrase SHOP = new MarginPhrase(UnitSystem.SHOP);
    private static final MarginCausePhrase CAUSE = new MarginCausePhrase(UnitSystem.SHOP);

    private static final Margin CLUTCH =
            Margin.of(Margin.Kind.APPLY, "low-clutch", 161 * PSI, 142 * PSI, Margin.Scale.PRESSURE);
    private static final Margin LUBE =
            Margin.of(Margin.Kind.LUBRICATION, "lube-rear", 0.012 * GPM, 0.106 * GPM, Margin.Scale.FLOW);
    private static final Margin PUMP =
            Margin.of(Margin.Kind.REGULATION, "pump", 0.88 * GPM, 4.4 * GPM, Margin.Scale.FLOW);
    private static final Margin LOAD = Margin.of(
                    Margin.Kind.UNIT_LOAD, "hub-bushing", 129 * PSI, 218 * PSI, Margin.Scale.PRESSURE)
            .at(1600 / 60.0);
    private static final Margin INLET =
            Margin.of(Margin.Kind.PUMP_INLET, "inlet", 14.7 * PSI, 8.8 * PSI, Margin.Scale.PRESSURE);
    private static final Margin TOUCHING = Margin.notKnown(Margin.Kind.FILM, "hub-bushing", 1.6e-6, Margin.Scale.LENGTH)
            .at(700 / 60.0);

    @Test
    void aTrickleIsShownWithADigitMoreSoThatItsHeadroomCanBeRead() {
        assertEquals("0.012 gpm", SHOP.value(LUBE));
        assertEquals("0.106 gpm", SHOP.needed(LUBE));
        assertEquals("0.88 gpm", SHOP.value(PUMP));
        assertEquals("11.10 bar", new MarginPhrase(UnitSystem.METRIC).value(CLUTCH));
    }

    @Test
    void thePressureAtAPumpsInletIsSaidToBeAbsoluteAndNoOther() {
        assertEquals("15 psi abs", SHOP.value(INLET));
        assertEquals("psi abs", SHOP.unit(INLET));
        assertEquals("psi", SHOP.unit(CLUTCH));
        Margin starved = Margin.of(Margin.Kind.PUMP_INLET, "inlet", 0.82, 1, Margin.Scale.SHARE);
        assertEquals("82.0 %", SHOP.value(starved));
        assertEquals("The pump fills to 82.0 % only.", CAUSE.inlet(starved));
        assertEquals(
                "The pump's inlet has 15 psi abs, absolute; below 9 psi abs air comes out of the oil.",
                CAUSE.inlet(INLET));
    }

    @Test
    void aRatedTorqueIsSaidToBeTheFilesOwnFigure() {
        Margin shaft = Margin.of(Margin.Kind.RATED_TORQUE, "input-shaft", 900, 1200, Margin.Scale.TORQUE);
        assertEquals(
                "It carries 664 lbf.ft there and is rated at 885 lbf.ft, by the file's figures. The rating"
                        + " of its maker comes first.",
                CAUSE.ratedTorque(shaft));
        assertEquals(1.0 / 3, shaft.headroom(), 1e-12);
    }

    @Test
    void anUpperLimitIsAllowedAndALowerOneNeeded() {
        assertEquals("at most 218 psi", SHOP.bound(LOAD));
        assertEquals("142 psi", SHOP.bound(CLUTCH));
        assertEquals(
                "hub unit load (hub-bushing) at stall: 129 psi, allowed 218 psi (+69 %), at 1600 rpm",
                SHOP.brief(LOAD, "stall"));
        assertEquals(
                "apply, holding (low-clutch) at stall: 161 psi, needs 142 psi (+13 %)", SHOP.brief(CLUTCH, "stall"));
    }

    @Test
    void aLimitSearchedOverSpeedIsCalledByTheSpeedAtWhichItIsLeast() {
        assertEquals("hub unit load at 1600 rpm", SHOP.label(LOAD));
        assertEquals("apply, holding", SHOP.label(CLUTCH));
    }

    @Test
    void whereMetalTouchesNoFilmIsKnown() {
        assertEquals("not known", SHOP.value(TOUCHING));
        assertEquals("Hub and bore touch from 700 rpm on; a film is not known there.", CAUSE.film(TOUCHING));
        Margin film = Margin.of(Margin.Kind.FILM, "hub-bushing", 3.4e-6, 1.6e-6, Margin.Scale.LENGTH)
                .at(1558 / 60.0);
        assertEquals(
                "The thinnest film over the speeds searched is 0.134 thou, at 1558 rpm; 0.063 thou is the least allowed"
                        + " (assumed from roughness).",
                CAUSE.film(film));
    }

    @Test
    void aPumpDeliversLessThanIsTakenOrNothingAtAll() {
        assertEquals(
                "With the line at 150 psi the pump delivers 0.88 gpm; leaks, solenoids, clutches and the least that"
                        + " converter, cooler and lubrication need take 4.40 gpm.",
                CAUSE.regulation(PUMP, 150 * PSI));
        Margin none = Margin.of(Margin.Kind.REGULATION, "pump", -1e-5, 1e-4, Margin.Scale.FLOW);
        assertTrue(CAUSE.regulation(none, 1e6).contains("delivers nothing (more would slip back than it displaces)"));
        assertEquals(" The line settles at 99 psi.", CAUSE.settles(99 * PSI, false));
        assertEquals(
                " The regulator holds the line, at 150 psi, by keeping oil from them.", CAUSE.settles(150 * PSI, true));
    }

    @Test
    void aClutchHoldsATorqueOrPullsThroughWhileItSlips() {
        assertEquals(
                "It has 161 psi at the piston; to hold 1051 lbf.ft times 1.2 it needs 142 psi, return spring included.",
                CAUSE.clutch(CLUTCH, 1425, 1.2));
        Margin slipping =
                Margin.of(Margin.Kind.APPLY_SLIDING, "low-clutch", 161 * PSI, 170 * PSI, Margin.Scale.PRESSURE);
        assertTrue(CAUSE.clutch(slipping, 1425, 1.2)
                .contains("to pull through while slipping, 1051 lbf.ft times 1.2 takes 170"));
        Margin lockup = Margin.of(Margin.Kind.LOCKUP, "converter", 60 * PSI, 40 * PSI, Margin.Scale.PRESSURE);
        assertEquals(
                "Apply less release pressure is 60 psi; to carry 148 lbf.ft times 1.25 the lockup needs 40 psi.",
                CAUSE.lockup(lockup, 200, 1.25));
    }

    @Test
    void oilIsToldByWhoGetsIt() {
        assertEquals("This branch gets 0.012 gpm; it needs 0.106 gpm.", CAUSE.lubrication(LUBE));
        Margin cooler = Margin.of(Margin.Kind.COOLER, "cooler", 0.2 * GPM, 0.53 * GPM, Margin.Scale.FLOW);
        assertEquals("The cooler gets 0.20 gpm; it needs 0.53 gpm.", CAUSE.cooler(cooler));
        Margin charge = Margin.of(Margin.Kind.CONVERTER_CHARGE, "converter", 3 * PSI, 30 * PSI, Margin.Scale.PRESSURE);
        assertEquals("The converter is charged with 3 psi; it needs 30 psi against cavitation.", CAUSE.charge(charge));
        Margin relief = Margin.of(Margin.Kind.RELIEF, "relief", 410 * PSI, 400 * PSI, Margin.Scale.PRESSURE);
        assertTrue(CAUSE.relief(relief).startsWith("The line stands at 410 psi; the valve lifts from 400 psi on"));
        assertTrue(CAUSE.unitLoad(LOAD).contains("come to 129 psi, at 1600 rpm; its material bears 218 psi."));
    }

    @Test
    void aNoteStandsBehindItsCauseAndAFailureInCapitalsBeforeIt() {
        Margin noted = PUMP.noted(MarginNote.of(MarginNote.Remark.SHORT_AT_FULL_FEED, "lube-rear"));
        String said = MarginCausePhrase.noted("Cause.", noted);
        assertTrue(said.startsWith("Cause. Note: lube-rear gets too little even with"), said);
        assertEquals("Cause.", MarginCausePhrase.noted("Cause.", PUMP));
        assertEquals("FAILS regulation (pump). Cause.", MarginCausePhrase.headed(PUMP, "regulation", "Cause."));
        assertTrue(MarginCausePhrase.headed(CLUTCH, "apply", "").startsWith("holds apply (low-clutch)."));
    }

    @Test
    void limitsAreCountedByVerdictAndDutiesAreHeadedByTheirLine() {
        assertEquals(
                "Of 74 limits at 6 driving conditions: 7 fail, 3 not known, 1 narrow, 63 hold.",
                LimitCountPhrase.of(6, 7, 3, 1, 63));
        assertEquals(
                ", line 99 psi of the 150 psi commanded",
                DutyPhrase.line(UnitSystem.SHOP, 99 * PSI, OptionalDouble.of(150 * PSI)));
        assertEquals(", line 99 psi", DutyPhrase.line(UnitSystem.SHOP, 99 * PSI, OptionalDouble.empty()));
        assertEquals("worn, stall", DutyPhrase.ofBuild("worn", "stall"));
    }

    @Test
    void whatIsNotKnownIsSaidWithItsReason() {
        assertEquals("not solved: x; nothing is known here.", UnsolvedPhrase.nothingKnownHere("not solved: x"));
        assertEquals("Regulation is not known: not solved: x.", UnsolvedPhrase.regulation("not solved: x"));
        HubLoadPhrase hub = new HubLoadPhrase(UnitSystem.SHOP);
        assertTrue(hub.notKnown(3, 40)
                .startsWith("At 3 of the speeds searched no steady state was found, the first 2400 rpm:"));
    }

    @Test
    void theHubIsToldWhereItsFilmIsThinnestWithTrumplersRule() {
        String said = new HubLoadPhrase(UnitSystem.METRIC).whereThinnest(25, 750, 8.8e5, 3.4e-6, 2.8e-6, 7.1e-6);
        assertEquals(
                "Hub where its film is thinnest, 1500 rpm: load 750 N, unit load 8.80 bar, film 3.4 um, at the edge to"
                        + " which it leans 2.8 um. Trumpler's rule for ground journals, from which on it is known to hold, asks for 7.1 um.",
                said);
        assertTrue(new HubLoadPhrase(UnitSystem.METRIC).sameSpeed().startsWith("Hub film [um] of all builds"));
    }

    @Test
    void aCircuitThatCommandsNothingIsToldWhatToWrite() {
        String said = NotCommandedPhrase.write("line", "regulator", "feed");
        assertTrue(
                said.contains("add command: {line: line, regulator: regulator, edge: feed}, then the spring's"), said);
        assertTrue(NotCommandedPhrase.anyValve()
                .contains("{line: <node>, regulator: <spool-valve>, edge: <its first opening>}"));
        assertTrue(NotCommandedPhrase.NO_VALVE.contains("no spool-valve"));
    }
}
