package hotidle.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.network.Conditions;
import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.oil.Oil;
import hotidle.result.Solution;
import hotidle.study.SinglePart;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A measure stands once, with its unit; what a state does not give is empty, and what a kind never gives is refused. */
class MeasureTest {

    @Test
    void aKeyEndsInTheUnitThatItIsCountedIn() {
        assertEquals("least_film_m", Bushing.LEAST_FILM.key());
        assertThrows(
                IllegalArgumentException.class,
                () -> new Measure("least_film", Measure.QuantityKind.LENGTH, "without its unit"));
    }

    /** A shaft of 50 mm, standing at its place on a film or on the metal. */
    private static Solution hub(double load, double speed) {
        Bushing bushing = new Bushing(Fit.same(0.05007, 0.05), 0.017, List.of(), load, 0, 2e-6, 7e6, 0, false);
        Placed hub = Placed.of("hub", bushing, "sump", Group.HUB, "back", "sump");
        Network network = new Network(List.of(Node.held("back", 0.5e5), Node.held("sump", 0)), List.of(hub));
        Oil.Walther line =
                Oil.Walther.through(new Oil.ViscosityPoint(313.15, 34e-6), new Oil.ViscosityPoint(373.15, 7.4e-6));
        Oil oil = new Oil("invented", line, 855, 0.65, 0, 0, 6e4);
        Conditions conditions =
                new Conditions(speed, "any", Setting.Lockup.OFF, oil, 101_325, Map.of("sump", 363.15), Map.of());
        return SinglePart.run(network, conditions, "hub", Map.of()).state().orElseThrow();
    }

    @Test
    void aShaftOnItsFilmHasAThicknessAndOneOnTheMetalHasNone() {
        Solution floats = hub(400, 50);
        assertEquals(OptionalDouble.of(0), floats.measure("hub", Bushing.METAL_CONTACT));
        assertTrue(floats.measure("hub", Bushing.LEAST_FILM).orElseThrow() > 0);
        Solution touches = hub(1e6, 0.1);
        assertEquals(OptionalDouble.of(1), touches.measure("hub", Bushing.METAL_CONTACT));
        assertEquals(OptionalDouble.empty(), touches.measure("hub", Bushing.LEAST_FILM));
        assertEquals(OptionalDouble.of(1e6), touches.measure("hub", Bushing.LOAD));
    }

    @Test
    void aBushingHasNoLiftAndAPartThatIsNotThereHasNothing() {
        Solution floats = hub(400, 50);
        assertThrows(IllegalArgumentException.class, () -> floats.measure("hub", ReliefValve.LIFT));
        assertThrows(IllegalArgumentException.class, () -> floats.measure("bearing", Bushing.LOAD));
    }

    @Test
    void noPartGivesTwoMeasuresOfOneName() {
        PumpSlip slip = new PumpSlip(
                List.of(new PumpSlip.Face("face", Fit.same(0.01204, 0.012), 0.02, 0.03, 0.5, 2, 1)),
                List.of(),
                0,
                PumpSlip.Fitted.NONE,
                1e-9,
                PumpSlip.Lost.NONE);
        Part pump = new PumpChamber(1e-5, slip, new PumpChamber.Drag(0, 0, 0), java.util.Optional.empty());
        List<String> keys = pump.measures().stream().map(Measure::key).toList();
        assertTrue(keys.contains("face_gap_m"), keys.toString());
        assertEquals(keys.size(), new HashSet<>(keys).size());
    }
}
