package hotidle.answer.report;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.page.Figure;
import hotidle.answer.phrase.LessonPhrase;
import hotidle.answer.sweep.TapCurves;
import hotidle.plots.FigureChart;
import hotidle.plots.FigureCurve;
import hotidle.plots.Picture;
import hotidle.study.SpeedSweep;
import hotidle.transmission.Tap;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What gauges read of some units that are called by letters.
 *
 * @param range  number of the range among those that are shown
 * @param sweeps a unit each in that range, in the order of the letters
 */
record LessonCharts(Quantity.UnitSystem units, int range, List<SpeedSweep> sweeps) {

    private static final int WIDTH = 700;
    private static final int HEIGHT = 360;

    /** More charts do not fit on two pages (chosen). */
    private static final int MOST = 4;

    /** Gauges that read something in some unit. */
    List<Tap> taps() {
        return read().taps();
    }

    private TapCurves read() {
        return new TapCurves(units, sweeps);
    }

    List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        for (Tap tap : taps().stream().limit(MOST).toList()) {
            SpeedSweep first = sweeps.get(0);
            List<FigureCurve> curves = new ArrayList<>();
            for (int i = 0; i < sweeps.size(); i++) {
                curves.add(read().curve(LessonPhrase.unit(i), sweeps.get(i), tap, LessonPhrase.NOT_KNOWN));
            }
            FigureChart chart = new FigureChart(
                    LessonPhrase.chart(
                            tap.name(),
                            units,
                            first.duty().range(),
                            first.duty().temperatures().get("sump")),
                    "",
                    LessonPhrase.axis(units),
                    Optional.empty(),
                    Optional.empty(),
                    curves);
            figures.add(new Figure(
                    new String(
                            new Picture(List.of(chart), WIDTH, HEIGHT)
                                    .svg("gauge" + range + "-" + figures.size() + "-"),
                            StandardCharsets.UTF_8),
                    LessonPhrase.CHART,
                    false));
        }
        return figures;
    }

    /** Gauges and speeds down, units across. */
    TextTable readings() {
        List<String> head = new ArrayList<>(List.of(LessonPhrase.GAUGE, LessonPhrase.RPM));
        for (int i = 0; i < sweeps.size(); i++) {
            head.add(LessonPhrase.unit(i));
        }
        TextTable table = new TextTable(head);
        for (Tap tap : taps()) {
            for (int at : LessonAnswer.rows(sweeps.get(0).shown().size())) {
                List<String> cells = new ArrayList<>(List.of(
                        tap.name(),
                        Quantity.SPEED.number(
                                units,
                                sweeps.get(0).shown().get(at).conditions().speed())));
                sweeps.forEach(sweep -> cells.add(sweep.shown()
                        .get(at)
                        .state()
                        .map(state -> Quantity.PRESSURE.number(units, state.pressure(tap.node())))
                        .orElse(LessonPhrase.NOT_KNOWN)));
                table.add(cells);
            }
        }
        return table;
    }
}
