package hotidle.study;

import hotidle.assess.Margin;
import hotidle.study.WindowMap.Axis;
import hotidle.study.WindowMap.LeastMargin;
import hotidle.study.WindowMap.MapCell;
import hotidle.study.WindowMap.UnknownCell;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * The points of a {@link WindowMap} at one set pressure. They are solved from the build itself on, which is one of them, each started
 * from the one before: a size moves a state less than a set pressure does.
 *
 * @param build    at the set pressure
 * @param pressure set [Pa]
 * @param judged   the build itself, by its duty points
 * @param chains   by duty point, as they stand at the build itself
 */
record MapColumn(
        Adjustable build, Axis axis, double pressure, Map<String, Judgement> judged, Map<String, DutyChain> chains) {

    /**
     * Columns side by side.
     *
     * @param builds    one build at each set pressure, each started from the one before
     * @param pressures of each [Pa]
     */
    static List<MapColumn> started(List<Adjustable> builds, Axis axis, List<Double> pressures, List<Double> speeds) {
        record ColumnStand(Judgement judged, DutyChain chain) {}
        record DutyStands(String duty, List<ColumnStand> stands) {}
        List<DutyStands> duties = new BoundarySearch(speeds)
                .chains(builds.get(0).unit()).entrySet().parallelStream()
                        .map(one -> {
                            List<ColumnStand> stands = new ArrayList<>();
                            for (Adjustable build : builds) {
                                Judgement judged = one.getValue().judged(build.unit());
                                stands.add(
                                        new ColumnStand(judged, one.getValue().branch()));
                            }
                            return new DutyStands(one.getKey(), stands);
                        })
                        .toList();
        return IntStream.range(0, builds.size())
                .mapToObj(i -> {
                    Map<String, Judgement> judged = new LinkedHashMap<>();
                    Map<String, DutyChain> chains = new LinkedHashMap<>();
                    duties.forEach(one -> {
                        judged.put(one.duty(), one.stands().get(i).judged());
                        chains.put(one.duty(), one.stands().get(i).chain());
                    });
                    return new MapColumn(builds.get(i), axis, pressures.get(i), judged, chains);
                })
                .toList();
    }

    /**
     * A point for each value: upwards from the build's own, then downwards from it.
     *
     * @param values as the axis counts them, rising
     * @param step   called after each
     */
    List<MapCell> cells(List<Double> values, Runnable step) {
        double own = axis.counted(axis.dimension().value());
        MapCell[] cells = new MapCell[values.size()];
        int from = (int) values.stream().filter(value -> value < own).count();
        Map<String, DutyChain> upwards = BoundarySearch.branch(chains);
        for (int j = from; j < cells.length; j++) {
            cells[j] = values.get(j) == own ? own() : at(values.get(j), upwards);
            step.run();
        }
        Map<String, DutyChain> downwards = BoundarySearch.branch(chains);
        for (int j = from - 1; j >= 0; j--) {
            cells[j] = at(values.get(j), downwards);
            step.run();
        }
        return List.of(cells);
    }

    private MapCell own() {
        return cell(build.unit(), axis.counted(axis.dimension().value()), duty -> judged.get(duty.name()));
    }

    private MapCell at(double value, Map<String, DutyChain> chains) {
        Optional<Transmission> made = made(value);
        return made.isEmpty()
                ? unknown(value, UnknownCell.of(UnknownCell.Obstacle.SIZE_IMPOSSIBLE))
                : cell(made.get(), value, duty -> chains.get(duty.name()).judged(made.get()));
    }

    private Optional<Transmission> made(double value) {
        WearSize size = axis.dimension();
        return build.with(size, value == axis.counted(size.fresh()) ? size.fresh() : value + axis.inner());
    }

    private MapCell cell(Transmission unit, double value, Function<DutyPoint, Judgement> judge) {
        Optional<LeastMargin> least = Optional.empty();
        List<Judgement.Key> undecided = new ArrayList<>();
        Map<Judgement.Key, Double> headrooms = new LinkedHashMap<>();
        for (DutyPoint duty : unit.duties()) {
            Judgement found = judge.apply(duty);
            if (!found.known()) {
                return unknown(value, new UnknownCell(UnknownCell.Obstacle.UNSOLVED, Optional.of(duty.name())));
            }
            found.undecided().forEach(margin -> undecided.add(Judgement.Key.of(duty, margin)));
            found.margins().stream()
                    .filter(Margin::known)
                    .forEach(margin -> headrooms.put(Judgement.Key.of(duty, margin), margin.headroom()));
            Optional<LeastMargin> worst =
                    found.least().map(margin -> new LeastMargin(Judgement.Key.of(duty, margin), margin));
            if (rank(worst) < rank(least)) {
                least = worst;
            }
        }
        return least.isEmpty()
                ? unknown(value, UnknownCell.of(UnknownCell.Obstacle.NOTHING_JUDGED))
                : new MapCell(pressure, value, least, Optional.empty(), undecided, headrooms);
    }

    private MapCell unknown(double value, UnknownCell why) {
        return new MapCell(pressure, value, Optional.empty(), Optional.of(why), List.of(), Map.of());
    }

    private static double rank(Optional<LeastMargin> least) {
        return least.map(one -> one.margin().headroom()).orElse(Double.POSITIVE_INFINITY);
    }
}
