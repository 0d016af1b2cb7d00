package hotidle.circuits.sheet;

import hotidle.circuits.shape.Type;
import hotidle.circuits.text.AssumedMark;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import hotidle.circuits.text.Value;
import java.util.OptionalDouble;

/**
 * A size as its file has it, to hold a measured one against.
 *
 * @param asNew   [m]; empty where the file has no quantity for it, of which the file is told
 * @param limit   wear limit [m], where one is written
 * @param shrinks whether wear makes it smaller
 * @param count   equal bores, gaps or rings that it stands for
 */
record SizeAsNew(OptionalDouble asNew, OptionalDouble limit, boolean shrinks, int count) {

    /** A size that wears, as it stands behind its key, of so many equal ones. */
    static SizeAsNew of(Type.Wearing type, Value value, int count) {
        if (value instanceof Value.Entries entries) {
            return new SizeAsNew(part(entries, "new"), part(entries, "limit"), type.shrinks(), count);
        }
        return new SizeAsNew(quantity(value), OptionalDouble.empty(), type.shrinks(), count);
    }

    private static OptionalDouble part(Value.Entries entries, String key) {
        return entries.entry(key)
                .map(Value.Entry::value)
                .map(SizeAsNew::quantity)
                .orElse(OptionalDouble.empty());
    }

    private static OptionalDouble quantity(Value value) {
        if (!(value instanceof Value.Text text)) {
            return OptionalDouble.empty();
        }
        Units.Amount amount = Units.read(AssumedMark.without(text.text()), Dimension.LENGTH);
        return amount.good() ? OptionalDouble.of(amount.si()) : OptionalDouble.empty();
    }

    /** Whether the file says it: nothing can be held against a size that it does not. */
    boolean known() {
        return asNew.isPresent();
    }

    /** The size as new [m], where it is known. */
    double fresh() {
        return asNew.orElseThrow();
    }

    /** How far a size is worn [m]; below zero on the other side of new. */
    double wear(double size) {
        return shrinks ? fresh() - size : size - fresh();
    }
}
