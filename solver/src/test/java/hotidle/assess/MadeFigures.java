package hotidle.assess;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Figures for the tests of which only the line and its regulator, or the pump, matter; all else is zero or not there. */
final class MadeFigures {

    private MadeFigures() {}

    /** A line [Pa] under a set pressure [Pa]. */
    static Figures of(OptionalDouble set, double line, boolean offSeat, double filling, boolean relief) {
        return of(set, line, offSeat, filling, relief, false);
    }

    /** The same with a regulator that may be stuck. */
    static Figures of(OptionalDouble set, double line, boolean offSeat, double filling, boolean relief, boolean stuck) {
        return new Figures(
                set,
                set,
                line,
                offSeat,
                stuck,
                Figures.Secondary.NONE,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                0,
                Map.of(),
                Map.of(),
                0,
                0,
                0,
                filling,
                Optional.empty(),
                0,
                relief);
    }

    /** A pump that takes in so much and slips so much [m³/s]. */
    static Figures pumping(double swept, double slip, double filling) {
        return new Figures(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                false,
                false,
                Figures.Secondary.NONE,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                slip,
                Map.of(),
                Map.of(),
                0,
                0,
                swept,
                filling,
                Optional.empty(),
                0,
                false);
    }
}
