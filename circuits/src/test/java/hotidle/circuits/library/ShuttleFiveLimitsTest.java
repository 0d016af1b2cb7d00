package hotidle.circuits.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.study.Judgement;
import hotidle.study.Wear;
import hotidle.study.Window;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Set pressures and wear that the demonstration circuit allows. */
class ShuttleFiveLimitsTest {

    private static final double PSI = 6894.757293168;
    private static final DescribedCircuit CIRCUIT = CircuitReader.read(
                    Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
            .circuit()
            .orElseThrow();
    private static final List<Double> SPEEDS =
            IntStream.rangeClosed(2, 13).mapToObj(i -> 300.0 * i / 60).toList();
    private static final List<Double> PRESSURES =
            IntStream.rangeClosed(0, 4).mapToObj(i -> (60 + 85 * i) * PSI).toList();

    private static boolean fails(Transmission unit, Judgement.Key key) {
        DutyPoint duty = unit.duty(key.duty()).orElseThrow();
        return Judgement.of(unit, duty, SPEEDS).margins().stream()
                .filter(margin -> margin.kind() == key.kind() && margin.part().equals(key.part()))
                .anyMatch(margin -> margin.verdict() == Margin.Verdict.FAILS);
    }

    private static boolean failsAnywhere(Transmission unit) {
        return unit.duties().stream()
                .flatMap(duty -> Judgement.of(unit, duty, SPEEDS).margins().stream())
                .anyMatch(margin -> margin.verdict() == Margin.Verdict.FAILS);
    }

    /** What the worn unit needs for its low clutch at stall is more than it can hold at hot idle. */
    @Test
    void noSetPressureSuitsTheWornUnit() {
        Window window = Window.study(CIRCUIT.unit("worn-raised"), PRESSURES, SPEEDS, () -> {});
        assertEquals(List.of(), window.all());
    }

    @Test
    void theRestoredUnitHasAWindowAndOnePerCentBeyondItsEndsALimitFails() {
        Transmission unit = CIRCUIT.unit("restored-raised");
        Window window = Window.study(unit, PRESSURES, SPEEDS, () -> {});
        assertEquals(1, window.all().size());
        Window.PressureRange all = window.all().get(0);
        assertTrue(all.low() < 150 * PSI && all.high() > 240 * PSI, all.toString());
        Judgement.Key low = all.lowBy().orElseThrow();
        assertEquals(Margin.Kind.APPLY, low.kind());
        assertTrue(fails(SetPressure.of(unit, all.low() / 1.01), low));
        assertFalse(failsAnywhere(SetPressure.of(unit, all.low() * 1.01)));
        Judgement.Key high = all.highBy().orElseThrow();
        assertTrue(fails(SetPressure.of(unit, all.high() * 1.01), high));
        assertFalse(failsAnywhere(SetPressure.of(unit, all.high() / 1.01)));
    }

    @Test
    void threeWearLimitsTurnWithinOnePerCent() {
        Adjustable whole = CIRCUIT.adjustable("restored-raised");
        List<String> names = List.of("hub-bushing.bore", "primary.face-clearance", "plate-shift.feeler");
        List<WearSize> three = whole.dimensions().stream()
                .filter(dimension -> names.contains(dimension.name()))
                .toList();
        Wear wear = Wear.study(whole, three, SPEEDS, () -> {});
        assertEquals(List.of(), wear.already());
        assertEquals(3, wear.fits().size());
        for (Wear.WornFit fit : wear.fits()) {
            double size = fit.size().orElseThrow();
            double worn = size - fit.dimension().fresh();
            assertTrue(
                    fails(
                            whole.with(fit.dimension(), size + 0.01 * worn).orElseThrow(),
                            fit.gone().get(0)),
                    fit.dimension().name());
            assertFalse(
                    failsAnywhere(
                            whole.with(fit.dimension(), size - 0.01 * worn).orElseThrow()),
                    fit.dimension().name());
        }
    }
}
