package hotidle.study.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.fault.UnitFaults;
import hotidle.result.SolveCount;
import hotidle.transmission.Adjustable;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A small unit of which readings are taken one after another. */
class SolvedFaultsTest {

    private static final Adjustable BUILD = Tapped.build();

    private static List<GaugeReading> readings() {
        return Tapped.readings(UnitFaults.of(BUILD)
                .get(0)
                .in(BUILD, UnitFaults.of(BUILD).get(0).sizeAt(0.5))
                .orElseThrow());
    }

    private static void same(GaugeFindings one, GaugeFindings other) {
        assertEquals(one.agreement(), other.agreement());
        assertEquals(one.expected(), other.expected());
        assertEquals(causes(one), causes(other));
    }

    private static List<String> causes(GaugeFindings found) {
        return found.causes().stream()
                .map(cause -> cause.fault().name() + " " + cause.size() + " " + cause.low() + " " + cause.high() + " "
                        + cause.share() + " " + cause.chiSquare() + " " + cause.hidden())
                .toList();
    }

    @Test
    void whatWasSolvedForSomeReadingsServesOthersToTheLastBit() {
        List<GaugeReading> all = readings();
        SolvedFaults kept = new SolvedFaults(BUILD);
        GaugeDiagnosis.causes(kept, all.subList(0, 1), () -> {});
        SolveCount before = SolveCount.now();
        GaugeFindings found = GaugeDiagnosis.causes(kept, all, () -> {}).findings();
        long states = SolveCount.now().since(before).states();
        before = SolveCount.now();
        same(GaugeDiagnosis.causes(BUILD, all, () -> {}).findings(), found);
        assertTrue(states < SolveCount.now().since(before).states(), states + " states");
    }

    @Test
    void theSameReadingsAgainSolveNothingButPairsWhateverTheyShow() {
        List<GaugeReading> all = readings();
        SolvedFaults kept = new SolvedFaults(BUILD);
        kept.solve(
                all.stream()
                        .map(one -> new GaugeReading(
                                one.meter(), one.at(), one.sense(), 0.9 * one.value(), one.deviation()))
                        .toList(),
                () -> {});
        SolveCount before = SolveCount.now();
        GaugeTable first = GaugeTable.of(kept, all, () -> {});
        GaugeTable again = GaugeTable.of(kept, all, () -> {});
        assertEquals(0, SolveCount.now().since(before).states());
        same(GaugeStudy.alone(first, all), GaugeStudy.alone(again, all));
    }
}
