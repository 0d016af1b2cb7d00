package hotidle.circuits.sheet;

import hotidle.circuits.text.Place;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Where the cells of a row of a spreadsheet's CSV file stand: parted by commas, semicolons or tabs. */
final class Cells {

    private final String line;
    private final int number;
    private final char separator;
    private final int source;

    private Cells(List<String> lines, int number, char separator, int source) {
        this.line = number <= lines.size() ? lines.get(number - 1) : "";
        this.number = number;
        this.separator = separator;
        this.source = source;
    }

    /**
     * Reads a file row by row.
     *
     * @param source   of the file among those of this reading
     * @param problems told where it is no CSV file
     * @param each     takes each row, blank ones too
     */
    static void each(String text, int source, Problems problems, BiConsumer<CSVRecord, Cells> each) {
        char separator = separator(text.lines().findFirst().orElse(""));
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(separator)
                .setIgnoreEmptyLines(false)
                .setTrim(true)
                .get();
        List<String> lines = text.lines().toList();
        try (CSVParser parser = CSVParser.parse(text, format)) {
            long line = 1;
            for (CSVRecord row : parser) {
                each.accept(row, new Cells(lines, (int) line, separator, source));
                line = parser.getCurrentLineNumber() + 1;
            }
        } catch (IOException | UncheckedIOException broken) {
            String mend = "save it again from the spreadsheet as CSV";
            problems.error(
                    new Place(1, 1, 1, source),
                    ProblemCode.SHEET_NOT_READ,
                    "the sheet cannot be read",
                    broken.getMessage(),
                    mend);
        }
    }

    /** The separator that stands most often in the head. */
    private static char separator(String head) {
        return Stream.of(',', ';', '\t')
                .max(Comparator.comparingLong(
                        one -> head.chars().filter(c -> c == one).count()))
                .orElse(',');
    }

    /** Where a cell stands. */
    Place place(int cell) {
        int start = 0;
        for (int i = 0; i < cell; i++) {
            start = end(start) + 1;
        }
        int from = Math.min(start, line.length());
        return new Place(number, from + 1, Math.max(Math.min(end(from), line.length()) - from, 1), source);
    }

    private int end(int start) {
        boolean quoted = false;
        for (int i = Math.min(start, line.length()); i < line.length(); i++) {
            quoted ^= line.charAt(i) == '"';
            if (line.charAt(i) == separator && !quoted) {
                return i;
            }
        }
        return line.length();
    }
}
