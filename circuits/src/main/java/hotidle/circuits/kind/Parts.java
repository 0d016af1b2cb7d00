package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.ReadingLog;
import hotidle.circuits.shape.ShapeReader;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Value;
import hotidle.network.Group;
import hotidle.network.Placed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The parts of a circuit as one build has them. */
public final class Parts {

    private static final String NAME = "[\\p{L}\\p{N}_-]+";

    /** A part as read. */
    public record DeclaredPart(Kind kind, Attributes given) {

        /** The parts that it names and so may draw on; not the one that it is like, whose keys it has as its own. */
        public List<String> named() {
            List<String> named = new ArrayList<>();
            for (Key key : kind.shape().keys()) {
                if (key.type() instanceof Type.Name name
                        && name.of().isPart()
                        && !key.name().equals("like")) {
                    given.wordIf(key.name()).ifPresent(named::add);
                } else if (key.type() instanceof Type.NameList list && list.of().isPart()) {
                    named.addAll(given.words(key.name()));
                }
            }
            return named;
        }
    }

    /** The pump-inlet that draws on what a pump is, besides the pump on it; empty for anything else. */
    public static Optional<String> fillsBy(DeclaredPart part) {
        return part.kind().isPump() ? part.given().wordIf("inlet") : Optional.empty();
    }

    private final Map<String, DeclaredPart> parts = new LinkedHashMap<>();
    private final Problems problems;
    private final Map<String, Value.Entry> entries = new HashMap<>();
    private final ReadingLog log;
    private final Optional<Parts> before;
    private final Map<String, Placed> placed = new LinkedHashMap<>();
    private boolean kindsKnown = true;

    private Parts(Problems problems, ReadingLog log, Optional<Parts> before) {
        this.problems = problems;
        this.log = log;
        this.before = before;
    }

    /** Reads all parts; a faulty one is left out or broken, and the problems say why. */
    public static Parts read(Value.Entries section, ShapeReader reader, Problems problems) {
        return read(section, reader, problems, Optional.empty());
    }

    /**
     * The same where most parts are those of another reading of the same file: these are neither read nor made again.
     *
     * @param before the other reading, placed and without error
     */
    public static Parts read(Value.Entries section, ShapeReader reader, Problems problems, Optional<Parts> before) {
        Parts parts = new Parts(problems, reader.log(), before);
        section.entries().forEach(entry -> parts.parts.put(entry.key(), null));
        section.entries().stream().filter(entry -> !isLike(entry.value())).forEach(entry -> parts.read(entry, reader));
        section.entries().stream().filter(entry -> isLike(entry.value())).forEach(entry -> parts.read(entry, reader));
        parts.parts.values().removeIf(java.util.Objects::isNull);
        return parts;
    }

    /** Parts that are like another are read after it, so that a fault they share is told of that one. */
    private static boolean isLike(Value part) {
        return part instanceof Value.Entries keys && keys.entry("like").isPresent();
    }

    @SuppressWarnings("ReferenceEquality") // an entry that no build has changed is the same object
    private void read(Value.Entry entry, ShapeReader reader) {
        entries.put(entry.key(), entry);
        if (before.isPresent() && before.get().entries.get(entry.key()) == entry) {
            parts.put(entry.key(), before.get().parts.get(entry.key()));
            log.noteSizes(entry.key(), before.get().log);
            return;
        }
        Optional<Kind> kind = Kinds.of(kindOf(entry.value()));
        if (kind.isEmpty()) {
            kindsKnown = false;
            if (isName(entry.key()) && !unresolved(entry.value())) {
                unknownKind(entry);
            }
            return;
        }
        Attributes given = reader.read(kind.get().shape(), entry.key(), entry);
        parts.put(entry.key(), new DeclaredPart(kind.get(), given));
    }

    private void unknownKind(Value.Entry entry) {
        String word = kindOf(entry.value());
        String part = "part '" + entry.key() + "' ";
        if (word.isEmpty()) {
            String mend = "add 'kind: orifice', or another of " + String.join(", ", Kinds.words());
            problems.error(
                    entry.keyPlace(),
                    ProblemCode.NO_KIND,
                    part + "has no kind",
                    "the kind says which keys it has",
                    mend);
        } else {
            Value value =
                    ((Value.Entries) entry.value()).entry("kind").orElseThrow().value();
            String message = part + "has kind '" + word + "', which is none";
            problems.error(value.place(), ProblemCode.UNKNOWN_KIND, message, "", Nearest.mend(word, Kinds.words()));
        }
    }

    /** Whether the nodes of every part are known, so that it can be said where oil does not get to. */
    public boolean nodesKnown() {
        return kindsKnown && parts.values().stream().allMatch(one -> one.given().nodesKnown());
    }

    /** All parts that were read, by name. */
    public Map<String, DeclaredPart> all() {
        return parts;
    }

    /** Places the parts that are without fault. */
    public List<Placed> place(Materials materials) {
        Map<String, Attributes> givens = new LinkedHashMap<>();
        parts.forEach((name, one) -> givens.put(name, one.given()));
        Kind.Context around = new Kind.Context(givens, materials.expansions(), materials.permissibleLoads());
        Set<String> anew = anew();
        parts.forEach((name, one) -> {
            if (anew.contains(name)) {
                one.kind().check(one.given(), around);
            } else {
                placed.put(name, before.orElseThrow().placed.get(name));
            }
        });
        List<Placed> all = new ArrayList<>();
        parts.forEach((name, one) -> {
            if (anew.contains(name) && !one.given().broken()) {
                make(one, around).ifPresent(made -> placed.put(name, made));
            }
            if (placed.containsKey(name)) {
                all.add(placed.get(name));
            }
        });
        return all;
    }

    /** The parts that were read here, and those that draw on them. */
    @SuppressWarnings("ReferenceEquality") // a part that was not read again is the same object
    private Set<String> anew() {
        if (before.isEmpty()) {
            return parts.keySet();
        }
        Set<String> anew = new HashSet<>();
        parts.forEach((name, one) -> {
            if (before.get().parts.get(name) != one) {
                anew.add(name);
            }
        });
        boolean more = true;
        while (more) {
            more = false;
            for (Map.Entry<String, DeclaredPart> part : parts.entrySet()) {
                more |= part.getValue().named().stream().anyMatch(anew::contains) && anew.add(part.getKey());
                more |= anew.contains(part.getKey())
                        && fillsBy(part.getValue())
                                .filter(parts::containsKey)
                                .map(anew::add)
                                .orElse(false);
            }
        }
        return anew;
    }

    /** Places one part without fault; empty where the solver refuses it, which is noted. */
    public static Optional<Placed> make(DeclaredPart one, Kind.Context around) {
        Attributes given = one.given();
        try {
            Kind.MadePart made = one.kind().maker().make(given, around);
            return Optional.of(new Placed(
                    given.name(), made.part(), given.word("region"), group(one), made.nodes(), made.signals()));
        } catch (IllegalArgumentException impossible) {
            given.error(ProblemCode.NOT_TO_BE_BUILT, "kind", "cannot be built", impossible.getMessage(), "");
            return Optional.empty();
        }
    }

    private static Group group(DeclaredPart one) {
        return one.given()
                .wordIf("group")
                .flatMap(label -> Stream.of(Group.values())
                        .filter(group -> group.label().equals(label))
                        .findFirst())
                .orElse(one.kind().group());
    }

    /** Whether a part is like one that is not there, so that it may be of any kind. */
    public static boolean unresolved(Value part) {
        return part instanceof Value.Entries keys
                && keys.entry("like").isPresent()
                && kindOf(part).isEmpty();
    }

    /** Whether a word can be a name. */
    public static boolean isName(String word) {
        return word.matches(NAME);
    }

    /** The word behind {@code kind}, empty where there is none. */
    public static String kindOf(Value part) {
        return part instanceof Value.Entries keys
                        && keys.entry("kind").map(Value.Entry::value).orElse(null) instanceof Value.Text text
                ? text.text()
                : "";
    }
}
