package hotidle.study;

import hotidle.network.Conditions;
import hotidle.network.Placed;
import hotidle.newton.SteadySolver;
import hotidle.part.Bushing;
import hotidle.result.Outcome;
import hotidle.result.Solution;
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
        List<Solution> states,
        Optional<Solution> thinnest,
        Optional<Solution> heaviest,
        List<Double> contact,
        List<Double> unsolved) {

    /** Speeds are narrowed down to this [rev/s]: half a revolution a minute. */
    private static final double NARROW = 0.5 / 60;

    /** A load that grows by this from one speed to the next rises steeply [-]. */
    private static final double STEEP = 1.1;

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
        List<Solution> states = new ArrayList<>();
        List<Double> contact = new ArrayList<>();
        List<Double> unsolved = new ArrayList<>();
        Optional<Solution> before = Optional.empty();
        for (double speed : speeds) {
            Outcome outcome = solver.solve(conditions.atSpeed(speed), before);
            if (outcome.state().isEmpty()) {
                unsolved.add(speed);
                continue;
            }
            before = outcome.state();
            states.add(before.get());
            if (touches(before.get(), hub)) {
                contact.add(speed);
            }
        }
        ToDoubleFunction<Solution> film = state -> film(state, hub);
        Optional<Solution> thinnest = states.stream().min(Comparator.comparingDouble(film));
        if (thinnest.isPresent() && contact.isEmpty()) {
            Solution best = thinnest.get();
            for (int[] bracket : brackets(states, states.indexOf(best), hub)) {
                Solution narrowed = narrowed(solver, states.get(bracket[0]), states.get(bracket[1]), film);
                best = thinner(best, narrowed, film);
            }
            thinnest = Optional.of(best);
            if (touches(best, hub)) {
                contact.add(speed(best));
            }
        }
        Optional<Solution> heaviest = java.util.stream.Stream.concat(states.stream(), thinnest.stream())
                .max(Comparator.comparingDouble(
                        state -> state.measure(hub.name(), Bushing.UNIT_LOAD).orElseThrow()));
        return new HubOverSpeed(states, thinnest.filter(state -> !touches(state, hub)), heaviest, contact, unsolved);
    }

    /** The hub at one state alone. */
    static HubOverSpeed alone(Solution state, Placed hub) {
        boolean touches = touches(state, hub);
        return new HubOverSpeed(
                List.of(state),
                Optional.of(state).filter(one -> !touches),
                Optional.of(state),
                touches ? List.of(speed(state)) : List.of(),
                List.of());
    }

    private static boolean touches(Solution state, Placed hub) {
        return state.measure(hub.name(), Bushing.METAL_CONTACT).orElseThrow() > 0;
    }

    /** Thinner than any film where metal touches [m]. */
    private static double film(Solution state, Placed hub) {
        return touches(state, hub)
                ? -1
                : state.measure(hub.name(), Bushing.LEAST_FILM).orElseThrow();
    }

    /** Where to look closer: around the thinnest film, and wherever the load rises steeply, as when a chamber is unloaded. */
    private static List<int[]> brackets(List<Solution> states, int thinnest, Placed hub) {
        int last = states.size() - 1;
        List<int[]> brackets = new ArrayList<>();
        brackets.add(new int[] {Math.max(thinnest - 1, 0), Math.min(thinnest + 1, last)});
        for (int i = 0; i < last; i++) {
            double before = states.get(i).measure(hub.name(), Bushing.LOAD).orElseThrow();
            double after = states.get(i + 1).measure(hub.name(), Bushing.LOAD).orElseThrow();
            if (after > STEEP * before) {
                brackets.add(new int[] {i, Math.min(i + 2, last)});
            }
        }
        return brackets;
    }

    /** Golden section; every state starts from its neighbour in speed. */
    private static Solution narrowed(SteadySolver solver, Solution from, Solution to, ToDoubleFunction<Solution> film) {
        double low = speed(from);
        double high = speed(to);
        Solution best = thinner(from, to, film);
        double left = high - GOLDEN * (high - low);
        double right = low + GOLDEN * (high - low);
        Solution one = at(solver, from, left);
        Solution other = at(solver, to, right);
        while (high - low > NARROW && one != null && other != null) {
            best = thinner(thinner(best, one, film), other, film);
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
        }
        return best;
    }

    private static Solution thinner(Solution best, Solution other, ToDoubleFunction<Solution> film) {
        return other != null && film.applyAsDouble(other) < film.applyAsDouble(best) ? other : best;
    }

    private static Solution at(SteadySolver solver, Solution start, double speed) {
        return solver.solve(start.conditions().atSpeed(speed), Optional.of(start))
                .state()
                .orElse(null);
    }

    private static double speed(Solution state) {
        return state.conditions().speed();
    }

    /** The state solved at the highest speed not above one [rev/s], where there is one. */
    Optional<Solution> below(double speed) {
        return states.stream().filter(state -> speed(state) <= speed).reduce((one, later) -> later);
    }
}
