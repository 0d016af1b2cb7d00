package hotidle.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Shares rounded to whole percents so that they add up: the largest remainders are rounded up, as votes are to seats. */
final class WholePercents {

    private WholePercents() {}

    /**
     * Whole numbers that add up to a whole one, each less than 1 beside its share of it.
     *
     * @param parts in any unit; some may be below zero
     * @param whole what they come to together [%]
     */
    static List<Integer> of(List<Double> parts, int whole) {
        double sum = parts.stream().mapToDouble(Double::doubleValue).sum();
        if (sum == 0) {
            return parts.stream().map(part -> 0).toList();
        }
        List<Double> exact = parts.stream().map(part -> part / sum * whole).toList();
        List<Integer> rounded = new ArrayList<>(
                exact.stream().map(share -> (int) Math.floor(share)).toList());
        int left = whole - rounded.stream().mapToInt(Integer::intValue).sum();
        IntStream.range(0, parts.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> rounded.get(i) - exact.get(i)))
                .limit(Math.max(left, 0))
                .toList()
                .forEach(i -> rounded.set(i, rounded.get(i) + 1));
        return List.copyOf(rounded);
    }
}
