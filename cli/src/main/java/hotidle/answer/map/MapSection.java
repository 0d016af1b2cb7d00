package hotidle.answer.map;

import hotidle.answer.NotKnown;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.HeadroomPhrase;
import hotidle.answer.phrase.MapPhrase;
import hotidle.assess.Assumed;
import hotidle.assess.Margin;
import hotidle.study.Judgement;
import hotidle.study.WindowMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The whole map of a build, for readers. */
record MapSection(Quantity.UnitSystem units, String build, WindowMap map, MapGrid grid) {

    MapSection(Quantity.UnitSystem units, String build, WindowMap map) {
        this(units, build, map, new MapGrid(units, map));
    }

    /** The whole answer for this build. */
    String table() {
        StringBuilder text = new StringBuilder();
        map.marks().forEach(mark -> text.append(Wrap.lines(sentence(mark), "", "  ")));
        text.append("\n")
                .append(MapPhrase.heading(
                        build, map.axis().name(), grid.quantity().in(units).unit()))
                .append("\n");
        Map<Judgement.Key, String> letters = grid.letters();
        List<String> head = new ArrayList<>();
        head.add("set " + Quantity.PRESSURE.in(units).unit());
        map.values().forEach(value -> head.add(grid.quantity().number(units, value)));
        TextTable table = new TextTable(head);
        for (int column = 0; column < map.pressures().size(); column++) {
            List<String> row = new ArrayList<>();
            row.add(Quantity.PRESSURE.number(units, map.pressures().get(column)));
            for (List<WindowMap.MapCell> cells : map.cells()) {
                WindowMap.MapCell cell = cells.get(column);
                row.add(cell.least()
                        .map(least -> MapGrid.percent(cell.headroom()) + " " + letters.get(least.key())
                                + (cell.undecided().isEmpty() ? "" : MapPhrase.UNDECIDED))
                        .orElse("?"));
            }
            table.add(row);
        }
        text.append(table.aligned());
        letters.forEach((key, letter) -> text.append("  ")
                .append(letter)
                .append("  ")
                .append(MapGrid.limit(key))
                .append("\n"));
        String undecided = NotKnown.said(map.undecided());
        text.append(undecided.isEmpty() ? "" : Wrap.lines(MapPhrase.UNDECIDED + "  " + undecided, "  ", "     "));
        long unknown = map.cells().stream()
                .flatMap(List::stream)
                .filter(cell -> cell.least().isEmpty())
                .count();
        if (unknown > 0) {
            text.append("  ")
                    .append(MapPhrase.notKnownAt(unknown, whyUnknown()))
                    .append("\n");
        }
        return text.toString();
    }

    /** Why points are not known, each reason once. */
    String whyUnknown() {
        return String.join(
                ", ",
                map.cells().stream()
                        .flatMap(List::stream)
                        .map(WhyNotKnown::of)
                        .filter(why -> !why.isEmpty())
                        .distinct()
                        .toList());
    }

    /** What a point with a name comes to. */
    String sentence(WindowMap.NamedCell mark) {
        WindowMap.MapCell cell = mark.cell();
        String at = MapPhrase.point(
                build,
                mark.name(),
                map.axis().name(),
                grid.quantity().with(units, cell.value()),
                Quantity.PRESSURE.with(units, cell.pressure()));
        return at + cell.least().map(least -> decides(least)).orElseGet(() -> MapPhrase.notKnown(WhyNotKnown.of(cell)));
    }

    private static String decides(WindowMap.LeastMargin least) {
        Margin margin = least.margin();
        return MapPhrase.decides(
                HeadroomPhrase.verdict(margin.verdict()),
                HeadroomPhrase.of(margin.headroom()),
                MapGrid.limit(least.key()),
                Assumed.limit(least.key().kind()),
                margin.value().isEmpty());
    }
}
