package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Assessment;
import hotidle.assess.Consumers;
import hotidle.assess.Figures;
import hotidle.assess.Margin;
import hotidle.assess.MarginNote;
import hotidle.assess.OilBudget;
import hotidle.law.RatedPoint;
import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.newton.Series;
import hotidle.part.Bushing;
import hotidle.part.Clutch;
import hotidle.part.Converter;
import hotidle.part.Lining;
import hotidle.part.OilRing;
import hotidle.part.OwnState;
import hotidle.part.Setting;
import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Past 300 lines, since each limit has its statement here, on one unit of ten nodes. */
class JudgementTest {

    private static final double CELSIUS = 273.15;
    private static final List<Double> SPEEDS =
            IntStream.rangeClosed(8, 60).mapToObj(i -> 50.0 * i / 60).toList();

    private static Judgement judged(Transmission unit) {
        return Judgement.of(unit, unit.duties().get(0), SPEEDS);
    }

    private static Margin margin(Judgement judged, Margin.Kind kind) {
        return judged.margins().stream()
                .filter(margin -> margin.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    /** What the pump can deliver with the line held agrees with what the regulator does, and wear takes it away. */
    @Test
    void aPumpWithOilToSpareAtTheSetPressureRegulatesAndAWornOneDoesNot() {
        double before = Double.POSITIVE_INFINITY;
        int regulated = 0;
        int seated = 0;
        for (double wear = 1; wear <= 4; wear += 0.5) {
            Transmission unit = TenNodes.worn(wear);
            Judgement judged = judged(unit);
            double headroom = margin(judged, Margin.Kind.REGULATION).headroom();
            assertTrue(headroom < before, "wear " + wear + ": " + headroom + " after " + before);
            before = headroom;
            Figures figures = Figures.of(unit, judged.outcome().state().orElseThrow());
            if (headroom > 0.05) {
                regulated++;
                assertTrue(figures.regulated(), "wear " + wear + " has " + headroom + " and does not regulate");
            } else if (headroom < -0.05) {
                seated++;
                boolean served = judged.margins().stream()
                        .filter(margin -> margin.kind() == Margin.Kind.LUBRICATION)
                        .allMatch(margin -> margin.headroom() >= 0);
                assertFalse(figures.regulated() && served, "wear " + wear + " has " + headroom + " and is served");
            }
        }
        assertTrue(regulated > 1 && seated > 1, regulated + " regulate, " + seated + " do not");
    }

    /** supply − demand is what the line would have to be given from outside, so it is nil where the free line stands there. */
    @Test
    void heldAtItsOwnPressureTheLineNeedsNoOilFromOutside() {
        Transmission unit = TenNodes.worn(4);
        Solution free = judged(unit).outcome().state().orElseThrow();
        assertEquals(0, free.own("regulator", OwnState.POSITION), "the regulator sits");
        Transmission set = hotidle.transmission.SetPressure.of(unit, free.pressure("line"));
        // nothing has to be served, so that the regulator is held on its seat, where the free one is too
        DutyPoint duty = with(set.duties().get(0), Setting.Lockup.OFF, OptionalDouble.empty(), 0);
        HeldLine.LineBalance held = HeldLine.at(set, duty).balance().orElseThrow();
        Solution same = new hotidle.newton.SteadySolver(set.network())
                .solve(set.conditions(set.duties().get(0)))
                .state()
                .orElseThrow();
        assertEquals(held.demand(), held.supply(), 0.02 * held.demand());
        assertTrue(Math.abs(same.pressure("line") / free.pressure("line") - 1) < 0.02);
    }

    @Test
    void theFilmIsTheThinnestOfAllSpeedsAndThinnerThanBetweenThem() {
        Judgement judged = judged(TenNodes.worn(1));
        Margin film = margin(judged, Margin.Kind.FILM);
        HubOverSpeed hub = judged.hub().orElseThrow();
        for (Solution state : overSpeed(judged.unit())) {
            assertTrue(film.value().orElseThrow()
                    <= state.measure("hub", Bushing.EDGE_FILM).orElseThrow());
        }
        assertEquals(
                film.value().orElseThrow(),
                hub.thinnest().orElseThrow().measure("hub", Bushing.EDGE_FILM).orElseThrow(),
                0,
                "the film is a state's own");
        assertEquals(3e-6, film.needed());
        assertEquals(0.0002 * 0.0254 + 0.00004 * 0.050, film.unsure().orElseThrow(), 1e-12);
        Margin load = margin(judged, Margin.Kind.UNIT_LOAD);
        assertTrue(load.kind().upper());
        assertEquals(load.needed() / load.value().orElseThrow() - 1, load.headroom(), 1e-12);
    }

    /** The film dips in a narrow range of speed where the secondary is unloaded; speeds far apart must not step over it. */
    @Test
    void speedsFarApartFindTheSameThinnestFilm() {
        for (double wear : new double[] {1, 1.5, 2}) {
            Transmission unit = TenNodes.worn(wear);
            List<Double> apart =
                    IntStream.rangeClosed(1, 9).mapToObj(i -> 330.0 * i / 60).toList();
            double close = margin(judged(unit), Margin.Kind.FILM).value().orElseThrow();
            Margin far = margin(Judgement.of(unit, unit.duties().get(0), apart), Margin.Kind.FILM);
            assertEquals(close, far.value().orElseThrow(), 0.005 * close, "wear " + wear);
        }
    }

    private static List<Solution> overSpeed(Transmission unit) {
        Series series = new Series(unit.network());
        DutyPoint duty = unit.duties().get(0);
        return SPEEDS.stream()
                .map(speed -> {
                    assertTrue(series.solve(unit.conditions(duty).atSpeed(speed)));
                    return series.state();
                })
                .toList();
    }

    /** Side loads of two chambers opposite each other cancel but for what the check valve drops; alone, one follows its pressure. */
    @Test
    void theHubCarriesOnlyWeightUntilTheSecondaryIsUnloadedAndThenTheLineInProportion() {
        int joined = 0;
        int unloaded = 0;
        for (double wear : new double[] {1, 2.5}) {
            for (Solution state : overSpeed(TenNodes.worn(wear))) {
                double other = state.pressure("secondary-out") - state.pressure("suction");
                double line = state.pressure("line") - state.pressure("suction");
                double load = state.measure("hub", Bushing.LOAD).orElseThrow();
                if (state.own("regulator", OwnState.POSITION) < 0.5e-3) {
                    joined++;
                    assertEquals(100, load, 0.05 * 100);
                } else if (other < 0.15 * line) {
                    unloaded++;
                    assertEquals(Math.hypot(0.8 * 0.013 * 0.084 * (line - other), 100), load, 1e-9 * load);
                }
            }
        }
        assertTrue(joined > 2 && unloaded > 5, joined + " joined, " + unloaded + " unloaded");
    }

    private static DutyPoint with(DutyPoint duty, Setting.Lockup lockup, OptionalDouble ratio, double lubeNeed) {
        return new DutyPoint(
                duty.name(),
                duty.about(),
                duty.speed(),
                duty.range(),
                lockup,
                duty.engineTorque(),
                duty.torqueRatio(),
                ratio,
                lubeNeed,
                duty.temperatures(),
                duty.commands());
    }

    /** Ten nodes with a clutch on the line and a converter beside its orifice. */
    private static Transmission clutched(Clutch clutch, Setting.Lockup lockup, OptionalDouble turbine) {
        Transmission plain = TenNodes.worn(1);
        List<Placed> parts = new ArrayList<>(plain.network().parts());
        parts.add(Placed.of("low", clutch, "sump", Group.RINGS, "line", "sump"));
        RatedPoint loss = new RatedPoint(1e-4, 1e6, 5e-3, 800, 0.5);
        Converter converter = new Converter(
                loss, 2e5, Optional.of(new Converter.LockupClutch(loss, loss, 0.03, 0.12, 1, 0.12, 1.25)));
        parts.add(Placed.of("converter", converter, "sump", Group.CONVERTER, "cooler-in", "converter"));
        return new Transmission(
                plain.circuit(),
                plain.build(),
                new Network(plain.network().nodes(), parts),
                plain.oil(),
                plain.ambient(),
                List.of(new Range("first", true, Map.of("low", new Range.Applied(0.9, 1.5)))),
                plain.commanded(),
                List.of(with(plain.duties().get(0), lockup, turbine, 0.5)),
                List.of());
    }

    private static Clutch clutch(Optional<OilRing> ring, Optional<OilRing> balance) {
        return new Clutch(
                new Clutch.Piston(0.002, 300, ring, balance),
                new Lining(4, 0.05, 0.07, 0.12, 0.10, true),
                1.2,
                new Clutch.Seal(0.08, 1e-6, 1e-3, 0));
    }

    /** By hand: 40 N·m × 1.8 × 0.9 × 1.2 over 0.12·4·0.06 m, and 300 N of spring, over 0.002 m². */
    @Test
    void aClutchNeedsThePressureOfItsTorqueItsFactorAndItsSpring() {
        Judgement judged = judged(
                clutched(clutch(Optional.empty(), Optional.empty()), Setting.Lockup.OFF, OptionalDouble.empty()));
        double line = judged.outcome().state().orElseThrow().pressure("line");
        Margin holding = margin(judged, Margin.Kind.APPLY);
        assertEquals((40 * 1.8 * 0.9 * 1.2 / (0.12 * 4 * 0.06) + 300) / 0.002, holding.needed(), 1e-6);
        assertEquals(line, holding.value().orElseThrow());
        Margin slipping = margin(judged, Margin.Kind.APPLY_SLIDING);
        assertEquals((40 * 1.8 * 0.9 * 1.2 / (0.10 * 4 * 0.06) + 300) / 0.002, slipping.needed(), 1e-6);
        assertEquals(List.of(), holding.notes());
        assertTrue(judged.margins().stream().noneMatch(margin -> margin.kind() == Margin.Kind.LOCKUP));
        assertTrue(judged.leaky().isEmpty());
    }

    @Test
    void turningOilHelpsWhereTheTurbinesSpeedIsGivenAndIsCountedAtItsWorstWhereItIsNot() {
        OilRing ring = new OilRing(0.03, 0.05, 0.02);
        Clutch helped = clutch(Optional.of(ring), Optional.empty());
        Clutch hindered = clutch(Optional.of(ring), Optional.of(new OilRing(0.03, 0.06, 0.02)));
        double plain = needed(clutch(Optional.empty(), Optional.empty()), OptionalDouble.empty());
        assertEquals(plain, needed(helped, OptionalDouble.empty()), "standing is worst");
        assertEquals(plain, needed(helped, OptionalDouble.of(0)), "a standing turbine turns no oil");
        Transmission unit = clutched(helped, Setting.Lockup.OFF, OptionalDouble.of(0.8));
        double density = unit.oil().at(110 + CELSIUS, 101_325).liquidDensity();
        double drum = 1.5 * 0.8 * 650 / 60.0;
        assertEquals(
                plain - ring.force(density, drum) / 0.002,
                needed(helped, OptionalDouble.of(0.8)),
                1e-6,
                "at its speed");
        assertTrue(needed(hindered, OptionalDouble.empty()) > plain, "turning is worst");
        Margin noted =
                margin(judged(clutched(hindered, Setting.Lockup.OFF, OptionalDouble.empty())), Margin.Kind.APPLY);
        assertEquals(List.of(MarginNote.of(MarginNote.Remark.TURBINE_SPEED_NOT_GIVEN)), noted.notes());
        Margin locked = margin(judged(clutched(helped, Setting.Lockup.ON, OptionalDouble.empty())), Margin.Kind.APPLY);
        assertEquals(List.of(), locked.notes());
    }

    private static double needed(Clutch clutch, OptionalDouble turbine) {
        return margin(judged(clutched(clutch, Setting.Lockup.OFF, turbine)), Margin.Kind.APPLY)
                .needed();
    }

    /** 40 N·m × 1.25 over 0.12·0.12·0.03 m³ of apply less release pressure; half the lubrication is asked for. */
    @Test
    void theLockupIsJudgedByApplyLessReleaseAndLubricationByTheShareAsked() {
        Judgement judged =
                judged(clutched(clutch(Optional.empty(), Optional.empty()), Setting.Lockup.ON, OptionalDouble.empty()));
        Solution state = judged.outcome().state().orElseThrow();
        Margin lockup = margin(judged, Margin.Kind.LOCKUP);
        assertEquals(40 * 1.25 / (0.12 * 0.12 * 0.03), lockup.needed(), 1e-6);
        assertEquals(
                state.pressure("converter") - state.pressure("cooler-in"),
                lockup.value().orElseThrow(),
                1e-9);
        assertEquals(1e-5, margin(judged, Margin.Kind.LUBRICATION).needed(), 1e-15);
        assertEquals(1.5e-5, margin(judged, Margin.Kind.COOLER).needed(), 1e-15);
        assertEquals(2e5, margin(judged, Margin.Kind.CONVERTER_CHARGE).needed());
        assertEquals(
                judged.margins().stream()
                        .filter(Margin::known)
                        .mapToDouble(Margin::headroom)
                        .min()
                        .orElseThrow(),
                judged.least().orElseThrow().headroom());
    }

    @Test
    void whatIsNotKnownFailsAndComesFirst() {
        Margin unknown = Margin.notKnown(Margin.Kind.FILM, "hub", 3e-6, Margin.Scale.LENGTH);
        assertEquals(Margin.Verdict.FAILS, unknown.verdict());
        assertEquals(Double.NEGATIVE_INFINITY, unknown.headroom());
        assertEquals(
                Margin.Verdict.CLOSE,
                Margin.of(Margin.Kind.FILM, "hub", 3.2e-6, 3e-6, Margin.Scale.LENGTH)
                        .verdict());
        assertEquals(
                Margin.Verdict.HOLDS,
                Margin.of(Margin.Kind.UNIT_LOAD, "hub", 1e6, 2e6, Margin.Scale.PRESSURE)
                        .verdict());
        assertEquals(
                Double.POSITIVE_INFINITY,
                Margin.of(Margin.Kind.APPLY, "low", 1e6, -5, Margin.Scale.PRESSURE)
                        .headroom());
    }

    /** Where the pump cannot hold the line, lubrication fails for want of oil: the pump is told first, and lubrication follows. */
    @Test
    void whatTheRegulatorFeedsFailsBecauseThePumpDoes() {
        Judgement worn = judged(TenNodes.worn(4));
        Margin pump = margin(worn, Margin.Kind.REGULATION);
        Margin least = worn.least().orElseThrow();
        assertEquals(Margin.Verdict.FAILS, pump.verdict());
        assertFalse(worn.followsFromPump(pump));
        assertEquals(worn.followsFromPump(least) ? pump : least, worn.first().orElseThrow());
        worn.margins().stream()
                .filter(margin -> margin.kind() == Margin.Kind.LUBRICATION)
                .forEach(
                        margin -> assertEquals(margin.verdict() == Margin.Verdict.FAILS, worn.followsFromPump(margin)));
        Judgement fresh = judged(TenNodes.worn(1));
        assertEquals(fresh.least(), fresh.first());
    }

    @Test
    void whatIsAssessedOnceIsWhatEachPartOfItSays() {
        Transmission unit = TenNodes.worn(4);
        DutyPoint duty = unit.duties().get(0);
        Solution state = judged(unit).outcome().state().orElseThrow();
        Assessment assessed = Assessment.of(unit, duty, state);
        assertEquals(Figures.of(unit, state), assessed.figures());
        assertEquals(OilBudget.of(unit, state), assessed.budget());
        assertEquals(Consumers.of(assessed.roles(), duty, state), assessed.consumers());
    }

    /** What leaves at the open end of a full film comes along the bushing, half of what it turns out at both. */
    @Test
    void theOilFedToTheFilmIsJudgedAtTheDutysOwnSpeed() {
        Judgement judged = judged(TenNodes.worn(1));
        Solution state = judged.outcome().state().orElseThrow();
        Margin oil = margin(judged, Margin.Kind.FILM_OIL);
        assertEquals(state.flow("hub"), oil.value().orElseThrow());
        assertEquals(state.measure("hub", Bushing.SIDE_FLOW).orElseThrow() / 2, oil.needed(), 1e-12 * oil.needed());
    }

    /** Told on no oil, a film is that of a full one; with 1/300 of the oil that takes it is not known, however thick. */
    @Test
    void aFilmWithoutOilIsSaidToBeSuch() {
        Transmission unit = TenNodes.worn(1);
        Judgement judged = Judgement.of(unit, cold(unit.duties().get(0)), SPEEDS);
        Margin film = margin(judged, Margin.Kind.FILM);
        assertTrue(
                film.value().orElseThrow() > 8e-6,
                "thick by itself: " + film.value().orElseThrow());
        assertEquals(Margin.Verdict.NOT_KNOWN, film.verdict());
        assertEquals(MarginNote.Remark.FILM_SHORT_OF_OIL, film.notes().get(0).why());
        assertTrue(film.notes().get(0).share().orElseThrow() < 0.5, film.toString());
        assertEquals(
                Margin.Verdict.NOT_KNOWN, margin(judged, Margin.Kind.FILM_OIL).verdict());
        assertTrue(judged.undecided().contains(film), judged.undecided().toString());
        assertTrue(judged.least().orElseThrow().known());
    }

    private static DutyPoint cold(DutyPoint warm) {
        return new DutyPoint(
                warm.name(),
                "",
                900 / 60.0,
                warm.range(),
                warm.lockup(),
                warm.engineTorque(),
                warm.torqueRatio(),
                OptionalDouble.empty(),
                warm.lubeNeed(),
                java.util.Map.of("sump", 253.15, "film", 253.15),
                java.util.Map.of());
    }
}
