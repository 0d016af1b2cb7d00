package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.Quantity.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChangePhraseTest {

    private static final ChangePhrase SHOP = new ChangePhrase(UnitSystem.SHOP);
    private static final ChangePhrase METRIC = new ChangePhrase(UnitSystem.METRIC);

    @Test
    void aFigureThatReadsTheSameBeforeAndAfterStays() {
        assertEquals("line stays at 10.34 bar", METRIC.stays("line", Quantity.PRESSURE, 10.341e5, 10.342e5));
        assertEquals("line stays at 150 psi", SHOP.stays("line", Quantity.PRESSURE, 10.341e5, 10.342e5));
    }

    /** 1 % more is no change to speak of, but a reader who sees two numbers must not be told that they are one. */
    @Test
    void aFigureThatReadsOtherwiseButIsAsGoodAsTheSameHardlyMoves() {
        assertEquals("line hardly moves, 10.00 to 10.10 bar", METRIC.stays("line", Quantity.PRESSURE, 10.0e5, 10.1e5));
        assertEquals("line hardly moves, 145 to 146 psi", SHOP.stays("line", Quantity.PRESSURE, 10.0e5, 10.1e5));
    }

    @Test
    void pressureRisesAndLeaksFall() {
        assertEquals("line rises from 99 to 150 psi", SHOP.moves("line", Quantity.PRESSURE, 6.83e5, 10.34e5));
        assertEquals("oil lost falls from 24.0 to 9.0 L/min", METRIC.moves("oil lost", Quantity.FLOW, 4e-4, 1.5e-4));
        assertEquals("oil lost falls from 6.34 to 2.38 gpm", SHOP.moves("oil lost", Quantity.FLOW, 4e-4, 1.5e-4));
    }

    @Test
    void allFiguresOfABuildStandInOneSentenceWithTheOneBeforeIt() {
        assertEquals(
                "Against worn, at hot-idle: line stays at 150 psi; oil lost falls from 2 to 1 gpm.",
                ChangePhrase.against(
                        "worn", "hot-idle", List.of("line stays at 150 psi", "oil lost falls from 2 to 1 gpm")));
    }
}
