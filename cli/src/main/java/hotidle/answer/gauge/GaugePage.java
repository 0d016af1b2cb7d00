package hotidle.answer.gauge;

import hotidle.answer.page.Block;
import hotidle.answer.page.Figure;
import hotidle.answer.phrase.GaugePhrase;
import hotidle.answer.phrase.ReportPhrase;
import hotidle.plots.Picture;
import hotidle.plots.RowsChart;
import hotidle.study.gauge.FitsTogether;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** What gauge readings say, as a piece of a page: the sentences of the screen, readings and causes as tables, and their picture. */
public record GaugePage(GaugeAnswer answer) {

    /** Of a chart between the margins of a page [px]. */
    private static final int WIDTH = 900;

    /** The whole of it. */
    public List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.said(new GaugeScreen(answer).said()));
        GaugeRows rows = new GaugeRows(answer);
        blocks.add(Block.table(ReportPhrase.READINGS, rows.readings()));
        if (!answer.findings().agreement().agrees()) {
            blocks.add(Block.table(ReportPhrase.FAULTS, rows.causes()));
        }
        GaugePicture picture = new GaugePicture(answer);
        List<RowsChart> read = picture.read();
        for (int i = 0; i < read.size(); i++) {
            blocks.add(Block.figure(figure(read.get(i), "read" + i + "-", ReportPhrase.READINGS_CHART)));
        }
        picture.causes()
                .ifPresent(causes -> blocks.add(Block.figure(figure(causes, "causes-", ReportPhrase.CAUSES_CHART))));
        answer.fits().ifPresent(fits -> blocks.addAll(together(rows, fits)));
        blocks.add(Block.said(GaugePhrase.ASSUMED));
        return blocks;
    }

    /** Whether the readings agree, beside the verdicts on builds, which know nothing of them. */
    public Block verdict() {
        boolean agrees = answer.findings().agreement().agrees();
        List<Block.Line> lines = new ArrayList<>();
        lines.add(new Block.Line(new GaugeScreen(answer).said().get(0), agrees ? "" : Block.Line.CAUTION));
        if (!agrees) {
            lines.add(new Block.Line(ReportPhrase.OTHER_UNIT, Block.Line.CAUTION));
        }
        return new Block(lines, List.of(), List.of());
    }

    private List<Block> together(GaugeRows rows, FitsTogether fits) {
        if (!fits.settled()) {
            return List.of(Block.said(GaugePhrase.NO_FITS));
        }
        int told = fits.told().size();
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.said(
                GaugePhrase.fits(fits.chiSquare(), answer.findings().agreement().degrees())));
        if (told > 0) {
            blocks.add(Block.table(ReportPhrase.FITS, rows.fits(fits)));
        }
        blocks.add(Block.said(GaugePhrase.untold(fits.sizes().size() - told, told)));
        return blocks;
    }

    private static Figure figure(RowsChart chart, String own, String caption) {
        Picture picture =
                new Picture(List.of(chart), WIDTH, RowsChart.height(chart.rows().size()));
        return new Figure(new String(picture.svg(own), StandardCharsets.UTF_8), caption, false);
    }
}
