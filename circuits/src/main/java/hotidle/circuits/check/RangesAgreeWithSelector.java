package hotidle.circuits.check;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;

/** The clutches that a range lists are those that the selector feeds in it, {@link ClutchTable}; asked of a file without fault. */
final class RangesAgreeWithSelector implements Rule.OfCircuit {

    @Override
    public void check(Attributes file, Parts parts) {
        ClutchTable.check(file, parts);
    }
}
