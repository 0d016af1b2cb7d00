package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.ReadyCircuits;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import org.junit.jupiter.api.Test;

/** At which duty, temperatures and set pressure a unit is swept or looked at. */
class SweptDutyTest {

    private static final Transmission UNIT = ReadyCircuits.read("crescent-four").unit();

    private static SweptDuty swept(String... words) {
        return Options.of(new SweptDuty(), words);
    }

    private static String refused(SweptDuty swept) {
        return assertThrows(WrongInputException.class, () -> swept.duties(UNIT)).getMessage();
    }

    @Test
    void withoutAnOptionTheFirstDrivingConditionIsTakenAsItIs() {
        assertEquals(List.of(UNIT.duties().get(0)), swept().duties(UNIT));
        assertFalse(swept().warm());
    }

    @Test
    void eachTemperatureIsADutyOfItsOwnAndAskedTwiceIsAskedOnce() {
        SweptDuty two = swept("--temperature", "80degC", "--temperature", "110degC", "--temperature", "176degF");
        List<DutyPoint> duties = two.duties(UNIT);
        assertEquals(2, duties.size());
        assertEquals(353.15, duties.get(0).temperatures().get("sump"), 1e-9);
        assertEquals(383.15, duties.get(1).temperatures().get("sump"), 1e-9);
        assertTrue(two.warm());
        assertFalse(swept("--temperature", "80degC").warm());
    }

    @Test
    void dutyAndRangeAreTakenByName() {
        DutyPoint last = UNIT.duties().get(UNIT.duties().size() - 1);
        String range = UNIT.ranges().get(0).name();
        DutyPoint asked =
                swept("--duty", last.name(), "--range", range).duties(UNIT).get(0);
        assertEquals(range, asked.range());
        assertEquals(last.speed(), asked.speed());
        assertTrue(refused(swept("--duty", "nosuch")).contains("has no driving condition nosuch"));
        assertTrue(refused(swept("--range", "nosuch")).contains("has no range nosuch"));
    }

    @Test
    void temperaturesBeyondThoseOfAFileAreRefused() {
        assertTrue(refused(swept("--temperature", "-80degC")).contains("between -60 and 250 degC"));
        assertTrue(refused(swept("--temperature", "300degC")).contains("allowed is -60 to 250 degC"));
        assertEquals(1, swept("--temperature", "250degC").duties(UNIT).size(), "the limit itself is allowed");
        assertEquals(1, swept("--temperature", "-60degC").duties(UNIT).size(), "the limit itself is allowed");
    }

    @Test
    void anotherSetPressureIsAskedOnlyOfAUnitThatIsCommanded() {
        assertTrue(Options.of(new AskedPressure()).pressure().isEmpty());
        NewPressure some =
                Options.of(new AskedPressure(), "--set", "15bar").pressure().orElseThrow();
        assertEquals(15e5, some.pressure(), 1e-6);
        Adjustable fresh = ReadyCircuits.read("shuttle-five").adjustable("fresh");
        assertEquals(15e5, some.of(fresh).unit().highestSet(), 1e3);
        Adjustable bench = ReadyCircuits.read("valve-body-bench").adjustable("fresh");
        assertThrows(hotidle.transmission.NotCommandedException.class, () -> some.of(bench));
    }

    @Test
    void aSpringThatWouldHaveToPullIsRefused() {
        Adjustable fresh = ReadyCircuits.read("crescent-four").adjustable("fresh");
        NewPressure low =
                Options.of(new AskedPressure(), "--set", "60psi").pressure().orElseThrow();
        String why =
                assertThrows(WrongInputException.class, () -> low.of(fresh)).getMessage();
        assertTrue(
                why.contains("the line cannot be set below 83 psi (5.7 bar): pilot and throttle pressure hold that"),
                why);
        assertTrue(why.endsWith("\nmend: write 83psi or more"), why);
        NewPressure least =
                Options.of(new AskedPressure(), "--set", "84psi").pressure().orElseThrow();
        assertEquals(84 * 6894.757, least.of(fresh).unit().highestSet(), 2e3);
    }

    @Test
    void setPressuresBeyondThoseOfAFileAreRefused() {
        assertTrue(refusedPressure("0.5psi").contains("between 1 and 5000 psi"));
        assertTrue(refusedPressure("6000psi").contains("allowed is 1 to 5000 psi"));
    }

    private static String refusedPressure(String written) {
        AskedPressure asked = Options.of(new AskedPressure(), "--set", written);
        return assertThrows(WrongInputException.class, asked::pressure).getMessage();
    }
}
