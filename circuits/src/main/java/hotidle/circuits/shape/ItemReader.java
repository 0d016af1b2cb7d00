package hotidle.circuits.shape;

import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Value;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;

/** Reads what stands behind one key, by the key's type. */
final class ItemReader {

    private final ShapeReader shapes;
    private final Scope scope;
    private final Problems problems;
    private final AmountReader amounts;
    private final SizeReader sizes;
    private final RowReader rows;

    ItemReader(ShapeReader shapes, Scope scope, Problems problems, ReadingLog used) {
        this.shapes = shapes;
        this.scope = scope;
        this.problems = problems;
        amounts = new AmountReader(problems);
        sizes = new SizeReader(amounts, problems, used);
        rows = new RowReader(amounts, problems);
    }

    /** Reads an entry into a group; where it is wrong, the group is broken and lacks it. */
    void read(Key key, String path, Attributes given, Value.Entry entry) {
        Value value = entry.value() instanceof Value.Chosen chosen && !(key.type() instanceof Type.Wearing)
                ? chosen.inUse()
                : entry.value();
        boolean mayBeEmpty = key.type() instanceof Type.OneGroup
                || key.type() instanceof Type.NamedGroups
                || key.type() instanceof Type.FreeText
                || key.type() instanceof Type.PerName
                || key.type() instanceof Type.Notes;
        if (!mayBeEmpty && value instanceof Value.Text text && text.text().isEmpty()) {
            given.breakAt(key);
            problems.error(
                    entry.keyPlace(),
                    given.fault(
                            ProblemCode.NO_VALUE,
                            key.name(),
                            "has nothing behind " + key.name(),
                            ShapeReader.why(key),
                            ""));
            return;
        }
        Optional<Item> item = item(key, path, given, new Value.Entry(entry.key(), entry.keyPlace(), value));
        if (item.isPresent()) {
            given.put(key.name(), item.get(), value.place());
        } else {
            given.breakAt(key);
        }
    }

    private Optional<Item> item(Key key, String path, Attributes given, Value.Entry entry) {
        Type type = key.type();
        Value value = entry.value();
        if (type instanceof Type.Dimensioned quantity) {
            return AmountReader.box(amounts.quantity(key, key.name(), given, value, quantity.dimension()))
                    .map(Item.Scalar::new);
        } else if (type instanceof Type.Wearing) {
            return sizes.size(key, path, given, value);
        } else if (type instanceof Type.WholeNumber) {
            return amounts.count(key, given, value);
        } else if (type instanceof Type.Choice choice) {
            return amounts.text(key, given, value)
                    .filter(text -> known(key, given, text, choice.words(), "a word for it"))
                    .map(text -> new Item.Word(text.text()));
        } else if (type instanceof Type.FreeText) {
            return amounts.text(key, given, value).map(text -> new Item.Word(text.text()));
        } else if (type instanceof Type.Name name) {
            return amounts.text(key, given, value)
                    .filter(text -> declared(key, given, text, name.of()))
                    .map(text -> new Item.Word(text.text()));
        } else if (type instanceof Type.NameList list) {
            return names(key, given, value, list.of());
        } else if (type instanceof Type.RisingPair pair) {
            return rows.pair(key, given, value, pair.dimension());
        } else if (type instanceof Type.OneGroup group) {
            return Optional.of(new Item.KeyGroup(shapes.read(group.shape(), path, key.name() + of(given), entry)));
        } else if (type instanceof Type.NamedGroups groups) {
            return groups(groups.shape(), path, given, key, value);
        } else if (type instanceof Type.Ports) {
            return ports(key, given, value);
        } else if (type instanceof Type.PerName per) {
            return perName(key, given, value, per);
        } else if (type instanceof Type.Notes) {
            return notes(key, given, value);
        } else if (type instanceof Type.Table table) {
            return rows.table(key, given, value, table);
        }
        if (type instanceof Type.Anything) {
            return Optional.of(new Item.WordList(List.of()));
        }
        return type instanceof Type.PartNames ? parts(key, given, value) : rows.viscosity(key, given, value);
    }

    private Optional<Item> parts(Key key, Attributes given, Value value) {
        List<String> names = new ArrayList<>();
        return each(key, given, value, (name, entry) -> names.add(name))
                ? Optional.of(new Item.WordList(names))
                : Optional.empty();
    }

    private boolean declared(Key key, Attributes given, Value.Text text, Names of) {
        return known(key, given, text, scope.of(of), "the name of " + of.withArticle());
    }

    private boolean known(Key key, Attributes given, Value.Text text, Collection<String> valid, String what) {
        if (valid.contains(text.text())) {
            return true;
        }
        String message = "has " + key.name() + " '" + text.text() + "', which is not " + what;
        problems.error(
                text.place(),
                given.fault(ProblemCode.UNKNOWN_NAME, key.name(), message, "", Nearest.mend(text.text(), valid)));
        return false;
    }

    private Optional<Item> names(Key key, Attributes given, Value value, Names of) {
        List<Value> items = value instanceof Value.Items list ? list.items() : List.of(value);
        List<String> names = new ArrayList<>();
        for (Value item : items) {
            amounts.text(key, given, item)
                    .filter(text -> declared(key, given, text, of))
                    .ifPresent(text -> names.add(text.text()));
        }
        return names.size() == items.size() ? Optional.of(new Item.WordList(names)) : Optional.empty();
    }

    /** Calls for each entry of a mapping; false where the value is none. */
    private boolean each(Key key, Attributes given, Value value, BiConsumer<String, Value.Entry> to) {
        if (value instanceof Value.Text text && text.text().isEmpty()) {
            return true;
        }
        if (value instanceof Value.Entries entries) {
            entries.entries().forEach(entry -> to.accept(entry.key(), entry));
            return true;
        }
        problems.error(
                value.place(),
                given.fault(
                        ProblemCode.WRONG_SHAPE,
                        key.name(),
                        "needs names behind " + key.name(),
                        ShapeReader.why(key),
                        "write {name: "
                                + (key.type() instanceof Type.NamedGroups groups
                                        ? ShapeReader.inBraces(groups.shape())
                                        : "...")
                                + "}"));
        return false;
    }

    /** Whose part of it something is, for messages; nothing at the top of the file. */
    private static String of(Attributes given) {
        return given.name().isEmpty() ? "" : " of " + given.label();
    }

    private Optional<Item> groups(Shape shape, String path, Attributes given, Key key, Value value) {
        Map<String, Attributes> groups = new LinkedHashMap<>();
        boolean good = each(key, given, value, (name, entry) -> {
            String label = shape.what() + " '" + name + "'" + of(given);
            groups.put(name, shapes.read(shape, path + "." + name, label, entry));
        });
        return good ? Optional.of(new Item.KeyGroups(Collections.unmodifiableMap(groups))) : Optional.empty();
    }

    private Optional<Item> ports(Key key, Attributes given, Value value) {
        Map<String, String> nodes = new LinkedHashMap<>();
        boolean[] good = {true};
        boolean mapping = each(key, given, value, (port, entry) -> {
            Optional<Value.Text> node =
                    amounts.text(key, given, entry.value()).filter(text -> declared(key, given, text, Names.NODE));
            good[0] &= node.isPresent();
            node.ifPresent(text -> nodes.put(port, text.text()));
        });
        return mapping && good[0] ? Optional.of(new Item.Nodes(Collections.unmodifiableMap(nodes))) : Optional.empty();
    }

    private Optional<Item> perName(Key key, Attributes given, Value value, Type.PerName per) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        boolean[] good = {true};
        boolean mapping = each(key, given, value, (name, entry) -> {
            good[0] &= declared(key, given, new Value.Text(name, entry.keyPlace()), per.of());
            OptionalDouble number =
                    amounts.quantity(key, name + " in " + key.name(), given, entry.value(), per.dimension());
            good[0] &= number.isPresent();
            numbers.put(name, number.orElse(0));
        });
        return mapping && good[0]
                ? Optional.of(new Item.Numbers(Collections.unmodifiableMap(numbers)))
                : Optional.empty();
    }

    private Optional<Item> notes(Key key, Attributes given, Value value) {
        List<String> names = new ArrayList<>();
        if (value instanceof Value.Items items) {
            items.items().forEach(item -> amounts.text(key, given, item).ifPresent(text -> names.add(text.text())));
            return names.size() == items.items().size() ? Optional.of(new Item.WordList(names)) : Optional.empty();
        }
        boolean good = each(key, given, value, (name, entry) -> {
            if (amounts.text(key, given, entry.value()).isPresent()) {
                names.add(name);
            }
        });
        return good ? Optional.of(new Item.WordList(names)) : Optional.empty();
    }
}
