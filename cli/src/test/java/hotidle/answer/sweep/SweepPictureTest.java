package hotidle.answer.sweep;

import static hotidle.answer.ReadyCircuits.PSI;
import static hotidle.answer.sweep.SweepAnswerTest.BENCH;
import static hotidle.answer.sweep.SweepAnswerTest.FIVE;
import static hotidle.answer.sweep.SweepAnswerTest.RIG;
import static hotidle.answer.sweep.SweepAnswerTest.SHOP;
import static hotidle.answer.sweep.SweepAnswerTest.WORN;
import static hotidle.answer.sweep.SweepAnswerTest.answer;
import static hotidle.answer.sweep.SweepAnswerTest.line;
import static hotidle.answer.sweep.SweepAnswerTest.sweep;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.plots.Chart;
import hotidle.plots.FigureChart;
import hotidle.plots.OilChart;
import hotidle.plots.PressureCurve;
import hotidle.plots.SpeedChart;
import hotidle.study.SpeedSweep;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is drawn of the sweeps of {@link SweepAnswerTest}. */
class SweepPictureTest {

    @Test
    void thePictureShowsLinePressureAndWhereTheOilGoes() {
        List<Chart> charts = SHOP.picture().orElseThrow().charts();
        assertEquals(2, charts.size());
        SpeedChart pressure = (SpeedChart) charts.get(0);
        assertEquals("psi", pressure.unit());
        assertEquals("worn", pressure.curves().get(0).build());
        PressureCurve curve = pressure.curves().get(0);
        assertEquals(
                line(WORN, 3) / PSI,
                curve.points().get(curve.points().size() - 1).pressure(),
                1e-9);
        OilChart oil = (OilChart) charts.get(1);
        assertTrue(
                oil.title().matches("worn: slip and leaks give back \\d+ % of its oil at \\d+ rpm, \\d+ % at \\d+ rpm"),
                oil.title());
        assertEquals("", SHOP.leftOutOfPicture());
        OilChart.FlowBand back = oil.bands().get(oil.bands().size() - 1);
        assertTrue(back.rest() && back.name().equals("sent back by the regulator"), back.name());
    }

    /** Few speeds were asked for, 600 rpm apart; the speeds between that a reader looks for are solved and drawn. */
    @Test
    void theCurvePassesThroughThePointFromWhichTheLineHolds() {
        double onset = 60 * WORN.onset().orElseThrow();
        PressureCurve curve = ((SpeedChart)
                        SHOP.picture().orElseThrow().charts().get(0))
                .curves()
                .get(0);
        PressureCurve.SweepPoint there = curve.points().stream()
                .filter(point -> Math.abs(point.speed() - onset) < 1e-6)
                .findFirst()
                .orElseThrow();
        assertEquals(curve.set(), there.pressure(), 0.2);
        assertEquals(
                4 + WORN.lookedFor().size(),
                ((OilChart) SHOP.picture().orElseThrow().charts().get(1))
                        .speeds()
                        .size());
    }

    /** The worn unit's story lies at low speed: there its oil is shown larger, on a scale in both systems of units. */
    @Test
    void lowSpeedsAndSmallFlowsAreShownLarger() {
        SpeedSweep fine = sweep(FIVE.unit("worn"), 500, 600, 700, 800, 900, 1000, 1400, 2000, 3000, 4000);
        List<Chart> charts =
                answer(FIVE, UnitSystem.SHOP, fine).picture().orElseThrow().charts();
        assertEquals(4, charts.size());
        double onset = 60 * fine.onset().orElseThrow();
        double high = Double.parseDouble(charts.get(1).title().replaceAll("\\D+(\\d+) rpm.*", "$1"));
        assertTrue(high > onset && high < 1.25 * onset + 101, high + " of " + onset);
        assertTrue(charts.get(3).title().startsWith("worn: "), charts.get(3).title());
        assertEquals("bar", ((SpeedChart) charts.get(0)).other().orElseThrow().unit());
        assertEquals(
                3.785411784, ((OilChart) charts.get(2)).other().orElseThrow().factor(), 1e-9);
        assertEquals(4000, charts.get(2).scale().high(), 1e-9);
        assertTrue(charts.get(3).scale().high() <= high, "low speeds alone");
        double most = ((OilChart) charts.get(2))
                .bands().stream()
                        .filter(OilChart.FlowBand::rest)
                        .flatMap(band -> band.flows().stream())
                        .max(Double::compare)
                        .orElseThrow();
        double top = charts.get(2).scale().tops().values().iterator().next();
        assertTrue(most > 2 * top, "small flows are shown at all speeds: " + most + " goes back beyond " + top);
    }

    @Test
    void aPictureOfManySweepsSaysWhichItLeavesOut() {
        SpeedSweep[] many = FIVE.units().values().stream()
                .map(unit -> sweep(unit, 600, 1200))
                .toArray(SpeedSweep[]::new);
        assertTrue(many.length > SpeedChart.MOST_CURVES && many.length > FigureChart.MOST_CURVES);
        SweepAnswer answer = answer(FIVE, UnitSystem.SHOP, many);
        assertEquals(
                SpeedChart.MOST_CURVES,
                ((SpeedChart) answer.picture().orElseThrow().charts().get(0))
                        .curves()
                        .size());
        assertTrue(answer.leftOutOfPicture().contains(" of " + many.length + " sweeps"), answer.leftOutOfPicture());
        assertEquals(
                "; it shows the first " + FigureChart.MOST_CURVES + " of " + many.length + " sweeps",
                answer.leftOutOfFilmPicture());
    }

    @Test
    void theFilmIsDrawnAsAMultipleOfTheLeastAllowedAndItsThinnestIsMarked() {
        FigureChart film =
                (FigureChart) SHOP.filmPicture().orElseThrow().charts().get(0);
        assertTrue(film.axis().startsWith("film / least film allowed"), film.axis());
        assertEquals(1, film.level().orElseThrow().value());
        assertTrue(
                film.curves().get(0).mark().orElseThrow().text().startsWith("worn: thinnest "),
                film.curves().get(0).mark().toString());
        assertTrue(
                film.curves().get(0).mark().orElseThrow().text().endsWith(" rpm, NOT KNOWN whether it holds"),
                "as compare says of it");
        double least = film.curves().get(0).points().stream()
                .mapToDouble(hotidle.plots.PressureCurve.SweepPoint::pressure)
                .min()
                .orElseThrow();
        assertEquals(least, film.curves().get(0).mark().orElseThrow().value(), 1e-12);
    }

    @Test
    void aBenchHasNoHubToDraw() {
        assertTrue(answer(RIG, UnitSystem.SHOP, BENCH).filmPicture().isEmpty());
    }
}
