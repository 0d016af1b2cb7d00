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
        return read(TEXT, row);
    }

    private static ReadCircuit read(String text, String row) {
        return CircuitReader.read(
                text,
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
        return bore(TEXT, row);
    }

    private static double bore(String text, String row) {
        return ((AnnularGap) read(text, row)
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

    /** The front land three times over, each leaking beside the others. */
    private static final String THREE = TEXT.replace(
            "valve: 14.000 mm, length: 9 mm, eccentricity: 0.5}",
            "valve: 14.000 mm, length: 9 mm, eccentricity: 0.5, count: 3}");

    private static List<String> reduced(String row) {
        return read(THREE, row).circuit().orElseThrow().reduced();
    }

    @Test
    void oneReadingTakenForThreeBoresIsSaid() {
        assertEquals(14.06e-3, bore(THREE, "manual-valve-front;bore;14.06;;;mm;"), 1e-12);
        assertEquals(
                List.of("manual-valve-front.bore: one reading, taken for all 3 alike"),
                reduced("manual-valve-front;bore;14.06;;;mm;"));
        assertEquals(
                List.of("manual-valve-front.bore: one reading, taken for all 3 alike"),
                reduced("manual-valve-front;bore;14.06;;;mm;\"dull; by a bus\""));
        String assumed = THREE.replace("count: 3}", "count: ~3}");
        assertEquals(
                reduced("manual-valve-front;bore;14.06;;;mm;"),
                read(assumed, "manual-valve-front;bore;14.06;;;mm;")
                        .circuit()
                        .orElseThrow()
                        .reduced(),
                "a count that is assumed is one");
        String depths =
                reduced("manual-valve-front;bore;14.06x14.05 14.04x14.05;;;mm;").get(0);
        assertTrue(depths.endsWith("2 depths in 2 directions of one, taken for all 3 alike"), depths);
    }

    /** Clearances of 40, 50 and 60 um leak as three of the cube root of their mean cube, 51.0 um. */
    @Test
    void aReadingOfEachOfThreeBoresBecomesTheOneThatLeaksAsMuchAsAllOfThem() {
        double alike = 14e-3 + Math.cbrt((64 + 125 + 216) / 3.0) * 1e-5;
        for (String cell : List.of("14.04 14.05 14.06", "\"14.04; 14.05; 14.06\"", "\"14.04 14.04;14.05;14.06\"")) {
            String row = "manual-valve-front;bore;" + cell + ";14;;mm;";
            assertEquals(alike, bore(THREE, row), 1e-9, row);
            assertTrue(
                    reduced(row).get(0).endsWith(", each of 3 alike read"),
                    reduced(row).toString());
        }
        String valves = "manual-valve-front;bore;\"14.04;14.05;14.06\";\"13.998;13.999;14.003\";;mm;";
        double pairs = 14e-3 + Math.cbrt((42e-6 * 42e-6 * 42e-6 + 51e-6 * 51e-6 * 51e-6 + 57e-6 * 57e-6 * 57e-6) / 3);
        assertEquals(pairs, bore(THREE, valves), 1e-9);
    }

    @Test
    void fewerReadingsThanBoresAreTakenForAllAndMoreAreRefused() {
        String two = "manual-valve-front;bore;\"14.04;14.06\";14;;mm;";
        assertEquals(14e-3 + Math.cbrt((64 + 216) / 2.0) * 1e-5, bore(THREE, two), 1e-9);
        assertTrue(
                reduced(two).get(0).endsWith("2 of 3 alike read, and taken for all 3"),
                reduced(two).get(0));
        String four = "manual-valve-front;bore;\"14.04;14.06;14.04;14.05\";14;;mm;";
        String told = read(THREE, four).problems().get(0).text();
        assertTrue(told.contains("4 readings for manual-valve-front.bore, which stands for 3 alike"), told);
        String tight = "manual-valve-front;bore;\"14.04;13.99;14.05\";14;;mm;";
        assertEquals(
                "READING_WITHOUT_CLEARANCE",
                read(THREE, tight).problems().get(0).code().toString());
    }

    @Test
    void theRowOfSeveralBoresSaysForHowManyItStands() {
        String sheet = read(THREE, "manual-valve-front;bore;14.06;;;mm;")
                .circuit()
                .orElseThrow()
                .measurementSheet(SheetWriter.LengthUnit.MM);
        String row = sheet.lines()
                .filter(line -> line.startsWith("manual-valve-front,bore,"))
                .findFirst()
                .orElseThrow();
        assertTrue(row.contains("stands for 3 alike: one reading for all, or one of each, parted by semicolons"), row);
        assertEquals(1, row.split("stands for", -1).length - 1, "bore and valve share it: " + row);
        assertTrue(sheet.lines()
                .anyMatch(line -> line.startsWith("low-rings,end-gap,") && line.contains("stands for 2 alike")));
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
