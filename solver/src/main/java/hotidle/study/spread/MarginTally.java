package hotidle.study.spread;

import hotidle.study.Judgement;

/**
 * What came of one margin in many drawn units; parts of a run add up, in any order, to the same bits.
 *
 * @param key      the margin
 * @param holds    units in which it is known to hold
 * @param fails    units in which it is known to fail
 * @param unknown  units in which it is not known, among them those without a state
 * @param headroom where it has a number
 * @param drivers  of its headroom
 * @param deciders of whether it holds
 */
public record MarginTally(
        Judgement.Key key,
        long holds,
        long fails,
        long unknown,
        ExactSum headroom,
        SobolSums drivers,
        SobolSums deciders) {

    static MarginTally none(Judgement.Key key, int dimensions) {
        return new MarginTally(key, 0, 0, 0, ExactSum.NONE, SobolSums.none(dimensions), SobolSums.none(dimensions));
    }

    /** With one drawn unit more. */
    MarginTally plus(DrawnUnit unit) {
        boolean held = unit.holds(key) == 1;
        boolean failed = unit.fails(key);
        double room = unit.headroom(key);
        return new MarginTally(
                key,
                holds + (held ? 1 : 0),
                fails + (failed ? 1 : 0),
                unknown + (held || failed ? 0 : 1),
                Double.isFinite(room) ? headroom.plus(room) : headroom,
                drivers,
                deciders);
    }

    /** With one row of the design of {@link SobolSums} more. */
    MarginTally plus(DrawnUnit a, DrawnUnit b, DrawnUnit[] changed, double level) {
        double[] rooms = new double[changed.length];
        double[] held = new double[changed.length];
        for (int i = 0; i < changed.length; i++) {
            rooms[i] = changed[i].headroom(key);
            held[i] = changed[i].holds(key);
        }
        return new MarginTally(
                key,
                holds,
                fails,
                unknown,
                headroom,
                drivers.plus(a.headroom(key), b.headroom(key), rooms, level),
                deciders.plus(a.holds(key), b.holds(key), held, HALF));
    }

    private static final double HALF = 0.5;

    /** Both together. */
    MarginTally plus(MarginTally other) {
        return new MarginTally(
                key,
                holds + other.holds,
                fails + other.fails,
                unknown + other.unknown,
                headroom.plus(other.headroom),
                drivers.plus(other.drivers),
                deciders.plus(other.deciders));
    }

    /** Units of which it was asked. */
    public long asked() {
        return holds + fails + unknown;
    }

    /** Share of the units in which it holds. */
    public CountedShare holding() {
        return new CountedShare(holds, asked());
    }

    /** Share of the units in which it fails. */
    public CountedShare failing() {
        return new CountedShare(fails, asked());
    }

    /** Share of the units in which it is not known. */
    public CountedShare notKnown() {
        return new CountedShare(unknown, asked());
    }
}
