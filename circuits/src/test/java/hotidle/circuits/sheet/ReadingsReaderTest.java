package hotidle.circuits.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.circuits.text.Problem;
import hotidle.circuits.text.ProblemCode;
import hotidle.study.gauge.AcceptanceSheet;
import hotidle.study.gauge.GaugeReading;
import hotidle.study.gauge.Meter;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What stands in a sheet of gauge readings is taken as it was meant, or told where it cannot be. */
class ReadingsReaderTest {

    private static final double PSI = 6894.757293168361;
    private static final Adjustable BUILD = CircuitReader.read(
                    Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
            .circuit()
            .orElseThrow()
            .adjustable("fresh");
    private static final Transmission UNIT = BUILD.unit();
    private static final String HEAD =
            "tap,range,engine speed,oil temperature,temperature unit,commanded pressure,engine torque,reading,unit,gauge accuracy,gauge full scale,note\n";

    private static GaugeReadings read(String text) {
        return ReadingsReader.read(MeasurementSheet.of("readings.csv", text.getBytes(StandardCharsets.UTF_8)), UNIT);
    }

    private static GaugeReading one(String row) {
        GaugeReadings read = read(HEAD + row);
        assertEquals(List.of(), read.problems());
        return read.readings().get(0);
    }

    private static Problem problem(String row) {
        GaugeReadings read = read(HEAD + row);
        assertTrue(read.wrong(), row);
        return read.problems().get(0);
    }

    @Test
    void aPressureIsReadWithWhereAndHowItWasTaken() {
        GaugeReading reading = one("line,first,650,230,degF,,,148,psi,2 %,300,warm");
        assertEquals("line", reading.meter().node());
        assertEquals(650 / 60.0, reading.at().speed(), 1e-12);
        assertEquals(383.15, reading.at().temperature(), 1e-9);
        assertEquals(148 * PSI, reading.value(), 1e-6);
        assertEquals(OptionalDouble.empty(), reading.at().commanded());
        assertEquals(3 * PSI, reading.deviation(), 1e-6, "2 % of 300 psi either way are two deviations");
    }

    @Test
    void accuracyIsOfFullScaleOfTheReadingOrAPressure() {
        assertEquals(1.48 * PSI, one("line,first,650,230,degF,,,148,psi,2 %,,").deviation(), 1e-6);
        assertEquals(1.5 * PSI, one("line,first,650,230,degF,,,148,psi,3 psi,,").deviation(), 1e-6);
        assertEquals(1.5 * PSI, one("line,first,650,230,degF,,,148,psi,3,,").deviation(), 1e-6);
    }

    @Test
    void aCoolerFlowAndANeedleOnItsStopAreReadings() {
        GaugeReading flow = one("cooler,park,1500,110,degC,,,6.2,L/min,5 %,,");
        assertEquals(Meter.Reads.FLOW, flow.meter().reads());
        assertEquals(6.2e-3 / 60, flow.value(), 1e-12);
        assertEquals(
                GaugeReading.Sense.BELOW,
                one("lube,first,650,230,degF,,,below 5,psi,2 %,100,").sense());
        assertEquals(
                GaugeReading.Sense.ABOVE,
                one("line,first,650,230,degF,,,> 300,psi,2 %,300,").sense());
    }

    @Test
    void whatASpreadsheetOfAnotherCountrySavesReadsTheSame() {
        String text = String.join(
                "\r\n",
                "\uFEFFReading;Tap;Range;Engine speed;Oil temperature;unit;gauge accuracy;commanded pressure",
                ";;;;;;;",
                "",
                "10,2;line;first;650 rpm;110 \u00B0C;bar;0,2 bar;10,34",
                "");
        GaugeReadings read = read(text);
        assertEquals(List.of(), read.problems());
        GaugeReading reading = read.readings().get(0);
        assertEquals(10.2e5, reading.value(), 1e-3);
        assertEquals(0.1e5, reading.deviation(), 1e-3);
        assertEquals(10.34e5, reading.at().commanded().orElseThrow(), 1e-3);
    }

    @Test
    void rowsWithoutAReadingAreNotTakenYet() {
        GaugeReadings read =
                read(HEAD + "line,first,650,230,degF,,,,psi,2 %,300,\nline,reverse,650,230,degF,,,150,psi,2 %,300,x\n");
        assertEquals(1, read.readings().size());
        assertEquals(List.of("x"), read.notes());
    }

    @Test
    void whatIsWrongIsToldWhereItStands() {
        Map<String, ProblemCode> wrong = Map.ofEntries(
                Map.entry("lyne,first,650,230,degF,,,148,psi,2 %,300,", ProblemCode.NO_SUCH_TAP),
                Map.entry("line,frist,650,230,degF,,,148,psi,2 %,300,", ProblemCode.NO_SUCH_RANGE),
                Map.entry("line,first,,230,degF,,,148,psi,2 %,300,", ProblemCode.READ_AT_NOTHING),
                Map.entry("line,first,650,,degF,,,148,psi,2 %,300,", ProblemCode.READ_AT_NOTHING),
                Map.entry("line,first,650,230,,,,148,psi,2 %,300,", ProblemCode.READING_IS_NO_QUANTITY),
                Map.entry("line,first,650,230,degF,,,14B,psi,2 %,300,", ProblemCode.READING_IS_NO_QUANTITY),
                Map.entry("line,first,650,230,degF,,,148,gpm,2 %,300,", ProblemCode.READING_IS_NO_QUANTITY),
                Map.entry("line,first,650,230,degF,,,14800,psi,2 %,300,", ProblemCode.READING_IMPOSSIBLE),
                Map.entry("line,first,65000,230,degF,,,148,psi,2 %,300,", ProblemCode.READING_IMPOSSIBLE),
                Map.entry("line,first,650,900,degF,,,148,psi,2 %,300,", ProblemCode.READING_IMPOSSIBLE),
                Map.entry("line,first,650,230,degF,,,148,psi,,300,", ProblemCode.READING_WITHOUT_ACCURACY),
                Map.entry("line,first,650,230,degF,,,148,psi,good,300,", ProblemCode.READING_WITHOUT_ACCURACY),
                Map.entry("line,first,650,230,degF,150,400 N.m,148,psi,2 %,300,", ProblemCode.COMMANDED_TWICE),
                Map.entry("line,first,650,230,degF,,,148,psi,2 %,300,,,12", ProblemCode.READINGS_TOO_MANY_CELLS),
                Map.entry("line,first,650,230,degF,,,,psi,2 %,300,", ProblemCode.NO_READINGS));
        wrong.forEach((row, code) -> assertEquals(code, problem(row).code(), row));
        Problem typo = problem("lyne,first,650,230,degF,,,148,psi,2 %,300,");
        assertEquals(2, typo.position().line());
        assertEquals(1, typo.position().column());
        assertTrue(typo.mend().startsWith("did you mean line"), typo.mend());
        assertEquals(
                27,
                problem("line,first,650,230,degF,,,14800,psi,2 %,300,")
                        .position()
                        .column());
    }

    @Test
    void aSheetWithoutItsColumnsSaysWhichAreMissing() {
        GaugeReadings read = read("tap,range,presure\nline,first,148\n");
        assertTrue(read.wrong());
        assertTrue(read.problems().stream().anyMatch(problem -> problem.code() == ProblemCode.READINGS_UNKNOWN_COLUMN));
        assertTrue(read.problems().stream().anyMatch(problem -> problem.code() == ProblemCode.READINGS_WITHOUT_COLUMN));
        assertEquals(ProblemCode.NO_READINGS, read("").problems().get(0).code());
    }

    @Test
    void aSheetThatIsWrittenAndFilledInIsRead() {
        AcceptanceSheet sheet = AcceptanceSheet.of(BUILD);
        String blank = ReadingsWriter.write(sheet, Map.of(), ReadingsWriter.SheetUnits.SHOP, false);
        assertFalse(blank.contains("sound"));
        assertEquals(ProblemCode.NO_READINGS, read(blank).problems().get(0).code());
        String expected = ReadingsWriter.write(sheet, Map.of(), ReadingsWriter.SheetUnits.METRIC, true);
        String filled = expected.lines()
                .map(line -> line.startsWith("line,,first,650,")
                        ? line.replaceFirst("(degC,,[^,]*),,bar,,", "$1,10.3,bar,2 %,20")
                        : line)
                .collect(java.util.stream.Collectors.joining("\n"));
        GaugeReadings read = read(filled);
        assertEquals(List.of(), read.problems());
        assertEquals(10.3e5, read.readings().get(0).value(), 1e-3);
        AcceptanceSheet.Line line = sheet.lines().stream()
                .filter(one ->
                        one.meter().name().equals("line") && one.at().range().equals("first"))
                .findFirst()
                .orElseThrow();
        assertTrue(line.low() < 150 * PSI && 150 * PSI < line.high(), line.low() / PSI + " to " + line.high() / PSI);
    }
}
