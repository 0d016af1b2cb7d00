package hotidle.circuits.shape;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Units;
import hotidle.circuits.text.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads values that belong together in rows: a pair, a table, the points of a viscosity line. */
record RowReader(AmountReader amounts, Problems problems) {

    /** Two values that rise. */
    Optional<Item> pair(Key key, Attributes given, Value value, Dimension dimension) {
        List<Value> items = value instanceof Value.Items list ? list.items() : List.of();
        if (items.size() != 2) {
            problems.error(
                    value.place(),
                    given.fault(
                            ProblemCode.WRONG_SHAPE,
                            key.name(),
                            "needs two values behind " + key.name(),
                            ShapeReader.why(key),
                            "write [0 mm, 4 mm], for example"));
            return Optional.empty();
        }
        OptionalDouble low = amounts.quantity(key, key.name(), given, items.get(0), dimension);
        OptionalDouble high = amounts.quantity(key, key.name(), given, items.get(1), dimension);
        if (low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        if (low.getAsDouble() > high.getAsDouble()) {
            problems.error(
                    value.place(),
                    given.fault(
                            ProblemCode.NOT_RISING,
                            key.name(),
                            "has " + key.name() + " that fall",
                            "the first must not be above the second",
                            "exchange them"));
            return Optional.empty();
        }
        return Optional.of(new Item.Rows(List.of(
                new Attributes.TableRow(low.getAsDouble(), 0, items.get(0).place()),
                new Attributes.TableRow(high.getAsDouble(), 0, items.get(1).place()))));
    }

    /** Rows of two values, the first of which rises. */
    Optional<Item> table(Key key, Attributes given, Value value, Type.Table table) {
        List<Attributes.TableRow> rows = new ArrayList<>();
        List<Value> items = value instanceof Value.Items list ? list.items() : List.of();
        for (Value item : items) {
            if (item instanceof Value.Items row && row.items().size() == 2) {
                OptionalDouble x =
                        amounts.quantity(key, key.name(), given, row.items().get(0), table.x());
                OptionalDouble y =
                        amounts.quantity(key, key.name(), given, row.items().get(1), table.y());
                if (x.isPresent() && y.isPresent()) {
                    rows.add(new Attributes.TableRow(
                            x.getAsDouble(), y.getAsDouble(), row.items().get(0).place()));
                }
            } else {
                String mend = "write [" + Units.of(table.x()).get(0) + " value, "
                        + Units.of(table.y()).get(0) + " value]";
                problems.error(
                        item.place(),
                        given.fault(
                                ProblemCode.WRONG_SHAPE,
                                key.name(),
                                "has a row that is no pair in " + key.name(),
                                ShapeReader.why(key),
                                mend));
            }
        }
        if (items.isEmpty()) {
            problems.error(
                    value.place(),
                    given.fault(
                            ProblemCode.NO_VALUE,
                            key.name(),
                            "has no rows in " + key.name(),
                            ShapeReader.why(key),
                            ""));
        }
        boolean rises = true;
        for (int i = 1; i < rows.size(); i++) {
            if (!(rows.get(i).x() > rows.get(i - 1).x())) {
                rises = false;
                problems.error(
                        rows.get(i).place(),
                        given.fault(
                                ProblemCode.NOT_RISING,
                                key.name(),
                                "has rows in " + key.name() + " that do not rise",
                                "the first value of each row must be above that of the row before",
                                ""));
            }
        }
        return rises && !items.isEmpty() && rows.size() == items.size()
                ? Optional.of(new Item.Rows(rows))
                : Optional.empty();
    }

    private static final int MOST_VISCOSITIES = 4;

    /** One viscosity for every temperature, or two to four with the temperature of each. */
    Optional<Item> viscosity(Key key, Attributes given, Value value) {
        List<Value> items = value instanceof Value.Items list ? list.items() : List.of(value);
        List<Attributes.TableRow> points = new ArrayList<>();
        for (Value item : items) {
            Optional<Value.Text> text = amounts.text(key, given, item);
            String[] halves = text.map(Value.Text::text).orElse("").split(" at ", 2);
            if (text.isEmpty() || (halves.length == 1 && items.size() > 1)) {
                text.ifPresent(at -> problems.error(
                        at.place(),
                        given.fault(
                                ProblemCode.NO_QUANTITY,
                                key.name(),
                                "has viscosity " + at.text() + " without a temperature",
                                ShapeReader.why(key),
                                "write '" + at.text() + " at 40 degC'")));
                return Optional.empty();
            }
            OptionalDouble nu = amounts.quantity(
                    key, key.name(), given, new Value.Text(halves[0], item.place()), Dimension.KINEMATIC_VISCOSITY);
            OptionalDouble t = halves.length == 1
                    ? OptionalDouble.of(0)
                    : amounts.quantity(
                            key, "viscosity at", given, new Value.Text(halves[1], item.place()), Dimension.TEMPERATURE);
            if (nu.isEmpty() || t.isEmpty()) {
                return Optional.empty();
            }
            points.add(new Attributes.TableRow(t.getAsDouble(), nu.getAsDouble(), item.place()));
        }
        if (points.isEmpty() || points.size() > MOST_VISCOSITIES) {
            problems.error(
                    value.place(),
                    given.fault(
                            ProblemCode.WRONG_SHAPE,
                            key.name(),
                            "has " + points.size() + " viscosities",
                            ShapeReader.why(key),
                            "write two, or up to four where cold oil matters"));
            return Optional.empty();
        }
        return Optional.of(new Item.Rows(points));
    }
}
