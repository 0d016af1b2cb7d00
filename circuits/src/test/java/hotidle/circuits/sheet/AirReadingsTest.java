package hotidle.circuits.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.BaseFiles;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.circuits.ReadCircuit;
import hotidle.circuits.text.Problem;
import hotidle.law.AirOrifice;
import hotidle.part.AnnularGap;
import hotidle.study.AirStand;
import hotidle.study.AirTest;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Bores tested with vacuum or air, on a sheet: valve 14 mm, land 9 mm long, eccentricity 0.5. */
class AirReadingsTest {

    private static final String TEXT = Library.text("shuttle-five").orElseThrow();
    private static final String HEAD =
            "part;size;given in;measured bore;measured valve;measured gap or flatness;air or vacuum reading;unit;note\n";
    private static final String STAND =
            "air-stand;blocked port;in;;;;25 inHg;;\nair-stand;hole;in;1;;;5 inHg;mm;\nair-stand;hole;in;;;;;;\n";
    private static final double INCH_OF_MERCURY = 3386.389;
    private static final double ROOM = 101_325;

    private static ReadCircuit read(String rows) {
        return CircuitReader.read(
                TEXT,
                "shuttle-five.yaml",
                BaseFiles.LIBRARY,
                Optional.of(MeasurementSheet.of("bus-12.csv", (HEAD + rows).getBytes(StandardCharsets.UTF_8))));
    }

    private static String told(String rows) {
        return String.join(
                "\n", read(rows).problems().stream().map(Problem::text).toList());
    }

    private static double bore(String rows, String part) {
        ReadCircuit read = read(rows);
        assertTrue(read.circuit().isPresent(), told(rows));
        AnnularGap gap = (AnnularGap)
                read.circuit().get().unit().network().part(part).orElseThrow().part();
        return gap.fit().outer();
    }

    private static double expected(double inches, double valve, double length) {
        AirStand stand = AirStand.of(
                ROOM,
                293.15,
                AirOrifice.SHARP_EDGE,
                List.of(
                        new AirStand.Calibration(0, ROOM - 25 * INCH_OF_MERCURY),
                        new AirStand.Calibration(1e-3, ROOM - 5 * INCH_OF_MERCURY)));
        AirTest test = AirTest.of(stand, ROOM - inches * INCH_OF_MERCURY, new AirTest.TestedLand(valve, length, 0.5))
                .orElseThrow();
        return valve + 2 * test.asInTheFile();
    }

    @Test
    void aVacuumReadingIsAMeasurementOfTheBoreThatLeaksAsMuch() {
        String rows = "manual-valve-front;bore;in;;;;14 inHg;;dull\n" + STAND;
        assertEquals(expected(14, 0.014, 0.009), bore(rows, "manual-valve-front"), 1e-9);
        DescribedCircuit circuit = read(rows).circuit().orElseThrow();
        assertEquals(1, circuit.measured("bus-12"));
        assertTrue(
                circuit.reduced()
                        .get(0)
                        .matches(
                                "manual-valve-front.bore: its readings leak as much as 0.55\\d+ in, air reading 14 inHg"),
                circuit.reduced().toString());
    }

    /** The rows of the stand may stand anywhere; a valve measured beside the reading is the one that was in the bore. */
    @Test
    void aMeasuredValveIsTheOneThatWasTested() {
        String rows = STAND + "manual-valve-front;bore;in;;13.990;;14 inHg;mm;\n";
        assertEquals(expected(14, 0.01399, 0.009), bore(rows, "manual-valve-front"), 1e-9);
    }

    @Test
    void aValveWhoseEndLandsAreAlikeTakesAReadingToo() {
        String rows = "regulator;bore;in;;;;12 inHg;;\n" + STAND;
        assertEquals(expected(12, 0.020, 0.008), bore(rows, "regulator-end-land"), 1e-9);
    }

    @Test
    void aStandThatPressesAirSaysSoBehindEachReading() {
        String rows = """
                manual-valve-front;bore;in;;;;30 psi pressure;;
                air-stand;blocked port;in;;;;40 psi pressure;;
                air-stand;hole;in;1 mm;;;10 psi pressure;;
                """;
        assertTrue(bore(rows, "manual-valve-front") > 0.01402, told(rows));
        String mixed = rows.replace("30 psi pressure", "14 inHg");
        assertTrue(told(mixed).contains("a vacuum and a pressure"), told(mixed));
    }

    @Test
    void aReadingThatSaysNothingIsToldWithWhatItNeeds() {
        String land = "manual-valve-front;bore;in;;;;%s;;\n";
        assertTrue(
                told(land.formatted("14 inHg")).contains("do not calibrate the stand"),
                told(land.formatted("14 inHg")));
        assertTrue(told(land.formatted("3 inHg") + STAND).contains("beyond what the stand was calibrated with"));
        assertTrue(told(land.formatted("35 inHg") + STAND).contains("a vacuum is 0 to 29.9 inHg"));
        assertTrue(told(land.formatted("14") + STAND).contains("a number without its unit"));
        assertTrue(told(land.formatted("good") + STAND)
                .contains("the sheet has the reading 'good' of manual-valve-front.bore"));
        String both = "manual-valve-front;bore;mm;14.05;;;14 inHg;;\n" + STAND;
        assertTrue(told(both).contains("a measured bore and an air reading"), told(both));
        String gap = "plate-pump;feeler;mm;;;;14 inHg;;\n" + STAND;
        assertTrue(told(gap).contains("of which no one land is known"), told(gap));
        String lands = "lockup-valve;bore;mm;;;;14 inHg;;\n" + STAND.replace("25 inHg", "0 inHg");
        assertTrue(told(lands).contains("a larger hole must read nearer to the room's pressure"), told(lands));
    }

    @Test
    void aRowOfTheStandThatMakesNoSenseIsTold() {
        String land = "manual-valve-front;bore;in;;;;14 inHg;;\n";
        String hole = told(land + STAND.replace("hole;in;1;", "hole;in;;"));
        assertTrue(hole.contains("the sheet has a hole of the stand of ''"), hole);
        String size = told(land + STAND.replace("blocked port", "shut"));
        assertTrue(size.contains("which is neither a blocked port nor a hole"), size);
    }

    @Test
    void aNarrowGapThroughWhichAirSlipsIsDoubted() {
        String rows = "manual-valve-front;bore;mm;;;;24.9 inHg;;\n" + STAND;
        assertTrue(told(rows).contains("air slips along the walls of a gap under 10 um"), told(rows));
        assertTrue(read(rows).circuit().isPresent());
    }

    /** 50 mm hub in a bushing of 50.07 mm. */
    @Test
    void aMissingBushingIsWrittenWithTheBareBoreThatItSatIn() {
        String rows = "hub-bushing;bore;in;missing 2.068;;;;in;spun out\n";
        ReadCircuit read = read(rows);
        assertTrue(read.circuit().isPresent(), told(rows));
        assertEquals(
                "measured: its bushing is missing; spun out",
                read.circuit().get().builds().get(0).changes().get(0).because());
        assertTrue(
                told("hub-bushing;bore;in;gone;;;;in;\n").contains("mend: write missing and what that bore measures"));
        assertTrue(told("hub-bushing;bore;in;missing 1.9;;;;in;\n").contains("the sheet has a bare bore of 1.9 in"));
        assertTrue(told("manual-valve-front;bore;in;gone;;;;in;\n").contains("which is no number"));
    }

    @Test
    void thousandthsHaveThreeNamesAndAnEmptyUnitIsThatOfTheNewSizes() {
        for (String unit : List.of("mil", "mils", "thou")) {
            assertEquals("", told("plate-pump;feeler;mm;;;1.2;;" + unit + ";\n"), unit);
        }
        assertEquals(14.051e-3, bore("manual-valve-front;bore;mm;14.051;;;;;\n", "manual-valve-front"), 1e-12);
        String inches = told("primary;face-clearance;in;;;0.02;;;\n");
        assertTrue(inches.contains("error: the sheet has 0.02 in for primary.face-clearance"), inches);
    }
}
