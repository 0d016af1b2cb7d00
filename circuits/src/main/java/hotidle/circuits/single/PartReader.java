package hotidle.circuits.single;

import hotidle.circuits.kind.Kind;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Bounds;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.ReadingLog;
import hotidle.circuits.shape.Scope;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.ShapeReader;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Fault;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.Place;
import hotidle.circuits.text.Problem;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Remedy;
import hotidle.circuits.text.Value;
import hotidle.network.Placed;
import hotidle.part.PumpInlet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads a part on its own: what a circuit would say is put into its tree, then it is read as any part of a file. */
final class PartReader {

    private static final Place START = Place.START;

    private final Kind kind;
    private final LibraryMaterials stock;
    private final Problems problems;
    private final List<Key> asked;

    /** Keys whose absence is explained by another message. */
    private final Set<String> excused;

    private Value.Entries tree;

    PartReader(Kind kind, List<String> words, LibraryMaterials stock) {
        this.kind = kind;
        this.stock = stock;
        KeyWords text = new KeyWords(kind.word(), words);
        problems = text.problems();
        tree = text.tree();
        excused = text.unread();
        asked = PartKeys.of(kind);
    }

    ReadPart read() {
        refuseOthers();
        standIn();
        ReadingLog used = new ReadingLog();
        Attributes given = new ShapeReader(scope(), problems, used)
                .read(shape(), "", kind.word(), new Value.Entry(kind.word(), START, tree));
        Optional<OnePart> part = problems.anyError() ? Optional.empty() : make(given, used);
        return new ReadPart(
                problems.anyError() ? Optional.empty() : part,
                inOneMessage(problems.inOrder()).stream()
                        .map(PartReader::withoutRanges)
                        .toList());
    }

    /** Every key that is not asked for, with the reason; they are left out of what follows. */
    private void refuseOthers() {
        List<String> names = asked.stream().map(Key::name).toList();
        List<Value.Entry> kept = new ArrayList<>();
        for (Value.Entry entry : tree.entries()) {
            Optional<Key> tie = kind.shape().key(entry.key()).filter(key -> !names.contains(key.name()));
            if (names.contains(entry.key())) {
                kept.add(entry);
            } else if (tie.isPresent()) {
                String message = kind.word() + " on its own does not take the key '" + entry.key() + "'";
                problems.error(
                        entry.keyPlace(),
                        ProblemCode.NOT_ON_ITS_OWN,
                        message,
                        PartKeys.why(kind, tie.get()).orElse(""),
                        "leave out " + entry.key() + "=");
            } else {
                excused.addAll(Nearest.to(entry.key(), names));
                problems.error(
                        entry.keyPlace(),
                        ProblemCode.UNKNOWN_KEY,
                        kind.word() + " has the unknown key '" + entry.key() + "'",
                        "",
                        Nearest.mend(entry.key(), names));
            }
        }
        tree = new Value.Entries(kept, START);
    }

    /** Puts in what a circuit would say. */
    private void standIn() {
        PartKeys.named(kind, Names.NODE).forEach(key -> put(key.name(), text(key.name())));
        PartKeys.named(kind, Names.PUMP_INLET).forEach(key -> put(key.name(), text(key.name())));
        put("kind", text(kind.word()));
        tree = kind.facts().alone().added().apply(tree);
    }

    private List<Value.Entries> groups(String key) {
        List<Value.Entries> groups = new ArrayList<>();
        if (tree.entry(key).map(Value.Entry::value).orElse(null) instanceof Value.Entries all) {
            for (Value.Entry entry : all.entries()) {
                if (entry.value() instanceof Value.Entries keys) {
                    groups.add(keys);
                }
            }
        }
        return groups;
    }

    private void put(String key, Value value) {
        tree = tree.with(new Value.Entry(key, START, value));
    }

    private static Value text(String text) {
        return new Value.Text(text, START);
    }

    /** All keys of the kind as they are asked for, those that are not asked for among them. */
    private Shape shape() {
        Map<String, Key> keys = new LinkedHashMap<>();
        for (Key key : kind.shape().keys()) {
            keys.put(key.name(), kind.facts().alone().asked().apply(key));
        }
        asked.stream()
                .filter(key -> !(key.type() instanceof Type.NamedGroups))
                .forEach(key -> keys.put(key.name(), key));
        return new Shape(kind.word(), List.copyOf(keys.values()));
    }

    private Scope scope() {
        Map<Names, List<String>> names = new LinkedHashMap<>();
        names.put(Names.MATERIAL, List.copyOf(stock.expansions().keySet()));
        names.put(Names.BEARING_MATERIAL, List.copyOf(stock.permissibleLoads().keySet()));
        names.put(Names.REGION, List.of(OnePart.REGION));
        names.put(Names.RANGE, List.of(OnePart.RANGE));
        names.put(
                Names.PUMP_INLET,
                PartKeys.named(kind, Names.PUMP_INLET).map(Key::name).toList());
        Set<String> nodes = new LinkedHashSet<>(
                PartKeys.named(kind, Names.NODE).map(Key::name).toList());
        for (Key key : asked) {
            if (key.type() instanceof Type.NamedGroups inner) {
                groups(key.name()).forEach(keys -> nodes.addAll(nodes(inner.shape(), keys)));
            }
        }
        kind.shape().keys().stream()
                .filter(key -> key.type() instanceof Type.Ports)
                .flatMap(key -> tree.entry(key.name()).stream())
                .map(Value.Entry::value)
                .filter(Value.Entries.class::isInstance)
                .forEach(ports -> nodes.addAll(((Value.Entries) ports).keys()));
        names.put(Names.NODE, List.copyOf(nodes));
        return new Scope(names);
    }

    /** Ports that the user names within a group. */
    private static List<String> nodes(Shape shape, Value.Entries keys) {
        return shape.keys().stream()
                .filter(PartKeys::node)
                .flatMap(key -> keys.entry(key.name()).stream())
                .map(Value.Entry::value)
                .filter(Value.Text.class::isInstance)
                .map(value -> ((Value.Text) value).text())
                .toList();
    }

    private Optional<OnePart> make(Attributes given, ReadingLog used) {
        Kind.Context around = new Kind.Context(Map.of(), stock.expansions(), stock.permissibleLoads());
        kind.check(given, around);
        if (given.broken()) {
            return Optional.empty();
        }
        try {
            Kind.MadePart made = kind.maker().make(given, around);
            Placed placed =
                    new Placed(kind.word(), made.part(), OnePart.REGION, kind.group(), made.nodes(), made.signals());
            List<Placed> others = PartKeys.named(kind, Names.PUMP_INLET)
                    .map(key -> Placed.of(key.name(), PumpInlet.WIDE, OnePart.REGION, kind.group(), given.word("from")))
                    .toList();
            return Optional.of(OnePart.of(kind, placed, others, defaults(used), given));
        } catch (IllegalArgumentException impossible) {
            given.error(ProblemCode.NOT_TO_BE_BUILT, "kind", "cannot be built", impossible.getMessage(), "");
            return Optional.empty();
        }
    }

    private Map<String, Key.Default> defaults(ReadingLog used) {
        Map<String, Key.Default> defaults = new LinkedHashMap<>();
        used.defaults().forEach((path, fallback) -> {
            String first = path.contains(".") ? path.substring(0, path.indexOf('.')) : path;
            if (asked.stream().anyMatch(key -> key.name().equals(first))) {
                defaults.put(path, fallback);
            }
        });
        return defaults;
    }

    /** All keys that are missing in one message; none for a key that another message is about. */
    private List<Problem> inOneMessage(List<Problem> found) {
        List<Key> missing = asked.stream()
                .filter(key -> found.stream().anyMatch(problem -> missing(key, problem)))
                .toList();
        List<Key> plain =
                missing.stream().filter(key -> !excused.contains(key.name())).toList();
        List<Problem> others = new ArrayList<>(found.stream()
                .filter(problem -> missing.stream().noneMatch(key -> missing(key, problem)))
                .toList());
        if (!plain.isEmpty()) {
            String message =
                    kind.word() + " has no " + plain.stream().map(Key::name).collect(Collectors.joining(", "));
            String why = plain.stream()
                    .map(key -> key.name() + ": " + key.meaning() + " ("
                            + key.type().says() + ")")
                    .collect(Collectors.joining("\n        "));
            String mend = "add " + plain.stream().map(PartReader::example).collect(Collectors.joining(" "))
                    + ", for example; 'hotidle part " + kind.word() + " --help' lists all keys";
            Place word = new Place(1, 1, kind.word().length());
            others.add(
                    0,
                    problems.problem(
                            word, Problem.Severity.ERROR, Fault.of(ProblemCode.MISSING_KEY, message, why, mend)));
        }
        return others;
    }

    private boolean missing(Key key, Problem problem) {
        return problem.fault().misses(kind.word(), key.name());
    }

    private static String example(Key key) {
        String low = key.usual().or(key::allowed).map(Bounds::low).orElse("").replace(" ", "");
        if (key.type() instanceof Type.RisingPair) {
            return key.name() + "=[0mm,4mm]";
        } else if (key.type() instanceof Type.NamedGroups groups) {
            Key first = groups.shape().keys().get(0);
            return key.name() + ".NAME." + first.name() + "=...";
        } else if (key.type() instanceof Type.OneGroup group) {
            return key.name() + "." + example(group.shape().keys().get(0));
        }
        return key.name() + "=" + (low.isEmpty() ? "..." : low);
    }

    /** A part on its own is in no range, so that none can be advised. */
    private static Problem withoutRanges(Problem problem) {
        Fault fault = problem.fault();
        return fault.code() == ProblemCode.UNKNOWN_NAME && fault.key().equals("ranges")
                ? problem.with(Remedy.words("leave it out: a part on its own is in no range"))
                : problem;
    }
}
