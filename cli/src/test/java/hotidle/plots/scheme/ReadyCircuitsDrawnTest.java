package hotidle.plots.scheme;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.draw.DrawnScheme;
import hotidle.answer.draw.DrawnState;
import hotidle.answer.draw.Frames;
import hotidle.answer.format.Quantity;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.study.AtDuty;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every ready circuit drawn; it stands in the drawing's package to see where everything lies. */
class ReadyCircuitsDrawnTest {

    /** Laid out once for all that is asked of it. */
    private static final Map<String, Drawing> DRAWINGS = new ConcurrentHashMap<>();

    private static Drawing drawing(String name) {
        return DRAWINGS.computeIfAbsent(name, one -> new Drawing(scheme(one, Optional.empty())));
    }

    private static Sheet sheet(String name) {
        return drawing(name).sheet();
    }

    static List<String> circuits() {
        return Library.names();
    }

    @ParameterizedTest
    @MethodSource("circuits")
    void nothingLiesOnAnythingElse(String name) {
        assertEquals(List.of(), Flaws.of(scheme(name, Optional.empty()), sheet(name)));
    }

    /** Read and laid out anew; that the same sheet gives the same bytes, DrawingTest says. */
    @ParameterizedTest
    @MethodSource("circuits")
    void theSameFileGivesTheSameDrawing(String name) {
        assertEquals(
                sheet(name).toString(),
                new Drawing(scheme(name, Optional.empty())).sheet().toString());
    }

    /** Where the order of the file makes crossings; where it makes none there is nothing to gain. */
    @ParameterizedTest
    @MethodSource("circuits")
    void linesCrossAtMostHalfAsOftenAsInTheOrderOfTheFile(String name) {
        Scheme scheme = scheme(name, Optional.empty());
        long found = sheet(name).crossings();
        long inOrder = Layered.inOrder(scheme).crossings();
        assertTrue(2 * found <= inOrder, name + ": " + found + " crossings, in order " + inOrder);
    }

    @ParameterizedTest
    @MethodSource("circuits")
    void everyPartIsDrawnOrGathered(String name) {
        DescribedCircuit circuit = circuit(name);
        DrawnScheme drawn = DrawnScheme.of(Quantity.UnitSystem.SHOP, circuit, state(circuit), Optional.empty());
        long hidden = circuit.parts().stream()
                .filter(line -> line.kind().equals("pump-inlet"))
                .count();
        assertEquals(circuit.parts().size(), drawn.scheme().parts().size() + drawn.leaks() + hidden);
    }

    /** Room, lines and frames are all that the layout goes by; {@code DrawingTest} says that the same of them stand alike. */
    @ParameterizedTest
    @MethodSource("circuits")
    void everyBuildAndDutyHasTheSamePlan(String name) {
        DescribedCircuit circuit = circuit(name);
        String first = plan(DrawnScheme.of(Quantity.UnitSystem.SHOP, circuit, state(circuit), Optional.empty())
                .scheme());
        for (Transmission unit : circuit.units().values()) {
            for (DutyPoint duty : unit.duties()) {
                DrawnState shown = new DrawnState(
                        unit,
                        duty.range(),
                        Optional.of(duty),
                        AtDuty.solved(unit, duty).state(),
                        Optional.of(circuit.unit()),
                        AtDuty.solved(circuit.unit(), duty).state());
                Scheme scheme = DrawnScheme.of(Quantity.UnitSystem.SHOP, circuit, shown, Optional.empty())
                        .scheme();
                assertEquals(first, plan(scheme), unit.build() + " at " + duty.name());
            }
        }
    }

    /** Sizes of boxes and tags and what they are joined to. */
    private static String plan(Scheme scheme) {
        StringBuilder plan = new StringBuilder();
        for (SchemePart part : scheme.parts()) {
            BoxPlan box = BoxPlan.of(part, scheme);
            plan.append(part.name()).append(part.frame());
            plan.append(box.width()).append(' ').append(box.height());
            part.pins()
                    .forEach(pin -> plan.append(pin.net())
                            .append(pin.role())
                            .append(box.pins().get(pin)));
            plan.append('\n');
        }
        scheme.nets()
                .forEach(net -> plan.append(net.name())
                        .append(net.frame())
                        .append(net.look())
                        .append(TagPlan.of(net))
                        .append('\n'));
        return plan.toString();
    }

    @Test
    void aFullUnitGoesOnA3AndItsGroupsOnA4() {
        assertEquals("A3", drawing("shuttle-five").paper().name());
        for (Frames frame : Frames.values()) {
            Scheme group = scheme("shuttle-five", Optional.of(frame));
            Drawing drawn = new Drawing(group);
            assertEquals(List.of(), Flaws.of(group, drawn.sheet()));
            assertEquals("A4", drawn.paper().name(), frame.word());
        }
    }

    private static Scheme scheme(String name, Optional<Frames> only) {
        DescribedCircuit circuit = circuit(name);
        return DrawnScheme.of(Quantity.UnitSystem.SHOP, circuit, state(circuit), only)
                .scheme();
    }

    private static DrawnState state(DescribedCircuit circuit) {
        Transmission unit = circuit.unit();
        Optional<DutyPoint> duty = unit.duties().stream().findFirst();
        return new DrawnState(
                unit,
                duty.map(DutyPoint::range).orElse(unit.ranges().get(0).name()),
                duty,
                duty.flatMap(at -> AtDuty.solved(unit, at).state()),
                Optional.empty(),
                Optional.empty());
    }

    private static DescribedCircuit circuit(String name) {
        return CircuitReader.read(Library.text(name).orElseThrow(), name + ".yaml")
                .circuit()
                .orElseThrow();
    }
}
