package hotidle.answer.sensitivity;

import hotidle.answer.format.Digits;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.phrase.LimitPhrase;
import hotidle.answer.phrase.SensitivityPhrase;
import hotidle.study.Judgement;
import hotidle.study.Sensitivity;
import hotidle.transmission.WearSize;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * The slopes of a build as rows, in the step that a shop measures.
 *
 * @param units of the user
 * @param found slopes
 */
record Ranked(Quantity.UnitSystem units, Sensitivity found) {

    /** Rows of a table (chosen). */
    private static final int ROWS = 25;

    private static final double THOUSANDTH = 25.4e-6;
    private static final double HUNDREDTH = 1e-5;
    private static final double SQUARE_INCH = 0.0254 * 0.0254;

    /** The change of a size for which effects are told [m] or [m²]. */
    private double step(WearSize size) {
        boolean shop = units == Quantity.UnitSystem.SHOP;
        if (size.kind() == WearSize.SizeKind.AREA) {
            return shop ? 1e-4 * SQUARE_INCH : 1e-7;
        }
        return shop ? THOUSANDTH : HUNDREDTH;
    }

    /** What a step does to the headroom [-]. */
    double effect(Sensitivity.Rate rate) {
        return rate.slope() * step(rate.dimension());
    }

    /** All slopes of a limit, the steepest first. */
    List<Sensitivity.Rate> of(Judgement.Key limit) {
        return found.of(limit, this::step);
    }

    /** Those that are shown. */
    List<Sensitivity.Rate> worth(List<Sensitivity.Rate> ranked) {
        return ranked.stream()
                .filter(rate -> rate.worth(step(rate.dimension())))
                .limit(ROWS)
                .toList();
    }

    TextTable shown(List<Sensitivity.Rate> rates) {
        return table(rates, Ranked::limit);
    }

    /** The same as narrow as a screen: limits without their part. */
    TextTable brief(List<Sensitivity.Rate> rates) {
        return table(rates, key -> LimitPhrase.brief(key.kind(), key.duty()));
    }

    private TextTable table(List<Sensitivity.Rate> rates, Function<Judgement.Key, String> limit) {
        TextTable table = new TextTable(List.of("size", "now", "points", "moves most", "points there"));
        for (Sensitivity.Rate rate : rates) {
            Sensitivity.Rate most = strongest(rate.dimension());
            table.add(List.of(
                    rate.dimension().name(),
                    now(rate.dimension()),
                    SensitivityPhrase.points(effect(rate), rate.oneSided()),
                    limit.apply(most.key()),
                    SensitivityPhrase.points(effect(most), most.oneSided())));
        }
        return table;
    }

    /** The limit that a size moves most, counted in headroom; one of which it is not known whether it holds only without others. */
    private Sensitivity.Rate strongest(WearSize size) {
        return found.rates().stream()
                .filter(rate -> rate.dimension().equals(size))
                .max(Comparator.comparing((Sensitivity.Rate rate) ->
                                found.margins().get(rate.key()).known())
                        .thenComparingDouble(rate -> Math.abs(rate.slope())))
                .orElseThrow();
    }

    static String limit(Judgement.Key key) {
        return LimitPhrase.at(key.kind(), key.part(), key.duty());
    }

    private String now(WearSize size) {
        if (size.kind() == WearSize.SizeKind.AREA) {
            return Quantity.AREA.with(units, size.value());
        }
        return size.value() < 1e-3 ? Quantity.FILM.with(units, size.value()) : Quantity.SIZE.with(units, size.value());
    }

    static List<String> head() {
        return List.of(
                "build", "size", "now", "unit", "limit", "part", "duty", "headroom", "change", "for", "to one side");
    }

    List<String> row(String build, Sensitivity.Rate rate) {
        WearSize size = rate.dimension();
        Quantity quantity = size.kind() == WearSize.SizeKind.AREA ? Quantity.AREA : Quantity.SIZE;
        return List.of(
                build,
                size.name(),
                Digits.four(quantity.value(units, size.value())),
                quantity.in(units).unit(),
                rate.key().kind().word(),
                rate.key().part(),
                rate.key().duty(),
                Digits.four(found.margins().get(rate.key()).headroom()),
                Digits.four(effect(rate)),
                SensitivityPhrase.step(size.kind(), units),
                rate.oneSided() ? "yes" : "no");
    }
}
