package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.answer.format.Quantity.UnitSystem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is said of a circuit file: its oil, its pump, its sheet, its wear. */
class CircuitPhrasesTest {

    @Test
    void oneNodeIsANodeAndNoneAreNodes() {
        assertEquals("1 node", CountPhrase.of(1, "node"));
        assertEquals("0 nodes", CountPhrase.of(0, "node"));
        assertEquals("53 parts", CountPhrase.of(53, "part"));
    }

    @Test
    void anOrificeHasAnotherArticleThanAClutch() {
        assertEquals("an orifice", ArticlePhrase.of("orifice"));
        assertEquals("an annular-gap", ArticlePhrase.of("annular-gap"));
        assertEquals("a clutch", ArticlePhrase.of("clutch"));
    }

    @Test
    void anOilIsKnownByItsViscosityIndexAndWhereItWasMeasured() {
        assertEquals(
                "oil shuttle-atf: viscosity measured at 104 degF and 212 degF, viscosity index 170 (ASTM D2270)",
                OilPhrase.measured("shuttle-atf", 313.15, 373.15, OptionalDouble.of(170.4), UnitSystem.SHOP));
        assertEquals(
                "oil thin: viscosity measured at 40 degC and 100 degC",
                OilPhrase.measured("thin", 313.15, 373.15, OptionalDouble.empty(), UnitSystem.METRIC));
        assertEquals(
                "oil calibration: one viscosity at every temperature",
                OilPhrase.constant("calibration", OptionalDouble.empty()));
    }

    @Test
    void whatWasLeftOfTheOilToTheProgramIsSaidBesideIt() {
        assertEquals(
                "atf at 100 degC (oil and temperature by default)",
                OilPhrase.asUsed("atf", 373.15, true, true, UnitSystem.METRIC));
        assertEquals("atf at 100 degC (oil by default)", OilPhrase.asUsed("atf", 373.15, true, false, UnitSystem.SI));
        assertEquals(
                "fixed liquid at 68 degF (temperature by default)",
                OilPhrase.asUsed("fixed liquid", 293.15, false, true, UnitSystem.SHOP));
        assertEquals("atf at 212 degF", OilPhrase.asUsed("atf", 373.15, false, false, UnitSystem.SHOP));
    }

    @Test
    void aPumpIsKnownByWhatItDisplacesInATurn() {
        assertEquals("primary displaces 1.220 in3/rev", DisplacementPhrase.of("primary", 20e-6, UnitSystem.SHOP));
        assertEquals("primary displaces 20.00 cm3/rev", DisplacementPhrase.of("primary", 20e-6, UnitSystem.METRIC));
    }

    @Test
    void aClutchThatNoDutyPointAppliesIsNamedWithItsRanges() {
        Map<String, List<String>> ranges = new LinkedHashMap<>();
        ranges.put("overdrive-clutch", List.of("third", "fourth"));
        ranges.put("reverse-band", List.of("reverse"));
        assertEquals(
                "Not judged, since no driving condition is in a range that applies it: overdrive-clutch (third, fourth),"
                        + " reverse-band (reverse). 'margins' says nothing of it before there is a driving condition in such a"
                        + " range.",
                NotJudgedPhrase.of(ranges));
    }

    @Test
    void aSheetSaysHowMuchOfItIsFilledInAndHowManyRowsItHas() {
        assertEquals(
                "build bus-12: 1 of 84 sizes measured, all others assumed new", SheetPhrase.filled("bus-12", 1, 84));
        assertEquals(
                "written: rig.csv, 6 rows for 10 sizes: a bore and what runs in it share a row",
                SheetPhrase.written("rig.csv", 6, 10));
        assertEquals(
                "written: one.csv, 1 row for 1 size: a bore and what runs in it share a row",
                SheetPhrase.written("one.csv", 1, 1));
    }

    @Test
    void wearPastALimitIsSaidBesideTheSizeAndCounted() {
        assertEquals("past its limit by 0.24 thou", WearPhrase.pastLimit("0.24 thou"));
        assertEquals("4 of 57 measured past the wear limit", WearPhrase.pastLimit(4, 57));
    }

    @Test
    void aNameStandsAloneWhereItsFileSaysNothingOfIt() {
        assertEquals("training-rig: a bench", HeadingPhrase.headed("training-rig", "a bench"));
        assertEquals("training-rig", HeadingPhrase.headed("training-rig", ""));
        assertEquals("bore-14 (accumulator)", HeadingPhrase.titled("bore-14", "accumulator"));
        assertEquals("bore-14", HeadingPhrase.titled("bore-14", ""));
    }

    @Test
    void whatAFileHoldsIsCountedInOneLine() {
        assertEquals(
                "rig: no mistake found, 3 warnings (1 node, 2 parts, 1 build, 0 sizes that wear)",
                CircuitHoldsPhrase.of("rig", 1, 2, 1, 0, 3));
    }

    @Test
    void aValueLeftToTheProgramNamesWhatTakesItOrCountsThem() {
        assertEquals("orifice", DefaultsPhrase.heading("orifice", List.of()));
        assertEquals("orifice (drain)", DefaultsPhrase.heading("orifice", List.of("drain")));
        assertEquals("orifice (2 of them)", DefaultsPhrase.heading("orifice", List.of("drain", "feed")));
        assertEquals("count 1: one hole", DefaultsPhrase.value("count", "1", "one hole"));
        assertEquals("drain.count: 1; one hole", DefaultsPhrase.each("drain.count", "1", "one hole"));
        assertEquals(" [drain, feed]", DefaultsPhrase.takers(List.of("drain", "feed")));
        assertEquals(" [7 of them]", DefaultsPhrase.takers(7, true));
        assertEquals(" [7 in all]", DefaultsPhrase.takers(7, false));
    }

    @Test
    void sizesThatWereMeasuredStandBesideThoseThatWereNot() {
        assertEquals("measured: 3 of 3 sizes", MorePhrase.measured(3, List.of()));
        assertEquals(
                "measured: 1 of 2 sizes; taken as new: 1, r.bore (each by name: --full)",
                MorePhrase.measured(1, List.of("r.bore")));
        assertEquals(
                "measured: 0 of 5 sizes; taken as new: 5, a.x, b.x, c.x, d.x and 1 more (each by name: --full)",
                MorePhrase.measured(0, List.of("a.x", "b.x", "c.x", "d.x", "e.x")));
        assertEquals("measured, 2: a.x, b.x", MorePhrase.each(true, List.of("a.x", "b.x")));
        assertEquals("not measured, taken as new, 0: none", MorePhrase.each(false, List.of()));
    }

    @Test
    void aJobWithoutWordsIsListedByItsTimeAndPrice() {
        assertEquals("4 h, price 900", ListPhrase.job("", OptionalDouble.of(4), OptionalDouble.of(900)));
        assertEquals("ground", ListPhrase.job("ground", OptionalDouble.empty(), OptionalDouble.empty()));
    }
}
