package hotidle.film;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The published table of the full journal bearing, {@link RaimondiBoyd}. What stands in the validation sheet (S, friction and side
 * flow up to ε = 0.9) is checked there; here the rest of the table.
 */
final class RaimondiBoydTest {

    private static final double ATTITUDE = 0.012;
    private static final double FLOW = 0.002;

    /** At ε = 0.97 the film is 0.03·c thin and the old mesh shows: all S are printed too low, pressures too high. */
    private static final double THIN = 0.97;

    private static final double SOMMERFELD_THIN = 0.03;
    private static final double FRICTION_THIN = 0.03;
    private static final double ATTITUDE_THIN = 0.015;
    private static final double PEAK_THIN = 0.06;

    /** The old table of the infinitely long bearing is less even in its flow; from ε = 0.8 on it is left out. */
    private static final double FLOW_LONG = 0.01;

    static List<RaimondiBoyd.Line> finite() {
        return RaimondiBoyd.FINITE;
    }

    static Stream<RaimondiBoyd.Line> thin() {
        return RaimondiBoyd.FINITE.stream().filter(line -> line.eccentricity() == THIN);
    }

    @ParameterizedTest
    @MethodSource("finite")
    void oilFilmsOfFiniteLengthMeetThePublishedTable(RaimondiBoyd.Line line) {
        double e = line.eccentricity();
        boolean thin = e == THIN;
        JournalFilm film = JournalFilm.of(line.lengthOverDiameter());
        assertAll(
                near("φ", line.attitude(), Math.toDegrees(film.attitude(e)), thin ? ATTITUDE_THIN : ATTITUDE),
                near("Q", line.flow(), film.flow(e), FLOW),
                near("p/pmax", line.peak(), film.loadOverPeak(e), thin ? PEAK_THIN : RaimondiBoyd.PEAK));
    }

    @ParameterizedTest
    @MethodSource("thin")
    void thinFilmsCarryAndRubAsPublished(RaimondiBoyd.Line line) {
        double e = line.eccentricity();
        JournalFilm film = JournalFilm.of(line.lengthOverDiameter());
        assertAll(
                near("S", line.sommerfeld(), 1 / film.load(e), SOMMERFELD_THIN),
                near("f·R/c", line.friction(), film.drag(e) / film.load(e), FRICTION_THIN),
                near("Qs/Q", line.sideFlow(), film.sideFlow(e) / film.flow(e), RaimondiBoyd.SIDE_FLOW));
    }

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            ε,   S,      φ [°], f·R/c, Q/(RcNL), p/pmax
            0.1, 0.24,   69.1,  4.8,   3.03,     0.826
            0.2, 0.123,  67.26, 2.57,  2.83,     0.814
            0.4, 0.0626, 61.94, 1.52,  2.26,     0.764
            0.6, 0.0389, 54.31, 1.2,   1.56,     0.667
            0.8, 0.021,  42.22, 0.961, ,         0.495
            0.9, 0.0115, 31.62, 0.756, ,         0.358
            """)
    void endlessOilFilmsMeetThePublishedTable(
            double e,
            BigDecimal sommerfeld,
            BigDecimal attitude,
            BigDecimal friction,
            BigDecimal flow,
            BigDecimal peak) {
        FilmSolution film = ReynoldsEquation.infinitelyLong(e);
        assertAll(
                near("S", sommerfeld, 1 / film.load(), RaimondiBoyd.SOMMERFELD),
                near("φ", attitude, Math.toDegrees(film.attitude()), ATTITUDE),
                near("f·R/c", friction, film.drag() / film.load(), RaimondiBoyd.FRICTION),
                flow == null ? () -> {} : near("Q", flow, film.flow(), FLOW_LONG),
                near("p/pmax", peak, film.loadOverPeak(), RaimondiBoyd.PEAK),
                () -> assertEquals(0, film.sideFlow(), "Qs"));
    }

    private static Executable near(String what, String printed, double ours, double share) {
        return near(what, new BigDecimal(printed), ours, share);
    }

    private static Executable near(String what, BigDecimal printed, double ours, double share) {
        double value = printed.doubleValue();
        return () -> assertEquals(value, ours, share * value + printed.ulp().doubleValue() / 2, what);
    }
}
