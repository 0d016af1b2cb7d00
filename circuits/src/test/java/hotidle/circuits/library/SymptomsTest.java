package hotidle.circuits.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Figures;
import hotidle.assess.Margin;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.part.Bushing;
import hotidle.part.Cooler;
import hotidle.part.OwnState;
import hotidle.result.Solution;
import hotidle.study.FrictionBand;
import hotidle.study.HeldLine;
import hotidle.study.Judgement;
import hotidle.study.SpeedSweep;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * What a tech sees on the gauge follows from the fault: one fault at a time in the otherwise new unit, see symptoms.yaml.
 * One table of symptoms, a row a test, hence the length.
 *
 * <p>What a steady model of this unit does not show, and why:
 * <ul>
 *   <li>Delayed engagement after standing: oil drains back while nothing turns, and the delay is the time to fill up again. Both
 *       are changes in time; a steady state has none.
 *   <li>Buzzing and a swinging needle: a motion. Only the band within which friction lets the spool stand is steady.
 *   <li>A check valve that leaks back into the second chamber, as a cause of low pressure at hot idle: the regulator unloads that
 *       chamber only with oil to spare, so the leak makes it unload later and leaves the line where it was.
 *   <li>A blocked filter as a cause of low pressure that follows speed: what the bypass gives back does not pass the filter, so
 *       that a starved pump draws the same oil at every speed. The line is low, but flat. Air drawn in at a leak of the suction
 *       side can only be given as air in the oil.
 *   <li>A broken spring as such a cause: here pilot pressure still holds part of the line, so that it is low, but flat.
 *   <li>A second chamber that is never unloaded as a cause of pressure that rises with speed: the bypass takes that oil too. It
 *       shows as power.
 *   <li>A stuck boost valve and a leaking boost area in reverse: the regulator has its pilot on a land of its own, and reverse is
 *       raised by draining an area, not by feeding one.
 *   <li>A hub burnt for running out of line, or for a blocked oil hole: the film is that of a shaft parallel to its bore, fed
 *       all round.
 * </ul>
 */
class SymptomsTest {

    private static final double PSI = 6894.757293168361;
    private static final double LITRE_A_MINUTE = 1e-3 / 60;

    /** A tap this far below the line points to a leak in its circuit (common practice). */
    private static final double LEAKY = 15 * PSI;

    /** A difference that nobody reads off a gauge. */
    private static final double UNSEEN = PSI;

    /** Speeds at which a gauge is read [rpm]. */
    private static final List<Integer> READ = List.of(500, 650, 1000, 1500, 2000, 2500, 3000, 3500, 4000);

    private static final DescribedCircuit CIRCUIT = read(text());
    private static final Map<String, SpeedSweep> SWEEPS = new HashMap<>();

    private static String text() {
        try {
            return Files.readString(Path.of("src/test/resources/hotidle/circuits/symptoms.yaml"));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static DescribedCircuit read(String text) {
        return CircuitReader.read(text, "symptoms.yaml").circuit().orElseThrow();
    }

    private static DutyPoint in(Transmission unit, String range) {
        DutyPoint idle = unit.duty("hot-idle").orElseThrow();
        return new DutyPoint(
                idle.name(),
                idle.about(),
                idle.speed(),
                range,
                idle.lockup(),
                idle.engineTorque(),
                idle.torqueRatio(),
                idle.speedRatio(),
                idle.lubeNeed(),
                idle.temperatures(),
                idle.commands());
    }

    private static SpeedSweep sweep(Transmission unit, String range) {
        List<Double> speeds = READ.stream().map(rpm -> rpm / 60.0).toList();
        SpeedSweep sweep = SpeedSweep.run(unit, in(unit, range), speeds);
        assertEquals(READ.size(), sweep.states().size(), unit.build() + " is solved at every speed");
        return sweep;
    }

    private static SpeedSweep sweep(String build, String range) {
        return SWEEPS.computeIfAbsent(build + " " + range, name -> sweep(CIRCUIT.unit(build), range));
    }

    private static Solution state(String build, String range, int rpm) {
        return sweep(build, range).states().get(READ.indexOf(rpm));
    }

    private static Figures at(String build, int rpm) {
        return Figures.of(CIRCUIT.unit(build), state(build, "first", rpm));
    }

    private static double line(String build, String range, int rpm) {
        return state(build, range, rpm).pressure("line");
    }

    private static double line(String build, int rpm) {
        return line(build, "first", rpm);
    }

    /** Exponent of line pressure over speed between two speeds: 1 where gaps decide, 2 where orifices do. */
    private static double exponent(String build, int slow, int fast) {
        return Math.log(line(build, fast) / line(build, slow)) / Math.log((double) fast / slow);
    }

    private static double needed(Transmission unit) {
        return hotidle.assess.Roles.of(unit).lubeNeeded(unit.duty("hot-idle").orElseThrow());
    }

    @Test
    void aWornPumpOrHubShowsLowPressureAtHotIdleThatRecoversWithSpeed() {
        for (String build : List.of("worn-pump", "worn-hub")) {
            Figures idle = at(build, 650);
            assertTrue(
                    idle.line() < 0.85 * idle.set().orElseThrow(),
                    build + " at hot idle: " + idle.line() / PSI + " psi");
            assertFalse(idle.offSeat(), build + ": the regulator is shut");
            assertTrue(idle.lube() < needed(CIRCUIT.unit(build)), build + ": lubrication is starved");
            HeldLine.LineBalance held = HeldLine.at(CIRCUIT.unit(build), in(CIRCUIT.unit(build), "first"))
                    .balance()
                    .orElseThrow();
            assertTrue(held.supply() < held.demand(), build + ": more is asked of the pump than it gives");
            for (int rpm : List.of(1500, 2000, 3000, 4000)) {
                assertTrue(at(build, rpm).regulated(), build + " at " + rpm);
                assertEquals(line("fresh", rpm), line(build, rpm), 0.03 * line("fresh", rpm), build + " at " + rpm);
            }
            double exponent = exponent(build, 500, 650);
            assertTrue(exponent > 1 && exponent < 2, build + ": exponent " + exponent);
        }
    }

    /** Thin oil brings out wear: it costs a new unit nothing at hot idle. */
    @Test
    void thinOilLowersTheHotIdlePressureOfAWornUnitAndOnlyOfThat() {
        DescribedCircuit thin = read("circuit: thin\nbased-on: shuttle-five\noil: shuttle-atf-used\n");
        Figures worn = Figures.of(
                thin.unit("worn"), sweep(thin.unit("worn"), "first").states().get(1));
        assertTrue(worn.line() < 0.9 * line("worn", 650), worn.line() / PSI + " psi");
        Figures fresh = Figures.of(
                thin.unit("fresh"), sweep(thin.unit("fresh"), "first").states().get(1));
        assertTrue(fresh.regulated());
        assertEquals(line("fresh", 650), fresh.line(), 0.01 * fresh.line());
    }

    @Test
    void aCheckValveThatDoesNotSeatUnloadsTheSecondChamberLaterAndLeavesTheLineWhereItWas() {
        for (int rpm : READ) {
            assertEquals(line("fresh", rpm), line("leaky-check", rpm), UNSEEN, rpm + " rpm");
        }
        int spare = 1000;
        assertTrue(state("leaky-check", "first", spare).pressure("secondary-out")
                > 3 * state("fresh", "first", spare).pressure("secondary-out"));
        assertTrue(
                at("leaky-check", 2000).pumpPower() > 1.02 * at("fresh", 2000).pumpPower());
    }

    @Test
    void aRegulatorStuckOpenOrAnOpenReliefValveShowsLowPressureAtEverySpeedThatFollowsSpeed() {
        for (String build : List.of("regulator-stuck-open", "relief-open")) {
            for (int i = 0; i < READ.size(); i++) {
                int rpm = READ.get(i);
                assertTrue(line(build, rpm) < 0.8 * 150 * PSI, build + " at " + rpm);
                boolean fills = at(build, rpm).filling() == 1;
                assertTrue(!fills || i == 0 || line(build, rpm) > line(build, READ.get(i - 1)), build + " at " + rpm);
                // all that an open relief valve spills is drawn through the filter again
                assertTrue(fills || (rpm > 3000 && build.equals("relief-open")), build + " at " + rpm);
            }
            double exponent = exponent(build, 1500, 3000);
            assertTrue(exponent > 1.5 && exponent < 2.2, build + ": exponent " + exponent);
        }
        assertTrue(at("relief-open", 650).reliefOpen());
        assertTrue(at("regulator-stuck-open", 650).recirculated()
                > 0.5 * at("regulator-stuck-open", 650).swept());
    }

    /** As good as flat: the faster the teeth, the more pressure they need to fill, and the less is left to draw oil in with. */
    @Test
    void aBlockedFilterShowsLowPressureAtEverySpeedThatIsFlat() {
        for (int rpm : READ) {
            Figures f = at("blocked-filter", rpm);
            assertTrue(f.filling() < 1, "the inlet is starved at " + rpm);
            assertTrue(f.line() < 0.8 * f.set().orElseThrow(), rpm + " rpm");
            double change = f.line() / line("blocked-filter", 650) - 1;
            assertTrue(Math.abs(change) < 0.05, rpm + " rpm: " + change);
            assertTrue(rpm <= 650 || change < 0, rpm + " rpm: " + change);
        }
        assertTrue(at("blocked-filter", 4000).filling()
                < 0.2 * at("blocked-filter", 500).filling());
    }

    /** Air in the oil takes its share of what the pump displaces at every speed, so that the hot idle of a worn unit sinks. */
    @Test
    void airDrawnInLowersTheHotIdlePressureAndMovesTheOnsetUp() {
        Transmission airy = read("circuit: airy\nbased-on: shuttle-five\noils: {shuttle-atf: {air: 12 %}}\n")
                .unit("worn");
        SpeedSweep sweep = sweep(airy, "first");
        assertTrue(sweep.states().get(1).pressure("line") < 0.95 * line("worn", 650));
        assertTrue(sweep.onset().orElseThrow()
                > 1.03 * sweep("worn", "first").onset().orElseThrow());
    }

    @Test
    void aWeakPilotOrABrokenSpringShowsLowPressureAtEverySpeedThatIsFlat() {
        for (String build : List.of("weak-solenoid", "worn-boost-bore", "broken-spring")) {
            for (int rpm : READ) {
                Figures f = at(build, rpm);
                assertTrue(f.line() < 0.9 * line("fresh", rpm), build + " at " + rpm);
                assertTrue(
                        f.offSeat() && f.line() > f.setAtBoost().orElseThrow(),
                        build + " regulates, at the wrong pressure");
                assertTrue(f.lube() > needed(CIRCUIT.unit(build)), build + " at " + rpm);
            }
            // no more override than the new unit has: the droop is right, only the set point is wrong
            double override = line(build, 4000) - line(build, 650);
            assertTrue(override < 1.2 * (line("fresh", 4000) - line("fresh", 650)), build + ": " + override / PSI);
        }
        assertTrue(at("weak-solenoid", 650).setAtBoost().orElseThrow()
                < 0.85 * at("weak-solenoid", 650).set().orElseThrow());
        assertTrue(at("worn-boost-bore", 650).setAtBoost().orElseThrow()
                < 0.85 * at("worn-boost-bore", 650).set().orElseThrow());
    }

    @Test
    void anUnpluggedSolenoidOrAWrongSpringShowsHighPressureAtEverySpeed() {
        for (String build : List.of("unplugged", "wrong-spring")) {
            for (int rpm : List.of(650, 1000, 1500, 2000, 2500, 3000, 3500, 4000)) {
                double above = line(build, rpm) - line("fresh", rpm);
                assertTrue(above > 0.1 * line("fresh", rpm), build + " at " + rpm);
                assertEquals(line(build, 2000) - line("fresh", 2000), above, 6 * PSI, build + " at " + rpm);
                assertTrue(at(build, rpm).offSeat(), build + " at " + rpm);
            }
        }
        // another 118.106 N of preload on the 300 mm2 that the line acts on
        assertEquals(
                118.106 / 300e-6,
                at("wrong-spring", 2000).set().orElseThrow()
                        - at("fresh", 2000).set().orElseThrow(),
                1e-6 / 300e-6);
    }

    @Test
    void aRegulatorStuckShutShowsHighPressureThatTheReliefValveEnds() {
        for (int rpm : READ) {
            assertTrue(line("regulator-stuck-shut", rpm) > 1.5 * line("fresh", rpm), rpm + " rpm");
        }
        assertFalse(at("regulator-stuck-shut", 500).reliefOpen());
        for (int rpm : List.of(1000, 2000, 3000, 4000)) {
            assertTrue(at("regulator-stuck-shut", rpm).reliefOpen(), rpm + " rpm");
            assertTrue(line("regulator-stuck-shut", rpm) > 400 * PSI, rpm + " rpm");
        }
    }

    @Test
    void aRegulatorShortOfPortAreaShowsPressureThatRisesAboveTwoThousand() {
        double open = 5e-3;
        for (int rpm : List.of(650, 1000, 1500, 2000)) {
            assertTrue(line("narrow-ports", rpm) < 1.2 * 150 * PSI, rpm + " rpm");
            assertTrue(state("narrow-ports", "first", rpm).own("regulator", OwnState.POSITION) < open);
        }
        assertEquals(open, state("narrow-ports", "first", 3000).own("regulator", OwnState.POSITION), 1e-12);
        assertTrue(line("narrow-ports", 3000) > 2 * 150 * PSI);
        assertTrue(line("narrow-ports", 3500) > 1.2 * line("narrow-ports", 3000));
    }

    @Test
    void aRegulatorThatSticksWhereItStoodShowsPressureThatRisesWithSpeedThroughItsSetting() {
        assertEquals(line("fresh", 2000), line("regulator-sticks", 2000), 3 * PSI);
        assertTrue(line("regulator-sticks", 1000) < 0.5 * 150 * PSI);
        assertTrue(line("regulator-sticks", 3000) > 2 * 150 * PSI);
    }

    @Test
    void aSecondChamberThatIsNeverUnloadedShowsInPowerMoreThanInPressure() {
        double more = line("never-unloaded", 4000) - line("fresh", 4000);
        assertTrue(more > 3 * PSI && more < 15 * PSI, more / PSI + " psi");
        assertTrue(
                at("never-unloaded", 4000).pumpPower() > 1.4 * at("fresh", 4000).pumpPower());
    }

    /** Friction of 5 N either way on the 300 mm2 that the line acts on is a band of 2 · 5 N / 300 mm2, wherever the spool is free. */
    @Test
    void aStickySpoolShowsABandOfPressureWhereverItRegulates() {
        for (int rpm : List.of(650, 1500, 2000, 3000, 4000)) {
            double band = line("sticky-rising", rpm) - line("sticky-falling", rpm);
            assertEquals(2 * 5 / 300e-6, band, 0.1 * band, rpm + " rpm");
        }
        for (int rpm : List.of(650, 2000, 4000)) {
            FrictionBand told = FrictionBand.of(CIRCUIT.unit("sticky"), "line", state("sticky", "first", rpm))
                    .orElseThrow();
            assertEquals(line("fresh", rpm), line("sticky", rpm), 1, "the state itself is that of a free spool");
            assertEquals(line("sticky-rising", rpm), told.high(), 1, rpm + " rpm, upper end");
            assertEquals(line("sticky-falling", rpm), told.low(), 1, rpm + " rpm, lower end");
        }
        assertEquals(Optional.empty(), FrictionBand.of(CIRCUIT.unit("fresh"), "line", state("fresh", "first", 650)));
        for (String build : List.of("fresh", "worn", "sticky-rising", "sticky-falling")) {
            assertEquals(List.of(), sweep(build, "first").differences(), build + " has one steady state at each speed");
        }
    }

    @Test
    void aBrokenRingOrABlownPlateShowsOneRangeLow() {
        for (String build : List.of("broken-ring", "blown-plate")) {
            for (int rpm : List.of(1000, 2000, 3000)) {
                Solution third = state(build, "third", rpm);
                assertTrue(third.pressure("line") - third.pressure("direct") > LEAKY, build + " at " + rpm);
                assertTrue(third.pressure("line") - third.pressure("low") < LEAKY / 3, build + " at " + rpm);
                Solution first = state(build, "first", rpm);
                assertEquals(line("fresh", rpm), first.pressure("line"), 1e-3 * first.pressure("line"));
                assertTrue(first.pressure("line") - first.pressure("low") < LEAKY / 3);
            }
            Transmission unit = CIRCUIT.unit(build);
            Judgement judged = Judgement.of(unit, in(unit, "third"), List.of(1000 / 60.0));
            assertEquals(List.of("direct-clutch"), List.copyOf(judged.leaky().keySet()), build + " is told so");
        }
    }

    @Test
    void aManualValveThatDoesNotDrainItsAreaShowsReverseOnlyLow() {
        for (int rpm : List.of(650, 2000, 3500)) {
            assertTrue(line("fresh", "reverse", rpm) > 1.2 * line("fresh", rpm), "reverse is raised");
            assertEquals(
                    line("reverse-not-raised", rpm), line("reverse-not-raised", "reverse", rpm), PSI, rpm + " rpm");
            assertEquals(line("fresh", rpm), line("reverse-not-raised", rpm), 1e-6 * line("fresh", rpm));
        }
    }

    @Test
    void aCutSealOfTheReverseBrakeShowsReverseOnlyLow() {
        for (int rpm : List.of(650, 2000, 3500)) {
            Solution back = state("reverse-seal", "reverse", rpm);
            assertTrue(back.pressure("line") - back.pressure("reverse") > LEAKY, rpm + " rpm");
            assertTrue(back.pressure("line") - back.pressure("direct") < LEAKY / 3, rpm + " rpm");
            assertEquals(line("fresh", rpm), line("reverse-seal", rpm), 1e-6 * line("fresh", rpm));
        }
    }

    @Test
    void raisedPressureOnABareHubShowsAThinFilmAtHighEccentricity() {
        Solution fresh = state("fresh", "first", 1000);
        Solution raised = state("raised", "first", 1000);
        assertTrue(raised.measure("hub-bushing", Bushing.LOAD).orElseThrow()
                > 1.6 * fresh.measure("hub-bushing", Bushing.LOAD).orElseThrow());
        assertTrue(raised.measure("hub-bushing", Bushing.SOMMERFELD).orElseThrow()
                < 0.6 * fresh.measure("hub-bushing", Bushing.SOMMERFELD).orElseThrow());
        assertTrue(raised.measure("hub-bushing", Bushing.ECCENTRICITY).orElseThrow()
                > fresh.measure("hub-bushing", Bushing.ECCENTRICITY).orElseThrow());
        List<Double> speeds = READ.stream().map(rpm -> rpm / 60.0).toList();
        for (Margin.Kind kind : List.of(Margin.Kind.FILM, Margin.Kind.UNIT_LOAD)) {
            assertTrue(margin("fresh", "hot-idle", speeds, kind).headroom() > 0.1, kind + " of the new unit holds");
        }
        assertEquals(
                Margin.Verdict.FAILS,
                margin("raised", "hot-idle", speeds, Margin.Kind.UNIT_LOAD).verdict());
        assertTrue(
                margin("raised", "hot-idle", speeds, Margin.Kind.FILM).value().orElseThrow()
                        < 0.8
                                * margin("fresh", "hot-idle", speeds, Margin.Kind.FILM)
                                        .value()
                                        .orElseThrow());
    }

    private static Margin margin(String build, String duty, List<Double> speeds, Margin.Kind kind) {
        Transmission unit = CIRCUIT.unit(build);
        Optional<Margin> found = Judgement.of(unit, unit.duty(duty).orElseThrow(), speeds).margins().stream()
                .filter(margin -> margin.kind() == kind)
                .findFirst();
        return found.orElseThrow();
    }

    @Test
    void aBlockedCoolerOrAShutFeedShowsLowCoolerFlowAtEverySpeedWithTheLineAsItWas() {
        for (String build : List.of("cooler-blocked", "feed-restricted")) {
            for (int rpm : List.of(650, 1000, 2000, 3000, 4000)) {
                Solution state = state(build, "first", rpm);
                assertTrue(state.flow("cooler") < 2 * LITRE_A_MINUTE, build + " at " + rpm);
                assertTrue(state.measure("cooler", Cooler.HEAT).orElseThrow()
                        < 0.2
                                * state("fresh", "first", rpm)
                                        .measure("cooler", Cooler.HEAT)
                                        .orElseThrow());
                assertEquals(line("fresh", rpm), line(build, rpm), 0.02 * line("fresh", rpm), build + " at " + rpm);
            }
        }
        // a converter that is still charged tells the blocked cooler from the shut feed
        assertTrue(at("cooler-blocked", 2000).charge().orElseThrow() > 80 * PSI
                && at("feed-restricted", 2000).charge().orElseThrow() < 5 * PSI);
    }

    @Test
    void aLineAtItsMinimumShowsLessCoolerFlow() {
        for (int rpm : List.of(650, 2000, 4000)) {
            assertTrue(
                    at("line-at-minimum", rpm).cooler().orElseThrow()
                            < 0.85 * at("fresh", rpm).cooler().orElseThrow(),
                    rpm + " rpm");
        }
    }

    @Test
    void wornLockupBoresAWeakSolenoidOrALowLineShowALockupThatDoesNotHold() {
        List<Double> speeds = List.of(1900 / 60.0);
        Margin fresh = margin("fresh", "road-cruise", speeds, Margin.Kind.LOCKUP);
        assertEquals(Margin.Verdict.HOLDS, fresh.verdict());
        for (String build : List.of("lockup-bores", "lockup-solenoid", "line-at-minimum")) {
            Margin lockup = margin(build, "road-cruise", speeds, Margin.Kind.LOCKUP);
            assertTrue(
                    lockup.value().orElseThrow() < 0.7 * fresh.value().orElseThrow(),
                    build + ": apply less release " + lockup.value().orElseThrow() / PSI);
            assertEquals(Margin.Verdict.FAILS, lockup.verdict(), build);
        }
    }
}
