package hotidle.study.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToIntFunction;

/** How many causes are left after further readings, over twins of which those before left three or more. */
final class TwinNext {

    private final List<Double> best = new ArrayList<>();
    private final List<Double> chance = new ArrayList<>();
    private double before;
    private double three;
    private double all;

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
        three += last;
        all += every;
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

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%d groups of %.2f on average: left after the proposed reading %.3f of the causes, after one at random %.3f, ratio %.3f;"
                        + " %.2f causes after three, %.2f after all; for %d none was worth proposing",
                size(),
                before / size(),
                mean(best),
                mean(chance),
                mean(best) / mean(chance),
                three / size(),
                all / size(),
                kept);
    }
}
