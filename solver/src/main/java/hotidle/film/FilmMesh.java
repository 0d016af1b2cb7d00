package hotidle.film;

/**
 * The mesh on which a film is solved: nodes around the bearing, cells along half of its length.
 *
 * <pre>
 * Around    nodes equally spaced in ½·(θ + ψ), with ψ of 1 + ε·cosθ = (1 − ε²)/(1 − ε·cosψ); A. Sommerfeld, Z. Math. Phys. 50
 *           (1904) 97 (from memory). ψ gathers nodes at the least gap as its width asks, θ keeps enough of them elsewhere.
 * Along     cells equally spaced in s, ζ = ½·(s + sin(½·π·s)): half as long at the end, where the pressure falls, as elsewhere
 * Numerics  The nodes stop at 270°: the film's end lies farthest for the infinitely long bearing with ε → 0, at tanθ = θ, 257.5°.
 * </pre>
 */
final class FilmMesh {

    private static final double LAST = 1.5 * Math.PI;

    private final double[] theta;
    private final double[] face;

    /**
     * A mesh for one film.
     *
     * @param e     eccentricity ε [-]
     * @param rows  steps between the nodes around the bearing
     * @param cells cells from the middle to the end
     */
    FilmMesh(double e, int rows, int cells) {
        theta = new double[rows + 1];
        for (int i = 1; i <= rows; i++) {
            theta[i] = angle(stretched(LAST, e) * i / rows, e);
        }
        face = new double[cells + 1];
        for (int j = 1; j <= cells; j++) {
            double s = (double) j / cells;
            face[j] = 0.5 * (s + Math.sin(0.5 * Math.PI * s));
        }
    }

    private static double stretched(double theta, double e) {
        double half = theta / 2;
        double psi = 2 * Math.atan2(Math.sqrt(1 - e) * Math.sin(half), Math.sqrt(1 + e) * Math.cos(half));
        return 0.5 * (theta + psi);
    }

    /** The angle whose stretched value is given, by halving: 60 times leaves less than the last digit. */
    private static double angle(double value, double e) {
        double low = 0;
        double high = LAST;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            if (stretched(middle, e) < value) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    int rows() {
        return theta.length - 1;
    }

    int cells() {
        return face.length - 1;
    }

    /** Angle of node i from the widest gap [rad]; 0 and {@link #rows()} are the ends, where the pressure is zero. */
    double node(int i) {
        return theta[i];
    }

    /** Angle midway between nodes i and i + 1 [rad]. */
    double between(int i) {
        return 0.5 * (theta[i] + theta[i + 1]);
    }

    /** Distance of cell j's middle from the bearing's middle, as a share of the half-length [-]. */
    double centre(int j) {
        return 0.5 * (face[j] + face[j + 1]);
    }

    /** Length of cell j as a share of the half-length [-]. */
    double width(int j) {
        return face[j + 1] - face[j];
    }
}
