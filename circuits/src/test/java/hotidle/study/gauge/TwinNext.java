package hotidle.study.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/**
 * How many causes are left after further readings, over twins of which those before left three or more.
 *
 * <pre>
 * Standard error  of a ratio R = Σa/Σb over n twins: √(n/(n − 1)·Σ(a − R·b)²)/Σb; W. G. Cochran, Sampling Techniques, 3rd ed. (1977)
 *                 ch. 6 (from memory). Of 27 twins that of three readings over all is 0.12
 * </pre>
 */
final class TwinNext {

    private final List<Double> best = new ArrayList<>();
    private final List<Double> chance = new ArrayList<>();
    private final List<Double> three = new ArrayList<>();
    private final List<Double> all = new ArrayList<>();
    private double before;

    /** Twins of which no reading was worth proposing. */
    int kept;

    int size() {
        return best.size();
    }

    /**
     * Counts a twin.
     *
     * @param proposed after one, two and three readings; the last of them stands for those that were not worth taking
     * @param told     how causes are counted
     */
    String add(
            GaugeFindings first,
            GaugeFindings random,
            List<GaugeFindings> proposed,
            GaugeFindings whole,
            ToIntFunction<GaugeFindings> told) {
        int own = told.applyAsInt(first);
        int one = told.applyAsInt(proposed.get(0));
        int other = told.applyAsInt(random);
        int last = told.applyAsInt(proposed.get(proposed.size() - 1));
        int every = told.applyAsInt(whole);
        best.add((double) one / own);
        chance.add((double) other / own);
        before += own;
        three.add((double) last);
        all.add((double) every);
        return String.format(
                Locale.ROOT,
                "%d causes, %d after one, %d at random, %d after three, %d after all",
                own,
                one,
                other,
                last,
                every);
    }

    private static double mean(List<Double> shares) {
        return shares.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    }

    /** One sum over another, with its standard error. */
    static String ratio(List<Double> over, List<Double> under) {
        int n = over.size();
        double ratio = mean(over) / mean(under);
        double square = IntStream.range(0, n)
                .mapToDouble(i -> over.get(i) - ratio * under.get(i))
                .map(off -> off * off)
                .sum();
        double error = Math.sqrt(square * n / (n - 1)) / (n * mean(under));
        return String.format(Locale.ROOT, "%.3f ± %.3f", ratio, error);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%d groups of %.2f on average: left after the proposed reading %.3f of the causes, after one at random %.3f, ratio %s;"
                        + " %.2f causes after three, %.2f after all, ratio %s; for %d none was worth proposing",
                size(),
                before / size(),
                mean(best),
                mean(chance),
                ratio(best, chance),
                mean(three),
                mean(all),
                ratio(three, all),
                kept);
    }
}
