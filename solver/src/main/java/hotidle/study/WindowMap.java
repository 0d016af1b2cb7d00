package hotidle.study;

import hotidle.assess.Margin;
import hotidle.transmission.Adjustable;
import hotidle.transmission.SetPressure;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The least margin of a build over set pressure and one size: at each point the worst of all limits at all duty points. The build
 * itself, and what else its file says of the size, are points of it too, so that what is said of them agrees with what is drawn there.
 *
 * @param axis      the size
 * @param pressures set pressures [Pa], rising: those asked for, and the build's own where it lies between them
 * @param values    values of the size as {@link Axis} counts it [m] or [m²], rising: those asked for and those of the marks between
 * @param cells     a row for each value, in it a cell for each pressure
 * @param marks     the build itself, and what else its file says of the size
 */
public record WindowMap(
        Axis axis, List<Double> pressures, List<Double> values, List<List<MapCell>> cells, List<NamedCell> marks) {

    /** Two numbers that differ by a smaller share are one (chosen: rounding of units) [-]. */
    private static final double SAME = 1e-9;

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
     * @param headrooms of every limit of which it is known whether it holds [-], in order, not a number where metal touches; none where
     *     nothing is known
     */
    public record MapCell(
            double pressure,
            double value,
            Optional<LeastMargin> least,
            Optional<UnknownCell> why,
            List<Judgement.Key> undecided,
            Map<Judgement.Key, Double> headrooms) {
        public MapCell {
            undecided = List.copyOf(undecided);
            headrooms = Collections.unmodifiableMap(new LinkedHashMap<>(headrooms));
        }

        /** Whether a limit fails there. */
        public boolean fails() {
            return least.map(worst -> worst.margin().verdict() == Margin.Verdict.FAILS)
                    .orElse(false);
        }

        /** Whether every limit of which it is known holds there, and some is. */
        public boolean holds() {
            return least.isPresent() && !fails();
        }

        /** Headroom [-], minus infinity where it fails by an amount that is not known; empty where nothing is known. */
        public OptionalDouble headroom() {
            return least.stream()
                    .mapToDouble(worst -> worst.margin().headroom())
                    .findFirst();
        }
    }

    /**
     * Why nothing is known at a point.
     *
     * @param obstacle what is in the way
     * @param duty  at which no state was found; empty for another
     */
    public record UnknownCell(Obstacle obstacle, Optional<String> duty) {

        /** What is in the way. */
        public enum Obstacle {
            SIZE_IMPOSSIBLE,
            UNSOLVED,
            NOTHING_JUDGED
        }

        static UnknownCell of(Obstacle obstacle) {
            return new UnknownCell(obstacle, Optional.empty());
        }
    }

    /** A limit with its duty. */
    public record LeastMargin(Judgement.Key key, Margin margin) {}

    /** A point with a name, solved exactly there. */
    public record NamedCell(String name, MapCell cell) {}

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

    /** What it comes to. */
    public MapFindings findings() {
        return MapFindings.of(this);
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
     * @param pressures asked for [Pa], rising
     * @param by        what is changed for each
     * @param values    asked for, as the axis counts them, rising
     * @param speeds    engine speeds searched for the hub's film and load [rev/s], rising
     * @param step      called after each point, from any thread; {@link #points} says how many there are
     */
    public static WindowMap study(
            Adjustable build,
            Axis axis,
            List<Double> pressures,
            SetPressure.By by,
            List<Double> values,
            List<Double> speeds,
            Runnable step) {
        double own = build.unit().highestSet();
        Map<String, Double> named = named(build, axis);
        List<Double> across = with(pressures, List.of(own));
        List<Double> upright = with(values, named.values());
        List<Adjustable> builds = across.stream()
                .map(pressure -> pressure == own ? build : build.setTo(pressure, by))
                .toList();
        List<MapColumn> started = MapColumn.started(builds, axis, across, speeds);
        // columns know nothing of each other
        List<List<MapCell>> columns = started.parallelStream()
                .map(column -> column.cells(upright, step))
                .toList();
        List<List<MapCell>> rows = IntStream.range(0, upright.size())
                .mapToObj(j -> columns.stream().map(column -> column.get(j)).toList())
                .toList();
        int column = across.indexOf(own);
        MapColumn itself = column >= 0
                ? started.get(column)
                : MapColumn.started(List.of(build), axis, List.of(own), speeds).get(0);
        List<NamedCell> marks = new ArrayList<>();
        named.forEach((name, value) -> {
            int row = upright.indexOf(value);
            marks.add(new NamedCell(
                    name,
                    row >= 0 && column >= 0
                            ? rows.get(row).get(column)
                            : itself.cells(List.of(value), () -> {}).get(0)));
        });
        return new WindowMap(axis, across, upright, rows, marks);
    }

    /** How many points are solved where these are asked for. */
    public static int points(Adjustable build, Axis axis, List<Double> pressures, List<Double> values) {
        return with(pressures, List.of(build.unit().highestSet())).size()
                * with(values, named(build, axis).values()).size();
    }

    /** Numbers that rise, with those of others that lie between them; what differs by rounding alone is the other's. */
    private static List<Double> with(List<Double> rising, Collection<Double> others) {
        TreeSet<Double> all = new TreeSet<>(rising);
        for (double other : others) {
            double same = SAME * Math.abs(other);
            if (other >= rising.get(0) - same && other <= rising.get(rising.size() - 1) + same) {
                all.subSet(other - same, true, other + same, true).clear();
                all.add(other);
            }
        }
        return List.copyOf(all);
    }

    /** What the file says of the size, as the axis counts it, the build's own first. */
    private static Map<String, Double> named(Adjustable build, Axis axis) {
        WearSize size = axis.dimension();
        boolean measured = size.measured().isPresent() && size.measured().getAsDouble() == size.value();
        Map<String, Double> named = new LinkedHashMap<>();
        named.put(build.unit().build() + (measured ? " (as measured)" : ""), axis.counted(size.value()));
        if (size.measured().isPresent() && !measured) {
            named.put("as measured", axis.counted(size.measured().getAsDouble()));
        }
        if (!size.isNew()) {
            named.put("new", axis.counted(size.fresh()));
        }
        return named;
    }
}
