package hotidle.circuits.shape;

import hotidle.circuits.text.MissingColon;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Remedy;
import hotidle.circuits.text.Value;
import java.util.List;
import java.util.Optional;

/** Reads a mapping of the file by its shape: every key known, every needed one there, defaults noted. */
public final class ShapeReader {

    private final Problems problems;
    private final ReadingLog used;
    private final ItemReader items;

    public ShapeReader(Scope scope, Problems problems, ReadingLog used) {
        this.problems = problems;
        this.used = used;
        items = new ItemReader(this, scope, problems, used);
    }

    /** What it notes besides problems. */
    public ReadingLog log() {
        return used;
    }

    /**
     * Reads a mapping.
     *
     * @param shape its keys
     * @param path  of it in the file, for the list of defaults
     * @param entry its name and value
     * @return what was read; broken where an error was found
     */
    public Attributes read(Shape shape, String path, Value.Entry entry) {
        return read(shape, path, shape.what() + " '" + entry.key() + "'", entry);
    }

    /** The same with another label for messages. */
    public Attributes read(Shape shape, String path, String label, Value.Entry entry) {
        Attributes given = new Attributes(entry.key(), label, entry.keyPlace(), problems);
        Optional<Value.Entries> mapping = mapping(shape, entry.value());
        if (mapping.isEmpty()) {
            given.breakIt();
            given.untold();
            problems.error(
                    entry.value().place(),
                    given.fault(
                            ProblemCode.WRONG_SHAPE,
                            "",
                            "needs keys of its own",
                            "its keys are " + String.join(", ", shape.names()),
                            "write " + inBraces(shape)));
            return given;
        }
        Value.Entries keys = mapping.get();
        boolean untold = keys.entry("like").isPresent() && keys.entry("kind").isEmpty();
        if (untold) {
            given.untold();
        }
        for (Value.Entry inner : mapping.get().entries()) {
            if (shape.key(inner.key()).isEmpty()) {
                given.breakIt();
                unknown(shape, given, inner, mapping.get());
                keys = Misspelt.asMeant(keys, inner, shape.names());
            }
        }
        for (Key key : shape.keys()) {
            String below = path.isEmpty() ? key.name() : path + "." + key.name();
            read(key, below, given, keys.entry(key.name()), untold);
        }
        return given;
    }

    private void unknown(Shape shape, Attributes given, Value.Entry inner, Value.Entries all) {
        boolean comma = commaInText(inner, shape);
        int before = all.keys().indexOf(inner.key()) - 1;
        boolean list = comma
                && before >= 0
                && shape.key(all.keys().get(before))
                        .filter(key -> key.type() instanceof Type.NameList)
                        .isPresent();
        String mend = comma
                ? list ? "put several names in [ ]" : "put text that holds a comma in quotes, inside { }"
                : MissingColon.mend(inner.key()).orElseGet(() -> Nearest.mend(inner.key(), shape.names()));
        problems.error(
                inner.keyPlace(),
                given.fault(
                        ProblemCode.UNKNOWN_KEY, inner.key(), "has the unknown key '" + inner.key() + "'", "", mend));
    }

    /** The shortest good form of a mapping, values left open. */
    static String inBraces(Shape shape) {
        List<String> keys = shape.keys().stream()
                .filter(key -> key.needed() || key.equals(shape.keys().get(0)))
                .map(key -> key.name() + ": ...")
                .toList();
        return "{" + String.join(", ", keys) + "}";
    }

    /** Whether a key looks like the rest of a text that was cut at its comma. */
    private static boolean commaInText(Value.Entry entry, Shape shape) {
        return entry.value() instanceof Value.Text text
                && text.text().isEmpty()
                && Nearest.to(entry.key(), shape.names()).isEmpty();
    }

    private static Optional<Value.Entries> mapping(Shape shape, Value value) {
        if (value instanceof Value.Entries entries) {
            return Optional.of(entries);
        }
        if (!(value instanceof Value.Text text)) {
            return Optional.empty();
        }
        if (text.text().isEmpty()) {
            return Optional.of(new Value.Entries(List.of(), text.place()));
        }
        return shape.brief().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Value.Entries(List.of(new Value.Entry(shape.brief(), text.place(), text)), text.place()));
    }

    /** {@code untold} where a part is like another that is not there, so that it cannot be said what it lacks. */
    private void read(Key key, String path, Attributes given, Optional<Value.Entry> entry, boolean untold) {
        if (entry.isPresent()) {
            given.written(key.name());
            items.read(key, path, given, entry.get());
        } else if (key.fallback().isPresent()) {
            Key.Default fallback = key.fallback().get();
            Value text = new Value.Text(fallback.text(), given.place());
            items.read(key, path, given, new Value.Entry(key.name(), given.place(), text));
            used.note(path, fallback);
        } else if (key.needed()) {
            given.breakAt(key);
            if (untold) {
                return;
            }
            problems.error(
                    given.place(),
                    given.fault(
                            ProblemCode.MISSING_KEY, key.name(), "has no " + key.name(), why(key), example(key, path)));
        }
    }

    static String why(Key key) {
        return key.name() + " is " + key.meaning() + ": " + key.type().says();
    }

    /** How to write a key, with its range in place of a value: a number to copy would be taken for one that was measured. */
    private static Remedy example(Key key, String path) {
        Remedy add = Remedy.set("add '", path, value(key)).then("'");
        return key.type() instanceof Type.Dimensioned || key.type() instanceof Type.Wearing
                ? add.then(key.usual()
                        .map(usual -> ", usually " + usual.words())
                        .or(() -> key.allowed().map(allowed -> ", " + allowed.words()))
                        .orElse(""))
                : add;
    }

    private static String value(Key key) {
        if (key.type() instanceof Type.PerName per) {
            return "{" + per.of().word() + ": ...}";
        }
        return key.type() instanceof Type.OneGroup group ? inBraces(group.shape()) : "...";
    }
}
