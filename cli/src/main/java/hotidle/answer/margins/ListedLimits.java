package hotidle.answer.margins;

import hotidle.answer.format.Quantity;
import hotidle.assess.Margin;
import hotidle.study.BuildVerdict;
import hotidle.study.JudgedBuild;
import hotidle.study.Judgement;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Which limits of a build are listed, in which order.
 *
 * @param shown names of the driving conditions whose limits are listed
 */
record ListedLimits(Quantity.UnitSystem units, JudgedBuild build, List<String> shown) {

    /** A limit at its driving condition. */
    record DutyLimit(String duty, LimitRows.LabelledMargin row) {
        Margin margin() {
            return row.margin();
        }
    }

    /** The limits of a build that are known not to hold with ease: that of the verdict, then the worst first. */
    List<DutyLimit> told() {
        return known(verdict -> verdict != Margin.Verdict.HOLDS);
    }

    /** Those that hold with ease, the least headroom first. */
    List<DutyLimit> held() {
        return known(verdict -> verdict == Margin.Verdict.HOLDS);
    }

    private List<DutyLimit> known(Predicate<Margin.Verdict> wanted) {
        BuildVerdict verdict = build.verdict();
        return limits().filter(
                        one -> one.margin().known() && wanted.test(one.margin().verdict()))
                .sorted(Comparator.comparing((DutyLimit one) -> !verdict.isFirst(one.duty(), one.margin()))
                        .thenComparing(one -> one.margin().verdict())
                        .thenComparingDouble(one -> one.margin().headroom()))
                .toList();
    }

    /** Those of which it is not known whether they hold. */
    List<Judgement.Key> undecided() {
        return build.verdict().undecided().stream()
                .filter(key -> shown.contains(key.duty()))
                .toList();
    }

    private Stream<DutyLimit> limits() {
        return build.duties().stream()
                .filter(judged -> shown.contains(judged.duty().name()))
                .flatMap(judged -> new LimitRows(units, judged)
                        .shown().stream().map(row -> new DutyLimit(judged.duty().name(), row)));
    }

    /** All that do not hold with ease or are not known. */
    List<DutyLimit> open() {
        return limits().filter(one -> one.margin().verdict() != Margin.Verdict.HOLDS)
                .sorted(Comparator.comparing(one -> one.margin().verdict()))
                .toList();
    }
}
