package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A build after jobs, at another set pressure, in one command. */
class AfterWorkTest {

    private static final List<String> JOBS = List.of(
            "pump", "regulator bore", "hub and bushing", "plate and faces", "valve-body bores", "rings", "seals");

    private static JsonNode build(String... words) throws Exception {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--speed", "600..3600/3000rpm", "--format", "json"));
        return new ObjectMapper()
                .readTree(Run.of(all.toArray(String[]::new)).out())
                .at("/builds/0");
    }

    private static final String[] SHORT = {"--duty", "hot-idle", "--speed", "600..3600/3000rpm"};

    private static Run margins(String... words) {
        List<String> all = new ArrayList<>(List.of("margins", "crescent-four"));
        all.addAll(List.of(words));
        all.addAll(List.of(SHORT));
        return Run.of(all.toArray(String[]::new));
    }

    /** A build beside it that has nothing worn there stays as it is. */
    @Test
    void aJobByPlaceIsDoneToTheBuildsThatAreWornThere() {
        Run both = margins("--build", "fresh", "--build", "worn", "--job", "hub and bushing");
        assertEquals(HotIdle.DONE, both.code(), both.err());
        assertTrue(both.out().contains("worn-after") && both.out().contains("fresh-after"), both.out());
    }

    @Test
    void aJobThatNoBuildHasIsRefusedWithThoseThatTheyHave() {
        Run fresh = margins("--build", "fresh", "--job", "pump");
        assertEquals(HotIdle.WRONG_INPUT, fresh.code());
        assertEquals(
                "hotidle: --job pump: nothing there is worn in fresh\nmend: leave --job out: there is no worn fit to"
                        + " bring back to new\n",
                fresh.err());
        Run worn = margins("--build", "worn", "--build", "fresh", "--job", "clutches");
        assertEquals(HotIdle.WRONG_INPUT, worn.code());
        assertTrue(worn.err().contains("--job clutches: worn, fresh have no such job"), worn.err());
        assertTrue(worn.err().contains("valid: pump, hub and bushing, regulator bore, valve-body bores"), worn.err());
    }

    /** Every fit of the worn unit brought back is the fresh unit, limit by limit. */
    @Test
    void afterAllItsJobsAWornUnitHasTheMarginsOfAFreshOne() throws Exception {
        List<String> words = new ArrayList<>(List.of("margins", "crescent-four", "--build", "worn"));
        JOBS.forEach(job -> words.addAll(List.of("--job", job)));
        JsonNode after = build(words.toArray(String[]::new));
        JsonNode fresh = build("margins", "crescent-four", "--build", "fresh");
        assertEquals("worn-after", after.get("build").textValue(), "no reader takes it for the worn one");
        assertEquals(5, fresh.get("states").size());
        for (int duty = 0; duty < fresh.get("states").size(); duty++) {
            JsonNode limits = fresh.at("/states/" + duty + "/margins");
            assertTrue(limits.size() > 5, limits.toString());
            for (int i = 0; i < limits.size(); i++) {
                double is = after.at("/states/" + duty + "/margins/" + i + "/headroom")
                        .doubleValue();
                assertEquals(
                        limits.get(i).get("headroom").doubleValue(),
                        is,
                        1e-6,
                        limits.get(i).toString());
            }
        }
    }
}
