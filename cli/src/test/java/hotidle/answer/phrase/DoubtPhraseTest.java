package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Doubt;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DoubtPhraseTest {

    private static final double CELSIUS = 273.15;

    private static String metric(Doubt.Why why, String where, double value, double limit) {
        return DoubtPhrase.of(new Doubt(why, where, value, limit), UnitSystem.METRIC);
    }

    @Test
    void anOilColderThanMeasuredIsExtrapolatedDownAndAHotterOneUp() {
        assertEquals(
                "the oil has down to -20 degC (sump); its viscosity was measured down to 40 degC and is extrapolated"
                        + " from there",
                metric(Doubt.Why.OIL_EXTRAPOLATED, "sump", -20 + CELSIUS, 40 + CELSIUS));
        assertEquals(
                "the oil has up to 125 degC (film); its viscosity was measured up to 100 degC and is extrapolated from"
                        + " there",
                metric(Doubt.Why.OIL_EXTRAPOLATED, "film", 125 + CELSIUS, 100 + CELSIUS));
    }

    @Test
    void aShopReadsTemperaturesInFahrenheit() {
        String said = DoubtPhrase.of(
                new Doubt(Doubt.Why.OIL_EXTRAPOLATED, "film", 125 + CELSIUS, 100 + CELSIUS), UnitSystem.SHOP);
        assertTrue(said.startsWith("the oil has up to 257 degF (film)") && said.contains("up to 212 degF"), said);
    }

    @Test
    void aThinOilIsToldByItsKinematicViscosityInEverySystem() {
        for (UnitSystem units : UnitSystem.values()) {
            assertEquals(
                    "the oil of region sump has 1.5 mm2/s; below 2 mm2/s the line through its two viscosities is a few"
                            + " per cent off",
                    DoubtPhrase.of(new Doubt(Doubt.Why.OIL_TOO_THIN, "sump", 1.5e-6, 2e-6), units));
        }
    }

    @Test
    void aGapOutOfLaminarFlowLetsLessByThanItsLawSays() {
        assertEquals(
                "the Reynolds number in regulator.bypass is 3120, above 2000: the law of a gap holds for laminar flow,"
                        + " the true flow is less",
                metric(Doubt.Why.GAP_NOT_LAMINAR, "regulator.bypass", 3120, 2000));
        assertEquals(
                "the Reynolds number of the film in hub-bushing is 950.5, above 800: vortices, the law of the film holds"
                        + " for laminar flow",
                metric(Doubt.Why.FILM_NOT_LAMINAR, "hub-bushing", 950.5, 800));
    }

    @Test
    void piecesWithoutClearanceBind() {
        assertEquals(
                "no clearance is left in bore-01 at this temperature: the pieces would bind",
                metric(Doubt.Why.PIECES_BIND, "bore-01", -2e-6, 0));
    }

    @Test
    void anUnevenFilmIsToldInKelvinAndACoolersOutletAsATemperature() {
        assertEquals(
                "the middle of the film in hub-bushing would be 7.5 K hotter than its walls: its viscosity is not even",
                metric(Doubt.Why.FILM_NOT_EVEN, "hub-bushing", 7.5, 5));
        assertEquals(
                "oil leaves cooler at 95 degC, but the driving condition gives it 70 degC",
                metric(Doubt.Why.OUTLET_NOT_AS_GIVEN, "cooler", 95 + CELSIUS, 70 + CELSIUS));
    }

    private static List<String> summary(Map<String, List<Doubt>> doubts) {
        return DoubtPhrase.summary(doubts, UnitSystem.METRIC);
    }

    private static Doubt gap(String where, double reynolds) {
        return new Doubt(Doubt.Why.GAP_NOT_LAMINAR, where, reynolds, 2000);
    }

    @Test
    void aDoubtOfSeveralDutyPointsIsToldOnceAtItsWorst() {
        Map<String, List<Doubt>> doubts = new LinkedHashMap<>();
        doubts.put("stall", List.of(gap("ring", 2500), gap("ring", 2400)));
        doubts.put("cruise", List.of(gap("ring", 4100)));
        List<String> lines = summary(doubts);
        assertEquals(1, lines.size());
        assertTrue(lines.get(0).startsWith("stall, cruise: the Reynolds number in ring is 4100, above"), lines.get(0));
        assertTrue(lines.get(0).endsWith("."));
    }

    @Test
    void gapsOfTwoPartsAreTwoDoubts() {
        assertEquals(
                2,
                summary(Map.of("stall", List.of(gap("ring", 2500), gap("bore", 2500))))
                        .size());
    }

    /** All regions have the same oil: the one furthest from what was measured stands for all. */
    @Test
    void anOilExtrapolatedInTwoRegionsIsOneDoubtButColdAndHotAreTwo() {
        Doubt sump = new Doubt(Doubt.Why.OIL_EXTRAPOLATED, "sump", 110 + CELSIUS, 100 + CELSIUS);
        Doubt film = new Doubt(Doubt.Why.OIL_EXTRAPOLATED, "film", 125 + CELSIUS, 100 + CELSIUS);
        Doubt cold = new Doubt(Doubt.Why.OIL_EXTRAPOLATED, "sump", -20 + CELSIUS, 40 + CELSIUS);
        List<String> lines = summary(Map.of("idle", List.of(sump, film, cold)));
        assertEquals(2, lines.size());
        assertTrue(lines.get(0).contains("up to 125 degC (film)"), lines.get(0));
        assertTrue(lines.get(1).contains("down to -20 degC (sump)"), lines.get(1));
    }

    @Test
    void whereNothingIsDoubtfulNothingIsSaid() {
        assertEquals(List.of(), summary(Map.of("idle", List.of())));
        assertFalse(summary(Map.of("idle", List.of(gap("ring", 2500)))).isEmpty());
    }
}
