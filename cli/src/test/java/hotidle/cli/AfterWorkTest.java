package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.answer.phrase.AfterWorkPhrase;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
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

    @Test
    void whatWasDoneIsSaidInTheUnitsOfTheReader() {
        assertEquals(
                "Judged after the jobs pump, rings, set to 240 psi.",
                AfterWorkPhrase.of(UnitSystem.SHOP, List.of("pump", "rings"), OptionalDouble.of(240 * 6894.757293)));
        assertEquals(
                "Judged after the job pump.",
                AfterWorkPhrase.of(UnitSystem.SHOP, List.of("pump"), OptionalDouble.empty()));
        assertEquals(
                "Judged with no job done, set to 10.00 bar.",
                AfterWorkPhrase.of(UnitSystem.METRIC, List.of(), OptionalDouble.of(1e6)));
    }
}
