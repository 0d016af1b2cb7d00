package hotidle.answer.gauge;

import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.GaugePhrase;
import hotidle.study.gauge.GaugeFindings;
import hotidle.study.gauge.GaugeReading;
import hotidle.study.gauge.Meter;
import hotidle.study.gauge.TestPoint;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What is said of the readings themselves: which stand out of what a sound build reads, and which taps read sound. */
record ReadingLines(GaugeFindings found, GaugePhrase phrase) {

    /** Those that stand out, so many at most, the rest counted. */
    String standOut(int most) {
        List<String> lines = new ArrayList<>();
        int all = 0;
        for (int i = 0; i < found.readings().size(); i++) {
            if (found.standsOut(i)) {
                all++;
                if (lines.size() < most) {
                    lines.add(beside(i));
                }
            }
        }
        return Wrap.lines(GaugePhrase.standsOut(lines, all - lines.size()), "", "  ");
    }

    /** Which taps read sound at every point at which they were read. */
    String sound() {
        Map<String, Integer> sound = new LinkedHashMap<>();
        Set<String> off = new HashSet<>();
        for (int i = 0; i < found.readings().size(); i++) {
            String tap = found.readings().get(i).meter().name();
            sound.merge(tap, 1, Integer::sum);
            if (found.standsOut(i)) {
                off.add(tap);
            }
        }
        sound.keySet().removeAll(off);
        return Wrap.lines(
                GaugePhrase.sound(sound.entrySet().stream()
                        .map(tap -> GaugePhrase.tap(tap.getKey(), tap.getValue()))
                        .toList()),
                "",
                "  ");
    }

    private String beside(int i) {
        GaugeReading reading = found.readings().get(i);
        GaugeFindings.ExpectedReading expected = found.expected().get(i);
        return phrase.beside(
                place(reading.row()),
                GaugeRows.sense(reading),
                reading.meter().reads() == Meter.Reads.PRESSURE,
                reading.value(),
                expected.mean() - 2 * expected.deviation(),
                expected.mean() + 2 * expected.deviation());
    }

    /** Where and when it is read. */
    String place(GaugeReading.Row row) {
        TestPoint at = row.at();
        return phrase.place(
                row.meter().name(),
                row.meter().reads() == Meter.Reads.PRESSURE,
                at.speed(),
                at.range(),
                at.temperature());
    }
}
