package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.transmission.Job;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which jobs a stage takes. */
class StageJobsTest {

    private static final DescribedCircuit CIRCUIT = CircuitReader.read(
                    Library.text("shuttle-five").orElseThrow() + """
                      pump-only:
                        on: worn
                        changes:
                          "*ary.face-clearance": {to: new, because: faces ground}
                          "*ary.tip-clearance": {to: new, because: pockets sleeved}
                          "*ary.orifice-slip-area": {to: 0.5 mm2, because: new gears}
                          pump-cover.feeler: {to: new, because: machined flat}
                          regulator.bore: {to: new, because: sleeved}
                          low-clutch.surfaces: {to: "20", because: two more}
                    """, "x.yaml")
            .circuit()
            .orElseThrow();

    private static StageJobs of(String before, String stage) {
        return StageJobs.of(CIRCUIT.workshop(before).orElseThrow(), CIRCUIT.unit(stage));
    }

    private static List<String> names(StageJobs jobs) {
        return jobs.jobs().stream().map(Job::name).toList();
    }

    @Test
    void aRestoredUnitTakesEveryJobAndItsHoursAddUp() {
        StageJobs jobs = of("worn", "restored");
        assertEquals(List.of("pump", "hub-bushed", "regulator", "valve-body", "plate", "rings", "seals"), names(jobs));
        assertEquals(20, jobs.hours().orElseThrow(), 1e-9);
        assertTrue(jobs.price().isEmpty());
        assertEquals(List.of(), jobs.links());
    }

    @Test
    void aPumpAloneTakesItsJobAndWhatNoJobSaysIsNamed() {
        StageJobs jobs = of("worn", "pump-only");
        assertEquals(List.of("pump", "regulator"), names(jobs));
        assertEquals(List.of("low-clutch"), jobs.parts());
    }

    @Test
    void anotherShaftIsNamed() {
        StageJobs jobs = of("restored-raised", "restored-strong-shaft");
        assertEquals(List.of(), names(jobs));
        assertEquals(List.of("input-shaft"), jobs.links());
        assertEquals(List.of(), jobs.parts());
    }
}
