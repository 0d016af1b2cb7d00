package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What was done to a build is said in the order in which it was done. */
class AfterWorkPhraseTest {

    private static final OptionalDouble SET = OptionalDouble.of(240 * 6894.757293);
    private static final OptionalDouble AS_IT_IS = OptionalDouble.empty();

    @Test
    void jobsComeBeforeTheSetPressureAndFaultsLast() {
        assertEquals(
                "After the jobs pump, rings, set to 240 psi, with the fault oil-aerated:10%.",
                AfterWorkPhrase.of(UnitSystem.SHOP, List.of("pump", "rings"), SET, List.of("oil-aerated:10%")));
        assertEquals("After the job pump.", AfterWorkPhrase.of(UnitSystem.SHOP, List.of("pump"), AS_IT_IS, List.of()));
    }

    @Test
    void behindTheNameOfACircuitItIsNoSentence() {
        assertEquals("set to 240 psi", AfterWorkPhrase.heading(UnitSystem.SHOP, List.of(), SET, List.of()));
    }

    @Test
    void aBuildThatIsOnlySetOtherwiseIsAfterNothing() {
        assertEquals(
                "Set to 10.00 bar.",
                AfterWorkPhrase.of(UnitSystem.METRIC, List.of(), OptionalDouble.of(1e6), List.of()));
        assertEquals("worn-at-205psi", AfterWorkPhrase.setTo("worn", "205 psi"));
        assertTrue(AfterWorkPhrase.saysPressure("worn-at-205psi"));
        assertFalse(AfterWorkPhrase.saysPressure("worn-at-idle"));
        assertEquals("worn-after", AfterWorkPhrase.after("worn"));
    }

    @Test
    void besideTheSameBuildsAsTheyAreBothHaveTheFaults() {
        assertEquals(
                "Shown as it is and after the job pump; both with the faults a:1%, b:2%.",
                AfterWorkPhrase.beside(UnitSystem.SHOP, List.of("pump"), AS_IT_IS, List.of("a:1%", "b:2%")));
        assertEquals(
                "Shown as it is, set to 240 psi, and set so after the jobs pump, rings; all with the fault a:1%.",
                AfterWorkPhrase.beside(UnitSystem.SHOP, List.of("pump", "rings"), SET, List.of("a:1%")));
        assertEquals(
                "With the fault a:1%.", AfterWorkPhrase.beside(UnitSystem.SHOP, List.of(), AS_IT_IS, List.of("a:1%")));
    }

    @Test
    void aBuildWithNothingToDoIsSaidAndNotPutBesideItself() {
        assertEquals(" Nothing of that is to do in fresh, new.", AfterWorkPhrase.nothingToDo(List.of("fresh", "new")));
        assertEquals("", AfterWorkPhrase.nothingToDo(List.of()));
    }
}
