package hotidle.heat;

import hotidle.assess.Roles;
import hotidle.network.Placed;
import hotidle.newton.Series;
import hotidle.part.Cooler;
import hotidle.result.Outcome;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.HeatInputs;
import hotidle.transmission.Transmission;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A unit at one duty point whose temperatures follow from heat. Regions get their temperatures from where their oil comes: {@code sump}
 * from the pan, the converter's region from what leaves the converter, the cooler's from what leaves the cooler, the region of the
 * pump's inlet, where it is another than the sump's, from what mixes there; all others are given.
 */
final class WarmUnit {

    static final String SUMP = "sump";

    private static final int ROUNDS = 60;

    private final Transmission unit;
    private final HeatInputs inputs;
    private final DutyPoint duty;
    private final Roles roles;
    private final Series series;
    private final Map<String, Double> temperatures;
    private Optional<Outcome> stuck = Optional.empty();

    WarmUnit(Transmission unit, DutyPoint duty) {
        this.unit = unit;
        this.duty = duty;
        inputs = unit.heat().orElseThrow();
        roles = Roles.of(unit);
        series = new Series(unit.network());
        temperatures = new HashMap<>(duty.temperatures());
    }

    HeatInputs inputs() {
        return inputs;
    }

    boolean hasConverter() {
        return roles.converter().isPresent();
    }

    /** Why the state asked for last was not found. */
    Optional<Outcome> stuck() {
        return stuck;
    }

    /** Coldest that the oil can become [K]. */
    double coldest() {
        return roles.cooler()
                .flatMap(one -> ((Cooler) one.part()).heat())
                .map(heat -> Math.min(temperatures.get(heat.medium()), inputs.ambient()))
                .orElse(inputs.ambient());
    }

    /**
     * The state at two temperatures; empty where it is not found.
     *
     * @param tolerance of the temperatures that follow from these [K]
     */
    Optional<WarmState> at(Temperatures at, double tolerance) {
        temperatures.put(SUMP, at.sump());
        roles.converter().ifPresent(one -> temperatures.put(one.region(), at.converter()));
        region(roles.cooler()).ifPresent(region -> temperatures.putIfAbsent(region, at.sump()));
        region(roles.inlet()).ifPresent(region -> temperatures.putIfAbsent(region, at.sump()));
        for (int i = 0; i < ROUNDS; i++) {
            DutyPoint warm = duty.at(temperatures);
            if (!series.solve(unit.conditions(warm))) {
                stuck = Optional.of(series.outcome());
                series.restart();
                return Optional.empty();
            }
            var state = series.state();
            HeatFlows flows = HeatFlows.of(unit, warm, roles, state, at.sump(), at.converter());
            double moved = Math.max(
                    moved(region(roles.cooler()), flows.coolerOut().orElse(at.sump())),
                    moved(region(roles.inlet()), flows.inlet().orElse(at.sump())));
            if (moved <= tolerance) {
                return Optional.of(new WarmState(at, warm, state, flows));
            }
        }
        stuck = Optional.of(series.outcome());
        return Optional.empty();
    }

    /** Region of its own of a part: not the sump's and not the converter's. */
    private Optional<String> region(Optional<Placed> part) {
        return part.map(Placed::region)
                .filter(region -> !region.equals(SUMP)
                        && roles.converter()
                                .filter(one -> one.region().equals(region))
                                .isEmpty());
    }

    private double moved(Optional<String> region, double temperature) {
        return region.map(name -> Math.abs(temperatures.put(name, temperature) - temperature))
                .orElse(0.0);
    }
}
