package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Margin;
import hotidle.transmission.JobCost;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class JobPhraseTest {

    private static final JobPhrase SHOP = new JobPhrase(UnitSystem.SHOP);
    private static final double PSI = 6894.757293168;

    @Test
    void theJobsToDoComeFirstAndTheirTimeWithThem() {
        assertEquals(
                "DO pump + rings: these 2 jobs of 8 keep every limit, in 6.5 hours. Least headroom then +7 %: lockup (converter)"
                        + " at climb.",
                JobPhrase.chosen(
                        List.of("pump", "rings"),
                        8,
                        JobPhrase.cost(JobCost.HOURS, 6.5),
                        JobPhrase.least("+7 %", "lockup (converter) at climb")));
        assertEquals(
                "DO pump: this one job of 3 keeps every limit, for 400.",
                JobPhrase.chosen(List.of("pump"), 3, JobPhrase.cost(JobCost.PRICE, 400), ""));
        assertEquals("", JobPhrase.cost(JobCost.JOBS, 2));
    }

    @Test
    void whatWasNotTriedIsSaid() {
        assertEquals(
                "No cheaper set does. Sets of more than 5 jobs were not tried.",
                JobPhrase.why(JobCost.PRICE, 5, false));
        assertEquals("No set of fewer jobs does.", JobPhrase.why(JobCost.JOBS, 5, false));
        assertEquals(
                "NO SET of the 20 jobs (sets of more than 4 were not tried) keeps every limit.",
                JobPhrase.none(20, 4, false));
    }

    @Test
    void aLimitThatFailsAtSeveralDrivingConditionsIsNamedOnce() {
        String film = JobPhrase.at(Margin.Kind.FILM, "hub", List.of("stall", "climb"));
        assertEquals(
                "With all of them done fails hub film (hub) at stall, climb.", JobPhrase.failWithAll(List.of(film)));
        assertEquals(
                "With all of them done fail a; b; c; and 2 more.",
                JobPhrase.failWithAll(List.of("a", "b", "c", "d", "e")));
    }

    @Test
    void theHighestPressureOfAllJobsIsSaidWithWhatEndsIt() {
        assertEquals(
                "The highest set pressure with all of them done is 215 psi; above, x fails first.",
                SHOP.ceiling(215 * PSI) + JobPhrase.endedBy("x"));
        assertEquals(
                "No set pressure from 60 psi to 400 psi keeps every limit with all of them done.",
                SHOP.noPressure(60 * PSI, 400 * PSI));
    }

    @Test
    void anUnknownSetIsNoFailureAndNoAnswer() {
        assertEquals(
                "NOT KNOWN of 1 other set that would cost no more, the first a + b: a steady state was not found.",
                JobPhrase.notKnown(List.of(List.of("a", "b"))));
        assertEquals(
                "These do too, with less headroom: a + b; c; d; and 1 more.",
                JobPhrase.equal(List.of(List.of("a", "b"), List.of("c"), List.of("d"), List.of("e"))));
    }

    @Test
    void theSetPressureAskedForIsTold() {
        assertEquals(" set to 240 psi", SHOP.at(OptionalDouble.of(240 * PSI), true));
        assertEquals(", 150 psi", SHOP.at(OptionalDouble.of(150 * PSI), false));
        assertEquals("", SHOP.at(OptionalDouble.empty(), false));
    }

    @Test
    void aNarrowSetIsCalledSoAndAJobMoreThatGivesRoomIsNamed() {
        assertEquals(" NARROW then, +5 %: hub film at stall.", JobPhrase.narrow("+5 %", "hub film at stall"));
        assertEquals(
                "With plate too, 2 hours more: least headroom +25 %, hub film at stall.",
                JobPhrase.easier(List.of("plate"), JobPhrase.more(JobCost.HOURS, 2), "+25 %", "hub film at stall"));
        assertEquals("", JobPhrase.more(JobCost.JOBS, 1));
        assertEquals(", 380 more", JobPhrase.more(JobCost.PRICE, 380));
    }
}
