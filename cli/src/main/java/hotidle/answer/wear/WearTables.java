package hotidle.answer.wear;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.LimitPhrase;
import hotidle.answer.phrase.WearLimitPhrase;
import hotidle.circuits.kind.Kinds;
import hotidle.study.Judgement;
import hotidle.study.Wear;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** The tightest fits as tables: what a gauge reads, each alone and all together. */
record WearTables(Quantity.UnitSystem units) {

    /** What a shop's gauge reads; what else goes is said under the table. */
    static List<Wear.WornFit> gauged(BuildWear one) {
        return one.findings().tightest().stream()
                .filter(fit -> Kinds.gauged(fit.dimension().key()))
                .toList();
    }

    /** What no gauge reads and takes a limit away, wrapped; empty where nothing does. */
    String notGauged(BuildWear one) {
        List<Wear.WornFit> left = one.findings().tightest().stream()
                .filter(fit -> !Kinds.gauged(fit.dimension().key()))
                .toList();
        if (left.isEmpty() || one.findings().fails().isPresent()) {
            return "";
        }
        Wear.WornFit first = left.get(0);
        return Wrap.lines(
                WearLimitPhrase.leftOut(
                        left.size(),
                        WearLimitPhrase.notGauged(
                                first.dimension().name(),
                                Quantity.FILM.with(units, first.dimension().value()),
                                Quantity.FILM.with(units, first.size().orElseThrow()),
                                brief(first.gone().get(0)))),
                "",
                "  ");
    }

    /** The fits of one build, the tightest first. */
    TextTable alone(BuildWear one, int rows) {
        return alone(one, rows, true);
    }

    /** The same, where asked without the sizes at which the first limit goes with all fits worn alike. */
    TextTable alone(BuildWear one, int rows, boolean together) {
        String size = " [" + Quantity.FIT.in(units).unit() + "]";
        // sizes from new say nothing of a build that is past them
        Optional<Double> share = !together || one.pastTogether().isPresent()
                ? Optional.empty()
                : one.wear().together().flatMap(Wear.Together::share);
        List<String> head = new ArrayList<>(List.of(
                WearLimitPhrase.TIGHTEST,
                WearLimitPhrase.AS_IT_IS + size,
                WearLimitPhrase.LEFT + " [" + Quantity.FILM.in(units).unit() + "]",
                WearLimitPhrase.GONE_AT + size));
        share.ifPresent(all -> head.add(WearLimitPhrase.TOGETHER + size));
        head.addAll(List.of(WearLimitPhrase.WRITTEN + size, WearLimitPhrase.THEN_FAILS));
        TextTable table = new TextTable(head);
        gauged(one).stream().limit(rows).forEach(fit -> {
            List<String> row = new ArrayList<>(List.of(
                    fit.dimension().name(),
                    size(fit, fit.dimension().value()),
                    fit.dimension().scores() ? left(fit) : Quantity.FILM.number(units, fit.left()),
                    size(fit, fit.size().orElseThrow())));
            share.ifPresent(all -> row.add(together(fit, all)));
            row.addAll(List.of(limit(fit), brief(fit.gone().get(0))));
            table.add(row);
        });
        return table;
    }

    /** The size of a fit where the first limit goes with all fits worn alike. */
    private String together(Wear.WornFit fit, double share) {
        double fresh = fit.dimension().fresh();
        OptionalDouble limit = fit.dimension().limit();
        return limit.isPresent() ? size(fit, fresh + share * (limit.getAsDouble() - fresh)) : "-";
    }

    /** What is left in some builds, side by side. */
    TextTable beside(List<BuildWear> some, int rows) {
        List<String> head = new ArrayList<>(List.of(WearLimitPhrase.TIGHTEST));
        some.forEach(one -> head.add(WearLimitPhrase.leftOf(one.build())));
        TextTable table = new TextTable(head);
        List<Map<String, Wear.WornFit>> fits = some.stream()
                .map(one -> gauged(one).stream()
                        .collect(Collectors.toMap(fit -> fit.dimension().name(), fit -> fit)))
                .toList();
        fits.stream()
                .flatMap(found -> found.values().stream())
                .sorted(Comparator.comparing(
                                (Wear.WornFit fit) -> fit.dimension().scores())
                        .thenComparingDouble(Wear.WornFit::left)
                        .thenComparing(fit -> fit.dimension().name()))
                .map(fit -> fit.dimension().name())
                .distinct()
                .limit(rows)
                .forEach(name -> {
                    List<String> row = new ArrayList<>(List.of(name));
                    fits.forEach(
                            found -> row.add(found.containsKey(name) ? left(found.get(name)) : WearLimitPhrase.AMPLE));
                    table.add(row);
                });
        return table;
    }

    private String left(Wear.WornFit fit) {
        Quantity quantity = fit.dimension().scores() ? Quantity.AREA : Quantity.FILM;
        return quantity.with(units, fit.left());
    }

    /** All lengths in the one unit of their column; the area of scores has its own behind it. */
    private String size(Wear.WornFit fit, double value) {
        return fit.dimension().scores() ? Quantity.AREA.with(units, value) : Quantity.FIT.number(units, value);
    }

    private String limit(Wear.WornFit fit) {
        OptionalDouble limit = fit.dimension().limit();
        return limit.isPresent() ? size(fit, limit.getAsDouble()) : "-";
    }

    /** A limit in a cell: kind and driving condition, without the part. */
    private static String brief(Judgement.Key key) {
        return LimitPhrase.brief(key.kind(), key.duty());
    }
}
