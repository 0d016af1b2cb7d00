package hotidle.circuits.shape;

import hotidle.circuits.text.AssumedMark;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Units;
import hotidle.circuits.text.Value;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads one value: a text, or a number with its unit within its limits. */
record AmountReader(Problems problems) {

    /** The text behind a key; empty, and said so, where several values stand there. */
    Optional<Value.Text> text(Key key, Attributes given, Value value) {
        if (value instanceof Value.Text text) {
            return Optional.of(text);
        }
        problems.error(
                value.place(),
                given.fault(
                        ProblemCode.WRONG_SHAPE,
                        key.name(),
                        "has several values behind " + key.name(),
                        ShapeReader.why(key),
                        "write one value"));
        return Optional.empty();
    }

    /** A quantity within its limits; {@code as} is what it is called in messages. */
    OptionalDouble quantity(Key key, String as, Attributes given, Value value, Dimension dimension) {
        Optional<Value.Text> text = text(key, given, value);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        String written = AssumedMark.without(text.get().text());
        Units.Amount amount = Units.read(written, dimension);
        String has = "has " + as + " " + written;
        if (!amount.good()) {
            problems.error(
                    value.place(),
                    given.fault(
                            ProblemCode.NO_QUANTITY,
                            key.name(),
                            has + ", " + amount.wrong(),
                            amount.why(),
                            amount.remedy()));
            return OptionalDouble.empty();
        }
        if (key.allowed().isPresent() && !key.allowed().get().holds(amount.si())) {
            Bounds allowed = key.allowed().get();
            Bounds better = key.usual().orElse(allowed);
            String mend = Units.sameNumberBetween(written, dimension, better.from(), better.to())
                    .map(other -> "did you mean " + other + "?")
                    .orElse("");
            String rule = key.name() + " must lie between " + allowed.low() + " and " + allowed.high();
            problems.error(value.place(), given.fault(ProblemCode.OUT_OF_BOUNDS, key.name(), has, rule, mend));
            return OptionalDouble.empty();
        }
        if (key.usual().isPresent() && !key.usual().get().holds(amount.si())) {
            String rule = "usual is " + key.usual().get().words();
            problems.warning(
                    value.place(), given.fault(ProblemCode.UNUSUAL, key.name(), has, rule, "leave it if it is meant"));
        }
        return OptionalDouble.of(amount.si());
    }

    /** A whole number. */
    Optional<Item> count(Key key, Attributes given, Value value) {
        Optional<Value.Text> text = text(key, given, value);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (!AssumedMark.without(text.get().text()).matches("\\d{1,6}")) {
            String message = "has " + key.name() + " " + text.get().text() + ", which is no whole number";
            problems.error(
                    value.place(),
                    given.fault(
                            ProblemCode.NO_QUANTITY,
                            key.name(),
                            message,
                            ShapeReader.why(key),
                            "write 2, for example"));
            return Optional.empty();
        }
        return box(quantity(key, key.name(), given, value, Dimension.RATIO)).map(Item.Scalar::new);
    }

    static Optional<Double> box(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }
}
