package hotidle.answer.wear;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.phrase.LimitPhrase;
import hotidle.study.Judgement;
import hotidle.study.Wear;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** The fits that wear, a row each. */
final class FitRows {

    private static final Quantity.UnitSystem INCHES = Quantity.UnitSystem.SHOP;
    private static final Quantity.UnitSystem MILLIMETRES = Quantity.UnitSystem.METRIC;
    private static final double THOUSANDTH = 25.4e-6;

    private FitRows() {}

    /** For readers: fits at which a limit is gone. */
    static TextTable shown(List<Wear.WornFit> fits) {
        TextTable table = new TextTable(List.of(
                "fit",
                "new mm",
                "as is mm",
                "shop limit mm",
                "gone at mm",
                "gone at in",
                "wear left thou",
                "first limit gone"));
        fits.forEach(fit -> table.add(shown(fit.dimension(), fit.size().orElseThrow(), fit.gone())));
        return table;
    }

    private static List<String> shown(WearSize size, double gone, List<Judgement.Key> limits) {
        OptionalDouble limit = size.limit();
        return List.of(
                size.name(),
                text(size, MILLIMETRES, size.fresh()),
                text(size, MILLIMETRES, size.value()),
                limit.isPresent() ? text(size, MILLIMETRES, limit.getAsDouble()) : "-",
                text(size, MILLIMETRES, gone),
                text(size, INCHES, gone),
                size.kind() == WearSize.SizeKind.AREA
                        ? "-"
                        : String.format(Locale.ROOT, "%.2f", Math.abs(gone - size.value()) / THOUSANDTH),
                listed(limits.get(0)));
    }

    static String listed(Judgement.Key key) {
        return LimitPhrase.listed(key.kind(), key.part(), key.duty());
    }

    private static String text(WearSize size, Quantity.UnitSystem units, double value) {
        return size.kind() == WearSize.SizeKind.AREA
                ? Quantity.AREA.with(units, value)
                : Quantity.SIZE.number(units, value);
    }

    /** For a spreadsheet: all fits, SI, every digit; with the build where there are several. */
    static TextTable all(List<BuildWear> builds) {
        boolean many = builds.size() > 1;
        List<String> head = new ArrayList<>(many ? List.of("build") : List.of());
        head.addAll(List.of(
                "fit", "new m", "as is m", "shop limit m", "gone at m", "first limit gone", "duty", "searched to m"));
        TextTable table = new TextTable(head);
        builds.forEach(one -> one.wear().fits().forEach(fit -> {
            List<String> row = new ArrayList<>(many ? List.of(one.build()) : List.of());
            row.addAll(row(fit));
            table.add(row);
        }));
        return table;
    }

    private static List<String> row(Wear.WornFit fit) {
        WearSize size = fit.dimension();
        OptionalDouble limit = size.limit();
        boolean none = fit.gone().isEmpty();
        return List.of(
                size.name(),
                String.valueOf(size.fresh()),
                String.valueOf(size.value()),
                limit.isPresent() ? String.valueOf(limit.getAsDouble()) : "-",
                fit.size().map(String::valueOf).orElse("none"),
                none
                        ? "-"
                        : fit.gone().get(0).kind().word() + " "
                                + fit.gone().get(0).part(),
                none ? "-" : fit.gone().get(0).duty(),
                String.valueOf(fit.searched()));
    }
}
