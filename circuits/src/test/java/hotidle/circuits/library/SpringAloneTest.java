package hotidle.circuits.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.circuits.ReadCircuit;
import hotidle.part.SpoolValve;
import hotidle.study.Judgement;
import hotidle.study.Window;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A unit raised by the spring of its regulator, pilot and throttle pressure left as they are. */
class SpringAloneTest {

    private static final double PSI = 6894.757293168361;
    private static final String SPRUNG =
            "  sprung: {on: fresh, set-pressure: 210 psi, set-by: spring, because: as tried}\n";
    private static final ReadCircuit READ = read("  restored:\n", SPRUNG + "  restored:\n");
    private static final DescribedCircuit CIRCUIT = READ.circuit().orElseThrow();

    private static ReadCircuit read(String old, String text) {
        return CircuitReader.read(Library.text("vane-six").orElseThrow().replace(old, text), "sprung.yaml");
    }

    private static double set(Transmission unit, String duty) {
        return unit.setPressure(unit.conditions(unit.duty(duty).orElseThrow())).orElseThrow();
    }

    private static double preload(Transmission unit) {
        return ((SpoolValve) unit.network().part("regulator").orElseThrow().part())
                .spring()
                .preload();
    }

    /** The highest command is 190 psi; what is more than its balance lies on 154 mm² of the line at every torque. */
    @Test
    void aSpringRaisesTheLineByTheSameAtEveryTorque() {
        Transmission fresh = CIRCUIT.unit("fresh");
        Transmission sprung = CIRCUIT.unit("sprung");
        double highest =
                fresh.command().setPressure(fresh.network(), fresh.command().control("first", 190 * PSI));
        double more = 210 * PSI - highest;
        assertEquals(more * 154e-6, preload(sprung) - preload(fresh), 1e-9);
        for (String duty : List.of("hot-idle", "stall", "road-cruise")) {
            assertEquals(set(fresh, duty) + more, set(sprung, duty), 1e-3, duty);
        }
        assertEquals(210 * PSI, sprung.highestSet(), 1e-3);
        assertEquals(
                fresh.conditions(fresh.duty("stall").orElseThrow()).commands(),
                sprung.conditions(sprung.duty("stall").orElseThrow()).commands(),
                "the pilot is asked for the same");
    }

    /** Nothing commands its line: the throttle's 124 psi stay, and stall is the point that asks for most. */
    @Test
    void aMechanicalUnitIsRaisedByItsSpringAndByMoreInReverse() {
        Transmission fresh = Ready.of("crescent-four").circuit().unit("fresh");
        for (SetPressure.By by : SetPressure.By.values()) {
            Transmission raised = SetPressure.of(fresh, 165 * PSI, by);
            assertEquals(165 * PSI, set(raised, "stall"), 1e-3);
            double more = 165 * PSI - set(fresh, "stall");
            assertEquals(set(fresh, "hot-idle") + more, set(raised, "hot-idle"), 1e-3);
            assertEquals(set(fresh, "backing-up") + more * 225 / 140, set(raised, "backing-up"), 1e-3);
            assertEquals(165 * PSI, raised.highestSet(), 1e-3);
        }
    }

    @Test
    void aBuildRaisedByItsSpringIsNotToldThatItsTablesDisagree() {
        assertEquals(List.of(), READ.problems());
    }

    /** 190 psi are asked for by 87 psi of pilot pressure on 230 mm², against 154 mm² of the line. */
    @Test
    void aSpringCannotSetLessThanThePilotHoldsWithoutIt() {
        Transmission fresh = CIRCUIT.unit("fresh");
        double alone = (190 - 60) * 100 / 149.35 * 230 / 154 * PSI;
        assertThrows(IllegalArgumentException.class, () -> SetPressure.of(fresh, alone - 100, SetPressure.By.SPRING));
        double least = SetPressure.of(fresh, alone + 100, SetPressure.By.SPRING).highestSet();
        assertEquals(alone + 100, least, 1e-3);
        assertTrue(SetPressure.of(fresh, alone - 100).highestSet() > 0, "command and spring together can");
    }

    /**
     * There command and spring together are the spring alone. Full throttle presses the throttle valve by 3.8 N + 4 N/mm · 10.8 mm on
     * 55 mm², and that pressure acts on 150 mm² against 225 of the line; the regulator's spring of 8 N/mm is pressed by 0.50 mm more
     * at its first edge.
     */
    @Test
    void withoutASolenoidNoSpringPullsForALowerLine() {
        Transmission crescent = Ready.of("crescent-four").circuit().unit("fresh");
        double least = SetPressure.lowest(crescent, SetPressure.By.COMMAND_AND_SPRING);
        assertEquals((3.8 + 4 * 10.8) / 55e-6 * 150 / 225, least, 1);
        assertThrows(IllegalArgumentException.class, () -> SetPressure.of(crescent, least - 100));
        assertEquals(-8 * 0.50, preload(SetPressure.of(crescent, least)), 1e-6, "slack where it regulates");
        assertEquals(0, SetPressure.lowest(CIRCUIT.unit("fresh"), SetPressure.By.COMMAND_AND_SPRING));
    }

    @Test
    void aWindowBySpringAloneTriesUnitsWhosePilotPressureStays() {
        Transmission fresh = CIRCUIT.unit("fresh");
        List<Double> pressures = List.of(170 * PSI, 230 * PSI);
        Window window = Window.study(
                fresh, Window.Raised.by(fresh, SetPressure.By.SPRING), pressures, List.of(12.0, 30.0), () -> {});
        Transmission raised = SetPressure.of(fresh, 230 * PSI, SetPressure.By.SPRING);
        Judgement idle = Judgement.of(raised, raised.duty("hot-idle").orElseThrow(), List.of(12.0, 30.0));
        idle.margins()
                .forEach(margin -> assertEquals(
                        margin.value().orElseThrow(),
                        window.points()
                                .get(1)
                                .margins()
                                .get(new Judgement.Key("hot-idle", margin.kind(), margin.part()))
                                .value()
                                .orElseThrow(),
                        1e-6 * Math.abs(margin.value().orElseThrow()),
                        margin.toString()));
    }

    @Test
    void anOpeningBeyondTheStopsIsAnError() {
        ReadCircuit read = read("edge: 2.20 mm", "edge: 4.20 mm");
        assertTrue(read.circuit().isEmpty());
        assertTrue(
                read.problems()
                        .get(0)
                        .text()
                        .contains("never opens: it begins to at 4.20 mm, and the spool stops at 4.00 mm"),
                read.problems().toString());
    }
}
