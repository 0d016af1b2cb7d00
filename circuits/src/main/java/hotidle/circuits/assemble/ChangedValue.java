package hotidle.circuits.assemble;

import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.AssumedMark;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Fault;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Units;
import hotidle.circuits.text.Value;
import java.util.List;
import java.util.Optional;

/** What a change leaves behind a key: a value of its own, one of the sizes as written, or a sum with the value in use. */
record ChangedValue(Problems problems) {

    private static final List<String> SIZES = List.of("measured", "limit", "new");

    /** The value that a change leaves behind a key; empty where it leaves it as it is. */
    Optional<Value> value(Key key, Optional<Value.Entry> entry, Changes.Change change, String where, boolean many) {
        if (change.how().equals("to")) {
            boolean picks = key.type() instanceof Type.Wearing
                    && change.value() instanceof Value.Text text
                    && SIZES.contains(text.text());
            if (key.type() instanceof Type.Wearing
                    && change.value() instanceof Value.Text text
                    && isWord(text.text())) {
                String message = "change '" + change.target() + "' has to '" + text.text() + "', which is no size";
                String mend = Nearest.mend(text.text(), SIZES) + ", or a length with its unit";
                problems.error(text.place(), ProblemCode.NO_SUCH_SIZE, message, "", mend);
                return Optional.empty();
            }
            return picks
                    ? pick(entry, ((Value.Text) change.value()).text(), change, where, many)
                    : Optional.of(change.value());
        }
        if (key.type() instanceof Type.WholeNumber) {
            return count(key, entry, change, where);
        }
        Optional<Dimension> dimension = dimension(key);
        if (dimension.isEmpty()) {
            problems.error(
                    change.place(),
                    ProblemCode.CHANGE_OF_NO_QUANTITY,
                    "change '" + change.target() + "' cannot use " + change.how(),
                    where + " is no quantity",
                    "write to instead");
            return Optional.empty();
        }
        String now = now(key, entry);
        Units.Amount before = Units.read(AssumedMark.without(now), dimension.get());
        boolean by = change.how().equals("by");
        String text = change.value() instanceof Value.Text plain ? plain.text() : "";
        Units.Amount other = Units.read(text, by ? dimension.get() : Dimension.RATIO);
        if (!other.good()) {
            String message = "change '" + change.target() + "' has " + change.how() + " " + text + ", " + other.wrong();
            problems.error(change.value().place(), ProblemCode.NO_QUANTITY, message, other.why(), other.mend());
            return Optional.empty();
        }
        if (!before.good()) {
            if (now.isEmpty()) {
                problems.error(
                        change.place(),
                        ProblemCode.CHANGE_OF_NOTHING,
                        "change '" + change.target() + "' has nothing to start from",
                        where + " is not written and has no default",
                        "write to instead");
            }
            return Optional.empty();
        }
        if (!key.allowed().map(limits -> limits.holds(before.si())).orElse(true)) {
            return Optional.empty();
        }
        double after = by ? before.si() + other.si() : before.si() * other.si();
        String mark = AssumedMark.on(now) ? AssumedMark.MARK : "";
        return Optional.of(new Value.Text(
                mark + Units.inSi(after, dimension.get()), change.value().place()));
    }

    /** A count with so many added, or so many times as many: two surfaces more, half the teeth. */
    private Optional<Value> count(Key key, Optional<Value.Entry> entry, Changes.Change change, String where) {
        String now = AssumedMark.without(now(key, entry));
        String text = change.value() instanceof Value.Text plain ? plain.text() : "";
        if (!now.matches("\\d{1,6}")) {
            return Optional.empty();
        }
        boolean by = change.how().equals("by");
        Units.Amount other = Units.read(text, Dimension.RATIO);
        double after = by ? Integer.parseInt(now) + other.si() : Integer.parseInt(now) * other.si();
        if (!other.good() || Math.abs(after - Math.rint(after)) > 1e-9) {
            problems.error(
                    change.value().place(),
                    ProblemCode.CHANGE_OF_A_COUNT,
                    "change '" + change.target() + "' has " + change.how() + " " + text
                            + ", which leaves no whole number",
                    where + " is a count, now " + now,
                    by ? "write by: 2, for example" : "write to: and the count");
            return Optional.empty();
        }
        return Optional.of(
                new Value.Text(String.valueOf(Math.round(after)), change.value().place()));
    }

    private static boolean isWord(String text) {
        return text.matches("[a-z-]+") && !SIZES.contains(text);
    }

    private static Optional<Dimension> dimension(Key key) {
        if (key.type() instanceof Type.Dimensioned quantity && quantity.dimension() != Dimension.TEMPERATURE) {
            return Optional.of(quantity.dimension());
        }
        return key.type() instanceof Type.Wearing ? Optional.of(Dimension.LENGTH) : Optional.empty();
    }

    /** A size that wears keeps what was written, so that a later build can go back to new. */
    static Value chosen(Key key, Optional<Value.Entry> entry, Value value) {
        if (!(key.type() instanceof Type.Wearing)) {
            return value;
        }
        return new Value.Chosen(
                entry.map(Value.Entry::value).map(ChangedValue::written).orElse(value), value);
    }

    private static Value written(Value value) {
        return value instanceof Value.Chosen chosen ? chosen.written() : value;
    }

    /** The text of the value in use: of a size as written the new one. */
    private static String now(Key key, Optional<Value.Entry> entry) {
        Value value = entry.map(Value.Entry::value)
                .map(now -> now instanceof Value.Chosen chosen ? chosen.inUse() : now)
                .orElse(null);
        if (value instanceof Value.Entries size) {
            value = size.entry("new").map(Value.Entry::value).orElse(null);
        }
        if (value instanceof Value.Text text) {
            return text.text();
        }
        return key.fallback().map(Key.Default::text).orElse("");
    }

    private Optional<Value> pick(
            Optional<Value.Entry> entry, String which, Changes.Change change, String where, boolean many) {
        Optional<Value> written = entry.map(Value.Entry::value).map(ChangedValue::written);
        if (written.isEmpty() || !(written.get() instanceof Value.Entries size)) {
            return written;
        }
        Optional<Value> picked = size.entry(which).map(Value.Entry::value);
        if (picked.isEmpty() && !List.of("new", "limit", "measured").containsAll(size.keys())) {
            return Optional.empty();
        }
        if (picked.isEmpty()) {
            String message = "change '" + change.target() + "' wants what was not written: " + where + " has no "
                    + which + " value";
            if (many) {
                problems.warning(change.place(), Fault.of(ProblemCode.NO_VALUE, message, "it stays as it is", ""));
            } else {
                String mend = "write it in the part, or give a quantity here";
                problems.error(change.place(), ProblemCode.SIZE_NOT_WRITTEN, message, "", mend);
            }
        }
        return picked;
    }
}
