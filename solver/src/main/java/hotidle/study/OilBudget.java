package hotidle.study;

import hotidle.duty.Unit;
import hotidle.network.Placed;
import hotidle.result.State;

/** x. */
final class OilBudget {
    private OilBudget() {}

    static double inletDensity(Unit unit, State state) {
        Placed chamber = Roles.of(unit).chambers().get(0);
        return state.conditions()
                .setting(chamber)
                .oil()
                .density(state.pressure(chamber.nodes().get(0)));
    }
}
