package hotidle.oil;

import java.util.Optional;

/**
 * Oil at one temperature. Pressures are gauge [Pa].
 *
 * <pre>
 * Mixture   ρ(p) = ρ·(1 − φ) / (1 − φ + φ·pa/(p + pa)): Boyle's law for the air, φ at ambient pressure pa
 * Numerics  p + pa is kept above zero as ½(P + √(P² + 4·FLOOR²)): 0.01 % at 0.1 bar absolute, nothing to speak of above
 * </pre>
 *
 * @param temperature [K]
 * @param liquidDensity density of the oil without air [kg/m³]
 * @param viscosity   dynamic viscosity at ambient pressure [Pa·s]
 * @param barus       [1/Pa]
 * @param airFraction [-]
 * @param ambient     absolute ambient pressure [Pa]
 * @param release     gauge pressure at which air is released [Pa]
 * @param liquid      the oil at every temperature; empty for one that keeps its density and viscosity
 */
public record OilAt(
        double temperature,
        double liquidDensity,
        double viscosity,
        double barus,
        double airFraction,
        double ambient,
        double release,
        Optional<Oil> liquid) {

    /** Standard atmosphere, ISO 2533:1975 [Pa]. */
    public static final double STANDARD_ATMOSPHERE = 101_325;

    private static final double FLOOR = 100;

    /** Density of the mixture [kg/m³] at a gauge pressure [Pa]. */
    public double density(double p) {
        double liquid = 1 - airFraction;
        return liquidDensity * liquid / (liquid + airFraction * ambient / absolute(p));
    }

    /** dρ/dp [kg/(m³·Pa)]. */
    public double densitySlope(double p) {
        return densitySlope(p, density(p));
    }

    /** The same where the density there is known [kg/m³]. */
    public double densitySlope(double p, double there) {
        if (airFraction == 0) {
            return 0;
        }
        double sum = p + ambient;
        double root = Math.sqrt(sum * sum + 4 * FLOOR * FLOOR);
        double absolute = (sum + root) / 2;
        // the air's share of the volume falls by this [1/Pa]: d(absolute)/dp is absolute over root
        double airFalls = airFraction * ambient / (absolute * root);
        return there * there / (liquidDensity * (1 - airFraction)) * airFalls;
    }

    /** Dynamic viscosity [Pa·s] at a gauge pressure [Pa]. */
    public double viscosity(double p) {
        return barus == 0 ? viscosity : viscosity * Math.exp(Math.min(barus * p, 50));
    }

    /** dμ/dp [s]. */
    public double viscositySlope(double p) {
        return viscositySlope(p, viscosity(p));
    }

    /** The same where the viscosity there is known [Pa·s]. */
    public double viscositySlope(double p, double there) {
        return barus == 0 || barus * p > 50 ? 0 : barus * there;
    }

    /** Specific heat of the liquid [J/(kg·K)]; {@link ThermalData}. */
    public double specificHeat() {
        return thermal().specificHeat(temperature, liquidDensity);
    }

    /** Thermal conductivity of the liquid [W/(m·K)]; {@link ThermalData}. */
    public double conductivity() {
        return thermal().conductivity(temperature, liquidDensity);
    }

    private ThermalData thermal() {
        return liquid.map(Oil::thermal).orElse(ThermalData.BY_DENSITY);
    }

    /** The same oil warmer by a rise [K]. */
    public OilAt warmer(double rise) {
        return liquid.isPresent() ? liquid.get().at(temperature + rise, ambient, liquid) : this;
    }

    /** dμ/dT at ambient pressure [Pa·s/K]. */
    public double viscosityByTemperature() {
        if (liquid.isEmpty()) {
            return 0;
        }
        Oil oil = liquid.get();
        return oil.kinematicViscositySlope(temperature) * liquidDensity
                - oil.kinematicViscosity(temperature) * oil.densitySlope();
    }

    /** What the oil loses of its viscosity while it is sheared. */
    public ShearThinning thinning() {
        return liquid.map(Oil::thinning).orElse(ShearThinning.NONE);
    }

    private double absolute(double p) {
        double sum = p + ambient;
        return (sum + Math.sqrt(sum * sum + 4 * FLOOR * FLOOR)) / 2;
    }
}
