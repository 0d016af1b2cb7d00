package hotidle.circuits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.sheet.MeasurementSheet;
import hotidle.circuits.sheet.SheetWriter;
import hotidle.transmission.Adjustable;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is written of a build is read back as it was. */
class WrittenBuildTest {

    private static final DescribedCircuit BUS = CircuitReader.read(
                    Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
            .circuit()
            .orElseThrow();

    private static WearSize size(Adjustable build, String name) {
        return build.dimension(name).orElseThrow();
    }

    @Test
    void aTightHubAndAWornMeshAreReadBackToTheLastDigitThatIsWritten() {
        Adjustable worn = BUS.adjustable("worn");
        double clearance = 3.4567891e-5;
        double mesh = 0.912345678e-6;
        Adjustable other = worn.resized(Map.of("hub-face.clearance", clearance, "primary.orifice-slip-area", mesh));
        String text = WrittenBuild.yaml(
                "shuttle-five",
                "shuttle-five",
                Optional.of("worn"),
                List.of(size(other, "hub-face.clearance"), size(other, "primary.orifice-slip-area")),
                OptionalDouble.of(1_500_000),
                "tried",
                List.of("a note"));
        assertTrue(text.startsWith("# a note\ncircuit: shuttle-five-changed\n"), text);
        ReadCircuit read = CircuitReader.read(text, "changed.yaml");
        DescribedCircuit circuit = read.circuit().orElseThrow(() -> new AssertionError(read.problems()));
        Adjustable back = circuit.adjustable("changed");
        assertEquals(clearance, size(back, "hub-face.clearance").value(), 1e-12 * clearance);
        assertEquals(mesh, size(back, "primary.orifice-slip-area").value(), 1e-12 * mesh);
        assertEquals(
                size(worn, "regulator.bore").value(),
                size(back, "regulator.bore").value());
        assertEquals(1_500_000, back.unit().highestSet(), 1e-3);
    }

    @Test
    void aSheetThatIsFilledInMakesTheSizesThatWereFilledIn() {
        Map<String, Double> measured =
                Map.of("hub-face.clearance", 4.5e-5, "regulator.bore", 0.020041, "nosuch.bore", 1.0);
        for (SheetWriter.LengthUnit unit : SheetWriter.LengthUnit.values()) {
            String sheet = BUS.measurementSheet(unit, measured);
            ReadCircuit filled = CircuitReader.read(
                    Library.text("shuttle-five").orElseThrow(),
                    "shuttle-five.yaml",
                    BaseFiles.LIBRARY,
                    Optional.of(new MeasurementSheet("mine.csv", sheet.substring(1))));
            DescribedCircuit read = filled.circuit()
                    .orElseThrow(() -> new AssertionError(filled.problems().toString()));
            Adjustable mine = read.adjustable("mine");
            assertEquals(4.5e-5, size(mine, "hub-face.clearance").value(), 1e-10);
            assertEquals(0.020041, size(mine, "regulator.bore").value(), 1e-10);
            assertEquals(2, read.measured("mine"));
        }
    }

    @Test
    void afterAJobTheSizesThatItRestoresAreNewAndOthersCanBeChangedOnTop() {
        Adjustable worn = BUS.adjustable("worn");
        var shop = BUS.workshop("worn").orElseThrow();
        var pump = shop.jobs().stream()
                .filter(job -> job.name().equals("pump"))
                .findFirst()
                .orElseThrow();
        Adjustable after = shop.rework().after(List.of(pump));
        assertTrue(size(after, "primary.face-clearance").isNew());
        assertEquals(
                size(worn, "regulator.bore").value(),
                size(after, "regulator.bore").value());
        Adjustable both = after.resized(
                Map.of("regulator.bore", size(worn, "regulator.bore").fresh()));
        assertEquals(
                after.unit().network().part("primary"), both.unit().network().part("primary"));
        assertTrue(!after.unit()
                .network()
                .part("regulator")
                .equals(both.unit().network().part("regulator")));
    }
}
