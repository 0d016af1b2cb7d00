package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;

class LeaksCommandTest {

    private static final String[] WORN = {
        "leaks", "shuttle-five", "--build", "worn", "--speed", "400..2400/400rpm", "--steps", "4", "--full"
    };

    @Test
    void theWornUnitIsToldWhatToRepairFirstAndAfterHowManyItHolds() {
        Run run = Run.of(WORN);
        assertEquals(0, run.code(), run.err());
        for (String words : java.util.List.of(
                "The single size that wins most: regulator.bore",
                "The set pressure is held here after 4 repairs",
                "regulator.primary-bypass",
                "low-accumulator: piston in its bore",
                "<- held",
                "wheels blocked")) {
            assertTrue(run.out().contains(words), words + " is not in\n" + run.out());
        }
        assertTrue(run.out().lines().allMatch(line -> line.length() <= 120), "a line is too long to read");
        String said = run.out().replaceAll("\\s+", " ");
        for (String words : java.util.List.of(
                "5.34 gpm is lost (78 %): 3.39 gpm slips back inside the pump, 1.95 gpm leaks outside it. Besides, 0.90 gpm"
                        + " comes back to its inlet past the regulator",
                "Then still short of oil: ",
                "The shares add up to what the pump displaces.",
                ". hub-face.clearance ",
                "regulator.bore, lockup-valve.bore: each done alone leaves the lubrication LESS oil",
                "low-accumulator.bore (piston in its bore)")) {
            assertTrue(said.contains(words), words + " is not in\n" + run.out());
        }
    }

    /** Faces ground below new and a pocket sleeved tighter than new are no wear, so bringing them back is no repair. */
    @Test
    void whatIsTighterThanNewIsNotOfferedForRepair() {
        Run run = Run.of("leaks", "shuttle-five", "--build", "restored-raised", "--steps", "1");
        assertTrue(run.out().contains("Nothing: no fit is worn beyond new."), run.out());
    }

    /** A bench lets its oil out through holes that are there to let it out. */
    @Test
    void whatPassesADrilledHoleIsUsedAndNotLost() {
        Run run = Run.of("leaks", "training-rig", "--steps", "1", "--full");
        String said = run.out().replaceAll("\\s+", " ");
        assertTrue(
                said.contains("0.15 gpm is lost (12 %): 0.15 gpm slips back inside the pump, 0.00 gpm leaks"),
                run.out());
        assertTrue(said.contains("used 1.11 88 %"), run.out());
    }

    @Test
    void jsonHasEveryPathAndItsSumIsWhatThePumpDisplaces() throws Exception {
        String[] json = java.util.Arrays.copyOf(WORN, WORN.length + 2);
        json[WORN.length] = "--format";
        json[WORN.length + 1] = "json";
        JsonNode root = new ObjectMapper().readTree(Run.of(json).out());
        double displaced = root.at("/oil_budget/displaced_m3_s").doubleValue();
        double sum = 0;
        for (JsonNode path : root.at("/oil_budget/paths")) {
            sum += path.get("flow_m3_s").doubleValue();
        }
        assertEquals(displaced, sum, 1e-9 * displaced);
        assertEquals(2 * 20.0e-6 * 650 / 60, displaced, 0.01 * displaced);
        assertEquals(4, root.get("order").size());
        assertTrue(root.get("repairs").size() > 30);
        assertTrue(root.at("/builds/0/states/0/solved").booleanValue());
    }

    @Test
    void aUnitWithNothingWornIsToldSo() {
        Run run = Run.of("leaks", "shuttle-five", "--build", "fresh", "--format", "table", "--steps", "1");
        assertTrue(run.out().contains("Nothing: no fit is worn beyond new."), run.out());
        assertEquals(2, Run.of("leaks", "shuttle-five", "--build", "nowhere").code());
        assertEquals(2, Run.of("leaks", "shuttle-five", "--steps", "-1").code());
        Run csv = Run.of("leaks", "shuttle-five", "--duty", "road-cruise", "--format", "csv");
        assertTrue(csv.out().startsWith("kind,name,group or sizes,fate,gpm,share,line psi,lube gpm,onset rpm\n"));
    }

    /** The first screen says what to do before it says where the oil goes. */
    @Test
    void theFirstScreenBeginsWithTheRepairsThatHoldTheLine() {
        Run run = Run.of(java.util.Arrays.copyOf(WORN, WORN.length - 1));
        assertTrue(run.out().lines().count() <= 24, run.out());
        assertTrue(run.out().lines().allMatch(line -> line.length() <= 100), run.out());
        assertTrue(run.out().indexOf("after 4 repairs") < run.out().indexOf("loses most"), run.out());
        assertTrue(run.out().contains("IDLE PRESSURE IS LOW with worn"), run.out());
    }

    /** A higher set pressure asks more of the same pump: what held before is then not held. */
    @Test
    void anotherSetPressureIsJudgedWithoutAnotherFile() throws Exception {
        String[] plain = {"leaks", "crescent-four", "--build", "worn", "--steps", "0", "--format", "json"};
        String[] raised = java.util.Arrays.copyOf(plain, plain.length + 2);
        raised[plain.length] = "--set";
        raised[plain.length + 1] = "240psi";
        ObjectMapper json = new ObjectMapper();
        double before =
                json.readTree(Run.of(plain).out()).at("/before/set_pressure_pa").doubleValue();
        double after = json.readTree(Run.of(raised).out())
                .at("/before/set_pressure_pa")
                .doubleValue();
        assertTrue(after > 1.2 * before, before + " " + after);
        assertEquals(2, Run.of("leaks", "training-rig", "--set", "240psi").code(), "nothing commands its line");
    }

    @Test
    void jobsAreToldAsSetsWithTheirTimeAndWhatFailsAfterEach() throws Exception {
        Run run = Run.of(
                "leaks",
                "shuttle-five",
                "--build",
                "worn",
                "--by",
                "job",
                "--speed",
                "600..3600/3000rpm",
                "--format",
                "json");
        JsonNode root = new ObjectMapper().readTree(run.out());
        assertEquals("hours", root.get("counted_in").asText());
        assertEquals(root.get("jobs").size(), root.get("alone").size());
        assertTrue(root.at("/before/failing").size() > 0);
        assertEquals(0, root.at("/all/failing").size());
        assertTrue(root.at("/chosen/jobs").size() > 0);
        assertTrue(root.at("/chosen/least_headroom").doubleValue() >= 0);
    }
}
