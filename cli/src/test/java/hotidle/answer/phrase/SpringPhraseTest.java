package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.transmission.SetPressure;
import hotidle.transmission.SpringChange.Lever;
import hotidle.transmission.SpringChange.SpringObstacle;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is said of the regulator's spring. */
class SpringPhraseTest {

    @Test
    void theFirstLineSaysWhatIsSetAndWhatIsWanted() {
        assertEquals(
                "worn: set pressure 10.00 bar now; each of these alone would make it 16.50 bar:",
                new SpringPhrase(UnitSystem.METRIC).asked("worn", 10e5, 16.5e5, true));
        assertEquals(
                "worn: set pressure (full torque) 10.00 bar now; each of these alone would make it 16.50 bar:",
                new SpringPhrase(UnitSystem.METRIC).asked("worn", 10e5, 16.5e5, false));
    }

    @Test
    void coilsThatTouchBeforeTheStopAreLoud() {
        SpringPhrase metric = new SpringPhrase(UnitSystem.METRIC);
        assertEquals("no: SOLID 1.20 mm before it", metric.room(OptionalDouble.of(-1.2e-3)));
        assertEquals("free, 0.80 mm left at the stop", metric.room(OptionalDouble.of(0.8e-3)));
        assertEquals("not known", metric.room(OptionalDouble.empty()));
    }

    @Test
    void everyObstacleHasItsOwnReason() {
        Set<String> said = new HashSet<>();
        for (SpringObstacle obstacle : SpringObstacle.values()) {
            assertTrue(SpringPhrase.obstacle(obstacle).startsWith("no: "));
            said.add(SpringPhrase.obstacle(obstacle));
        }
        assertEquals(SpringObstacle.values().length, said.size());
    }

    @Test
    void aBoostIsNamedByItsSignalAndALowIdleByWhatLeavesItLow() {
        assertEquals("boost diameter, throttle", SpringPhrase.name(Lever.BOOST, "throttle"));
        assertEquals("boost on throttle", SpringPhrase.column(Lever.BOOST, "throttle"));
        assertEquals("shim", SpringPhrase.column(Lever.SHIM, ""));
        assertEquals(
                "At hot-idle the pump cannot hold what is asked of it with preload, shim: LOW.",
                SpringPhrase.low("hot-idle", List.of("preload", "shim")));
        assertEquals("shim at stall, climb", SpringPhrase.at("shim", List.of("stall", "climb")));
    }

    @Test
    void wherePumpOilIsMissingNoSpringIsRecommendedAndTheJobsComeFirst() {
        assertEquals(
                "worn: NO SPRING DOES IT. The pump cannot hold 240 psi at hot-idle, whatever it is set to; first the jobs:"
                        + " hotidle leaks shuttle-five --build worn --by job --set 240psi.",
                new SpringPhrase(UnitSystem.SHOP)
                        .pumpCannot(
                                "worn",
                                "hot-idle",
                                240 * SetPressure.PSI,
                                SpringCommands.leaks("shuttle-five", "worn", 240 * SetPressure.PSI)));
    }

    @Test
    void lessPressureIsCautionedForWhatHoldsLess() {
        assertTrue(SpringPhrase.caution(true).endsWith("raised pressure loads case, pump and converter."));
        assertTrue(SpringPhrase.caution(false).endsWith("with less pressure clutches and lockup hold less."));
        assertEquals("add 1 mm", SpringPhrase.shim(true, "1 mm"));
        assertEquals("take out 1 mm", SpringPhrase.shim(false, "1 mm"));
        assertTrue(SpringPhrase.shimOut("1 mm").startsWith("Shim: take out 1 mm of shims."));
    }

    @Test
    void whereSignalsHoldMoreThePressureToAskForIsNamed() {
        assertEquals(
                "Signals alone hold 130 psi at full torque. For less than the 74 psi that the"
                        + " gauge reads at hot-idle now, give a --set between 130 psi and 190 psi: a softer spring takes as much"
                        + " off.",
                new SpringPhrase(UnitSystem.SHOP)
                        .tooLow(130 * SetPressure.PSI, 190 * SetPressure.PSI, "hot-idle", 74 * SetPressure.PSI));
    }

    @Test
    void theWindowThatIsTriedBeginsWhereASpringCanSetTheLine() {
        assertEquals(
                "hotidle window shuttle-five --build fresh --set-by spring --try 100..400/20psi",
                SpringCommands.window("shuttle-five", "fresh", 89.6 * SetPressure.PSI, 240 * SetPressure.PSI));
        assertEquals(
                "hotidle window own.yaml --sheet b2.csv --build b2 --set-by spring",
                SpringCommands.window("own.yaml --sheet b2.csv", "b2", 12 * SetPressure.PSI, 240 * SetPressure.PSI));
        assertEquals(
                "hotidle window own.yaml --build new --set-by spring --try 60..440/20psi",
                SpringCommands.window("own.yaml", "new", 12 * SetPressure.PSI, 430 * SetPressure.PSI));
    }

    @Test
    void theCommandAtIdleIsToldAndWhereOtherCommandsAskAnother() {
        SpringPhrase shop = new SpringPhrase(UnitSystem.SHOP);
        String alike = "A spring moves the command everywhere: hot-idle from 79 psi to 189 psi.";
        assertEquals(alike, shop.idleAlike("hot-idle", 79 * SetPressure.PSI, 189 * SetPressure.PSI));
        assertEquals(
                alike + " compare and margins --set 300psi scale the command too (hot-idle 130 psi): give them --set-by"
                        + " spring for this spring.",
                shop.idleOther(
                        "hot-idle",
                        79 * SetPressure.PSI,
                        189 * SetPressure.PSI,
                        300 * SetPressure.PSI,
                        130 * SetPressure.PSI));
    }

    @Test
    void reverseIsTheHighestOnlyWhereASolenoidSaysIt() {
        assertEquals(SpringPhrase.REVERSE, SpringPhrase.reverse(true, List.of("backing-up")));
        assertEquals("reverse at backing-up", SpringPhrase.reverse(false, List.of("backing-up")));
        assertEquals("reverse, no throttle", SpringPhrase.reverse(false, List.of()));
        assertEquals("worn with that shim", SpringPhrase.withThat("worn", "shim"));
    }
}
