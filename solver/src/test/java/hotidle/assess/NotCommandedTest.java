package hotidle.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.part.SpoolValve;
import hotidle.study.TenNodes;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NotCommandedTest {

    private static final Transmission UNIT = TenNodes.worn(1);

    /** The unit without its command, and with other parts. */
    private static Transmission uncommanded(List<Placed> parts) {
        return new Transmission(
                UNIT.circuit(),
                UNIT.build(),
                new Network(UNIT.network().nodes(), parts),
                UNIT.oil(),
                UNIT.ambient(),
                UNIT.ranges(),
                Optional.empty(),
                UNIT.duties(),
                List.of());
    }

    private static List<Placed> valves() {
        return UNIT.network().parts().stream()
                .filter(placed -> placed.part() instanceof SpoolValve)
                .toList();
    }

    @Test
    void aCommandedLineIsJudged() {
        assertEquals(Optional.empty(), NotCommanded.of(UNIT));
    }

    @Test
    void theOneValveThatTheLinePushesOpenIsMeantByTheOpeningItUncoversFirst() {
        NotCommanded why = NotCommanded.of(uncommanded(UNIT.network().parts())).orElseThrow();
        assertTrue(why.valves());
        assertEquals(Optional.of(new NotCommanded.UncommandedRegulator("line", "regulator", "feed")), why.regulator());
    }

    @Test
    void ofTwoSuchValvesNeitherIsMeant() {
        List<Placed> parts = new ArrayList<>(UNIT.network().parts());
        Placed regulator = valves().get(0);
        parts.add(Placed.of(
                "second",
                regulator.part(),
                "sump",
                regulator.group(),
                regulator.nodes().toArray(new String[0])));
        NotCommanded why = NotCommanded.of(uncommanded(parts)).orElseThrow();
        assertTrue(why.valves());
        assertEquals(Optional.empty(), why.regulator());
    }

    @Test
    void withoutASpoolValveNothingRegulates() {
        List<Placed> parts = UNIT.network().parts().stream()
                .filter(placed -> !(placed.part() instanceof SpoolValve))
                .toList();
        assertFalse(NotCommanded.of(uncommanded(parts)).orElseThrow().valves());
    }
}
