package hotidle.answer.live;

import hotidle.answer.gauge.GaugeAnswer;
import hotidle.answer.gauge.ToldReadings;

/**
 * What readings say of a unit.
 *
 * @param found how much of it was found
 * @param told  in sentences
 * @param gauge in numbers, as the command {@code gauge} writes them
 */
public record LiveCausesRecord(HowFar found, ToldReadings told, Object gauge) {

    /** What takes longer is told later. */
    public enum HowFar {
        /** Whether readings agree, nothing else. */
        AGREEMENT,
        /** And what may explain them. */
        CAUSES,
        /** And what is to be read next. */
        ALL
    }

    public static LiveCausesRecord of(HowFar found, GaugeAnswer answer) {
        return new LiveCausesRecord(found, answer.told(), answer.json());
    }
}
