package hotidle.film;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

final class FilmTableTest {

    /** Beyond the rounding of the table: what another machine's sine may move. */
    private static final double TABLE = FilmTableWriter.ROUNDING + 1e-7;

    /** Measured midway between all nodes: 0.053 %, Qs at L/D 1.77, ε 0.994. */
    private static final double INTERPOLATION = 0.001;

    /** The largest pressure is that of a node of the mesh, which is less even: measured 0.21 % at ε 0.1. */
    private static final double INTERPOLATION_OF_PEAK = 0.003;

    private static final double[] ROWS_BETWEEN = {0.5, 1.5, 3.5, 7.5, 12.5, 18.5, 22.5, 23.5};
    private static final double[] COLUMNS_BETWEEN = {0.5, 1.5, 5.5, 8.5, 10.5, 11.5};

    @Test
    void everyTabulatedOilFilmIsASolutionOfTheReynoldsEquation() {
        double[][][] tables = {
            FilmTable.LOAD, FilmTable.ATTITUDE, FilmTable.FLOW, FilmTable.SIDE_FLOW, FilmTable.LOAD_OVER_PEAK
        };
        double[][][] solved = FilmTableWriter.solved();
        for (int function = 0; function < tables.length; function++) {
            for (int column = 0; column <= FilmGrid.COLUMNS; column++) {
                int f = function;
                int c = column;
                double[] expected =
                        Arrays.stream(solved).mapToDouble(row -> row[c][f]).toArray();
                assertArrayEquals(expected, tables[f][c], TABLE, () -> "function " + f + ", column " + c);
            }
        }
    }

    @Test
    void oilFilmsBetweenTheTabulatedOnesAreSolutionsToo() {
        assertAll(IntStream.range(0, ROWS_BETWEEN.length * COLUMNS_BETWEEN.length)
                .parallel()
                .boxed()
                .flatMap(i -> compared(
                        FilmGrid.eccentricity(ROWS_BETWEEN[i / COLUMNS_BETWEEN.length]),
                        FilmGrid.lengthOverDiameter(COLUMNS_BETWEEN[i % COLUMNS_BETWEEN.length])))
                .toList());
    }

    @Test
    void oilFilmsAtTheCornersOfTheTableAreSolutionsToo() {
        assertAll(Stream.of(FilmGrid.SHORTEST, FilmGrid.LONGEST).flatMap(ratio -> compared(FilmGrid.LARGEST, ratio)));
        for (double ratio : new double[] {FilmGrid.SHORTEST, FilmGrid.LONGEST}) {
            FilmSolution solved = ReynoldsEquation.solve(0, ratio);
            JournalFilm film = JournalFilm.of(ratio);
            assertEquals(solved.stiffness(), film.loadSlope(0), INTERPOLATION * solved.stiffness());
            assertEquals(solved.attitude(), film.attitude(0), INTERPOLATION * solved.attitude());
        }
    }

    private static Stream<Executable> compared(double e, double ratio) {
        FilmSolution solved = ReynoldsEquation.solve(e, ratio);
        JournalFilm film = JournalFilm.of(ratio);
        String where = " at eccentricity " + e + ", L/D " + ratio;
        return Stream.of(
                near("load" + where, solved.load(), film.load(e)),
                near("attitude" + where, solved.attitude(), film.attitude(e)),
                near("drag" + where, solved.drag(), film.drag(e)),
                near("flow" + where, solved.flow(), film.flow(e)),
                near("side flow" + where, solved.sideFlow(), film.sideFlow(e)),
                () -> assertEquals(
                        solved.loadOverPeak(),
                        film.loadOverPeak(e),
                        INTERPOLATION_OF_PEAK * solved.loadOverPeak(),
                        "mean over largest pressure" + where));
    }

    private static Executable near(String what, double solved, double interpolated) {
        return () -> assertEquals(solved, interpolated, INTERPOLATION * solved, what);
    }
}
