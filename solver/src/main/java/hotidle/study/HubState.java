package hotidle.study;

import hotidle.newton.Series;
import hotidle.newton.SolvedState;
import hotidle.part.Bushing;
import hotidle.part.Measure;
import java.util.List;

/**
 * A state of a unit with a hub bushing, and what it is looked at for.
 *
 * @param film     in the middle [m]; thinner than any where metal touches
 * @param load     [N]
 * @param unitLoad [Pa]
 */
record HubState(SolvedState state, double film, double load, double unitLoad) {

    /** The state that a series has solved last. */
    static HubState last(Series series, String hub) {
        return of(series.kept(), series.measures(hub));
    }

    /** A state of which the hub is told. */
    static HubState of(SolvedState state, List<Measure.Reported> given) {
        return new HubState(
                state,
                of(given, Bushing.METAL_CONTACT) > 0 ? -1 : of(given, Bushing.LEAST_FILM),
                of(given, Bushing.LOAD),
                of(given, Bushing.UNIT_LOAD));
    }

    /** The same where film and load are others by a factor [-]. */
    HubState times(double filmFactor, double loadFactor) {
        return new HubState(state, film * filmFactor, load * loadFactor, unitLoad * loadFactor);
    }

    private static double of(List<Measure.Reported> given, Measure measure) {
        return given.stream()
                .filter(one -> one.measure().equals(measure))
                .mapToDouble(Measure.Reported::value)
                .findFirst()
                .orElseThrow();
    }

    boolean touches() {
        return film < 0;
    }

    double speed() {
        return state.speed();
    }
}
