package hotidle.study;

import hotidle.assess.Assessment;
import hotidle.heat.HeatBalance;
import hotidle.heat.WarmState;
import hotidle.heat.Warmed;
import hotidle.newton.SteadySolver;
import hotidle.part.Bushing;
import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What heat makes of some builds at the duty points whose temperatures follow from it, and what the heat of each costs against the first.
 *
 * @param builds in the order asked for
 */
public record HeatStudy(List<BuildHeat> builds) {

    public HeatStudy {
        builds = List.copyOf(builds);
    }

    /**
     * A build.
     *
     * @param unit   the unit
     * @param duties its duty points whose temperatures follow from heat, in their order
     */
    public record BuildHeat(Transmission unit, List<DutyHeat> duties) {
        public BuildHeat {
            duties = List.copyOf(duties);
        }

        /** Whether all of them come to a temperature. */
        public boolean known() {
            return duties.stream().allMatch(duty -> duty.warmed().known());
        }
    }

    /**
     * A duty point.
     *
     * @param warmed what heat makes of it
     * @param own    the state at its temperatures, assessed; empty where it comes to none
     * @param cost   against the first build; empty for the first, and where one of both comes to no temperature
     */
    public record DutyHeat(Warmed warmed, Optional<Assessment> own, Optional<Cost> cost) {}

    /**
     * What a build's heat costs: its state at its own temperatures less its state at those of the first build.
     *
     * @param sump      [K]
     * @param converter of the oil that leaves it [K]; nil without one
     * @param line      pressure [Pa]
     * @param lube      flow [m³/s]
     * @param film      least film of the hub at the duty's own speed [m]; empty without a hub, and where metal touches in one of both
     */
    public record Cost(double sump, double converter, double line, double lube, OptionalDouble film) {}

    /**
     * Studies builds.
     *
     * @param units whose heat inputs are given, with the same duty points
     * @param step  told after each duty point
     */
    public static HeatStudy of(List<Transmission> units, Runnable step) {
        List<BuildHeat> builds = new ArrayList<>();
        Map<String, WarmState> first = new LinkedHashMap<>();
        for (Transmission unit : units) {
            List<DutyHeat> duties = new ArrayList<>();
            for (DutyPoint duty : warming(unit)) {
                Warmed warmed = HeatBalance.of(unit, duty);
                Optional<Assessment> own = warmed.settled().map(state -> assessed(unit, state.duty(), state.state()));
                Optional<Cost> cost = builds.isEmpty()
                        ? Optional.empty()
                        : warmed.settled()
                                .flatMap(state -> Optional.ofNullable(first.get(duty.name()))
                                        .flatMap(base -> cost(unit, state, own.orElseThrow(), base)));
                if (builds.isEmpty()) {
                    warmed.settled().ifPresent(state -> first.put(duty.name(), state));
                }
                duties.add(new DutyHeat(warmed, own, cost));
                step.run();
            }
            builds.add(new BuildHeat(unit, duties));
        }
        return new HeatStudy(builds);
    }

    /** Duty points whose temperatures follow from heat. */
    public static List<DutyPoint> warming(Transmission unit) {
        return unit.duties().stream().filter(duty -> duty.warming().isPresent()).toList();
    }

    private static Optional<Cost> cost(Transmission unit, WarmState state, Assessment own, WarmState base) {
        DutyPoint held = state.duty().at(base.duty().temperatures());
        return new SteadySolver(unit.network())
                .solve(unit.conditions(held), Optional.of(state.state()))
                .state()
                .map(solved -> assessed(unit, held, solved))
                .map(before -> new Cost(
                        state.at().sump() - base.at().sump(),
                        state.at().converter() - base.at().converter(),
                        own.figures().line() - before.figures().line(),
                        own.figures().lube() - before.figures().lube(),
                        film(own, before)));
    }

    private static OptionalDouble film(Assessment own, Assessment before) {
        OptionalDouble now = film(own);
        OptionalDouble then = film(before);
        return now.isPresent() && then.isPresent()
                ? OptionalDouble.of(now.getAsDouble() - then.getAsDouble())
                : OptionalDouble.empty();
    }

    private static OptionalDouble film(Assessment assessed) {
        return assessed.roles().hub().isEmpty()
                ? OptionalDouble.empty()
                : assessed.state().measure(assessed.roles().hub().get().name(), Bushing.LEAST_FILM);
    }

    private static Assessment assessed(Transmission unit, DutyPoint duty, Solution state) {
        return Assessment.of(unit, duty, state);
    }
}
