package hotidle.study.spread;

import hotidle.study.Judgement;
import java.util.ArrayList;
import java.util.List;

/**
 * What came of drawn units, or of a part of them; parts add up, in any order, to the same bits.
 *
 * @param drawn      units drawn, the rows of the design not counted
 * @param impossible of these, units whose sizes cannot go together
 * @param unsolved   of these, units of which at least one state was not found
 * @param sound      of these, units in which all margins hold
 * @param failing    of these, units in which at least one margin fails
 * @param rows       rows of the design
 * @param solves     states asked for, for all of it
 * @param margins    each margin, in the order of the question
 */
public record SpreadTally(
        long drawn,
        long impossible,
        long unsolved,
        long sound,
        long failing,
        long rows,
        long solves,
        List<MarginTally> margins) {

    public SpreadTally {
        margins = List.copyOf(margins);
    }

    static SpreadTally none(List<Judgement.Key> keys, int dimensions) {
        return new SpreadTally(
                0,
                0,
                0,
                0,
                0,
                0,
                0,
                keys.stream().map(key -> MarginTally.none(key, dimensions)).toList());
    }

    /** Units whose sizes go together. */
    public long possible() {
        return drawn - impossible;
    }

    /** Share of the units in which all margins hold. */
    public CountedShare allHold() {
        return new CountedShare(sound, possible());
    }

    /** Share of the units in which at least one margin fails. */
    public CountedShare anyFails() {
        return new CountedShare(failing, possible());
    }

    /** With one drawn unit more. */
    SpreadTally plus(DrawnUnit unit) {
        return new SpreadTally(
                drawn + 1,
                impossible + (unit.impossible() ? 1 : 0),
                unsolved + (unit.unsolved().isEmpty() ? 0 : 1),
                sound + (margins.stream().allMatch(margin -> unit.holds(margin.key()) == 1) ? 1 : 0),
                failing + (margins.stream().anyMatch(margin -> unit.fails(margin.key())) ? 1 : 0),
                rows,
                solves,
                unit.impossible()
                        ? margins
                        : margins.stream().map(margin -> margin.plus(unit)).toList());
    }

    /** With one row of the design more. */
    SpreadTally plus(DrawnUnit a, DrawnUnit b, DrawnUnit[] changed, double[] levels) {
        List<MarginTally> all = new ArrayList<>();
        for (int i = 0; i < margins.size(); i++) {
            all.add(margins.get(i).plus(a, b, changed, levels[i]));
        }
        return new SpreadTally(drawn, impossible, unsolved, sound, failing, rows + 1, solves, all);
    }

    /** With states asked for. */
    SpreadTally asked(long more) {
        return new SpreadTally(drawn, impossible, unsolved, sound, failing, rows, solves + more, margins);
    }

    /**
     * Both together.
     *
     * @throws IllegalArgumentException where they are not parts of the same question
     */
    public SpreadTally plus(SpreadTally other) {
        List<MarginTally> all = new ArrayList<>();
        if (margins.size() != other.margins.size()) {
            throw new IllegalArgumentException("parts with different margins");
        }
        for (int i = 0; i < margins.size(); i++) {
            if (!margins.get(i).key().equals(other.margins.get(i).key())) {
                throw new IllegalArgumentException("parts with different margins");
            }
            all.add(margins.get(i).plus(other.margins.get(i)));
        }
        return new SpreadTally(
                drawn + other.drawn,
                impossible + other.impossible,
                unsolved + other.unsolved,
                sound + other.sound,
                failing + other.failing,
                rows + other.rows,
                solves + other.solves,
                all);
    }
}
