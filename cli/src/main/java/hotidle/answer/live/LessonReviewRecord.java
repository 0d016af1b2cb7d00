package hotidle.answer.live;

import java.util.Optional;

/**
 * What some readings told of a hidden fault, and which to take next.
 *
 * @param told  how much they did
 * @param after what is left after them, in a few words
 * @param found whether the fault is as good as found
 * @param next  which reading to take next, in words
 * @param best  the same as a page asks for it; empty where none tells more
 */
public record LessonReviewRecord(
        String told, String after, boolean found, String next, Optional<LessonGaugeRecord> best) {}
