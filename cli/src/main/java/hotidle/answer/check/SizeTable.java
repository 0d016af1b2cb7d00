package hotidle.answer.check;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.phrase.WearPhrase;
import hotidle.circuits.DescribedCircuit;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** The sizes that wear, new, limit and measured, and which are measured past their limit. */
final class SizeTable {

    /** Below this a length is shown as a clearance (chosen) [m]. */
    private static final double SMALL = 1e-3;

    private final DescribedCircuit circuit;
    private final Quantity.UnitSystem units;

    SizeTable(DescribedCircuit circuit, Quantity.UnitSystem units) {
        this.circuit = circuit;
        this.units = units;
    }

    /** The table, and a line beneath it. */
    static String of(DescribedCircuit circuit, Quantity.UnitSystem units) {
        return new SizeTable(circuit, units).text();
    }

    /** The sizes past their wear limit, the one that is furthest past it first, each with by how much. */
    static List<String> past(DescribedCircuit circuit, Quantity.UnitSystem units) {
        SizeTable table = new SizeTable(circuit, units);
        return circuit.sizes().stream()
                .filter(size -> circuit.pastLimit(size).isPresent())
                .sorted(Comparator.comparingDouble(
                        size -> -Math.abs(circuit.pastLimit(size).getAsDouble())))
                .map(size -> WearPhrase.by(
                        size.name(), table.length(circuit.pastLimit(size).getAsDouble())))
                .toList();
    }

    private String text() {
        return table().aligned() + pastLimit();
    }

    /** How many are past their limit; empty where none is. */
    String pastLimit() {
        long past = circuit.pastLimit();
        return past == 0 ? "" : WearPhrase.pastLimit(past, circuit.sizes().size()) + "\n";
    }

    TextTable table() {
        TextTable table = new TextTable(List.of("size", "new", "limit", "measured", ""));
        circuit.sizes()
                .forEach(size -> table.add(List.of(
                        size.name(),
                        length(size.fresh()),
                        cell(size.limit()),
                        cell(circuit.measured(size)),
                        remark(size))));
        return table;
    }

    private String remark(DescribedCircuit.SizeLine size) {
        if (circuit.measured(size).isEmpty()) {
            return WearPhrase.ASSUMED_NEW;
        }
        OptionalDouble past = circuit.pastLimit(size);
        return past.isPresent() ? WearPhrase.pastLimit(length(past.getAsDouble())) : "";
    }

    private String cell(OptionalDouble metres) {
        return metres.isPresent() ? length(metres.getAsDouble()) : "-";
    }

    /** A size with its unit; a clearance in thousandths of an inch, or micrometres, so that it shows. */
    private String length(double metres) {
        boolean small = Math.abs(metres) < SMALL;
        return switch (units) {
            case SHOP -> small ? text("%.2f thou", metres / 25.4e-6) : text("%.4f in", metres / 0.0254);
            case METRIC -> small ? text("%.1f um", metres * 1e6) : text("%.3f mm", metres * 1e3);
            case SI -> text("%.9f m", metres);
        };
    }

    private static String text(String pattern, double value) {
        return String.format(Locale.ROOT, pattern, value);
    }
}
