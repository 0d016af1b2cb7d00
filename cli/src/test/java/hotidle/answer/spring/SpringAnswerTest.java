package hotidle.answer.spring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.ReadyCircuits;
import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.answer.format.Wrap;
import hotidle.study.SpringStudy;
import hotidle.study.SpringStudy.ChangeEffect;
import hotidle.study.SpringStudy.DutyEffect;
import hotidle.study.SpringStudy.Way;
import hotidle.transmission.SpringChange;
import hotidle.transmission.SpringChange.Lever;
import hotidle.transmission.SpringChange.SpringObstacle;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** How a regulator comes to another set pressure, told of one study and of changes made by hand. */
class SpringAnswerTest {

    private static final Transmission UNIT = ReadyCircuits.read("crescent-four").unit();
    private static SpringStudy study;

    /** Not while the class is made ready: the threads of a study would wait for that, and it for them. */
    @BeforeAll
    static void raise() {
        study = SpringStudy.of(UNIT, 1.2 * UNIT.highestSet());
    }

    private static SpringAnswer answer(UnitSystem units, List<Way> ways) {
        return new SpringAnswer(
                units, "rig", new SpringStudy(UNIT, study.pressure(), study.now(), study.least(), study.asIs(), ways));
    }

    private static SpringChange change(Lever lever, String signal, double now, double needed) {
        return new SpringChange(lever, signal, now, OptionalDouble.of(needed), Optional.of(UNIT), Optional.empty());
    }

    private static Way made(SpringChange change) {
        return new Way(change, Optional.of(study.asIs()));
    }

    private static Way impossible(SpringObstacle obstacle) {
        return new Way(
                new SpringChange(
                        Lever.PRELOAD, "", 50, OptionalDouble.empty(), Optional.empty(), Optional.of(obstacle)),
                Optional.empty());
    }

    private static String words(SpringAnswer answer) {
        return answer.full().replaceAll("\\s+", " ");
    }

    @Test
    void aHigherPressureNeedsAStifferSpringByEachWayAlone() {
        JsonNode changes =
                Json.tree(new SpringAnswer(UnitSystem.SI, "rig", study).json()).get("changes");
        int told = 0;
        for (JsonNode change : changes) {
            if (change.get("cannot_because").isNull()
                    && change.get("change").textValue().equals("preload")) {
                assertTrue(change.get("preload_needed_n").doubleValue()
                        > change.get("preload_now_n").doubleValue());
                told++;
            }
            if (change.get("cannot_because").isNull()
                    && change.get("change").textValue().equals("shim")) {
                assertTrue(change.get("shim_added_m").doubleValue() > 0);
                assertTrue(change.get("preload_now_n").isNull(), "a shim is no force");
                told++;
            }
        }
        assertEquals(2, told, changes.toString());
    }

    @Test
    void whatIsNeededIsToldWithItsDifference() {
        String row = answer(UnitSystem.METRIC, List.of(made(change(Lever.PRELOAD, "", 50, 72))))
                .full()
                .lines()
                .filter(line -> line.startsWith("preload "))
                .findFirst()
                .orElseThrow();
        assertTrue(row.matches("preload +50 N +72 N +\\+22 N .*"), row);
    }

    @Test
    void aShimIsToldByWhatIsPutIn() {
        String row = answer(UnitSystem.METRIC, List.of(made(change(Lever.SHIM, "", 0, 1.5e-3))))
                .full()
                .lines()
                .filter(line -> line.startsWith("shim "))
                .findFirst()
                .orElseThrow();
        assertTrue(row.matches("shim +as it is +add 1\\.500 mm +- .*"), row);
    }

    /** Whether there are shims to take out the file does not know. */
    @Test
    void aShimThatIsTakenOutIsToldInWordsAndNotByASign() {
        String full = answer(UnitSystem.METRIC, List.of(made(change(Lever.SHIM, "", 0, -1.5e-3))))
                .full();
        assertTrue(full.contains("take out 1.500 mm"), full);
        assertFalse(full.contains("-1.500 mm"), full);
        assertTrue(
                full.replaceAll("\\s+", " ")
                        .contains(
                                "Shim: take out 1.500 mm of shims. Where fewer are fitted the spring has to be shorter by"
                                        + " the rest, or another one"),
                full);
    }

    /** What the table shows comes first, then what is wrong with a change; what the words mean has to wait. */
    @Test
    void theFirstScreenLeavesOutWhatFindsNoRoomBesideJobsAndASheet() {
        SpringAnswer many = new SpringAnswer(
                UnitSystem.SHOP, "a-rather-long-name-of-a-file.yaml --sheet a-rather-long-name-of-a-sheet.csv", study);
        assertTrue(many.screen().lines().count() <= Wrap.LINES - 2, many.screen());
        assertTrue(many.screen().lines().allMatch(line -> line.length() <= Wrap.WIDTH), many.screen());
        assertTrue(many.full().contains("Coil bind not judged"), many.full());
    }

    @Test
    void aBoostIsToldByItsDiameterAndHasNoCoils() {
        double now = Math.PI / 4 * 10e-3 * 10e-3;
        double needed = Math.PI / 4 * 12e-3 * 12e-3;
        SpringAnswer answer = answer(UnitSystem.METRIC, List.of(made(change(Lever.BOOST, "pilot", now, needed))));
        String row = answer.full()
                .lines()
                .filter(line -> line.startsWith("boost diameter, pilot"))
                .findFirst()
                .orElseThrow();
        assertTrue(row.matches("boost diameter, pilot +10\\.000 mm +12\\.000 mm +\\+2\\.000 mm +-"), row);
        JsonNode change = Json.tree(answer.json()).at("/changes/0");
        assertEquals(12e-3, change.get("boost_diameter_needed_m").doubleValue(), 1e-12);
        assertEquals(now, change.get("boost_area_now_m2").doubleValue(), 1e-15);
    }

    @Test
    void whatCannotBeDoneSaysWhyAndMovesNothing() {
        SpringAnswer answer = answer(UnitSystem.METRIC, List.of(impossible(SpringObstacle.COILS_TOUCH)));
        assertTrue(answer.full().contains("no: coils touch first"), answer.full());
        List<String> rows = answer.csv().lines().toList();
        assertTrue(rows.stream().skip(1).allMatch(row -> row.startsWith("none,")), "only the unit as it is");
        JsonNode change = Json.tree(answer.json()).at("/changes/0");
        assertEquals("coils-touch", change.get("cannot_because").textValue());
        assertTrue(change.get("effect").isNull());
    }

    @Test
    void moreThanAFewMillimetresOfShimsIsNoJobForShims() {
        assertTrue(words(answer(UnitSystem.METRIC, List.of(made(change(Lever.SHIM, "", 0, 4.2e-3)))))
                .contains("More than 4 mm (0.16 in) of shims"));
        assertFalse(words(answer(UnitSystem.METRIC, List.of(made(change(Lever.SHIM, "", 0, 3.8e-3)))))
                .contains("More than 4 mm (0.16 in) of shims"));
    }

    @Test
    void whereTheRegulatorStandsAtItsEndTheChangeAndItsDutyAreNamed() {
        DutyEffect idle = study.asIs().idle();
        DutyEffect end = new DutyEffect(idle.duty(), idle.outcome(), idle.figures(), true);
        ChangeEffect effect = new ChangeEffect(10e5, OptionalDouble.empty(), List.of(end));
        String said = words(answer(
                UnitSystem.METRIC, List.of(new Way(change(Lever.RATE, "", 9000, 9900), Optional.of(effect)))));
        assertTrue(
                said.contains("at the end of its travel: spring rate at "
                        + idle.duty().name() + "."),
                said);
    }

    @Test
    void aStateThatWasNotFoundIsUnsolvedAndLeavesTheAnswerIncomplete() {
        DutyEffect idle = study.asIs().idle();
        DutyEffect none =
                new DutyEffect(idle.duty(), ReadyCircuits.unsolved(UNIT, idle.duty()), Optional.empty(), false);
        ChangeEffect effect = new ChangeEffect(10e5, OptionalDouble.empty(), List.of(none));
        SpringAnswer answer =
                answer(UnitSystem.SHOP, List.of(new Way(change(Lever.RATE, "", 9000, 9900), Optional.of(effect))));
        assertFalse(answer.complete());
        assertTrue(answer.full().contains("unsolved"), answer.full());
        String row = answer.csv().lines().reduce((one, other) -> other).orElseThrow();
        assertEquals("spring rate," + idle.duty().name() + ",,,", row);
        JsonNode duty = Json.tree(answer.json()).at("/changes/0/effect/duties/0");
        assertFalse(duty.get("solved").booleanValue());
        assertTrue(duty.get("line_pa").isNull());
    }

    @Test
    void pressuresAreToldInTheUnitsOfTheReader() {
        List<Way> none = List.of();
        assertTrue(answer(UnitSystem.SHOP, none).csv().startsWith("change,duty,commanded psi,line psi,"));
        assertTrue(answer(UnitSystem.METRIC, none).csv().startsWith("change,duty,commanded bar,line bar,"));
        assertTrue(words(answer(UnitSystem.METRIC, none)).contains(" bar now; each of these alone would make it "));
    }

    @Test
    void noSentenceIsWiderThanAScreenAndTheCautionStandsLast() {
        String full = new SpringAnswer(UnitSystem.SHOP, "rig", study).full();
        List<String> lines = full.lines().toList();
        assertTrue(lines.get(lines.size() - 1).contains("not an approval"), full);
        lines.stream()
                .dropWhile(line -> !line.startsWith("Preload:"))
                .forEach(line -> assertTrue(line.length() <= Wrap.WIDTH, line));
    }
}
