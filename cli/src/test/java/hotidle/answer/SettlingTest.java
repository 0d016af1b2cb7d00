package hotidle.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.OwnHeatPhrase;
import hotidle.heat.Warmed;
import hotidle.heat.Warmed.WarmingEnd;
import hotidle.transmission.DutyPoint;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** At which temperatures builds are judged, and what was done to them before. */
class SettlingTest {

    private static final DutyPoint DUTY =
            ReadyCircuits.read("crescent-four").unit().duties().get(0);

    private static Settling.NeverSettled never(String build, WarmingEnd end, Optional<Double> seconds) {
        return new Settling.NeverSettled(
                build, new Warmed(DUTY, Optional.empty(), List.of(), end, seconds, Optional.empty()));
    }

    @Test
    void atTheTemperaturesOfTheFileNothingIsSaid() {
        assertEquals("", Settling.AS_GIVEN.text());
        assertTrue(Settling.AS_GIVEN.records().isEmpty());
    }

    @Test
    void whatWasDoneToABuildIsSaidFirst() {
        Settling after = new Settling(true, List.of()).after("Judged after the job pump.", List.of("worn-after"));
        List<String> lines = after.text().lines().toList();
        assertEquals("Judged after the job pump.", lines.get(0));
        assertTrue(after.text().contains("each build's own heat"), after.text());
        assertTrue(Settling.AS_GIVEN
                .after("Judged after the job pump.", List.of("worn-after"))
                .text()
                .startsWith("Judged after"));
        assertFalse(Settling.AS_GIVEN.after("so", List.of()).text().contains("own heat"));
    }

    @Test
    void aDrivingConditionThatNeverSettlesIsNotJudgedAndSaysWhy() {
        Settling settling = new Settling(true, List.of(never("worn", WarmingEnd.SUMP_RUNS_AWAY, Optional.of(725.0))));
        String said = settling.text().replaceAll("\\s+", " ");
        assertTrue(said.contains(OwnHeatPhrase.HERE.replaceAll("\\s+", " ")), said);
        assertTrue(said.contains("worn at " + DUTY.name() + ": NOT JUDGED"), said);
        assertTrue(said.contains("(oil limit in 12 min)"), said);
        settling.text().lines().forEach(line -> assertTrue(line.length() <= Wrap.WIDTH, line));
    }

    @Test
    void jsonNamesEachOfThemWithItsReason() {
        List<Settling.NeverSettledRecord> records = new Settling(
                        true,
                        List.of(
                                never("worn", WarmingEnd.CONVERTER_RUNS_AWAY, Optional.of(22.0)),
                                never("fresh", WarmingEnd.NOT_SOLVED, Optional.empty())))
                .records();
        assertEquals(
                new Settling.NeverSettledRecord("worn", DUTY.name(), "converter_runs_away", Optional.of(22.0)),
                records.get(0));
        assertTrue(records.get(1).seconds().isEmpty());
    }
}
