package hotidle.answer.live;

import hotidle.answer.gauge.GaugeAnswer;
import hotidle.answer.gauge.ToldReadings;

/**
 * What readings say of a unit.
 *
 * @param told  in sentences
 * @param gauge in numbers, as the command {@code gauge} writes them
 */
public record LiveCausesRecord(ToldReadings told, Object gauge) {

    public static LiveCausesRecord of(GaugeAnswer answer) {
        return new LiveCausesRecord(answer.told(), answer.json());
    }
}
