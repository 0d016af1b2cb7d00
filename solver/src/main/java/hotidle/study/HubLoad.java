package hotidle.study;

import hotidle.part.Bushing;
import hotidle.result.Solution;

/**
 * What the hub bushing carries where its film is thinnest, and on what film.
 *
 * @param speed        of the engine [rev/s]
 * @param load         [N]
 * @param unitLoad     load over the bushing's length and width [Pa]
 * @param film         least film in the middle of the bushing's length [m]
 * @param edgeFilm     at the edge to which the hub leans [m]; this one is judged
 * @param trumplerFilm film that Trumpler's rule for ground journals asks for, from which on it is known to hold [m]
 */
public record HubLoad(double speed, double load, double unitLoad, double film, double edgeFilm, double trumplerFilm) {

    /** Of the bushing of a name in a state without metal contact. */
    static HubLoad of(String hub, Solution state) {
        return new HubLoad(
                state.conditions().speed(),
                state.measure(hub, Bushing.LOAD).orElseThrow(),
                state.measure(hub, Bushing.UNIT_LOAD).orElseThrow(),
                state.measure(hub, Bushing.LEAST_FILM).orElseThrow(),
                state.measure(hub, Bushing.EDGE_FILM).orElseThrow(),
                state.measure(hub, Bushing.TRUMPLER_FILM).orElseThrow());
    }
}
