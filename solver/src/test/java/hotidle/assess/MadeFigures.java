package hotidle.assess;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Figures for the tests of which only the line and what is given back matter; all else is zero or not there. */
final class MadeFigures {

    private MadeFigures() {}

    /** A line [Pa] under a set pressure [Pa]. */
    static Figures of(OptionalDouble set, double line, boolean offSeat, double filling, boolean relief) {
        return of(set, line, offSeat, filling, relief, 0);
    }

    /** The same with oil that goes back to the pump [m³/s]. */
    static Figures of(
            OptionalDouble set, double line, boolean offSeat, double filling, boolean relief, double recirculated) {
        return new Figures(
                set,
                set,
                line,
                offSeat,
                Figures.Secondary.NONE,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                0,
                Map.of(),
                Map.of(),
                recirculated,
                0,
                0,
                filling,
                Optional.empty(),
                0,
                relief);
    }
}
