package hotidle.circuits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.sheet.MeasurementSheet;
import hotidle.transmission.Transmission;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Numbers marked as assumed, as the file, builds and a sheet have them. */
class AssumedMarkTest {

    private static String marked() {
        return Library.text("crescent-four")
                .orElseThrow()
                .replace("displacement: 21 cm3/rev", "displacement: ~21 cm3/rev")
                .replace("sealing-teeth: 5", "sealing-teeth: ~5")
                .replace(
                        "width: 300 mm, length: 4 mm, gap: {new: 6 um",
                        "width: 300 mm, length: 4 mm, gap: {new: ~6 um");
    }

    private static DescribedCircuit read(String text) {
        ReadCircuit read = CircuitReader.read(text, "x.yaml");
        assertEquals(List.of(), read.problems());
        return read.circuit().orElseThrow();
    }

    @Test
    void anAssumedNumberCountsAsWrittenAndIsNamed() {
        DescribedCircuit plain = read(Library.text("crescent-four").orElseThrow());
        DescribedCircuit marked = read(marked());
        assertEquals(plain.unit().network(), marked.unit().network());
        assertEquals(List.of(), plain.unit().assumed());
        assertEquals(
                List.of("pump.displacement", "pump.sealing-teeth", "plate.gap"),
                marked.unit().assumed());
    }

    @Test
    void whatABuildMeasuresIsAssumedNoMore() {
        Transmission worn = read(marked()).unit("worn");
        assertEquals(List.of("pump.displacement", "pump.sealing-teeth"), worn.assumed());
    }

    @Test
    void whatASheetMeasuresIsAssumedNoMore() {
        String sheet = "part,size,measured gap or flatness,unit\nplate,gap,9,um\n";
        ReadCircuit read = CircuitReader.read(
                marked(),
                "x.yaml",
                BaseFiles.LIBRARY,
                Optional.of(MeasurementSheet.of("bus.csv", sheet.getBytes(StandardCharsets.UTF_8))));
        assertTrue(read.circuit().isPresent(), read.problems().toString());
        assertEquals(
                List.of("pump.displacement", "pump.sealing-teeth"),
                read.circuit().get().unit().assumed());
    }

    @Test
    void countedBoresLeakAsManyTimes() {
        String one = Library.text("crescent-four").orElseThrow();
        String gathered = one.replace(
                        "  bore-3: {like: bore-2, about: shift valve 2-3, bore: {measured: 10.050 mm}}\n", "")
                .replace("  bore-4: {like: bore-2, about: shift valve 3-4, bore: {measured: 10.042 mm}}\n", "")
                .replace(
                        "bore-2: {like: bore-1, about: shift valve 1-2,",
                        "bore-2: {like: bore-1, about: shift valves, count: 3,")
                .replace("bore-5: {like: bore-2,", "bore-5: {like: bore-2, count: 1,");
        assertEquals(line(read(one)), line(read(gathered)), 1e-6 * line(read(one)));
    }

    private static double line(DescribedCircuit circuit) {
        Transmission unit = circuit.unit();
        return new hotidle.newton.SteadySolver(unit.network())
                .solve(unit.conditions(unit.duty("hot-idle").orElseThrow()), Optional.empty())
                .state()
                .orElseThrow()
                .pressure("line");
    }
}
