package hotidle.circuits.shape;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;

/**
 * A range of values, both ends included.
 *
 * @param low  as written, with its unit
 * @param high as written, with its unit
 * @param from low in SI
 * @param to   high in SI
 */
public record Bounds(String low, String high, double from, double to) {

    static Bounds of(String low, String high, Dimension dimension) {
        return new Bounds(low, high, Units.parse(low, dimension), Units.parse(high, dimension));
    }

    /** Whether a value in SI lies within. */
    public boolean holds(double value) {
        return value >= from && value <= to;
    }

    /** For example "0.01 mm to 1 m". */
    public String words() {
        return low + " to " + high;
    }
}
