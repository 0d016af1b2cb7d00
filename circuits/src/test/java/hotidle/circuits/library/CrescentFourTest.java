package hotidle.circuits.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Assessment;
import hotidle.assess.Figures;
import hotidle.assess.Margin;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.part.Bushing;
import hotidle.part.PumpChamber;
import hotidle.result.Solution;
import hotidle.study.Judgement;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class CrescentFourTest {

    private static final Ready UNIT = Ready.of("crescent-four");

    /**
     * Spring at the edge, 89 N + 8 N/mm · 0.5 mm, and throttle pressure on 150 mm²; 225 mm² forward, 140 mm² in reverse. The cable
     * presses 3.8 N + 4 N/mm · 10.8 mm at full throttle on 55 mm².
     */
    @Test
    void setPressureFollowsFromSpringAreasAndThrottleByHand() {
        set("hot-idle", 0.02, 225e-6);
        set("stall", 1, 225e-6);
        set("road-cruise", 0.22, 225e-6);
        set("backing-up", 0.43, 140e-6);
    }

    private static void set(String duty, double throttle, double area) {
        double pushing = (3.8 + 4 * 10.8 * throttle) / 55e-6;
        double set = (89 + 8 * 0.5 + pushing * 150e-6) / area;
        Figures f = UNIT.figures("fresh", duty);
        assertEquals(set, f.set().orElseThrow(), 1e-9 * set, duty);
        assertTrue(f.regulated() && !f.farAboveSet(), duty);
    }

    /** On 80 mm² 14 N, the stop, and 3.5926 N at 1810 rpm, 8.7208 N at 2820 rpm. The droop is 0.15 bar. */
    @Test
    void governorPressureFollowsFromItsWeightsByHand() {
        double half = 0.15e5 / 2;
        assertEquals(0, UNIT.at("fresh", "stall").pressure("governor"), half);
        assertEquals(
                (14 + 3.5926) / 80e-6, UNIT.at("fresh", "full-throttle-shift").pressure("governor"), half);
        assertEquals((14 + 8.7208) / 80e-6, UNIT.at("fresh", "road-cruise").pressure("governor"), half);
    }

    @Test
    void whatThePumpMovesLessWhatSlipsIsWhatLeavesIt() {
        for (String build : UNIT.circuit().units().keySet()) {
            Solution state = UNIT.at(build, "hot-idle");
            Figures f = UNIT.figures(build, "hot-idle");
            assertEquals(21e-6 * 700 / 60, f.swept(), 1e-15);
            double slip = mass(state, "-slip") / mass(state, "swept") * f.swept();
            double dragged = mass(state, "tip-drag") / mass(state, "swept") * f.swept();
            // faces, both tips, body, orifice, and what speed costs
            assertEquals(
                    6,
                    state.streams().stream()
                            .filter(stream -> stream.part().equals("pump")
                                    && stream.name().endsWith("-slip"))
                            .count());
            assertEquals(slip - dragged, f.slip(), 1e-12 * slip);
        }
    }

    private static double mass(Solution state, String ending) {
        return state.streams().stream()
                .filter(stream -> stream.part().equals("pump") && stream.name().endsWith(ending))
                .mapToDouble(Solution.PartStream::mass)
                .sum();
    }

    /** The engine turns the hub in its film too; no drag of the chamber has that in it. */
    @Test
    void pumpPowerIsThatOfTheChamberAndOfTheHubsFilm() {
        for (String duty : List.of("hot-idle", "stall", "road-cruise")) {
            Solution state = UNIT.at("fresh", duty);
            double film = state.measure("hub-bushing", Bushing.FRICTION_POWER).orElseThrow();
            double chamber = state.measure("pump", PumpChamber.POWER).orElseThrow();
            assertTrue(film > 0.01 * chamber, film + " W");
            double power = UNIT.figures("fresh", duty).pumpPower();
            assertEquals(chamber + film, power, 1e-9 * power, duty);
        }
    }

    @Test
    void aWornPumpHasLittleOilToSpareAtHotIdleAndRaisedItStarvesTheLubrication() {
        Figures fresh = UNIT.figures("fresh", "hot-idle");
        Figures worn = UNIT.figures("worn", "hot-idle");
        Figures raised = UNIT.figures("worn-raised", "hot-idle");
        assertTrue(fresh.recirculated() > 3 * worn.recirculated());
        assertTrue(worn.charge().orElseThrow() < 2.0 / 3 * fresh.charge().orElseThrow());
        assertTrue(raised.lube() < 0.5 * worn.lube(), raised.lube() + " m3/s");
        assertEquals(List.of("lube-tail"), shortOfOil("worn"));
        assertEquals(List.of("lube-tail", "cooler", "converter"), shortOfOil("worn-raised"));
        Figures restored = UNIT.figures("restored", "hot-idle");
        assertEquals(fresh.lube(), restored.lube(), 0.03 * fresh.lube());
    }

    private static List<String> shortOfOil(String build) {
        Transmission unit = UNIT.circuit().unit(build);
        DutyPoint duty = unit.duty("hot-idle").orElseThrow();
        return Assessment.of(unit, duty, UNIT.at(build, "hot-idle")).starved().stream()
                .map(Margin::part)
                .toList();
    }

    /** Willis and balance by hand, without losses: a Simpson set behind an overdrive set whose carrier is driven. */
    @Test
    void ratiosAndSharesFollowFromItsTeethByHand() {
        String text = Library.text("crescent-four")
                .orElseThrow()
                .replace("  output: output\n", "  output: output\n  mesh-efficiency: 100 %\n");
        Transmission unit =
                CircuitReader.read(text, "x.yaml").circuit().orElseThrow().unit();
        double set = 34.0 / 74;
        double over = 1 + 28.0 / 80;
        drives(unit, "reverse", -1 / set, Map.of("direct-clutch", 1.0, "low-reverse-brake", 1 + 1 / set));
        drives(unit, "first", 2 + set, Map.of("forward-clutch", 1.0));
        drives(unit, "second", 1 + set, Map.of("forward-clutch", 1.0, "intermediate-band", set));
        double ring = 1 / (1 + set);
        drives(unit, "third", 1, Map.of("forward-clutch", ring, "direct-clutch", 1 - ring));
        drives(
                unit,
                "fourth",
                1 / over,
                Map.of(
                        "forward-clutch", ring / over,
                        "direct-clutch", (1 - ring) / over,
                        "overdrive-clutch", 1 - 1 / over));
    }

    private static void drives(Transmission unit, String name, double ratio, Map<String, Double> shares) {
        Range range = unit.range(name).orElseThrow();
        assertEquals(ratio, range.driven().orElseThrow().ratio(), 1e-12, name);
        assertEquals(shares.keySet(), range.applied().keySet(), name);
        shares.forEach((clutch, share) ->
                assertEquals(share, range.applied().get(clutch).torqueShare(), 1e-12, name + " " + clutch));
    }

    /** Stated factor included: at stall, in second at full throttle, and in reverse at the torque of its duty point. */
    @Test
    void theSoundUnitHoldsWhatItsDutyPointsAsk() {
        for (String build : List.of("fresh", "restored")) {
            Transmission unit = UNIT.circuit().unit(build);
            for (String duty : List.of("stall", "full-throttle-shift", "backing-up", "road-cruise")) {
                Judgement.of(unit, unit.duty(duty).orElseThrow(), List.of(30.0)).margins().stream()
                        .filter(margin -> margin.kind() == Margin.Kind.APPLY
                                || margin.kind() == Margin.Kind.APPLY_SLIDING
                                || margin.kind() == Margin.Kind.RATED_TORQUE)
                        .forEach(margin -> assertTrue(margin.headroom() > 0, build + " " + duty + " " + margin));
            }
        }
    }

    @Test
    void theSameThrottlePressureHoldsMoreInReverse() {
        Figures back = UNIT.figures("fresh", "backing-up");
        Figures stall = UNIT.figures("fresh", "stall");
        assertTrue(back.line() > stall.line());
    }

    /**
     * 390 N·m times 1.1, of it 34/74 on the band, less what two meshes lose of 1 % each, times 1.2. The drum helps to pull: arm r·(e^(μθ) − 1), the capstan equation. The
     * piston's 70 cm² pull straight, against 600 N of return spring.
     */
    @Test
    void theBandNeedsWhatTheCapstanEquationAsksForByHand() {
        double torque = 390 * 1.1 * 34 / 74 * 0.99 * 0.99 * 1.2;
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
                assertTrue(
                        margin.value().orElseThrow() < line && margin.value().orElseThrow() > 0.98 * line,
                        margin.value().orElseThrow() + " Pa at the servo");
            }
        }
    }
}
