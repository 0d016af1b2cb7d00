package hotidle.oil;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A liquid of the circuit. Past 300 lines, since the curve of its viscosity stands with it.
 *
 * <pre>
 * Density     ρ(t) = ρ15 − slope·(t − 15 °C); a data sheet gives ρ15, common practice for mineral oil is 0.65 kg/(m³·K)
 * Viscosity   {@link Walther}: a line through two measured points, a curve through up to four
 * Pressure    Barus (1893) (from memory): μ(p) = μ(0)·exp(α·p)
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
 * @param thermal         specific heat and thermal conductivity
 * @param thinning        what it loses of its viscosity while it is sheared; counted where it is sheared most, in the hub's film
 */
public record Oil(
        String name,
        Walther line,
        double density15,
        double densitySlope,
        double barus,
        double airFraction,
        double releasePressure,
        ThermalData thermal,
        ShearThinning thinning) {

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
        for (Walther.HermiteKnot knot : line.knots) {
            require(knot.slope > -60, "Walther slope", -knot.slope, "0 to 60");
        }
        require(barus >= 0 && barus < 1e-6, "Barus coefficient", barus, "0 to 1e-6 1/Pa");
        require(airFraction >= 0 && airFraction <= 0.3, "entrained air", airFraction, "0 to 0.3");
        require(
                releasePressure >= 0 && releasePressure < 101_325,
                "air release pressure",
                releasePressure,
                "0 to 1 bar");
    }

    /** An oil whose specific heat and conductivity follow from its density, and that keeps its viscosity at every rate of shear. */
    public Oil(
            String name,
            Walther line,
            double density15,
            double densitySlope,
            double barus,
            double airFraction,
            double releasePressure) {
        this(
                name,
                line,
                density15,
                densitySlope,
                barus,
                airFraction,
                releasePressure,
                ThermalData.BY_DENSITY,
                ShearThinning.NONE);
    }

    /** The same oil with another share of entrained air [-]. */
    public Oil withAir(double share) {
        return new Oil(name, line, density15, densitySlope, barus, share, releasePressure, thermal, thinning);
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
     * Kinematic viscosity over temperature, in the coordinates in which that of a mineral oil is nearly straight.
     *
     * <pre>
     * Coordinates  x = log10(T), y = log10(log10(ν + 0.7)), ν in mm²/s, T in K; Walther, ASTM D341-20 eq. 1 (from memory). The constant
     *              0.7 is the standard's for ν above 2 mm²/s; at 1 mm²/s the standard's own correction is 2 %
     * Two points   the straight line, good to about 2 % between them (rows of the validation sheet)
     * Three, four  straight through the two hottest, so that a cold point says nothing of hot oil; bent through the colder ones by
     *              cubics of continuous slope. Slopes at points between: the weighted harmonic mean of both sides, F. N. Fritsch,
     *              J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300 (from memory); at the coldest point that of a parabola, none steeper than three
     *              times its secant and that one no flatter than half of it, so that ν falls with temperature everywhere, F. N. Fritsch, R. E. Carlson, SIAM J. Numer. Anal. 17 (1980) 238
     *              (both from memory)
     * Outside      goes on straight. Cold oil thickens by wax and polymer far beyond a line through 40 and 100 °C: give a cold point
     * </pre>
     *
     * @param knots   measured points, cold to hot; one where the viscosity does not change with temperature
     * @param coldest lowest of the temperatures at which it was measured [K]
     * @param hottest highest of them [K]
     */
    public record Walther(List<HermiteKnot> knots, double coldest, double hottest) {

        /** Most points that a curve goes through. */
        public static final int MOST_POINTS = 4;

        /** Steepest slope at a point, over that of a secant beside it, with which a cubic still falls all along. */
        private static final double STEEPEST = 3;

        /** A point of the curve in its coordinates, and dy/dx there. */
        public record HermiteKnot(double x, double y, double slope) {}

        public Walther {
            knots = List.copyOf(knots);
        }

        /**
         * The curve through two to four points, in any order.
         *
         * @throws IllegalArgumentException where two temperatures are equal, or the oil would thicken with heat
         */
        public static Walther through(ViscosityPoint... points) {
            if (points.length < 2 || points.length > MOST_POINTS) {
                throw new IllegalArgumentException("a viscosity curve has two to " + MOST_POINTS + " points");
            }
            ViscosityPoint[] sorted = points.clone();
            Arrays.sort(sorted, Comparator.comparingDouble(ViscosityPoint::temperature));
            int n = sorted.length;
            double[] x = new double[n];
            double[] y = new double[n];
            for (int i = 0; i < n; i++) {
                x[i] = Math.log10(sorted[i].temperature());
                y[i] = doubleLog(sorted[i].kinematicViscosity());
                if (i > 0 && !(x[i] > x[i - 1] && y[i] <= y[i - 1])) {
                    throw new IllegalArgumentException(
                            "viscosity points need different temperatures and an oil that thins with heat");
                }
            }
            double[] slopes = slopes(x, y);
            List<HermiteKnot> knots = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                knots.add(new HermiteKnot(x[i], y[i], slopes[i]));
            }
            return new Walther(knots, sorted[0].temperature(), sorted[n - 1].temperature());
        }

        private static double[] slopes(double[] x, double[] y) {
            int last = x.length - 1;
            double[] secant = new double[last];
            for (int i = 0; i < last; i++) {
                secant[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
            }
            double[] slope = new double[last + 1];
            slope[last] = secant[last - 1];
            slope[last - 1] = last == 1 ? secant[0] : Math.max(secant[last - 1], STEEPEST * secant[last - 2]);
            for (int i = last - 2; i > 0; i--) {
                double before = x[i] - x[i - 1];
                double after = x[i + 1] - x[i];
                double near = 2 * after + before;
                double far = after + 2 * before;
                double product = secant[i - 1] * secant[i];
                slope[i] = product == 0 ? 0 : (near + far) / (near / secant[i - 1] + far / secant[i]);
            }
            if (last > 1) {
                slope[0] = Math.min(secant[0] / 2, Math.max(2 * secant[0] - slope[1], STEEPEST * secant[0]));
            }
            return slope;
        }

        /** A liquid whose kinematic viscosity [m²/s] is the same at every temperature. */
        public static Walther constant(double kinematicViscosity) {
            return new Walther(
                    List.of(new HermiteKnot(0, doubleLog(kinematicViscosity), 0)), 0, Double.POSITIVE_INFINITY);
        }

        /** Whether the viscosity is the same at every temperature. */
        public boolean isConstant() {
            return knots.size() == 1;
        }

        private static double doubleLog(double kinematicViscosity) {
            double inner = kinematicViscosity / SQUARE_MILLIMETRE + SHIFT;
            if (!(inner > 1)) {
                throw new IllegalArgumentException("the viscosity line needs more than 0.3 mm²/s");
            }
            return Math.log10(Math.log10(inner));
        }

        /** ν + 0.7 [mm²/s] at a temperature [K]. */
        double shifted(double temperature) {
            return Math.pow(10, Math.pow(10, at(Math.log10(temperature), false)));
        }

        /** dy/dx at a temperature [K], zero or less. */
        double slope(double temperature) {
            return at(Math.log10(temperature), true);
        }

        private double at(double x, boolean slope) {
            HermiteKnot first = knots.get(0);
            HermiteKnot last = knots.get(knots.size() - 1);
            if (x <= first.x || x >= last.x || knots.size() == 1) {
                HermiteKnot end = x <= first.x ? first : last;
                return slope ? end.slope : end.y + end.slope * (x - end.x);
            }
            int i = 1;
            while (x > knots.get(i).x) {
                i++;
            }
            return slope ? cubicSlope(knots.get(i - 1), knots.get(i), x) : cubic(knots.get(i - 1), knots.get(i), x);
        }

        /** Hermite's cubic between two points: the chord, and what both slopes bend it. */
        private static double cubic(HermiteKnot from, HermiteKnot to, double x) {
            double h = to.x - from.x;
            double t = (x - from.x) / h;
            double secant = (to.y - from.y) / h;
            double bend = (1 - t) * (from.slope - secant) - t * (to.slope - secant);
            return from.y + h * t * (secant + (1 - t) * bend);
        }

        private static double cubicSlope(HermiteKnot from, HermiteKnot to, double x) {
            double h = to.x - from.x;
            double t = (x - from.x) / h;
            double secant = (to.y - from.y) / h;
            double one = from.slope - secant;
            double other = to.slope - secant;
            return secant + (1 - t) * (1 - 3 * t) * one - t * (2 - 3 * t) * other;
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

    /** dν/dT [m²/(s·K)] at a temperature [K]: (ν + 0.7)·ln(ν + 0.7)/T·(dy/dx). */
    public double kinematicViscositySlope(double temperature) {
        double shifted = shifted(temperature);
        return shifted - SHIFT <= THINNEST_COUNTED
                ? 0
                : shifted * Math.log(shifted) * line.slope(temperature) / temperature * SQUARE_MILLIMETRE;
    }

    private double shifted(double temperature) {
        return line.shifted(temperature);
    }

    /** Whether a temperature [K] lies outside those at which the viscosity was measured. */
    public boolean extrapolatedAt(double temperature) {
        return temperature < line.coldest || temperature > line.hottest;
    }

    /** Whether the oil is thinner at a temperature [K] than the Walther line of this form is meant for. */
    public boolean tooThinAt(double temperature) {
        return !line.isConstant() && kinematicViscosity(temperature) < THINNEST;
    }

    /** Viscosity index by ASTM D2270; empty below the standard's 2 mm²/s at 100 °C, or where the viscosity does not change. */
    public OptionalDouble viscosityIndex() {
        double at100 = kinematicViscosity(ZERO_CELSIUS + 100);
        return line.isConstant() || at100 < THINNEST
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
