package hotidle.cli.live;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Times that something took [ms]. */
final class Times {

    private static final int[] EDGES = {
        20, 30, 40, 50, 60, 80, 100, 120, 160, 240, 400, 700, 1000, 2000, 5000, 1_000_000
    };

    private final List<Double> all = new ArrayList<>();

    void addAll(List<Double> more) {
        all.addAll(more);
    }

    int count() {
        return all.size();
    }

    /** How many, the middle one, what 95 of 100 stay under, the longest, and how many lie between which edges. */
    String told() {
        if (all.isEmpty()) {
            return "none";
        }
        List<Double> sorted = all.stream().sorted().toList();
        String histogram = IntStream.range(0, EDGES.length)
                .filter(i -> between(i) > 0)
                .mapToObj(i -> (i == 0 ? 0 : EDGES[i - 1]) + ".." + EDGES[i] + ": " + between(i))
                .collect(Collectors.joining(", "));
        return String.format(
                Locale.ROOT,
                "%d, median %.0f ms, 95 %% under %.0f ms, longest %.0f ms (ms: %s)",
                sorted.size(),
                sorted.get(sorted.size() / 2),
                sorted.get((int) (0.95 * sorted.size())),
                sorted.get(sorted.size() - 1),
                histogram);
    }

    private long between(int i) {
        double from = i == 0 ? 0 : EDGES[i - 1];
        return all.stream().filter(one -> one >= from && one < EDGES[i]).count();
    }
}
