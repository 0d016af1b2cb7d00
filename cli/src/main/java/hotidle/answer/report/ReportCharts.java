package hotidle.answer.report;

import hotidle.answer.page.Figure;
import hotidle.answer.phrase.ReportPhrase;
import hotidle.answer.sweep.SweepCharts;
import hotidle.plots.Chart;
import hotidle.plots.Picture;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The charts of a report, each by itself and as wide as a sheet of paper between its margins. */
record ReportCharts(SweepCharts charts) {

    /** At 96 px to the inch as wide as A4 and Letter without their margins [px]. */
    private static final int WIDTH = 700;

    private static final int HEIGHT = 470;

    /** More charts of oil say nothing new (chosen). */
    private static final int MOST_OIL = 4;

    Figure pressure() {
        return figure(charts.pressure(), "pressure", ReportPhrase.PRESSURE_CHART);
    }

    /** The low speeds of the same; at most one. */
    List<Figure> lowPressure() {
        return charts.lowPressure().stream()
                .map(chart -> figure(chart, "low", ReportPhrase.LOW_PRESSURE_CHART))
                .toList();
    }

    List<Figure> oil() {
        List<Figure> figures = new ArrayList<>();
        charts.oil().stream()
                .limit(MOST_OIL)
                .forEach(one -> figures.add(figure(one, "oil" + figures.size(), ReportPhrase.OIL_CHART)));
        return figures;
    }

    /** The hub's film and load; none without a film. */
    List<Figure> hub() {
        List<Figure> figures = new ArrayList<>();
        List<String> captions = List.of(ReportPhrase.FILM_CHART, ReportPhrase.LOAD_CHART);
        List<Chart> hub = charts.hub();
        for (int i = 0; i < hub.size(); i++) {
            figures.add(figure(hub.get(i), "hub" + i, captions.get(i)));
        }
        return figures;
    }

    private static Figure figure(Chart chart, String own, String caption) {
        Picture picture = new Picture(List.of(chart), WIDTH, HEIGHT);
        return new Figure(new String(picture.svg(own + "-"), StandardCharsets.UTF_8), caption, false);
    }
}
