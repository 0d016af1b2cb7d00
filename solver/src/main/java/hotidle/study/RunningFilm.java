package hotidle.study;

import hotidle.assess.HubReading;
import hotidle.assess.StateFault;
import hotidle.network.Placed;
import hotidle.part.Bushing;
import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The hub's film where it is thinnest over the engine speeds at which the unit runs: from its slowest driving condition on. A film at a
 * speed below that fails nothing.
 *
 * @param hub     the bushing
 * @param speed   [rev/s]
 * @param film    [m]; empty where metal touches
 * @param allowed the least one allowed [m]
 * @param known   whether it is known to fail or to hold
 */
public record RunningFilm(String hub, double speed, OptionalDouble film, double allowed, boolean known) {

    /** Of a sweep; empty without a hub, or where no state is known. */
    static Optional<RunningFilm> of(SpeedSweep sweep) {
        if (sweep.roles().hub().isEmpty()) {
            return Optional.empty();
        }
        return running(sweep).stream()
                .min(Comparator.comparingDouble(
                        state -> HubReading.of(sweep.roles(), state).least().orElse(-1)))
                .map(state -> at(sweep, state));
    }

    /** States at the speeds at which the unit runs. */
    private static List<Solution> running(SpeedSweep sweep) {
        double slowest = sweep.unit().duties().stream()
                .mapToDouble(DutyPoint::speed)
                .min()
                .orElse(0);
        return sweep.states().stream()
                .filter(state -> state.conditions().speed() >= slowest)
                .toList();
    }

    /** The hub's largest unit load at the same speeds, where it is more than its material bears. */
    static Optional<StateFault> heaviest(SpeedSweep sweep) {
        return sweep.roles()
                .hub()
                .map(Placed::name)
                .flatMap(hub -> running(sweep).stream()
                        .map(state -> new StateFault(
                                StateFault.Kind.HUB_LOAD,
                                hub,
                                state.measure(hub, Bushing.UNIT_LOAD).orElseThrow(),
                                state.measure(hub, Bushing.PERMISSIBLE_LOAD).orElseThrow()))
                        .filter(load -> load.is().getAsDouble() > load.needs().getAsDouble())
                        .max(Comparator.comparingDouble(load -> load.is().getAsDouble())));
    }

    /** The hub at those of a sweep's states at which the unit runs; empty without one. */
    static Optional<HubOverSpeed> over(SpeedSweep sweep) {
        return sweep.roles().hub().map(Placed::name).map(hub -> {
            List<Solution> running = running(sweep);
            return new HubOverSpeed(
                    Optional.empty(),
                    Optional.empty(),
                    of(sweep)
                            .filter(film -> !film.contact())
                            .flatMap(film -> running.stream()
                                    .filter(state -> state.conditions().speed() == film.speed())
                                    .findFirst()),
                    running.stream()
                            .max(Comparator.comparingDouble(state ->
                                    state.measure(hub, Bushing.UNIT_LOAD).orElseThrow())),
                    of(sweep).filter(RunningFilm::contact).map(RunningFilm::speed).stream()
                            .toList(),
                    List.of());
        });
    }

    /** The film of one state of a sweep of a unit with a hub. */
    static RunningFilm at(SpeedSweep sweep, Solution state) {
        HubReading reading = HubReading.of(sweep.roles(), state);
        Placed hub = sweep.roles().hub().orElseThrow();
        return new RunningFilm(
                hub.name(),
                state.conditions().speed(),
                reading.least(),
                reading.allowed(),
                reading.least().isEmpty()
                        || Limits.thinnest(hub, state, reading.allowed()).known());
    }

    /** Whether metal touches. */
    public boolean contact() {
        return film.isEmpty();
    }

    /** Whether metal touches, or the film is thinner than allowed. */
    public boolean fails() {
        return contact() || film.getAsDouble() < allowed;
    }
}
