package hotidle.answer.jobs;

import static hotidle.answer.jobs.MadeJobs.BORES;
import static hotidle.answer.jobs.MadeJobs.PUMP;
import static hotidle.answer.jobs.MadeJobs.RINGS;
import static hotidle.answer.jobs.MadeJobs.answer;
import static hotidle.answer.jobs.MadeJobs.kept;
import static hotidle.answer.jobs.MadeJobs.none;
import static hotidle.answer.jobs.MadeJobs.set;
import static hotidle.answer.jobs.MadeJobs.state;
import static hotidle.answer.jobs.MadeJobs.study;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.study.JobStudy;
import hotidle.transmission.JobCost;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Jobs as rows and as JSON. */
class JobRowsTest {

    private static List<String> rows(JobsAnswer answer) {
        return answer.csv().lines().toList();
    }

    @Test
    void aSpreadsheetHasEveryJobAloneThenAllAndWhatWasChosen() {
        List<String> rows = rows(answer(UnitSystem.METRIC, kept(JobCost.PRICE, set(PUMP)), PUMP, RINGS));
        assertEquals("kind,jobs,line bar,lube L/min,lost L/min,limits failing,hours,price,least headroom", rows.get(0));
        assertEquals("before,,9.00,0.6,6.0,1,,,", rows.get(1));
        assertEquals("alone,pump,9.00,0.6,6.0,0,4,380,", rows.get(2));
        assertEquals("all,pump + rings,9.00,0.6,6.0,0,5.5,425.5,", rows.get(4));
        assertTrue(rows.get(6).startsWith("chosen,pump,,,,0,4,380,0.1"), rows.get(6));
    }

    @Test
    void aStateThatWasNotFoundIsNoNumber() {
        JobsAnswer answer = answer(UnitSystem.METRIC, kept(JobCost.PRICE, set(PUMP)), PUMP, RINGS);
        String row = rows(answer).get(3);
        assertTrue(row.startsWith("alone,rings,"), row);
        assertFalse(row.contains("0.6"), row);
        assertTrue(
                answer.screen().lines().anyMatch(line -> line.matches("rings .* 0 \\+ not known +45\\.5")),
                answer.screen());
    }

    @Test
    void hoursOfASetAreToldOnlyWhereEveryJobOfItHasThem() {
        List<String> rows = rows(answer(UnitSystem.METRIC, kept(JobCost.PRICE, set(PUMP, BORES)), PUMP, RINGS, BORES));
        String chosen = rows.get(rows.size() - 1);
        assertTrue(chosen.startsWith("chosen,pump + bores,,,,0,,580,"), chosen);
    }

    @Test
    void whereJobsAreCountedTheTableHasNoColumnOfTheirCost() {
        String counted = answer(UnitSystem.SHOP, kept(JobCost.JOBS, set(PUMP)), PUMP, RINGS)
                .screen();
        assertFalse(counted.contains("price"), counted);
        assertFalse(counted.contains("hours"), counted);
        assertTrue(answer(UnitSystem.SHOP, kept(JobCost.HOURS, set(PUMP)), PUMP, RINGS)
                .screen()
                .contains("hours"));
        assertTrue(answer(UnitSystem.SHOP, kept(JobCost.PRICE, set(PUMP)), PUMP, RINGS)
                .screen()
                .contains("price"));
    }

    @Test
    void pressuresAreToldInTheUnitsOfTheReader() {
        JobStudy study = kept(JobCost.JOBS, set(PUMP));
        assertTrue(answer(UnitSystem.SHOP, study, PUMP, RINGS).screen().contains("131 psi"));
        assertTrue(answer(UnitSystem.METRIC, study, PUMP, RINGS).screen().contains("9.00 bar"));
        assertTrue(rows(answer(UnitSystem.SI, study, PUMP, RINGS)).get(1).startsWith("before,,900000,"));
    }

    @Test
    void withoutAnyJobThereIsNoTable() {
        JobStudy nothing = new JobStudy(
                JobCost.JOBS,
                state(List.of()),
                false,
                List.of(),
                Optional.of(set()),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                0,
                Optional.empty(),
                Optional.empty());
        String screen = answer(UnitSystem.SHOP, nothing).screen();
        assertTrue(screen.contains("Nothing to do"), screen);
        assertFalse(screen.contains("each alone"), screen);
    }

    @Test
    void jsonHasAPriceOnlyWhereTheFileGivesOne() {
        JsonNode json = Json.tree(answer(UnitSystem.SHOP, kept(JobCost.PRICE, set(PUMP)), PUMP, BORES)
                .json());
        assertEquals(380, json.at("/jobs/0/price").doubleValue());
        assertTrue(json.at("/jobs/1/hours").isNull());
        assertEquals("price", json.get("counted_in").textValue());
        assertEquals("pump", json.at("/chosen/jobs/0").textValue());
        assertEquals(0.1, json.at("/chosen/least_headroom").doubleValue(), 1e-12);
        assertEquals(720, json.at("/before/effect/onset_rpm").doubleValue(), 1e-9);
        assertTrue(json.at("/alone/1/effect").isNull(), "no state was found");
        assertFalse(json.at("/alone/1/known").booleanValue());
    }

    @Test
    void whereNoSetDoesJsonHasTheHighestPressureOfAll() {
        JobStudy.Ceiling ended =
                new JobStudy.Ceiling(OptionalDouble.of(12e5), Optional.of(MadeJobs.FILM_AT_STALL), 4e5, 28e5);
        JsonNode json = Json.tree(answer(UnitSystem.SHOP, none(Optional.empty(), Optional.of(ended)), PUMP, RINGS)
                .json());
        assertTrue(json.get("chosen").isNull());
        assertTrue(json.get("all").isNull());
        assertEquals(12e5, json.at("/highest/set_pressure_pa").doubleValue(), 1e-6);
        assertEquals("stall", json.at("/highest/ended_by/duty").textValue());
    }

    @Test
    void setsThatAreNotKnownAreNamedByTheirJobs() {
        JobStudy open = study(
                JobCost.JOBS,
                Optional.of(set(PUMP)),
                List.of(),
                Optional.empty(),
                List.of(List.of(RINGS, PUMP)),
                Optional.empty(),
                Optional.empty());
        JsonNode json = Json.tree(answer(UnitSystem.SHOP, open, PUMP, RINGS).json());
        assertEquals("[[\"rings\",\"pump\"]]", json.get("sets_not_known").toString());
    }
}
