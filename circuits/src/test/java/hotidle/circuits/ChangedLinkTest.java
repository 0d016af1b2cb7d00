package hotidle.circuits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.geartrain.Link;
import hotidle.transmission.Transmission;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Builds that change what carries in the gear train. */
class ChangedLinkTest {

    private static ReadCircuit read(String changes) {
        return CircuitReader.read(
                Library.text("shuttle-five").orElseThrow() + "  stage:\n    on: restored\n    changes:\n" + changes,
                "x.yaml");
    }

    private static Transmission stage(String changes) {
        ReadCircuit read = read(changes);
        return read.circuit()
                .orElseThrow(() -> new AssertionError(read.problems().toString()))
                .unit("stage");
    }

    private static double rating(Transmission unit, String link) {
        return unit.gears().orElseThrow().links().stream()
                .filter(one -> one.name().equals(link))
                .mapToDouble(Link::rating)
                .findFirst()
                .orElseThrow();
    }

    private static String first(String changes) {
        ReadCircuit read = read(changes);
        assertTrue(read.circuit().isEmpty());
        return read.problems().get(0).text();
    }

    @Test
    void aThickerShaftBearsMoreInThatBuildAlone() {
        Transmission thick = stage("""
                      input-shaft.outer-diameter: {to: 40 mm, because: a thicker one}
                      low-one-way.rated-torque: {times: 2, because: twice as many rollers}
                      case.rated-torque: {by: 100 N.m, because: a rib}
                """);
        Transmission plain = CircuitReader.read(Library.text("shuttle-five").orElseThrow(), "x.yaml")
                .circuit()
                .orElseThrow()
                .unit("restored");
        double hollow = (Math.pow(40, 4) - Math.pow(8, 4)) / 40 / ((Math.pow(32, 4) - Math.pow(8, 4)) / 32);
        assertEquals(hollow * rating(plain, "input-shaft"), rating(thick, "input-shaft"), 1e-6);
        assertEquals(2 * rating(plain, "low-one-way"), rating(thick, "low-one-way"), 1e-9);
        assertEquals(100 + rating(plain, "case"), rating(thick, "case"), 1e-9);
        assertEquals(rating(plain, "output-shaft"), rating(thick, "output-shaft"));
        assertEquals(plain.ranges(), thick.ranges());
    }

    @Test
    void itStandsAmongTheChangesOfTheBuild() {
        DescribedCircuit circuit = CircuitReader.read(
                        Library.text("shuttle-five").orElseThrow(), "x.yaml")
                .circuit()
                .orElseThrow();
        List<String> changed = circuit.builds().stream()
                .filter(build -> build.name().equals("restored-strong-shaft"))
                .flatMap(build -> build.changes().stream())
                .map(DescribedCircuit.ChangeLine::what)
                .toList();
        assertEquals(List.of("input-shaft.outer-diameter"), changed);
    }

    @Test
    void whatIsNoKeyOfItIsToldAtTheBuild() {
        assertTrue(
                first("      input-shaft.outer: {to: 40 mm, because: x}\n").contains("input-shaft has no key 'outer'"));
        assertTrue(first("      input-shaft.joins: {to: [a, b], because: x}\n")
                .contains("input-shaft has no key 'joins'"));
        assertTrue(first("      input-shaft: {to: 40 mm, because: x}\n").contains("input-shaft has keys of its own"));
        assertTrue(first("      output-shaft.fillet-radius: {to: 0.1 mm, because: x}\n")
                        .contains("makes no shaft")
                || first("      output-shaft.fillet-radius: {to: 0.1 mm, because: x}\n")
                        .contains("make no shaft"));
    }
}
