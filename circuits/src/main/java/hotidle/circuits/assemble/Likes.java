package hotidle.circuits.assemble;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Value;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Writes out the parts that are like another part. A part has all keys of the one that it is like but those of its own; where
 * both have keys within a key, as a size has its new, limit and measured value, these are put together in the same way.
 */
public final class Likes {

    private static final String LIKE = "like";

    /** Longest row of parts that are like each other; a file has two in a row at most. */
    private static final int LONGEST = 20;

    private final Value.Entries parts;
    private final Problems problems;
    private final Map<String, Value> done = new LinkedHashMap<>();

    private Likes(Value.Entries parts, Problems problems) {
        this.parts = parts;
        this.problems = problems;
    }

    /** The file with every part written out; one that is like no part keeps that key only, so that the reader can tell. */
    public static Value.Entries expand(Value.Entries file, Problems problems) {
        Optional<Value.Entry> section = file.entry("parts");
        if (section.isEmpty() || !(section.get().value() instanceof Value.Entries parts)) {
            return file;
        }
        Likes likes = new Likes(parts, problems);
        List<Value.Entry> all = parts.entries().stream()
                .map(part -> new Value.Entry(part.key(), part.keyPlace(), likes.whole(part, new LinkedHashSet<>())))
                .toList();
        return file.with(new Value.Entry("parts", section.get().keyPlace(), new Value.Entries(all, parts.place())));
    }

    private Value whole(Value.Entry part, Set<String> open) {
        if (done.containsKey(part.key())) {
            return done.get(part.key());
        }
        Optional<Value.Entry> like = like(part.value());
        if (like.isEmpty()) {
            return part.value();
        }
        open.add(part.key());
        Value whole = model(part, like.get(), open)
                .map(model -> merge(model, part.value()))
                .orElseGet(() ->
                        new Value.Entries(List.of(like.get()), part.value().place()));
        open.remove(part.key());
        done.put(part.key(), whole);
        return whole;
    }

    private static Optional<Value.Entry> like(Value part) {
        return part instanceof Value.Entries keys ? keys.entry(LIKE) : Optional.empty();
    }

    /** What a part is like, written out; empty where that is no part, or is like the part in turn. */
    private Optional<Value> model(Value.Entry part, Value.Entry like, Set<String> open) {
        String name = like.value() instanceof Value.Text text ? text.text() : "";
        Optional<Value.Entry> model = parts.entry(name);
        String has = "part '" + part.key() + "' ";
        if (model.isEmpty()) {
            String mend = Nearest.mend(name, parts.keys());
            problems.error(
                    like.value().place(),
                    ProblemCode.LIKE_NO_PART,
                    has + "is like '" + name + "', which is not the name of a part",
                    "",
                    mend);
            return Optional.empty();
        }
        if (open.size() > LONGEST) {
            String mend = "let it be like the one that the others are like";
            problems.error(
                    like.value().place(),
                    ProblemCode.TOO_MANY_LIKES,
                    has + "comes at the end of too long a row of likes",
                    "",
                    mend);
            return Optional.empty();
        }
        if (open.contains(name)) {
            String circle = String.join(" like ", open) + " like " + name;
            problems.error(
                    like.value().place(),
                    ProblemCode.LIKE_ITSELF,
                    has + "is like itself",
                    circle,
                    "write one of them out");
            return Optional.empty();
        }
        Value whole = whole(model.get(), open);
        return Parts.kindOf(whole).isEmpty() && like(whole).isPresent() ? Optional.empty() : Optional.of(whole);
    }

    /** A value with another laid over it, or that alone where it is a part of another kind; a size written as one value is its new size where the other adds to it. */
    public static Value merge(Value under, Value over) {
        boolean others = !Parts.kindOf(over).isEmpty() && !Parts.kindOf(over).equals(Parts.kindOf(under));
        if (!(over instanceof Value.Entries more) || others) {
            return over;
        }
        Value.Entries all;
        if (under instanceof Value.Entries entries) {
            all = entries;
        } else if (under instanceof Value.Text
                && more.keys().stream().allMatch(List.of("limit", "measured")::contains)) {
            all = new Value.Entries(List.of(new Value.Entry("new", under.place(), under)), under.place());
        } else {
            return over;
        }
        for (Value.Entry entry : more.entries()) {
            Value value = all.entry(entry.key())
                    .map(before -> merge(before.value(), entry.value()))
                    .orElse(entry.value());
            all = all.with(new Value.Entry(entry.key(), entry.keyPlace(), value));
        }
        return all;
    }
}
