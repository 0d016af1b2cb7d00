package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.Quantity.UnitSystem;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Who gets too little: converter, cooler, lubrication, a clutch, the hub's film; and what the pump costs. */
class ShortOfOilPhraseTest {

    @Test
    void whatACoolerGetsIsSetAgainstWhatItNeeds() {
        assertEquals("cooler 1.0 of 6.0 L/min", cooler(UnitSystem.METRIC));
        assertEquals("cooler 0.26 of 1.59 gpm", cooler(UnitSystem.SHOP));
        assertEquals(
                "At hot-idle too little (is, of needed) for cooler 1.0 of 6.0 L/min, lube 0.2 of 2.0 L/min.",
                ShortOfOilPhrase.at("hot-idle", List.of("cooler 1.0 of 6.0 L/min", "lube 0.2 of 2.0 L/min")));
    }

    private static String cooler(UnitSystem units) {
        return ShortOfOilPhrase.part(units, Quantity.FLOW, "cooler", 1.0e-3 / 60, 1e-4);
    }

    @Test
    void aCellNamesTheOneThatIsWorstOff() {
        assertEquals("none", ShortOfOilPhrase.cell(0, ""));
        assertEquals("SHORT: cooler", ShortOfOilPhrase.cell(1, "cooler"));
        assertEquals("SHORT: 3 (most: lube)", ShortOfOilPhrase.cell(3, "lube"));
    }

    @Test
    void oneSpeedIsNoSpanOfSpeeds() {
        assertEquals("", ShortOfOilPhrase.speeds(UnitSystem.SI, List.of()));
        assertEquals(
                "Converter, cooler or lubrication short at 600 rpm.",
                ShortOfOilPhrase.speeds(UnitSystem.SI, List.of(10.0)));
        assertEquals(
                "Converter, cooler or lubrication short from 600 to 900 rpm.",
                ShortOfOilPhrase.speeds(UnitSystem.SHOP, List.of(10.0, 12.0, 15.0)));
    }

    @Test
    void speedsBelowEveryDrivingConditionAreSaidToBeSo() {
        assertEquals("", ShortOfOilPhrase.speeds(UnitSystem.SHOP, List.of(), 10.0));
        assertEquals(
                "Converter, cooler or lubrication short at 400 rpm, slower than any driving condition (the slowest: 660 rpm).",
                ShortOfOilPhrase.speeds(UnitSystem.SHOP, List.of(400 / 60.0), 11.0));
        assertEquals(
                "Converter, cooler or lubrication short from 600 to 660 rpm.",
                ShortOfOilPhrase.speeds(UnitSystem.SHOP, List.of(10.0, 11.0), 11.0));
    }

    @Test
    void aClutchWhosePressureIsNotKnownIsNotGivenANumber() {
        ClutchPhrase said = new ClutchPhrase(UnitSystem.METRIC);
        assertEquals(
                "At stall too little pressure on low: 8.00 bar where it needs 9.50 bar with its capacity factor; it may"
                        + " slip.",
                said.slips("stall", "low", OptionalDouble.of(8e5), 9.5e5));
        assertEquals(
                "At stall too little pressure on low: not known where it needs 9.50 bar with its capacity factor; it may"
                        + " slip.",
                said.slips("stall", "low", OptionalDouble.empty(), 9.5e5));
        assertEquals(
                "low carries 1.20 bar at cruise, though third does not apply it: its return spring yields at 0.50 bar,"
                        + " so that it drags and burns.",
                said.drags("low", 1.2e5, "cruise", "third", 5e4));
    }

    @Test
    void aFilmBelowTheLeastAllowedIsTooThinAndMetalContactHasNoThickness() {
        HubFilmPhrase said = new HubFilmPhrase(UnitSystem.METRIC);
        assertEquals(
                "Hub film thinnest with cruise oil: 5.0 um at 600 rpm: TOO THIN, 6.0 is the least allowed (assumed).",
                said.thinnest(10, "cruise", 5e-6, 6e-6, true, false, ""));
        assertEquals(
                "Hub film thinnest with cruise oil: 7.0 um at 600 rpm; 6.0 is the least allowed (assumed); there the"
                        + " secondary stops balancing the primary's side load.",
                said.thinnest(10, "cruise", 7e-6, 6e-6, false, true, ""));
        assertEquals(
                "At the temperatures of cruise the hub loses its film from 600 to 900 rpm: metal contact, film not"
                        + " known.",
                said.contact("cruise", List.of(10.0, 15.0)));
        assertEquals("600 to 900", said.cell(List.of(10.0, 15.0)));
    }

    @Test
    void aPowerThatIsNotKnownIsNoZero() {
        assertEquals("worn 1.50 kW", PumpPowerPhrase.build(UnitSystem.METRIC, "worn", OptionalDouble.of(1500)));
        assertEquals("worn 2.01 hp", PumpPowerPhrase.build(UnitSystem.SHOP, "worn", OptionalDouble.of(1500)));
        assertEquals("worn not known", PumpPowerPhrase.build(UnitSystem.SI, "worn", OptionalDouble.empty()));
    }

    @Test
    void aUnitWithLowIdlePressureIsNotStallTested() {
        assertEquals("", NoStallPhrase.of(List.of()));
        assertEquals(
                "IDLE PRESSURE IS LOW with worn, older: no stall test, whatever is worked out for one here.\n",
                NoStallPhrase.of(List.of("worn", "older")));
    }
}
