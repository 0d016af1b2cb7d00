package hotidle.oil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** An oil's viscosity by two, three and four points: met at each, falling everywhere, without a kink. */
class ViscosityCurvePropertyTest {

    private static final double CELSIUS = Oil.ZERO_CELSIUS;

    private static Oil.ViscosityPoint point(double celsius, double mm2) {
        return new Oil.ViscosityPoint(celsius + CELSIUS, mm2 * 1e-6);
    }

    private static Oil oil(Oil.ViscosityPoint... points) {
        return new Oil("drawn", Oil.Walther.through(points), 855, 0.65, 0, 0, 0);
    }

    private static double at(Oil oil, double celsius) {
        return oil.kinematicViscosity(celsius + CELSIUS) * 1e6;
    }

    /** Published magnitude of a transmission fluid: 34 and 7.4 mm²/s at 40 and 100 °C, some 15 000 at −40 °C by the rotating spindle. */
    @Test
    void aColdPointLiftsColdOilAndLeavesHotOilAlone() {
        Oil line = oil(point(40, 34), point(100, 7.4));
        Oil curve = oil(point(-40, 15_000), point(40, 34), point(100, 7.4));
        assertTrue(at(line, -40) < 8_000, at(line, -40) + " mm²/s by the line");
        assertEquals(15_000, at(curve, -40), 1e-6);
        for (double celsius : new double[] {40, 70, 100, 110, 150}) {
            assertEquals(at(line, celsius), at(curve, celsius), 1e-12 * at(line, celsius), celsius + " °C");
        }
        assertTrue(at(curve, 0) > at(line, 0) && at(curve, 0) < 1.4 * at(line, 0), at(line, 0) + " " + at(curve, 0));
    }

    @Property(tries = 500, seed = "1")
    void itMeetsItsPointsAndFallsWithoutAKink(@ForAll long seed) {
        Random random = new Random(seed);
        int n = 2 + random.nextInt(3);
        Oil.ViscosityPoint[] points = new Oil.ViscosityPoint[n];
        double celsius = -50 + 20 * random.nextDouble();
        double viscosity = Math.pow(10, 2.5 + 2.5 * random.nextDouble());
        for (int i = 0; i < n; i++) {
            points[i] = point(celsius, viscosity);
            celsius += 15 + 50 * random.nextDouble();
            viscosity = 1.5 + (viscosity - 1.5) * (0.02 + 0.9 * random.nextDouble());
        }
        Oil oil = oil(points);
        for (Oil.ViscosityPoint point : points) {
            double t = point.temperature();
            assertEquals(point.kinematicViscosity(), oil.kinematicViscosity(t), 1e-12 * point.kinematicViscosity());
            double hair = 1e-9 * t;
            double left = oil.kinematicViscositySlope(t - hair);
            assertEquals(left, oil.kinematicViscositySlope(t + hair), 1e-5 * Math.abs(left) + 1e-12, "slope at " + t);
        }
        double before = Double.POSITIVE_INFINITY;
        for (double t = points[0].temperature() - 20; t < points[n - 1].temperature() + 60; t += 0.37) {
            double now = oil.kinematicViscosity(t);
            assertTrue(now <= before * (1 + 1e-14), "rises at " + t);
            before = now;
            double step = 1e-4;
            double difference = (oil.kinematicViscosity(t + step) - oil.kinematicViscosity(t - step)) / (2 * step);
            double slope = oil.kinematicViscositySlope(t);
            assertEquals(difference, slope, 1e-5 * Math.abs(slope) + 1e-9 * now, "slope at " + t);
        }
    }

    @Test
    void whatADataSheetSaysOfHeatIsTaken() {
        ThermalData given = new ThermalData(OptionalDouble.of(2100), OptionalDouble.of(0.14));
        Oil line = oil(point(40, 34), point(100, 7.4));
        OilAt warm =
                new Oil("sheet", line.line(), 855, 0.65, 0, 0, 0, given, ShearThinning.NONE).at(40 + CELSIUS, 101_325);
        assertEquals(2100, warm.specificHeat(), 1e-9);
        assertEquals(0.14, warm.conductivity(), 1e-12);
        assertEquals(
                2100 * (1685 + 3.4 * 100) / (1685 + 3.4 * 40), warm.warmer(60).specificHeat(), 1e-9);
        assertTrue(warm.warmer(60).conductivity() < 0.14);
    }
}
