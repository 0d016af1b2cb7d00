package hotidle.study;

import hotidle.network.Conditions;
import hotidle.network.Placed;
import hotidle.newton.Series;
import hotidle.part.Bushing;
import hotidle.result.Solution;
import hotidle.study.search.Least;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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

    /** Speeds are narrowed down to this [rev/s]: half a revolution a minute, below what a tachometer shows (assumed). */
    private static final double NARROW = 0.5 / 60;

    /** A load that grows by this from one speed to the next rises steeply (ours) [-]. */
    private static final double STEEP = 1.1;

    public HubOverSpeed {
        states = List.copyOf(states);
        contact = List.copyOf(contact);
        unsolved = List.copyOf(unsolved);
    }

    /**
     * Searches.
     *
     * @param series     of the unit's network, standing where the slowest state is to start from
     * @param conditions of the duty
     * @param hub        the bushing
     * @param speeds     [rev/s], rising
     */
    public static HubOverSpeed search(Series series, Conditions conditions, Placed hub, List<Double> speeds) {
        List<Solution> states = new ArrayList<>();
        List<Double> contact = new ArrayList<>();
        List<Double> unsolved = new ArrayList<>();
        for (double speed : speeds) {
            if (!series.solve(conditions.atSpeed(speed))) {
                unsolved.add(speed);
                continue;
            }
            Solution state = series.state();
            states.add(state);
            if (touches(state, hub)) {
                contact.add(speed);
            }
        }
        ToDoubleFunction<Solution> film = state -> film(state, hub);
        Optional<Solution> thinnest = states.stream().min(Comparator.comparingDouble(film));
        if (thinnest.isPresent() && contact.isEmpty()) {
            Solution best = thinnest.get();
            for (Bracket bracket : brackets(states, states.indexOf(best), hub)) {
                best = new Narrowed(series, film, best).between(bracket);
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

    /**
     * Where to look closer.
     *
     * @param states two or three neighbours
     * @param jumps  whether the load rises steeply among them, so that the film may fall between them though it rises from the first
     */
    private record Bracket(List<Solution> states, boolean jumps) {}

    /** Around the thinnest film, and wherever the load rises steeply, as when a chamber is unloaded. */
    private static List<Bracket> brackets(List<Solution> states, int thinnest, Placed hub) {
        int last = states.size() - 1;
        int from = Math.max(thinnest - 1, 0);
        int to = Math.min(thinnest + 1, last);
        boolean jumps = false;
        List<Bracket> brackets = new ArrayList<>();
        for (int i = 0; i < last; i++) {
            double before = states.get(i).measure(hub.name(), Bushing.LOAD).orElseThrow();
            double after = states.get(i + 1).measure(hub.name(), Bushing.LOAD).orElseThrow();
            boolean steep = after > STEEP * before;
            jumps |= steep && i >= from && i < to;
            boolean same = from == i && to == Math.min(i + 2, last);
            if (steep && !same) {
                brackets.add(new Bracket(states.subList(i, Math.min(i + 2, last) + 1), true));
            }
        }
        brackets.add(0, new Bracket(states.subList(from, to + 1), jumps));
        return brackets;
    }

    /** A search for the thinnest film between states; every state starts from the nearest in speed that is known. */
    private static final class Narrowed {
        private final Series series;
        private final ToDoubleFunction<Solution> film;
        private final List<Solution> known = new ArrayList<>();
        private Solution best;

        Narrowed(Series series, ToDoubleFunction<Solution> film, Solution best) {
            this.series = series;
            this.film = film;
            this.best = best;
        }

        Solution between(Bracket bracket) {
            List<Solution> states = bracket.states();
            Solution from = states.get(0);
            Solution to = states.get(states.size() - 1);
            known.addAll(states);
            double low = film.applyAsDouble(from);
            double high = film.applyAsDouble(to);
            if (states.size() == 3 && middleIsLeast(states, low, high)) {
                Solution middle = states.get(1);
                Least.between(
                        speed(from),
                        low,
                        speed(middle),
                        film.applyAsDouble(middle),
                        speed(to),
                        high,
                        NARROW,
                        this::filmAt);
            } else if (bracket.jumps()) {
                Least.anywhere(speed(from), low, speed(to), high, NARROW, this::filmAt);
            } else {
                Least.between(speed(from), low, speed(to), high, NARROW, this::filmAt);
            }
            return best;
        }

        private boolean middleIsLeast(List<Solution> states, double low, double high) {
            double middle = film.applyAsDouble(states.get(1));
            return middle < low && middle < high;
        }

        private OptionalDouble filmAt(double speed) {
            Solution start = known.stream()
                    .min(Comparator.comparingDouble(state -> Math.abs(speed(state) - speed)))
                    .orElseThrow();
            series.restart(start);
            if (!series.solve(start.conditions().atSpeed(speed))) {
                return OptionalDouble.empty();
            }
            Solution state = series.state();
            known.add(state);
            double here = film.applyAsDouble(state);
            best = here < film.applyAsDouble(best) ? state : best;
            return OptionalDouble.of(here);
        }
    }

    private static double speed(Solution state) {
        return state.conditions().speed();
    }

    /** The state solved at the highest speed not above one [rev/s], where there is one. */
    Optional<Solution> below(double speed) {
        return states.stream().filter(state -> speed(state) <= speed).reduce((one, later) -> later);
    }
}
