package hotidle.study;

import hotidle.result.Solution;
import hotidle.result.Unsolved;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether the pump could hold the set pressure: the line is held there from outside, and what the pump delivers is put against
 * what leaves the line with converter, cooler and lubrication just served.
 *
 * <p>The regulator is held where the worst served of them gets what it needs, but no further open than where it begins to give
 * oil back to the pump's inlet, so that the bypass is no demand, or to push back the slide of a variable pump, so that its full
 * displacement is asked for.
 *
 * @param position at which the regulator is held [m]
 * @param balance  what then comes into the line and leaves it; empty where a state was not found
 * @param unsolved why nothing is known, where nothing is
 */
public record HeldLine(double position, Optional<LineBalance> balance, Optional<Unsolved> unsolved) {

    /**
     * The line held, with the worst served just served.
     *
     * @param supply  what pump and check valve deliver into the line [m³/s], counted at the pump's inlet
     * @param demand  what leaves the line [m³/s], counted so too
     * @param filling of the pump with the line held: below 1 the inlet is starved, and lets in no more [-]
     * @param slide   share of its displacement at which the slide of a variable pump stands, 1 in a fixed pump [-]
     * @param state   of the unit so held
     * @param hungry  what gets too little however far the feed opens, and so is not counted; empty where all can be served
     */
    public record LineBalance(
            double supply, double demand, double filling, double slide, Solution state, Optional<String> hungry) {}

    /** The balance at a duty, with the line at the set pressure commanded. */
    public static HeldLine at(Transmission unit, DutyPoint duty) {
        return new HeldLineSearch(unit, duty).run();
    }

    /**
     * States of a unit with its line held, from which the search in a unit alike starts.
     *
     * @param shut     with the regulator on its seat
     * @param open     with it as far open as it may be
     * @param served   where the worst served was just served
     * @param position there [m]
     * @param slope    of its headroom there, by the position [1/m]; empty where it is served all the way
     * @param hungry   whether something got too little even as far open as it may be
     */
    record HeldStates(
            Solution shut, Solution open, Solution served, double position, OptionalDouble slope, boolean hungry) {}
}
