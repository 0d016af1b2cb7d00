package hotidle.answer.format;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A table of text with a head line; the first column stands left, the others right. */
public final class TextTable {

    private static final CSVFormat LINES =
            CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();

    /** Blanks between two tables that stand side by side. */
    private static final int GUTTER = 4;

    private final List<List<String>> rows = new ArrayList<>();

    public TextTable(List<String> head) {
        rows.add(List.copyOf(head));
    }

    public TextTable add(List<String> row) {
        rows.add(List.copyOf(row));
        return this;
    }

    /** Aligned with blanks, a rule under the head. */
    public String aligned() {
        int columns = rows.get(0).size();
        int[] width = new int[columns];
        for (List<String> row : rows) {
            for (int c = 0; c < columns; c++) {
                width[c] = Math.max(width[c], row.get(c).length());
            }
        }
        StringBuilder text = new StringBuilder();
        for (int r = 0; r < rows.size(); r++) {
            StringBuilder line = new StringBuilder();
            for (int c = 0; c < columns; c++) {
                String pad = " ".repeat(width[c] - rows.get(r).get(c).length());
                line.append(
                        c == 0
                                ? rows.get(r).get(c) + pad
                                : "  " + pad + rows.get(r).get(c));
            }
            text.append(line.toString().stripTrailing()).append('\n');
            if (r == 0) {
                int total = 0;
                for (int c = 0; c < columns; c++) {
                    total += width[c] + (c == 0 ? 0 : 2);
                }
                text.append("-".repeat(total)).append('\n');
            }
        }
        return text.toString();
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
