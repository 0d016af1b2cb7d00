package hotidle.answer.check;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.phrase.WearPhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** The sizes that wear, new, limit and measured, and which are measured past their limit. */
final class SizeTable {

    /** Below this a length is shown as a clearance (chosen) [m]. */
    private static final double SMALL = 1e-3;

    private final DescribedCircuit circuit;
    private final Quantity.UnitSystem units;

    private SizeTable(DescribedCircuit circuit, Quantity.UnitSystem units) {
        this.circuit = circuit;
        this.units = units;
    }

    /** The table, and a line beneath it. */
    static String of(DescribedCircuit circuit, Quantity.UnitSystem units) {
        return new SizeTable(circuit, units).text();
    }

    private String text() {
        TextTable table = new TextTable(List.of("size", "new", "limit", "measured", ""));
        int past = 0;
        for (DescribedCircuit.SizeLine size : circuit.sizes()) {
            Optional<String> remark = past(size);
            past += remark.isPresent() ? 1 : 0;
            Optional<String> measured = measured(size);
            table.add(List.of(
                    name(size),
                    length(size.fresh()),
                    size.limit().isPresent() ? length(size.limit().getAsDouble()) : "-",
                    measured.orElse("-"),
                    measured.isPresent() ? remark.orElse("") : WearPhrase.ASSUMED_NEW));
        }
        return table.aligned()
                + (past == 0 ? "" : WearPhrase.pastLimit(past, circuit.sizes().size()) + "\n");
    }

    private static String name(DescribedCircuit.SizeLine size) {
        return size.part() + "." + size.key();
    }

    /** By how much it is worn past its limit, where it is. */
    private Optional<String> past(DescribedCircuit.SizeLine size) {
        OptionalDouble now = circuit.sheet().isPresent() ? inSheet(size) : size.measured();
        return now.isPresent() && size.pastLimit(now.getAsDouble())
                ? Optional.of(WearPhrase.pastLimit(
                        length(Math.abs(now.getAsDouble() - size.limit().orElseThrow()))))
                : Optional.empty();
    }

    /** What the sheet says, where there is one; otherwise what the file says. */
    private Optional<String> measured(DescribedCircuit.SizeLine size) {
        if (circuit.sheet().isEmpty()) {
            return size.measured().isPresent()
                    ? Optional.of(length(size.measured().getAsDouble()))
                    : Optional.empty();
        }
        return circuit.builds().stream()
                .filter(build -> build.name().equals(circuit.sheet().get()))
                .flatMap(build -> build.changes().stream())
                .filter(change -> change.what().equals(name(size)))
                .map(change -> length(inSheet(size).orElseThrow()))
                .findFirst();
    }

    /** The size in the build that the sheet has made. */
    private OptionalDouble inSheet(DescribedCircuit.SizeLine size) {
        return circuit.adjustable(circuit.sheet().orElseThrow()).dimensions().stream()
                .filter(dimension -> dimension.name().equals(name(size)))
                .mapToDouble(WearSize::value)
                .findFirst();
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
