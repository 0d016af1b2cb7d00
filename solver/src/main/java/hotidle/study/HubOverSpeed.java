package hotidle.study;

import hotidle.network.Conditions;
import hotidle.network.Placed;
import hotidle.newton.SteadySolver;
import hotidle.result.Outcome;
import hotidle.result.State;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The hub bushing over a range of engine speeds: its thinnest film and its largest load are seldom at the duty's own speed.
 *
 * @param states   solved, in rising speed
 * @param thinnest state with the thinnest known film, narrowed down between the speeds asked; empty without one
 * @param heaviest state with the largest load; empty without one
 * @param contact  speeds at which metal touches, so that the film is not known [rev/s]
 * @param unsolved speeds at which no state was found [rev/s]
 */
public record HubOverSpeed(
        List<State> states,
        Optional<State> thinnest,
        Optional<State> heaviest,
        List<Double> contact,
        List<Double> unsolved) {

    /** Speeds are narrowed down to this [rev/s]: half a revolution a minute. */
    private static final double NARROW = 0.5 / 60;

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    public HubOverSpeed {
        states = List.copyOf(states);
        contact = List.copyOf(contact);
        unsolved = List.copyOf(unsolved);
    }

    /**
     * Searches.
     *
     * @param solver     of the unit's network
     * @param conditions of the duty
     * @param hub        the bushing
     * @param speeds     [rev/s], rising
     */
    public static HubOverSpeed search(SteadySolver solver, Conditions conditions, Placed hub, List<Double> speeds) {
        List<State> states = new ArrayList<>();
        List<Double> contact = new ArrayList<>();
        List<Double> unsolved = new ArrayList<>();
        Optional<State> before = Optional.empty();
        for (double speed : speeds) {
            Outcome outcome = solver.solve(conditions.atSpeed(speed), before);
            if (outcome.state().isEmpty()) {
                unsolved.add(speed);
                continue;
            }
            before = outcome.state();
            states.add(before.get());
            if (before.get().measure(hub.name(), "metal_contact") > 0) {
                contact.add(speed);
            }
        }
        ToDoubleFunction<State> film = state -> film(state, hub);
        Optional<State> coarse = states.stream()
                .filter(state -> !Double.isNaN(film.applyAsDouble(state)))
                .min(Comparator.comparingDouble(film));
        Optional<State> thinnest =
                contact.isEmpty() && coarse.isPresent() ? narrowed(solver, states, coarse.get(), film) : coarse;
        Optional<State> heaviest =
                states.stream().max(Comparator.comparingDouble(state -> state.measure(hub.name(), "unit_load_pa")));
        return new HubOverSpeed(states, thinnest, heaviest, contact, unsolved);
    }

    private static double film(State state, Placed hub) {
        return state.measure(hub.name(), "least_film_m");
    }

    /** Golden section between the neighbours of the thinnest film; every state starts from the thinnest so far. */
    private static Optional<State> narrowed(
            SteadySolver solver, List<State> states, State coarse, ToDoubleFunction<State> film) {
        int at = states.indexOf(coarse);
        double low = speed(states.get(Math.max(at - 1, 0)));
        double high = speed(states.get(Math.min(at + 1, states.size() - 1)));
        State best = coarse;
        double left = high - GOLDEN * (high - low);
        double right = low + GOLDEN * (high - low);
        State one = at(solver, coarse, left);
        State other = at(solver, coarse, right);
        while (high - low > NARROW && one != null && other != null) {
            if (film.applyAsDouble(one) <= film.applyAsDouble(other)) {
                high = right;
                right = left;
                other = one;
                left = high - GOLDEN * (high - low);
                one = at(solver, other, left);
            } else {
                low = left;
                left = right;
                one = other;
                right = low + GOLDEN * (high - low);
                other = at(solver, one, right);
            }
            best = thinner(thinner(best, one, film), other, film);
        }
        return Optional.of(best);
    }

    private static State thinner(State best, State other, ToDoubleFunction<State> film) {
        return other != null && film.applyAsDouble(other) < film.applyAsDouble(best) ? other : best;
    }

    private static State at(SteadySolver solver, State start, double speed) {
        return solver.solve(start.conditions().atSpeed(speed), Optional.of(start))
                .state()
                .orElse(null);
    }

    private static double speed(State state) {
        return state.conditions().speed();
    }

    /** The state solved at the highest speed not above one [rev/s], where there is one. */
    Optional<State> below(double speed) {
        return states.stream().filter(state -> speed(state) <= speed).reduce((one, later) -> later);
    }
}
