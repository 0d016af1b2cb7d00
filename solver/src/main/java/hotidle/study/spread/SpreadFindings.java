package hotidle.study.spread;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What drawn units come to.
 *
 * <pre>
 * Doubt     of a margin is the variance of whether it holds, p·(1 − p); of the build the sum over its margins
 * Worth     of measuring a size: the first-order share of that variance, summed over all margins, over the doubt. It is the part of
 *           the doubt that is gone on average once the size is known: Var(E[holds | size]), A. Saltelli and others, Global
 *           Sensitivity Analysis: The Primer, 2008, §1.2.5 (from memory). Scores and nicks are left out, since no gauge reads them
 * </pre>
 *
 * @param sizes    that were drawn
 * @param doubtful margins that do not hold in every unit, the one that fails most first
 * @param sure     margins that hold in every unit, the least headroom on average first
 * @param worth    of measuring each size, the most worth first; empty where nothing is in doubt
 */
public record SpreadFindings(
        List<SizePrior> sizes, List<MarginTally> doubtful, List<MarginTally> sure, List<Worth> worth) {

    /** Sizes that are named first are those within this many standard errors of the best: which is the best cannot be told. */
    private static final double APART = 2;

    /**
     * What measuring a size is worth.
     *
     * @param size    the size
     * @param settles part of the doubt that is gone once it is known [-]
     * @param error   its standard error, at most [-]
     */
    public record Worth(SizePrior size, double settles, double error) {}

    /**
     * What a size does to a margin's headroom.
     *
     * @param size  the size
     * @param first share of the variance that goes when it alone is known
     * @param total share that stays when all others are
     */
    public record Driver(SizePrior size, SobolSums.VarianceShare first, SobolSums.VarianceShare total) {}

    public SpreadFindings {
        sizes = List.copyOf(sizes);
        doubtful = List.copyOf(doubtful);
        sure = List.copyOf(sure);
        worth = List.copyOf(worth);
    }

    /** What a run found. */
    public static SpreadFindings of(List<SizePrior> sizes, SpreadTally tally) {
        List<MarginTally> doubtful = tally.margins().stream()
                .filter(margin -> margin.holds() < margin.asked())
                .sorted(Comparator.comparingLong((MarginTally margin) -> -margin.fails())
                        .thenComparingLong(margin -> -margin.unknown()))
                .toList();
        List<MarginTally> sure = tally.margins().stream()
                .filter(margin -> margin.holds() == margin.asked())
                .sorted(Comparator.comparingDouble(margin -> margin.headroom().mean()))
                .toList();
        return new SpreadFindings(sizes, doubtful, sure, worth(sizes, tally));
    }

    private static List<Worth> worth(List<SizePrior> sizes, SpreadTally tally) {
        double doubt = tally.margins().stream()
                .mapToDouble(margin -> margin.deciders().variance())
                .filter(Double::isFinite)
                .sum();
        if (!(doubt > 0)) {
            return List.of();
        }
        List<Worth> worth = new ArrayList<>();
        for (int i = 0; i < sizes.size(); i++) {
            if (sizes.get(i).basis() == SizePrior.Basis.ASSUMED) {
                continue;
            }
            double settled = 0;
            double error = 0;
            for (MarginTally margin : tally.margins()) {
                ExactSum first = margin.deciders().first().get(i);
                if (first.count() > 1) {
                    settled += first.mean();
                    error += first.standardError();
                }
            }
            worth.add(new Worth(sizes.get(i), settled / doubt, error / doubt));
        }
        worth.sort(Comparator.comparingDouble(one -> -one.settles()));
        return worth;
    }

    /** The size most worth measuring, where one stands out of the sampling error; empty where none does. */
    public Optional<Worth> best() {
        return worth.stream().findFirst().filter(one -> one.settles() > APART * one.error());
    }

    /** Others whose worth cannot be told from the best one's. */
    public List<Worth> asGood() {
        return best().stream()
                .flatMap(best -> worth.stream()
                        .skip(1)
                        .filter(one -> one.settles() > APART * one.error()
                                && best.settles() - one.settles() < APART * Math.hypot(best.error(), one.error())))
                .toList();
    }

    /** What drives a margin, the most first; empty where nothing was drawn for it or it does not vary. */
    public List<Driver> drivers(MarginTally margin) {
        List<Driver> drivers = new ArrayList<>();
        if (!(margin.drivers().variance() > 0)) {
            return drivers;
        }
        for (int i = 0; i < sizes.size(); i++) {
            drivers.add(new Driver(
                    sizes.get(i), margin.drivers().first(i), margin.drivers().total(i)));
        }
        drivers.sort(Comparator.comparingDouble(driver -> -driver.total().value()));
        return drivers;
    }
}
