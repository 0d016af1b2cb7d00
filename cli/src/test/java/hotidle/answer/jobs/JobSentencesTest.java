package hotidle.answer.jobs;

import static hotidle.answer.jobs.MadeJobs.BORES;
import static hotidle.answer.jobs.MadeJobs.FILM_AT_CLIMB;
import static hotidle.answer.jobs.MadeJobs.FILM_AT_STALL;
import static hotidle.answer.jobs.MadeJobs.LINE;
import static hotidle.answer.jobs.MadeJobs.PUMP;
import static hotidle.answer.jobs.MadeJobs.RINGS;
import static hotidle.answer.jobs.MadeJobs.kept;
import static hotidle.answer.jobs.MadeJobs.none;
import static hotidle.answer.jobs.MadeJobs.set;
import static hotidle.answer.jobs.MadeJobs.state;
import static hotidle.answer.jobs.MadeJobs.study;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.study.JobStudy;
import hotidle.study.Judgement;
import hotidle.transmission.JobCost;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Which sentence is said of jobs. */
class JobSentencesTest {

    private static final double SET = 30e5;

    private static List<String> said(JobStudy study, int jobs) {
        return new JobSentences(UnitSystem.METRIC, study, jobs, OptionalDouble.of(SET)).all();
    }

    @Test
    void theCheapestSetIsToldWithItsPriceAndWhatIsNearestThen() {
        List<String> said = said(kept(JobCost.PRICE, set(PUMP, RINGS)), 2);
        assertTrue(
                said.get(0).startsWith("DO pump + rings: these 2 jobs of 2 keep every limit, for 425.5."), said.get(0));
        assertTrue(said.get(0).contains("Least headroom then +10 %: "), said.get(0));
        assertTrue(said.get(0).endsWith("No cheaper set does."), said.get(0));
        assertTrue(said.get(1).startsWith("Fails as it is: regulation () at hot-idle"), said.get(1));
        assertEquals(2, said.size());
    }

    @Test
    void hoursAreToldWhereNotEveryJobHasAPrice() {
        assertTrue(said(kept(JobCost.HOURS, set(PUMP, RINGS)), 2).get(0).contains(", in 5.5 hours."));
    }

    @Test
    void whereNothingFailsNoJobIsNeeded() {
        List<String> said = said(kept(JobCost.PRICE, set()), 2);
        assertTrue(said.get(0).startsWith("NO JOB IS NEEDED: every limit holds as it is."), said.get(0));
        assertFalse(said.get(0).contains("cheaper"), said.get(0));
    }

    @Test
    void withoutAnyJobThatIsSaidFirst() {
        List<String> said = said(kept(JobCost.JOBS, set()), 0);
        assertTrue(said.get(0).startsWith("Nothing to do: no fit is worn beyond new"), said.get(0));
        assertTrue(said.get(1).startsWith("NO JOB IS NEEDED"), said.get(1));
    }

    @Test
    void otherSetsThatDoAndOneOfFewerJobsAreNamed() {
        JobStudy study = study(
                JobCost.PRICE,
                Optional.of(set(RINGS, BORES)),
                List.of(set(PUMP)),
                Optional.of(set(PUMP)),
                List.of(),
                Optional.of(state(List.of(PUMP, RINGS, BORES))),
                Optional.empty());
        List<String> said = said(study, 3);
        assertEquals("These do too, with less headroom: pump.", said.get(1));
        assertEquals("Fewer jobs do it too, for 380: pump.", said.get(2));
    }

    @Test
    void whereEvenAllJobsAreNotEnoughWhatFailsThenIsNamedOncePerLimit() {
        List<String> said = said(
                none(Optional.of(state(List.of(PUMP, RINGS), FILM_AT_STALL, LINE, FILM_AT_CLIMB)), Optional.empty()),
                2);
        assertEquals(1, said.size());
        assertTrue(
                said.get(0).startsWith("NO SET of the 2 jobs keeps every limit. With all of them done fail "),
                said.get(0));
        assertTrue(said.get(0).contains("at stall, climb; "), said.get(0));
    }

    @Test
    void whereAllJobsCannotBeDoneTogetherNothingIsSaidOfThem() {
        assertEquals(
                List.of("NO SET of the 2 jobs keeps every limit."), said(none(Optional.empty(), Optional.empty()), 2));
    }

    @Test
    void howHighThePressureMayBeIsToldWithWhatEndsIt() {
        JobStudy.Ceiling ended = new JobStudy.Ceiling(OptionalDouble.of(12e5), Optional.of(FILM_AT_STALL), 4e5, 28e5);
        String line = said(none(Optional.empty(), Optional.of(ended)), 2).get(1);
        assertTrue(line.startsWith("The highest set pressure with all of them done is 12.00 bar; above, "), line);
        assertTrue(line.contains("stall") && line.endsWith(" fails first."), line);
        JobStudy.Ceiling open = new JobStudy.Ceiling(OptionalDouble.of(28e5), Optional.empty(), 4e5, 28e5);
        assertTrue(said(none(Optional.empty(), Optional.of(open)), 2).get(1).endsWith("; higher ones were not tried."));
    }

    @Test
    void whereMorePressureIsNeededThanIsAskedForThatIsSaid() {
        JobStudy.Ceiling more = new JobStudy.Ceiling(OptionalDouble.of(22e5), Optional.of(FILM_AT_STALL), 4e5, 28e5);
        List<String> said = new JobSentences(
                        UnitSystem.METRIC, none(Optional.empty(), Optional.of(more)), 2, OptionalDouble.of(15e5))
                .all();
        assertEquals(
                "MORE pressure than 15.00 bar is needed. With all of them done every limit holds at 22.00 bar, the highest that"
                        + " does; from which on, 'hotidle window' with --job for each says.",
                said.get(1));
    }

    @Test
    void whereNoPressureKeepsEveryLimitTheRangeTriedIsTold() {
        JobStudy.Ceiling nowhere = new JobStudy.Ceiling(OptionalDouble.empty(), Optional.empty(), 4e5, 28e5);
        assertEquals(
                "No set pressure from 4.00 bar to 28.00 bar keeps every limit with all of them done.",
                said(none(Optional.empty(), Optional.of(nowhere)), 2).get(1));
    }

    @Test
    void whatIsNotKnownIsSaidLastAndIsNoFailure() {
        JobStudy.JobSet undecided = new JobStudy.JobSet(
                List.of(PUMP), Optional.empty(), List.of(new Judgement.Key("stall", LINE.kind(), "")));
        List<String> said = said(
                study(
                        JobCost.JOBS,
                        Optional.of(undecided),
                        List.of(),
                        Optional.empty(),
                        List.of(List.of(RINGS)),
                        Optional.empty(),
                        Optional.empty()),
                2);
        assertFalse(said.get(0).contains("Least headroom"), "nothing is judged");
        assertTrue(said.get(2).startsWith("Not known, and no failure: "), said.get(2));
        assertEquals(
                "NOT KNOWN of 1 other set that would cost no more, the first rings: a steady state was not found.",
                said.get(3));
    }
}
