package hotidle.circuits.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.BaseFiles;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.circuits.ReadCircuit;
import hotidle.circuits.text.Problem;
import hotidle.part.AnnularGap;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Slips of who reads a gauge and fills in a sheet, each told by name. The front land of the manual valve: bore 14.02 mm new, 14.055 mm
 * at its limit, valve 14 mm.
 */
class SheetTrapsTest {

    private static final String TEXT = Library.text("shuttle-five").orElseThrow();
    private static final String HEAD = "part;size;measured bore;measured valve;measured gap or flatness;unit;note\n";

    private static ReadCircuit read(String row) {
        return CircuitReader.read(
                TEXT,
                "shuttle-five.yaml",
                BaseFiles.LIBRARY,
                Optional.of(MeasurementSheet.of("bus-12.csv", (HEAD + row + "\n").getBytes(StandardCharsets.UTF_8))));
    }

    private static List<String> told(String row) {
        return read(row).problems().stream()
                .map(problem -> problem.severity() + " " + problem.code() + " "
                        + problem.position().column())
                .toList();
    }

    private static String text(String row) {
        return String.join(
                "\n", read(row).problems().stream().map(Problem::text).toList());
    }

    private static double bore(String row) {
        return ((AnnularGap) read(row)
                        .circuit()
                        .orElseThrow()
                        .unit()
                        .network()
                        .part("manual-valve-front")
                        .orElseThrow()
                        .part())
                .fit()
                .outer();
    }

    @Test
    void inchesInARowOfMillimetresAreToldWithTheNumberKept() {
        String row = "manual-valve-front;bore;0.5530;;;mm;";
        assertEquals(List.of("ERROR SIZE_SLIPPED 25"), told(row));
        assertTrue(text(row).contains("mend: did you mean 0.5530 in?"), text(row));
        assertTrue(text(row).contains("the sheet has 0.5530 mm for manual-valve-front.bore, new 14.02 mm"), text(row));
    }

    @Test
    void aSlippedDecimalPointIsToldWithTheNumberThatWasMeant() {
        assertTrue(text("manual-valve-front;bore;140.5;;;mm;").contains("did you mean 14.05 mm?"));
        assertTrue(text("manual-valve-front;bore;1405;;;mm;").contains("did you mean 14.05 mm?"));
        assertTrue(text("manual-valve-front;bore;1.405;;;mm;").contains("did you mean 1.405 cm?"));
        assertTrue(text("manual-valve-front;bore;0.0553;;;in;").contains("did you mean 0.553 in?"));
    }

    /** A face clearance can wear to ten times its new one, though hardly: it is used, and doubted. */
    @Test
    void aClearanceOfTenTimesNewIsUsedAndDoubtedOneOfFortyTimesIsRefused() {
        assertEquals(
                List.of("WARNING SIZE_SLIPPED 26", "WARNING UNUSUAL 26"), told("primary;face-clearance;;;0.5;mm;"));
        assertTrue(text("primary;face-clearance;;;0.5;mm;").contains("did you mean 0.05 mm?"));
        assertEquals(List.of("ERROR SIZE_SLIPPED 26"), told("primary;face-clearance;;;2.4;mm;"));
        assertTrue(text("primary;face-clearance;;;2.4;mm;").contains("did you mean 2.4 thou?"));
    }

    @Test
    void swappedBoreAndValveAreToldAsThat() {
        assertEquals(List.of("ERROR BORE_AND_VALVE_SWAPPED 25"), told("manual-valve-front;bore;13.996;14.051;;mm;"));
    }

    @Test
    void theBoreOfAnotherFitIsToldWithTheRowItMayBelongTo() {
        String row = "manual-valve-front;bore;11.04;;;mm;";
        assertEquals("ERROR SIZE_OF_ANOTHER_FIT 25", told(row).get(0));
        assertTrue(text(row).contains("that is no wear but another diameter"), text(row));
        assertTrue(text(row).matches("(?s).*mend: does it belong to [a-z0-9-]+\\.bore\\?.*"), text(row));
    }

    @Test
    void anOversizeValveInABoreMadeForItIsToldAndUsed() {
        String row = "manual-valve-front;bore;14.32;14.30;;mm;";
        assertTrue(
                told(row).stream().allMatch(one -> one.startsWith("WARNING SIZE_OF_ANOTHER_FIT")),
                told(row).toString());
        assertEquals(14.32e-3, bore(row), 1e-12);
    }

    @Test
    void aSizeOnTheOtherSideOfNewAndOneFarPastItsLimitAreTold() {
        assertEquals(List.of("WARNING AGAINST_WEAR 25"), told("manual-valve-front;bore;14.008;;;mm;"));
        assertEquals(List.of("WARNING AGAINST_WEAR 26"), told("manual-valve-front;bore;;14.012;;mm;"));
        assertEquals(List.of("WARNING FAR_PAST_LIMIT 25"), told("manual-valve-front;bore;14.19;;;mm;"));
        assertEquals(
                List.of(), told("manual-valve-front;bore;14.06;13.996;;mm;"), "past its limit, which 'check' says");
    }

    /** 14.051 and 14.058 mm at the mouth, narrower inside: what leaks as much lies between. */
    @Test
    void severalReadingsBecomeTheBoreThatLeaksAsMuchAndThatIsSaid() {
        String row = "manual-valve-front;bore;14.051x14.058 14.040x14.046 14.036x14.041;13.998;;mm;dull";
        assertEquals(List.of(), told(row));
        assertTrue(bore(row) > 14.036e-3 && bore(row) < 14.058e-3, bore(row) + " m");
        List<String> said = read(row).circuit().orElseThrow().reduced();
        assertEquals(1, said.size());
        assertTrue(
                said.get(0)
                        .matches("manual-valve-front.bore: its readings leak as much as 14\\.04\\d+ mm, 3 depths in 2"
                                + " directions"),
                said.get(0));
        assertTrue(read(row)
                .circuit()
                .orElseThrow()
                .builds()
                .get(0)
                .changes()
                .get(0)
                .because()
                .startsWith("measured: dull; "));
    }

    @Test
    void readingsMayHaveACommaAStrokeAndAUnitBehindThem() {
        double even = bore("manual-valve-front;bore;14,05/14,05/14,05 mm;14;;mm;");
        assertEquals(14.05e-3, even, 1e-12);
    }

    @Test
    void ofSeveralReadingsOneThatSlippedOrLeavesNoRoomIsTold() {
        assertEquals(List.of("ERROR SIZE_SLIPPED 25"), told("manual-valve-front;bore;14.05 1.405 14.05;;;mm;"));
        assertEquals(
                "ERROR READING_WITHOUT_CLEARANCE 25",
                told("manual-valve-front;bore;14.05 13.999 14.05;;;mm;").get(0));
    }

    /** A feeler says what enters; of several places the widest counts. */
    @Test
    void ofSeveralFeelersTheThickestCountsAndOfGapsTheOneThatPassesAsMuch() {
        assertEquals(
                List.of("0.05 mm", "0.0423582 mm"),
                List.of(last("plate-pump;feeler;;;0.03 0.05;mm;"), last("primary;face-clearance;;;0.03 0.05;mm;")));
    }

    private static String last(String row) {
        return read(row).circuit().orElseThrow().reduced().get(0).replaceAll(".*as much as ([^,]*),.*", "$1");
    }

    @Test
    void theSheetSaysWhereEachSizeIsMeasured() {
        String sheet = CircuitReader.read(TEXT, "shuttle-five.yaml")
                .circuit()
                .orElseThrow()
                .measurementSheet(SheetWriter.LengthUnit.MM);
        assertTrue(sheet.contains(",where to measure,"), sheet.substring(0, 80));
        assertTrue(
                sheet.lines()
                        .anyMatch(line -> line.startsWith("manual-valve-front,bore,")
                                && line.contains("bore: small-hole or air gauge, three depths and two directions")
                                && line.contains("valve: micrometer on the land")),
                sheet);
    }
}
