package hotidle.circuits;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Builds that differ by their set pressure alone are one build once both are set to one pressure. */
class SetPressureAloneTest {

    private static final DescribedCircuit FIVE = CircuitReader.read(
                    Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
            .circuit()
            .orElseThrow();

    @Test
    void aRaisedBuildIsTheOneThatItRaises() {
        assertEquals("worn", FIVE.apartFromSetPressure("worn-raised"));
        assertEquals("restored", FIVE.apartFromSetPressure("restored-raised"));
        assertEquals("worn", FIVE.apartFromSetPressure("worn"));
        assertEquals("restored-part-throttle", FIVE.apartFromSetPressure("restored-part-throttle"));
    }

    /** The same preload and pilot pressure, to what arithmetic loses. */
    @Test
    void bothSetToOnePressureAskForTheSameLineOnTheSameSpring() {
        Transmission worn = SetPressure.of(FIVE.unit("worn"), 1.2e6);
        Transmission raised = SetPressure.of(FIVE.unit("worn-raised"), 1.2e6);
        worn.duties().forEach(duty -> {
            assertEquals(
                    worn.setPressure(worn.conditions(duty)).orElseThrow(),
                    raised.setPressure(raised.conditions(duty)).orElseThrow(),
                    1e-9 * 1.2e6);
            var commands = worn.conditions(duty).commands();
            raised.conditions(duty)
                    .commands()
                    .forEach((solenoid, pressure) -> assertEquals(commands.get(solenoid), pressure, 1e-3, solenoid));
        });
    }

    /** What a job does stands in no change of the build that the job makes. */
    @Test
    void aBuildAfterAJobIsABuildOfItsOwn() {
        DescribedCircuit.Build mended = new DescribedCircuit.Build(
                "mended", "after the pump's job", Optional.of("worn"), List.of(), Optional.empty());
        DescribedCircuit circuit = FIVE.with(mended, FIVE.adjustables().get("worn"), Optional.empty());
        assertEquals("mended", circuit.apartFromSetPressure("mended"));
    }

    /** The command stays behind there, so that what another pressure by command and spring makes of it is not the same. */
    @Test
    void aBuildSetByItsSpringAloneIsABuildOfItsOwn() {
        DescribedCircuit.Build worn =
                new DescribedCircuit.Build("worn", "", Optional.empty(), List.of(), Optional.empty());
        DescribedCircuit.ChangeLine spring =
                new DescribedCircuit.ChangeLine("set-pressure", "to 200 psi", "shims at hand");
        DescribedCircuit.Build shimmed = new DescribedCircuit.Build(
                "shimmed", "", Optional.of("worn"), List.of(spring), Optional.of(SetPressure.By.SPRING));
        DescribedCircuit circuit = new DescribedCircuit(
                "made",
                "",
                Optional.empty(),
                List.of(worn, shimmed),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                FIVE.adjustables(),
                FIVE.workshops(),
                Optional.empty(),
                FIVE.noBuild());
        assertEquals("shimmed", circuit.apartFromSetPressure("shimmed"));
    }
}
