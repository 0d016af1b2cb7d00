package hotidle.film;

import java.util.Arrays;

/**
 * The oil film of a full, plain journal bearing of finite length, fed at ambient pressure.
 *
 * <pre>
 * Formula   ∂(H³·∂Π/∂θ)/∂θ + (D/L)²·∂(H³·∂Π/∂ζ)/∂ζ = −sinθ,  H = h/c = 1 + ε·cosθ,  p = 6·μ·ω·(R/c)²·ε·Π,
 *           θ from the widest gap, ζ from the middle (0) to the end (1) of the bearing
 * Edges     p = 0 at θ = 0 and ζ = 1; the film ends where p = 0 and dp/dθ = 0 (H. Swift, 1932; W. Stieber, 1933, both from memory), which is to say
 *           p ≥ 0, and where p = 0 the gap may not ask for more oil than it is given
 * Results   1/S = 6·π·ε·|∫∫Π·(−cosθ, sinθ)·dθ·dζ|, φ the angle of that integral; Q = π·∫(H − ε·H³·∂Π/∂θ)·dζ at θ = 0;
 *           Qs = −π·ε·(D/L)²·∫H³·∂Π/∂ζ·dθ at ζ = 1
 * Source    O. Reynolds, Phil. Trans. R. Soc. 177 (1886) 157; B. Hamrock, Fundamentals of Fluid Film Lubrication, 1994, ch. 7, 11
 *           (from memory)
 * Range     isothermal, laminar, rigid, parallel axes, no groove; 0 ≤ ε ≤ 0.995
 * Numerics  Finite volumes on {@link FilmMesh}. Which nodes are wet is found by an active set: solve for the wet ones, dry those
 *           below zero, wet those that lack oil, until none changes (M. Hintermüller, K. Ito, K. Kunisch, SIAM J. Optim. 13 (2002)
 *           865, from memory). Meshes of 120·16 and 240·32 are extrapolated. Against twice as fine ones, over the whole table:
 *           1/S and φ within 0.01 % to ε = 0.98, 0.03 % at 0.995; Q and Qs within 0.002 %, pmax within 0.05 %.
 * </pre>
 */
final class ReynoldsEquation {

    private static final int ROWS = 240;
    private static final int CELLS = 32;
    private static final int COARSEST = 60;

    /** Passes of the active set; each moves the film's end by about one node, and a coarser mesh has placed it before. */
    private static final int PASSES = 200;

    private final double e;
    private final FilmMesh mesh;
    private final int cells;

    /** Conductance from each unknown to the next node around, and to the next cell along the bearing. */
    private final double[] around;

    private final double[] along;

    /** Sum of the four conductances of each unknown. */
    private final double[] diagonal;

    private final double[] source;
    private final double[] pressure;
    private final boolean[] wet;

    private ReynoldsEquation(double e, double lengthOverDiameter, FilmMesh mesh) {
        this.e = e;
        this.mesh = mesh;
        cells = mesh.cells();
        int unknowns = (mesh.rows() - 1) * cells;
        around = new double[unknowns];
        along = new double[unknowns];
        diagonal = new double[unknowns];
        source = new double[unknowns];
        pressure = new double[unknowns];
        wet = new boolean[unknowns];
        double axial = 1 / (lengthOverDiameter * lengthOverDiameter);
        for (int k = 0; k < unknowns; k++) {
            int i = k / cells + 1;
            int j = k % cells;
            around[k] = around(i, j);
            along[k] = axial * along(i, j);
            diagonal[k] = around[k] + around(i - 1, j) + along[k] + (j > 0 ? along[k - 1] : 0);
            source[k] = (Math.cos(mesh.between(i - 1)) - Math.cos(mesh.between(i))) * mesh.width(j);
        }
    }

    /**
     * Solves the film of a bearing.
     *
     * @param e                  eccentricity ε [-], 0 to 0.995
     * @param lengthOverDiameter L/D [-]
     */
    static FilmSolution solve(double e, double lengthOverDiameter) {
        return solve(e, lengthOverDiameter, ROWS, CELLS);
    }

    /** Solves the film of an infinitely long bearing. */
    static FilmSolution infinitelyLong(double e) {
        return solve(e, Double.POSITIVE_INFINITY, ROWS, 1);
    }

    /** Solves on the given mesh and on one half as fine, and extrapolates. */
    static FilmSolution solve(double e, double lengthOverDiameter, int rows, int cells) {
        ReynoldsEquation coarse = settled(e, lengthOverDiameter, rows / 2, Math.max(1, cells / 2));
        ReynoldsEquation fine = new ReynoldsEquation(e, lengthOverDiameter, new FilmMesh(e, rows, cells));
        fine.startFrom(coarse);
        fine.settle();
        return FilmSolution.extrapolated(coarse.result(), fine.result());
    }

    private static ReynoldsEquation settled(double e, double lengthOverDiameter, int rows, int cells) {
        ReynoldsEquation film = new ReynoldsEquation(e, lengthOverDiameter, new FilmMesh(e, rows, cells));
        if (rows > COARSEST) {
            film.startFrom(settled(e, lengthOverDiameter, rows / 2, Math.max(1, cells / 2)));
        } else {
            for (int k = 0; k < film.wet.length; k++) {
                film.wet[k] = film.source[k] > 0;
            }
        }
        film.settle();
        return film;
    }

    private double around(int i, int j) {
        return cube(mesh.between(i)) * mesh.width(j) / (mesh.node(i + 1) - mesh.node(i));
    }

    private double along(int i, int j) {
        double next = j == cells - 1 ? 1 : mesh.centre(j + 1);
        return cube(mesh.node(i)) * (mesh.between(i) - mesh.between(i - 1)) / (next - mesh.centre(j));
    }

    private double cube(double theta) {
        double h = 1 + e * Math.cos(theta);
        return h * h * h;
    }

    private void startFrom(ReynoldsEquation coarse) {
        for (int k = 0; k < wet.length; k++) {
            int i = Math.max(1, (k / cells + 1) / 2);
            int j = k % cells * coarse.cells / cells;
            wet[k] = coarse.wet[(i - 1) * coarse.cells + j];
        }
    }

    private void settle() {
        double[][] lower = new double[wet.length][cells + 1];
        for (int pass = 0; pass < PASSES; pass++) {
            solveWet(lower);
            if (!exchange()) {
                return;
            }
        }
        throw new IllegalStateException("the film's end was not found in " + PASSES + " passes at eccentricity " + e);
    }

    private void solveWet(double[][] lower) {
        int end = 0;
        for (int k = 0; k < wet.length; k++) {
            double[] row = lower[k];
            Arrays.fill(row, 0);
            row[cells] = wet[k] ? diagonal[k] : 1;
            pressure[k] = wet[k] ? source[k] : 0;
            if (wet[k]) {
                end = k + 1;
                if (k % cells > 0 && wet[k - 1]) {
                    row[cells - 1] = -along[k - 1];
                }
                if (k >= cells && wet[k - cells]) {
                    row[0] -= around[k - cells];
                }
            }
        }
        BandedCholesky.solve(lower, pressure, end);
    }

    /** Dries and wets nodes; says whether any changed. */
    private boolean exchange() {
        boolean changed = false;
        for (int k = 0; k < wet.length; k++) {
            boolean now = wet[k] ? pressure[k] > 0 : inflow(k) > 0;
            changed |= now != wet[k];
            wet[k] = now;
        }
        return changed;
    }

    /** What flows into the control volume of a dry node beyond what the narrowing gap lets pass. */
    private double inflow(int k) {
        double sum = source[k];
        if (k >= cells) {
            sum += around[k - cells] * pressure[k - cells];
        }
        if (k + cells < wet.length) {
            sum += around[k] * pressure[k + cells];
        }
        if (k % cells > 0) {
            sum += along[k - 1] * pressure[k - 1];
        }
        if (k % cells < cells - 1) {
            sum += along[k] * pressure[k + 1];
        }
        return sum;
    }

    private FilmSolution result() {
        double radial = 0;
        double tangential = 0;
        double start = 0;
        double side = 0;
        double peak = 0;
        for (int k = 0; k < wet.length; k++) {
            int i = k / cells + 1;
            int j = k % cells;
            double before = mesh.between(i - 1);
            double after = mesh.between(i);
            radial += pressure[k] * mesh.width(j) * (Math.sin(before) - Math.sin(after));
            tangential += pressure[k] * mesh.width(j) * (Math.cos(before) - Math.cos(after));
            start += i == 1 ? around(0, j) * pressure[k] : 0;
            side += j == cells - 1 ? along[k] * pressure[k] : 0;
            peak = Math.max(peak, pressure[k]);
        }
        return new FilmSolution(
                e,
                6 * Math.PI * Math.hypot(radial, tangential),
                Math.atan2(tangential, radial),
                Math.PI * (1 + e * Math.cos(mesh.between(0)) - e * start),
                Math.PI * side,
                12 * Math.PI * peak);
    }
}
