package hotidle.film;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

final class JournalFilmPropertyTest {

    /** ε = 1 − 10^(−x): x from 0.0005 (ε = 0.001) to 2.3 (ε = 0.99499). */
    private static double eccentricity(double x) {
        return 1 - Math.pow(10, -x);
    }

    @Property(seed = "1")
    void theSlopeOfTheLoadIsItsCentralDifference(
            @ForAll @DoubleRange(min = 0.1, max = 2) @Scale(6) double ratio,
            @ForAll @DoubleRange(min = 0.0005, max = 2.3) @Scale(6) double x) {
        JournalFilm film = JournalFilm.of(ratio);
        double e = eccentricity(x);
        double h = 1e-5 * (1 - e);
        double difference = (film.load(e + h) - film.load(e - h)) / (2 * h);
        assertEquals(1, film.loadSlope(e) / difference, 1e-6);
    }

    @Property(seed = "1")
    void aFartherJournalIsCarriedHigherAndMoreUprightAndLeaksMore(
            @ForAll @DoubleRange(min = 0.1, max = 2) @Scale(6) double ratio,
            @ForAll @DoubleRange(min = 0, max = 2.29) @Scale(6) double x) {
        JournalFilm film = JournalFilm.of(ratio);
        double e = eccentricity(x);
        double next = eccentricity(x + 0.01);
        assertTrue(film.loadSlope(e) > 0, "slope of the load");
        assertTrue(film.load(next) > film.load(e), "load");
        assertTrue(film.attitude(next) < film.attitude(e), "attitude");
        assertTrue(film.sideFlow(next) > film.sideFlow(e), "side flow");
        assertTrue(film.drag(next) > film.drag(e), "drag");
    }

    @Property(seed = "1")
    void aLongerOilFilmCarriesMoreOnTheSameAreaAndLeaksLess(
            @ForAll @DoubleRange(min = 0.1, max = 1.9) @Scale(6) double ratio,
            @ForAll @DoubleRange(min = 0.0005, max = 2.3) @Scale(6) double x) {
        JournalFilm film = JournalFilm.of(ratio);
        JournalFilm longer = JournalFilm.of(ratio * 1.05);
        double e = eccentricity(x);
        assertTrue(longer.load(e) > film.load(e), "load");
        assertTrue(longer.sideFlow(e) < film.sideFlow(e), "side flow");
        assertTrue(longer.flow(e) < film.flow(e), "flow");
    }

    /** What does not leave at the ends passes the gap where the film ends: π·h/c, which lies between the least and the widest. */
    @Property(seed = "1")
    void whatDoesNotLeakPassesTheEndOfTheOilFilm(
            @ForAll @DoubleRange(min = 0.1, max = 2) @Scale(6) double ratio,
            @ForAll @DoubleRange(min = 0, max = 2.3) @Scale(6) double x) {
        JournalFilm film = JournalFilm.of(ratio);
        double e = eccentricity(x);
        double gap = (film.flow(e) - film.sideFlow(e)) / Math.PI;
        assertTrue(gap > (1 - e) * 0.999 && gap < 1 + e + 1e-4, "h/c at the film's end: " + gap + " at " + e);
    }
}
