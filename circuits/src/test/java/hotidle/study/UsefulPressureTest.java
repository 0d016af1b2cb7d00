package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.study.TorqueHeld.Carrier;
import hotidle.study.TorqueHeld.Held;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Up to which set pressure the demonstration units hold more torque. */
class UsefulPressureTest {

    private static final double PSI = 6894.757293168;
    private static final double SPEED = 2000 / 60.0;
    private static final List<Double> PRESSURES =
            IntStream.rangeClosed(0, 4).mapToObj(i -> (60 + 85 * i) * PSI).toList();

    private static Transmission restored;
    private static Transmission strong;
    private static UsefulPressure useful;

    private static UsefulPressure found(Transmission unit) {
        return UsefulPressure.of(unit, Window.Raised.by(unit, SetPressure.By.COMMAND_AND_SPRING), PRESSURES, SPEED);
    }

    @BeforeAll
    static void find() {
        var circuit = CircuitReader.read(Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
                .circuit()
                .orElseThrow();
        restored = circuit.unit("restored");
        strong = circuit.unit("restored-strong-shaft");
        useful = found(restored);
    }

    /** What holds least of all ranges, and what it holds. */
    private static Held least(Transmission unit) {
        return TorqueHeld.of(unit, SPEED).stream()
                .map(range -> range.held().orElseThrow())
                .min(Comparator.comparingDouble(Held::torque))
                .orElseThrow();
    }

    @Test
    void theCrossingLiesWithinTheSetPressuresThatHoldEveryLimit() {
        assertTrue(useful.crosses());
        assertEquals("input-shaft", useful.weakest().orElseThrow().name());
        double psi = useful.pressure().orElseThrow() / PSI;
        assertTrue(psi > 195 && psi < 215, psi + " psi");
        assertEquals(List.of(), useful.unsolved());
    }

    /** The search for the crossing and that for the torque that is held share nothing but the single states. */
    @Test
    void belowTheCrossingAClutchGivesFirstAndAboveItTheShaft() {
        double at = useful.pressure().orElseThrow();
        Held below = least(SetPressure.of(restored, 0.98 * at));
        Held above = least(SetPressure.of(restored, 1.02 * at));
        assertTrue(below.links().get(0).clutch(), below.links().toString());
        assertEquals("input-shaft", above.links().get(0).name());
        double bearable = useful.weakest().orElseThrow().torque();
        assertTrue(below.torque() < bearable && below.torque() > 0.95 * bearable);
        assertEquals(bearable, above.torque(), 1e-9 * bearable);
        assertEquals(bearable, least(SetPressure.of(restored, 1.2 * at)).torque(), 1e-9 * bearable);
    }

    @Test
    void withAThickerShaftTheClutchesGiveFirstInAllOfItsWindow() {
        UsefulPressure thick = found(strong);
        assertTrue(thick.pressure().isEmpty() || thick.pressure().getAsDouble() > 268 * PSI, thick.toString());
        assertTrue(least(strong).links().get(0).clutch());
    }

    @Test
    void whatCarriesLittleGivesFirstAtEveryPressureAndWithoutRatingsThereIsNoCrossing() {
        String text = Library.text("shuttle-five").orElseThrow();
        UsefulPressure weak =
                found(unit(text.replace("outer-diameter: 32 mm", "rated-torque: 200 N.m, outer-diameter: 32 mm")));
        assertFalse(weak.crosses());
        assertEquals(PRESSURES.get(0), weak.pressure().orElseThrow());
        String bare = text.replaceAll("(?s)  shafts:\n.*?\nranges:", "\nranges:")
                .replace(", rated-torque: 8000 N.m", "")
                .replace("ring: input-hub", "ring: turbine")
                .replace("ring: output-ring", "ring: output")
                .replace("joins: [input-hub,", "joins: [turbine,")
                .replaceAll("(?s)\n  restored-strong-shaft:.*", "\n");
        UsefulPressure none = found(unit(bare));
        assertTrue(none.weakest().isEmpty() && none.pressure().isEmpty());
    }

    private static Transmission unit(String text) {
        var read = CircuitReader.read(text, "x.yaml");
        return read.circuit()
                .orElseThrow(() -> new AssertionError(read.problems().toString()))
                .unit("restored");
    }

    @Test
    void overSetPressureClutchesRiseAndTheShaftLiesFlat() {
        TorqueByPressure by = TorqueByPressure.of(
                Window.Raised.by(restored, SetPressure.By.COMMAND_AND_SPRING),
                List.of(100 * PSI, 150 * PSI, 250 * PSI),
                SPEED,
                () -> {});
        double shaft = useful.weakest().orElseThrow().torque();
        by.points().forEach(point -> assertEquals(shaft, of(point, "input-shaft"), 1e-9 * shaft));
        double[] low = by.points().stream()
                .mapToDouble(point -> of(point, "low-clutch"))
                .toArray();
        assertTrue(low[0] < low[1] && low[1] < shaft && shaft < low[2]);
        assertEquals(least(restored).torque(), by.points().get(1).held().orElseThrow(), 1e-9 * shaft);
        assertEquals(shaft, by.points().get(2).held().orElseThrow(), 1e-9 * shaft);
    }

    private static double of(TorqueByPressure.TorqueAtPressure point, String link) {
        return point.links().stream()
                .filter(one -> one.name().equals(link))
                .mapToDouble(Carrier::torque)
                .findFirst()
                .orElseThrow();
    }
}
