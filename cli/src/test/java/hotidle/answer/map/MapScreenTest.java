package hotidle.answer.map;

import static hotidle.answer.map.MadeMaps.HIGH;
import static hotidle.answer.map.MadeMaps.KNOWN;
import static hotidle.answer.map.MadeMaps.LOW;
import static hotidle.answer.map.MadeMaps.answer;
import static hotidle.answer.map.MadeMaps.axis;
import static hotidle.answer.map.MadeMaps.contact;
import static hotidle.answer.map.MadeMaps.lube;
import static hotidle.answer.map.MadeMaps.map;
import static hotidle.answer.map.MadeMaps.unknown;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Margin;
import hotidle.study.Judgement;
import hotidle.study.WindowMap;
import hotidle.transmission.SetPressure;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The first screen of {@link MadeMaps}. */
class MapScreenTest {

    @Test
    void theFirstScreenSaysAtWhichPressuresEachSizeHoldsAndWhatFailsBeyond() {
        List<String> screen = answer(KNOWN, UnitSystem.METRIC).screen().lines().toList();
        String all = String.join(" ", screen).replaceAll(" +", " ");
        assertTrue(all.contains("worn, hub.clearance 0.100 mm at 5.00 bar: narrow, +5 %;"), all);
        assertTrue(
                all.contains(
                        "worn: 2 of 4 points hold every limit, with most to spare at 0.100 mm and 10.00 bar (+32 %)"),
                all);
        assertTrue(all.contains("2 fail, worst at stall (1), hot-idle (1)."), all);
        assertTrue(
                screen.stream()
                        .anyMatch(line -> line.matches(
                                "0\\.100 +5\\.00 to 10\\.00 +not tried +not tried +\\+32 % \\(10\\.00\\)")),
                all);
        assertTrue(
                screen.stream()
                        .anyMatch(line -> line.matches("0\\.200 +nowhere +hub film ~ \\(5\\.00\\) +lubrication"
                                + " \\(10\\.00\\) +-12 % \\(10\\.00\\)")),
                all);
    }

    /** Where nothing holds, the ends of a row name the limits that the picture has there, not that of its best point. */
    @Test
    void tableAndPictureNameTheSameLimitWhereNothingHolds() {
        WindowMap.MapCell end = KNOWN.cells().get(1).get(0);
        assertTrue(end.least().orElseThrow().key().kind() == Margin.Kind.FILM);
        String row = answer(KNOWN, UnitSystem.METRIC)
                .screen()
                .lines()
                .filter(line -> line.contains("nowhere"))
                .findFirst()
                .orElseThrow();
        assertTrue(row.contains("hub film ~ (5.00)"), row);
    }

    /** A hundredth of a thousandth of an inch apart: the one is what the file tells, the other what was asked for. */
    @Test
    void noTwoSizesReadTheSame() {
        WindowMap near = new WindowMap(
                axis(WearSize.SizeKind.LENGTH, OptionalDouble.empty()),
                List.of(LOW),
                List.of(1e-4, 1.003e-4),
                List.of(List.of(lube(LOW, 1e-4, 0.1)), List.of(lube(LOW, 1.003e-4, 0.1))),
                List.of());
        List<String> rows = answer(near, UnitSystem.SHOP)
                .screen()
                .lines()
                .filter(line -> line.matches("0\\.00.*"))
                .map(line -> line.substring(0, line.indexOf(' ')))
                .toList();
        assertTrue(rows.equals(List.of("0.00394", "0.00395")), rows.toString());
    }

    /** A film is a limit whose need is assumed; what is not known is not said to hold. */
    @Test
    void theFirstScreenMarksWhatIsAssumedAndSaysWhatIsNotKnown() {
        WindowMap map = map(1e-4, unknown(HIGH, 2e-4), new WindowMap.NamedCell("worn", contact(LOW, 2e-4)));
        String screen = answer(map, UnitSystem.METRIC).screen().replaceAll("\\s+", " ");
        assertTrue(screen.contains("hub film (hub) at stall (assumed): metal touches"), screen);
        assertTrue(screen.contains("hub film ~ (5.00)"), screen);
        assertTrue(screen.contains("not known at 1 point: unsolved at stall"), screen);
    }

    @Test
    void theFirstScreenFitsHoweverManyBuildsAndSizes() {
        List<Double> sizes = new java.util.ArrayList<>();
        List<List<WindowMap.MapCell>> cells = new java.util.ArrayList<>();
        List<Judgement.Key> open = java.util.stream.IntStream.range(0, 40)
                .mapToObj(i -> new Judgement.Key("driving-condition-" + i, Margin.Kind.FILM, "hub-bushing-" + i))
                .toList();
        for (int i = 0; i < 30; i++) {
            sizes.add(1e-4 * (i + 1));
            WindowMap.MapCell cell = lube(LOW, sizes.get(i), 0.1);
            cells.add(
                    List.of(new WindowMap.MapCell(LOW, sizes.get(i), cell.least(), Optional.empty(), open, Map.of())));
        }
        WindowMap map = new WindowMap(
                axis(WearSize.SizeKind.LENGTH, OptionalDouble.empty()),
                List.of(LOW),
                sizes,
                cells,
                List.of(
                        new WindowMap.NamedCell("as measured", cells.get(17).get(0)),
                        new WindowMap.NamedCell("new", cells.get(3).get(0))));
        for (int builds : List.of(1, 2, 4, 9)) {
            List<MapAnswer.Mapped> mapped = java.util.stream.IntStream.range(0, builds)
                    .mapToObj(i -> new MapAnswer.Mapped("a-build-with-a-long-name-" + i, map, false))
                    .toList();
            List<String> lines = new MapAnswer(
                            UnitSystem.SHOP, "rig", "", "", SetPressure.By.COMMAND_AND_SPRING, mapped)
                    .screen()
                    .lines()
                    .toList();
            assertTrue(lines.size() <= 24, builds + " builds take " + lines.size() + " lines");
            lines.forEach(line -> assertTrue(line.length() <= 100, line));
            assertTrue(
                    String.join(" ", lines)
                            .replaceAll(" +", " ")
                            .contains("a-build-with-a-long-name-0: 30 of 30 points hold"),
                    lines.toString());
        }
    }
}
