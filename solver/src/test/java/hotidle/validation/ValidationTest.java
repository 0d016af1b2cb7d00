package hotidle.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The solver against published values, a row a check; VALIDATION.md is written from them. */
class ValidationTest {

    private static final int LEAST_ROWS = 200;
    private static final int LEAST_PUBLISHED = 200;

    /** Computed anew for each test: mutation testing changes a law between two of them. */
    private static List<Row> rows() {
        return Stream.of(
                        OilRows.rows(),
                        OrificeRows.rows(),
                        GapRows.rows(),
                        PassageRows.rows(),
                        BushingRows.rows(),
                        PumpRows.rows(),
                        FittedPumpRows.rows(),
                        DragRows.rows(),
                        ReliefRows.rows(),
                        SpoolRows.rows(),
                        ClutchRows.rows(),
                        GovernorRows.rows(),
                        CoolerRows.rows(),
                        FilmRows.rows(),
                        GearTextbookRows.rows(),
                        GearTrainRows.rows(),
                        TenSpeedRows.rows(),
                        ShaftRows.rows(),
                        ShiftRows.rows(),
                        HeatRows.rows(),
                        AirRows.rows(),
                        NetworkRows.rows())
                .flatMap(List::stream)
                .toList();
    }

    @TestFactory
    Stream<DynamicTest> oursIsThePublishedValue() {
        return rows().stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.part() + ", " + row.quantity() + ", " + row.inputs(),
                        () -> assertTrue(row.holds(), row::toString)));
    }

    @Test
    void thereAreEnoughRowsAndEnoughOfThemCanBeLookedUp() {
        long published = rows().stream().filter(row -> row.source().published()).count();
        assertTrue(rows().size() >= LEAST_ROWS, rows().size() + " rows");
        assertTrue(published >= LEAST_PUBLISHED, published + " rows from a publication");
    }

    @Test
    void everyFileOfRowsIsEntered() throws IOException {
        Path folder = Path.of("src/test/java/hotidle/validation");
        String here = Files.readString(folder.resolve("ValidationTest.java"));
        try (Stream<Path> files = Files.list(folder)) {
            List<String> forgotten = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith("Rows.java"))
                    .map(name -> name.replace(".java", ".rows()"))
                    .filter(rows -> !here.contains(rows))
                    .toList();
            assertEquals(List.of(), forgotten, "enter in rows() of ValidationTest");
        }
    }

    @Test
    void noCheckStandsTwice() {
        Set<String> seen = new HashSet<>();
        for (Row row : rows()) {
            assertTrue(seen.add(row.part() + row.quantity() + row.inputs()), "twice: " + row);
        }
    }

    @Test
    void aRowFailsOneDigitPastWhatIsPrintedAndWhereOursIsNoNumber() {
        Source source = Source.memory("nobody");
        assertTrue(Row.of("a", "b", "c", "0.25", "m", 0.2549, source).holds());
        assertFalse(Row.of("a", "b", "c", "0.25", "m", 0.2551, source).holds());
        assertFalse(Row.of("a", "b", "c", "0.25", "m", Double.NaN, source).holds());
        assertTrue(Row.of("a", "b", "c", "0.25", "m", 0.2599, source)
                .withinShare(0.02, "coarse")
                .holds());
        assertFalse(Row.of("a", "b", "c", "0.25", "m", 0.2601, source)
                .withinShare(0.02, "coarse")
                .holds());
    }

    /** An author, a standard, an examination or a page: "a measured pump" is none. */
    @Test
    void everySourceIsNamed() {
        List<String> unnamed = rows().stream()
                .map(row -> row.source().text())
                .filter(text -> text.startsWith("a ") || text.contains("not named"))
                .distinct()
                .toList();
        assertEquals(List.of(), unnamed);
    }

    @Test
    void aRowFromALibraryIsNotCountedAsPublished() {
        assertFalse(Source.library("tests of some library").published());
        Row row = Row.of("a", "b", "c", "1", "m", 1, Source.library("tests of some library"));
        String sheet = Sheet.of(List.of(row));
        assertTrue(sheet.contains("1 rows, 0 from a publication"), sheet);
        assertTrue(sheet.contains("| tests of some library | from a library's code or tests |"), sheet);
    }

    /** A difference smaller than what the row grants itself belongs to a row that agrees, and to a tolerance that says so. */
    @Test
    void aRowThatDoesNotAgreeDiffersByMoreThanHalfOfWhatItGrantsItself() {
        List<Row> mild = rows().stream()
                .filter(Row::disagrees)
                .filter(row -> Math.abs(row.difference().doubleValue()) < row.tolerance() / 2)
                .toList();
        assertEquals(List.of(), mild);
    }

    @Test
    void theSheetIsWhatTheRowsSay() throws IOException {
        Path file = Path.of("VALIDATION.md");
        String now = Sheet.of(rows());
        if (Boolean.getBoolean("hotidle.rewrite") && System.getenv("CI") == null) {
            Files.writeString(file, now);
        }
        assertEquals(
                Files.readString(file), now, file + " differs; rewrite with -Dhotidle.rewrite=true and read the diff");
    }
}
