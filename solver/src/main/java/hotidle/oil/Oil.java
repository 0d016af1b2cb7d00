package hotidle.oil;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A liquid of the circuit.
 *
 * <pre>
 * Density     ρ(t) = ρ15 − slope·(t − 15 °C); a data sheet gives ρ15, common practice for mineral oil is 0.65 kg/(m³·K)
 * Viscosity   Walther, ASTM D341-20 eq. 1 (from memory): log10(log10(ν + 0.7)) = A − B·log10(T), ν in mm²/s, T in K;
 *             A and B from two measured points. The constant 0.7 is the standard's for ν above 2 mm²/s; at 1 mm²/s the standard's
 *             own correction is 2 %. Between the two points the line is good to about 2 % (rows of the validation sheet); outside
 *             it is extrapolated, and wax may thicken a cold oil far beyond it.
 * Pressure    Barus (1893): μ(p) = μ(0)·exp(α·p)
 * Air         a volume fraction at ambient pressure, compressed isothermally; its mass and its own viscosity are neglected
 * </pre>
 *
 * @param name            the oil's own name
 * @param line            viscosity at ambient pressure
 * @param density15       density at 15 °C [kg/m³]
 * @param densitySlope    loss of density with temperature [kg/(m³·K)]
 * @param barus           rise of viscosity with pressure α [1/Pa]
 * @param airFraction     entrained air at ambient pressure, volume of air over volume of mixture [-], 0 to 0.3
 * @param releasePressure absolute pressure at which dissolved air comes out and a pump no longer fills [Pa]
 */
public record Oil(
        String name,
        Walther line,
        double density15,
        double densitySlope,
        double barus,
        double airFraction,
        double releasePressure) {

    /** Zero of the Celsius scale [K]. */
    public static final double ZERO_CELSIUS = 273.15;

    private static final double SHIFT = 0.7;

    /** Thinnest oil for which the constant 0.7 stands in ASTM D341 [m²/s]. */
    public static final double THINNEST = 2e-6;

    /** Thinner than any oil; keeps the viscosity above zero [mm²/s]. */
    private static final double THINNEST_COUNTED = 0.01;

    private static final double SQUARE_MILLIMETRE = 1e-6;

    public Oil {
        require(density15 > 100 && density15 < 20_000, "density at 15 °C", density15, "100 to 20 000 kg/m³");
        require(densitySlope >= 0 && densitySlope < 5, "density slope", densitySlope, "0 to 5 kg/(m³·K)");
        require(line.b >= 0 && line.b < 20, "Walther slope", line.b, "0 to 20");
        require(barus >= 0 && barus < 1e-6, "Barus coefficient", barus, "0 to 1e-6 1/Pa");
        require(airFraction >= 0 && airFraction <= 0.3, "entrained air", airFraction, "0 to 0.3");
        require(
                releasePressure >= 0 && releasePressure < 101_325,
                "air release pressure",
                releasePressure,
                "0 to 1 bar");
    }

    private static void require(boolean good, String what, double value, String allowed) {
        if (!good) {
            throw new IllegalArgumentException(what + " is " + value + ", allowed is " + allowed);
        }
    }

    /**
     * A measured point of the viscosity line.
     *
     * @param temperature        [K]
     * @param kinematicViscosity [m²/s]
     */
    public record ViscosityPoint(double temperature, double kinematicViscosity) {}

    /**
     * A Walther line.
     *
     * @param a       A [-]
     * @param b       B [-]; 0 where the viscosity does not change with temperature
     * @param coldest lower of the temperatures at which it was measured [K]
     * @param hottest higher of them [K]
     */
    public record Walther(double a, double b, double coldest, double hottest) {

        /**
         * The line through two points.
         *
         * @throws IllegalArgumentException where the temperatures are equal, or the oil would thicken with heat
         */
        public static Walther through(ViscosityPoint one, ViscosityPoint other) {
            double slope = (doubleLog(one.kinematicViscosity()) - doubleLog(other.kinematicViscosity()))
                    / (Math.log10(other.temperature()) - Math.log10(one.temperature()));
            if (!(slope >= 0)) {
                throw new IllegalArgumentException(
                        "two viscosity points need different temperatures and an oil that thins with heat");
            }
            return new Walther(
                    doubleLog(one.kinematicViscosity()) + slope * Math.log10(one.temperature()),
                    slope,
                    Math.min(one.temperature(), other.temperature()),
                    Math.max(one.temperature(), other.temperature()));
        }

        /** A liquid whose kinematic viscosity [m²/s] is the same at every temperature. */
        public static Walther constant(double kinematicViscosity) {
            return new Walther(doubleLog(kinematicViscosity), 0, 0, Double.POSITIVE_INFINITY);
        }

        private static double doubleLog(double kinematicViscosity) {
            double inner = kinematicViscosity / SQUARE_MILLIMETRE + SHIFT;
            if (!(inner > 1)) {
                throw new IllegalArgumentException("the viscosity line needs more than 0.3 mm²/s");
            }
            return Math.log10(Math.log10(inner));
        }
    }

    /**
     * Any liquid by a fixed density and viscosity, without air: the way in which textbook examples are worked.
     *
     * @param density   [kg/m³]
     * @param viscosity dynamic viscosity [Pa·s]; the Walther line is bypassed, so any value above zero will do
     */
    public static OilAt fixed(double density, double viscosity) {
        return new OilAt(ZERO_CELSIUS + 15, density, viscosity, 0, 0, OilAt.STANDARD_ATMOSPHERE, 0, Optional.empty());
    }

    /**
     * Kinematic viscosity at ambient pressure [m²/s].
     *
     * @param temperature [K]
     */
    public double kinematicViscosity(double temperature) {
        return Math.max(shifted(temperature) - SHIFT, THINNEST_COUNTED) * SQUARE_MILLIMETRE;
    }

    /** dν/dT [m²/(s·K)] at a temperature [K]: (ν + 0.7)·ln(ν + 0.7)·(−B/T). */
    public double kinematicViscositySlope(double temperature) {
        double shifted = shifted(temperature);
        return shifted - SHIFT <= THINNEST_COUNTED
                ? 0
                : -shifted * Math.log(shifted) * line.b / temperature * SQUARE_MILLIMETRE;
    }

    private double shifted(double temperature) {
        return Math.pow(10, Math.pow(10, line.a - line.b * Math.log10(temperature)));
    }

    /** Whether a temperature [K] lies outside those at which the viscosity was measured. */
    public boolean extrapolatedAt(double temperature) {
        return temperature < line.coldest || temperature > line.hottest;
    }

    /** Whether the oil is thinner at a temperature [K] than the Walther line of this form is meant for. */
    public boolean tooThinAt(double temperature) {
        return line.b > 0 && kinematicViscosity(temperature) < THINNEST;
    }

    /** Viscosity index by ASTM D2270; empty below the standard's 2 mm²/s at 100 °C, or where the viscosity does not change. */
    public OptionalDouble viscosityIndex() {
        double at100 = kinematicViscosity(ZERO_CELSIUS + 100);
        return line.b == 0 || at100 < THINNEST
                ? OptionalDouble.empty()
                : OptionalDouble.of(ViscosityIndex.of(kinematicViscosity(ZERO_CELSIUS + 40), at100));
    }

    /** Density without air [kg/m³] at a temperature [K]. */
    public double density(double temperature) {
        return density15 - densitySlope * (temperature - ZERO_CELSIUS - 15);
    }

    /**
     * The oil at one temperature, ready for the inner loop.
     *
     * @param temperature [K]
     * @param ambient     absolute ambient pressure [Pa]
     */
    public OilAt at(double temperature, double ambient) {
        return at(temperature, ambient, Optional.of(this));
    }

    /** The same, given itself wrapped, so that the inner loop need not. */
    OilAt at(double temperature, double ambient, Optional<Oil> self) {
        double density = density(temperature);
        return new OilAt(
                temperature,
                density,
                kinematicViscosity(temperature) * density,
                barus,
                airFraction,
                ambient,
                releasePressure - ambient,
                self);
    }
}
