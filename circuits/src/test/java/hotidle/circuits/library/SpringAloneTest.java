package hotidle.circuits.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.circuits.ReadCircuit;
import hotidle.part.SpoolValve;
import hotidle.study.Window;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A unit raised by the spring of its regulator, pilot and throttle pressure left as they are. */
class SpringAloneTest {

    private static final double PSI = 6894.757293168361;
    private static final String TEXT = Library.text("crescent-four").orElseThrow();
    private static final DescribedCircuit CIRCUIT = read(
                    "  worn-raised:\n",
                    "  sprung: {on: fresh, set-pressure: 165 psi, set-by: spring, because: as tried}\n"
                            + "  worn-raised:\n")
            .circuit()
            .orElseThrow();

    private static ReadCircuit read(String old, String text) {
        return CircuitReader.read(TEXT.replace(old, text), "sprung.yaml");
    }

    private static double set(Transmission unit, String duty) {
        return unit.setPressure(unit.conditions(unit.duty(duty).orElseThrow())).orElseThrow();
    }

    private static double preload(Transmission unit) {
        return ((SpoolValve) unit.network().part("regulator").orElseThrow().part())
                .spring()
                .preload();
    }

    /** 145 psi is asked for at most; 20 psi more on 225 mm² are 31.03 N, and 32.1 psi more on the 140 mm² of reverse. */
    @Test
    void aSpringRaisesTheLineByTheSameAtEveryTorqueAndByMoreInReverse() {
        Transmission fresh = CIRCUIT.unit("fresh");
        Transmission sprung = CIRCUIT.unit("sprung");
        double highest =
                fresh.command().setPressure(fresh.network(), fresh.command().control("first", 145 * PSI));
        double more = 165 * PSI - highest;
        assertEquals(more * 225e-6, preload(sprung) - preload(fresh), 1e-9);
        for (String duty : List.of("hot-idle", "stall", "road-cruise")) {
            assertEquals(set(fresh, duty) + more, set(sprung, duty), 1e-3, duty);
        }
        assertEquals(set(fresh, "backing-up") + more * 225 / 140, set(sprung, "backing-up"), 1e-3);
        assertEquals(165 * PSI, sprung.highestSet(), 1e-3);
        assertEquals(
                fresh.conditions(fresh.duty("stall").orElseThrow()).commands(),
                sprung.conditions(sprung.duty("stall").orElseThrow()).commands(),
                "throttle pressure stays");
    }

    @Test
    void aBuildRaisedByItsSpringIsNotToldThatItsTablesDisagree() {
        ReadCircuit read = read(
                "  worn-raised:\n",
                "  sprung: {on: fresh, set-pressure: 185 psi, set-by: spring, because: as tried}\n"
                        + "  worn-raised:\n");
        assertEquals(List.of(), read.problems());
    }

    @Test
    void aSpringCannotSetLessThanThrottlePressureHoldsWithoutIt() {
        Transmission fresh = CIRCUIT.unit("fresh");
        double alone = 127.5 * 150 / 225 * PSI;
        assertThrows(IllegalArgumentException.class, () -> SetPressure.of(fresh, alone - 100, SetPressure.By.SPRING));
        assertEquals(
                alone + 100,
                SetPressure.of(fresh, alone + 100, SetPressure.By.SPRING).highestSet(),
                1e-3);
        assertTrue(SetPressure.of(fresh, alone - 100).highestSet() > 0, "command and spring together can");
    }

    @Test
    void aWindowBySpringAloneTriesUnitsWhoseThrottlePressureStays() {
        Transmission fresh = CIRCUIT.unit("fresh");
        List<Double> pressures = List.of(100 * PSI, 180 * PSI);
        Window window = Window.study(fresh, pressures, SetPressure.By.SPRING, List.of(12.0, 30.0), () -> {});
        Transmission raised = SetPressure.of(fresh, 180 * PSI, SetPressure.By.SPRING);
        double idle = hotidle.study.Judgement.of(raised, raised.duty("hot-idle").orElseThrow(), List.of(12.0, 30.0))
                .margins()
                .get(0)
                .value();
        assertEquals(
                idle,
                window.points().get(1).margins().entrySet().stream()
                        .filter(entry -> entry.getKey().duty().equals("hot-idle"))
                        .findFirst()
                        .orElseThrow()
                        .getValue()
                        .value(),
                1e-6 * idle);
    }

    @Test
    void anOpeningBeyondTheStopsIsAnError() {
        ReadCircuit read = read("stops: [0 mm, 4.5 mm]", "stops: [0 mm, 1.2 mm]");
        assertTrue(read.circuit().isEmpty());
        assertTrue(
                read.problems()
                        .get(0)
                        .text()
                        .contains("never opens: it begins to at 1.30 mm, and the spool stops at 1.20 mm"),
                read.problems().toString());
    }
}
