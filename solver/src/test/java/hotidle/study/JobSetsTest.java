package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.transmission.Job;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class JobSetsTest {

    private static final Job PUMP = Job.of("pump", "gears");
    private static final Job BORE = Job.of("regulator bore", "regulator");
    private static final Job SEALS = Job.of("seals", "pistons");
    private static final List<Job> JOBS = List.of(PUMP, BORE, SEALS);

    @Test
    void nothingDoneIsTriedFirstAndEveryJobTogetherLast() {
        List<List<List<Job>>> levels = JobSets.of(JOBS).byCost(job -> 1);
        assertEquals(List.of(List.of()), levels.get(0));
        assertEquals(List.of(JOBS), levels.get(levels.size() - 1));
        assertEquals(8, levels.stream().mapToInt(List::size).sum(), "every set of three jobs");
    }

    /** A pump in four hours against bore and seals in one and two: both small jobs together are tried before the pump. */
    @Test
    void aSetThatTakesLessTimeIsTriedFirstHoweverManyJobsItHas() {
        Map<Job, Double> hours = Map.of(PUMP, 4.0, BORE, 1.0, SEALS, 2.0);
        List<List<Job>> order = JobSets.of(JOBS).byCost(hours::get).stream()
                .flatMap(List::stream)
                .toList();
        assertEquals(List.of(BORE), order.get(1));
        assertTrue(order.indexOf(List.of(BORE, SEALS)) < order.indexOf(List.of(PUMP)));
    }

    @Test
    void ofSetsThatTakeAsLongTheOneWithFewerJobsIsTriedFirst() {
        Map<Job, Double> hours = Map.of(PUMP, 3.0, BORE, 1.0, SEALS, 2.0);
        List<List<List<Job>>> levels = JobSets.of(JOBS).byCost(hours::get);
        int alone = levels.indexOf(List.of(List.of(PUMP)));
        assertEquals(List.of(List.of(BORE, SEALS)), levels.get(alone + 1));
    }

    /** A tenth of an hour three times is 0.3 hours but for rounding. */
    @Test
    void roundingMakesNoSetDearer() {
        Map<Job, Double> hours = Map.of(PUMP, 0.3, BORE, 0.1, SEALS, 0.2);
        List<List<List<Job>>> levels = JobSets.of(JOBS).byCost(hours::get);
        assertEquals(levels.indexOf(List.of(List.of(PUMP))) + 1, levels.indexOf(List.of(List.of(BORE, SEALS))));
    }

    @Test
    void fourteenJobsAreTriedInEverySetAndOfMoreTheLargeSetsAreLeftOut() {
        assertTrue(JobSets.of(jobs(14)).complete());
        JobSets many = JobSets.of(jobs(20));
        assertFalse(many.complete());
        assertEquals(
                4, many.most(), "1 + 20 + 190 + 1140 + 4845 sets of up to four; with five 21 700, more than 16 384");
    }

    private static List<Job> jobs(int count) {
        return IntStream.range(0, count).mapToObj(i -> Job.of("job " + i, "")).toList();
    }
}
