package hotidle.film;

/**
 * What a solved film carries and passes on. What vanishes with the eccentricity is divided by it, so that ε = 0 has its limit.
 *
 * <pre>
 * S         Sommerfeld number (R/c)²·μ·N/P, N [rev/s], P = W/(L·D), c radial
 * Drag      f·(R/c)/S = 2π²/√(1 − ε²) + ½·ε·sinφ/S: shear μ·U/h over the full circle plus ½·h·dp/dx, integrated by parts with
 *           p = 0 at both ends of the film. This is the friction on the turning journal, the one that Raimondi and Boyd print:
 *           at L/D = ¼, ε = 0.9 they have 3.50; the journal's is 3.50, that of the standing bore 3.17.
 * </pre>
 *
 * @param eccentricity      ε [-]
 * @param stiffness         1/(S·ε) [-]
 * @param attitude          angle φ between the load and the line of centres [rad]
 * @param flow              Q/(R·c·N·L) that enters the film at the widest gap [-]
 * @param sideFlowByEccentricity Qs/(R·c·N·L·ε) that leaves at both ends [-]
 * @param peakByEccentricity     largest pressure, pmax/(μ·N·(R/c)²·ε) [-]
 */
record FilmSolution(
        double eccentricity,
        double stiffness,
        double attitude,
        double flow,
        double sideFlowByEccentricity,
        double peakByEccentricity) {

    /** Two solutions, the second on a mesh twice as fine, freed of their error of second order (L. F. Richardson, 1911, from memory). */
    static FilmSolution extrapolated(FilmSolution coarse, FilmSolution fine) {
        return new FilmSolution(
                fine.eccentricity,
                extrapolated(coarse.stiffness, fine.stiffness),
                extrapolated(coarse.attitude, fine.attitude),
                extrapolated(coarse.flow, fine.flow),
                extrapolated(coarse.sideFlowByEccentricity, fine.sideFlowByEccentricity),
                extrapolated(coarse.peakByEccentricity, fine.peakByEccentricity));
    }

    private static double extrapolated(double coarse, double fine) {
        return fine + (fine - coarse) / 3;
    }

    /** f·(R/c)/S [-] of a film with this eccentricity, load 1/S and attitude [rad]. */
    static double drag(double eccentricity, double load, double attitude) {
        double shear = 2 * Math.PI * Math.PI / Math.sqrt(1 - eccentricity * eccentricity);
        return shear + 0.5 * eccentricity * Math.sin(attitude) * load;
    }

    /** 1/S [-]. */
    double load() {
        return stiffness * eccentricity;
    }

    /** f·(R/c)/S [-]. */
    double drag() {
        return drag(eccentricity, load(), attitude);
    }

    /** Qs/(R·c·N·L) [-]. */
    double sideFlow() {
        return sideFlowByEccentricity * eccentricity;
    }

    /** Mean pressure W/(L·D) over the largest [-]. */
    double loadOverPeak() {
        return stiffness / peakByEccentricity;
    }
}
