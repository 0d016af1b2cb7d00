package hotidle.film;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The oil film of a plain journal bearing of one length, from a table of solutions of Reynolds' equation.
 *
 * <pre>
 * Load      W = μ·N·L·D·(R/c)²·load, N [rev/s], R radius, c radial clearance; load = 1/S, S the Sommerfeld number
 * Friction  force on the journal's surface = μ·N·L·D·(R/c)·drag; drag = f·(R/c)/S, Petroff's 2π² at ε = 0; {@link FilmSolution}
 * Flow      Q = R·c·N·L·flow enters the film at the widest gap, Qs = R·c·N·L·sideFlow leaves at both ends together
 * Peak      largest pressure in the film, as the mean W/(L·D) over it
 * Source    {@link ReynoldsEquation}; the numbers of A. Raimondi, J. Boyd, ASLE Trans. 1 (1958) (from memory) are met, {@code RaimondiBoydTest}
 * Range     0 ≤ ε ≤ 0.995, 0.1 ≤ L/D ≤ 2; full circle, no groove, fed at ambient pressure, isothermal, rigid, axes parallel
 * Numerics  Cubic splines in −ln(1 − ε) and ln(L/D) through ln of the load over Ocvirk's ({@link ShortBearing}), φ/√(1 − ε²),
 *           Q/(1 + ε), Qs/ε and ln of mean over largest pressure: value, slope and curvature of the load are continuous. Interpolation error, measured midway
 *           between all nodes: 0.04 % in load and φ, 0.06 % in Q and Qs, 0.2 % in the largest pressure; the digits of the table add 0.001 %.
 *           Friction counts the ruptured part as filled, as the published table does: where oil leaves it, the true one is less.
 * </pre>
 */
public final class JournalFilm {

    /** Shortest film in the table, length over diameter. */
    public static final double SHORTEST = FilmGrid.SHORTEST;

    /** Longest film in the table, length over diameter. */
    public static final double LONGEST = FilmGrid.LONGEST;

    private static final List<CubicSpline> LOAD = across(FilmTable.LOAD);
    private static final List<CubicSpline> ATTITUDE = across(FilmTable.ATTITUDE);
    private static final List<CubicSpline> FLOW = across(FilmTable.FLOW);
    private static final List<CubicSpline> SIDE_FLOW = across(FilmTable.SIDE_FLOW);
    private static final List<CubicSpline> LOAD_OVER_PEAK = across(FilmTable.LOAD_OVER_PEAK);

    private final double square;
    private final CubicSpline load;
    private final CubicSpline attitude;
    private final CubicSpline flow;
    private final CubicSpline sideFlow;
    private final CubicSpline loadOverPeak;

    private JournalFilm(double lengthOverDiameter) {
        square = lengthOverDiameter * lengthOverDiameter;
        double column = Math.log(lengthOverDiameter / FilmGrid.SHORTEST);
        load = along(LOAD, column);
        attitude = along(ATTITUDE, column);
        flow = along(FLOW, column);
        sideFlow = along(SIDE_FLOW, column);
        loadOverPeak = along(LOAD_OVER_PEAK, column);
    }

    /** A spline over the lengths for each eccentricity of a table. */
    private static List<CubicSpline> across(double[][] table) {
        return IntStream.rangeClosed(0, FilmGrid.ROWS)
                .mapToObj(row -> new CubicSpline(
                        FilmGrid.COLUMN_STEP,
                        IntStream.rangeClosed(0, FilmGrid.COLUMNS)
                                .mapToDouble(column -> table[column][row])
                                .toArray()))
                .toList();
    }

    private static CubicSpline along(List<CubicSpline> rows, double column) {
        return new CubicSpline(
                FilmGrid.ROW_STEP,
                rows.stream().mapToDouble(row -> row.value(column)).toArray());
    }

    /**
     * The film of a bearing: five splines of 25 knots, so that nothing is kept from one call to the next.
     *
     * @param lengthOverDiameter L/D [-], 0.1 to 2
     */
    public static JournalFilm of(double lengthOverDiameter) {
        check("length over diameter of a journal film", lengthOverDiameter, FilmGrid.SHORTEST, FilmGrid.LONGEST);
        return new JournalFilm(lengthOverDiameter);
    }

    /** 1/S [-] at eccentricity e [-]: zero at 0, rising throughout. */
    public double load(double e) {
        double x = stretched(e);
        return e * square * ShortBearing.stiffness(e) * Math.exp(load.value(x));
    }

    /** d(1/S)/dε [-] at eccentricity e [-]. */
    public double loadSlope(double e) {
        double x = stretched(e);
        double relative = ShortBearing.relativeSlope(e) + load.slope(x) / (1 - e);
        return square * ShortBearing.stiffness(e) * Math.exp(load.value(x)) * (1 + e * relative);
    }

    /** Angle φ between the load and the line of centres [rad] at eccentricity e [-]. */
    public double attitude(double e) {
        return Math.sqrt(1 - e * e) * attitude.value(stretched(e));
    }

    private double attitudeSlope(double e) {
        double root = Math.sqrt(1 - e * e);
        double x = stretched(e);
        return root * attitude.slope(x) / (1 - e) - e / root * attitude.value(x);
    }

    /** f·(R/c)/S [-] of the journal at eccentricity e [-]. */
    public double drag(double e) {
        return FilmSolution.drag(e, load(e), attitude(e));
    }

    /** d(f·(R/c)/S)/dε [-] at eccentricity e [-]. */
    public double dragSlope(double e) {
        double phi = attitude(e);
        double shear = 2 * Math.PI * Math.PI * e / Math.pow(1 - e * e, 1.5);
        return shear
                + 0.5 * (Math.sin(phi) * (load(e) + e * loadSlope(e)) + e * load(e) * Math.cos(phi) * attitudeSlope(e));
    }

    /** Q/(R·c·N·L) [-] at eccentricity e [-]; π at 0. */
    public double flow(double e) {
        return Math.PI * (1 + e) * flow.value(stretched(e));
    }

    /** Qs/(R·c·N·L) [-] at eccentricity e [-]; zero at 0. */
    public double sideFlow(double e) {
        return 2 * Math.PI * e * sideFlow.value(stretched(e));
    }

    /** dQs/dε over R·c·N·L [-] at eccentricity e [-]. */
    public double sideFlowSlope(double e) {
        double x = stretched(e);
        return 2 * Math.PI * (sideFlow.value(x) + e * sideFlow.slope(x) / (1 - e));
    }

    /** Mean pressure W/(L·D) over the largest in the film [-] at eccentricity e [-]. */
    public double loadOverPeak(double e) {
        return Math.exp(loadOverPeak.value(stretched(e)));
    }

    private static double stretched(double e) {
        check("eccentricity of a journal film", e, 0, FilmGrid.LARGEST);
        return FilmGrid.stretched(e);
    }

    private static void check(String what, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    what + " is " + value + " [-] and must lie between " + low + " and " + high);
        }
    }
}
