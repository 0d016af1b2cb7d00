package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.law.AirLeak;
import hotidle.law.AirOrifice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A bore tested with air on a stand of which only its own readings of known holes are known. */
class AirTestTest {

    private static final double INCH_OF_MERCURY = 3386.389;
    private static final double AMBIENT = 29.92 * INCH_OF_MERCURY;
    private static final double ROOM = 293.15;
    private static final AirTest.TestedLand LAND = new AirTest.TestedLand(0.0127, 0.005, 0.5);

    private static double vacuum(double inches) {
        return AMBIENT - inches * INCH_OF_MERCURY;
    }

    /** Blocked at 25 inches, at 5 with a hole of 1 mm. */
    private static final AirStand STAND =
            stand(new AirStand.Calibration(0, vacuum(25)), new AirStand.Calibration(1e-3, vacuum(5)));

    private static AirStand stand(AirStand.Calibration... holes) {
        return AirStand.of(AMBIENT, ROOM, AirOrifice.SHARP_EDGE, List.of(holes));
    }

    private static Optional<AirTest> test(double inches) {
        return AirTest.of(STAND, vacuum(inches), LAND);
    }

    @Test
    void theLowerTheVacuumTheMoreOilLeaks() {
        double before = -1;
        for (double inches = 25; inches >= 5; inches -= 2.5) {
            double oil = test(inches).orElseThrow().oil(7e5, 6e-3);
            assertTrue(oil > before, inches + " inHg: " + oil);
            before = oil;
        }
        assertEquals(0, test(25).orElseThrow().oil(7e5, 6e-3), 1e-18);
    }

    @Test
    void aReadingBeyondTheCalibrationSaysNothing() {
        assertTrue(test(26).isEmpty());
        assertTrue(test(4).isEmpty());
    }

    /** A stand with a made-up pump curve reads a land of a known gap; what comes back is that gap's oil leak. */
    @Test
    void aLandOfAKnownGapLeaksWhatItsReadingSays() {
        double clearance = 18e-6;
        double shape = Math.PI * 0.0127 * Math.pow(clearance, 3) * 1.375 / (12 * 0.005);
        List<AirStand.Calibration> holes = new ArrayList<>();
        for (double diameter = 0; diameter < 1.5e-3; diameter += 0.02e-3) {
            holes.add(new AirStand.Calibration(diameter, reading(hole(diameter))));
        }
        AirStand stand = stand(holes.toArray(AirStand.Calibration[]::new));
        double reading = reading(pressure -> AirLeak.freeAir(shape, AMBIENT, pressure, AMBIENT, ROOM));
        AirTest found = AirTest.of(stand, reading, LAND).orElseThrow();
        double oil = shape * 7e5 / 6e-3;
        assertEquals(oil, found.oil(7e5, 6e-3), 2e-3 * oil, "straight pieces of a curve");
        assertEquals(clearance, found.asInTheFile(), 1e-3 * clearance);
        assertEquals(clearance * Math.cbrt(1.375), found.concentric(), 1e-3 * clearance);
        assertEquals(List.of(), found.doubts());
    }

    private interface Passes {
        double air(double pressure);
    }

    private static Passes hole(double diameter) {
        return pressure -> AirOrifice.freeAir(diameter, AirOrifice.SHARP_EDGE, AMBIENT, pressure, AMBIENT, ROOM);
    }

    /** Where a pump whose flow falls with the square of its vacuum takes what passes. */
    private static double reading(Passes gap) {
        double low = vacuum(26);
        double high = AMBIENT;
        for (int i = 0; i < 200; i++) {
            double middle = (low + high) / 2;
            double share = (AMBIENT - middle) / (26 * INCH_OF_MERCURY);
            if (1.2e-4 * (1 - share * share) < gap.air(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    @Test
    void aNarrowGapSlipsAndAWideOneChokes() {
        assertTrue(test(24.9).orElseThrow().doubts().contains(AirTest.AirDoubt.SLIPS));
        AirTest.TestedLand shallow = new AirTest.TestedLand(0.0127, 0.0005, 0);
        assertTrue(AirTest.of(STAND, vacuum(10), shallow).orElseThrow().doubts().contains(AirTest.AirDoubt.CHOKES));
        AirStand large = stand(new AirStand.Calibration(0, vacuum(25)), new AirStand.Calibration(8e-3, vacuum(5)));
        assertTrue(AirTest.of(large, vacuum(10), new AirTest.TestedLand(0.002, 0.005, 0))
                .orElseThrow()
                .doubts()
                .contains(AirTest.AirDoubt.TURBULENT));
    }

    @Test
    void airPressureReadsTheSameLandAsVacuum() {
        double psi = 6894.757;
        AirStand pressed = stand(
                new AirStand.Calibration(0, AMBIENT + 40 * psi), new AirStand.Calibration(1e-3, AMBIENT + 10 * psi));
        AirTest read = AirTest.of(pressed, AMBIENT + 30 * psi, LAND).orElseThrow();
        assertEquals(
                read.freeAir(),
                AirLeak.freeAir(read.shape(), AMBIENT + 30 * psi, AMBIENT, AMBIENT, ROOM),
                1e-12 * read.freeAir());
    }

    @Test
    void readingsThatDoNotGoWithTheirHolesAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> stand(new AirStand.Calibration(0, vacuum(25))));
        assertThrows(
                IllegalArgumentException.class,
                () -> stand(new AirStand.Calibration(0, vacuum(5)), new AirStand.Calibration(1e-3, vacuum(25))),
                "the blocked port nearer to the room's pressure than a hole");
        assertThrows(
                IllegalArgumentException.class,
                () -> stand(
                        new AirStand.Calibration(0, vacuum(25)),
                        new AirStand.Calibration(1e-3, vacuum(12)),
                        new AirStand.Calibration(0.5e-3, vacuum(5))));
    }

    @Test
    void aBoreThatGrowsAsItWarmsLeaksMore() {
        AirTest found = test(18).orElseThrow();
        assertEquals(found.oil(7e5, 6e-3), found.oilWarm(7e5, 6e-3, 0), 1e-18);
        double twice = 2 * found.asInTheFile();
        assertEquals(8 * found.oil(7e5, 6e-3), found.oilWarm(7e5, 6e-3, twice), 1e-12 * found.oil(7e5, 6e-3) * 8);
        assertEquals(0, found.oilWarm(7e5, 6e-3, -3 * twice), 0);
    }
}
