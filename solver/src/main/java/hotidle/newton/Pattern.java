package hotidle.newton;

import java.util.Arrays;
import java.util.TreeSet;

/**
 * Where a sparse matrix may differ from zero, column by column, rows rising in each.
 *
 * @param size         rows and columns
 * @param columnStarts where each column starts in {@code rows}, one more at the end
 * @param rows         row of each entry
 */
@SuppressWarnings("ArrayRecordComponent") // work arrays that do not leave this package
record Pattern(int size, int[] columnStarts, int[] rows) {

    /** The pattern that holds the given rows of each column. */
    static Pattern of(TreeSet<Integer>[] columns) {
        int n = columns.length;
        int[] starts = new int[n + 1];
        for (int j = 0; j < n; j++) {
            starts[j + 1] = starts[j] + columns[j].size();
        }
        int[] rows = new int[starts[n]];
        for (int j = 0; j < n; j++) {
            int at = starts[j];
            for (int row : columns[j]) {
                rows[at++] = row;
            }
        }
        return new Pattern(n, starts, rows);
    }

    /** Place of an entry in the values. */
    int place(int row, int column) {
        int place = Arrays.binarySearch(rows, columnStarts[column], columnStarts[column + 1], row);
        if (place < 0) {
            throw new IllegalStateException("row " + row + ", column " + column + " is not in the pattern");
        }
        return place;
    }
}
