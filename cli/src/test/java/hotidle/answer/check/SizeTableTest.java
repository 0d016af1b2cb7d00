package hotidle.answer.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.ReadyCircuits;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.circuits.BaseFiles;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.circuits.ReadCircuit;
import hotidle.circuits.sheet.MeasurementSheet;
import hotidle.circuits.sheet.SheetWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Sizes that wear, as a filled sheet leaves them, and what a file leaves to the program. */
class SizeTableTest {

    private static final DescribedCircuit BLANK = ReadyCircuits.read("crescent-four");

    /** The ready unit with its regulator's bore measured so many micrometres beyond new. */
    private static DescribedCircuit measured(double micrometres) {
        DescribedCircuit.SizeLine bore = regulator(BLANK);
        StringBuilder sheet = new StringBuilder();
        String blank = BLANK.measurementSheet(SheetWriter.LengthUnit.MM).replace("\uFEFF", "");
        try (CSVParser rows = CSVParser.parse(blank, CSVFormat.RFC4180);
                CSVPrinter filled = new CSVPrinter(sheet, CSVFormat.RFC4180)) {
            List<String> head = List.of();
            for (CSVRecord row : rows) {
                List<String> cells = new ArrayList<>(row.toList());
                head = head.isEmpty() ? List.copyOf(cells) : head;
                if (cells.get(0).equals("regulator")) {
                    cells.set(
                            head.indexOf("measured bore"),
                            String.format(Locale.ROOT, "%.4f", 1e3 * bore.fresh() + micrometres / 1e3));
                    cells.set(head.indexOf("unit"), "mm");
                }
                filled.printRecord(cells);
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        byte[] filled = sheet.toString().getBytes(StandardCharsets.UTF_8);
        ReadCircuit read = CircuitReader.read(
                Library.text("crescent-four").orElseThrow(),
                "crescent-four.yaml",
                BaseFiles.LIBRARY,
                Optional.of(MeasurementSheet.of("mine.csv", filled)));
        return read.circuit().orElseThrow(() -> new AssertionError(read.problems()));
    }

    private static DescribedCircuit.SizeLine regulator(DescribedCircuit circuit) {
        return circuit.sizes().stream()
                .filter(size -> size.name().equals("regulator.bore"))
                .findFirst()
                .orElseThrow();
    }

    private static String row(DescribedCircuit circuit, UnitSystem units) {
        return SizeTable.of(circuit, units)
                .lines()
                .filter(line -> line.startsWith("regulator.bore "))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aSizeThatWasMeasuredWithinItsLimitHasNoRemark() {
        String row = row(measured(10), UnitSystem.METRIC);
        assertFalse(row.contains("assumed new"), row);
        assertFalse(row.contains("past its limit"), row);
        assertEquals(List.of(), SizeTable.past(measured(10), UnitSystem.METRIC));
    }

    @Test
    void aSizePastItsLimitSaysByHowMuchInTheUnitsOfTheReader() {
        double way =
                1e6 * (regulator(BLANK).limit().orElseThrow() - regulator(BLANK).fresh());
        DescribedCircuit worn = measured(way + 20);
        assertTrue(row(worn, UnitSystem.METRIC).contains("past its limit by 20.0 um"), row(worn, UnitSystem.METRIC));
        assertTrue(row(worn, UnitSystem.SHOP).contains("past its limit by 0.79 thou"), row(worn, UnitSystem.SHOP));
        assertEquals(List.of("regulator.bore by 20.0 um"), SizeTable.past(worn, UnitSystem.METRIC));
        assertTrue(SizeTable.of(worn, UnitSystem.METRIC)
                .endsWith("1 of " + worn.sizes().size() + " measured past the wear limit\n"));
    }

    @Test
    void aBoreIsToldAsABoreAndAClearanceAsOne() {
        DescribedCircuit.SizeLine bore = regulator(BLANK);
        String metric = row(BLANK, UnitSystem.METRIC);
        assertTrue(metric.contains(String.format(Locale.ROOT, "%.3f mm", 1e3 * bore.fresh())), metric);
        String shop = row(BLANK, UnitSystem.SHOP);
        assertTrue(shop.contains(String.format(Locale.ROOT, "%.4f in", bore.fresh() / 0.0254)), shop);
        assertTrue(SizeTable.of(BLANK, UnitSystem.METRIC).contains(" um"), "gaps are told in micrometres");
    }

    @Test
    void theFirstScreenSaysHowManyWereMeasuredAndWhatIsPastItsLimit() {
        double way =
                1e6 * (regulator(BLANK).limit().orElseThrow() - regulator(BLANK).fresh());
        DescribedCircuit worn = measured(way + 20);
        String screen = new CheckAnswer(worn, 0, Map.of(), UnitSystem.METRIC).screen();
        assertTrue(screen.contains("of " + worn.sizes().size() + " sizes measured, all others assumed new"), screen);
        assertTrue(screen.contains("past the wear limit: regulator.bore by 20.0 um"), screen);
    }

    @Test
    void everyValueLeftToTheProgramStandsUnderWhatTakesIt() {
        String owners = DefaultsByOwner.of(BLANK);
        long headings = owners.lines().filter(line -> line.matches("  \\S.*")).count();
        long values = owners.lines().filter(line -> line.matches("    \\S.*")).count();
        assertTrue(headings > 1 && values >= headings, owners);
        assertTrue(values <= BLANK.defaults().size(), "a value that several parts take stands once");
        assertEquals(values, DefaultsByOwner.table(BLANK).body().size());
    }
}
