package hotidle.study.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Readings of a small unit with a known fault, taken without error, are explained by that fault. */
class GaugeStudyTest {

    private static final Adjustable BUILD = Tapped.build();
    private static final Transmission SOUND = BUILD.unit();
    private static GaugeTable table;

    /** Not while the class is initialised: its lambdas run on other threads, which would wait for it. */
    @BeforeAll
    static void solve() {
        table = GaugeTable.of(BUILD, Tapped.readings(SOUND), () -> {});
    }

    private static UnitFault fault(String name) {
        return UnitFaults.of(BUILD).stream()
                .filter(fault -> fault.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static GaugeFindings found(String name, double size) {
        return GaugeStudy.of(table, Tapped.readings(fault(name).in(BUILD, size).orElseThrow()));
    }

    private static Cause cause(GaugeFindings found, String name) {
        return found.causes().stream()
                .filter(cause -> cause.fault().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aSoundUnitAgreesWithItsBuildAndNothingStandsOut() {
        GaugeFindings found = GaugeStudy.of(table, Tapped.readings(SOUND));
        assertTrue(found.agreement().agrees());
        assertEquals(0, found.agreement().chiSquare(), 1e-9);
        assertEquals(1, found.agreement().probability(), 1e-9);
        assertEquals(List.of(), found.groups());
        assertFalse(found.standsOut(0));
        assertFalse(found.lineLow("line"));
        assertEquals(List.of(), NextReadings.of(BUILD, found, 3));
    }

    @Test
    void aBlockedCoolerIsFoundWithItsSize() {
        GaugeFindings found = found("cooler-blocked@cooler", 0.8);
        assertFalse(found.agreement().agrees());
        Cause first = found.first().orElseThrow().leader();
        assertEquals("cooler-blocked@cooler", first.fault().name());
        assertEquals(0.8, first.size(), 0.05);
        assertTrue(first.low() < 0.8 && 0.8 < first.high(), first.low() + " to " + first.high());
        assertTrue(first.chiSquare() < 1, "misfit left " + first.chiSquare());
        assertTrue(first.share() > 0.5, "share " + first.share());
    }

    @Test
    void aWeakSpringIsFoundAndALeakIsNot() {
        GaugeFindings found = found("spring-weak@regulator", 0.5);
        assertEquals(
                "spring-weak@regulator",
                found.first().orElseThrow().leader().fault().name());
        assertTrue(cause(found, "bore-worn@bores").share() < 1e-3);
        assertTrue(found.lineLow("line"), "the line is low at idle");
    }

    @Test
    void sharesOfAllCausesWithNoneAndPairsAreOne() {
        GaugeFindings found = found("cooler-blocked@cooler", 0.8);
        double sum = found.none()
                + found.causes().stream().mapToDouble(Cause::share).sum()
                + found.pairs().stream().mapToDouble(GaugeFindings.Pair::share).sum();
        assertEquals(1, sum, 1e-9);
        double alone = found.causes().stream().mapToDouble(Cause::share).sum();
        double told =
                found.groups().stream().mapToDouble(GaugeFindings.Group::share).sum();
        assertTrue(told >= GaugeFindings.LEADING * alone, told + " of " + alone);
        double butLast = told - found.groups().get(found.groups().size() - 1).share();
        assertTrue(butLast < GaugeFindings.LEADING * alone, butLast + " of " + alone);
    }

    @Test
    void twoFaultsThatNoneExplainsAloneAreFoundAsAPair() {
        Transmission sick = UnitFault.in(
                        BUILD,
                        List.of(
                                fault("cooler-blocked@cooler").of(0.8),
                                fault("spring-weak@regulator").of(0.4)))
                .orElseThrow();
        GaugeFindings found = GaugeStudy.of(table, Tapped.readings(sick));
        GaugeFindings.Pair pair = found.pairs().stream()
                .filter(one -> java.util.stream.Stream.of(one.one(), one.other())
                        .map(fault -> fault.fault().name())
                        .sorted()
                        .toList()
                        .equals(List.of("cooler-blocked@cooler", "spring-weak@regulator")))
                .findFirst()
                .orElseThrow();
        assertTrue(pair.chiSquare() < found.agreement().degrees(), "misfit left " + pair.chiSquare());
        double pairs =
                found.pairs().stream().mapToDouble(GaugeFindings.Pair::share).sum();
        double alone = found.causes().stream().mapToDouble(Cause::share).sum();
        assertTrue(pairs > alone, pairs + " for pairs, " + alone + " for one fault");
    }

    @Test
    void whatCannotShowIsToldAndWhatIsHiddenIsSmallerThanWhatShows() {
        GaugeFindings found = GaugeStudy.of(table, Tapped.readings(SOUND));
        Cause ball = cause(found, "check-ball-missing@check");
        Cause cooler = cause(found, "cooler-blocked@cooler");
        assertTrue(cooler.visible());
        assertTrue(cooler.hidden() > 0 && cooler.hidden() < 0.8, "hidden up to " + cooler.hidden());
        assertEquals(!ball.visible(), found.invisible().contains(ball));
        Expectation before = table.sound();
        Misfit misfit = new Misfit(Tapped.readings(SOUND));
        CauseCurve curve = table.curves().stream()
                .filter(one -> one.fault().equals(cooler.fault()))
                .findFirst()
                .orElseThrow();
        double at = misfit.distance(before, curve.at(cooler.fault().wayTo(cooler.hidden())));
        assertEquals(GaugeFindings.VISIBLE, at, 0.5);
    }

    @Test
    void aNeedleOnItsStopCountsAsLessThanItsEnd() {
        List<GaugeReading> readings = new ArrayList<>(Tapped.readings(SOUND));
        GaugeReading line = readings.get(0);
        readings.set(
                0,
                new GaugeReading(
                        line.meter(), line.at(), GaugeReading.Sense.BELOW, 0.5 * line.value(), line.deviation()));
        GaugeFindings low = GaugeStudy.of(table, readings);
        assertTrue(low.standsOut(0));
        assertFalse(low.agreement().agrees());
        readings.set(
                0,
                new GaugeReading(
                        line.meter(), line.at(), GaugeReading.Sense.BELOW, 2 * line.value(), line.deviation()));
        assertTrue(GaugeStudy.of(table, readings).agreement().agrees());
    }

    @Test
    void theNextReadingIsWhatEachCauseMakesOfIt() {
        List<GaugeReading> lineAlone = Tapped.readings(
                        fault("spring-weak@regulator").in(BUILD, 0.5).orElseThrow())
                .subList(0, 1);
        GaugeFindings found = GaugeStudy.of(BUILD, lineAlone, () -> {});
        List<NextReading> next = NextReadings.of(BUILD, found, 3);
        assertFalse(next.isEmpty());
        NextReading best = next.get(0);
        assertTrue(best.information() > 0.05 && best.information() <= 1, "information " + best.information());
        for (NextReading.Prediction one : best.predicted()) {
            Transmission unit =
                    one.cause().fault().in(BUILD, one.cause().size()).orElseThrow();
            var state = Tapped.solved(unit, best.row().at());
            double value = best.row().meter().reads() == Meter.Reads.FLOW
                    ? state.flow(best.row().meter().name())
                    : state.pressure(best.row().meter().node());
            assertEquals(
                    value,
                    one.value(),
                    1e-6 * Math.abs(value) + 1e-9,
                    one.cause().fault().name());
        }
    }

    @Test
    void whatIsCommandedMovesThePilotAndTheLine() {
        TestPoint usual = Tapped.at(1500);
        TestPoint high = new TestPoint(
                usual.speed(), usual.temperature(), "first", OptionalDouble.of(170 * 6894.757), OptionalDouble.empty());
        TestPoint torque = new TestPoint(
                usual.speed(), usual.temperature(), "first", OptionalDouble.empty(), OptionalDouble.of(40));
        assertTrue(Tapped.solved(SOUND, high).pressure("line")
                > 1.05 * Tapped.solved(SOUND, usual).pressure("line"));
        assertEquals(
                Tapped.solved(SOUND, usual).pressure("line"),
                Tapped.solved(SOUND, torque).pressure("line"),
                1e-3);
        assertEquals(Tapped.HOT + 15, usual.conditions(SOUND).temperatures().get("film"), 1e-9);
    }

    @Test
    void aSoundUnitReadsWithinItsAcceptanceSheet() {
        AcceptanceSheet sheet = AcceptanceSheet.of(BUILD);
        assertEquals(List.of(), sheet.unsolved());
        assertTrue(sheet.lines().stream().anyMatch(line -> line.meter().name().equals("cooler")));
        for (AcceptanceSheet.Line line : sheet.lines()) {
            assertTrue(
                    line.low() < line.mean() && line.mean() < line.high(),
                    line.meter().name());
            if (line.meter().reads() == Meter.Reads.PRESSURE) {
                assertEquals(
                        Tapped.solved(SOUND, line.at()).pressure(line.meter().node()), line.mean(), 1e-6 * line.mean());
            }
        }
    }
}
