package hotidle.part;

/**
 * A fit of two pieces that grow with temperature: bore and valve, pocket depth and gear width.
 *
 * <pre>
 * Gap       outer·(1 + αo·(T − Tm)) − inner·(1 + αi·(T − Tm))
 * Source    linear thermal expansion; die-cast aluminium of 21.8e-6, steel of 12e-6 1/K give 0.010 µm per mm and K
 * </pre>
 *
 * @param outer          bore, or depth of the pocket [m]
 * @param inner          valve, or width of the gear [m]
 * @param outerExpansion linear expansion of the outer piece [1/K]
 * @param innerExpansion linear expansion of the inner piece [1/K]
 * @param measuredAt     temperature at which both were measured [K]
 */
public record Fit(double outer, double inner, double outerExpansion, double innerExpansion, double measuredAt) {

    /** Usual temperature of measurement: 20 °C, ISO 1 [K]. */
    public static final double REFERENCE_TEMPERATURE = 293.15;

    public Fit {
        Check.positive("outer size of a fit", outer);
        Check.positive("inner size of a fit", inner);
        Check.within("expansion of the outer piece", outerExpansion, 0, 1e-4);
        Check.within("expansion of the inner piece", innerExpansion, 0, 1e-4);
        Check.positive("measuring temperature", measuredAt);
    }

    /** A fit of two pieces of one material, which keeps its gap at every temperature. */
    public static Fit same(double outer, double inner) {
        return new Fit(outer, inner, 0, 0, REFERENCE_TEMPERATURE);
    }

    /**
     * Difference of both sizes at a temperature [m], diametral for a bore; negative where the pieces would bind.
     *
     * @param temperature [K]
     */
    public double gap(double temperature) {
        double warmer = temperature - measuredAt;
        return outer * (1 + outerExpansion * warmer) - inner * (1 + innerExpansion * warmer);
    }
}
