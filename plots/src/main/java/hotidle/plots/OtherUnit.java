package hotidle.plots;

/**
 * The unit of the other system, for a second scale at the right.
 *
 * @param unit   as it is to be read
 * @param factor by which a value is multiplied to be in it
 */
public record OtherUnit(String unit, double factor) {

    /** Narrower charts have one scale [px]. */
    static final double ROOM = 480;
}
