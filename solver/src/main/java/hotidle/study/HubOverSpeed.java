package hotidle.study;

import hotidle.assess.Roles;
import hotidle.network.Conditions;
import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.newton.Series;
import hotidle.newton.SolvedState;
import hotidle.part.Bushing;
import hotidle.result.Solution;
import hotidle.study.search.Least;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * The hub bushing over a range of engine speeds: its thinnest film and its largest load are seldom at the duty's own speed.
 *
 * @param slowest  state at the slowest speed at which one was found; empty without one
 * @param below    state at the highest of the speeds that is not above the duty's own; empty without one
 * @param thinnest state with the thinnest known film, narrowed down between the speeds asked; empty without one
 * @param heaviest state with the largest load; empty without one
 * @param contact  speeds at which metal touches, so that the film is not known [rev/s]
 * @param unsolved speeds at which no state was found [rev/s]
 */
public record HubOverSpeed(
        Optional<Solution> slowest,
        Optional<Solution> below,
        Optional<Solution> thinnest,
        Optional<Solution> heaviest,
        List<Double> contact,
        List<Double> unsolved) {

    /** Speeds are narrowed down to this [rev/s]: half a revolution a minute, below what a tachometer shows (assumed). */
    private static final double NARROW = 0.5 / 60;

    public HubOverSpeed {
        contact = List.copyOf(contact);
        unsolved = List.copyOf(unsolved);
    }

    /**
     * Searches.
     *
     * @param series     of the unit's network, standing where the slowest state is to start from
     * @param network    the same
     * @param roles      of its parts; it has a hub
     * @param conditions of the duty
     * @param speeds     [rev/s], rising
     * @param known      of a unit alike by speed, from which the states here may start; what is known here then takes their place
     */
    static HubOverSpeed search(
            Series series,
            Network network,
            Roles roles,
            Conditions conditions,
            List<Double> speeds,
            Map<Double, HubAlike> known) {
        String hub = roles.hub().orElseThrow().name();
        HubSpeeds asked = new HubSpeeds(series, network, roles, conditions, speeds, known);
        asked.solve();
        List<HubState> states = asked.solved();
        List<Double> contact = new ArrayList<>(
                states.stream().filter(HubState::touches).map(HubState::speed).toList());
        Optional<HubState> thinnest = states.stream().min(Comparator.comparingDouble(HubState::film));
        if (thinnest.isPresent() && contact.isEmpty()) {
            HubState best = thinnest.get();
            for (HubSpeeds.Bracket bracket : asked.brackets()) {
                best = new Narrowed(series, hub, conditions, best).between(bracket);
            }
            thinnest = Optional.of(best);
            if (best.touches()) {
                contact.add(best.speed());
            }
        }
        Optional<HubState> heaviest =
                Stream.concat(states.stream(), thinnest.stream()).max(Comparator.comparingDouble(HubState::unitLoad));
        Optional<HubState> below = states.stream()
                .filter(state -> state.speed() <= conditions.speed())
                .reduce((one, later) -> later);
        return new HubOverSpeed(
                whole(series, states.stream().findFirst()),
                whole(series, below),
                whole(series, thinnest.filter(state -> !state.touches())),
                whole(series, heaviest),
                contact,
                asked.unsolved());
    }

    /** The few states that are asked for by more than what the hub gives. */
    private static Optional<Solution> whole(Series series, Optional<HubState> state) {
        return state.map(one -> series.state(one.state()));
    }

    /** The hub at one state alone. */
    static HubOverSpeed alone(Solution state, Placed hub) {
        boolean touches = state.measure(hub.name(), Bushing.METAL_CONTACT).orElseThrow() > 0;
        return new HubOverSpeed(
                Optional.of(state),
                Optional.of(state),
                Optional.of(state).filter(one -> !touches),
                Optional.of(state),
                touches ? List.of(state.conditions().speed()) : List.of(),
                List.of());
    }

    /** The states that are known. */
    Stream<Solution> states() {
        return Stream.of(slowest, below, thinnest, heaviest).flatMap(Optional::stream);
    }

    /** A search for the thinnest film between states; every state starts from the nearest in speed that is known. */
    private static final class Narrowed {
        private final Series series;
        private final String hub;
        private final Conditions conditions;
        private final List<HubState> known = new ArrayList<>();
        private HubState best;

        Narrowed(Series series, String hub, Conditions conditions, HubState best) {
            this.series = series;
            this.hub = hub;
            this.conditions = conditions;
            this.best = best;
        }

        HubState between(HubSpeeds.Bracket bracket) {
            List<HubState> states = bracket.states();
            HubState from = states.get(0);
            HubState to = states.get(states.size() - 1);
            known.addAll(states);
            if (states.size() == 3 && states.get(1).film() < Math.min(from.film(), to.film())) {
                HubState middle = states.get(1);
                Least.between(
                        from.speed(),
                        from.film(),
                        middle.speed(),
                        middle.film(),
                        to.speed(),
                        to.film(),
                        NARROW,
                        this::filmAt);
            } else if (bracket.jumps()) {
                Least.anywhere(
                        from.speed(),
                        from.film(),
                        to.speed(),
                        to.film(),
                        best.speed(),
                        best.film(),
                        NARROW,
                        this::filmAt);
            } else {
                Least.between(from.speed(), from.film(), to.speed(), to.film(), NARROW, this::filmAt);
            }
            return best;
        }

        private OptionalDouble filmAt(double speed) {
            HubState start = nearest(known.stream(), speed).orElseThrow();
            series.restart(start.state());
            nearest(known.stream().filter(state -> (state.speed() - speed) * (start.speed() - speed) < 0), speed)
                    .ifPresent(other -> series.guess(SolvedState.between(
                            start.state(), other.state(), (speed - start.speed()) / (other.speed() - start.speed()))));
            if (!series.solve(conditions.atSpeed(speed))) {
                return OptionalDouble.empty();
            }
            HubState state = HubState.last(series, hub);
            known.add(state);
            best = state.film() < best.film() ? state : best;
            return OptionalDouble.of(state.film());
        }

        private static Optional<HubState> nearest(Stream<HubState> states, double speed) {
            return states.min(Comparator.comparingDouble(state -> Math.abs(state.speed() - speed)));
        }
    }
}
