package hotidle.answer.spread;

import hotidle.answer.LimitRecord;
import hotidle.study.spread.CountedShare;
import hotidle.study.spread.MarginTally;
import hotidle.study.spread.SizePrior;
import hotidle.study.spread.SobolSums;
import hotidle.study.spread.SpreadFindings;
import hotidle.study.spread.SpreadTally;
import java.util.List;
import java.util.Optional;

/** How often limits hold with what nobody measured drawn, as JSON. */
record SpreadRecord(
        String circuit,
        String build,
        List<String> duties,
        long unitsDrawn,
        long impossible,
        long unsolved,
        long pairs,
        long seed,
        long statesSolved,
        ShareRecord allHold,
        ShareRecord anyFails,
        Optional<String> mostWorthMeasuring,
        List<SizeRecord> sizes,
        List<MarginRecord> margins) {

    /** A share with its 95 % interval. */
    record ShareRecord(double share, double low, double high) {}

    /** A size that is drawn, in the unit told; what measuring it settles, null where no gauge reads it or nothing is in doubt. */
    record SizeRecord(
            String size,
            String sizeUnit,
            String drawnAs,
            double inUse,
            double low,
            double median,
            double high,
            Optional<Double> settles,
            Optional<Double> settlesError) {}

    record MarginRecord(
            LimitRecord limit,
            ShareRecord holds,
            ShareRecord fails,
            ShareRecord notKnown,
            double meanHeadroom,
            double headroomDeviation,
            List<DriverRecord> drivers) {}

    /** Shares of the headroom's variance with their standard errors. */
    record DriverRecord(String size, double alone, double aloneError, double withOthers, double withOthersError) {}

    static SpreadRecord of(SpreadAnswer answer) {
        SpreadTally tally = answer.tally();
        SpreadFindings findings = answer.findings();
        return new SpreadRecord(
                answer.question().build().unit().circuit(),
                answer.question().build().unit().build(),
                answer.question().duties(),
                tally.drawn(),
                tally.impossible(),
                tally.unsolved(),
                tally.rows(),
                answer.question().seed(),
                tally.solves(),
                share(tally.allHold()),
                share(tally.anyFails()),
                findings.best().map(best -> best.size().size().name()),
                findings.sizes().stream().map(size -> size(findings, size)).toList(),
                tally.margins().stream().map(margin -> margin(findings, margin)).toList());
    }

    private static ShareRecord share(CountedShare share) {
        return new ShareRecord(share.value(), share.low(), share.high());
    }

    private static SizeRecord size(SpreadFindings findings, SizePrior prior) {
        Optional<SpreadFindings.Worth> worth = findings.worth().stream()
                .filter(one -> one.size().equals(prior))
                .findFirst();
        return new SizeRecord(
                prior.size().name(),
                prior.size().scores() ? "m2" : "m",
                prior.basis().word(),
                prior.size().value(),
                prior.quantile(SpreadRows.LOW),
                prior.quantile(0.5),
                prior.quantile(SpreadRows.HIGH),
                worth.map(SpreadFindings.Worth::settles),
                worth.map(SpreadFindings.Worth::error));
    }

    private static MarginRecord margin(SpreadFindings findings, MarginTally margin) {
        return new MarginRecord(
                LimitRecord.of(margin.key()),
                share(margin.holding()),
                share(margin.failing()),
                share(margin.notKnown()),
                margin.headroom().mean(),
                Math.sqrt(margin.headroom().variance()),
                findings.drivers(margin).stream().map(SpreadRecord::driver).toList());
    }

    private static DriverRecord driver(SpreadFindings.Driver driver) {
        SobolSums.VarianceShare first = driver.first();
        SobolSums.VarianceShare total = driver.total();
        return new DriverRecord(
                driver.size().size().name(), first.value(), first.error(), total.value(), total.error());
    }
}
