package hotidle.answer.draw;

import hotidle.part.OwnState;
import hotidle.part.SpoolValve;
import hotidle.result.Solution;
import java.util.List;
import java.util.function.Predicate;

/** Which oil of a valve runs through openings that are shut where its spool stands, so that it is a leak past their lands. */
final class ShutLands {

    private ShutLands() {}

    /** Of a valve with metered openings in a state. */
    static Predicate<Solution.PartStream> of(SpoolValve valve, String name, Solution state) {
        double at = state.own(name, OwnState.POSITION);
        return stream -> {
            List<SpoolValve.Opening> openings = valve.openings().stream()
                    .filter(opening -> stream.name().isEmpty() || stream.name().equals(opening.name()))
                    .toList();
            return !openings.isEmpty() && openings.stream().allMatch(opening -> shut(opening, at));
        };
    }

    private static boolean shut(SpoolValve.Opening opening, double at) {
        return opening.opensUp() ? at < opening.edge() : at > opening.edge();
    }
}
