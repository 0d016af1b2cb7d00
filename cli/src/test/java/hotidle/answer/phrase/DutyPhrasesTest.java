package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.part.Setting;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What stands over a duty's table, beside its flows, and where nothing was found. */
class DutyPhrasesTest {

    @Test
    void whereBuildsDifferInEngineTorqueEachHasItsOwn() {
        Map<String, Double> torques = new LinkedHashMap<>();
        torques.put("worn", 400.0);
        torques.put("tuned", 480.0);
        assertEquals("400 N.m in worn, 480 N.m in tuned", DutyPhrase.torques(UnitSystem.METRIC, torques));
    }

    @Test
    void aDutyWithACommandNamesLockupAndTorque() {
        assertEquals(
                "stall (5 s at most): 2100 rpm, first, lockup off, sump 110 degC, engine torque 400 N.m",
                DutyPhrase.commanded(UnitSystem.METRIC, "stall (5 s at most)", 35, "first", "off", 383.15, "400 N.m"));
        assertEquals(
                "stall: 2100 rpm, first, lockup off, sump 230 degF, engine torque 295 lbf.ft",
                DutyPhrase.commanded(UnitSystem.SHOP, "stall", 35, "first", "off", 383.15, "295 lbf.ft"));
    }

    @Test
    void aDutyWithoutACommandHasNeither() {
        assertEquals(
                "slow: 400 rpm, bench, sump 40 degC",
                DutyPhrase.uncommanded(UnitSystem.SI, "slow", 400 / 60.0, "bench", 313.15));
        assertEquals(
                "slow: 400 rpm, bench, sump 104 degF",
                DutyPhrase.uncommanded(UnitSystem.SHOP, "slow", 400 / 60.0, "bench", 313.15));
    }

    /** The words of a circuit file, so that what is read can be written. */
    @Test
    void theLockupIsInTheWordOfACircuitFile() {
        assertEquals(
                List.of("off", "slipping", "on"),
                Stream.of(Setting.Lockup.values()).map(LockupPhrase::of).toList());
    }

    @Test
    void whatIsNotSolvedNamesItsCulpritAndEveryWayTried() {
        assertEquals(
                "not solved: regulator does not settle (imbalance 3.0e-02 of its scale) after Newton, time steps",
                UnsolvedPhrase.why("regulator", 0.03, List.of("Newton", "time steps")));
        assertEquals(
                "worn: no steady state was found at stall, so nothing is known there.",
                UnsolvedPhrase.nothingKnown("worn", "stall"));
    }

    @Test
    void flowsThatGrowOnTheirWayAreSaidToBeNoLeak() {
        assertTrue(FlowsPhrase.VOLUMES.contains("its air expands as pressure falls"));
        assertTrue(FlowsPhrase.VOLUMES.contains("that is no leak"));
        assertTrue(FlowsPhrase.UNCOMMANDED.endsWith(FlowsPhrase.VOLUMES), "a bench is told the same and more");
    }

    @Test
    void beforeAnyTestOnTheVehicleComesTheCaution() {
        String said = Caution.WHOLE.replaceAll("\\s+", " ");
        for (String care : List.of(
                "An estimate, not an approval.",
                "wheels blocked",
                "A stall test lasts 5 s at most",
                "none at all if idle pressure is low",
                "local codes come first")) {
            assertTrue(said.contains(care), care);
        }
        assertTrue(Caution.WHOLE.lines().allMatch(line -> line.length() <= 100));
        assertTrue(!Caution.WHOLE.endsWith("\n"));
    }
}
