package hotidle.study.spread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.study.Fits;
import hotidle.transmission.Adjustable;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Units drawn and judged, the same however the run is split. */
class SpreadRunTest {

    private static final SpreadQuestion WORN = question(Fits.worn(1), 520, 12);

    private static SpreadQuestion question(Adjustable build, int samples, int rows) {
        return new SpreadQuestion(
                build, Unmeasured.of(build, Unmeasured.FitState.WORN), List.of("hot-idle"), samples, rows, 11);
    }

    private static SpreadTally run(SpreadQuestion question, SpreadRun.RunPart part, int threads) {
        return new SpreadRun(question).run(part, threads, (number, unit) -> {}, () -> {});
    }

    @Test
    void oneThreadAndTwoAndTenPartsGiveTheSameBits() {
        SpreadTally one = run(WORN, SpreadRun.RunPart.WHOLE, 1);
        assertEquals(520, one.drawn());
        assertEquals(12, one.rows());
        assertTrue(one.solves() > 2 * (520 + 12 * 7), one.solves() + " states");
        assertEquals(one.toString(), run(WORN, SpreadRun.RunPart.WHOLE, 2).toString());
        SpreadTally sum = run(WORN, new SpreadRun.RunPart(10, 10), 1);
        for (int part = 1; part < 10; part++) {
            sum = sum.plus(run(WORN, new SpreadRun.RunPart(part, 10), 1 + part % 2));
        }
        assertEquals(one.toString(), sum.toString());
    }

    @Test
    void anotherSeedDrawsOthers() {
        SpreadQuestion other =
                new SpreadQuestion(WORN.build(), WORN.sizes(), WORN.duties(), WORN.samples(), WORN.rows(), 12);
        assertNotEquals(
                run(WORN, SpreadRun.RunPart.WHOLE, 2).margins().get(0).headroom(),
                run(other, SpreadRun.RunPart.WHOLE, 2).margins().get(0).headroom());
    }

    @Test
    void unitsAreHandedOnInTheirOrder() {
        List<Long> numbers = new ArrayList<>();
        new SpreadRun(WORN).run(SpreadRun.RunPart.WHOLE, 2, (number, unit) -> numbers.add(number), () -> {});
        assertEquals(520, numbers.size());
        for (int i = 0; i < 520; i++) {
            assertEquals(i, numbers.get(i));
        }
    }

    @Test
    void aMarginIsOfAUnitJudgedAlone() {
        Adjustable build = Fits.worn(1);
        SpreadQuestion question = question(build, 1, 0);
        List<DrawnUnit> drawn = new ArrayList<>();
        new SpreadRun(question).run(SpreadRun.RunPart.WHOLE, 1, (number, unit) -> drawn.add(unit), () -> {});
        var unit = question.unit(drawn.get(0).shares()).orElseThrow();
        var alone = hotidle.study.Judgement.of(
                unit, unit.duties().get(0), List.of(unit.duties().get(0).speed()));
        assertTrue(alone.margins().size() >= 5);
        for (Margin margin : alone.margins()) {
            var key = new hotidle.study.Judgement.Key("hot-idle", margin.kind(), margin.part());
            assertEquals(margin.headroom(), drawn.get(0).headroom(key), 1e-7, key.toString());
            assertEquals(margin.verdict(), drawn.get(0).margins().get(key).verdict());
        }
    }

    @Test
    void whatAWornPumpLosesIsWhatDrivesRegulation() {
        SpreadTally tally = run(question(Fits.worn(1), 250, 60), SpreadRun.RunPart.WHOLE, 2);
        MarginTally regulation = tally.margins().get(0);
        assertEquals(Margin.Kind.REGULATION, regulation.key().kind());
        double all = 0;
        for (int i = 0; i < WORN.sizes().size(); i++) {
            SobolSums.VarianceShare total = regulation.drivers().total(i);
            assertTrue(total.value() >= 0 && total.value() <= 1 + 4 * total.error(), total.toString());
            all += regulation.drivers().first(i).value();
        }
        assertEquals(1, all, 0.35, "shares of the variance");
        assertEquals(tally.drawn(), regulation.asked());
    }

    @Test
    void whatATakerThrowsEndsTheRun() {
        SpreadRun run = new SpreadRun(WORN);
        SpreadRun.UnitTaker full = (number, unit) -> {
            throw new IllegalArgumentException("disk full");
        };
        IllegalStateException ended =
                assertThrows(IllegalStateException.class, () -> run.run(SpreadRun.RunPart.WHOLE, 2, full, () -> {}));
        assertEquals("disk full", ended.getCause().getMessage());
    }

    @Test
    void sizesThatCannotGoTogetherAreCountedApart() {
        Adjustable build = Fits.worn(1);
        Adjustable narrow = new Adjustable(build.unit(), build.dimensions(), sizes -> {
            if (sizes.getOrDefault("bores.bore", 0.0)
                    > build.dimensions().get(0).fresh() + 30e-6) {
                throw new IllegalArgumentException("impossible");
            }
            return build.remake().with(sizes);
        });
        SpreadTally tally = run(question(narrow, 250, 0), SpreadRun.RunPart.WHOLE, 1);
        assertTrue(tally.impossible() > 50 && tally.impossible() < 200, tally.impossible() + " impossible");
        assertEquals(250 - tally.impossible(), tally.margins().get(0).asked());
    }

    @Test
    void aBuildOfWhichAllIsMeasuredIsOneUnit() {
        Adjustable build = Fits.worn(1);
        SpreadQuestion question = new SpreadQuestion(build, List.of(), List.of("hot-idle"), 3, 10, 1);
        SpreadTally tally = run(question, SpreadRun.RunPart.WHOLE, 2);
        assertEquals(0, tally.rows());
        // each unit is started from the one before it: alike to what a state is solved to, not to the last bit
        assertEquals(0, Math.sqrt(tally.margins().get(0).headroom().variance()), 1e-7);
    }

    @Test
    void partsOfDifferentQuestionsDoNotAddUp() {
        SpreadTally other = SpreadTally.none(List.of(), 1);
        assertThrows(
                IllegalArgumentException.class,
                () -> SpreadTally.none(List.of(WORN_KEY), 1).plus(other));
        assertThrows(IllegalArgumentException.class, () -> new SpreadRun.RunPart(11, 10));
    }

    private static final hotidle.study.Judgement.Key WORN_KEY =
            new hotidle.study.Judgement.Key("hot-idle", Margin.Kind.REGULATION, "primary");
}
