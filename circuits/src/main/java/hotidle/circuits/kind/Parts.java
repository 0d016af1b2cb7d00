package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.ShapeReader;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Value;
import hotidle.network.Group;
import hotidle.network.Placed;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The parts of a circuit as one build has them. */
public final class Parts {

    private static final String NAME = "[\\p{L}\\p{N}_-]+";

    /** A part as read. */
    public record One(Kind kind, Attributes given) {}

    private final Map<String, One> parts = new LinkedHashMap<>();
    private final Problems problems;
    private boolean kindsKnown = true;

    private Parts(Problems problems) {
        this.problems = problems;
    }

    /** Reads all parts; a faulty one is left out or broken, and the problems say why. */
    public static Parts read(Value.Entries section, ShapeReader reader, Problems problems) {
        Parts parts = new Parts(problems);
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

    private void read(Value.Entry entry, ShapeReader reader) {
        Optional<Kind> kind = Kinds.of(kindOf(entry.value()));
        if (kind.isEmpty()) {
            kindsKnown = false;
            if (isName(entry.key()) && !unresolved(entry.value())) {
                unknownKind(entry);
            }
            return;
        }
        Attributes given = reader.read(kind.get().shape(), entry.key(), entry);
        parts.put(entry.key(), new One(kind.get(), given));
    }

    private void unknownKind(Value.Entry entry) {
        String word = kindOf(entry.value());
        String part = "part '" + entry.key() + "' ";
        if (word.isEmpty()) {
            String mend = "add 'kind: orifice', or another of " + String.join(", ", Kinds.words());
            problems.error(entry.keyPlace(), part + "has no kind", "the kind says which keys it has", mend);
        } else {
            Value value =
                    ((Value.Entries) entry.value()).entry("kind").orElseThrow().value();
            String message = part + "has kind '" + word + "', which is none";
            problems.error(value.place(), message, "", Nearest.mend(word, Kinds.words()));
        }
    }

    /** Whether the nodes of every part are known, so that it can be said where oil does not get to. */
    public boolean nodesKnown() {
        return kindsKnown && parts.values().stream().allMatch(one -> one.given().nodesKnown());
    }

    /** All parts that were read, by name. */
    public Map<String, One> all() {
        return parts;
    }

    /** Places the parts that are without fault. */
    public List<Placed> place(Materials materials) {
        Map<String, Attributes> givens = new LinkedHashMap<>();
        parts.forEach((name, one) -> givens.put(name, one.given()));
        Kind.Context around = new Kind.Context(givens, materials.expansions(), materials.permissibleLoads());
        List<Placed> placed = new ArrayList<>();
        parts.values().forEach(one -> one.kind().check(one.given(), around));
        parts.values().stream()
                .filter(one -> !one.given().broken())
                .forEach(one -> make(one, around).ifPresent(placed::add));
        return placed;
    }

    /** Places one part without fault; empty where the solver refuses it, which is noted. */
    public static Optional<Placed> make(One one, Kind.Context around) {
        Attributes given = one.given();
        try {
            Kind.Made made = one.kind().maker().make(given, around);
            return Optional.of(new Placed(
                    given.name(), made.part(), given.word("region"), group(one), made.nodes(), made.signals()));
        } catch (IllegalArgumentException impossible) {
            given.error("kind", "cannot be built", impossible.getMessage(), "");
            return Optional.empty();
        }
    }

    private static Group group(One one) {
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
