package hotidle.circuits.create;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.circuits.ReadCircuit;
import hotidle.newton.SteadySolver;
import hotidle.part.Bushing;
import hotidle.part.Clutch;
import hotidle.part.Lining;
import hotidle.part.PumpChamber;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.QuotedSet;
import hotidle.transmission.Transmission;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A unit of one's own made from a ready one. */
class NewUnitTest {

    private static final double PSI = 6894.757293168361;

    private static final UnitAnswers LARGER = UnitAnswers.of(Map.of(
            "displacement",
            27e-6,
            "engine-torque",
            500.0,
            "set-pressure",
            200 * PSI,
            "converter-feed",
            25 * PSI,
            "cooler-flow",
            10e-3 / 60,
            "lubrication",
            1.6e-3 / 60,
            "bore-diameter",
            12e-3,
            "bores",
            24.0));

    private static String made(String like, UnitAnswers answers) {
        return NewUnit.quick("own", ready(like), answers);
    }

    private static ReadyUnit ready(String like) {
        return ReadyUnit.of(like, Library.text(like).orElseThrow());
    }

    private static DescribedCircuit sound(String text) {
        ReadCircuit read = CircuitReader.read(text, "own.yaml");
        assertTrue(read.circuit().isPresent(), read.problems() + "\n" + text);
        return read.circuit().get();
    }

    private static double line(Transmission unit) {
        return new SteadySolver(unit.network())
                .solve(unit.conditions(unit.duty("hot-idle").orElseThrow()), Optional.empty())
                .state()
                .orElseThrow()
                .pressure("line");
    }

    @Test
    void withoutAnswersItIsTheReadyUnitItselfWithEveryNumberAssumed() {
        for (String like : List.of("crescent-four", "vane-six", "shuttle-five")) {
            Transmission ready = sound(Library.text(like).orElseThrow()).unit();
            Transmission own = sound(made(like, UnitAnswers.NONE)).unit();
            assertEquals(line(ready), line(own), 1e-6 * line(ready), like);
            assertTrue(own.assumed().size() > 100, own.assumed().size() + " assumed");
        }
    }

    @Test
    void itIsShortEnoughToRead() {
        assertTrue(made("crescent-four", LARGER).lines().count() <= 120, made("crescent-four", LARGER));
        assertTrue(made("vane-six", LARGER).lines().count() <= 120);
        assertTrue(made("shuttle-five", LARGER).lines().count() <= 200);
    }

    @Test
    void whatWasAnsweredIsThereAndIsNotAssumed() {
        Transmission own = sound(made("crescent-four", LARGER)).unit();
        assertEquals(200 * PSI, QuotedSet.now(own), 0.002 * 200 * PSI);
        PumpChamber pump =
                (PumpChamber) own.network().part("pump").orElseThrow().part();
        assertEquals(27e-6, pump.displacement(), 1e-9);
        assertFalse(own.assumed().contains("pump.displacement"));
        assertTrue(own.assumed().contains("pump.width"));
        assertEquals(
                500,
                own.duties().stream()
                        .mapToDouble(duty -> duty.engineTorque())
                        .max()
                        .orElseThrow(),
                0.1);
    }

    @Test
    void aVanePumpScalesToTheDisplacementAskedForByItsLengths() {
        UnitAnswers answers = UnitAnswers.of(Map.of("displacement", 30e-6, "idle-pressure", 100 * PSI));
        Transmission own = sound(made("vane-six", answers)).unit();
        PumpChamber pump =
                (PumpChamber) own.network().part("pump").orElseThrow().part();
        assertEquals(30e-6, pump.displacement(), 1e-3 * 30e-6);
        assertEquals(100 * PSI, line(own), 0.1 * PSI);
    }

    @Test
    void rangesThatAreLeftOutTakeTheirClutchesWithThem() {
        UnitAnswers answers = ranges("reverse", "first", "second");
        Transmission own = sound(made("crescent-four", answers)).unit();
        assertTrue(own.network().part("overdrive-clutch").isEmpty());
        assertTrue(own.network().part("overdrive-rings").isEmpty());
        assertTrue(own.network().part("direct-clutch").isPresent(), "reverse needs it");
        Transmission five = sound(made("shuttle-five", ranges("reverse", "first", "second", "third")))
                .unit();
        assertTrue(five.network().nodes().stream().noneMatch(node -> node.name().startsWith("overdrive")));
        assertTrue(line(five) > 0);
    }

    /** Cruising in sixth becomes cruising in the highest range that is left, climbing in third the next lower one. */
    @Test
    void whatWasDrivenInARangeThatIsGoneIsDrivenInTheNextLowerOne() {
        Transmission four = sound(made("vane-six", ranges("reverse", "first", "second", "fourth")))
                .unit();
        assertEquals("fourth", four.duty("road-cruise").orElseThrow().range());
        assertEquals("second", four.duty("climbing").orElseThrow().range());
        assertEquals("first", four.duty("hot-idle").orElseThrow().range());
    }

    private static UnitAnswers ranges(String... kept) {
        return new UnitAnswers(Map.of(), List.of(kept), Map.of(), Map.of());
    }

    /** What an invented shaft bears would else be judged as if it were the user's. */
    @Test
    void noStrengthOfTheReadyUnitIsTakenOver() {
        for (String like : List.of("crescent-four", "shuttle-five")) {
            Transmission own = sound(made(like, LARGER)).unit();
            assertTrue(own.gears().isPresent(), like);
            assertTrue(
                    own.gears().get().links().isEmpty(),
                    own.gears().get().links().toString());
        }
    }

    @Test
    void anAnswerThatCannotBeTakenSaysWhatCan() {
        UnitAnswers.WrongAnswerException wrong =
                assertThrows(UnitAnswers.WrongAnswerException.class, () -> made("crescent-four", ranges("ninth")));
        assertTrue(wrong.getMessage().contains("it has reverse, first, second, third, fourth"), wrong.getMessage());
    }

    @Test
    void theFileSaysWhichAssumedSizesToMeasureFirst() {
        String text = NewUnit.of("own", ready("crescent-four"), LARGER).text();
        assertTrue(text.contains("# Measure first"), text);
        assertTrue(text.lines().count() <= 123, text.lines().count() + " lines");
    }

    private static UnitAnswers pressures(double set, double idle, double reverse) {
        Map<String, Double> numbers = new HashMap<>(Map.of("set-pressure", set * PSI));
        if (idle > 0) {
            numbers.put("idle-pressure", idle * PSI);
        }
        if (reverse > 0) {
            numbers.put("reverse-pressure", reverse * PSI);
        }
        return UnitAnswers.of(numbers);
    }

    /** Preload and boost area together: neither alone gives both. */
    @Test
    void springAndBoostAreaOfAThrottleValveGiveTheSetAndTheIdlePressureAskedFor() {
        Transmission own = sound(made("crescent-four", pressures(170, 80, 0))).unit();
        assertEquals(170 * PSI, QuotedSet.now(own), 0.1 * PSI);
        assertEquals(80 * PSI, line(own), 0.1 * PSI);
    }

    /** Whatever the lubrication takes beside it, and whether a solenoid or a throttle valve commands the line. */
    @Test
    void aGaugeAtHotIdleReadsWhatWasAskedForAndTheSetPressureStays() {
        for (String like : List.of("crescent-four", "vane-six", "shuttle-five")) {
            Map<String, Double> numbers =
                    new HashMap<>(Map.of("idle-pressure", 70 * PSI, "set-pressure", 180 * PSI, "idle-speed", 10.0));
            if (like.equals("vane-six")) {
                numbers.put("lubrication", 2e-3 / 60);
            }
            UnitAnswers answers = UnitAnswers.of(numbers);
            Transmission own = sound(made(like, answers)).unit();
            assertEquals(70 * PSI, line(own), 0.1 * PSI, like);
            assertEquals(180 * PSI, QuotedSet.now(own), 0.2 * PSI, like);
            assertEquals(10, own.duty("hot-idle").orElseThrow().speed(), 1e-9, like);
            assertFalse(own.assumed().contains("hot-idle.speed"), own.assumed().toString());
        }
    }

    /** 62 psi of 200: below what the ready unit's spring would hold alone. */
    @Test
    void aSpringThatWouldHoldMoreThanTheIdlePressureIsSoftenedAndTablesStillAgreeWithIt() {
        ReadCircuit read = CircuitReader.read(made("vane-six", pressures(200, 62, 0)), "own.yaml");
        assertTrue(read.problems().isEmpty(), read.problems().toString());
        Transmission own = read.circuit().orElseThrow().unit();
        assertEquals(62 * PSI, line(own), 0.1 * PSI);
        assertEquals(200 * PSI, QuotedSet.now(own), 0.2 * PSI);
    }

    /** Twice as far from its bore, the hub leaks more; its bushing's bore is no assumption any more. */
    @Test
    void hubAndItsClearanceAreThoseThatWereAskedFor() {
        UnitAnswers answers = UnitAnswers.of(Map.of("hub-diameter", 47e-3, "hub-clearance", 0.12e-3));
        Transmission own = sound(made("crescent-four", answers)).unit();
        Bushing bushing =
                (Bushing) own.network().part("hub-bushing").orElseThrow().part();
        assertEquals(47e-3, bushing.fit().inner(), 1e-9);
        assertEquals(0.12e-3, bushing.fit().outer() - bushing.fit().inner(), 1e-9);
        assertFalse(own.assumed().contains("hub-bushing.hub"));
        assertFalse(own.assumed().contains("hub-bushing.bore"), own.assumed().toString());
        assertTrue(wrong("crescent-four", UnitAnswers.of(Map.of("hub-clearance", 3e-3)))
                .startsWith("hub-clearance: a bushing of its hub runs with 0.43 mm (0.017 in) at most"));
        assertTrue(wrong("vane-six", UnitAnswers.of(Map.of("hub-diameter", 47e-3)))
                .contains("vane-six has no bushing on the pump's hub"));
    }

    private static UnitAnswers faces(int count, OptionalDouble radius, Map<String, Double> areas) {
        return new UnitAnswers(
                Map.of(), List.of(), areas, Map.of("forward-clutch", new UnitAnswers.Faces(count, radius)));
    }

    private static Clutch clutch(UnitAnswers answers) {
        return (Clutch) sound(made("crescent-four", answers))
                .unit()
                .network()
                .part("forward-clutch")
                .orElseThrow()
                .part();
    }

    /** Torque is as faces times mean radius times piston area: where the area is not known, the clutch carries as much as before. */
    @Test
    void moreFacesOfAClutchNeedASmallerPistonForTheSameTorque() {
        Clutch ten = clutch(UnitAnswers.NONE);
        Clutch twelve = clutch(faces(12, OptionalDouble.empty(), Map.of()));
        assertEquals(
                ten.piston().area() * 10 / 12,
                twelve.piston().area(),
                1e-3 * ten.piston().area());
        Clutch wide = clutch(faces(12, OptionalDouble.of(0.0825), Map.of()));
        assertEquals(
                ten.piston().area() * 10 / 12 * 0.06875 / 0.0825,
                wide.piston().area(),
                1e-3 * ten.piston().area());
        Clutch known = clutch(faces(12, OptionalDouble.empty(), Map.of("forward-clutch", 140e-4)));
        assertEquals(140e-4, known.piston().area(), 1e-9);
        assertTrue(wrong(
                        "crescent-four",
                        new UnitAnswers(
                                Map.of(),
                                List.of(),
                                Map.of(),
                                Map.of("forward-rings", new UnitAnswers.Faces(2, OptionalDouble.empty()))))
                .startsWith("faces: forward-rings is no clutch of it; those are forward-clutch"));
    }

    /** In its place, on its oil: the ranges do not know the difference. */
    @Test
    void aBandOfWhichFacesAreAskedForBecomesAPlateClutchThatHoldsAsMuch() {
        for (OptionalDouble radius : List.of(OptionalDouble.empty(), OptionalDouble.of(0.068))) {
            Transmission ready = sound(made("crescent-four", UnitAnswers.NONE)).unit();
            String text = made(
                    "crescent-four",
                    new UnitAnswers(
                            Map.of(),
                            List.of(),
                            Map.of(),
                            Map.of("intermediate-band", new UnitAnswers.Faces(8, radius))));
            Transmission own = sound(text).unit();
            Clutch band = (Clutch)
                    ready.network().part("intermediate-band").orElseThrow().part();
            Clutch plates = (Clutch)
                    own.network().part("intermediate-band").orElseThrow().part();
            assertTrue(plates.grip() instanceof Lining, plates.toString());
            for (double pressure : new double[] {3e5, 6e5, 12e5}) {
                assertEquals(torque(band, pressure), torque(plates, pressure), 5e-3 * torque(band, 12e5));
            }
            assertEquals(radius.orElse(0.075), plates.grip().torqueArm(false) / (0.12 * 8), 1e-4);
            assertTrue(
                    own.assumed().contains("intermediate-band.piston-area"),
                    own.assumed().toString());
            assertTrue(own.assumed().contains("intermediate-band.lining-outer-diameter"));
            assertFalse(own.assumed().contains("intermediate-band.surfaces"));
            assertTrue(
                    text.contains("a band among them is a plate clutch here that holds as much at each pressure"),
                    text);
        }
    }

    private static double torque(Clutch clutch, double pressure) {
        return clutch.grip().torqueArm(false)
                * (pressure * clutch.piston().area() - clutch.piston().returnForce());
    }

    /** The converter is fed from the line, the lubrication by the pump. */
    @Test
    void aNeedThatNoSuchUnitCouldMeetIsRefused() {
        for (String like : List.of("crescent-four", "vane-six", "shuttle-five")) {
            assertTrue(
                    wrong(like, UnitAnswers.of(Map.of("converter-feed", 200 * PSI)))
                            .startsWith(
                                    "converter-feed: the line feeds the converter, and without engine torque the line is set to "));
            assertTrue(wrong(like, UnitAnswers.of(Map.of("lubrication", 1e-3)))
                    .startsWith("lubrication: at idle speed the pump moves "));
        }
        assertTrue(wrong("vane-six", UnitAnswers.of(Map.of("idle-speed", 40.0)))
                .startsWith("idle-speed: it must be below 1800 rpm"));
    }

    /** At full throttle in crescent-four, whatever the throttle of its driving condition in reverse. */
    @Test
    void reverseHoldsWhatIsAskedForAndForwardStaysAsItWas() {
        for (String like : List.of("crescent-four", "shuttle-five")) {
            Transmission own = sound(made(like, pressures(160, 0, 230))).unit();
            assertEquals(160 * PSI, QuotedSet.now(own), 0.1 * PSI, like);
            DutyPoint back = own.duty("stall").orElseThrow().inRange("reverse");
            assertEquals(230 * PSI, own.setPressure(own.conditions(back)).orElseThrow(), 0.1 * PSI, like);
        }
    }

    @Test
    void aPressureThatNoSpringOrAreaGivesIsRefusedWithWhatItMustLieBetween() {
        String low = wrong("crescent-four", pressures(170, 5, 0));
        assertTrue(low.startsWith("idle-pressure: a gauge at hot-idle can read from 2"), low);
        String relief = wrong("crescent-four", pressures(170, 0, 2000));
        assertTrue(relief.contains("where the relief valve opens"), relief);
        String none = wrong("vane-six", pressures(170, 0, 200));
        assertTrue(none.startsWith("reverse-pressure: vane-six has no area of its regulator"), none);
    }

    private static String wrong(String like, UnitAnswers answers) {
        UnitAnswers.WrongAnswerException wrong = ready(like).wrong(answers).orElseThrow();
        return wrong.question() + ": " + wrong.getMessage();
    }

    private static UnitAnswers flows(double cooler, double lubrication) {
        return UnitAnswers.of(Map.of("cooler-flow", cooler / 6e4, "lubrication", lubrication / 6e4));
    }

    /** Nearly three times the lubrication behind a smaller cooler: what comes through it is shared by need. */
    @Test
    void everyBranchOfAScaledLubricationGetsWhatItNeeds() {
        for (String like : List.of("crescent-four", "vane-six", "shuttle-five")) {
            Transmission own = sound(made(like, flows(5.7, 3.03))).unit();
            Map<String, Double> ratios = LubricationFit.ratios(own);
            assertTrue(ratios.size() >= 3, like + ": " + ratios);
            ratios.forEach((branch, ratio) -> assertTrue(ratio > 1.1, like + ": " + branch + " gets " + ratio));
        }
    }

    @Test
    void whatIsAppliedIsToldByRange() {
        ReadyUnit four = ready("crescent-four");
        assertEquals(
                List.of("direct-clutch", "low-reverse-brake"),
                List.copyOf(four.applied().get("reverse")));
        assertEquals(4, four.pistons("clutch", List.of()).size());
        assertEquals(
                3,
                four.pistons("clutch", List.of("reverse", "first", "second", "third"))
                        .size());
        assertEquals(List.of("intermediate-band"), four.pistons("band", List.of()));
        assertTrue(ready("training-rig").cannot("idle-pressure").isPresent());
        assertTrue(four.cannot("idle-pressure").isEmpty());
    }
}
