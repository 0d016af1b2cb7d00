package hotidle.answer.jobs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Margin;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.study.JobStudy;
import hotidle.study.Judgement;
import hotidle.study.Repairs;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Job;
import hotidle.transmission.JobCost;
import hotidle.transmission.Transmission;
import hotidle.transmission.Workshop;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Jobs on a ready circuit with made answers: nothing is solved. */
class JobsAnswerTest {

    private static final Transmission UNIT = CircuitReader.read(
                    Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
            .circuit()
            .orElseThrow()
            .unit();
    private static final Judgement.Key PUMP = new Judgement.Key("hot-idle", Margin.Kind.REGULATION, "pump");

    private static JobStudy.JobState state(List<Job> jobs, double line, boolean known, int failing) {
        return new JobStudy.JobState(
                jobs,
                Optional.of(new Repairs.Effect(
                        line * 1e5,
                        OptionalDouble.of(10e5),
                        line >= 10,
                        1e-5,
                        1e-4,
                        List.of(),
                        1,
                        OptionalDouble.empty())),
                IntStream.range(0, failing)
                        .mapToObj(i -> new Judgement.Key("condition-" + i, Margin.Kind.LUBRICATION, "lube-branch-" + i))
                        .toList(),
                known);
    }

    private static JobsAnswer answer(
            int count, boolean low, Optional<JobStudy.JobSet> chosen, List<List<Job>> notKnown) {
        List<Job> jobs =
                IntStream.range(0, count).mapToObj(i -> Job.of("job-" + i, "")).toList();
        JobStudy study = new JobStudy(
                JobCost.JOBS,
                state(List.of(), 6, true, 9),
                low,
                jobs.stream().map(job -> state(List.of(job), 8, true, 3)).toList(),
                chosen,
                chosen.map(set -> state(set.jobs(), 10.1, true, 0)),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                notKnown,
                count,
                Optional.of(state(jobs, 10.2, true, chosen.isPresent() ? 0 : 9)),
                Optional.empty());
        return new JobsAnswer(
                UnitSystem.METRIC,
                new Workshop(UNIT, jobs, done -> Adjustable.fixed(UNIT)),
                true,
                false,
                UNIT.duties().get(0),
                study);
    }

    private static JobStudy.JobSet set(int undecided) {
        return new JobStudy.JobSet(
                List.of(Job.of("job-0", ""), Job.of("job-2", "")),
                Optional.of(new JobStudy.JudgedLimit(
                        PUMP, Margin.of(Margin.Kind.REGULATION, "pump", 1.1, 1, Margin.Scale.PRESSURE))),
                IntStream.range(0, undecided)
                        .mapToObj(i -> new Judgement.Key("driving-condition-" + i % 9, Margin.Kind.FILM, "hub-" + i))
                        .toList());
    }

    @Test
    void whatToDoIsSaidBeforeWhatEachJobWinsBack() {
        List<String> lines = answer(4, false, Optional.of(set(0)), List.of())
                .screen()
                .lines()
                .toList();
        int does = IntStream.range(0, lines.size())
                .filter(i -> lines.get(i).startsWith("DO job-0 + job-2: these 2 jobs of 4 keep every limit"))
                .findFirst()
                .orElseThrow();
        assertTrue(does
                < lines.indexOf(lines.stream()
                        .filter(line -> line.startsWith("job-1"))
                        .findFirst()
                        .orElseThrow()));
    }

    @Test
    void besideEachJobAloneStandsWhatTheSetThatIsRecommendedGives() {
        String screen = answer(4, false, Optional.of(set(0)), List.of()).screen();
        assertTrue(screen.lines().anyMatch(line -> line.matches("these 2 together +10\\.10 bar .* 0")), screen);
        assertFalse(answer(2, false, Optional.empty(), List.of()).screen().contains("together  "), "none is");
    }

    @Test
    void aUnitWithLowIdlePressureIsNotStallTestedWhateverJobsAreOffered() {
        String low = answer(4, true, Optional.of(set(0)), List.of()).screen();
        assertTrue(low.contains("IDLE PRESSURE IS LOW with " + UNIT.build()), low);
        assertTrue(answer(4, true, Optional.of(set(0)), List.of()).full().contains("IDLE PRESSURE IS LOW"));
        assertFalse(answer(4, false, Optional.of(set(0)), List.of()).screen().contains("IDLE PRESSURE"));
    }

    @Test
    void aSetOfWhichItIsNotKnownLeavesTheAnswerIncomplete() {
        assertTrue(answer(4, false, Optional.of(set(0)), List.of()).complete());
        assertFalse(answer(4, false, Optional.of(set(0)), List.of(List.of(Job.of("job-1", ""))))
                .complete());
    }

    @Test
    void theFirstScreenFitsWithManyJobsAndManyLimitsNotKnown() {
        List<List<Job>> open = IntStream.range(0, 30)
                .mapToObj(i -> List.of(Job.of("job-" + i % 12, ""), Job.of("job-" + (i + 1) % 12, "")))
                .toList();
        for (JobsAnswer answer : List.of(
                answer(12, true, Optional.of(set(30)), open),
                answer(20, true, Optional.of(set(30)), open),
                answer(20, true, Optional.empty(), open))) {
            List<String> lines = answer.screen().lines().toList();
            assertTrue(lines.size() <= 24, String.join("\n", lines));
            lines.forEach(line -> assertTrue(line.length() <= 100, line));
        }
        assertEquals(
                20,
                answer(20, true, Optional.empty(), open)
                        .full()
                        .lines()
                        .filter(line -> line.matches("job-\\d+ .*"))
                        .count(),
                "each job stands in full");
    }
}
