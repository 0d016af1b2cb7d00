package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.result.Outcome;
import hotidle.result.Unsolved;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class JudgedBuildTest {

    private static final List<Double> SPEEDS =
            IntStream.rangeClosed(2, 12).mapToObj(i -> 250.0 * i / 60).toList();
    private final JudgedBuild fresh = judged(1);
    private final JudgedBuild worn = judged(4);

    private static JudgedBuild judged(double wear) {
        return JudgedBuild.study(List.of(TenNodes.worn(wear)), SPEEDS, () -> {}).get(0);
    }

    private static Judgement unsolved(Judgement like) {
        return new Judgement(
                like.unit(),
                like.duty(),
                Outcome.of(like.outcome().conditions(), new Unsolved(0.3, "node line", List.of("Newton"))),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Map.of(),
                Map.of());
    }

    @Test
    void eachBuildIsJudgedAtEachOfItsDutiesAndSaysHowFarItIs() {
        AtomicInteger steps = new AtomicInteger();
        List<Transmission> units = List.of(TenNodes.worn(1), TenNodes.worn(2));
        List<JudgedBuild> builds = JudgedBuild.study(units, SPEEDS, steps::incrementAndGet);
        assertEquals(2, steps.get());
        assertEquals(units, builds.stream().map(JudgedBuild::unit).toList());
        builds.forEach(build -> assertEquals(build.unit(), build.duties().get(0).unit()));
    }

    @Test
    void aPumpThatCannotHoldTheLineIsToldFirstWithWhatIsShortBecauseOfIt() {
        BuildVerdict.FirstLimit first = worn.verdict().first().orElseThrow();
        assertEquals(Margin.Kind.REGULATION, first.margin().kind());
        PumpShortage why = first.shortage().orElseThrow();
        assertFalse(why.regulated());
        assertTrue(why.line() < why.set(), why.line() + " of " + why.set());
        assertEquals(150 * TenNodes.PSI, why.set(), 1);
        assertTrue(
                why.follows().contains(Margin.Kind.LUBRICATION), why.follows().toString());
        assertEquals(
                why.follows().stream().distinct().toList(),
                why.follows(),
                "two branches of the lubrication are one kind");
        assertTrue(worn.lowAtIdle(), "no stall test with a line that is not held at idle");
    }

    @Test
    void aBuildWhosePumpHasOilToSpareHasNoShortageAndMayBeStalled() {
        assertEquals(Optional.empty(), fresh.duties().get(0).shortage());
        assertEquals(Optional.empty(), fresh.verdict().first().orElseThrow().shortage());
        assertFalse(fresh.lowAtIdle());
        assertTrue(fresh.known());
    }

    @Test
    void aDutyWithoutASteadyStateIsNamedAndTheBuildIsNotKnown() {
        JudgedBuild none =
                new JudgedBuild(fresh.unit(), List.of(unsolved(fresh.duties().get(0))));
        assertEquals(Optional.of("hot-idle"), none.verdict().notKnown());
        assertEquals(Optional.empty(), none.verdict().first());
        assertFalse(none.known());
        assertTrue(none.lowAtIdle(), "a line that is not known at idle is no line to stall on");
    }

    @Test
    void aSpeedAtWhichTheHubIsNotKnownLeavesTheBuildNotKnown() {
        Judgement judged = Judgement.of(
                fresh.unit(),
                fresh.duties().get(0).duty(),
                List.of(SPEEDS.get(0), SPEEDS.get(4), Double.POSITIVE_INFINITY));
        assertEquals(1, judged.hubNotKnown().size());
        assertFalse(judged.known());
        assertTrue(judged.figures().isPresent());
    }

    @Test
    void theHubIsToldWhereItsFilmIsThinnest() {
        HubLoad hub = worn.duties().get(0).hubWhereThinnest().orElseThrow();
        Margin film = worn.duties().get(0).margins().stream()
                .filter(margin -> margin.kind() == Margin.Kind.FILM)
                .findFirst()
                .orElseThrow();
        assertEquals(film.value().orElseThrow(), hub.edgeFilm());
        assertTrue(hub.edgeFilm() <= hub.film());
        assertEquals(film.speed().orElseThrow(), hub.speed());
        assertTrue(hub.load() > 0 && hub.unitLoad() > 0 && hub.trumplerFilm() > hub.film());
    }

    @Test
    void atTheSameSpeedTheFilmOfABuildIsItsThinnestAndTheOtherOneStandsBesideIt() {
        SameSpeedFilms films = SameSpeedFilms.of(List.of(fresh, worn));
        assertEquals(2, films.rows().size());
        for (int build = 0; build < 2; build++) {
            JudgedBuild own = List.of(fresh, worn).get(build);
            SameSpeedFilms.FilmsAtSpeed row = films.rows().get(build);
            HubLoad thinnest = own.duties().get(0).hubWhereThinnest().orElseThrow();
            assertEquals(thinnest.speed(), row.speed());
            assertEquals(thinnest.edgeFilm(), row.films().get(build).least().orElseThrow(), 1e-6 * thinnest.edgeFilm());
            assertEquals(
                    SameSpeedFilms.FilmFinding.KNOWN, row.films().get(1 - build).found());
        }
        assertEquals(List.of(), SameSpeedFilms.of(List.of(worn)).rows(), "one build has nothing beside it");
    }
}
