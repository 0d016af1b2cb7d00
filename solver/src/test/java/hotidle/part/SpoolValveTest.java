package hotidle.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.law.Slot;
import hotidle.oil.OilAt;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A regulator with a feed that opens and a drain that shuts: what it reports is what the solver balances. */
class SpoolValveTest {

    private static final Fit WARM = new Fit(16.03e-3, 16e-3, 24e-6, 12e-6, 293.15);
    private static final OilAt OIL = new OilAt(373.15, 810, 7e-3, 2e-8, 0.05, 101_325, -3e4, Optional.empty());

    private static final SpoolValve VALVE = new SpoolValve(
            List.of("line", "tank", "boost"),
            List.of(
                    new SpoolValve.Opening("bypass", 0, 1, WARM, 1, 1e-3, true, 0.3, 0.65),
                    new SpoolValve.Opening("drain", 0, 2, WARM, 0.4, 2.5e-3, false, 0.3, 0.7, 0, 0, 0.25)),
            List.of(new SpoolValve.Area(0, 2e-4, Set.of()), new SpoolValve.Area(2, -0.7e-4, Set.of("reverse"))),
            new SpoolSpring(6000, 90, 0, 5e-3, 0),
            OptionalDouble.empty());

    private static double reported(Part.Law law, Reading reading, Measure measure) {
        return law.measures(reading).stream()
                .filter(one -> one.measure().equals(measure))
                .findFirst()
                .orElseThrow()
                .value();
    }

    @ParameterizedTest
    @CsvSource({"first, 0.2e-3", "first, 1.8e-3", "reverse, 1.8e-3", "reverse, 4e-3"})
    void springAndFlowForceLessPressureAreWhatTheSolverBalances(String range, double position) {
        Part.Law law = VALVE.law(new Setting(20, range, Setting.Lockup.OFF, OIL, 0));
        Reading reading = Reading.of(VALVE.form(), 9e5, 0.2e5, 2e5, position);
        Stamp stamp = new Stamp(VALVE.form());
        law.evaluate(reading, stamp);
        double pressure = 2e-4 * 9e5 - (range.equals("reverse") ? 0.7e-4 * 2e5 : 0);
        double spring = 90 + 6000 * position;
        assertEquals(pressure, reported(law, reading, SpoolValve.PRESSURE_FORCE), 1e-9);
        assertEquals(spring, reported(law, reading, SpoolValve.SPRING_FORCE), 1e-9);
        assertEquals(position, reported(law, reading, SpoolValve.PLACE));
        double flow = reported(law, reading, SpoolValve.FLOW_FORCE);
        assertEquals(spring + flow - pressure, stamp.value(3), 1e-9);
        assertTrue(Math.abs(flow) > 0.1, flow + " N");
        assertEquals(VALVE.form().ports().size() + 1, stamp.rows());
        assertEquals(reading.size(), stamp.columns());
    }

    /**
     * Two millimetres of overlap, then the edge: the gap of that length at the clearance that bore and valve have at the oil's
     * temperature, and a slit as wide as that, 32/π·μ·q/(w·c²) (Merritt), 1 % of it.
     */
    @Test
    void aShutLandLeaksAsTheGapThatItIsWhenWarm() {
        // thick, so that neither entry nor exit counts
        OilAt oil = new OilAt(373.15, 810, 0.1, 0, 0, 101_325, -3e4, Optional.empty());
        SpoolValve.Opening land = new SpoolValve.Opening("bypass", 0, 1, WARM, 1, 2e-3, true, 0.3, 0.65);
        SpoolValve valve = new SpoolValve(
                List.of("line", "tank"),
                List.of(land),
                List.of(),
                new SpoolSpring(6000, 90, 0, 5e-3, 0),
                OptionalDouble.empty());
        double leak = StreamSupport.stream(
                        valve.law(new Setting(20, "any", Setting.Lockup.OFF, oil, 0))
                                .streams(Reading.of(valve.form(), 9e5, 0, 0))
                                .spliterator(),
                        false)
                .findFirst()
                .orElseThrow()
                .volume();
        double clearance = WARM.gap(373.15) / 2;
        double width = Math.PI * WARM.outer();
        double slit = 32 / Math.PI / (width * clearance * clearance);
        double gap =
                Slot.annular(WARM.outer() - 2 * clearance, clearance, 2e-3, 0.3).viscous();
        double expected = 9e5 / (0.1 * (gap + slit));
        assertEquals(expected, leak, 1e-3 * expected);
    }

    /** A valve that would bind in the cold keeps half a micrometre, so that it still has an answer. */
    @Test
    void aValveThatBindsInTheColdStillLetsALittleBy() {
        Fit tight = new Fit(16.001e-3, 16e-3, 24e-6, 12e-6, 293.15);
        SpoolValve valve = new SpoolValve(
                List.of("line", "tank"),
                List.of(new SpoolValve.Opening("bypass", 0, 1, tight, 1, 2e-3, true, 0, 0.65)),
                List.of(),
                new SpoolSpring(6000, 90, 0, 5e-3, 0),
                OptionalDouble.empty());
        OilAt cold = new OilAt(233.15, 880, 2, 0, 0, 101_325, -3e4, Optional.empty());
        double leak = valve.law(new Setting(20, "any", Setting.Lockup.OFF, cold, 0))
                .streams(Reading.of(valve.form(), 9e5, 0, 0))
                .iterator()
                .next()
                .volume();
        double least = Slot.annular(16e-3, 0.5e-6, 2e-3, 0).flow(9e5, 880, 2).q();
        assertEquals(least, leak, 0.01 * least);
    }
}
