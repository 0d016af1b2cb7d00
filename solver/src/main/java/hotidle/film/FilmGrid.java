package hotidle.film;

/**
 * The points at which {@link FilmTable} holds a film.
 *
 * <pre>
 * Numerics  Equal steps in −ln(1 − ε) and in ln(L/D). The first is ε where the film is thick all round; towards metal contact each
 *           step thins the film by the same share, and the tabulated functions become straight lines.
 * </pre>
 */
final class FilmGrid {

    /** Largest eccentricity [-]. */
    static final double LARGEST = 0.995;

    /** Least and largest L/D [-]. */
    static final double SHORTEST = 0.1;

    static final double LONGEST = 2;

    /** Steps in eccentricity and in L/D. */
    static final int ROWS = 24;

    static final int COLUMNS = 12;

    static final double ROW_STEP = stretched(LARGEST) / ROWS;
    static final double COLUMN_STEP = Math.log(LONGEST / SHORTEST) / COLUMNS;

    private FilmGrid() {}

    /** −ln(1 − ε). */
    static double stretched(double e) {
        return -Math.log1p(-e);
    }

    /** ε of a row, or between rows [-]. */
    static double eccentricity(double row) {
        return -Math.expm1(-ROW_STEP * row);
    }

    /** L/D of a column, or between columns [-]. */
    static double lengthOverDiameter(double column) {
        return SHORTEST * Math.exp(COLUMN_STEP * column);
    }
}
