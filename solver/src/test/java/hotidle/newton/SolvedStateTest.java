package hotidle.newton;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.network.Conditions;
import hotidle.study.TenNodes;
import hotidle.transmission.Transmission;
import org.junit.jupiter.api.Test;

/** Guesses made of states that were solved: a line pressure [Pa] and a spool's place [m]. */
class SolvedStateTest {

    private final Transmission unit = TenNodes.worn(1);
    private final Conditions idle = unit.conditions(unit.duties().get(0)).atSpeed(10);

    private SolvedState state(double line, double place) {
        return new SolvedState(idle, new double[] {line, place}, 7, "Newton");
    }

    @Test
    void betweenTwoStatesLiesAStraightLine() {
        SolvedState guess = SolvedState.between(state(4e5, 1e-3), state(8e5, 3e-3), 0.25);
        assertArrayEquals(new double[] {5e5, 1.5e-3}, guess.unknowns(), 1e-9);
        assertEquals(0, guess.steps(), "it was not solved");
    }

    @Test
    void aStateMovesAsAnotherHasMoved() {
        SolvedState guess = state(4e5, 1e-3).moved(state(10e5, 2e-3), state(9e5, 2.5e-3));
        assertArrayEquals(new double[] {3e5, 1.5e-3}, guess.unknowns(), 1e-9);
        assertEquals(10, guess.speed());
    }

    @Test
    void aStateKeepsWhatItCost() {
        assertEquals(7, state(4e5, 1e-3).steps());
        assertEquals("Newton", state(4e5, 1e-3).method());
        assertEquals(10, state(4e5, 1e-3).speed());
    }
}
