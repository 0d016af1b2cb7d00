package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.ReadyCircuits;
import hotidle.transmission.NotCommandedException;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Options that went elsewhere, and options that do not go together. */
class MovedAndRefusedTest {

    private static String refused(org.junit.jupiter.api.function.Executable check) {
        return assertThrows(WrongInputException.class, check).getMessage();
    }

    @Test
    void anOptionThatBecameACommandSaysWhereItWent() {
        assertEquals(
                "hotidle: --sensitivity is a command of its own now\nmend: hotidle sensitivity CIRCUIT",
                refused(() -> MovedOption.refuse("--sensitivity", true, "hotidle sensitivity CIRCUIT")));
        assertDoesNotThrow(() -> MovedOption.refuse("--sensitivity", null, "hotidle sensitivity CIRCUIT"));
    }

    @Test
    void anOptionThatHasAnotherNameSaysIt() {
        assertEquals(
                "hotidle: --chart is called --plot now\nmend: write --plot",
                refused(() -> MovedOption.renamed("--chart", "a.svg", "--plot")));
        assertDoesNotThrow(() -> MovedOption.renamed("--chart", null, "--plot"));
    }

    @Test
    void windowVaryIsTheCommandMap() {
        assertTrue(refused(() ->
                        Options.of(new MovedToMap(), "--vary", "a.b=1..2mm").refuse())
                .contains("hotidle map CIRCUIT --vary PART.key=LOW..HIGHunit"));
        assertTrue(refused(() -> Options.of(new MovedToMap(), "--map", "a.svg").refuse())
                .endsWith(" --plot FILE"));
        assertDoesNotThrow(() -> Options.of(new MovedToMap()).refuse());
    }

    @Test
    void aFaultMakesAUnitOfAHandoutOnly() {
        FaultOption fault = Options.of(new FaultOption(), "--fault", "oil-aerated:8%");
        FaultOption none = Options.of(new FaultOption());
        LessonOptions lesson = Options.of(new LessonOptions(), "--lesson", "--seed", "4");
        LessonOptions report = Options.of(new LessonOptions());
        assertTrue(lesson.asked(fault));
        assertEquals(4, lesson.seed());
        assertFalse(report.asked(none));
        assertEquals(1, report.seed());
        assertTrue(refused(() -> report.asked(fault)).contains("mend: write --lesson too"));
    }

    @Test
    void setPressuresAreAtLeastTwoAndAboveZero() {
        assertEquals(3, SetPressures.of("100..200/50psi").size());
        for (String text : List.of("100psi", "0..100/50psi", "-50..50/50psi")) {
            assertTrue(refused(() -> SetPressures.of(text)).contains("at least two pressures above zero"), text);
        }
    }

    @Test
    void pressuresThatThrottlePressureAlreadyHoldsAreNotTried() {
        List<Transmission> crescent =
                List.of(ReadyCircuits.read("crescent-four").unit());
        List<Double> tried = SetPressures.of("60..160/20psi", crescent);
        double least = tried.get(0);
        assertTrue(
                SetPressure.lowest(crescent.get(0), SetPressure.By.COMMAND_AND_SPRING) <= least,
                "psi " + least / ReadyCircuits.PSI);
        assertEquals(83 * ReadyCircuits.PSI, least, 1, "what --set refuses is not tried either");
        assertEquals(
                List.of(100L, 120L, 140L, 160L),
                tried.stream()
                        .skip(1)
                        .map(one -> Math.round(one / ReadyCircuits.PSI))
                        .toList());
        assertTrue(refused(() -> SetPressures.of("20..80/20psi", crescent))
                .contains("throttle pressure alone holds 83 psi"));
        List<Transmission> piloted = List.of(ReadyCircuits.read("shuttle-five").unit());
        assertEquals(SetPressures.of("20..80/20psi"), SetPressures.of("20..80/20psi", piloted));
    }

    @Test
    void aWantedOptionThatIsNotGivenIsToldWithWhatItIs() {
        Run run = Run.of("shift", "shuttle-five");
        assertEquals(2, run.code());
        assertTrue(
                run.err().replaceAll("\\s+", " ").contains("mend: write --inertia INERTIA: moment of inertia"),
                run.err());
        Run air = Run.of("air", "shuttle-five");
        assertTrue(air.err().replaceAll("\\s+", " ").contains("; write LAND: the land that was tested"), air.err());
    }

    @Test
    void whereManyPressuresAreTriedNoneIsSet() {
        assertEquals(
                "hotidle: --set 100..200/50psi: sets a build to one pressure; here many are tried, which is called --try"
                        + "\nmend: write --try 100..200/50psi",
                refused(() ->
                        Options.of(new TriedNotSet(), "--set", "100..200/50psi").refuse()));
        assertTrue(refused(
                        () -> Options.of(new TriedNotSet(), "--set", "240psi").refuse())
                .endsWith("\nmend: what a build does at that pressure: hotidle margins CIRCUIT --set 240psi; which"
                        + " pressures hold: --try 60..400/20psi"));
        assertDoesNotThrow(() -> Options.of(new TriedNotSet()).refuse());
    }

    @Test
    void aBuildIsSetToOnePressure() {
        assertTrue(refused(() -> NewPressure.of("100..200/50psi", Options.of(new SetBy())))
                .endsWith("\nmend: write --set 240psi, for example, or --try 100..200/50psi there"));
    }

    @Test
    void whatASetPressureChangesIsOneOfTwoWords() {
        assertEquals("COMMAND_AND_SPRING", Options.of(new SetBy()).by().name());
        assertEquals(
                "SPRING", Options.of(new SetBy(), "--set-by", "spring").by().name());
        assertTrue(refused(() -> Options.of(new SetBy(), "--set-by", "shim").by())
                .endsWith("mend: write spring or command-and-spring"));
    }

    @Test
    void aBenchIsAskedForNoTorque() {
        assertTrue(assertThrows(
                                NotCommandedException.class,
                                () -> TorqueRun.check(
                                        ReadyCircuits.read("valve-body-bench").unit(),
                                        Options.of(new SetBy()),
                                        1e6,
                                        "--try 10..20/5bar"))
                        .getMessage()
                        .length()
                > 0);
    }

    @Test
    void aDrivingConditionShownIsOneOfTheCircuit() {
        Transmission unit = ReadyCircuits.read("crescent-four").unit();
        String first = unit.duties().get(0).name();
        String second = unit.duties().get(1).name();
        assertEquals(
                unit.duties().size(), Options.of(new ShownDuties()).of(unit).size());
        assertEquals(
                List.of(first, second),
                Options.of(new ShownDuties(), "--duty", second, "--duty", first).of(unit),
                "in the order of the circuit");
        assertTrue(refused(() -> Options.of(new ShownDuties(), "--duty", "none").of(unit))
                .contains("has no driving condition none"));
    }
}
