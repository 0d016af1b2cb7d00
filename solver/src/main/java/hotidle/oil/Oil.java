package hotidle.oil;

/**
 * A liquid of the circuit.
 *
 * <pre>
 * Density     ρ(t) = ρ15 − slope·(t − 15 °C); a data sheet gives ρ15, common practice for mineral oil is 0.65 kg/(m³·K)
 * Viscosity   Walther, ASTM D341-20 eq. 1 (from memory): log10(log10(ν + 0.7)) = A − B·log10(T), ν in mm²/s, T in K;
 *             A and B from two measured points. The constant 0.7 is the standard's for ν above 2 mm²/s.
 * Pressure    Barus (1893): μ(p) = μ(0)·exp(α·p)
 * Air         a volume fraction at ambient pressure, compressed isothermally; its mass and its own viscosity are neglected
 * </pre>
 *
 * @param name            the oil's own name
 * @param waltherA        A of the Walther line [-]; with {@code waltherB} = 0 the viscosity does not change with temperature
 * @param waltherB        B of the Walther line [-], 0 or more
 * @param density15       density at 15 °C [kg/m³]
 * @param densitySlope    loss of density with temperature [kg/(m³·K)]
 * @param barus           rise of viscosity with pressure α [1/Pa]
 * @param airFraction     entrained air at ambient pressure, volume of air over volume of mixture [-], 0 to 0.3
 * @param releasePressure absolute pressure at which dissolved air comes out and a pump no longer fills [Pa]
 */
public record Oil(
        String name,
        double waltherA,
        double waltherB,
        double density15,
        double densitySlope,
        double barus,
        double airFraction,
        double releasePressure) {

    /** Zero of the Celsius scale [K]. */
    public static final double ZERO_CELSIUS = 273.15;

    private static final double SHIFT = 0.7;
    private static final double SQUARE_MILLIMETRE = 1e-6;

    public Oil {
        require(density15 > 100 && density15 < 20_000, "density at 15 °C", density15, "100 to 20 000 kg/m³");
        require(densitySlope >= 0 && densitySlope < 5, "density slope", densitySlope, "0 to 5 kg/(m³·K)");
        require(waltherB >= 0 && waltherB < 20, "Walther slope", waltherB, "0 to 20");
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
    public record Point(double temperature, double kinematicViscosity) {}

    /** The Walther line's A and B. */
    public record Walther(double a, double b) {

        /**
         * The line through two points.
         *
         * @throws IllegalArgumentException where the temperatures are equal, or the oil would thicken with heat
         */
        public static Walther through(Point one, Point other) {
            double slope = (doubleLog(one.kinematicViscosity()) - doubleLog(other.kinematicViscosity()))
                    / (Math.log10(other.temperature()) - Math.log10(one.temperature()));
            if (!(slope >= 0)) {
                throw new IllegalArgumentException(
                        "two viscosity points need different temperatures and an oil that thins with heat");
            }
            return new Walther(doubleLog(one.kinematicViscosity()) + slope * Math.log10(one.temperature()), slope);
        }

        /** A liquid whose kinematic viscosity [m²/s] is the same at every temperature. */
        public static Walther constant(double kinematicViscosity) {
            return new Walther(doubleLog(kinematicViscosity), 0);
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
        return new OilAt(ZERO_CELSIUS + 15, density, viscosity, 0, 0, OilAt.STANDARD_ATMOSPHERE, 0);
    }

    /**
     * Kinematic viscosity at ambient pressure [m²/s].
     *
     * @param temperature [K]
     */
    public double kinematicViscosity(double temperature) {
        double shifted = Math.pow(10, Math.pow(10, waltherA - waltherB * Math.log10(temperature)));
        return Math.max(shifted - SHIFT, 0.01) * SQUARE_MILLIMETRE;
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
        double density = density(temperature);
        return new OilAt(
                temperature,
                density,
                kinematicViscosity(temperature) * density,
                barus,
                airFraction,
                ambient,
                releasePressure - ambient);
    }
}
