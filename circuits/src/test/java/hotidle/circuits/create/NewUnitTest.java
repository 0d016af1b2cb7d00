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
import hotidle.part.PumpChamber;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.QuotedSet;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** A unit of one's own made from a ready one. */
class NewUnitTest {

    private static final double PSI = 6894.757293168361;

    private static final UnitAnswers LARGER = new UnitAnswers(
            OptionalDouble.of(27e-6),
            OptionalDouble.of(500),
            OptionalDouble.of(200 * PSI),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.of(25 * PSI),
            OptionalDouble.of(10e-3 / 60),
            OptionalDouble.of(1.6e-3 / 60),
            OptionalDouble.of(12e-3),
            OptionalInt.of(24),
            List.of(),
            Map.of());

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
        UnitAnswers answers = new UnitAnswers(
                OptionalDouble.of(30e-6),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(100 * PSI),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                List.of(),
                Map.of());
        Transmission own = sound(made("vane-six", answers)).unit();
        PumpChamber pump =
                (PumpChamber) own.network().part("pump").orElseThrow().part();
        assertEquals(30e-6, pump.displacement(), 1e-3 * 30e-6);
        assertEquals(100 * PSI, QuotedSet.noTorque(own), PSI);
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
        return new UnitAnswers(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                List.of(kept),
                Map.of());
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
        return new UnitAnswers(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(set * PSI),
                idle > 0 ? OptionalDouble.of(idle * PSI) : OptionalDouble.empty(),
                reverse > 0 ? OptionalDouble.of(reverse * PSI) : OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                List.of(),
                Map.of());
    }

    /** Preload and boost area together: neither alone gives both. */
    @Test
    void springAndBoostAreaOfAThrottleValveGiveTheSetAndTheIdlePressureAskedFor() {
        Transmission own = sound(made("crescent-four", pressures(170, 80, 0))).unit();
        assertEquals(170 * PSI, QuotedSet.now(own), 0.1 * PSI);
        assertEquals(80 * PSI, QuotedSet.noTorque(own), 0.1 * PSI);
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
        assertTrue(
                low.startsWith("idle-pressure: it must lie between what the throttle valve holds without a spring, "),
                low);
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
        return new UnitAnswers(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(cooler / 6e4),
                OptionalDouble.of(lubrication / 6e4),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                List.of(),
                Map.of());
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
