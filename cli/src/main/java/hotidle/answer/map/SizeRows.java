package hotidle.answer.map;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.phrase.LimitPhrase;
import hotidle.answer.phrase.MapPhrase;
import hotidle.assess.Assumed;
import hotidle.study.Judgement;
import hotidle.study.MapFindings;
import hotidle.study.WindowMap;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Some sizes of a map, each with the set pressures at which every limit holds and what fails beyond them.
 *
 * @param units of the user
 * @param most  rows at most, two or more; those of the marks are among them
 */
record SizeRows(Quantity.UnitSystem units, WindowMap map, int most) {

    /** Ranges of a size that are named. */
    private static final int RANGES = 2;

    /** Sizes that are left out. */
    int more() {
        return Math.max(0, map.values().size() - most);
    }

    /** @param duties whether a limit is told with its driving condition */
    TextTable table(boolean duties) {
        MapGrid grid = new MapGrid(units, map);
        Quantity quantity = grid.quantity();
        String pressure = Quantity.PRESSURE.in(units).unit();
        TextTable table = new TextTable(List.of(
                MapPhrase.sized(map.axis().name(), quantity.in(units).unit()),
                MapPhrase.HOLDS + ", " + pressure,
                MapPhrase.at(MapPhrase.BELOW, pressure),
                MapPhrase.at(MapPhrase.ABOVE, pressure),
                MapPhrase.at(MapPhrase.MOST, pressure)));
        List<MapFindings.SizeRow> rows = map.findings().rows();
        for (int index : shown()) {
            MapFindings.SizeRow row = rows.get(index);
            List<MapFindings.PressureSpan> ranges = row.ranges();
            String most = row.best()
                    .map(cell ->
                            MapPhrase.mostAt(grid.headroom(cell), Quantity.PRESSURE.number(units, cell.pressure())))
                    .orElse("?");
            String size = quantity.number(units, row.value());
            if (ranges.isEmpty()) {
                // no stretch to be below or above of: what decides at both ends, as the picture has it there
                List<WindowMap.MapCell> cells = map.cells().get(index);
                table.add(List.of(
                        size,
                        MapPhrase.NOWHERE,
                        tried(Optional.of(cells.get(0)), duties),
                        tried(Optional.of(cells.get(cells.size() - 1)), duties),
                        most));
            } else {
                table.add(List.of(
                        size,
                        pressures(ranges),
                        tried(ranges.get(0).below(), duties),
                        tried(ranges.get(ranges.size() - 1).above(), duties),
                        most));
            }
        }
        return table;
    }

    /** Those of the marks and both ends, then always the one farthest from those chosen. */
    private TreeSet<Integer> shown() {
        int last = map.values().size() - 1;
        TreeSet<Integer> shown = new TreeSet<>();
        map.marks().forEach(mark -> shown.add(map.values().indexOf(mark.cell().value())));
        shown.remove(-1);
        for (int end : List.of(0, last)) {
            if (shown.size() < most) {
                shown.add(end);
            }
        }
        while (shown.size() < Math.min(most, last + 1)) {
            shown.add(farthest(shown, last));
        }
        return shown;
    }

    private static int farthest(TreeSet<Integer> shown, int last) {
        int farthest = 0;
        int most = 0;
        for (int i = 0; i <= last; i++) {
            int index = i;
            int near =
                    shown.stream().mapToInt(one -> Math.abs(one - index)).min().orElseThrow();
            if (near > most) {
                most = near;
                farthest = i;
            }
        }
        return farthest;
    }

    private String pressures(List<MapFindings.PressureSpan> ranges) {
        return ranges.stream()
                        .limit(RANGES)
                        .map(range -> MapPhrase.range(
                                Quantity.PRESSURE.number(units, range.first().pressure()),
                                Quantity.PRESSURE.number(units, range.last().pressure())))
                        .collect(Collectors.joining(", "))
                + MapPhrase.andMore(Math.max(0, ranges.size() - RANGES));
    }

    /** What fails beyond a range, and the pressure at which that was found: between the two it was not tried. */
    private String tried(Optional<WindowMap.MapCell> cell, boolean duties) {
        String limit = beyond(cell, duties);
        return cell.map(one -> MapPhrase.foundAt(limit, Quantity.PRESSURE.number(units, one.pressure())))
                .orElse(limit);
    }

    private static String beyond(Optional<WindowMap.MapCell> cell, boolean duties) {
        return cell.map(one ->
                        one.least().map(least -> limit(least.key(), duties)).orElse(MapRecord.NOT_KNOWN))
                .orElse(MapPhrase.NOT_TRIED);
    }

    private static String limit(Judgement.Key key, boolean duties) {
        return (duties ? LimitPhrase.brief(key.kind(), key.duty()) : LimitPhrase.label(key.kind()))
                + (Assumed.limit(key.kind()) ? MapPhrase.ASSUMED_MARK : "");
    }
}
