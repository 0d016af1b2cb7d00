package hotidle.answer.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.ReadyCircuits;
import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.answer.page.Block;
import hotidle.answer.page.Figure;
import hotidle.answer.page.Page;
import hotidle.answer.page.PageTable;
import hotidle.answer.page.Section;
import hotidle.answer.phrase.FaultMeasurePhrase;
import hotidle.answer.phrase.LessonPhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.WrittenFault;
import hotidle.fault.FaultKind;
import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.study.SpeedSweep;
import hotidle.study.TellingReading;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Tap;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A handout of two builds of the training rig over three speeds. */
class LessonAnswerTest {

    private static final DescribedCircuit RIG = ReadyCircuits.read("training-rig");
    private static final Figure DRAWING = new Figure("<svg/>", "the rig", true);
    private static final MadeOf MADE =
            new MadeOf("hotidle 1", "hotidle report rig", List.of(new MadeOf.InputFile("rig.yaml", "00ff")));

    private static List<SpeedSweep> swept(Transmission unit) {
        return List.of(SpeedSweep.run(unit, unit.duties().get(0), ReadyCircuits.rpm(500, 1000, 1500)));
    }

    private static LessonUnit unit(Transmission unit, String fault, Optional<UnitFault.Sized> laid) {
        return new LessonUnit(
                swept(unit),
                fault,
                laid,
                TellingReading.of(swept(unit), swept(RIG.unit()), List.of(0, 1, 2)),
                List.of());
    }

    private static LessonUnit faulty(String fault) {
        UnitFault.Sized laid =
                WrittenFault.read(UnitFaults.of(RIG.adjustable(RIG.unit().build())), fault);
        Transmission made =
                laid.fault().in(RIG.adjustable(RIG.unit().build()), laid.size()).orElseThrow();
        return unit(made, fault, Optional.of(laid));
    }

    private static final LessonUnit WORN = unit(RIG.unit("worn"), "", Optional.empty());
    private static final LessonUnit FAULTY = faulty("oil-aerated:8%");
    private static final LessonUnit SOUND = unit(RIG.unit(), "", Optional.empty());
    private static final LessonUnit WRONG_HOLE = faulty("orifice-wrong@third:1.55mm");

    private static LessonAnswer answer(UnitSystem units, LessonUnit... cases) {
        return answer(units, List.of(), cases);
    }

    private static LessonAnswer answer(UnitSystem units, List<UnitFault> candidates, LessonUnit... cases) {
        return new LessonAnswer(units, "a.html", List.of("A shop"), RIG, List.of(cases), candidates, DRAWING, MADE);
    }

    private static String text(Section section) {
        List<String> all = new ArrayList<>(List.of(section.title()));
        for (Block block : section.blocks()) {
            block.lines().forEach(line -> all.add(line.text()));
            for (PageTable table : block.tables()) {
                all.add(table.caption());
                table.rows().forEach(row -> {
                    all.add(row.heading().text());
                    row.cells().forEach(cell -> all.add(cell.text()));
                });
            }
        }
        return String.join("\n", all);
    }

    @Test
    void whichUnitIsWhichStandsOnThePageOfTheKeyAlone() {
        List<Section> sections = answer(UnitSystem.SHOP, WORN, FAULTY).page().sections();
        for (Section section : sections.subList(0, sections.size() - 1)) {
            assertFalse(text(section).contains("worn"), text(section));
            assertFalse(text(section).contains("oil-aerated"), text(section));
        }
        String key = text(sections.get(sections.size() - 1));
        assertTrue(key.contains("unit A\nworn\n"), key);
        assertTrue(key.contains("unit B\n" + RIG.unit().build() + "\noil-aerated:8%"), key);
    }

    @Test
    void theKeySaysWhatItIsAndWhichReadingTellsIt() {
        String key = answer(UnitSystem.SHOP, faulty("orifice-wrong@second:1.6mm"), faulty("oil-aerated:0.01%"))
                .csv();
        String[] wrong = key.lines().toList().get(1).split(",", -1);
        assertTrue(key.contains("second: wrong or partly blocked orifice"), key);
        assertTrue(key.matches("(?s).*middle at \\d+ rpm in bench: \\d+ psi, without it \\d+ psi.*"), key);
        assertTrue(wrong.length >= 6, key);
        assertFalse(key.contains("holds from"), "nothing commands a line of this rig");
        assertTrue(key.lines().toList().get(2).contains(LessonPhrase.NOTHING_TELLS), key);
    }

    /** Each unit has a fault of its own: what another unit has is none that this one may be taken to have, but where both may be swapped. */
    @Test
    void aFaultOfAnotherUnitIsNoSecondRightAnswerUnlessTheTwoCanBeSwapped() {
        LessonUnit second = faulty("orifice-wrong@second:1.6mm");
        UnitFault ofSecond = second.laid().orElseThrow().fault();
        UnitFault ofThird = WRONG_HOLE.laid().orElseThrow().fault();
        LessonUnit third = as(WRONG_HOLE, ofSecond);
        List<UnitFault> named = List.of(ofSecond, ofThird);
        String key = text(
                answer(UnitSystem.SHOP, named, third, second).page().sections().get(4));
        assertFalse(key.contains("either answer is right"), key);
        String swapped = text(answer(UnitSystem.SHOP, named, third, as(second, ofThird))
                .page()
                .sections()
                .get(4));
        assertTrue(swapped.contains("Unit A reads as second"), swapped);
        assertTrue(swapped.contains("Unit B reads as third"), swapped);
    }

    /** In first the low clutch has line pressure: with another regulator spring both gauges move together, and one picture is enough. */
    @Test
    void aGaugeThatReadsAsTheLineIsNotDrawnAgain() {
        DescribedCircuit shuttle = ReadyCircuits.read("shuttle-five");
        Adjustable build = shuttle.adjustable(shuttle.unit().build());
        UnitFault.Sized weak = WrittenFault.read(UnitFaults.of(build), "spring-weak@regulator:20%");
        LessonCharts charts = new LessonCharts(
                UnitSystem.SHOP,
                0,
                List.of(
                        swept(shuttle.unit()).get(0),
                        swept(weak.fault().in(build, weak.size()).orElseThrow()).get(0)));
        assertEquals("line", charts.sameAs(tap(charts, "low")).orElseThrow().name());
        assertTrue(charts.sameAs(tap(charts, "line")).isEmpty());
    }

    private static Tap tap(LessonCharts charts, String name) {
        return charts.telling().stream()
                .filter(tap -> tap.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static LessonUnit as(LessonUnit unit, UnitFault other) {
        return new LessonUnit(unit.sweeps(), unit.fault(), unit.laid(), unit.tells(), List.of(other));
    }

    @Test
    void theKeySaysWhatNoGaugeTellsApartAndWhatWould() {
        UnitFault other = UnitFaults.of(RIG.adjustable(RIG.unit().build())).stream()
                .filter(fault -> fault.name().equals("orifice-wrong@second"))
                .findFirst()
                .orElseThrow();
        LessonUnit one = new LessonUnit(
                WRONG_HOLE.sweeps(), WRONG_HOLE.fault(), WRONG_HOLE.laid(), WRONG_HOLE.tells(), List.of(other));
        String key = text(answer(UnitSystem.SHOP, List.of(other), one, SOUND, SOUND)
                .page()
                .sections()
                .get(4));
        assertTrue(
                key.contains(
                        "Unit A reads as second (wrong or partly blocked orifice) can: no gauge of this sheet tells them"
                                + " apart, and either answer is right. To make sure, measure hole of third (a pin gauge or a drill's"
                                + " shank); hole of second (a pin gauge or a drill's shank)."),
                key);
        assertTrue(key.contains("Unit B and unit C read alike: no gauge of this sheet tells them apart"), key);
        assertFalse(key.contains("Unit A and unit B read alike"), key);
        String told = text(
                answer(UnitSystem.SHOP, WRONG_HOLE, SOUND).page().sections().get(4));
        assertTrue(told.contains(LessonPhrase.UNITS_TOLD), told);
        String named = text(answer(UnitSystem.SHOP, List.of(other), WRONG_HOLE, SOUND)
                .page()
                .sections()
                .get(4));
        assertTrue(named.contains(LessonPhrase.ALL_TOLD), named);
        String alone = text(answer(UnitSystem.SHOP, WORN).page().sections().get(4));
        assertFalse(alone.contains("The gauges of this sheet"), alone);
        for (FaultKind kind : FaultKind.values()) {
            assertFalse(FaultMeasurePhrase.of(kind, "x").isEmpty());
        }
    }

    @Test
    void aScreenShowsTheKeyWhenAskedToAndPaperInAnyCase() {
        List<Section> sections = answer(UnitSystem.SHOP, WORN).page().sections();
        assertEquals(List.of(LessonPhrase.SHOW_KEY), sections.get(4).closed());
        sections.subList(0, 4).forEach(section -> assertEquals(List.of(), section.closed()));
    }

    @Test
    void whatStandsBetweenAGaugeAndTheOilIsExplained() {
        Section task = answer(UnitSystem.SHOP, WORN).page().sections().get(0);
        assertTrue(text(task).contains("drilling without flow"), text(task));
        assertTrue(text(task).contains("T-piece"), text(task));
    }

    @Test
    void theQuestionIsOfAsManyUnitsAsThereAre() {
        assertEquals(
                "What is wrong with this unit?",
                answer(UnitSystem.SHOP, WORN).page().question());
        assertTrue(answer(UnitSystem.SHOP, WORN, FAULTY).page().question().contains("each of these 2 units"));
    }

    @Test
    void everyGaugeIsReadAtTheFirstTheMiddleAndTheLastSpeed() {
        Page page = answer(UnitSystem.METRIC, SOUND, WRONG_HOLE).page();
        PageTable readings = page.sections().get(2).blocks().stream()
                .flatMap(block -> block.tables().stream())
                .findFirst()
                .orElseThrow();
        assertTrue(readings.caption().contains("[bar]"), readings.caption());
        List<String> speeds = readings.rows().stream()
                .limit(3)
                .map(row -> row.cells().get(0).text())
                .toList();
        assertEquals(List.of("500", "1000", "1500"), speeds);
        assertEquals(0, readings.rows().size() % 3);
    }

    @Test
    void eachUnitHasARowOfReadingsAndARowToFillIn() {
        Section findings =
                answer(UnitSystem.SHOP, SOUND, WRONG_HOLE).page().sections().get(3);
        PageTable read = findings.blocks().get(0).tables().get(0);
        PageTable fill = findings.blocks().get(1).tables().get(0);
        assertEquals(2, read.rows().size());
        assertEquals(2, fill.rows().size());
        assertEquals(
                LessonPhrase.TO_WRITE,
                fill.head().stream().skip(1).map(PageTable.TableCell::text).toList());
        assertTrue(
                read.head().get(1).text().matches("\\w+, bench, 500 rpm \\[psi]"),
                read.head().get(1).text());
        read.rows()
                .forEach(row ->
                        row.cells().forEach(cell -> assertTrue(cell.text().matches("-?\\d+"), cell.text())));
        fill.rows().forEach(row -> row.cells().forEach(cell -> assertEquals("", cell.text())));
    }

    @Test
    void aGaugeAtWhichAllUnitsReadAlikeIsSaidAndNotDrawn() {
        Section readings =
                answer(UnitSystem.SHOP, SOUND, WRONG_HOLE).page().sections().get(2);
        long drawn = readings.blocks().stream()
                .mapToLong(block -> block.figures().size())
                .sum();
        PageTable table = readings.blocks().stream()
                .flatMap(block -> block.tables().stream())
                .findFirst()
                .orElseThrow();
        List<String> gauges = table.rows().stream()
                .map(row -> row.heading().text())
                .distinct()
                .toList();
        assertEquals(drawn, gauges.size());
        assertTrue(gauges.contains("last"), gauges.toString());
        assertFalse(gauges.contains("line"), gauges.toString());
        assertTrue(text(readings).contains("all units read alike"), text(readings));
        assertTrue(text(readings).contains("line ("), text(readings));
    }

    @Test
    void allGaugesOfAUnitAloneAreDrawn() {
        Section readings = answer(UnitSystem.SHOP, WORN).page().sections().get(2);
        assertEquals(
                3,
                readings.blocks().stream()
                        .mapToLong(block -> block.figures().size())
                        .sum());
        assertFalse(text(readings).contains("all units read alike"), text(readings));
    }

    @Test
    void aChartBeginsWherePressuresDoAndSaysSo() {
        Section readings =
                answer(UnitSystem.SHOP, SOUND, WRONG_HOLE).page().sections().get(2);
        String svg = readings.blocks().stream()
                .flatMap(block -> block.figures().stream())
                .findFirst()
                .orElseThrow()
                .svg();
        assertTrue(svg.contains("pressure [psi]"), "an axis has its unit");
        assertTrue(svg.contains("psi], from ") || svg.contains(">0</text>"), "an axis begins at zero or says where");
    }

    @Test
    void faultsToChooseFromStandInOrderOfTheirNamesAndNoneIsMarked() {
        List<UnitFault> possible = UnitFaults.of(RIG.adjustable(RIG.unit().build()));
        UnitFault laid = WRONG_HOLE.laid().orElseThrow().fault();
        List<UnitFault> others =
                possible.stream().filter(fault -> !fault.equals(laid)).limit(3).toList();
        List<UnitFault> one = new ArrayList<>(List.of(laid));
        one.addAll(others);
        List<UnitFault> other = new ArrayList<>(others);
        other.add(laid);
        Section task = answer(UnitSystem.SHOP, one, SOUND, WRONG_HOLE)
                .page()
                .sections()
                .get(0);
        assertEquals(
                text(task),
                text(answer(UnitSystem.SHOP, other, SOUND, WRONG_HOLE)
                        .page()
                        .sections()
                        .get(0)));
        PageTable table = task.blocks().stream()
                .flatMap(block -> block.tables().stream())
                .findFirst()
                .orElseThrow();
        assertEquals(4, table.rows().size());
        assertEquals(
                1,
                table.rows().stream()
                        .map(row -> List.of(
                                row.heading().looks(),
                                row.cells().stream()
                                        .map(PageTable.TableCell::looks)
                                        .toList()))
                        .distinct()
                        .count(),
                "all rows look alike");
        List<String> names = table.rows().stream()
                .map(row -> row.heading().text() + " " + row.cells().get(0).text())
                .toList();
        assertEquals(names.stream().sorted().toList(), names);
        assertTrue(text(task).contains("1 unit has one of the faults listed below; 1 unit has none."), text(task));
        assertFalse(text(answer(UnitSystem.SHOP, WORN).page().sections().get(0)).contains(LessonPhrase.CANDIDATES));
    }

    @Test
    void jsonHasTheKeyAndWhatThePageWasMadeOf() {
        JsonNode json = Json.tree(answer(UnitSystem.SHOP, WORN, FAULTY).json());
        assertEquals("unit B", json.at("/key/1/unit").textValue());
        assertEquals("oil-aerated:8%", json.at("/key/1/fault").textValue());
        assertTrue(json.at("/key/0/fault").isNull());
        assertEquals("00ff", json.at("/inputs/0/sha256").textValue());
        assertEquals(5, json.get("sections").size());
        assertEquals(0, json.get("candidates").size());
    }

    @Test
    void theScreenSaysWhatWasWrittenAndToKeepTheKey() {
        LessonAnswer answer = answer(UnitSystem.SHOP, WORN, FAULTY);
        assertTrue(answer.full().startsWith("a.html\n"), answer.full());
        assertTrue(answer.full().contains("hand out without it"), answer.full());
        assertTrue(answer.complete());
        assertEquals(3, answer.csv().lines().count());
    }
}
