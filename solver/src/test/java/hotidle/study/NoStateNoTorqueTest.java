package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.LineVerdict;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Asked for at a speed without bound, at which no state is found: what is not known does not hold, and no number is told. */
class NoStateNoTorqueTest {

    private static final double UNBOUNDED = Double.POSITIVE_INFINITY;
    private static final List<Double> PRESSURES = List.of(100 * TenNodes.PSI, 150 * TenNodes.PSI);
    private static final Transmission UNIT = TenNodesWithTrain.unit(1, 8, 500, TenNodesWithTrain.LEVEL);

    private static Window.Raised raised() {
        return Window.Raised.by(UNIT, SetPressure.By.COMMAND_AND_SPRING);
    }

    @Test
    void whereNoStateIsFoundNoTorqueIsToldButWhy() {
        List<TorqueHeld> found = TorqueHeld.of(UNIT, UNBOUNDED);
        assertEquals(2, found.size());
        found.forEach(range -> {
            assertTrue(range.held().isEmpty(), range.toString());
            assertTrue(range.unsolved().isPresent());
        });
    }

    @Test
    void whatLineIsNeededIsThenNotKnownWhileThatAtIdleIs() {
        List<LineNeeded> rows = LineNeeded.of(UNIT, UNBOUNDED);
        assertEquals(2 * 8, rows.size());
        rows.forEach(row -> {
            assertEquals(LineVerdict.NOT_KNOWN, row.verdict());
            assertEquals("", row.clutch());
            assertTrue(row.needed().isEmpty()
                    && row.line().isEmpty()
                    && row.commanded().isEmpty());
            assertTrue(row.idle().isPresent() && row.slow().isPresent());
        });
    }

    @Test
    void aRangeThatIsNotSolvedCountsAsNotHoldingAndIsNamed() {
        UsefulPressure useful = UsefulPressure.of(UNIT, raised(), PRESSURES, UNBOUNDED);
        assertTrue(useful.pressure().isEmpty());
        assertEquals(List.of("first", "second"), useful.unsolved());
        TorqueByPressure.of(raised(), PRESSURES, UNBOUNDED, () -> {}).points().forEach(point -> {
            assertTrue(point.held().isEmpty());
            assertEquals(List.of(), point.links());
        });
    }
}
