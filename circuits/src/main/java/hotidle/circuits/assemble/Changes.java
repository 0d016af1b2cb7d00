package hotidle.circuits.assemble;

import hotidle.circuits.kind.Kind;
import hotidle.circuits.kind.Kinds;
import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.Place;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Applies the changes of a build to the parts as written; what comes out is read like any other circuit. */
public final class Changes {

    private static final List<String> FIXED = List.of("kind", "like", "about", "source");

    private final Problems problems;
    private final ChangedValue values;

    public Changes(Problems problems) {
        this.problems = problems;
        values = new ChangedValue(problems);
    }

    /**
     * One change.
     *
     * @param target  part.key, as written
     * @param place   where that stands
     * @param how     to, by or times
     * @param value   behind it
     * @param because the reason
     */
    public record Change(String target, Place place, String how, Value value, String because) {}

    /** The changes of a build as written, those without fault. */
    public List<Change> of(Attributes build, Value.Entry written) {
        List<Change> changes = new ArrayList<>();
        if (!(written.value() instanceof Value.Entries keys
                && keys.entry("changes").map(Value.Entry::value).orElse(null) instanceof Value.Entries targets)) {
            return changes;
        }
        for (Value.Entry target : targets.entries()) {
            Attributes given = build.groups("changes").get(target.key());
            if (given == null || given.broken() || !(target.value() instanceof Value.Entries inner)) {
                continue;
            }
            List<Value.Entry> ways = inner.entries().stream()
                    .filter(entry -> List.of("to", "by", "times").contains(entry.key()))
                    .toList();
            if (ways.size() != 1) {
                problems.error(
                        target.keyPlace(),
                        ProblemCode.CHANGE_WITHOUT_ONE_WAY,
                        given.label() + " needs one of to, by and times",
                        "a change says what the new value is, in one way",
                        "write to: measured, for example");
            } else {
                changes.add(new Change(
                        target.key(),
                        target.keyPlace(),
                        ways.get(0).key(),
                        ways.get(0).value(),
                        given.text("because")));
            }
        }
        return changes;
    }

    /** What a change names, step by step. */
    static List<String> path(Change change) {
        return List.of(change.target().split("\\.", -1));
    }

    /** The keys of something that is no part with a change applied. */
    Value.Entries within(Shape shape, Value.Entry named, Change change) {
        List<String> path = path(change);
        Value.Entries keys = entries(Optional.of(named), change);
        if (path.size() < 2) {
            unknown(change, named.key() + " has keys of its own", "", shape.names());
            return keys;
        }
        return descend(shape, keys, named.key(), path.subList(1, path.size()), change, false);
    }

    /** The parts with a change applied. */
    public Value.Entries apply(Value.Entries parts, Change change) {
        List<String> path = path(change);
        if (path.size() < 2) {
            problems.error(
                    change.place(),
                    ProblemCode.CHANGE_OF_NO_KEY,
                    "change '" + change.target() + "' names no key",
                    "a change names part.key",
                    "write regulator.preload, for example");
            return parts;
        }
        List<Value.Entry> matching = parts.entries().stream()
                .filter(part -> matches(path.get(0), part.key()))
                .toList();
        if (matching.isEmpty()) {
            String message = "change '" + change.target() + "' matches no part";
            problems.error(
                    change.place(),
                    ProblemCode.CHANGE_OF_NO_PART,
                    message,
                    "",
                    Nearest.mend(path.get(0), parts.keys()));
            return parts;
        }
        boolean many = path.get(0).contains("*");
        List<Value.Entry> having =
                many ? matching.stream().filter(part -> hasKey(part, path)).toList() : matching;
        if (having.isEmpty()) {
            having = matching.subList(0, 1);
        }
        Value.Entries changed = parts;
        for (Value.Entry part : having) {
            Optional<Kind> kind = Kinds.of(Parts.kindOf(part.value()));
            if (kind.isPresent() && part.value() instanceof Value.Entries keys) {
                Value.Entries with =
                        descend(kind.get().shape(), keys, part.key(), path.subList(1, path.size()), change, many);
                changed = changed.with(new Value.Entry(part.key(), part.keyPlace(), with));
            }
        }
        return changed;
    }

    /** Whether a name fits a pattern in which * stands for any run of characters. */
    static boolean matches(String pattern, String name) {
        int p = 0;
        int n = 0;
        int star = -1;
        int resume = 0;
        while (n < name.length()) {
            if (p < pattern.length() && pattern.charAt(p) == '*') {
                star = p++;
                resume = n;
            } else if (p < pattern.length() && pattern.charAt(p) == name.charAt(n)) {
                p++;
                n++;
            } else if (star >= 0) {
                p = star + 1;
                n = ++resume;
            } else {
                return false;
            }
        }
        return pattern.substring(p).replace("*", "").isEmpty();
    }

    private static boolean hasKey(Value.Entry part, List<String> path) {
        return Kinds.of(Parts.kindOf(part.value()))
                .map(kind -> kind.shape().key(path.get(1)).isPresent())
                .orElse(false);
    }

    private Value.Entries descend(
            Shape shape, Value.Entries at, String where, List<String> path, Change change, boolean many) {
        String name = path.get(0);
        List<String> names =
                shape.names().stream().filter(key -> !FIXED.contains(key)).toList();
        if (!names.contains(name)) {
            unknown(change, where + " has no key '" + name + "'", name, names);
            return at;
        }
        Key key = shape.key(name).orElseThrow();
        List<String> rest = path.subList(1, path.size());
        Optional<Value.Entry> entry = at.entry(name);
        if (rest.isEmpty()) {
            boolean groups = key.type() instanceof Type.OneGroup || key.type() instanceof Type.NamedGroups;
            if (groups) {
                unknown(change, where + "." + name + " has keys of its own", name, inner(key, entry));
                return at;
            }
            return values.value(key, entry, change, where + "." + name, many)
                    .map(value ->
                            at.with(new Value.Entry(name, change.place(), ChangedValue.chosen(key, entry, value))))
                    .orElse(at);
        }
        if (key.type() instanceof Type.OneGroup group) {
            return at.with(new Value.Entry(
                    name,
                    entry.map(Value.Entry::keyPlace).orElse(change.place()),
                    descend(group.shape(), entries(entry, change), where + "." + name, rest, change, many)));
        }
        if (key.type() instanceof Type.NamedGroups groups && entry.isPresent()) {
            return at.with(new Value.Entry(
                    name,
                    entry.get().keyPlace(),
                    group(groups, entries(entry, change), where + "." + name, rest, change, many)));
        }
        unknown(change, where + "." + name + " has no keys of its own", rest.get(0), List.of());
        return at;
    }

    private Value.Entries group(
            Type.NamedGroups groups, Value.Entries at, String where, List<String> path, Change change, boolean many) {
        Optional<Value.Entry> entry = at.entry(path.get(0));
        if (entry.isEmpty()) {
            unknown(change, where + " has no '" + path.get(0) + "'", path.get(0), at.keys());
            return at;
        }
        if (path.size() == 1) {
            unknown(
                    change,
                    where + "." + path.get(0) + " has keys of its own",
                    "",
                    groups.shape().names());
            return at;
        }
        return at.with(new Value.Entry(
                path.get(0),
                entry.get().keyPlace(),
                descend(
                        groups.shape(),
                        entries(entry, change),
                        where + "." + path.get(0),
                        path.subList(1, path.size()),
                        change,
                        many)));
    }

    private static List<String> inner(Key key, Optional<Value.Entry> entry) {
        if (key.type() instanceof Type.OneGroup group) {
            return group.shape().names();
        }
        return entry.map(Value.Entry::value).orElse(null) instanceof Value.Entries entries ? entries.keys() : List.of();
    }

    private static Value.Entries entries(Optional<Value.Entry> entry, Change change) {
        return entry.map(Value.Entry::value).orElse(null) instanceof Value.Entries entries
                ? entries
                : new Value.Entries(List.of(), change.place());
    }

    private void unknown(Change change, String what, String wrong, List<String> valid) {
        String message = "change '" + change.target() + "' changes what is not there: " + what;
        problems.error(change.place(), ProblemCode.CHANGE_OF_UNKNOWN_KEY, message, "", Nearest.mend(wrong, valid));
    }
}
