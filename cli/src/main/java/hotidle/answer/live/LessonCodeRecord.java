package hotidle.answer.live;

/**
 * A lesson that a teacher has set.
 *
 * @param code   to be handed out
 * @param phrase whether it needs a phrase, and outlives the program
 */
public record LessonCodeRecord(String code, boolean phrase) {}
