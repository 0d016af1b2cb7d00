package hotidle.answer.live;

import java.util.List;

/**
 * With what a circuit that is written on the page can begin.
 *
 * @param ready names of ready circuits
 * @param start text for an empty field
 */
public record WritingOfferRecord(List<String> ready, String start) {}
