package hotidle.circuits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.sheet.MeasurementSheet;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Which sizes are measured past their wear limit: by the file's own measurements, or by those of a sheet. */
class PastLimitTest {

    private static final String RIG = Library.text("training-rig").orElseThrow();

    /** The faces are 0.030 mm as new, 0.070 mm at their limit and 0.060 mm as measured. */
    private static DescribedCircuit rig(String facesMeasured) {
        return CircuitReader.read(RIG.replace("measured: 0.060 mm", "measured: " + facesMeasured), "rig.yaml")
                .circuit()
                .orElseThrow();
    }

    private static DescribedCircuit sheet(String row) {
        String text =
                "part;size;measured bore;measured valve;measured gap or flatness;unit;gauge used;measured by;note\n"
                        + row + "\n";
        return CircuitReader.read(
                        RIG,
                        "rig.yaml",
                        BaseFiles.LIBRARY,
                        Optional.of(MeasurementSheet.of("bench.csv", text.getBytes(StandardCharsets.UTF_8))))
                .circuit()
                .orElseThrow();
    }

    private static DescribedCircuit.SizeLine size(DescribedCircuit circuit, String name) {
        return circuit.sizes().stream()
                .filter(size -> size.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static OptionalDouble faces(DescribedCircuit circuit) {
        return circuit.pastLimit(size(circuit, "pump.face-clearance"));
    }

    @Test
    void aFaceWornBeyondItsLimitIsPastItByTheDifference() {
        assertEquals(0, rig("0.060 mm").pastLimit());
        assertFalse(faces(rig("0.070 mm")).isPresent(), "at the limit");
        assertEquals(0.005e-3, faces(rig("0.075 mm")).orElseThrow(), 1e-12);
        assertEquals(1, rig("0.075 mm").pastLimit());
    }

    @Test
    void aSheetCountsInsteadOfWhatTheFileMeasured() {
        DescribedCircuit worn = sheet("pump;face-clearance;;;0.08;mm;;;");
        assertEquals(0.010e-3, faces(worn).orElseThrow(), 1e-12);
        assertEquals(1, worn.pastLimit());
        DescribedCircuit good = sheet("pump;face-clearance;;;0.05;mm;;;");
        assertTrue(faces(good).isEmpty());
        assertEquals(0.05e-3, good.measured(size(good, "pump.face-clearance")).orElseThrow(), 1e-12);
    }

    @Test
    void whatTheSheetLeavesBlankIsNotMeasuredWhateverTheFileSays() {
        DescribedCircuit worn = sheet("pump;face-clearance;;;0.08;mm;;;");
        assertTrue(worn.measured(size(worn, "pump.tip-clearance")).isEmpty());
        assertEquals(
                0.090e-3,
                rig("0.060 mm")
                        .measured(size(rig("0.060 mm"), "pump.tip-clearance"))
                        .orElseThrow(),
                1e-12);
    }

    /** The seat of the relief valve has no limit, so that it cannot lie past one. */
    @Test
    void aSizeWithoutALimitIsNeverPastIt() {
        DescribedCircuit rig = rig("0.060 mm");
        assertTrue(size(rig, "relief.leak-clearance").limit().isEmpty());
        assertTrue(rig.pastLimit(size(rig, "relief.leak-clearance")).isEmpty());
    }
}
