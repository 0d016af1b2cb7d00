package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.answer.format.Quantity;
import org.junit.jupiter.api.Test;

class JobMovesPhraseTest {

    private static final JobMovesPhrase METRIC = new JobMovesPhrase(Quantity.UnitSystem.METRIC);

    @Test
    void aJobIsToldByWhatItMovesAndWarnedOfWhereItStarvesTheLubrication() {
        JobMovesPhrase.UnitDoes worn = new JobMovesPhrase.UnitDoes(7.5e5, 1e-4, 1e-5);
        assertEquals(
                "At idle: line from 7.50 to 9.00 bar, oil lost from 6.00 to 4.80 L/min.",
                METRIC.moves("idle", worn, new JobMovesPhrase.UnitDoes(9e5, 8e-5, 1e-5), false));
        assertEquals(
                "At idle: line still 7.50 bar, oil lost from 6.00 to 4.80 L/min."
                        + " NOT ALONE: the lubrication then gets LESS oil, from 0.60 to 0.30 L/min.",
                METRIC.moves("idle", worn, new JobMovesPhrase.UnitDoes(7.5e5, 8e-5, 5e-6), true));
    }

    @Test
    void aJobThatCannotBeDoneSaysWhy() {
        assertEquals("Cannot be done so: it is too late.", JobMovesPhrase.impossible("it is too late"));
    }
}
