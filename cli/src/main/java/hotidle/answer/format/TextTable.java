package hotidle.answer.format;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A table of text with a head line; the first column stands left, the others right. */
public final class TextTable {

    private static final CSVFormat LINES =
            CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();

    /** Blanks between two tables that stand side by side. */
    private static final int GUTTER = 4;

    private static final String GAP = "  ";

    /** Where a head may be broken: before a blank, behind a hyphen. */
    private static final String BREAK = "(?= )|(?<=-)";

    /** More lines a head does not take (chosen). */
    private static final int MOST_HEAD_LINES = 5;

    private final List<List<String>> rows = new ArrayList<>();

    public TextTable(List<String> head) {
        rows.add(List.copyOf(head));
    }

    public TextTable add(List<String> row) {
        rows.add(List.copyOf(row));
        return this;
    }

    /** The cells of the head line. */
    public List<String> head() {
        return rows.get(0);
    }

    /** The cells of all lines below the head. */
    public List<List<String>> body() {
        return List.copyOf(rows.subList(1, rows.size()));
    }

    /** Aligned with blanks, a rule under the head. */
    public String aligned() {
        return aligned(1);
    }

    /**
     * The same in a width: where it would be wider, the heads stand on several lines, broken at blanks and behind hyphens.
     *
     * @param most characters in a line; wider all the same where cells are
     */
    public String fitted(int most) {
        int lines = 1;
        while (lines < MOST_HEAD_LINES && total(widths(lines)) > most) {
            lines++;
        }
        return aligned(lines);
    }

    /**
     * The same in a width: where cells make it wider, those of the widest columns but the first stand on several lines, broken at
     * blanks and behind hyphens.
     */
    public String folded(int most) {
        int[] width = widths(MOST_HEAD_LINES);
        while (total(width) > most) {
            int widest = 0;
            for (int c = 1; c < width.length; c++) {
                if (width[c] > longestPiece(c) && (widest == 0 || width[c] > width[widest])) {
                    widest = c;
                }
            }
            if (widest == 0) {
                break;
            }
            width[widest]--;
        }
        return aligned(width);
    }

    private int longestPiece(int column) {
        return rows.stream()
                .flatMap(row -> Stream.of(row.get(column).split(BREAK, -1)))
                .mapToInt(piece -> piece.strip().length())
                .max()
                .orElse(0);
    }

    private String aligned(int headLines) {
        return aligned(widths(headLines));
    }

    private String aligned(int[] width) {
        List<List<String>> heads = new ArrayList<>();
        int used = 1;
        for (int c = 0; c < width.length; c++) {
            heads.add(broken(rows.get(0).get(c), width[c]));
            used = Math.max(used, heads.get(c).size());
        }
        StringBuilder text = new StringBuilder();
        for (int line = 0; line < used; line++) {
            List<String> cells = new ArrayList<>();
            for (List<String> head : heads) {
                int at = line - used + head.size();
                cells.add(at < 0 ? "" : head.get(at));
            }
            text.append(line(cells, width));
        }
        text.append("-".repeat(total(width))).append('\n');
        rows.subList(1, rows.size()).forEach(row -> text.append(lines(row, width)));
        return text.toString();
    }

    private static String lines(List<String> row, int[] width) {
        List<List<String>> cells = new ArrayList<>();
        for (int c = 0; c < width.length; c++) {
            cells.add(row.get(c).length() <= width[c] ? List.of(row.get(c)) : broken(row.get(c), width[c]));
        }
        StringBuilder text = new StringBuilder();
        int used = cells.stream().mapToInt(List::size).max().orElse(1);
        for (int line = 0; line < used; line++) {
            int at = line;
            text.append(line(
                    cells.stream()
                            .map(cell -> at < cell.size() ? cell.get(at) : "")
                            .toList(),
                    width));
        }
        return text.toString();
    }

    private static String line(List<String> cells, int[] width) {
        StringBuilder line = new StringBuilder();
        for (int c = 0; c < width.length; c++) {
            String pad = " ".repeat(width[c] - cells.get(c).length());
            line.append(c == 0 ? cells.get(c) + pad : GAP + pad + cells.get(c));
        }
        return line.toString().stripTrailing() + "\n";
    }

    private static int total(int[] width) {
        return IntStream.of(width).sum() + GAP.length() * (width.length - 1);
    }

    /** Least widths at which every head stands on so many lines, and every cell on one. */
    private int[] widths(int headLines) {
        int[] width = new int[rows.get(0).size()];
        for (int c = 0; c < width.length; c++) {
            for (List<String> row : rows.subList(1, rows.size())) {
                width[c] = Math.max(width[c], row.get(c).length());
            }
            String head = rows.get(0).get(c);
            for (String piece : head.split(BREAK, -1)) {
                width[c] = Math.max(width[c], piece.strip().length());
            }
            while (broken(head, width[c]).size() > headLines) {
                width[c]++;
            }
        }
        return width;
    }

    private static List<String> broken(String head, int width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String piece : head.split(BREAK, -1)) {
            if (!line.isEmpty() && (line + piece).strip().length() > width) {
                lines.add(line.strip());
                line = "";
            }
            line += piece;
        }
        lines.add(line.strip());
        return lines;
    }

    /** Two tables side by side, each aligned. */
    public static String beside(TextTable left, TextTable right) {
        List<String> first = left.aligned().lines().toList();
        List<String> second = right.aligned().lines().toList();
        int width = first.stream().mapToInt(String::length).max().orElse(0);
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < Math.max(first.size(), second.size()); i++) {
            String one = i < first.size() ? first.get(i) : "";
            String other = i < second.size() ? second.get(i) : "";
            text.append((one + " ".repeat(width - one.length() + GUTTER) + other).stripTrailing())
                    .append('\n');
        }
        return text.toString();
    }

    /** Separated by commas, quoted as RFC 4180 says; a line ends as everywhere on the screen. */
    public String csv() {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, LINES)) {
            printer.printRecords(rows);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }
}
