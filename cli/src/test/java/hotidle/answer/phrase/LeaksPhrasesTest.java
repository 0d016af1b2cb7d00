package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Figures;
import hotidle.assess.PartDoubt;
import hotidle.law.Channel;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What is said of lost oil, of repairs and of a part on its own. */
class LeaksPhrasesTest {

    @Test
    void lostOilIsToldOnBothSidesOfThePumpAndAsAShare() {
        assertEquals(
                "Of the 12.0 L/min that the pump displaces, 9.0 L/min is lost (75 %): 6.0 L/min slips back inside the"
                        + " pump, 3.0 L/min leaks outside it.",
                OilLostPhrase.lost(2e-4, 1e-4, 5e-5, UnitSystem.METRIC));
        assertEquals(
                "With every fit as new it would lose 1.59 gpm, with the line at 150 psi.",
                OilLostPhrase.asNew(1e-4, "150 psi", UnitSystem.SHOP));
        assertEquals(
                "Lubrication gets 1.2 L/min; it needs 1.5 L/min here.",
                OilLostPhrase.lubrication(2e-5, 2.5e-5, UnitSystem.METRIC));
    }

    @Test
    void aBudgetThatDoesNotCloseIsNotToBeTrusted() {
        assertTrue(OilLostPhrase.closes(2e-12).endsWith(" The shares add up to what the pump displaces."));
        assertTrue(OilLostPhrase.closes(2e-6)
                .endsWith(" The shares add up to what the pump displaces but for 0.0002 % of it."));
        assertEquals(
                "THE SHARES DO NOT ADD UP to what the pump displaces: 3 % of it is left over; do not trust them.",
                OilLostPhrase.doesNotClose(0.03));
    }

    @Test
    void theLineIsToldBesideWhatIsCommandedWhereAnythingIs() {
        assertEquals(
                "worn at hot-idle: 650 rpm, first, sump 110 degC, line 6.90 bar of the 10.30 bar commanded, NOT HELD.",
                DutyLinePhrase.commanded(
                        "worn",
                        "hot-idle",
                        650 / 60.0,
                        "first",
                        383.15,
                        "6.90 bar",
                        10.3e5,
                        Figures.Regulator.ON_ITS_SEAT,
                        true,
                        UnitSystem.METRIC));
        assertEquals(
                "rig at running: 600 rpm, any, sump 104 degF, line 55 psi.",
                DutyLinePhrase.uncommanded("rig", "running", 10, "any", 313.15, "55 psi", UnitSystem.SHOP));
    }

    private static String at(Figures.Regulator does, boolean low) {
        String said = DutyLinePhrase.commanded(
                "worn", "road", 30, "first", 383.15, "14 bar", 10e5, does, low, UnitSystem.METRIC);
        return said.substring(said.indexOf("commanded"));
    }

    @Test
    void aLineIsRegulatedOnlyWhereItsRegulatorRegulates() {
        assertEquals("commanded, regulated.", at(Figures.Regulator.REGULATING, false));
        assertEquals("commanded, FAR ABOVE it.", at(Figures.Regulator.FAR_ABOVE, false));
        assertEquals("commanded, regulator STUCK.", at(Figures.Regulator.STUCK, false));
        assertEquals("commanded, NOT HELD, regulator STUCK.", at(Figures.Regulator.STUCK, true));
        assertEquals("commanded, relief valve open.", at(Figures.Regulator.RELIEF_OPEN, false));
        assertEquals("commanded, NOT HELD.", at(Figures.Regulator.OFF_ITS_SEAT_BUT_LOW, true));
        assertEquals("commanded, NOT HELD.", at(Figures.Regulator.ON_ITS_SEAT, false));
    }

    @Test
    void whatComesBackPastTheRegulatorIsToldBesideWhatIsLost() {
        assertEquals("", OilLostPhrase.back(0, true, UnitSystem.METRIC));
        assertEquals(
                " Besides, 3.0 L/min comes back to its inlet past the regulator.",
                OilLostPhrase.back(5e-5, false, UnitSystem.METRIC));
        assertEquals(
                " Besides, 3.0 L/min comes back to its inlet past the regulator: its lands let oil by even when shut, and"
                        + " the line lacks that oil.",
                OilLostPhrase.back(5e-5, true, UnitSystem.METRIC));
    }

    @Test
    void theBestRepairIsToldWithThoseThatComeNear() {
        assertEquals(
                "The single size that wins most: bore as new, line 99 psi to 113 psi.",
                RepairPhrase.best("bore as new", "line", "99 psi", "113 psi", List.of()));
        assertEquals(
                "The single size that wins most: bore as new, line 99 psi to 113 psi. Nearly as much: face, to 112 psi.",
                RepairPhrase.best(
                        "bore as new", "line", "99 psi", "113 psi", List.of(RepairPhrase.near("face", "112 psi"))));
    }

    @Test
    void oneRepairIsOneAndSeveralAreCounted() {
        assertTrue(
                RepairPhrase.starving(List.of("bore")).startsWith("bore done alone leaves the lubrication LESS oil"));
        assertTrue(RepairPhrase.starving(List.of("bore", "face"))
                .startsWith("bore, face: each done alone leaves the lubrication LESS oil"));
        assertTrue(RepairPhrase.held(List.of("bore"), List.of(), OptionalInt.of(1))
                .startsWith("The set pressure is held here after one repair: bore. What follows"));
        String short1 = RepairPhrase.held(List.of("bore", "face"), List.of("cooler"), OptionalInt.of(3));
        assertTrue(short1.contains("after 2 repairs: bore, face. Then still short of oil: cooler"), short1);
        assertTrue(short1.contains("all are served after repair 3."), short1);
        assertTrue(RepairPhrase.held(List.of("bore"), List.of("cooler"), OptionalInt.empty())
                .contains("the repairs listed do not serve all of them."));
    }

    @Test
    void aTableThatLeavesRepairsOutSaysHowManyAndWhereTheyAre() {
        assertEquals("and 1 more that wins less; --format csv lists them", RepairPhrase.more(1));
        assertEquals("and 9 more that win less; --format csv lists them", RepairPhrase.more(9));
    }

    @Test
    void aLineThatIsNotHeldIsStillBelowItsSetPressureOnlyWhereOneIsCommanded() {
        assertEquals(
                "After the 4 repairs listed the line stands at 120 psi, still below the set pressure.",
                RepairPhrase.notHeld(4, "120 psi", true));
        assertFalse(RepairPhrase.notHeld(4, "120 psi", false).contains("set pressure"));
        assertEquals(
                "After the one repair listed the line stands at 120 psi.", RepairPhrase.notHeld(1, "120 psi", false));
    }

    @Test
    void aPartAloneSaysWhereItsLawEnds() {
        assertEquals(
                "Reynolds number 4200 at feed is above 2300: the law of a gap holds for laminar flow, the true flow is"
                        + " less",
                PartDoubtPhrase.of(new PartDoubt(PartDoubt.Concern.GAP_NOT_LAMINAR, "feed", 4200, 2300)));
        assertEquals(
                "position is at its upper stop: it does not regulate here",
                PartDoubtPhrase.of(new PartDoubt(PartDoubt.Concern.AT_UPPER_STOP, "position")));
        for (PartDoubt.Concern why : PartDoubt.Concern.values()) {
            String said = PartDoubtPhrase.of(new PartDoubt(why, "clearance", 2, 1));
            assertTrue(said.length() > 30 && !said.endsWith("."), said);
        }
    }

    @Test
    void aRegimeIsOneWord() {
        assertEquals("laminar", RegimePhrase.of(Channel.Regime.LAMINAR));
        assertEquals("transitional", RegimePhrase.of(Channel.Regime.TRANSITIONAL));
        assertEquals("turbulent", RegimePhrase.of(Channel.Regime.TURBULENT));
    }
}
