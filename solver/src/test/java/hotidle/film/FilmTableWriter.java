package hotidle.film;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.StringJoiner;
import java.util.stream.IntStream;

/**
 * Writes {@link FilmTable}: run it in the folder of the solver, then {@code spotless:apply}. Takes some seconds; needed only when
 * {@link ReynoldsEquation} or {@link FilmGrid} changes, and {@link FilmTableTest} says so.
 */
public final class FilmTableWriter {

    /** Half a unit of the last digit that is written. */
    static final double ROUNDING = 0.5e-5;

    private static final String HEAD = """
            package hotidle.film;

            /**
             * Solutions of {@link ReynoldsEquation} at the points of {@link FilmGrid}: a list for each L/D, the shortest first, in it
             * a number for each eccentricity, ε = 0 first. Written by {@code FilmTableWriter} of the tests, not by hand; long because it is
             * data.
             */
            final class FilmTable {

                private FilmTable() {}
            """;

    private FilmTableWriter() {}

    /** The tabulated functions of one solution, in the order in which the table names them. */
    static double[] scaled(FilmSolution film, double lengthOverDiameter) {
        double e = film.eccentricity();
        double shortBearing = lengthOverDiameter * lengthOverDiameter * ShortBearing.stiffness(e);
        return new double[] {
            Math.log(film.stiffness() / shortBearing),
            film.attitude() / Math.sqrt(1 - e * e),
            film.flow() / (Math.PI * (1 + e)),
            film.sideFlowByEccentricity() / (2 * Math.PI),
            Math.log(film.loadOverPeak())
        };
    }

    /** All solutions, by row, column and function. */
    static double[][][] solved() {
        return IntStream.rangeClosed(0, FilmGrid.ROWS)
                .parallel()
                .mapToObj(row -> IntStream.rangeClosed(0, FilmGrid.COLUMNS)
                        .mapToObj(column -> solved(row, column))
                        .toArray(double[][]::new))
                .toArray(double[][][]::new);
    }

    private static double[] solved(int row, int column) {
        double ratio = FilmGrid.lengthOverDiameter(column);
        return scaled(ReynoldsEquation.solve(FilmGrid.eccentricity(row), ratio), ratio);
    }

    private static String table(String name, String meaning, double[][][] solved, int function) {
        StringJoiner lines = new StringJoiner(",\n");
        for (int column = 0; column <= FilmGrid.COLUMNS; column++) {
            StringJoiner numbers = new StringJoiner(", ", "        {", "}");
            for (double[][] row : solved) {
                numbers.add(String.format(Locale.ROOT, "%.5f", row[column][function]));
            }
            lines.add(numbers.toString());
        }
        return "\n    /** " + meaning + " */\n    static final double[][] " + name + " = {\n" + lines + "\n    };\n";
    }

    /** Solves all points and overwrites the source file. */
    public static void main(String[] arguments) throws IOException {
        double[][][] solved = solved();
        String text = HEAD
                + table("LOAD", "ln of 1/S over that of {@link ShortBearing}.", solved, 0)
                + table("ATTITUDE", "φ/√(1 − ε²) [rad].", solved, 1)
                + table("FLOW", "Q/(R·c·N·L) over π·(1 + ε).", solved, 2)
                + table("SIDE_FLOW", "Qs/(R·c·N·L) over 2·π·ε.", solved, 3)
                + table("LOAD_OVER_PEAK", "ln of mean over largest pressure.", solved, 4)
                + "}\n";
        Files.writeString(Path.of("src/main/java/hotidle/film/FilmTable.java"), text);
    }
}
