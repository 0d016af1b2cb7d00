package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is said of the hub's film and load, and of what the pump takes. */
class HubPhrasesTest {

    private static final HubFilmPhrase METRIC = new HubFilmPhrase(UnitSystem.METRIC);
    private static final HubFilmPhrase SHOP = new HubFilmPhrase(UnitSystem.SHOP);

    @Test
    void theThinnestFilmIsToldWithTheLeastOneAllowed() {
        assertEquals(
                "Hub film thinnest with hot-idle oil: 7.0 um at 600 rpm; 5.0 is the least allowed (assumed).",
                METRIC.thinnest(10, "hot-idle", 7e-6, 5e-6, false, false, ""));
        assertTrue(SHOP.thinnest(10, "hot-idle", 7e-6, 5e-6, false, false, "")
                .contains("0.276 thou at 600 rpm; 0.197 is the least"));
    }

    @Test
    void whereTheFilmIsThinnestInOtherOilThanThatOfTheTablesBothStandTogether() {
        assertEquals(
                "Hub film thinnest with stall oil: 7.0 um at 600 rpm (with hot-idle oil: 8.0 um at 660 rpm); 5.0 is the least"
                        + " allowed (assumed).",
                METRIC.thinnest(10, "stall", 7e-6, 5e-6, false, false, METRIC.inOil("hot-idle", 8e-6, 11)));
    }

    @Test
    void aFilmThatIsTooThinIsShoutedAndWhyItIsSaid() {
        String thin = METRIC.thinnest(10, "hot-idle", 3e-6, 5e-6, true, true, "");
        assertTrue(thin.contains("3.0 um at 600 rpm: TOO THIN, 5.0 is the least"), thin);
        assertTrue(thin.endsWith("; there the secondary stops balancing the primary's side load."), thin);
    }

    @Test
    void metalContactIsToldAtItsSpeedOrFromItsFirstToItsLast() {
        assertTrue(METRIC.contact("stall", List.of(10.0)).contains("loses its film at 600 rpm: metal contact"));
        assertTrue(METRIC.contact("stall", List.of(10.0, 12.5, 15.0)).contains("loses its film from 600 to 900 rpm"));
        assertEquals("600", METRIC.cell(List.of(10.0)));
        assertEquals("600 to 900", METRIC.cell(List.of(10.0, 15.0)));
    }

    @Test
    void aFilmThatMayHoldIsMarkedAsNotKnown() {
        assertEquals("worn: thinnest 7.0 um at 600 rpm", METRIC.mark("worn", 7e-6, 10, true));
        assertEquals(
                "worn: thinnest 7.0 um at 600 rpm, NOT KNOWN whether it holds", METRIC.mark("worn", 7e-6, 10, false));
    }

    @Test
    void whereItIsThinnestTheHubsLoadIsTold() {
        String said = new HubLoadPhrase(UnitSystem.METRIC).whereThinnest(10, 2400, 3.1e6, 9e-6, 7e-6, 12e-6);
        assertTrue(said.startsWith("Hub where its film is thinnest, 600 rpm: load 2400 N, unit load 31.00 bar"), said);
        assertTrue(said.contains("film 9.0 um, at the edge to which it leans 7.0 um."), said);
        assertTrue(said.endsWith("asks for 12.0 um."), said);
    }

    @Test
    void speedsAtWhichNoStateWasFoundAreCountedAndTheFirstNamed() {
        String said = new HubLoadPhrase(UnitSystem.SHOP).notKnown(3, 50);
        assertTrue(said.startsWith("At 3 of the speeds searched no steady state was found, the first 3000 rpm"), said);
    }

    @Test
    void thePumpsPowerIsToldOfEachBuildAsFarAsItIsKnown() {
        String known = PumpPowerPhrase.build(UnitSystem.METRIC, "worn", OptionalDouble.of(2340));
        assertEquals("worn 2.34 kW", known);
        assertEquals("fresh not known", PumpPowerPhrase.build(UnitSystem.SHOP, "fresh", OptionalDouble.empty()));
        assertEquals(
                "Power for the pump is greatest at stall: worn 2.34 kW, fresh not known; all of it ends as heat in the oil.",
                PumpPowerPhrase.greatest("stall", List.of(known, "fresh not known")));
    }

    @Test
    void ofTheOilThatIsLostThePumpsSlipIsToldApartFromLeaks() {
        String said = OilLostPhrase.lost(10e-4, 1e-4, 2e-4, UnitSystem.METRIC);
        assertEquals(
                "Of the 60.0 L/min that the pump displaces, 18.0 L/min is lost (30 %): 6.0 L/min slips back inside the pump,"
                        + " 12.0 L/min leaks outside it.",
                said);
    }

    @Test
    void whatComesBackPastTheRegulatorIsSaidOnlyWhereAnyDoes() {
        assertEquals("", OilLostPhrase.back(0, true, UnitSystem.METRIC));
        assertTrue(OilLostPhrase.back(1e-4, true, UnitSystem.METRIC)
                .endsWith("even when shut, and the line lacks that oil."));
        assertFalse(OilLostPhrase.back(1e-4, false, UnitSystem.METRIC).contains("lacks"));
    }

    @Test
    void aBudgetThatDoesNotCloseIsNotToBeTrusted() {
        assertTrue(OilLostPhrase.closes(2e-8).endsWith("displaces but for 2e-06 % of it."));
        assertTrue(OilLostPhrase.doesNotClose(0.03).startsWith("THE SHARES DO NOT ADD UP"));
        assertTrue(OilLostPhrase.doesNotClose(0.03).endsWith("do not trust them."));
    }

    @Test
    void onePathIsNotToldAsSeveral() {
        assertEquals("1 smaller one", OilLostPhrase.smaller(1));
        assertEquals("2 smaller ones", OilLostPhrase.smaller(2));
        assertEquals("1 other that loses oil", OilLostPhrase.less(1));
        assertEquals("2 others that lose oil", OilLostPhrase.less(2));
        assertEquals("1 other", OilLostPhrase.net(1));
        assertEquals("2 others, net", OilLostPhrase.net(2));
        assertEquals("1 that brings oil back", OilLostPhrase.back(1));
        assertEquals("2 that bring oil back", OilLostPhrase.back(2));
    }
}
