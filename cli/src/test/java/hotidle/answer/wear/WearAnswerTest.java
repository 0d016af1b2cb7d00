package hotidle.answer.wear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.answer.page.PageTable;
import hotidle.assess.Margin;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.study.FilmFeed;
import hotidle.study.Judgement;
import hotidle.study.Wear;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class WearAnswerTest {

    private static final List<WearSize> WEARING = wearing("worn");

    private static List<WearSize> wearing(String build) {
        return Wear.fits(CircuitReader.read(Library.text("crescent-four").orElseThrow(), "crescent-four.yaml")
                .circuit()
                .orElseThrow()
                .adjustable(build));
    }

    private static final Judgement.Key COOLER = new Judgement.Key("hot-idle", Margin.Kind.COOLER, "cooler");
    private static final WearSize FIRST = WEARING.get(0);

    private static WearAnswer answer(int held, List<Wear.WornFit> fits, Optional<Wear.Together> together) {
        return answer(List.of(bench("bench", held, List.of(), fits, together)));
    }

    private static WearAnswer answer(List<BuildWear> builds) {
        return new WearAnswer(UnitSystem.SHOP, "rig", "", "", builds);
    }

    private static BuildWear bench(
            String name,
            int held,
            List<Judgement.Key> already,
            List<Wear.WornFit> fits,
            Optional<Wear.Together> together) {
        return new BuildWear(
                name,
                OptionalDouble.of(1e6),
                wearing("fresh"),
                new Wear(held, already, fits, together, List.of(), List.of(), List.of()));
    }

    private static Wear.WornFit gone(double further) {
        return new Wear.WornFit(
                FIRST,
                Optional.of(FIRST.value() + further),
                List.of(COOLER),
                FIRST.value() + 1e-3,
                OptionalDouble.empty());
    }

    @Test
    void theWearThatIsLeftIsToldInThousandthsOfAnInch() {
        String screen = answer(1, List.of(gone(50.8e-6)), Optional.empty()).full();
        assertTrue(screen.contains("2.00  cooler (cooler), hot-idle"), screen);
    }

    /** The table of a report, in inches and thousandths, beside the JSON in metres. */
    @Test
    void theTableOnAPageHasTheNumbersOfTheRecord() {
        WearAnswer answer = answer(1, List.of(gone(50.8e-6), gone(7.3e-6)), Optional.empty());
        JsonNode fits = Json.tree(answer.json()).at("/builds/0/fits");
        List<PageTable.HeadedRow> rows = answer.page().stream()
                .flatMap(block -> block.tables().stream())
                .findFirst()
                .orElseThrow()
                .rows();
        assertEquals(2, rows.size());
        for (PageTable.HeadedRow row : rows) {
            List<String> cells =
                    row.cells().stream().map(PageTable.TableCell::text).toList();
            long same = 0;
            for (JsonNode fit : fits) {
                double asIs = fit.get("as_is").doubleValue();
                double gone = fit.get("gone_at").doubleValue();
                if (cells.subList(0, 3)
                        .equals(List.of(
                                String.format(Locale.ROOT, "%.5f", asIs / 0.0254),
                                String.format(Locale.ROOT, "%.3f", (gone - asIs) / 2.54e-5),
                                String.format(Locale.ROOT, "%.5f", gone / 0.0254)))) {
                    same++;
                }
            }
            assertEquals(1, same, cells.toString());
        }
    }

    @Test
    void aFitThatTakesNothingAwayIsNamedBeneathTheTable() {
        Wear.WornFit harmless =
                new Wear.WornFit(FIRST, Optional.empty(), List.of(), FIRST.value() + 1e-3, OptionalDouble.empty());
        WearAnswer answer = answer(1, List.of(harmless), Optional.empty());
        assertTrue(answer.full().contains("No fit alone takes a limit away."));
        assertTrue(answer.full().replaceAll("\\s+", " ").contains("allowance further: " + FIRST.name()));
        assertTrue(answer.csv().contains(",none,-,-,"), answer.csv());
        assertTrue(Json.tree(answer.json()).at("/builds/0/fits/0/gone_at").isNull());
    }

    /** The worn ready circuit: sizes counted from new would lie behind those that it has. */
    @Test
    void whatAllMayWearFromNewIsNoColumnWhereAFitIsPastIt() {
        Wear.Together early = new Wear.Together(Optional.of(0.01), List.of(COOLER), List.of(), 8);
        Wear wear = new Wear(1, List.of(), List.of(gone(50.8e-6)), Optional.of(early), List.of(), List.of(), List.of());
        String past = answer(List.of(new BuildWear("worn", OptionalDouble.of(1e6), WEARING, wear)))
                .screen();
        assertFalse(past.contains("all together"), past);
        assertTrue(past.replaceAll("\\s+", " ").contains("All worn alike from new could reach 1 % of theirs"), past);
        Wear.Together late = new Wear.Together(Optional.of(7.5), List.of(COOLER), List.of(), 8);
        String ahead = answer(1, List.of(gone(50.8e-6)), Optional.of(late)).screen();
        assertTrue(ahead.replaceAll("\\s+", " ").contains("all together"), ahead);
        assertTrue(ahead.contains("may wear 750 % of its written limits"), ahead);
    }

    /** A build after jobs is in no file, so that no command can be asked for it by its name. */
    @Test
    void whatWasDoneHeadsTheScreenAndTheNextCommandTakesTheSameOptions() {
        BuildWear after = bench("worn-after", 1, List.of(), List.of(gone(50.8e-6)), Optional.empty());
        String screen = new WearAnswer(UnitSystem.SHOP, "rig", "", "after the job pump", List.of(after)).screen();
        assertTrue(screen.startsWith("rig, after the job pump: how far fits may wear"), screen);
        assertTrue(screen.replaceAll("\\s+", " ").contains("'hotidle margins' with the same options says"), screen);
        assertFalse(screen.contains("--build worn-after"), screen);
    }

    @Test
    void theTightestFitsHaveRoomBeforeWhatElseIsSaid() {
        List<Wear.WornFit> fits = new java.util.ArrayList<>();
        for (WearSize size : WEARING) {
            fits.add(new Wear.WornFit(
                    size,
                    Optional.of(size.value() + 1e-5),
                    List.of(COOLER),
                    size.value() + 1e-3,
                    OptionalDouble.of(size.fresh())));
        }
        String screen = answer(1, fits, Optional.empty()).screen();
        assertTrue(screen.lines().count() <= 24, screen);
        assertTrue(
                screen.lines().filter(line -> line.endsWith("cooler, hot-idle")).count() >= 3, screen);
    }

    @Test
    void whereNoLimitHoldsNoWearIsSaidToTakeOneAway() {
        String screen = answer(0, List.of(gone(1e-4)), Optional.empty()).full();
        assertTrue(screen.contains("no limit holds"), screen);
        assertFalse(screen.contains("first limit gone"), screen);
    }

    @Test
    void allTogetherStandInTheRecordOnlyWhereLimitsAreWritten() {
        JsonNode without =
                Json.tree(answer(1, List.of(), Optional.empty()).json()).at("/builds/0");
        assertFalse(without.has("together"));
        Wear.Together all = new Wear.Together(Optional.of(0.5), List.of(COOLER), List.of(), 8);
        JsonNode with = Json.tree(answer(1, List.of(), Optional.of(all)).json()).at("/builds/0/together");
        assertEquals(0.5, with.get("share_of_written_limits").doubleValue());
        assertEquals("cooler", with.at("/first_gone/0/margin").textValue());
    }

    /** A bore that no limit keeps from wearing by 0.08 mm, where service manuals stop at 0.05 mm. */
    @Test
    void aBushingsWearIsNotToldAsMoreGenerousWithoutSayingSo() {
        Wear.WornFit far = new Wear.WornFit(
                FIRST,
                Optional.of(FIRST.fresh() + 0.08e-3),
                List.of(COOLER),
                FIRST.value() + 1e-3,
                OptionalDouble.of(FIRST.fresh() + 0.05e-3));
        String screen = answer(1, List.of(far), Optional.empty()).full().replaceAll("\\s+", " ");
        assertTrue(screen.contains("(0.05 mm beyond new), less than the limits judged here do"), screen);
        assertTrue(Json.tree(answer(1, List.of(far), Optional.empty()).json())
                .at("/builds/0/fits/0/published_allowance")
                .isNumber());
    }

    @Test
    void whatIsNotKnownAndHowTightAFitMayBeAreSaidOnce() {
        Judgement.Key film = new Judgement.Key("hot-idle", Margin.Kind.FILM, "hub-bushing");
        Judgement.Key oil = new Judgement.Key("stall", Margin.Kind.FILM_OIL, "hub-bushing");
        FilmFeed feed = new FilmFeed(FIRST, Optional.of(30e-6), Optional.of(oil), 10e-6);
        Wear wear = new Wear(
                1, List.of(), List.of(gone(1e-5)), Optional.empty(), List.of(film, oil), List.of(feed), List.of());
        String screen = answer(List.of(new BuildWear("bench", OptionalDouble.of(1e6), WEARING, wear)))
                .full()
                .replaceAll("\\s+", " ");
        assertTrue(
                screen.contains("Not known, and left out: hub film (hub-bushing) at hot-idle; hub film oil"), screen);
        assertTrue(screen.contains("below 0.030 mm a full film gets too little oil at stall"), screen);
    }

    private static final Wear.Together HALF = new Wear.Together(Optional.of(0.51), List.of(COOLER), List.of(), 8);

    private static Wear.WornFit fit(int which, double share) {
        WearSize size = WEARING.get(which);
        return new Wear.WornFit(
                size, Optional.of(size.fresh() + share * size.allowance()), List.of(COOLER), 1, OptionalDouble.empty());
    }

    @Test
    void buildsStandBesideEachOtherWithTheShareOfTheirLimitsThatTheyMayWear() {
        Wear.Together little = new Wear.Together(Optional.of(0.09), List.of(COOLER), List.of(), 8);
        String screen = answer(List.of(
                        bench("low", 1, List.of(), List.of(gone(50.8e-6)), Optional.of(HALF)),
                        bench("high", 1, List.of(), List.of(gone(25.4e-6)), Optional.of(little))))
                .screen();
        assertTrue(screen.contains("low at 145 psi: may wear 51 % of its written limits"), screen);
        assertTrue(screen.contains("high at 145 psi: may wear 9 % of its written limits"), screen);
        assertTrue(screen.contains("2.000 thou") && screen.contains("1.000 thou"), screen);
    }

    @Test
    void aBuildThatFailsAsItIsHasNoneLeftAndTheLimitIsNamed() {
        String screen = answer(List.of(bench("bench", 3, List.of(COOLER), List.of(gone(1e-4)), Optional.of(HALF))))
                .screen();
        assertTrue(
                screen.contains("bench at 145 psi: NONE LEFT. It fails as it is: cooler (cooler) at hot-idle."),
                screen);
        assertFalse(screen.contains("tightest"), screen);
    }

    /** What is wider than a screen with the sizes of all fits worn alike goes without them; they stand in the full text. */
    @Test
    void aLongNameOfADrivingConditionTakesTheColumnOfAllTogetherAndNoWidth() {
        for (String duty : List.of("hot-idle", "full-throttle-shift-uphill")) {
            Wear.WornFit tight = new Wear.WornFit(
                    FIRST,
                    Optional.of(FIRST.value() + 1e-5),
                    List.of(new Judgement.Key(duty, Margin.Kind.APPLY, "low-clutch")),
                    FIRST.value() + 1e-3,
                    OptionalDouble.empty());
            String screen = answer(1, List.of(tight), Optional.of(HALF)).screen();
            assertTrue(screen.lines().allMatch(line -> line.length() <= 100), screen);
            String head = screen.substring(screen.indexOf("\n\n"), screen.indexOf("-----"));
            assertEquals(duty.equals("hot-idle"), head.contains("together"), screen);
        }
    }

    /** A bore of 17 mm and a gap of 4 um in one column, and no bore that looks like its limit. */
    @Test
    void everyLengthOfAColumnHasTheUnitOfItsHeadAndTheWrittenLimitBesideIt() {
        String screen =
                answer(1, List.of(fit(0, 0.4), fit(1, 0.6)), Optional.of(HALF)).screen();
        List<String> table = screen.lines()
                .dropWhile(line -> !line.startsWith("tightest"))
                .takeWhile(line -> !line.isBlank())
                .toList();
        int rule = table.indexOf(
                table.stream().filter(line -> line.matches("-+")).findFirst().orElseThrow());
        String head = String.join(" ", table.subList(0, rule));
        assertEquals(4, head.split("\\[in]", -1).length - 1, head);
        assertEquals(1, head.split("\\[thou]", -1).length - 1, head);
        assertEquals(2, table.size() - rule - 1);
        table.stream()
                .skip(rule + 1)
                .forEach(row -> assertTrue(
                        row.matches("\\S+ +0\\.\\d{5} +\\d+\\.\\d{3}( +0\\.\\d{5}){3} +cooler, hot-idle"), row));
    }

    @Test
    void writtenLimitsThatAreTooLooseAreCountedAndTheWorstNamedFirst() {
        String screen = answer(1, List.of(fit(0, 1.5), fit(1, 0.6), fit(2, 0.3)), Optional.of(HALF))
                .screen()
                .replaceAll("\\s+", " ");
        assertTrue(
                screen.contains(
                        "2 of 3 written limits are too loose for this pressure; alone each fails at so much of the way from new"
                                + " to it: "
                                + WEARING.get(2).name() + " 30 %, "
                                + WEARING.get(1).name() + " 60 %."),
                screen);
    }
}
