package hotidle.circuits.sheet;

import hotidle.circuits.text.Problem;
import hotidle.study.gauge.GaugeReading;
import java.util.List;

/**
 * What came of reading a sheet of gauge readings.
 *
 * @param readings in the order of the sheet; of no use where a problem is an error
 * @param notes    written beside each reading, empty where there is none
 * @param problems in the order of the sheet
 */
public record GaugeReadings(List<GaugeReading> readings, List<String> notes, List<Problem> problems) {

    public GaugeReadings {
        readings = List.copyOf(readings);
        notes = List.copyOf(notes);
        problems = List.copyOf(problems);
    }

    /** Whether the sheet cannot be used. */
    public boolean wrong() {
        return problems.stream().anyMatch(problem -> problem.severity() == Problem.Severity.ERROR);
    }
}
