package hotidle.assess;

import hotidle.network.Placed;
import hotidle.part.Bushing;
import hotidle.result.Solution;
import java.util.Optional;

/**
 * Oil fed to the film of a hub bushing against what a full film turns out.
 *
 * <pre>
 * Fed     what passes along the bushing, from the space behind the gear to the drain
 * Needed  half of the side flow of a full film, {@link Bushing#SIDE_FLOW}: what leaves at the drain does not come back, and all
 *         that leaves there came along the bushing (balance of volume). What leaves at the other end falls back into the space
 *         that feeds it, which is full. The two halves are equal as long as the axes are parallel.
 * Below   the film begins later in the gap and carries less. By how much is not in our table, so that it is not known whether
 *         it holds; without any oil it does not.
 * </pre>
 *
 * @param fed    [m³/s], negative where it comes from the drain
 * @param needed [m³/s]
 */
public record FilmOil(double fed, double needed) {

    /** Share of the side flow that leaves at one end [-]. */
    private static final double ONE_END = 0.5;

    /** That of a state; empty where metal touches, for then there is no film. */
    public static Optional<FilmOil> of(Placed hub, Solution state) {
        return state.measure(hub.name(), Bushing.SIDE_FLOW).stream()
                .mapToObj(side -> new FilmOil(state.flow(hub.name()), ONE_END * side))
                .findFirst();
    }

    /** Whether a full film gets what it needs. */
    public boolean enough() {
        return fed >= needed;
    }

    /** What is fed over what is needed [-]. */
    public double share() {
        return fed / needed;
    }

    /** As a margin: not known below what a full film needs, fails without any. */
    public Margin margin(String part) {
        return Margin.of(Margin.Kind.FILM_OIL, part, fed, needed, Margin.Scale.FLOW)
                .unsureTo(0);
    }
}
