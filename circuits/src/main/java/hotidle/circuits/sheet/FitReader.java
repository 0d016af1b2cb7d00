package hotidle.circuits.sheet;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Place;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Units;
import hotidle.circuits.text.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Reads what was measured of a fit: a bore and what runs in it, or a single size. */
final class FitReader {

    private final Problems problems;
    private final Map<String, Map<String, SizeAsNew>> sizes;
    private final MeasuredDoubts doubts;
    private final AirBores air;
    private final List<Value.Entry> changes = new ArrayList<>();

    /**
     * A reader.
     *
     * @param sizes of every part, by part and key
     * @param air   bores of air readings
     */
    FitReader(Problems problems, Map<String, Map<String, SizeAsNew>> sizes, AirBores air) {
        this.problems = problems;
        this.sizes = sizes;
        this.air = air;
        doubts = new MeasuredDoubts(problems, sizes);
    }

    /** What was measured so far, each {@code part.size: {to: value, because: who measured}}. */
    List<Value.Entry> changes() {
        return changes;
    }

    void read(FilledRow written, SheetRow fit) {
        MissingBushing missing = new MissingBushing(problems, fit);
        if (missing.said(written)) {
            missing.bareBore(written).ifPresent(row -> bare(row, fit, missing));
        } else {
            fit(written, fit);
        }
    }

    private void bare(FilledRow row, SheetRow fit, MissingBushing missing) {
        measured(row, SheetColumn.BORE, fit.part(), fit.outer())
                .filter(bore -> missing.sound(bore, size(fit, fit.outer())))
                .ifPresent(bore -> add(bore, row, fit, inUse(fit, bore, Optional.empty())));
        fit.inner()
                .flatMap(key -> measured(row, SheetColumn.VALVE, fit.part(), key))
                .ifPresent(hub -> add(hub, row, fit, Optional.empty()));
    }

    private void fit(FilledRow row, SheetRow fit) {
        SheetColumn column = fit.isBore() ? SheetColumn.BORE : SheetColumn.GAP;
        Optional<Measured> gauged = measured(row, column, fit.part(), fit.outer());
        Optional<Measured> inner = fit.inner().flatMap(key -> measured(row, SheetColumn.VALVE, fit.part(), key));
        Optional<Measured> outer = row.text(SheetColumn.AIR).isEmpty()
                ? gauged
                : air.of(row, fit, inner).filter(one -> !again(one.target(), one.place()));
        if (Stream.of(outer, inner).flatMap(Optional::stream).anyMatch(one -> tooMany(one, fit))) {
            return;
        }
        Stream.of(SheetColumn.BORE, SheetColumn.VALVE, SheetColumn.GAP)
                .filter(other -> other != column
                        && !(other == SheetColumn.VALVE && fit.inner().isPresent()))
                .filter(other -> !row.text(other).isEmpty())
                .forEach(other -> problems.error(
                        row.place(other),
                        ProblemCode.CELL_IN_WRONG_COLUMN,
                        "the sheet has a " + other.title() + " for " + fit.part() + "." + fit.outer(),
                        "this row is filled in under '" + column.title() + "'",
                        "move it there"));
        if (doubts.swapped(fit, outer, inner)
                || !doubts.sound(fit, outer, inner, fit.isBore())
                || !doubts.sound(fit, inner, outer, true)
                || tooSmall(fit, outer, inner)) {
            return;
        }
        outer.ifPresent(one -> add(one, row, fit, inUse(fit, one, inner)));
        inner.ifPresent(one -> add(
                one,
                row,
                fit,
                one.readings().one()
                        ? Optional.empty()
                        : Optional.of(one.readings().mean())));
    }

    /** Whether more of a size were read than the row stands for, which is told. */
    private boolean tooMany(Measured one, SheetRow fit) {
        EqualBores bores = EqualBores.of(one, size(fit, one.key()));
        boolean more = bores.read().size() > bores.count() && !bores.single();
        if (more) {
            problems.error(
                    one.place(),
                    ProblemCode.READINGS_OF_MORE_BORES,
                    "the sheet has " + bores.read().size() + " readings for " + one.target() + ", which stands for "
                            + bores.count() + " alike",
                    "semicolons part one from the next",
                    "write one reading for each, or one for all; several depths of one are parted by blanks");
        }
        return more;
    }

    private Optional<Measured> measured(FilledRow row, SheetColumn column, String part, String key) {
        String text = row.text(column);
        String target = part + "." + key;
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Optional<MeasuredCell> cell = MeasuredCell.of(text);
        if (cell.isEmpty()) {
            problems.error(
                    row.place(column),
                    ProblemCode.CELL_IS_NO_NUMBER,
                    "the sheet has '" + text + "' for " + target + ", which is no number",
                    "",
                    "write a number, such as 14.058 or 14,058, or several, 14.058x14.062 14.060x14.063; leave the cell empty"
                            + " where nothing was measured");
            return Optional.empty();
        }
        String here = cell.get().unit().isEmpty()
                ? row.text(SheetColumn.UNIT)
                : cell.get().unit();
        boolean given = here.isEmpty();
        String written = given ? row.text(SheetColumn.GIVEN_IN) : here;
        Optional<String> unit = MeasuredCell.unit(written);
        if (unit.isEmpty()) {
            problems.error(
                    row.place(SheetColumn.UNIT),
                    ProblemCode.SHEET_WITHOUT_UNIT,
                    written.isEmpty()
                            ? "the sheet has no unit for " + target
                            : "the sheet has the unit '" + written + "' for " + target + ", which is none of length",
                    "",
                    "write one of " + String.join(", ", MeasuredCell.units()));
            return Optional.empty();
        }
        return again(target, row.place(column))
                ? Optional.empty()
                : Optional.of(new Measured(
                        target,
                        key,
                        cell.get(),
                        unit.get(),
                        cell.get().readings(unit.get()),
                        row.place(column),
                        given,
                        Optional.empty()));
    }

    /** Whether a size was measured in an earlier row, which is told. */
    private boolean again(String target, Place place) {
        boolean twice = changes.stream().anyMatch(before -> before.key().equals(target));
        if (twice) {
            problems.error(
                    place,
                    ProblemCode.MEASURED_TWICE,
                    "the sheet has " + target + " twice",
                    "",
                    "leave one of the two rows empty");
        }
        return twice;
    }

    private SizeAsNew size(SheetRow fit, String key) {
        return sizes.get(fit.part()).get(key);
    }

    /** Whether one of several readings leaves a valve no room, which is told; of a single one the file's own rule tells. */
    private boolean tooSmall(SheetRow fit, Optional<Measured> outer, Optional<Measured> inner) {
        if (outer.isEmpty() || fit.inner().isEmpty() || (outer.get().readings().one() && once(fit, inner))) {
            return false;
        }
        OptionalDouble valve = valve(fit, inner);
        EqualBores bores = EqualBores.of(outer.get(), size(fit, outer.get().key()));
        boolean small = valve.isPresent()
                && (bores.single()
                        ? outer.get().readings().least() <= valve.getAsDouble()
                        : bores.clearance(valves(fit, inner), valve).isEmpty());
        if (small) {
            problems.error(
                    outer.get().place(),
                    ProblemCode.READING_WITHOUT_CLEARANCE,
                    "the sheet has a reading of " + outer.get().target() + " that leaves the "
                            + fit.inner().get() + " no room, " + outer.get().alike(valve.getAsDouble()),
                    "",
                    "measure again, or give the " + fit.inner().get() + " as measured too");
        }
        return small;
    }

    private boolean once(SheetRow fit, Optional<Measured> inner) {
        return inner.map(one -> one.readings().one() || size(fit, one.key()).count() == 1)
                .orElse(true);
    }

    /** Valves of equal bores that were read, each. */
    private List<Readings> valves(SheetRow fit, Optional<Measured> inner) {
        return inner.map(one -> EqualBores.of(one, size(fit, one.key())).read()).orElse(List.of());
    }

    private OptionalDouble valve(SheetRow fit, Optional<Measured> inner) {
        return inner.map(one -> OptionalDouble.of(one.readings().mean()))
                .orElseGet(() -> size(fit, fit.inner().orElseThrow()).asNew());
    }

    /**
     * The size that leaks as much as several readings do [m]; empty for a single one, which is taken as written, and over a valve that
     * the file does not know.
     */
    private Optional<Double> inUse(SheetRow fit, Measured outer, Optional<Measured> inner) {
        Readings readings = outer.readings();
        EqualBores bores = EqualBores.of(outer, size(fit, outer.key()));
        if (readings.one() && (bores.single() || once(fit, inner))) {
            return outer.air().map(reading -> readings.mean());
        }
        if (!bores.single() && fit.inner().isPresent()) {
            OptionalDouble valve = valve(fit, inner);
            return bores.clearance(valves(fit, inner), valve).stream()
                    .mapToObj(clearance -> valve.getAsDouble() + clearance)
                    .findFirst();
        }
        if (fit.inner().isPresent()) {
            return valve(fit, inner).stream()
                    .mapToObj(valve -> valve + readings.clearanceOver(valve))
                    .findFirst();
        }
        return Optional.of(
                fit.isBore() ? readings.mean() : outer.key().endsWith("feeler") ? readings.most() : bores.gap());
    }

    private void add(Measured one, FilledRow row, SheetRow fit, Optional<Double> reduced) {
        String value = reduced.map(size -> Units.inSi(size, Dimension.LENGTH))
                .orElseGet(() -> one.text(one.cell().first()));
        EqualBores bores = EqualBores.of(one, size(fit, one.key()));
        List<String> counted = new ArrayList<>();
        reduced.map(size -> SheetBuild.REDUCED + one.alike(size)).ifPresent(counted::add);
        if (reduced.isPresent() && (bores.single() || one.air().isPresent())) {
            counted.add(one.counted());
        }
        if (!bores.single()) {
            counted.add(bores.counted());
        }
        String because = row.because() + (counted.isEmpty() ? "" : "; " + String.join(", ", counted));
        Place place = one.place();
        changes.add(new Value.Entry(
                one.target(),
                place,
                new Value.Entries(
                        List.of(
                                new Value.Entry("to", place, new Value.Text(value, place)),
                                new Value.Entry("because", place, new Value.Text(because, place))),
                        place)));
    }
}
