package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.network.Conditions;
import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.oil.Oil;
import hotidle.part.Orifice;
import hotidle.part.Setting;
import hotidle.part.Solenoid;
import hotidle.result.State;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class BenchTest {

    private static final Oil OIL = new Oil("bench", Oil.Walther.constant(8e-6).a(), 0, 850, 0, 0, 0, 0);

    private static final Conditions CONDITIONS = new Conditions(
            0, "any", Setting.Lockup.OFF, OIL, 101_325, Map.of("sump", 373.15), Map.of("pilot-valve", 3e5));

    /** held 10 bar ──orifice── held 0: what is all given needs no solving, and ends in the same as a solved network. */
    @Test
    void aPartWithoutStatesIsReadAtItsPressures() {
        Placed orifice = Placed.of("hole", new Orifice(0.002, 0, 0.6, 1), "sump", Group.PLATE, "a", "b");
        Network network = new Network(List.of(Node.held("a", 10e5), Node.held("b", 0)), List.of(orifice));
        State state = Bench.run(network, CONDITIONS, "hole", Map.of()).state().orElseThrow();
        double area = Math.PI * 1e-6;
        double a = 850 / (2 * 0.36 * area * area);
        double b = 24 * 8e-6 * 850 / 8e-9;
        double q = (-b + Math.sqrt(b * b + 4 * a * 10e5)) / (2 * a);
        assertEquals(q, state.flow("hole"), 1e-9 * q);
    }

    /** supply 7 bar held, pilot free, exhaust held: the opening and the pilot are solved, or the opening is held. */
    @Test
    void statesAreSolvedOrHeld() {
        Placed valve = Placed.of(
                "pilot-valve", new Solenoid(0.0008, 0.0012, 0.3e5, false), "sump", Group.SOLENOIDS, "s", "p", "e");
        List<Node> free = List.of(Node.held("s", 7e5), Node.free("p"), Node.held("e", 0));
        State solved = Bench.run(new Network(free, List.of(valve)), CONDITIONS, "pilot-valve", Map.of())
                .state()
                .orElseThrow();
        double y = solved.own("pilot-valve", "opening");
        assertTrue(y > 0 && y < 1);
        assertEquals(3e5 - 0.3e5 * (y - 0.5), solved.pressure("p"), 1);

        List<Node> held = List.of(Node.held("s", 7e5), Node.held("p", solved.pressure("p")), Node.held("e", 0));
        State same = Bench.run(new Network(held, List.of(valve)), CONDITIONS, "pilot-valve", Map.of("opening", y))
                .state()
                .orElseThrow();
        assertEquals(
                solved.flow("pilot-valve.feed"), same.flow("pilot-valve.feed"), 1e-9 * same.flow("pilot-valve.feed"));
        assertEquals(y, same.measure("pilot-valve", "opening"));
    }
}
