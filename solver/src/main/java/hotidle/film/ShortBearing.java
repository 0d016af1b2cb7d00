package hotidle.film;

/**
 * The load of a journal bearing so short that its oil flows to the ends only: the measure by which the table is scaled.
 *
 * <pre>
 * Formula   1/S = (L/D)²·ε·σ(ε),  σ = π·√(π²·(1 − ε²) + 16·ε²)/(1 − ε²)²
 * Source    F. Ocvirk, Short-bearing approximation for full journal bearings, NACA TN 2808, 1952 (from memory)
 * Range     L/D below about ½ and ε not near 1; as a scale, everywhere below ε = 1
 * </pre>
 */
final class ShortBearing {

    private static final double PI2 = Math.PI * Math.PI;

    private ShortBearing() {}

    /** σ = 1/(S·ε·(L/D)²) [-]. */
    static double stiffness(double e) {
        double free = 1 - e * e;
        return Math.PI * Math.sqrt(PI2 * free + 16 * e * e) / (free * free);
    }

    /** dσ/dε over σ [-]. */
    static double relativeSlope(double e) {
        double free = 1 - e * e;
        return (16 - PI2) * e / (PI2 * free + 16 * e * e) + 4 * e / free;
    }
}
