package hotidle.circuits.sheet;

import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.Place;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Value;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads a filled sheet into changes of a build. Columns are told by their heads and may stand in any order; they are parted by
 * commas, semicolons or tabs; numbers have a point or a comma; the unit stands in the row, or behind the number in its cell.
 */
final class SheetReader {

    private final Problems problems;
    private final int source;
    private final Map<String, Map<String, SizeAsNew>> sizesOf;
    private final FitReader fits;
    private final StandRows stand;

    /** Rows whose bore follows from an air reading, kept until the stand is calibrated, wherever its rows are. */
    private final List<Runnable> tested = new ArrayList<>();

    private final Map<SheetColumn, Integer> columns = new EnumMap<>(SheetColumn.class);

    /**
     * A reader.
     *
     * @param source  of the sheet among the files of this reading
     * @param sizesOf sizes that wear of all parts, by part and path of the key
     * @param parts   of the file
     */
    SheetReader(Problems problems, int source, Map<String, Map<String, SizeAsNew>> sizesOf, Value.Entries parts) {
        this.problems = problems;
        this.source = source;
        this.sizesOf = sizesOf;
        stand = new StandRows(problems);
        fits = new FitReader(problems, sizesOf, new AirBores(problems, parts, sizesOf, stand));
    }

    /** The changes that a sheet makes, each {@code part.size: {to: value, because: who measured}}. */
    public List<Value.Entry> read(String text) {
        Cells.each(text, source, problems, this::row);
        tested.forEach(Runnable::run);
        return fits.changes();
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
        boolean filled = SheetColumn.measured().stream()
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
        FilledRow filledIn = new FilledRow(column -> text(row, column), column -> place(cells, column));
        if (part.equals(SheetWriter.STAND) && !sizesOf.containsKey(part)) {
            stand.read(filledIn);
            return;
        }
        Optional<Map<String, SizeAsNew>> sizes = Optional.ofNullable(sizesOf.get(part));
        if (sizes.isEmpty()) {
            String message = "the sheet has a part '" + part + "', which the circuit does not have";
            problems.error(
                    place(cells, SheetColumn.PART),
                    ProblemCode.SHEET_OF_UNKNOWN_PART,
                    message,
                    "",
                    Nearest.mend(part, sizesOf.keySet()));
            return;
        }
        String size = text(row, SheetColumn.SIZE);
        if (!sizes.get().containsKey(size)) {
            String message = "the sheet has a size '" + size + "', which " + part + " does not have";
            problems.error(
                    place(cells, SheetColumn.SIZE),
                    ProblemCode.SHEET_OF_UNKNOWN_SIZE,
                    message,
                    "",
                    Nearest.mend(size, sizes.get().keySet()));
            return;
        }
        SheetRow fit = SheetRow.of(part, size, List.copyOf(sizes.get().keySet()));
        if (text(row, SheetColumn.AIR).isEmpty()) {
            fits.read(filledIn, fit);
        } else {
            tested.add(() -> fits.read(filledIn, fit));
        }
    }
}
