package hotidle.circuits.sheet;

import hotidle.circuits.text.Problems;
import hotidle.transmission.Transmission;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * A sheet of gauge readings cell by cell, as it was written down: nothing is made of it yet.
 *
 * @param rows what stands in each, by the titles of the columns; what is left out is empty
 */
public record WrittenReadings(List<Map<String, String>> rows) {

    /** Most rows; more than a day's readings (chosen). */
    public static final int MOST = 200;

    /**
     * A sheet of them.
     *
     * @throws IllegalArgumentException where there are more than {@link #MOST} rows, or one has a cell of an unknown column
     */
    public WrittenReadings {
        rows = rows.stream().map(Map::copyOf).toList();
        if (rows.size() > MOST) {
            throw new IllegalArgumentException("a sheet of readings has at most " + MOST + " rows here");
        }
        rows.forEach(row -> row.keySet().forEach(title -> {
            if (!titles().contains(title)) {
                throw new IllegalArgumentException("the sheet of readings has the unknown column '" + title + "'");
            }
        }));
    }

    /** Titles of the columns that are filled in. */
    public static List<String> titles() {
        return columns().map(ReadingColumn::title).toList();
    }

    private static Stream<ReadingColumn> columns() {
        return Stream.of(ReadingColumn.values())
                .filter(column -> column != ReadingColumn.EXPECTED && column != ReadingColumn.EXPECTED_TO);
    }

    /** The cells of a sheet in which {@link ReadingsReader} found no wrong column; rows that are yet to be read are among them. */
    public static WrittenReadings of(MeasurementSheet sheet) {
        Map<Integer, ReadingColumn> head = new HashMap<>();
        List<Map<String, String>> rows = new ArrayList<>();
        Cells.each(sheet.text(), 0, new Problems(sheet.fileName(), sheet.text()), (row, cells) -> {
            if (row.stream().allMatch(String::isBlank)) {
                return;
            }
            if (head.isEmpty()) {
                for (int i = 0; i < row.size(); i++) {
                    int at = i;
                    ReadingColumn.of(row.get(i)).ifPresent(column -> head.put(at, column));
                }
                return;
            }
            Map<String, String> one = new LinkedHashMap<>();
            for (int i = 0; i < row.size(); i++) {
                String cell = row.get(i).strip();
                Optional<ReadingColumn> column = Optional.ofNullable(head.get(i));
                if (column.isPresent() && columns().anyMatch(column.get()::equals) && !cell.isEmpty()) {
                    one.put(column.get().title(), cell.startsWith("'") ? cell.substring(1) : cell);
                }
            }
            rows.add(one);
        });
        return new WrittenReadings(rows);
    }

    /** The readings in it, with the problems of each row. */
    public GaugeReadings read(Transmission unit) {
        return ReadingsReader.read(new MeasurementSheet("readings", csv()), unit);
    }

    /** One row as a sheet of its own. */
    public WrittenReadings only(int row) {
        return new WrittenReadings(List.of(rows.get(row)));
    }

    /** Whether a row has a reading; one that has none is yet to be taken. */
    public boolean taken(int row) {
        return !rows.get(row).getOrDefault(ReadingColumn.READING.title(), "").isBlank();
    }

    /** The sheet as {@link ReadingsReader} reads it. */
    public String csv() {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer =
                new CSVPrinter(text, CSVFormat.RFC4180.builder().get())) {
            printer.printRecord(titles());
            for (Map<String, String> row : rows) {
                printer.printRecord(columns()
                        .map(column -> SheetWriter.safe(row.getOrDefault(column.title(), "")))
                        .toList());
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }
}
