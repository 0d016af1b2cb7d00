package hotidle.circuits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.sheet.MeasurementSheet;
import hotidle.transmission.WearSize;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Whether a gauge has read a size, a build has made it, or nobody has looked. */
class SizeOriginTest {

    private static final String TEXT = Library.text("shuttle-five").orElseThrow();

    private static final DescribedCircuit CIRCUIT =
            CircuitReader.read(TEXT, "shuttle-five.yaml").circuit().orElseThrow();

    private static WearSize.Origin of(DescribedCircuit circuit, String build, String size) {
        return circuit.adjustable(build).dimension(size).orElseThrow().origin();
    }

    @Test
    void aBuildAsWrittenHasBeenLookedAtByNobody() {
        assertTrue(CIRCUIT.adjustable("fresh").dimensions().stream()
                .allMatch(size -> size.origin() == WearSize.Origin.WRITTEN));
    }

    @Test
    void aBuildIsMeasuredWhereItTakesTheMeasuredSizeAndMadeWhereItTakesAnother() {
        assertEquals(WearSize.Origin.MEASURED, of(CIRCUIT, "worn", "regulator.bore"));
        assertEquals(WearSize.Origin.MEASURED, of(CIRCUIT, "worn-raised", "regulator.bore"));
        assertEquals(WearSize.Origin.MADE, of(CIRCUIT, "restored", "regulator.bore"));
        assertEquals(WearSize.Origin.MADE, of(CIRCUIT, "restored", "hub-bushing.bore"));
        assertEquals(WearSize.Origin.WRITTEN, of(CIRCUIT, "worn", "regulator.valve"));
    }

    @Test
    void ofASheetWhatIsFilledInIsMeasuredAndWhatIsBlankIsNot() {
        String sheet = "part;size;measured bore;measured valve;unit\nmanual-valve-front;bore;14,061;;mm\n";
        DescribedCircuit circuit = CircuitReader.read(
                        TEXT,
                        "shuttle-five.yaml",
                        BaseFiles.LIBRARY,
                        Optional.of(MeasurementSheet.of("bus.csv", sheet.getBytes(StandardCharsets.UTF_8))))
                .circuit()
                .orElseThrow();
        assertEquals(WearSize.Origin.MEASURED, of(circuit, "bus", "manual-valve-front.bore"));
        assertEquals(WearSize.Origin.WRITTEN, of(circuit, "bus", "manual-valve-front.valve"));
        assertEquals(WearSize.Origin.WRITTEN, of(circuit, "bus", "regulator.bore"));
        List<WearSize> measured = circuit.adjustable("bus").dimensions().stream()
                .filter(size -> size.origin() == WearSize.Origin.MEASURED)
                .toList();
        assertEquals(1, measured.size());
    }
}
