package hotidle.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.PartDoubt.Concern;
import hotidle.law.Channel;
import hotidle.network.Placed;
import hotidle.newton.SteadySolver;
import hotidle.oil.OilAt;
import hotidle.part.AnnularGap;
import hotidle.part.Bushing;
import hotidle.part.Fit;
import hotidle.part.Measure;
import hotidle.part.OwnState;
import hotidle.part.PumpInlet;
import hotidle.part.Solenoid;
import hotidle.result.Solution;
import hotidle.study.TenNodes;
import hotidle.transmission.Transmission;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What one part lets by and what is doubtful in its state: the ten nodes at hot idle, one number of it changed at a time. */
class PartDoubtTest {

    private static final Transmission UNIT = TenNodes.worn(1);
    private static final Solution IDLE = new SteadySolver(UNIT.network())
            .solve(UNIT.conditions(UNIT.duties().get(0)))
            .state()
            .orElseThrow();

    private static Placed part(String name) {
        return UNIT.network().part(name).orElseThrow();
    }

    private static OilAt oil(Placed placed) {
        return IDLE.conditions().oil(placed);
    }

    private static List<PartDoubt> doubts(String name, Solution state, String... held) {
        Placed placed = part(name);
        return PartDoubt.of(placed, PartFlow.of(placed, oil(placed), state), oil(placed), Set.of(held), state);
    }

    private static List<Concern> concerns(String name, Solution state, String... held) {
        return doubts(name, state, held).stream().map(PartDoubt::why).toList();
    }

    private static Solution with(
            Map<String, Map<OwnState, Double>> states,
            List<Solution.PartStream> streams,
            Map<String, Map<Measure, OptionalDouble>> measures) {
        return new Solution(IDLE.conditions(), IDLE.pressures(), states, streams, measures, 0, 0, 1, "made");
    }

    private static Solution resting(String name, OwnState state, double at) {
        Map<String, Map<OwnState, Double>> states = new HashMap<>(IDLE.states());
        Map<OwnState, Double> own = new HashMap<>(states.get(name));
        own.put(state, at);
        states.put(name, own);
        return with(states, IDLE.streams(), IDLE.measures());
    }

    private static Solution hub(Measure measure, double value) {
        Map<String, Map<Measure, OptionalDouble>> measures = new HashMap<>(IDLE.measures());
        Map<Measure, OptionalDouble> own = new HashMap<>(measures.get("hub"));
        own.put(measure, OptionalDouble.of(value));
        measures.put("hub", own);
        return with(IDLE.states(), IDLE.streams(), measures);
    }

    private static Solution leaking(String name, double times) {
        List<Solution.PartStream> streams = IDLE.streams().stream()
                .map(one -> one.part().equals(name)
                        ? new Solution.PartStream(
                                name, one.name(), one.from(), one.to(), one.mass() * times, one.volume() * times)
                        : one)
                .toList();
        return with(IDLE.states(), streams, IDLE.measures());
    }

    @Test
    void aHealthyUnitAtHotIdleLeavesNoDoubtAboutItsSmallParts() {
        for (String name : List.of("regulator", "solenoid", "bores", "hub-face", "pump-inlet", "check", "cooler")) {
            assertEquals(List.of(), concerns(name, IDLE), name);
        }
    }

    @Test
    void aRegulatorOrSolenoidAtAStopRegulatesNoMore() {
        assertEquals(List.of(Concern.AT_LOWER_STOP), concerns("regulator", resting("regulator", OwnState.POSITION, 0)));
        assertEquals(
                List.of(Concern.AT_UPPER_STOP), concerns("regulator", resting("regulator", OwnState.POSITION, 4e-3)));
        assertEquals(List.of(), concerns("regulator", resting("regulator", OwnState.POSITION, 3.9e-3)));
        assertEquals(List.of(Concern.AT_UPPER_STOP), concerns("solenoid", resting("solenoid", Solenoid.OPENING, 1)));
        assertEquals(
                List.of(),
                concerns("solenoid", resting("solenoid", Solenoid.OPENING, 1), "opening"),
                "held from outside");
    }

    @Test
    void anInletThatFillsItsPumpInPartIsStarved() {
        assertEquals(List.of(Concern.STARVED), concerns("pump-inlet", resting("pump-inlet", PumpInlet.FILLING, 0.97)));
        assertEquals(List.of(), concerns("pump-inlet", resting("pump-inlet", PumpInlet.FILLING, 1)));
    }

    @Test
    void aHubIsDoubtedWhereItTouchesOrItsFilmOrLoadIsBeyondItsLimit() {
        List<Concern> sound = concerns("hub", IDLE);
        assertTrue(!sound.contains(Concern.METAL_CONTACT) && !sound.contains(Concern.LOAD_TOO_HIGH), sound.toString());
        assertTrue(concerns("hub", hub(Bushing.METAL_CONTACT, 1)).contains(Concern.METAL_CONTACT));
        assertTrue(concerns("hub", hub(Bushing.EDGE_FILM, 2.9e-6)).contains(Concern.FILM_TOO_THIN), "of 3 µm");
        assertTrue(!concerns("hub", hub(Bushing.EDGE_FILM, 3.1e-6)).contains(Concern.FILM_TOO_THIN));
        assertTrue(concerns("hub", hub(Bushing.UNIT_LOAD, 7.1e6)).contains(Concern.LOAD_TOO_HIGH), "of 7 MPa");
        assertTrue(!concerns("hub", hub(Bushing.UNIT_LOAD, 6.9e6)).contains(Concern.LOAD_TOO_HIGH));
    }

    /** Re = ρ·π·d·n·c/μ with c = 2 mm, far above Taylor's 41.3·√(R/c). */
    @Test
    void aClearanceOfTwoMillimetresMakesVortices() {
        OilAt film = oil(part("hub"));
        PartDoubt doubt = doubts("hub", hub(Bushing.RADIAL_CLEARANCE, 2e-3)).stream()
                .filter(one -> one.why() == Concern.FILM_NOT_LAMINAR)
                .findFirst()
                .orElseThrow();
        double surface = Math.PI * 0.050 * 650 / 60;
        double reynolds = film.liquidDensity() * surface * 2e-3 / film.viscosity();
        assertEquals(reynolds, doubt.value().orElseThrow(), 1e-6 * reynolds);
        assertEquals(41.3 * Math.sqrt(12.5), doubt.limit().orElseThrow(), 1e-9);
        assertTrue(!concerns("hub", IDLE).contains(Concern.FILM_NOT_LAMINAR));
    }

    @Test
    void aGapThroughWhichAHundredThousandTimesTheOilGoesIsNotLaminar() {
        PartDoubt doubt = doubts("bores", leaking("bores", 1e5)).get(0);
        assertEquals(Concern.GAP_NOT_LAMINAR, doubt.why());
        assertEquals(2300, doubt.limit().orElseThrow());
        assertTrue(doubt.value().orElseThrow() > 2300);
    }

    @Test
    void aShaftThatIsNoSmallerThanItsBoreBinds() {
        Placed tight = part("bores").with(new AnnularGap(Fit.same(0.1524, 0.1524), 0.005, 1));
        List<PartDoubt> doubts = PartDoubt.fits(tight, 383.15);
        assertEquals(
                List.of(Concern.PIECES_BIND),
                doubts.stream().map(PartDoubt::why).toList());
        assertTrue(doubts.get(0).value().isEmpty() && doubts.get(0).limit().isEmpty());
        assertEquals(List.of(), PartDoubt.fits(part("bores"), 383.15));
    }

    /** Re = 4·ṁ/(wetted perimeter·μ); the annulus of all bores wets π·d on both sides. */
    @Test
    void whatLeaksAlongTheBoresHasTheReynoldsNumberOfItsMass() {
        Placed bores = part("bores");
        PartFlow flow = PartFlow.of(bores, oil(bores), IDLE);
        Solution.PartStream stream = IDLE.streams().stream()
                .filter(one -> one.part().equals("bores"))
                .findFirst()
                .orElseThrow();
        double mean = oil(bores).viscosity(IDLE.pressure("line") / 2);
        double reynolds = 4 * stream.mass() / (2 * Math.PI * 0.1524 * mean);
        assertEquals(reynolds, flow.paths().get(0).reynolds().orElseThrow(), 1e-3 * reynolds);
        assertEquals(Channel.Regime.LAMINAR, flow.paths().get(0).regime().orElseThrow());
        assertEquals(stream.volume(), flow.net().orElseThrow(), 1e-18);
    }

    @Test
    void whatAPumpTakesInAndSlipsBackIsNetWhatGoesOut() {
        Placed primary = part("primary");
        PartFlow flow = PartFlow.of(primary, oil(primary), IDLE);
        double net = 0;
        for (Solution.PartStream one : IDLE.streams()) {
            if (one.part().equals("primary")) {
                net += one.from().equals("suction") ? one.volume() : 0;
                net -= one.to().equals("suction") ? one.volume() : 0;
            }
        }
        assertEquals(net, flow.net().orElseThrow(), 1e-15);
        assertTrue(net > 0 && net < 20e-6 * 650 / 60, "less than it sweeps");
    }

    @Test
    void theSwiftestPathIsTheOneOfTheHighestReynoldsNumberAndAPartWithoutOilHasNone() {
        Placed regulator = part("regulator");
        PartFlow flow = PartFlow.of(regulator, oil(regulator), IDLE);
        double most = flow.swiftest().orElseThrow().reynolds().orElseThrow();
        assertTrue(flow.paths().stream().allMatch(path -> path.reynolds().orElse(0) <= most));
        PartFlow none = PartFlow.of(regulator, oil(regulator), with(IDLE.states(), List.of(), IDLE.measures()));
        assertTrue(none.net().isEmpty() && none.swiftest().isEmpty());
        Placed cooler = part("cooler");
        PartFlow rated = PartFlow.of(cooler, oil(cooler), IDLE);
        assertTrue(rated.swiftest().isEmpty(), "a rated point has no geometry");
        assertTrue(rated.net().orElseThrow() > 0);
    }
}
