package hotidle.circuits.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Figures;
import hotidle.assess.Margin;
import hotidle.result.Solution;
import hotidle.study.Judgement;
import hotidle.transmission.Transmission;
import java.util.List;
import org.junit.jupiter.api.Test;

class CrescentFourTest {

    private static final double PSI = 6894.757293168361;
    private static final Ready UNIT = Ready.of("crescent-four");

    /** Spring at the edge, 89 N + 8 N/mm · 0.5 mm, and throttle pressure on 150 mm²; 225 mm² forward, 140 mm² in reverse. */
    @Test
    void setPressureFollowsFromSpringAndAreasByHand() {
        double spring = 89 + 8 * 0.5;
        double throttle = (145 - 60) * 1.5 * PSI;
        Figures stall = UNIT.figures("fresh", "stall");
        double torque = (380 - 60) / 340.0;
        double asked = (70 + 75 * torque) * PSI;
        double pilot = (asked - 60 * PSI) * 1.5;
        assertTrue(pilot < throttle);
        assertEquals(
                (spring + pilot * 150e-6) / 225e-6,
                stall.set().orElseThrow(),
                1e-9 * stall.set().orElseThrow());
        Figures back = UNIT.figures("fresh", "backing-up");
        double backTorque = (200 - 60) / 340.0;
        double backPilot = (10 + 75 * backTorque) * 1.5 * PSI;
        assertEquals(
                (spring + backPilot * 150e-6) / 140e-6,
                back.set().orElseThrow(),
                1e-9 * back.set().orElseThrow());
    }

    @Test
    void whatThePumpMovesLessWhatSlipsIsWhatLeavesIt() {
        for (String build : UNIT.circuit().units().keySet()) {
            Solution state = UNIT.at(build, "hot-idle");
            Figures f = UNIT.figures(build, "hot-idle");
            assertEquals(21e-6 * 700 / 60, f.swept(), 1e-15);
            double slip = state.streams().stream()
                    .filter(stream ->
                            stream.part().equals("pump") && stream.name().endsWith("-slip"))
                    .mapToDouble(Solution.PartStream::volume)
                    .sum();
            assertEquals(
                    5,
                    state.streams().stream()
                            .filter(stream -> stream.part().equals("pump")
                                    && stream.name().endsWith("-slip"))
                            .count());
            assertEquals(slip - state.flow("pump.tip-drag"), f.slip(), 1e-12 * slip);
        }
    }

    @Test
    void aWornPumpHasLittleOilToSpareAtHotIdleAndRaisedItStarvesTheLubrication() {
        Figures fresh = UNIT.figures("fresh", "hot-idle");
        Figures worn = UNIT.figures("worn", "hot-idle");
        Figures raised = UNIT.figures("worn-raised", "hot-idle");
        assertTrue(fresh.recirculated() > 3 * worn.recirculated());
        assertTrue(worn.charge().orElseThrow() < 0.6 * fresh.charge().orElseThrow());
        assertTrue(raised.lube() < 1.1e-3 / 60 && worn.lube() > 1.1e-3 / 60, raised.lube() + " m3/s");
        Figures restored = UNIT.figures("restored", "hot-idle");
        assertEquals(fresh.lube(), restored.lube(), 0.03 * fresh.lube());
    }

    @Test
    void theSameThrottlePressureHoldsMoreInReverse() {
        Figures back = UNIT.figures("fresh", "backing-up");
        Figures stall = UNIT.figures("fresh", "stall");
        assertTrue(back.line() > stall.line());
    }

    /**
     * 390 N·m times 1.1, of it 0.6 on the band, times 1.2. The drum helps to pull: arm r·(e^(μθ) − 1), the capstan equation. The
     * piston's 70 cm² pull straight, against 600 N of return spring.
     */
    @Test
    void theBandNeedsWhatTheCapstanEquationAsksForByHand() {
        double torque = 390 * 1.1 * 0.6 * 1.2;
        double arm = 0.075 * (Math.exp(0.12 * Math.toRadians(340)) - 1);
        double needed = (torque / arm + 600) / 70e-4;
        for (String build : List.of("fresh", "worn")) {
            Transmission unit = UNIT.circuit().unit(build);
            List<Margin> band =
                    Judgement.of(unit, unit.duty("full-throttle-shift").orElseThrow(), List.of(10.0, 50.0))
                            .margins()
                            .stream()
                            .filter(margin -> margin.part().equals("intermediate-band"))
                            .toList();
            assertEquals(2, band.size(), "holding and slipping");
            for (Margin margin : band) {
                assertEquals(needed, margin.needed(), 1e-9 * needed);
                double line = UNIT.figures(build, "full-throttle-shift").line();
                assertTrue(margin.value() < line && margin.value() > 0.98 * line, margin.value() + " Pa at the servo");
            }
        }
    }
}
