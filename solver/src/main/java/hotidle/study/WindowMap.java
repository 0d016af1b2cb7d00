package hotidle.study;

import hotidle.assess.Margin;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The least margin of a build over set pressure and one size: at each point the worst of all limits at all duty points.
 *
 * @param axis      the size
 * @param pressures set pressures [Pa], rising
 * @param values    values of the size as {@link Axis} counts it [m] or [m²], rising
 * @param cells     a row for each value, in it a cell for each pressure
 * @param marks     the build itself, and what else its file says of the size
 */
public record WindowMap(
        Axis axis, List<Double> pressures, List<Double> values, List<List<Cell>> cells, List<NamedCell> marks) {

    /**
     * A size, or the clearance that it leaves around a piece that stays as it is.
     *
     * @param name      as the user calls it
     * @param dimension the size that is changed
     * @param inner     the piece within [m], 0 where the size itself is counted
     */
    public record Axis(String name, WearSize dimension, double inner) {

        /** What is counted, of a size. */
        public double counted(double size) {
            return size - inner;
        }
    }

    /**
     * One point.
     *
     * @param pressure set pressure [Pa]
     * @param value    as the axis counts it
     * @param least    the worst limit, with a value that is not a number where metal touches; empty where it is not known
     * @param why      why it is not known; empty where it is
     * @param undecided limits of which it is not known whether they hold: the worst one is that of the others
     */
    public record Cell(
            double pressure,
            double value,
            Optional<LeastMargin> least,
            Optional<NotKnown> why,
            List<Judgement.Key> undecided) {
        public Cell {
            undecided = List.copyOf(undecided);
        }

        /** Headroom [-], minus infinity where it fails by an amount that is not known, NaN where nothing is known. */
        public double headroom() {
            return least.map(worst -> worst.margin().rank()).orElse(Double.NaN);
        }
    }

    /**
     * Why nothing is known at a point.
     *
     * @param obstacle what is in the way
     * @param duty  at which no state was found; empty for another
     */
    public record NotKnown(Obstacle obstacle, Optional<String> duty) {

        /** What is in the way. */
        public enum Obstacle {
            SIZE_IMPOSSIBLE,
            UNSOLVED,
            NOTHING_JUDGED
        }

        private static NotKnown of(Obstacle obstacle) {
            return new NotKnown(obstacle, Optional.empty());
        }
    }

    /** A limit with its duty. */
    public record LeastMargin(Judgement.Key key, Margin margin) {}

    /** A point with a name, solved exactly there and not read off the grid. */
    public record NamedCell(String name, Cell cell) {}

    public WindowMap {
        pressures = List.copyOf(pressures);
        values = List.copyOf(values);
        cells = cells.stream().map(List::copyOf).toList();
        marks = List.copyOf(marks);
    }

    /** Limits of which it is not known at some point whether they hold, without repeats. */
    public List<Judgement.Key> undecided() {
        return Stream.concat(
                        cells.stream().flatMap(List::stream), marks.stream().map(NamedCell::cell))
                .flatMap(cell -> cell.undecided().stream())
                .distinct()
                .toList();
    }

    /** Whether every point is known. */
    public boolean known() {
        return cells.stream()
                        .flatMap(List::stream)
                        .allMatch(cell -> cell.least().isPresent())
                && marks.stream().allMatch(mark -> mark.cell().least().isPresent());
    }

    /**
     * Solves the map; the marks keep the build's own set pressure.
     *
     * @param build     commanded
     * @param pressures [Pa], rising
     * @param by        what is changed for each
     * @param values    as the axis counts them, rising
     * @param speeds    engine speeds searched for the hub's film and load [rev/s], rising
     * @param step      called after each point, from any thread
     */
    public static WindowMap study(
            Adjustable build,
            Axis axis,
            List<Double> pressures,
            SetPressure.By by,
            List<Double> values,
            List<Double> speeds,
            Runnable step) {
        // a row is solved in order, each of its points started from the one before; rows know nothing of each other
        List<List<Cell>> rows = values.parallelStream()
                .map(value -> {
                    Optional<Transmission> made = build.with(axis.dimension(), value + axis.inner());
                    Map<String, DutyChain> chains = new BoundarySearch(speeds).chains(build.unit());
                    List<Cell> row = new ArrayList<>();
                    for (double pressure : pressures) {
                        row.add(cell(made.map(unit -> SetPressure.of(unit, pressure, by)), pressure, value, chains));
                        step.run();
                    }
                    return row;
                })
                .toList();
        return new WindowMap(axis, pressures, values, rows, marks(build, axis, speeds));
    }

    private static List<NamedCell> marks(Adjustable build, Axis axis, List<Double> speeds) {
        WearSize dimension = axis.dimension();
        double pressure = build.unit().highestSet();
        List<NamedCell> marks = new ArrayList<>();
        Map<String, DutyChain> chains = new BoundarySearch(speeds).chains(build.unit());
        boolean measured =
                dimension.measured().isPresent() && dimension.measured().getAsDouble() == dimension.value();
        marks.add(new NamedCell(
                build.unit().build() + (measured ? " (as measured)" : ""),
                cell(Optional.of(build.unit()), pressure, axis.counted(dimension.value()), chains)));
        if (dimension.measured().isPresent() && !measured) {
            marks.add(mark("as measured", build, axis, dimension.measured().getAsDouble(), pressure, chains));
        }
        if (!dimension.isNew()) {
            marks.add(mark("new", build, axis, dimension.fresh(), pressure, chains));
        }
        return marks;
    }

    private static NamedCell mark(
            String name, Adjustable build, Axis axis, double size, double pressure, Map<String, DutyChain> chains) {
        return new NamedCell(name, cell(build.with(axis.dimension(), size), pressure, axis.counted(size), chains));
    }

    private static Cell cell(
            Optional<Transmission> made, double pressure, double value, Map<String, DutyChain> chains) {
        if (made.isEmpty()) {
            return unknown(pressure, value, NotKnown.of(NotKnown.Obstacle.SIZE_IMPOSSIBLE));
        }
        Optional<LeastMargin> least = Optional.empty();
        List<Judgement.Key> undecided = new ArrayList<>();
        for (DutyPoint duty : made.get().duties()) {
            Judgement judged = chains.get(duty.name()).judged(made.get());
            if (!judged.known()) {
                return unknown(pressure, value, new NotKnown(NotKnown.Obstacle.UNSOLVED, Optional.of(duty.name())));
            }
            judged.undecided().forEach(margin -> undecided.add(Judgement.Key.of(duty, margin)));
            Optional<LeastMargin> worst =
                    judged.least().map(margin -> new LeastMargin(Judgement.Key.of(duty, margin), margin));
            if (rank(worst) < rank(least)) {
                least = worst;
            }
        }
        return least.isEmpty()
                ? unknown(pressure, value, NotKnown.of(NotKnown.Obstacle.NOTHING_JUDGED))
                : new Cell(pressure, value, least, Optional.empty(), undecided);
    }

    private static Cell unknown(double pressure, double value, NotKnown why) {
        return new Cell(pressure, value, Optional.empty(), Optional.of(why), List.of());
    }

    private static double rank(Optional<LeastMargin> least) {
        return least.map(one -> one.margin().rank()).orElse(Double.POSITIVE_INFINITY);
    }
}
