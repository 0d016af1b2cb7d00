package hotidle.law;

/**
 * Slow flow of air through a narrow gap, and the oil that leaks through the same gap.
 *
 * <pre>
 * Formula    Qa = S·(ph² − pl²)/(2·pa·μa), free air at pa; oil: q = S·Δp/μ. S [m³] is the gap's own: π·d·c³·(1 + 1.5·ε²)/(12·L) for
 *            a thin ring of even clearance, π·d⁴/(128·L) for a capillary. With it q = Qa·(μa/μ)·Δp·2·pa/(ph² − pl²)
 * Derivation In a narrow gap of height h the flow across a unit of width is −h³/(12·μ)·∇p, O. Reynolds 1886 (from memory). Oil keeps its density, so
 *            that ∇·(h³·∇p) = 0. Air in a film takes the temperature of the walls, its density is in proportion to p, so that
 *            ∇·(h³·p·∇p) = ∇·(h³·∇(p²/2)) = 0: the same equation in p² as that of oil in p, with the same gap and the same walls. Both
 *            are linear, so that both flows are one and the same S times the difference of what stands at the ends: clearance,
 *            eccentricity, taper, ovality and scores along the gap cancel, whatever they are
 * Source     compressible: R. B. Bird, W. E. Stewart, E. N. Lightfoot, Transport Phenomena, problem 2B.9 (from memory); conductance of a
 *            capillary for air, 135·d⁴/l·p in cm, mbar and L/s: textbooks of vacuum technology
 * Viscosity  of air: 1.458e-6·T^1.5/(T + 110.4) [Pa·s], U.S. Standard Atmosphere, 1976, eq. 51 (from memory)
 * Slip       below some 10 µm air slips along the walls and S comes out too large, by 6·λ/h with the mean free path λ at the mean
 *            pressure: E. B. Arkilic, M. A. Schmidt, K. S. Breuer, J. Microelectromech. Syst. 6 (1997) 167, eq. 14 with full
 *            accommodation (from memory); λ = μa/p·√(π·R·T/2)
 * Range      laminar and slow: Re below 1000 and Mach below 0.3 at the end of the gap (ours); beyond, the gap passes less air than this
 *            says, so that S comes out too small. Walls at rest, dry, both at one temperature; the same gap as in service
 * </pre>
 */
public final class AirLeak {

    /** Gas constant of air [J/(kg·K)]. */
    static final double R = 287.05;

    /** Ratio of specific heats of air [-]. */
    static final double KAPPA = 1.4;

    /** Slip counts in gaps narrower than this [m]. */
    public static final double SLIPS = 10e-6;

    /** Up to this Reynolds number, of twice the clearance, a gap's flow is taken as laminar (ours) [-]. */
    public static final double LAMINAR = 1000;

    /** Up to this Mach number the air's own inertia is small against friction (ours) [-]. */
    public static final double SLOW = 0.3;

    private AirLeak() {}

    /** Viscosity of air [Pa·s] at a temperature [K]. */
    public static double viscosity(double temperature) {
        return 1.458e-6 * temperature * Math.sqrt(temperature) / (temperature + 110.4);
    }

    /**
     * What is the gap's own, from the air that it passes.
     *
     * @param freeAir     Qa, at ambient pressure [m³/s]
     * @param high        absolute pressure before the gap [Pa]
     * @param low         absolute pressure behind it [Pa], below {@code high}
     * @param ambient     absolute pressure at which the flow is counted [Pa]
     * @param temperature of air and walls [K]
     * @return S [m³]
     */
    public static double shape(double freeAir, double high, double low, double ambient, double temperature) {
        return 2 * freeAir * ambient * viscosity(temperature) / ((high - low) * (high + low));
    }

    /** The air that a gap passes, counted at ambient pressure [m³/s]; arguments as of {@link #shape}. */
    public static double freeAir(double shape, double high, double low, double ambient, double temperature) {
        return shape * (high - low) * (high + low) / (2 * ambient * viscosity(temperature));
    }

    /** The oil that leaks through the same gap [m³/s] under a drop [Pa] at a viscosity [Pa·s]. */
    public static double oil(double shape, double drop, double viscosity) {
        return shape * drop / viscosity;
    }

    /**
     * Radial clearance of a thin ring of a shape [m], 0 where nothing passes.
     *
     * @param shape        S [m³]
     * @param diameter     [m]
     * @param length       of the land [m]
     * @param eccentricity ε [-]
     */
    public static double clearance(double shape, double diameter, double length, double eccentricity) {
        return Math.cbrt(12 * length * shape / (Math.PI * diameter * Slot.eccentricityFactor(eccentricity)));
    }

    /** By how much slip makes S too large in a gap of a clearance [m], at the mean of two absolute pressures [Pa] [-]. */
    public static double slip(double clearance, double high, double low, double temperature) {
        double path = viscosity(temperature) / ((high + low) / 2) * Math.sqrt(Math.PI * R * temperature / 2);
        return 6 * path / clearance;
    }

    /** Mach number at the low end of a ring [-]. */
    public static double mach(
            double freeAir, double ambient, double low, double diameter, double clearance, double temperature) {
        double speed = freeAir * ambient / low / (Math.PI * diameter * clearance);
        return speed / Math.sqrt(KAPPA * R * temperature);
    }

    /** Reynolds number of a ring, of twice its clearance [-]. */
    public static double reynolds(double freeAir, double ambient, double diameter, double temperature) {
        double mass = freeAir * ambient / (R * temperature);
        return 2 * mass / (Math.PI * diameter * viscosity(temperature));
    }
}
