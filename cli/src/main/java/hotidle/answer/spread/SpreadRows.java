package hotidle.answer.spread;

import hotidle.answer.format.Digits;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.LimitPhrase;
import hotidle.answer.phrase.SpreadPhrase;
import hotidle.study.spread.CountedShare;
import hotidle.study.spread.MarginTally;
import hotidle.study.spread.SizePrior;
import hotidle.study.spread.SpreadFindings;
import hotidle.study.spread.SpreadTally;
import java.util.ArrayList;
import java.util.List;

/** Drawn units as rows. */
record SpreadRows(Quantity.UnitSystem units, SpreadFindings findings) {

    static String share(CountedShare share) {
        return SpreadPhrase.share(share.value(), share.low(), share.high());
    }

    static String limit(MarginTally margin) {
        return LimitPhrase.at(
                margin.key().kind(), margin.key().part(), margin.key().duty());
    }

    private static String listed(MarginTally margin) {
        return LimitPhrase.listed(
                margin.key().kind(), margin.key().part(), margin.key().duty());
    }

    private static String headroom(MarginTally margin) {
        return SpreadPhrase.headroom(
                margin.headroom().mean(), Math.sqrt(margin.headroom().variance()));
    }

    TextTable limits(List<MarginTally> margins) {
        boolean open = margins.stream().anyMatch(margin -> margin.unknown() > 0);
        TextTable table = new TextTable(
                open
                        ? List.of("limit", "holds", "fails", "not known", "headroom")
                        : List.of("limit", "holds", "fails", "headroom"));
        margins.forEach(margin -> {
            List<String> row =
                    new ArrayList<>(List.of(listed(margin), share(margin.holding()), share(margin.failing())));
            if (open) {
                row.add(margin.unknown() == 0 ? "-" : share(margin.notKnown()));
            }
            row.add(headroom(margin));
            table.add(row);
        });
        return table;
    }

    /** A line of the limits that hold in every unit; empty where none does. */
    String sure() {
        if (findings.sure().isEmpty()) {
            return "";
        }
        MarginTally closest = findings.sure().get(0);
        return Wrap.lines(SpreadPhrase.sure(findings.sure().size(), limit(closest), headroom(closest)), "", "  ");
    }

    /** What to measure. */
    String best(long pairs) {
        if (pairs == 0) {
            return "";
        }
        if (findings.worth().isEmpty()) {
            return SpreadPhrase.NOTHING_IN_DOUBT;
        }
        return findings.best()
                .map(best -> SpreadPhrase.best(
                        best.size().size().name(),
                        SpreadPhrase.variance(best.settles(), best.error()),
                        findings.asGood().stream()
                                .map(one -> one.size().size().name())
                                .toList()))
                .orElse(SpreadPhrase.NONE_STANDS_OUT);
    }

    TextTable drivers(MarginTally margin, int most) {
        TextTable table =
                new TextTable(List.of("size", "drawn", "5 of 100 below", "95 of 100 below", "alone", "with others"));
        findings.drivers(margin).stream()
                .limit(most)
                .forEach(driver -> table.add(List.of(
                        driver.size().size().name(),
                        driver.size().basis().word(),
                        size(driver.size(), LOW),
                        size(driver.size(), HIGH),
                        SpreadPhrase.variance(
                                driver.first().value(), driver.first().error()),
                        SpreadPhrase.variance(
                                driver.total().value(), driver.total().error()))));
        return table;
    }

    /** Ends of what is told of a size that is drawn [-]. */
    static final double LOW = 0.05;

    static final double HIGH = 0.95;

    private String size(SizePrior prior, double share) {
        double value = prior.quantile(share);
        if (prior.size().scores()) {
            return Quantity.AREA.with(units, value);
        }
        return value < SMALL ? Quantity.FILM.with(units, value) : Quantity.SIZE.with(units, value);
    }

    /** Gaps below this are told as films are (chosen) [m]. */
    private static final double SMALL = 1e-3;

    TextTable worth(int most) {
        TextTable table = new TextTable(List.of("worth measuring", "settles of the doubt"));
        findings.worth().stream()
                .limit(most)
                .forEach(one -> table.add(
                        List.of(one.size().size().name(), SpreadPhrase.variance(one.settles(), one.error()))));
        return table;
    }

    TextTable table(String build, SpreadTally tally) {
        TextTable table = new TextTable(List.of(
                "build",
                "duty",
                "limit",
                "part",
                "units",
                "holds",
                "holds at least",
                "holds at most",
                "fails",
                "not known",
                "mean headroom",
                "standard deviation"));
        tally.margins()
                .forEach(margin -> table.add(List.of(
                        build,
                        margin.key().duty(),
                        margin.key().kind().word(),
                        margin.key().part(),
                        Long.toString(margin.asked()),
                        Digits.four(margin.holding().value()),
                        Digits.four(margin.holding().low()),
                        Digits.four(margin.holding().high()),
                        Digits.four(margin.failing().value()),
                        Digits.four(margin.notKnown().value()),
                        Digits.four(margin.headroom().mean()),
                        Digits.four(Math.sqrt(margin.headroom().variance())))));
        return table;
    }
}
