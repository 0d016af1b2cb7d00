package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class WindowTest {

    private static final double PSI = TenNodes.PSI;
    private static final List<Double> SPEEDS =
            IntStream.rangeClosed(2, 12).mapToObj(i -> 250.0 * i / 60).toList();

    private static List<Double> pressures(int from, int to, int step) {
        return IntStream.rangeClosed(0, (to - from) / step)
                .mapToObj(i -> (from + i * step) * PSI)
                .toList();
    }

    private static boolean fails(Transmission unit, double pressure, Judgement.Key key) {
        Transmission set = SetPressure.of(unit, pressure);
        return BoundarySearch.gone(Judgement.one(set, set.duties().get(0), SPEEDS, key));
    }

    /** A worn unit holds a low set pressure only; one per cent more than the highest found, and the margin named is gone. */
    @Test
    void onePerCentBeyondAnEndOfTheWindowTheMarginNamedFailsAndOnePerCentWithinItHolds() {
        Transmission unit = TenNodes.worn(3);
        Window window = Window.study(unit, pressures(40, 240, 40), SPEEDS, () -> {});
        int ends = 0;
        for (Window.Span span : window.spans()) {
            for (Window.PressureRange range : span.ranges()) {
                if (range.highBy().isPresent()) {
                    ends++;
                    Judgement.Key key = range.highBy().get();
                    assertEquals(span.kind(), key.kind());
                    assertTrue(fails(unit, range.high() * 1.01, key), key + " above " + range.high() / PSI);
                    assertFalse(fails(unit, range.high() / 1.01, key), key + " below " + range.high() / PSI);
                }
                if (range.lowBy().isPresent()) {
                    ends++;
                    Judgement.Key key = range.lowBy().get();
                    assertTrue(fails(unit, range.low() / 1.01, key), key + " below " + range.low() / PSI);
                    assertFalse(fails(unit, range.low() * 1.01, key), key + " above " + range.low() / PSI);
                }
            }
        }
        assertTrue(ends >= 2, ends + " ends");
        for (Window.PressureRange all : window.all()) {
            for (Window.Span span : window.spans()) {
                assertTrue(span.ranges().stream()
                        .anyMatch(range -> range.low() <= all.low() * 1.001 && range.high() >= all.high() / 1.001));
            }
        }
    }

    @Test
    void aMarginThatNeverHoldsNamesItsWorstDutyAndLeavesNoWindow() {
        Transmission unit = TenNodes.worn(12);
        Window window = Window.study(unit, pressures(100, 200, 50), SPEEDS, () -> {});
        assertEquals(List.of(), window.all());
        Window.Span never = window.spans().stream()
                .filter(span -> span.ranges().isEmpty())
                .findFirst()
                .orElseThrow();
        assertEquals("hot-idle", never.worst().orElseThrow().duty());
        assertEquals(3, window.points().size());
    }

    /** Needs at least and allows at most that leave a gap narrower than the pressures tried are still found. */
    @Test
    void aRangeBetweenTwoPressuresTriedIsFound() {
        Transmission unit = TenNodes.worn(3);
        Window fine = Window.study(unit, pressures(40, 240, 40), SPEEDS, () -> {});
        double high = span(fine, Margin.Kind.REGULATION).high();
        Window coarse = Window.study(unit, List.of(high / 2, high * 1.5), SPEEDS, () -> {});
        assertEquals(high, span(coarse, Margin.Kind.REGULATION).high(), 1e-3 * high);
    }

    /** An endless speed stands for one at which no state is found. */
    @Test
    void aSetPressureAtWhichSomethingWasNotFoundNamesTheDuty() {
        Transmission unit = TenNodes.worn(1);
        List<Double> speeds = List.of(SPEEDS.get(0), SPEEDS.get(4), Double.POSITIVE_INFINITY);
        Window open = Window.study(unit, pressures(100, 200, 100), speeds, () -> {});
        assertEquals(open.points(), open.notKnown());
        open.points().forEach(point -> assertEquals(List.of("hot-idle"), point.unsolved()));
        Window known = Window.study(unit, pressures(100, 200, 100), speeds.subList(0, 2), () -> {});
        assertEquals(List.of(), known.notKnown());
    }

    private static Window.PressureRange span(Window window, Margin.Kind kind) {
        Optional<Window.Span> found =
                window.spans().stream().filter(span -> span.kind() == kind).findFirst();
        return found.orElseThrow().ranges().get(0);
    }

    /** The film is thicker than its roughness asks and thinner than a published criterion does: no end, but named. */
    @Test
    void whatIsNotKnownEndsNoRangeAndIsNamedBesideIt() {
        Window window = Window.study(TenNodes.worn(1), pressures(40, 80, 20), SPEEDS, () -> {});
        Window.Span film = window.spans().stream()
                .filter(span -> span.kind() == Margin.Kind.FILM)
                .findFirst()
                .orElseThrow();
        assertEquals(1, film.ranges().size());
        assertEquals(40 * PSI, film.ranges().get(0).low(), 1e-9);
        Margin lowest = window.points().get(0).margins().get(film.undecided().get(0));
        assertEquals(Margin.Verdict.NOT_KNOWN, lowest.verdict());
        assertEquals(
                List.of("hot-idle"),
                film.undecided().stream().map(Judgement.Key::duty).toList());
        assertTrue(
                window.undecided().contains(film.undecided().get(0)),
                window.undecided().toString());
        assertTrue(window.spans().stream()
                .filter(span -> span.kind() == Margin.Kind.REGULATION)
                .allMatch(span -> span.undecided().isEmpty()));
    }
}
