package hotidle.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What a part tells of its own unknowns. */
class FormTest {

    private static final OwnState PLACE = new OwnState("place");
    private static final Form.Unknown BETWEEN_STOPS = new Form.Unknown(PLACE, 0, 0.9, 0.5, 1, 1);

    @Test
    void whatIsHeldKeepsItsPoleAndItsEdges() {
        assertEquals(Double.POSITIVE_INFINITY, BETWEEN_STOPS.pole());
        Form.Unknown held = BETWEEN_STOPS.towards(1).opening(List.of(0.2, 0.4)).heldAt(0.3);
        assertEquals(new Form.Unknown(PLACE, 0.3, 0.3, 0.3, 1, 1, 1, List.of(0.2, 0.4)), held);
    }

    @Test
    void aPoleWithinTheStopsIsRefused() {
        String told = assertThrows(IllegalArgumentException.class, () -> BETWEEN_STOPS.towards(0.9))
                .getMessage();
        assertTrue(told.contains("stops 0.0 to 0.9 and pole 0.9 must rise"), told);
    }
}
