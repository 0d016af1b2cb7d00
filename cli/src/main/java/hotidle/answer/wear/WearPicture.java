package hotidle.answer.wear;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.WearLimitPhrase;
import hotidle.answer.phrase.WearPicturePhrase;
import hotidle.plots.Chart;
import hotidle.plots.Picture;
import hotidle.plots.RowLook;
import hotidle.plots.RowsChart;
import hotidle.study.Wear;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Wear of fits as bars: how far each is worn from new, its written limit, and where it takes a limit away. */
record WearPicture(Quantity.UnitSystem units, String circuit, List<BuildWear> builds) {

    /** Fits that are shown, the tightest, and builds (chosen). */
    private static final int MOST_FITS = 10;

    private static final int MOST_BUILDS = 3;

    /** The axis goes to this at least, so that the written limit is on it [%]; beyond that as far as the fits shown can wear. */
    private static final double LEAST = 130;

    private static final double ROOM = 1.08;

    /** The picture; empty where no build has a limit left that wear could take away. */
    Optional<Picture> picture() {
        List<BuildWear> shown = builds.stream()
                .filter(one -> one.findings().fails().isEmpty() && one.wear().held() > 0)
                .filter(one -> !fits(one).isEmpty())
                .limit(MOST_BUILDS)
                .toList();
        if (shown.isEmpty()) {
            return Optional.empty();
        }
        List<Chart> charts = new ArrayList<>();
        shown.forEach(one -> charts.add(chart(one)));
        int rows = shown.stream().mapToInt(one -> fits(one).size()).max().orElse(0);
        return Optional.of(new Picture(
                charts,
                shown.size() > 2 ? 2 * Picture.WIDTH : Picture.WIDTH,
                Math.min(shown.size(), 2) * RowsChart.height(rows)));
    }

    /** Those that take a limit away, the tightest first, then the others. */
    private static List<Wear.WornFit> fits(BuildWear one) {
        return Stream.concat(
                        one.findings().tightest().stream(),
                        one.wear().fits().stream().filter(fit -> fit.size().isEmpty()))
                .limit(MOST_FITS)
                .toList();
    }

    private RowsChart chart(BuildWear one) {
        List<Wear.WornFit> fits = fits(one);
        List<Wear.WornFit> tightest = one.findings().tightest();
        WearPicturePhrase phrase = new WearPicturePhrase(units);
        String title = tightest.isEmpty()
                ? WearPicturePhrase.none(one.build())
                : WearPicturePhrase.title(
                        one.build(),
                        tightest.get(0).dimension().name(),
                        phrase.left(
                                tightest.get(0).left(),
                                tightest.get(0).dimension().scores()),
                        one.findings().tooLoose().size(),
                        one.findings().written());
        return new RowsChart(
                title,
                WearPicturePhrase.subtitle(circuit),
                WearPicturePhrase.ACROSS,
                0,
                high(fits),
                fits.stream().map(fit -> row(phrase, fit)).toList(),
                Optional.of(new RowsChart.LinePlace(100, WearPicturePhrase.LIMIT)),
                key(!tightest.isEmpty()),
                tightest.isEmpty() ? "" : WearPicturePhrase.GONE);
    }

    /** What is worn, and from there on what is left. */
    private static List<RowsChart.RowPiece> bar(WearSize size, Optional<Double> gone) {
        List<RowsChart.RowPiece> bar = new ArrayList<>();
        double now = worn(size, size.value());
        bar.add(new RowsChart.RowPiece(RowLook.FULL, 0, now));
        gone.ifPresent(end -> bar.add(new RowsChart.RowPiece(RowLook.HOLDS, Math.max(now, 0), worn(size, end))));
        return bar;
    }

    private static Map<RowLook, String> key(boolean left) {
        Map<RowLook, String> key = new LinkedHashMap<>(Map.of(RowLook.FULL, WearPicturePhrase.WORN));
        if (left) {
            key.put(RowLook.HOLDS, WearPicturePhrase.LEFT);
        }
        return key;
    }

    private static double high(List<Wear.WornFit> fits) {
        double most = fits.stream()
                .flatMap(fit -> Stream.of(
                        worn(fit.dimension(), fit.dimension().value()),
                        fit.size().map(gone -> worn(fit.dimension(), gone)).orElse(0.0)))
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(0);
        return Math.max(LEAST, ROOM * most);
    }

    /** Of a size, from new to the limit [%]. */
    private static double worn(WearSize size, double value) {
        return 100 * (value - size.fresh()) / size.allowance();
    }

    private static RowsChart.ChartRow row(WearPicturePhrase phrase, Wear.WornFit fit) {
        WearSize size = fit.dimension();
        return new RowsChart.ChartRow(
                size.limit().isPresent() ? size.name() : WearPicturePhrase.noLimit(size.name()),
                bar(size, fit.size()),
                fit.size().map(gone -> worn(size, gone)).map(gone -> new RowsChart.RowMark(gone, gone, gone)),
                fit.size().isPresent() ? phrase.leftBeside(fit.left(), size.scores()) : WearLimitPhrase.AMPLE);
    }
}
