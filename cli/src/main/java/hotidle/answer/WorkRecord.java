package hotidle.answer;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What was done to builds before they were looked at, in this order.
 *
 * @param jobs          by name
 * @param setPressurePa in place of the builds' own; empty where they keep it
 * @param faults        as written
 */
public record WorkRecord(List<String> jobs, OptionalDouble setPressurePa, List<String> faults) {

    public WorkRecord {
        jobs = List.copyOf(jobs);
        faults = List.copyOf(faults);
    }
}
