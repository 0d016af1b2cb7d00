package hotidle.circuits.sheet;

import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.Place;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Value;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads a filled sheet into changes of a build. Columns are told by their heads and may stand in any order; they are parted by
 * commas, semicolons or tabs; numbers have a point or a comma; the unit stands in the row, or behind the number in its cell.
 */
public final class SheetReader {

    private static final Pattern NUMBER = Pattern.compile("([+-]?\\d{0,9}[.,]?\\d{1,9})\\s*(\\p{L}*)");
    private static final List<String> UNITS = List.of("mm", "in", "thou", "um", "cm");

    private final Problems problems;
    private final int source;
    private final Function<String, Optional<List<String>>> sizesOf;
    private final List<String> parts;
    private final List<Value.Entry> changes = new ArrayList<>();
    private final Map<SheetColumn, Integer> columns = new EnumMap<>(SheetColumn.class);

    /**
     * A reader.
     *
     * @param source  of the sheet among the files of this reading
     * @param parts   names of all parts
     * @param sizesOf paths of the sizes that wear of a part
     */
    public SheetReader(
            Problems problems, int source, List<String> parts, Function<String, Optional<List<String>>> sizesOf) {
        this.problems = problems;
        this.source = source;
        this.parts = parts;
        this.sizesOf = sizesOf;
    }

    /** The changes that a sheet makes, each {@code part.size: {to: value, because: who measured}}. */
    public List<Value.Entry> read(String text) {
        char separator = separator(text.lines().findFirst().orElse(""));
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(separator)
                .setIgnoreEmptyLines(false)
                .setTrim(true)
                .get();
        try (CSVParser parser = CSVParser.parse(text, format)) {
            long line = 1;
            for (CSVRecord row : parser) {
                row(row, new Cells(text.lines().toList(), (int) line, separator));
                line = parser.getCurrentLineNumber() + 1;
            }
        } catch (IOException | UncheckedIOException broken) {
            String mend = "save it again from the spreadsheet as CSV";
            problems.error(
                    at(1, 1, 1), ProblemCode.SHEET_NOT_READ, "the sheet cannot be read", broken.getMessage(), mend);
        }
        return changes;
    }

    private Place at(int line, int column, int width) {
        return new Place(line, column, width, source);
    }

    /** Where the cells of a row stand. */
    private final class Cells {
        private final String line;
        private final int number;
        private final char separator;

        Cells(List<String> lines, int number, char separator) {
            this.line = number <= lines.size() ? lines.get(number - 1) : "";
            this.number = number;
            this.separator = separator;
        }

        Place place(int cell) {
            int start = 0;
            for (int i = 0; i < cell; i++) {
                start = end(start) + 1;
            }
            int from = Math.min(start, line.length());
            return at(number, from + 1, Math.max(Math.min(end(from), line.length()) - from, 1));
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

    /** The separator that stands most often in the head. */
    private static char separator(String head) {
        return Stream.of(',', ';', '\t')
                .max(java.util.Comparator.comparingLong(
                        one -> head.chars().filter(c -> c == one).count()))
                .orElse(',');
    }

    private void row(CSVRecord row, Cells cells) {
        if (columns.isEmpty()) {
            head(row, cells);
        } else if (row.stream().anyMatch(cell -> !cell.isBlank())) {
            fit(row, cells);
        }
    }

    private void head(CSVRecord row, Cells cells) {
        for (int i = 0; i < row.size(); i++) {
            Optional<SheetColumn> column = SheetColumn.of(row.get(i));
            if (column.isPresent()) {
                columns.put(column.get(), i);
            } else if (!row.get(i).isBlank()) {
                String message = "the sheet has the unknown column '" + row.get(i) + "'";
                problems.error(
                        cells.place(i),
                        ProblemCode.UNKNOWN_COLUMN,
                        message,
                        "",
                        Nearest.mend(row.get(i), SheetColumn.titles()));
            }
        }
        Stream.of(SheetColumn.PART, SheetColumn.SIZE, SheetColumn.UNIT)
                .filter(needed -> !columns.containsKey(needed))
                .forEach(needed -> problems.error(
                        cells.place(0),
                        ProblemCode.NO_COLUMN,
                        "the sheet has no column '" + needed.title() + "'",
                        "its first line names the columns",
                        "write a new sheet with hotidle sheet, and fill that in"));
        columns.putIfAbsent(SheetColumn.PART, -1);
    }

    private String text(CSVRecord row, SheetColumn column) {
        int index = columns.getOrDefault(column, -1);
        String cell = index >= 0 && index < row.size() ? row.get(index).strip() : "";
        return cell.startsWith("'") ? cell.substring(1) : cell;
    }

    private Place place(Cells cells, SheetColumn column) {
        return cells.place(Math.max(columns.getOrDefault(column, 0), 0));
    }

    private void fit(CSVRecord row, Cells cells) {
        String part = text(row, SheetColumn.PART);
        boolean filled = Stream.of(SheetColumn.BORE, SheetColumn.VALVE, SheetColumn.GAP)
                .anyMatch(column -> !text(row, column).isEmpty());
        if (!filled || columns.get(SheetColumn.PART) < 0) {
            return;
        }
        if (row.size() > columns.size() && row.stream().skip(columns.size()).anyMatch(cell -> !cell.isBlank())) {
            String mend = "put numbers with a decimal comma in quotes, or part the columns with semicolons";
            problems.error(
                    cells.place(columns.size()),
                    ProblemCode.TOO_MANY_CELLS,
                    "this row has more cells than the sheet has columns",
                    "",
                    mend);
            return;
        }
        Optional<List<String>> sizes = sizesOf.apply(part);
        if (sizes.isEmpty()) {
            String message = "the sheet has a part '" + part + "', which the circuit does not have";
            problems.error(
                    place(cells, SheetColumn.PART),
                    ProblemCode.SHEET_OF_UNKNOWN_PART,
                    message,
                    "",
                    Nearest.mend(part, parts));
            return;
        }
        String size = text(row, SheetColumn.SIZE);
        if (!sizes.get().contains(size)) {
            String message = "the sheet has a size '" + size + "', which " + part + " does not have";
            problems.error(
                    place(cells, SheetColumn.SIZE),
                    ProblemCode.SHEET_OF_UNKNOWN_SIZE,
                    message,
                    "",
                    Nearest.mend(size, sizes.get()));
            return;
        }
        measured(row, cells, SheetRow.of(part, size, sizes.get()));
    }

    private void measured(CSVRecord row, Cells cells, SheetRow fit) {
        SheetColumn outer = fit.isBore() ? SheetColumn.BORE : SheetColumn.GAP;
        change(row, cells, outer, fit.part(), fit.outer());
        fit.inner().ifPresent(inner -> change(row, cells, SheetColumn.VALVE, fit.part(), inner));
        Stream.of(SheetColumn.BORE, SheetColumn.VALVE, SheetColumn.GAP)
                .filter(column -> column != outer
                        && !(column == SheetColumn.VALVE && fit.inner().isPresent()))
                .filter(column -> !text(row, column).isEmpty())
                .forEach(column -> problems.error(
                        place(cells, column),
                        ProblemCode.CELL_IN_WRONG_COLUMN,
                        "the sheet has a " + column.title() + " for " + fit.part() + "." + fit.outer(),
                        "this row is filled in under '" + outer.title() + "'",
                        "move it there"));
    }

    private void change(CSVRecord row, Cells cells, SheetColumn column, String part, String size) {
        String cell = text(row, column);
        if (cell.isEmpty()) {
            return;
        }
        Place place = place(cells, column);
        String target = part + "." + size;
        Matcher number = NUMBER.matcher(cell);
        if (!number.matches()) {
            String mend = "write a number, such as 14.058 or 14,058; leave the cell empty where nothing was measured";
            problems.error(
                    place,
                    ProblemCode.CELL_IS_NO_NUMBER,
                    "the sheet has '" + cell + "' for " + target + ", which is no number",
                    "",
                    mend);
            return;
        }
        String unit = number.group(2).isEmpty() ? text(row, SheetColumn.UNIT) : number.group(2);
        if (unit.equals("\"") || unit.equalsIgnoreCase("inch")) {
            unit = "in";
        }
        if (!UNITS.contains(unit.toLowerCase(java.util.Locale.ROOT))) {
            String message = unit.isEmpty()
                    ? "the sheet has no unit for " + target
                    : "the sheet has the unit '" + unit + "' for " + target + ", which is none of length";
            problems.error(
                    place(cells, SheetColumn.UNIT),
                    ProblemCode.SHEET_WITHOUT_UNIT,
                    message,
                    "",
                    "write one of " + String.join(", ", UNITS));
            return;
        }
        if (changes.stream().anyMatch(before -> before.key().equals(target))) {
            problems.error(
                    place,
                    ProblemCode.MEASURED_TWICE,
                    "the sheet has " + target + " twice",
                    "",
                    "leave one of the two rows empty");
            return;
        }
        String value = number.group(1).replace(',', '.') + " " + unit.toLowerCase(java.util.Locale.ROOT);
        changes.add(new Value.Entry(
                target,
                place,
                new Value.Entries(
                        List.of(
                                new Value.Entry("to", place, new Value.Text(value, place)),
                                new Value.Entry("because", place, new Value.Text(because(row), place))),
                        place)));
    }

    private String because(CSVRecord row) {
        StringBuilder text = new StringBuilder("measured");
        String by = text(row, SheetColumn.BY);
        String gauge = text(row, SheetColumn.GAUGE);
        String note = text(row, SheetColumn.NOTE);
        text.append(by.isEmpty() ? "" : " by " + by).append(gauge.isEmpty() ? "" : " with " + gauge);
        return text.append(note.isEmpty() ? "" : ": " + note).toString();
    }
}
