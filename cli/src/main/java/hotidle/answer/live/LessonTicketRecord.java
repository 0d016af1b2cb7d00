package hotidle.answer.live;

/**
 * A lesson that is on.
 *
 * @param ticket by which a page asks of it; tells nothing of the fault
 * @param build  whose unit it is about
 */
public record LessonTicketRecord(String ticket, String build) {}
