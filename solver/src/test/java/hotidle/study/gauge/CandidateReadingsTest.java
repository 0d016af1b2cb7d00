package hotidle.study.gauge;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.transmission.Transmission;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Readings that are worth taking beside those taken. */
class CandidateReadingsTest {

    private static final Meter LINE = new Meter("line", "line", Meter.Reads.PRESSURE);
    private static final Meter LUBE = new Meter("lube", "lube", Meter.Reads.PRESSURE);

    private static GaugeReading reads(Meter meter, TestPoint at) {
        return new GaugeReading(meter, at, GaugeReading.Sense.EXACT, 1e6, 2e4);
    }

    private static boolean proposed(List<GaugeReading.Row> rows, Meter meter, TestPoint at) {
        return rows.stream()
                .anyMatch(row -> row.meter().equals(meter)
                        && row.at().range().equals(at.range())
                        && Math.abs(row.at().speed() - at.speed()) < 0.1 * at.speed()
                        && row.at().commanded().isEmpty());
    }

    @Test
    void whatWasReadIsNotProposedAgainThoughItsTorqueIsWrittenThereAndLeftBlankElsewhere() {
        Transmission unit = Tapped.build().unit();
        TestPoint blank = Tapped.at(650);
        TestPoint written = new TestPoint(
                blank.speed(),
                blank.temperature(),
                blank.range(),
                OptionalDouble.empty(),
                OptionalDouble.of(blank.like(unit).engineTorque()));
        List<GaugeReading.Row> rows = CandidateReadings.of(unit, List.of(reads(LUBE, blank), reads(LINE, written)));
        assertFalse(proposed(rows, LINE, blank));
        assertTrue(proposed(rows, LINE, Tapped.at(1500)), "at another speed it was not read");
    }
}
