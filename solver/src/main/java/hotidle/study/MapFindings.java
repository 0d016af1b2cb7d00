package hotidle.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a map comes to: at each size the set pressures tried at which every limit holds, and how many points fail and where.
 *
 * @param rows     one for each size, rising
 * @param points   how many there are
 * @param holding  at how many every limit that is known holds
 * @param notKnown at how many nothing is known
 * @param failing  points that fail, counted by the driving condition that is worst there, the most first
 * @param best     the point with the most headroom of those that hold; empty where none does
 */
public record MapFindings(
        List<SizeRow> rows,
        int points,
        int holding,
        int notKnown,
        Map<String, Integer> failing,
        Optional<WindowMap.MapCell> best) {

    /**
     * One size.
     *
     * @param value  as the axis counts it
     * @param ranges set pressures without a gap at which every limit holds, rising; none where it holds nowhere
     * @param best   the point with the most headroom, whether it holds or not; empty where nothing is known
     */
    public record SizeRow(double value, List<PressureSpan> ranges, Optional<WindowMap.MapCell> best) {}

    /**
     * Neighbouring points that hold.
     *
     * @param first with the lowest set pressure
     * @param last  with the highest
     * @param below the point before that does not hold or is not known; empty where it was not tried
     * @param above the point after
     */
    public record PressureSpan(
            WindowMap.MapCell first,
            WindowMap.MapCell last,
            Optional<WindowMap.MapCell> below,
            Optional<WindowMap.MapCell> above) {}

    /** Reads a map. */
    static MapFindings of(WindowMap map) {
        List<WindowMap.MapCell> all = map.cells().stream().flatMap(List::stream).toList();
        Map<String, Integer> failing = new LinkedHashMap<>();
        all.stream()
                .filter(WindowMap.MapCell::fails)
                .forEach(cell -> failing.merge(cell.least().orElseThrow().key().duty(), 1, Integer::sum));
        Map<String, Integer> sorted = new LinkedHashMap<>();
        failing.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                .forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
        return new MapFindings(
                Stream.iterate(0, i -> i < map.values().size(), i -> i + 1)
                        .map(i -> new SizeRow(
                                map.values().get(i), ranges(map.cells().get(i)), best(map.cells().get(i).stream())))
                        .toList(),
                all.size(),
                (int) all.stream().filter(WindowMap.MapCell::holds).count(),
                (int) all.stream().filter(cell -> cell.least().isEmpty()).count(),
                sorted,
                best(all.stream().filter(WindowMap.MapCell::holds)));
    }

    private static Optional<WindowMap.MapCell> best(Stream<WindowMap.MapCell> cells) {
        return cells.filter(cell -> cell.least().isPresent())
                .max(Comparator.comparingDouble(cell -> cell.headroom().getAsDouble()));
    }

    private static List<PressureSpan> ranges(List<WindowMap.MapCell> row) {
        List<PressureSpan> ranges = new ArrayList<>();
        int start = -1;
        for (int i = 0; i <= row.size(); i++) {
            boolean holds = i < row.size() && row.get(i).holds();
            if (holds && start < 0) {
                start = i;
            }
            if (!holds && start >= 0) {
                ranges.add(new PressureSpan(row.get(start), row.get(i - 1), at(row, start - 1), at(row, i)));
                start = -1;
            }
        }
        return ranges;
    }

    private static Optional<WindowMap.MapCell> at(List<WindowMap.MapCell> row, int i) {
        return i >= 0 && i < row.size() ? Optional.of(row.get(i)) : Optional.empty();
    }
}
