package hotidle.answer.map;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.MapPhrase;
import hotidle.assess.Margin;
import hotidle.plots.MapChart;
import hotidle.study.Judgement;
import hotidle.study.MapFindings;
import hotidle.study.WindowMap;
import hotidle.transmission.SetPressure;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The map of a build as a chart. */
record MapPicture(Quantity.UnitSystem units, String build, WindowMap map, MapGrid grid) {

    MapPicture(Quantity.UnitSystem units, String build, WindowMap map) {
        this(units, build, map, new MapGrid(units, map));
    }

    /** The map as a chart. */
    MapChart chart(String circuit, SetPressure.By by) {
        Map<Judgement.Key, String> letters = grid.letters();
        Map<String, String> key = new LinkedHashMap<>();
        letters.forEach((limit, letter) -> key.put(letter, MapGrid.limit(limit)));
        List<MapChart.LevelLine> levels = new ArrayList<>();
        WearSize dimension = map.axis().dimension();
        dimension
                .limit()
                .ifPresent(limit -> levels.add(
                        new MapChart.LevelLine("shop limit", value(map.axis().counted(limit)))));
        return new MapChart(
                title(),
                MapPhrase.subtitle(circuit, by),
                "set pressure [" + Quantity.PRESSURE.in(units).unit() + "]",
                map.axis().name() + " [" + grid.quantity().in(units).unit() + "]",
                map.pressures().stream()
                        .map(pressure -> Quantity.PRESSURE.value(units, pressure))
                        .toList(),
                map.values().stream().map(this::value).toList(),
                map.cells().stream()
                        .map(row -> row.stream()
                                .map(cell -> new MapChart.Tile(
                                        100 * cell.headroom().orElse(Double.NaN),
                                        cell.least()
                                                .map(least -> letters.get(least.key()))
                                                .orElse(""),
                                        !cell.undecided().isEmpty(),
                                        limits(cell, letters)))
                                .toList())
                        .toList(),
                100 * Margin.CLOSE,
                key,
                map.marks().stream()
                        .map(mark -> new MapChart.NamedPoint(
                                mark.name() + ": " + grid.headroom(mark.cell()),
                                Quantity.PRESSURE.value(units, mark.cell().pressure()),
                                value(mark.cell().value())))
                        .toList(),
                levels);
    }

    /** What the map shows: where every limit holds, or that it does nowhere. */
    private String title() {
        MapFindings found = map.findings();
        boolean known = map.undecided().isEmpty();
        List<MapFindings.SizeRow> holding =
                found.rows().stream().filter(row -> !row.ranges().isEmpty()).toList();
        if (holding.isEmpty()) {
            return MapPhrase.holdsNowhere(
                    build,
                    known,
                    pressures(
                            map.pressures().get(0),
                            map.pressures().get(map.pressures().size() - 1)),
                    map.axis().name(),
                    found.failing().keySet().stream().findFirst());
        }
        MapFindings.PressureSpan widest = holding.stream()
                .flatMap(row -> row.ranges().stream())
                .max(Comparator.comparingDouble(
                        span -> span.last().pressure() - span.first().pressure()))
                .orElseThrow();
        return MapPhrase.holds(
                build,
                known,
                pressures(widest.first().pressure(), widest.last().pressure()),
                map.axis().name(),
                MapPhrase.range(
                                grid.quantity().number(units, holding.get(0).value()),
                                grid.quantity()
                                        .number(
                                                units,
                                                holding.get(holding.size() - 1).value()))
                        + " " + grid.quantity().in(units).unit());
    }

    private String pressures(double low, double high) {
        return MapPhrase.range(Quantity.PRESSURE.number(units, low), Quantity.PRESSURE.number(units, high)) + " "
                + Quantity.PRESSURE.in(units).unit();
    }

    /** Headroom [%] of the limits that have a letter; in a picture NaN is what fails by an amount that is not known. */
    private static Map<String, Double> limits(WindowMap.MapCell cell, Map<Judgement.Key, String> letters) {
        Map<String, Double> limits = new LinkedHashMap<>();
        letters.forEach((key, letter) -> {
            if (cell.headrooms().containsKey(key)) {
                double headroom = cell.headrooms().get(key);
                limits.put(letter, headroom == Double.NEGATIVE_INFINITY ? Double.NaN : 100 * headroom);
            }
        });
        return limits;
    }

    private double value(double siValue) {
        return grid.quantity().value(units, siValue);
    }
}
