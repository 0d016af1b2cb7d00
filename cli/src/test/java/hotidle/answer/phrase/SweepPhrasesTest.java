package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said over, under and beside a sweep over engine speed. */
class SweepPhrasesTest {

    private static final SweepPhrase METRIC = new SweepPhrase(UnitSystem.METRIC);

    @Test
    void aSweepIsHeadedByWhatWasSweptAndHowHotItsSumpWas() {
        assertEquals(
                "shuttle-five, worn, hot-idle (650 rpm) in first, sump 110 degC",
                METRIC.heading("shuttle-five", "worn", "hot-idle", 650 / 60.0, "first", 383.15));
        assertEquals(
                "bench, worn, slow in still, sump 110 degC",
                METRIC.heading("bench", "worn", "slow", 0, "still", 383.15),
                "nothing turns");
        assertEquals(
                "hot-idle in first, sump 230 degF", new SweepPhrase(UnitSystem.SHOP).duty("hot-idle", "first", 383.15));
    }

    @Test
    void twoSteadyStatesAreToldByThePartThatStandsElsewhere() {
        assertEquals(
                "  900 rpm: shuttle stands at 0.001500 rising and at 0.0004000 falling (SI)",
                METRIC.difference(15, "shuttle", 1.5e-3, 4e-4));
        assertTrue(SweepPhrase.DIFFER.contains("two steady states"));
    }

    @Test
    void aSpeedWithoutAStateSaysWhy() {
        assertEquals(
                "900 rpm: not solved: line does not settle", METRIC.unsolved(15, "not solved: line does not settle"));
    }

    @Test
    void anOilOutsideItsViscosityLineIsToldInDegreesCelsius() {
        assertEquals(
                "warning: 170 degC lies outside -40 to 160 degC, where the oil's viscosity line can be trusted",
                SweepWarningPhrase.temperature(170, -40, 160));
    }

    @Test
    void aLiftedReliefValveHoldsTheLineInPlaceOfTheRegulator() {
        assertEquals(
                "warning: worn: the relief valve opens at some of these speeds; the line is then held by it, not by the"
                        + " regulator",
                SweepWarningPhrase.relief("worn"));
    }

    @Test
    void aSpeedThatTheUnitNeverRunsAtIsRemarkedOn() {
        assertEquals(
                "warning: 13000 rpm is far beyond the circuit's fastest driving condition, 5000 rpm",
                SweepWarningPhrase.tooFast(13000, 5000));
    }

    @Test
    void aPictureSaysWhatItLeavesOutAndNothingWhereItShowsAll() {
        assertEquals("", LeftOutPhrase.sweeps(6, 6));
        assertEquals("; it shows the first 6 of 9 sweeps", LeftOutPhrase.sweeps(6, 9));
        assertEquals("", LeftOutPhrase.pressuresAndOil(3, 3, 3));
        assertEquals(
                "; it shows the pressure of the first 6 and the oil of the first 3 of 9 sweeps",
                LeftOutPhrase.pressuresAndOil(6, 3, 9));
        assertEquals("", LeftOutPhrase.charts(5, 5));
        assertEquals(
                "; of its 5 charts this size has room for the first 2: a larger --size, for example 1200x800, has room for more",
                LeftOutPhrase.charts(2, 5));
        assertTrue(LeftOutPhrase.charts(1, 5).contains(" room for the first: a larger"));
    }

    @Test
    void theHubTouchesAtOneSpeedOrOverASpan() {
        HubFilmPhrase said = new HubFilmPhrase(UnitSystem.SHOP);
        assertEquals(
                "At the temperatures of cruise the hub loses its film at 600 rpm: metal contact, film not known.",
                said.contact("cruise", List.of(10.0)));
        assertEquals("600", said.cell(List.of(10.0)));
        assertEquals("600 to 1200", said.cell(List.of(10.0, 15.0, 20.0)));
    }
}
