package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.LineVerdict;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.transmission.Transmission;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Line pressure that the demonstration unit needs for each engine torque. */
class LineNeededTest {

    private static final double SPEED = 2000 / 60.0;

    private static Transmission unit;
    private static List<LineNeeded> rows;

    @BeforeAll
    static void find() {
        unit = CircuitReader.read(Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
                .circuit()
                .orElseThrow()
                .unit("restored");
        rows = LineNeeded.of(unit, SPEED);
    }

    private static List<LineNeeded> of(String range) {
        return rows.stream().filter(row -> row.range().equals(range)).toList();
    }

    /** 1200 N·m in fourth: 1.286 times that on the overdrive clutch and its factor of 1.2, by hand from its linings. */
    @Test
    void whatIsNeededFollowsFromShareFactorAndLiningsByHand() {
        LineNeeded row = of("fourth").get(of("fourth").size() - 1);
        assertEquals(1200, row.torque(), 1e-9);
        assertEquals("overdrive-clutch", row.clutch());
        double share = unit.range("fourth")
                .orElseThrow()
                .applied()
                .get("overdrive-clutch")
                .torqueShare();
        double arm = 0.12 * 14 * (0.122 + 0.158) / 4;
        double clutch = (1.2 * 1200 * share / arm + 800) / 125e-4;
        assertTrue(row.needed().orElseThrow() > clutch, "what is lost on the way comes on top");
        assertEquals(clutch, row.needed().orElseThrow(), 0.02 * clutch);
    }

    @Test
    void moreTorqueNeedsMoreInEveryRangeAndIsShortFromTheTorqueOnThatIsHeld() {
        for (TorqueHeld held : TorqueHeld.of(unit, SPEED)) {
            List<LineNeeded> range = of(held.range());
            for (int i = 1; i < range.size(); i++) {
                assertTrue(range.get(i).needed().orElseThrow()
                        > range.get(i - 1).needed().orElseThrow());
            }
            double bearsClutches = held.held().orElseThrow().links().stream()
                    .filter(TorqueHeld.Carrier::clutch)
                    .mapToDouble(TorqueHeld.Carrier::torque)
                    .min()
                    .orElseThrow();
            range.forEach(row -> assertEquals(
                    row.torque() > bearsClutches, row.verdict() == LineVerdict.SHORT, held.range() + " " + row));
        }
    }

    @Test
    void littleTorqueWastesPressureUnderALevelCommand() {
        assertEquals(LineVerdict.WASTES, of("fourth").get(0).verdict());
        assertTrue(rows.stream().anyMatch(row -> row.verdict() == LineVerdict.FITS));
    }

    /** Reverse drains an area of 90 mm² beside 210 mm², so that the same command makes 300/210 of the pressure. */
    @Test
    void reverseIsCommandedByItsAreas() {
        double forward = of("first").get(0).commanded().orElseThrow();
        assertEquals(300.0 / 210 * forward, of("reverse").get(0).commanded().orElseThrow(), 1e-6 * forward);
    }

    @Test
    void atIdleTheLineIsNoHigherThanAtSpeed() {
        rows.forEach(row -> assertTrue(
                row.idle().orElseThrow() <= row.line().orElseThrow() * 1.02
                        && row.slow().orElseThrow() >= row.idle().orElseThrow() * 0.98,
                row.toString()));
    }
}
