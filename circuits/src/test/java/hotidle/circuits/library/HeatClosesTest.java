package hotidle.circuits.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.Library;
import hotidle.heat.WarmState;
import hotidle.heat.Warmed;
import hotidle.study.HeatStudy;
import hotidle.transmission.Transmission;
import hotidle.transmission.Warming;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What heats a unit is what cools it and what it stores, in every ready circuit with an engine, every build and driving condition. */
class HeatClosesTest {

    private static final double CLOSED = 1e-9;

    @Test
    void heatClosesInEveryBuildOfEveryCircuitWithAnEngine() {
        Set<String> heated = new TreeSet<>();
        int balances = 0;
        List<String> none = new ArrayList<>();
        for (String name : Library.names()) {
            for (Transmission unit : Ready.of(name).circuit().units().values()) {
                boolean engine = unit.duties().stream().anyMatch(duty -> duty.engineTorque() > 0);
                assertEquals(engine, !HeatStudy.warming(unit).isEmpty(), name + " " + unit.build());
                if (!engine) {
                    assertTrue(unit.heat().isEmpty(), name + " is a bench: it has no heat of its own");
                    continue;
                }
                heated.add(name);
                for (HeatStudy.DutyHeat duty :
                        HeatStudy.of(List.of(unit), () -> {}).builds().get(0).duties()) {
                    String where = name + " " + unit.build() + " "
                            + duty.warmed().duty().name();
                    List<WarmState> states = states(duty.warmed());
                    boolean rest = duty.warmed().duty().warming().orElseThrow() instanceof Warming.ToBalance;
                    states.forEach(state -> closes(where, state, rest));
                    balances += states.size();
                    if (states.isEmpty()) {
                        none.add(where + " " + duty.warmed().verdict());
                        assertFalse(duty.warmed().verdict() == Warmed.WarmingEnd.SETTLED, where);
                    }
                }
            }
        }
        assertEquals(Set.of("crescent-four", "shuttle-five", "vane-six"), heated);
        assertTrue(balances > 4 * none.size() && balances > 60, balances + " balances, none for " + none);
    }

    private static List<WarmState> states(Warmed warmed) {
        return Stream.concat(warmed.settled().stream(), warmed.others().stream())
                .toList();
    }

    /** At rest a unit stores nothing; on its way it stores what its sources leave over. */
    private static void closes(String where, WarmState state, boolean rest) {
        assertEquals(0, state.flows().imbalance(), CLOSED, where);
        if (rest) {
            double stored = state.flows().sumpRate() + state.flows().converterRate();
            assertEquals(0, stored / state.flows().generated(), CLOSED, where + " stores heat at rest");
        }
    }
}
