package hotidle.circuits.shape;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Units;
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

/** Reads what stands behind one key, by the key's type. Past 300 lines, since it holds one short method for each type. */
final class ItemReader {

    private final ShapeReader shapes;
    private final Scope scope;
    private final Problems problems;
    private final Used used;

    ItemReader(ShapeReader shapes, Scope scope, Problems problems, Used used) {
        this.shapes = shapes;
        this.scope = scope;
        this.problems = problems;
        this.used = used;
    }

    /** Reads an entry into a group; where it is wrong, the group is broken and lacks it. */
    void read(Key key, String path, Given given, Value.Entry entry) {
        Value value = entry.value() instanceof Value.Chosen chosen && !(key.type() instanceof Type.Size)
                ? chosen.inUse()
                : entry.value();
        boolean mayBeEmpty = key.type() instanceof Type.Group
                || key.type() instanceof Type.Groups
                || key.type() instanceof Type.Words
                || key.type() instanceof Type.PerName
                || key.type() instanceof Type.Notes;
        if (!mayBeEmpty && value instanceof Value.Text text && text.text().isEmpty()) {
            given.breakAt(key);
            problems.error(
                    entry.keyPlace(), given.label() + " has nothing behind " + key.name(), ShapeReader.why(key), "");
            return;
        }
        Optional<Item> item = item(key, path, given, new Value.Entry(entry.key(), entry.keyPlace(), value));
        if (item.isPresent()) {
            given.put(key.name(), item.get(), value.place());
        } else {
            given.breakAt(key);
        }
    }

    private Optional<Item> item(Key key, String path, Given given, Value.Entry entry) {
        Type type = key.type();
        Value value = entry.value();
        if (type instanceof Type.Quantity quantity) {
            return box(quantity(key, key.name(), given, value, quantity.dimension()))
                    .map(Item.Amount::new);
        } else if (type instanceof Type.Size) {
            return size(key, path, given, value);
        } else if (type instanceof Type.Count) {
            return count(key, given, value);
        } else if (type instanceof Type.Choice choice) {
            return text(key, given, value)
                    .filter(text -> known(key, given, text, choice.words(), "a word for it"))
                    .map(text -> new Item.Word(text.text()));
        } else if (type instanceof Type.Words) {
            return text(key, given, value).map(text -> new Item.Word(text.text()));
        } else if (type instanceof Type.Name name) {
            return text(key, given, value)
                    .filter(text -> declared(key, given, text, name.of()))
                    .map(text -> new Item.Word(text.text()));
        } else if (type instanceof Type.NameList list) {
            return names(key, given, value, list.of());
        } else if (type instanceof Type.Pair pair) {
            return pair(key, given, value, pair.dimension());
        } else if (type instanceof Type.Group group) {
            return Optional.of(new Item.Group(shapes.read(group.shape(), path, key.name() + of(given), entry)));
        } else if (type instanceof Type.Groups groups) {
            return groups(groups.shape(), path, given, key, value);
        } else if (type instanceof Type.Ports) {
            return ports(key, given, value);
        } else if (type instanceof Type.PerName per) {
            return perName(key, given, value, per);
        } else if (type instanceof Type.Notes) {
            return notes(key, given, value);
        } else if (type instanceof Type.Table table) {
            return table(key, given, value, table);
        }
        if (type instanceof Type.Anything) {
            return Optional.of(new Item.Words(List.of()));
        }
        return type instanceof Type.Parts ? parts(key, given, value) : viscosity(key, given, value);
    }

    private Optional<Item> parts(Key key, Given given, Value value) {
        List<String> names = new ArrayList<>();
        return each(key, given, value, (name, entry) -> names.add(name))
                ? Optional.of(new Item.Words(names))
                : Optional.empty();
    }

    private static Optional<Double> box(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }

    private Optional<Value.Text> text(Key key, Given given, Value value) {
        if (value instanceof Value.Text text) {
            return Optional.of(text);
        }
        problems.error(
                value.place(),
                given.label() + " has several values behind " + key.name(),
                ShapeReader.why(key),
                "write one value");
        return Optional.empty();
    }

    /** A quantity within its limits; {@code as} is what it is called in messages. */
    private OptionalDouble quantity(Key key, String as, Given given, Value value, Dimension dimension) {
        Optional<Value.Text> text = text(key, given, value);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        String written = text.get().text();
        Units.Amount amount = Units.read(written, dimension);
        String has = given.label() + " has " + as + " " + written;
        if (!amount.good()) {
            problems.error(value.place(), has + ", " + amount.wrong(), amount.why(), amount.mend());
            return OptionalDouble.empty();
        }
        if (key.allowed().isPresent() && !key.allowed().get().holds(amount.si())) {
            Limits allowed = key.allowed().get();
            Limits better = key.usual().orElse(allowed);
            String mend = Units.sameNumberBetween(written, dimension, better.from(), better.to())
                    .map(other -> "did you mean " + other + "?")
                    .orElse("");
            String rule = key.name() + " must lie between " + allowed.low() + " and " + allowed.high();
            problems.error(value.place(), has, rule, mend);
            return OptionalDouble.empty();
        }
        if (key.usual().isPresent() && !key.usual().get().holds(amount.si())) {
            String rule = "usual is " + key.usual().get().words();
            problems.warning(value.place(), has, rule, "leave it if it is meant");
        }
        return OptionalDouble.of(amount.si());
    }

    private static final List<String> SIZE_KEYS = List.of("new", "limit", "measured");

    private Optional<Item> size(Key key, String path, Given given, Value value) {
        Value written = value instanceof Value.Chosen chosen ? chosen.written() : value;
        Optional<Given.Sizes> sizes = written instanceof Value.Entries entries
                ? sizes(key, given, entries)
                : box(quantity(key, key.name(), given, written, Dimension.LENGTH))
                        .map(only -> new Given.Sizes(only, only, OptionalDouble.empty(), OptionalDouble.empty()));
        if (sizes.isPresent() && value instanceof Value.Chosen chosen) {
            Given.Sizes size = sizes.get();
            sizes = box(quantity(key, key.name(), given, chosen.inUse(), Dimension.LENGTH))
                    .map(inUse -> new Given.Sizes(inUse, size.fresh(), size.limit(), size.measured()));
        }
        sizes.ifPresent(size -> used.note(path, size));
        return sizes.map(Item.Size::new);
    }

    private Optional<Given.Sizes> sizes(Key key, Given given, Value.Entries entries) {
        boolean good = true;
        for (Value.Entry entry : entries.entries()) {
            good &= knownSizeKey(key, given, entry);
        }
        if (entries.entry("new").isEmpty()) {
            if (!good) {
                return Optional.empty();
            }
            String rule = "a size has the keys new, limit and measured, of which new is needed";
            problems.error(entries.place(), given.label() + " has " + key.name() + " without its new size", rule, "");
            return Optional.empty();
        }
        OptionalDouble fresh = sizePart(key, "new", given, entries);
        OptionalDouble limit = sizePart(key, "limit", given, entries);
        OptionalDouble measured = sizePart(key, "measured", given, entries);
        good &= fresh.isPresent()
                && limit.isPresent() == entries.entry("limit").isPresent()
                && measured.isPresent() == entries.entry("measured").isPresent();
        if (good) {
            againstWear(key, given, entries, fresh.getAsDouble(), limit, measured);
        }
        return good
                ? Optional.of(new Given.Sizes(fresh.getAsDouble(), fresh.getAsDouble(), limit, measured))
                : Optional.empty();
    }

    /** Measured sizes this far on the wrong side of the new one are taken for an error of the gauge (assumed) [m]. */
    private static final double GAUGE_ERROR = 5e-6;

    private void againstWear(
            Key key, Given given, Value.Entries entries, double fresh, OptionalDouble limit, OptionalDouble measured) {
        boolean shrinks = ((Type.Size) key.type()).shrinks();
        double sign = shrinks ? -1 : 1;
        String side = shrinks ? "above" : "below";
        String rule = "wear makes it " + (shrinks ? "smaller" : "larger");
        if (limit.isPresent() && sign * (limit.getAsDouble() - fresh) < 0) {
            String message = given.label() + " has a limit of " + key.name() + " " + side + " its new size";
            problems.warning(entries.entry("limit").orElseThrow().value().place(), message, rule, "exchange the two");
        }
        if (measured.isPresent() && sign * (measured.getAsDouble() - fresh) < -GAUGE_ERROR) {
            String message = given.label() + " has a measured " + key.name() + " " + side + " its new size";
            Value at = entries.entry("measured").orElseThrow().value();
            problems.warning(at.place(), message, rule, "measure again, or correct the new size");
        }
    }

    private boolean knownSizeKey(Key key, Given given, Value.Entry entry) {
        if (SIZE_KEYS.contains(entry.key())) {
            return true;
        }
        String message = given.label() + " has the unknown key '" + entry.key() + "' in " + key.name();
        problems.error(entry.keyPlace(), message, "", Nearest.mend(entry.key(), SIZE_KEYS));
        return false;
    }

    private OptionalDouble sizePart(Key key, String which, Given given, Value.Entries entries) {
        return entries.entry(which)
                .map(entry -> quantity(key, which + " " + key.name(), given, entry.value(), Dimension.LENGTH))
                .orElse(OptionalDouble.empty());
    }

    private Optional<Item> count(Key key, Given given, Value value) {
        Optional<Value.Text> text = text(key, given, value);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (!text.get().text().matches("\\d{1,6}")) {
            String message =
                    given.label() + " has " + key.name() + " " + text.get().text() + ", which is no whole number";
            problems.error(value.place(), message, ShapeReader.why(key), "write 2, for example");
            return Optional.empty();
        }
        return box(quantity(key, key.name(), given, value, Dimension.RATIO)).map(Item.Amount::new);
    }

    private boolean declared(Key key, Given given, Value.Text text, Names of) {
        return known(key, given, text, scope.of(of), "the name of " + of.withArticle());
    }

    private boolean known(Key key, Given given, Value.Text text, Collection<String> valid, String what) {
        if (valid.contains(text.text())) {
            return true;
        }
        String message = given.label() + " has " + key.name() + " '" + text.text() + "', which is not " + what;
        problems.error(text.place(), message, "", Nearest.mend(text.text(), valid));
        return false;
    }

    private Optional<Item> names(Key key, Given given, Value value, Names of) {
        List<Value> items = value instanceof Value.Items list ? list.items() : List.of(value);
        List<String> names = new ArrayList<>();
        for (Value item : items) {
            text(key, given, item)
                    .filter(text -> declared(key, given, text, of))
                    .ifPresent(text -> names.add(text.text()));
        }
        return names.size() == items.size() ? Optional.of(new Item.Words(names)) : Optional.empty();
    }

    private Optional<Item> pair(Key key, Given given, Value value, Dimension dimension) {
        List<Value> items = value instanceof Value.Items list ? list.items() : List.of();
        if (items.size() != 2) {
            problems.error(
                    value.place(),
                    given.label() + " needs two values behind " + key.name(),
                    ShapeReader.why(key),
                    "write [0 mm, 4 mm], for example");
            return Optional.empty();
        }
        OptionalDouble low = quantity(key, key.name(), given, items.get(0), dimension);
        OptionalDouble high = quantity(key, key.name(), given, items.get(1), dimension);
        if (low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        if (low.getAsDouble() > high.getAsDouble()) {
            problems.error(
                    value.place(),
                    given.label() + " has " + key.name() + " that fall",
                    "the first must not be above the second",
                    "exchange them");
            return Optional.empty();
        }
        return Optional.of(new Item.Rows(List.of(
                new Given.Row(low.getAsDouble(), 0, items.get(0).place()),
                new Given.Row(high.getAsDouble(), 0, items.get(1).place()))));
    }

    /** Calls for each entry of a mapping; false where the value is none. */
    private boolean each(Key key, Given given, Value value, BiConsumer<String, Value.Entry> to) {
        if (value instanceof Value.Text text && text.text().isEmpty()) {
            return true;
        }
        if (value instanceof Value.Entries entries) {
            entries.entries().forEach(entry -> to.accept(entry.key(), entry));
            return true;
        }
        problems.error(
                value.place(),
                given.label() + " needs names behind " + key.name(),
                ShapeReader.why(key),
                "write {name: "
                        + (key.type() instanceof Type.Groups groups ? ShapeReader.inBraces(groups.shape()) : "...")
                        + "}");
        return false;
    }

    /** Whose part of it something is, for messages; nothing at the top of the file. */
    private static String of(Given given) {
        return given.name().isEmpty() ? "" : " of " + given.label();
    }

    private Optional<Item> groups(Shape shape, String path, Given given, Key key, Value value) {
        Map<String, Given> groups = new LinkedHashMap<>();
        boolean good = each(key, given, value, (name, entry) -> {
            String label = shape.what() + " '" + name + "'" + of(given);
            groups.put(name, shapes.read(shape, path + "." + name, label, entry));
        });
        return good ? Optional.of(new Item.Groups(Collections.unmodifiableMap(groups))) : Optional.empty();
    }

    private Optional<Item> ports(Key key, Given given, Value value) {
        Map<String, String> nodes = new LinkedHashMap<>();
        boolean[] good = {true};
        good[0] &= each(key, given, value, (port, entry) -> {
            Optional<Value.Text> node =
                    text(key, given, entry.value()).filter(text -> declared(key, given, text, Names.NODE));
            good[0] &= node.isPresent();
            node.ifPresent(text -> nodes.put(port, text.text()));
        });
        return good[0] ? Optional.of(new Item.Nodes(Collections.unmodifiableMap(nodes))) : Optional.empty();
    }

    private Optional<Item> perName(Key key, Given given, Value value, Type.PerName per) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        boolean[] good = {true};
        good[0] &= each(key, given, value, (name, entry) -> {
            good[0] &= declared(key, given, new Value.Text(name, entry.keyPlace()), per.of());
            OptionalDouble number = quantity(key, name + " in " + key.name(), given, entry.value(), per.dimension());
            good[0] &= number.isPresent();
            numbers.put(name, number.orElse(0));
        });
        return good[0] ? Optional.of(new Item.Numbers(Collections.unmodifiableMap(numbers))) : Optional.empty();
    }

    private Optional<Item> notes(Key key, Given given, Value value) {
        List<String> names = new ArrayList<>();
        if (value instanceof Value.Items items) {
            items.items().forEach(item -> text(key, given, item).ifPresent(text -> names.add(text.text())));
            return names.size() == items.items().size() ? Optional.of(new Item.Words(names)) : Optional.empty();
        }
        boolean good = each(key, given, value, (name, entry) -> {
            if (text(key, given, entry.value()).isPresent()) {
                names.add(name);
            }
        });
        return good ? Optional.of(new Item.Words(names)) : Optional.empty();
    }

    private Optional<Item> table(Key key, Given given, Value value, Type.Table table) {
        List<Given.Row> rows = new ArrayList<>();
        List<Value> items = value instanceof Value.Items list ? list.items() : List.of();
        for (Value item : items) {
            if (item instanceof Value.Items row && row.items().size() == 2) {
                OptionalDouble x = quantity(key, key.name(), given, row.items().get(0), table.x());
                OptionalDouble y = quantity(key, key.name(), given, row.items().get(1), table.y());
                if (x.isPresent() && y.isPresent()) {
                    rows.add(new Given.Row(
                            x.getAsDouble(), y.getAsDouble(), row.items().get(0).place()));
                }
            } else {
                String mend = "write [" + Units.of(table.x()).get(0) + " value, "
                        + Units.of(table.y()).get(0) + " value]";
                problems.error(
                        item.place(),
                        given.label() + " has a row that is no pair in " + key.name(),
                        ShapeReader.why(key),
                        mend);
            }
        }
        if (items.isEmpty()) {
            problems.error(value.place(), given.label() + " has no rows in " + key.name(), ShapeReader.why(key), "");
        }
        boolean rises = true;
        for (int i = 1; i < rows.size(); i++) {
            if (!(rows.get(i).x() > rows.get(i - 1).x())) {
                rises = false;
                problems.error(
                        rows.get(i).place(),
                        given.label() + " has rows in " + key.name() + " that do not rise",
                        "the first value of each row must be above that of the row before",
                        "");
            }
        }
        return rises && !items.isEmpty() && rows.size() == items.size()
                ? Optional.of(new Item.Rows(rows))
                : Optional.empty();
    }

    private Optional<Item> viscosity(Key key, Given given, Value value) {
        List<Value> items = value instanceof Value.Items list ? list.items() : List.of(value);
        List<Given.Row> points = new ArrayList<>();
        for (Value item : items) {
            Optional<Value.Text> text = text(key, given, item);
            String[] halves = text.map(Value.Text::text).orElse("").split(" at ", 2);
            if (text.isEmpty() || (halves.length == 1 && items.size() > 1)) {
                text.ifPresent(at -> problems.error(
                        at.place(),
                        given.label() + " has viscosity " + at.text() + " without a temperature",
                        ShapeReader.why(key),
                        "write '" + at.text() + " at 40 degC'"));
                return Optional.empty();
            }
            OptionalDouble nu = quantity(
                    key, key.name(), given, new Value.Text(halves[0], item.place()), Dimension.KINEMATIC_VISCOSITY);
            OptionalDouble t = halves.length == 1
                    ? OptionalDouble.of(0)
                    : quantity(
                            key, "viscosity at", given, new Value.Text(halves[1], item.place()), Dimension.TEMPERATURE);
            if (nu.isEmpty() || t.isEmpty()) {
                return Optional.empty();
            }
            points.add(new Given.Row(t.getAsDouble(), nu.getAsDouble(), item.place()));
        }
        if (points.isEmpty() || points.size() > 2) {
            problems.error(
                    value.place(),
                    given.label() + " has " + points.size() + " viscosities",
                    ShapeReader.why(key),
                    "write two");
            return Optional.empty();
        }
        return Optional.of(new Item.Rows(points));
    }
}
