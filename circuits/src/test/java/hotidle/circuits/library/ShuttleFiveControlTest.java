package hotidle.circuits.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.assess.MarginNote;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.circuits.ReadCircuit;
import hotidle.part.OwnState;
import hotidle.part.Setting;
import hotidle.part.SpoolValve;
import hotidle.result.Solution;
import hotidle.study.Judgement;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The electronic command of the demonstration circuit: its table over engine torque, and an added controller. */
class ShuttleFiveControlTest {

    private static final double PSI = 6894.757293168;
    private static final Ready READY = Ready.of("shuttle-five");
    private static final List<Double> SPEEDS = List.of(10.0, 30.0, 60.0);

    private static Margin lockup(Transmission unit) {
        DutyPoint duty = unit.duty("light-cruise").orElseThrow();
        return Judgement.of(unit, duty, SPEEDS).margins().stream()
                .filter(margin -> margin.kind() == Margin.Kind.LOCKUP)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void anAddedControllerRaisesTheLineAtLightThrottleAndLeavesFullTorqueAlone() {
        assertEquals(
                150 * PSI,
                READY.figures("restored-part-throttle", "hot-idle").set().orElseThrow(),
                PSI);
        assertEquals(
                150 * PSI,
                READY.figures("restored-part-throttle", "light-cruise").set().orElseThrow(),
                PSI);
        // the table's rows at 0 and 150 N.m, straight between them
        assertEquals(
                (190 + 20 * 40 / 150.0) * PSI,
                READY.figures("restored-firm-lockup", "hot-idle").set().orElseThrow(),
                PSI);
        assertEquals(
                (190 + 20 * 110 / 150.0) * PSI,
                READY.figures("restored-firm-lockup", "light-cruise").set().orElseThrow(),
                PSI);
        assertEquals(
                READY.figures("restored-part-throttle", "stall").set().orElseThrow(),
                READY.figures("restored-firm-lockup", "stall").set().orElseThrow(),
                1e-6 * PSI);
        for (String duty : List.of("hot-idle", "light-cruise")) {
            assertTrue(READY.figures("restored-firm-lockup", duty).line()
                    > READY.figures("restored-part-throttle", duty).line() + 30 * PSI);
            assertTrue(READY.figures("restored-firm-lockup", duty).pumpPower()
                    > READY.figures("restored-part-throttle", duty).pumpPower());
        }
    }

    @Test
    void theLockupAppliedFullyHoldsMoreThanModulatedAndTheOtherDutiesKeepTheirs() {
        Transmission modulated = READY.circuit().unit("restored-part-throttle");
        Transmission full = READY.circuit().unit("restored-firm-lockup");
        assertEquals(
                Setting.Lockup.SLIPPING,
                modulated.duty("light-cruise").orElseThrow().lockup());
        assertEquals(Setting.Lockup.ON, full.duty("light-cruise").orElseThrow().lockup());
        assertEquals(lockup(modulated).needed(), lockup(full).needed());
        assertTrue(lockup(full).value().orElseThrow()
                > 1.5 * lockup(modulated).value().orElseThrow());
        assertEquals(
                List.of(MarginNote.of(MarginNote.Remark.SLIPPING_WOULD_HOLD)),
                lockup(modulated).notes(),
                "said to slip, and it holds");
        assertEquals(List.of(), lockup(full).notes());
        for (String duty : List.of("hot-idle", "stall", "road-cruise", "cold-start")) {
            assertEquals(
                    modulated.duty(duty).orElseThrow().lockup(),
                    full.duty(duty).orElseThrow().lockup());
            assertEquals(
                    modulated.duty(duty).orElseThrow().commands(),
                    full.duty(duty).orElseThrow().commands());
        }
    }

    /** Force balance of the lockup valve by hand: pilot on 80 mm² against apply on 40 mm², 6 N and 4 N/mm; flow force besides. */
    @Test
    void theLockupValveRegulatesTheApplyPressureAgainstItsPilot() {
        Solution state = READY.at("restored-part-throttle", "light-cruise");
        double position = state.own("lockup-valve", OwnState.POSITION);
        double byHand = (state.pressure("lockup-pilot") * 80e-6 - 6 - 4000 * position) / 40e-6;
        double flowForce =
                Math.abs(state.measure("lockup-valve", SpoolValve.FLOW_FORCE).orElseThrow()) / 40e-6;
        assertTrue(position > 0 && position < 4e-3, "regulating, not at a stop");
        assertEquals(byHand, state.pressure("apply"), flowForce + 1);
        assertTrue(state.pressure("apply") < 0.8 * state.pressure("line"), "less than the line");
    }

    /** What leaks past the lockup valve's worn bore is taken from the apply side, and the lockup's margin falls. */
    @Test
    void aWornLockupValveLeavesLessToTheLockup() {
        var build = READY.circuit().adjustable("restored-part-throttle");
        Transmission worn = build.with(Map.of("lockup-valve.bore", 14.120e-3)).orElseThrow();
        assertTrue(lockup(worn).headroom() < lockup(build.unit()).headroom() - 0.005);
    }

    @Test
    void torqueBeyondTheTableIsSaidAndThePressureOfTheLastRowTaken() {
        String text = Library.text("shuttle-five")
                .orElseThrow()
                .replace(
                        "range: second\n    lockup: off\n    engine-torque: 800",
                        "range: second\n    lockup: off\n    engine-torque: 1250");
        ReadCircuit read = CircuitReader.read(text, "x.yaml");
        assertEquals(1, read.problems().size());
        String said = read.problems().get(0).text();
        assertTrue(said.contains("1250 N.m at full-throttle-shift, the table goes from 0 to 1200 N.m"), said);
        Transmission unit = read.circuit().orElseThrow().unit("restored-part-throttle");
        DutyPoint duty = unit.duty("full-throttle-shift").orElseThrow();
        assertEquals(
                unit.command().pilot().orElseThrow().at(1200),
                unit.conditions(duty).commands().get("pressure-solenoid"));
    }
}
