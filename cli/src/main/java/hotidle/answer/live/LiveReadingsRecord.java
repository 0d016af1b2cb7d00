package hotidle.answer.live;

import hotidle.circuits.text.Problem;
import java.util.List;
import java.util.Map;

/**
 * A sheet of readings that was handed in.
 *
 * @param good     whether it can be taken over
 * @param rows     its cells by the titles of its columns
 * @param problems in words, as the command {@code gauge} prints them
 */
public record LiveReadingsRecord(boolean good, List<Map<String, String>> rows, List<String> problems) {

    /** One that can be taken over. */
    public static LiveReadingsRecord taken(List<Map<String, String>> rows, List<Problem> warnings) {
        return new LiveReadingsRecord(true, rows, texts(warnings));
    }

    /** One that has errors. */
    public static LiveReadingsRecord refused(List<Problem> problems) {
        return new LiveReadingsRecord(false, List.of(), texts(problems));
    }

    private static List<String> texts(List<Problem> problems) {
        return problems.stream().map(Problem::text).toList();
    }
}
