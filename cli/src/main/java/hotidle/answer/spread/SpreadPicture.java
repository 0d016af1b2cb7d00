package hotidle.answer.spread;

import hotidle.answer.phrase.SpreadPhrase;
import hotidle.answer.phrase.SpreadPicturePhrase;
import hotidle.plots.Chart;
import hotidle.plots.Picture;
import hotidle.plots.RowLook;
import hotidle.plots.RowsChart;
import hotidle.study.spread.MarginTally;
import hotidle.study.spread.SpreadFindings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** In what share of the drawn units limits hold, and which fits settle the doubt. */
record SpreadPicture(SpreadAnswer answer) {

    /** Limits, and fits, that are shown at most (chosen). */
    private static final int MOST = 12;

    private static final double WHOLE = 100;

    /** The picture; empty where nothing is known. */
    Optional<Picture> picture() {
        if (answer.tally().margins().isEmpty()) {
            return Optional.empty();
        }
        List<Chart> charts = new ArrayList<>(List.of(limits()));
        if (!answer.findings().worth().isEmpty()) {
            charts.add(worth());
        }
        return Optional.of(new Picture(charts, Picture.WIDTH, charts.size() * RowsChart.height(MOST)));
    }

    private RowsChart limits() {
        List<MarginTally> doubtful = answer.findings().doubtful();
        List<MarginTally> shown = doubtful.isEmpty() ? answer.findings().sure() : doubtful;
        String circuit = answer.question().build().unit().circuit();
        Map<RowLook, String> key = new LinkedHashMap<>();
        key.put(RowLook.HOLDS, SpreadPicturePhrase.HOLDS);
        key.put(RowLook.OPEN, SpreadPicturePhrase.OPEN);
        key.put(RowLook.FAILS, SpreadPicturePhrase.FAILS);
        return new RowsChart(
                SpreadPicturePhrase.title(
                        answer.question().build().unit().build(),
                        SpreadRows.share(answer.tally().allHold()),
                        answer.tally().drawn()),
                doubtful.isEmpty()
                        ? SpreadPicturePhrase.sure(circuit, answer.question().duties())
                        : SpreadPicturePhrase.subtitle(
                                circuit, answer.question().duties()),
                SpreadPicturePhrase.UNITS_ACROSS,
                0,
                WHOLE,
                shown.stream().limit(MOST).map(SpreadPicture::row).toList(),
                Optional.empty(),
                key,
                SpreadPicturePhrase.INTERVAL);
    }

    private static RowsChart.ChartRow row(MarginTally margin) {
        double holds = WHOLE * margin.holding().value();
        double known = WHOLE - WHOLE * margin.failing().value();
        return new RowsChart.ChartRow(
                SpreadRows.limit(margin),
                List.of(
                        new RowsChart.RowPiece(RowLook.HOLDS, 0, holds),
                        new RowsChart.RowPiece(RowLook.OPEN, holds, known),
                        new RowsChart.RowPiece(RowLook.FAILS, known, WHOLE)),
                Optional.of(new RowsChart.RowMark(
                        holds,
                        WHOLE * margin.holding().low(),
                        WHOLE * margin.holding().high())),
                SpreadRows.share(margin.holding()));
    }

    private RowsChart worth() {
        return new RowsChart(
                answer.findings()
                        .best()
                        .map(best ->
                                SpreadPicturePhrase.worth(best.size().size().name()))
                        .orElse(SpreadPicturePhrase.NO_WORTH),
                "",
                SpreadPicturePhrase.WORTH_ACROSS,
                0,
                WHOLE,
                answer.findings().worth().stream()
                        .limit(MOST)
                        .map(SpreadPicture::row)
                        .toList(),
                Optional.empty(),
                Map.of(),
                SpreadPicturePhrase.SETTLES);
    }

    private static RowsChart.ChartRow row(SpreadFindings.Worth worth) {
        double settles = WHOLE * Math.max(worth.settles(), 0);
        return new RowsChart.ChartRow(
                worth.size().size().name(),
                List.of(new RowsChart.RowPiece(RowLook.FULL, 0, settles)),
                Optional.of(new RowsChart.RowMark(
                        settles, settles - WHOLE * worth.error(), settles + WHOLE * worth.error())),
                SpreadPhrase.variance(worth.settles(), worth.error()));
    }
}
