package hotidle.answer.map;

import hotidle.answer.format.Digits;
import hotidle.answer.format.Quantity;
import hotidle.study.WindowMap;
import java.util.ArrayList;
import java.util.List;

/** The points of a map, a row each, for a spreadsheet. */
record MapRows(Quantity.UnitSystem units, String build, WindowMap map, MapGrid grid) {

    MapRows(Quantity.UnitSystem units, String build, WindowMap map) {
        this(units, build, map, new MapGrid(units, map));
    }

    /** Head of {@link #rows}. */
    List<String> head() {
        return List.of(
                "build",
                "point",
                "set " + Quantity.PRESSURE.in(units).unit(),
                map.axis().name() + " " + grid.quantity().in(units).unit(),
                "headroom",
                "verdict",
                "limit",
                "part",
                "duty",
                "why not known");
    }

    /** A row for each point, the named ones first. */
    List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        map.marks().forEach(mark -> rows.add(row(mark.name(), mark.cell())));
        map.cells().stream().flatMap(List::stream).forEach(cell -> rows.add(row("", cell)));
        return rows;
    }

    private List<String> row(String point, WindowMap.MapCell cell) {
        double headroom = cell.headroom().orElse(Double.NEGATIVE_INFINITY);
        return List.of(
                build,
                point,
                Quantity.PRESSURE.number(units, cell.pressure()),
                Digits.four(grid.quantity().value(units, cell.value())),
                Double.isFinite(headroom) ? Digits.four(headroom) : "-",
                cell.least().map(least -> least.margin().verdict().word()).orElse(MapRecord.NOT_KNOWN),
                cell.least().map(least -> least.key().kind().word()).orElse("-"),
                cell.least().map(least -> least.key().part()).orElse("-"),
                cell.least().map(least -> least.key().duty()).orElse("-"),
                WhyNotKnown.of(cell));
    }
}
