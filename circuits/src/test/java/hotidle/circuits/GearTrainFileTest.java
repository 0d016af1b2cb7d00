package hotidle.circuits;

import static hotidle.circuits.Golden.resource;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.geartrain.ShaftStrength;
import hotidle.geartrain.StressConcentration;
import hotidle.transmission.Range;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What clutches carry where the file gives the teeth, and what stays as it was where it does not. */
class GearTrainFileTest {

    private static final String TRAIN = """
            gearsets:
              input: turbine
              output: arm
              mesh-efficiency: 100 %
              sets:
                set: {sun: sun, sun-teeth: 30, ring: ring, ring-teeth: 70, carrier: arm, pinion-teeth: 20, pinion-count: 4}
              clutches:
                low-clutch: {joins: [hub, sun]}
                low-band: {joins: [ring, case]}
              shafts:
                stub: {joins: [turbine, hub]}
            ranges:
            """;

    private static Range first(String clutches) throws IOException {
        String text = resource("every-kind.yaml")
                .replace("bore-*.bore: {to: measured", "bore-1.bore: {to: measured")
                .replace("ranges:\n", TRAIN)
                .replace("{low-clutch: {torque-share: 1.1}, low-band: {torque-share: 0.4}}", clutches);
        ReadCircuit read = CircuitReader.read(text, "x.yaml");
        assertEquals(List.of(), read.problems());
        DescribedCircuit circuit = read.circuit().orElseThrow();
        assertFalse(
                circuit.defaults().stream().anyMatch(line -> line.where().contains("speed-ratio")),
                "a drum speed that is computed is no assumption");
        return circuit.unit().range("first").orElseThrow();
    }

    @Test
    void whatEachClutchHoldsAndHowFastItsDrumTurnsFollowFromTheTeeth() throws IOException {
        Range first = first("{low-clutch: {}, low-band: {}}");
        assertEquals(1, first.applied().get("low-clutch").torqueShare(), 1e-12);
        assertEquals(1, first.applied().get("low-clutch").speedRatio(), 1e-12);
        assertEquals(7.0 / 3, first.applied().get("low-band").torqueShare(), 1e-12);
        assertEquals(0, first.applied().get("low-band").speedRatio(), 0);
        assertEquals(10.0 / 3, first.driven().orElseThrow().ratio(), 1e-12);
        assertEquals(
                1, Math.abs(first.driven().orElseThrow().loads().get("stub").torque()), 1e-12);
    }

    /** What a shaft of 30 mm with a bore of 6 mm bears with some notches. */
    private static double bears(String notches) throws IOException {
        String stub = "stub: {joins: [turbine, hub], outer-diameter: 30 mm, inner-diameter: 6 mm, yield: 1000 MPa,"
                + " shear-endurance: 300 MPa" + notches + "}";
        String text = resource("every-kind.yaml")
                .replace("bore-*.bore: {to: measured", "bore-1.bore: {to: measured")
                .replace("ranges:\n", TRAIN.replace("stub: {joins: [turbine, hub]}", stub))
                .replace(
                        "{low-clutch: {torque-share: 1.1}, low-band: {torque-share: 0.4}}",
                        "{low-clutch: {}, low-band: {}}");
        ReadCircuit read = CircuitReader.read(text, "x.yaml");
        assertEquals(List.of(), read.problems());
        return read.circuit().orElseThrow().unit().gears().orElseThrow().links().stream()
                .filter(link -> link.name().equals("stub"))
                .findFirst()
                .orElseThrow()
                .rating();
    }

    private static double byHand(double concentration) {
        return new ShaftStrength(0.030, 0.006, 1000e6, 300e6, concentration).repeatedTorque();
    }

    @Test
    void theSharpestOfAShaftsNotchesCounts() throws IOException {
        double hole = StressConcentration.hole(0.003, 0.030, 0.006);
        double spline = StressConcentration.spline(0.034, 0.030, 0.006, 0.0004);
        assertTrue(spline > hole && hole > 1.5, spline + " and " + hole);
        String drilled = ", hole-diameter: 3 mm";
        String splined = ", spline-diameter: 34 mm, spline-radius: 0.4 mm";
        assertEquals(byHand(hole), bears(drilled), 1e-6);
        assertEquals(byHand(spline), bears(splined), 1e-6);
        assertEquals(byHand(spline), bears(drilled + splined), 1e-6);
        assertEquals(byHand(3), bears(drilled + splined + ", stress-concentration: 3"), 1e-6);
        assertEquals(byHand(hole), bears(drilled + ", stress-concentration: 1.2"), 1e-6);
    }

    @Test
    void aShareThatIsWrittenRoundedIsTakenFromTheTeethAllTheSame() throws IOException {
        Range first = first("{low-clutch: {torque-share: 1, speed-ratio: 1}, low-band: {torque-share: 2.33}}");
        assertEquals(7.0 / 3, first.applied().get("low-band").torqueShare(), 1e-12);
    }

    @Test
    void aFileWithoutGearsetsHasItsSharesAsWritten() throws IOException {
        Range first = CircuitReader.read(resource("every-kind.yaml"), "x.yaml")
                .circuit()
                .orElseThrow()
                .unit()
                .range("first")
                .orElseThrow();
        assertEquals(1.1, first.applied().get("low-clutch").torqueShare(), 0);
        assertTrue(first.driven().isEmpty());
    }
}
