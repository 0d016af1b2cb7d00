package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.answer.format.Quantity.UnitSystem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StagePhraseTest {

    private final StagePhrase metric = new StagePhrase(UnitSystem.METRIC);

    @Test
    void aStageSaysWhatPressureHelpsAndWhatItsLimitsAllow() {
        assertEquals("helps up to 14.00 bar", metric.helpsTo(14e5));
        assertEquals("14.00 bar is enough", metric.enough(14e5));
        assertEquals("helps, other limits end at 18.50 bar", metric.helpsPast(18.5e5));
        assertEquals("input-shaft in first", StagePhrase.first("input-shaft", "first"));
        assertEquals("holds 9.00 to 18.50 bar", metric.allowed(9e5, 18.5e5));
    }

    @Test
    void wearIsTheWayToTheWrittenLimits() {
        assertEquals("62 % of the way", StagePhrase.wear(0.62));
        assertEquals("over 800 %", StagePhrase.wearsOn(8));
    }

    @Test
    void workIsNamedWithWhatChangesBesides() {
        assertEquals("7 jobs, 20 h", StagePhrase.jobs(7, Optional.of(20.0), Optional.empty()));
        assertEquals("1 job, 2.5 h, price 300", StagePhrase.jobs(1, Optional.of(2.5), Optional.of(300.0)));
        assertEquals(
                "restored from worn: pump, rings.",
                StagePhrase.work("restored", "worn", List.of("pump", "rings"), List.of()));
        assertEquals(
                "strong from restored: no job; beyond the jobs: set from 10.00 to 16.00 bar by spring and regulator areas and"
                        + " command, another input-shaft, bought or made.",
                StagePhrase.work(
                        "strong",
                        "restored",
                        List.of(),
                        List.of(
                                metric.set(10e5, 16e5, StagePhrase.setBy(true, true, true)),
                                StagePhrase.anotherLink("input-shaft"))));
        assertEquals("2 other parts", StagePhrase.otherParts(2));
    }
}
