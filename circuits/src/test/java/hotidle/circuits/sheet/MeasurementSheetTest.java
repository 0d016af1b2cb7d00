package hotidle.circuits.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.BaseFiles;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.circuits.ReadCircuit;
import hotidle.circuits.text.Problem;
import hotidle.circuits.text.ProblemCode;
import hotidle.part.AnnularGap;
import hotidle.part.SpoolValve;
import hotidle.transmission.Transmission;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Test;

/** A sheet is written, filled in as a shop would, and read back as a build. */
class MeasurementSheetTest {

    private static final String TEXT = Library.text("shuttle-five").orElseThrow();
    private static final DescribedCircuit CIRCUIT =
            CircuitReader.read(TEXT, "shuttle-five.yaml").circuit().orElseThrow();
    private static final String HEAD =
            "part;size;measured bore;measured valve;measured gap or flatness;unit;gauge used;measured by;note\n";

    private static ReadCircuit read(String sheet) {
        return CircuitReader.read(
                TEXT,
                "shuttle-five.yaml",
                BaseFiles.LIBRARY,
                Optional.of(MeasurementSheet.of("shop/bus 12.csv", sheet.getBytes(StandardCharsets.UTF_8))));
    }

    private static AnnularGap gap(Transmission unit, String name) {
        return (AnnularGap) unit.network().part(name).orElseThrow().part();
    }

    @Test
    void aDecimalCommaABlankAMixedUnitAndANonsenseRowMakeOneClearError() {
        String good = HEAD + "manual-valve-front;bore;14,061;13,996;;mm;air gauge;J. D.;\"scored; see photo\"\n"
                + "manual-valve-rear;bore;;;;mm;;;\n"
                + "regulator;bore;0.7895;;;in;;;\n"
                + "plate-pump;feeler;;;1,5 thou;;;;\n";
        ReadCircuit wrong = read(good + "shift-valve-1-2;bore;about eleven;;;mm;;;\n");
        assertEquals(
                List.of(
                        "shop/bus 12.csv:6:22: error: the sheet has 'about eleven' for shift-valve-1-2.bore, which is no number"),
                wrong.problems().stream().map(Problem::headline).toList());
        ReadCircuit read = read(good);
        assertEquals(List.of(), read.problems());
        DescribedCircuit circuit = read.circuit().orElseThrow();
        assertEquals(Optional.of("bus-12"), circuit.sheet());
        Transmission unit = circuit.unit();
        assertEquals("bus-12", unit.build());
        assertEquals(0.014061, gap(unit, "manual-valve-front").fit().outer());
        assertEquals(0.013996, gap(unit, "manual-valve-front").fit().inner());
        assertEquals(gap(CIRCUIT.unit("fresh"), "manual-valve-rear"), gap(unit, "manual-valve-rear"));
        SpoolValve regulator =
                (SpoolValve) unit.network().part("regulator").orElseThrow().part();
        assertEquals(0.7895 * 0.0254, regulator.openings().get(0).fit().outer(), 1e-15);
        assertEquals(
                List.of("manual-valve-front.bore", "manual-valve-front.valve", "regulator.bore", "plate-pump.feeler"),
                circuit.builds().get(0).changes().stream()
                        .map(DescribedCircuit.ChangeLine::what)
                        .toList());
        assertEquals(
                "measured by J. D. with air gauge: scored; see photo",
                circuit.builds().get(0).changes().get(0).because());
    }

    @Test
    void everyOtherSlipIsToldAtItsCell() {
        Map<String, String> slips = Map.of(
                "manual-valve-fornt;bore;14.05;;;mm;;;", "2:1 SHEET_OF_UNKNOWN_PART",
                "manual-valve-front;bor;14.05;;;mm;;;", "2:20 SHEET_OF_UNKNOWN_SIZE",
                "manual-valve-front;bore;14.05;;;;;;", "2:33 SHEET_WITHOUT_UNIT",
                "manual-valve-front;bore;14.05;;;psi;;;", "2:33 SHEET_WITHOUT_UNIT",
                "manual-valve-front;bore;;;14.05;mm;;;", "2:27 CELL_IN_WRONG_COLUMN",
                "manual-valve-front;bore;14.05;;;mm;;;\nmanual-valve-front;bore;14.06;;;mm;;;", "3:25 MEASURED_TWICE",
                "manual-valve-front;bore;13.9;;;mm;;;", "2:25 FIT_WITHOUT_CLEARANCE",
                "manual-valve-front;bore;1405;;;mm;;;", "2:25 SIZE_SLIPPED",
                "manual-valve-front;bore;14.05;;;mm;;;;;x", "2:39 TOO_MANY_CELLS");
        slips.forEach((row, slip) -> assertEquals(
                List.of(slip),
                read(HEAD + row).problems().stream()
                        .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                        .map(problem -> problem.position().line() + ":"
                                + problem.position().column() + " " + problem.code())
                        .toList()));
        assertEquals(
                ProblemCode.UNKNOWN_COLUMN,
                read("a,b,c\n1,2,3\n").problems().get(0).code());
        assertTrue(read("\"open\n").circuit().isEmpty());
        assertEquals(List.of(), read(HEAD).problems());
    }

    @Test
    void theSheetOfTheDemoHasARowForEveryFitAndReadsBackBlank() throws IOException {
        String sheet = CIRCUIT.measurementSheet(SheetWriter.LengthUnit.MM);
        assertTrue(
                sheet.startsWith("\uFEFFpart,size,what it is,where to measure,new bore,bore limit"),
                sheet.substring(0, 80));
        assertTrue(sheet.contains("; valve: micrometer on the land\",14.02,14.055,14,,,,mm,,,,,,,,\r\n"), sheet);
        ReadCircuit read = read(sheet);
        assertEquals(List.of(), read.problems());
        assertEquals(0, read.circuit().orElseThrow().builds().get(0).changes().size());
        assertTrue(CIRCUIT.measurementSheet(SheetWriter.LengthUnit.INCH).contains(",0.55197,0.55335,0.55118,,,,in,"));
        List<String> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(sheet.substring(1), CSVFormat.RFC4180)) {
            parser.forEach(row -> rows.add(row.get(0)));
        }
        CIRCUIT.sizes().forEach(size -> assertTrue(rows.contains(size.part()), size.part()));
    }

    /** A repair is written once and done to every unit that comes in and is measured; without a sheet to the file as written. */
    @Test
    void aBuildMayStandOnWhateverTheSheetMeasures() {
        String text = TEXT.stripTrailing()
                + "\n  mended:\n    about: new valve in the front land\n    on: sheet\n    changes:\n"
                + "      manual-valve-front.valve: {to: 14.004 mm, because: oversize}\n";
        MeasurementSheet sheet = MeasurementSheet.of(
                "bus 12.csv", (HEAD + "manual-valve-front;bore;14.061;;;mm;;;\n").getBytes(StandardCharsets.UTF_8));
        DescribedCircuit measured = CircuitReader.read(text, "x.yaml", BaseFiles.LIBRARY, Optional.of(sheet))
                .circuit()
                .orElseThrow();
        assertEquals(
                0.014061,
                gap(measured.unit("mended"), "manual-valve-front").fit().outer());
        assertEquals(
                0.014004,
                gap(measured.unit("mended"), "manual-valve-front").fit().inner());
        DescribedCircuit written = CircuitReader.read(text, "x.yaml").circuit().orElseThrow();
        assertEquals(
                0.01402, gap(written.unit("mended"), "manual-valve-front").fit().outer());
    }

    @Test
    void noCellIsTakenForAFormula() {
        for (String cell : List.of("=1+1", "+1", "-1", "@x", "\t=1")) {
            assertEquals("'" + cell, SheetWriter.safe(cell));
        }
        assertEquals("manual-valve-front", SheetWriter.safe("manual-valve-front"));
        assertFalse(SheetWriter.safe("").startsWith("'"));
    }

    @Test
    void sheetsOfOldAndWideSpreadsheetsAreRead() {
        assertEquals(
                "Stück",
                MeasurementSheet.of("x", "Stück".getBytes(java.nio.charset.Charset.forName("windows-1252")))
                        .text());
        assertEquals(
                "Stück",
                MeasurementSheet.of("x", "\uFEFFStück".getBytes(StandardCharsets.UTF_16LE))
                        .text()
                        .replace("\uFEFF", ""));
        assertEquals(
                "Stück",
                MeasurementSheet.of("x", "\uFEFFStück".getBytes(StandardCharsets.UTF_8))
                        .text());
    }

    @Test
    void aSheetThatASpreadsheetOpenedInTheWrongCodeIsReadAllTheSame() {
        java.nio.charset.Charset older = java.nio.charset.Charset.forName("windows-1252");
        String misread = new String("\uFEFFStück".getBytes(StandardCharsets.UTF_8), older);
        assertEquals(
                "Stück",
                MeasurementSheet.of("x", misread.getBytes(StandardCharsets.UTF_8))
                        .text());
        assertEquals(
                "StÃ¼ck für",
                MeasurementSheet.of("x", (misread + " für").getBytes(StandardCharsets.UTF_8))
                        .text());
    }
}
