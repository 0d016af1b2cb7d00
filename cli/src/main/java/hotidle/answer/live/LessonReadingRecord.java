package hotidle.answer.live;

import java.util.OptionalDouble;

/**
 * What a gauge shows in a lesson.
 *
 * @param pressurePa empty where no state was found
 * @param soundLowPa what sound units read at least, gauge and tolerances allowed for
 * @param soundHighPa what they read at most
 * @param said       why there is no reading; empty where there is one
 */
public record LessonReadingRecord(OptionalDouble pressurePa, double soundLowPa, double soundHighPa, String said) {}
