package hotidle.answer.page;

import hotidle.answer.format.TextTable;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A table on a page: the same cells as on the screen.
 *
 * @param caption over it
 * @param head    headings of its columns
 * @param rows    each with a heading of its own
 */
public record PageTable(String caption, List<TableCell> head, List<HeadedRow> rows) {

    /** Begins like a number: where most cells of a column do, it stands right, so that digits stand below each other. */
    private static final Pattern NUMBER = Pattern.compile("[<>=+x~\\-\\s]*\\d.*");

    /** Words that are alarms on every screen. */
    private static final Pattern ALARM = Pattern.compile(
            ".*\\b(FAILS|LOW|HIGH|SHORT|THIN|CONTACT|OVERLOAD|STARVED|SLIPS|DRAGS|RELIEF OPEN|NOT HELD)\\b.*");

    /** Blanks by which a screen indents what belongs to the row above. */
    private static final int STEP = 2;

    /** A table of more lines is cut between two rows on paper (chosen): so much of a sheet left empty looks like its end. */
    private static final int BRIEF = 22;

    /** So many letters of a cell on a line of paper (chosen). */
    private static final int LETTERS = 45;

    public PageTable {
        head = List.copyOf(head);
        rows = List.copyOf(rows);
    }

    /**
     * A cell.
     *
     * @param text  in it
     * @param looks words of the style sheet, separated by blanks; may be empty
     * @param of    the heading of its column, which stands beside it where a screen has no room for columns; empty in the heading of a
     *              row or a column
     */
    public record TableCell(String text, String looks, String of) {

        /** A heading. */
        TableCell(String text, String looks) {
            this(text, looks, "");
        }
    }

    /**
     * A row.
     *
     * @param heading what it is about
     * @param cells   all others
     */
    public record HeadedRow(TableCell heading, List<TableCell> cells) {
        public HeadedRow {
            cells = List.copyOf(cells);
        }
    }

    /** So many letters side by side are as wide as a telephone (chosen): a wider table is cut, and nobody sees what is cut. */
    private static final int TELEPHONE = 44;

    /** A cell of more letters goes on in the next line (chosen). */
    private static final int WRAPPED = 16;

    /** Columns from which on two cells of a row stand beside each other (chosen). */
    private static final int MANY = 6;

    /** Whether a telephone has no room for its columns side by side: each row is shown by itself there. */
    public boolean cards() {
        int wide = 0;
        for (int c = 0; c < head.size(); c++) {
            int column = c;
            int longest = rows.stream()
                    .mapToInt(row -> (column == 0 ? row.heading() : row.cells().get(column - 1))
                            .text()
                            .length())
                    .max()
                    .orElse(0);
            wide += 2 + Math.min(WRAPPED, Math.max(longest, head.get(c).text().length()));
        }
        return wide > TELEPHONE;
    }

    /** Whether two cells of a row stand beside each other then. */
    public boolean many() {
        return head.size() >= MANY;
    }

    /** Whether it stays on one sheet of paper. */
    public boolean brief() {
        return rows.stream().mapToInt(PageTable::lines).sum() <= BRIEF;
    }

    private static int lines(HeadedRow row) {
        int longest = row.cells().stream()
                .mapToInt(cell -> cell.text().length())
                .max()
                .orElse(0);
        return 1 + longest / LETTERS;
    }

    /** The cells of a screen's table. */
    public static PageTable of(String caption, TextTable table) {
        List<List<String>> body = table.body();
        List<Boolean> numbers = new ArrayList<>();
        for (int c = 0; c < table.head().size(); c++) {
            int column = c;
            List<String> cells = body.stream()
                    .map(row -> row.get(column))
                    .filter(cell -> !cell.isBlank() && !cell.equals("-"))
                    .toList();
            long like = cells.stream()
                    .filter(cell ->
                            cell.length() <= LETTERS && NUMBER.matcher(cell).matches())
                    .count();
            numbers.add(2 * like > cells.size());
        }
        List<TableCell> head = new ArrayList<>();
        for (int c = 0; c < numbers.size(); c++) {
            head.add(new TableCell(table.head().get(c), c > 0 && numbers.get(c) ? "number" : ""));
        }
        return new PageTable(
                caption,
                head,
                body.stream().map(row -> row(row, numbers, table.head())).toList());
    }

    private static HeadedRow row(List<String> row, List<Boolean> numbers, List<String> head) {
        String first = row.get(0);
        int in = (first.length() - first.stripLeading().length()) / STEP;
        List<TableCell> cells = new ArrayList<>();
        for (int c = 1; c < row.size(); c++) {
            String text = row.get(c);
            String looks =
                    (numbers.get(c) ? "number" : "") + (ALARM.matcher(text).matches() ? " alarm" : "");
            cells.add(new TableCell(text, looks.strip(), head.get(c)));
        }
        String looks = (in == 0 ? "" : "in" + in) + (ALARM.matcher(first).matches() ? " alarm" : "");
        return new HeadedRow(new TableCell(first.strip(), looks.strip()), cells);
    }
}
