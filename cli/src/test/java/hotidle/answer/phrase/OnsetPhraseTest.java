package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.answer.format.Quantity.UnitSystem;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** From which engine speed the line is regulated; speeds are rev/s, shown in rpm. */
class OnsetPhraseTest {

    private static final OnsetPhrase SAID = new OnsetPhrase(UnitSystem.SHOP);
    private static final double LOWEST = 400 / 60.0;
    private static final OptionalDouble AT_700 = OptionalDouble.of(700 / 60.0);
    private static final OptionalDouble AT_LOWEST = OptionalDouble.of(LOWEST);

    @Test
    void anOnsetAtTheLowestSpeedSearchedMayLieLowerStill() {
        assertEquals("Holds from 400 rpm or below.", SAID.regulates(AT_LOWEST, LOWEST, 50));
        assertEquals("400 rpm or below", SAID.from(AT_LOWEST, LOWEST));
        assertEquals("<= 400", SAID.cell(AT_LOWEST, LOWEST));
    }

    @Test
    void anOnsetFoundAmongTheSpeedsIsGivenAsItIs() {
        assertEquals("Holds from 700 rpm up.", SAID.regulates(AT_700, LOWEST, 50));
        assertEquals("700 rpm", SAID.from(AT_700, LOWEST));
        assertEquals("700", SAID.cell(AT_700, LOWEST));
    }

    @Test
    void aLineThatIsNeverRegulatedIsSaidToBeSoOnlyOfTheSpeedsSearched() {
        assertEquals("Holds at no speed up to 3000 rpm.", SAID.regulates(OptionalDouble.empty(), LOWEST, 50));
        assertEquals("none in the speeds asked", SAID.from(OptionalDouble.empty(), LOWEST));
        assertEquals("none", SAID.cell(OptionalDouble.empty(), LOWEST));
    }

    @Test
    void aRepairMovesTheOnsetDown() {
        assertEquals(
                "The speed from which it holds moves from 700 to 400 rpm or below.",
                SAID.moves(700 / 60.0, LOWEST, LOWEST));
    }

    @Test
    void whatElseTheRegulatorBeginsStandsBehindTheOnset() {
        assertEquals(
                "line holds from: 700 rpm; secondary unloads from: 1500 rpm; primary bypasses from: 2600 rpm",
                SweepPhrase.crossings(
                        "700 rpm", List.of(SweepPhrase.unloads("1500 rpm"), SweepPhrase.bypasses("2600 rpm"))));
        assertEquals("line holds from: none", SweepPhrase.crossings("none", List.of()));
    }
}
