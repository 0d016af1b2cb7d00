package hotidle.answer.sweep;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.ChartPhrase;
import hotidle.answer.phrase.LessonPhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.plots.Chart;
import hotidle.plots.FigureChart;
import hotidle.plots.FigureCurve;
import hotidle.plots.Picture;
import hotidle.plots.PressureCurve;
import hotidle.study.SpeedSweep;
import hotidle.study.gauge.GaugeReading;
import hotidle.transmission.Tap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The picture of what gauges read of some swept units, a chart a port. */
final class TapPicture {

    /** More charts are too small to read (chosen). */
    static final int MOST_TAPS = 6;

    private TapPicture() {}

    /** The picture; empty where no gauge port reads anything. */
    static Optional<Picture> of(
            DescribedCircuit circuit, List<SpeedSweep> all, Quantity.UnitSystem units, List<GaugeReading> readings) {
        List<SpeedSweep> sweeps = all.stream().limit(FigureChart.MOST_CURVES).toList();
        TapCurves curves = new TapCurves(units, sweeps);
        List<Chart> charts = new ArrayList<>();
        curves.taps().stream()
                .limit(MOST_TAPS)
                .forEach(tap -> charts.add(chart(circuit, curves, tap, new ReadPoints(units, readings))));
        return charts.isEmpty() ? Optional.empty() : Optional.of(new Picture(charts));
    }

    private static Chart chart(DescribedCircuit circuit, TapCurves of, Tap tap, ReadPoints read) {
        List<FigureCurve> curves = of.sweeps().stream()
                .map(sweep ->
                        of.curve(SweepPicture.name(of.sweeps(), sweep, of.units()), sweep, tap, LessonPhrase.NOT_KNOWN))
                .toList();
        List<PressureCurve.SweepPoint> first = curves.get(0).points();
        return new FigureChart(
                title(of.units(), tap, curves),
                tap.equals(of.taps().get(0)) ? SweepPicture.subtitle(circuit, of.sweeps(), of.units()) : "",
                LessonPhrase.axis(of.units()),
                Optional.empty(),
                Optional.empty(),
                curves,
                read.of(
                        tap.node(),
                        first.get(0).speed(),
                        first.get(first.size() - 1).speed()));
    }

    /** Where two units read furthest apart; of one alone, its ends. */
    private static String title(Quantity.UnitSystem units, Tap tap, List<FigureCurve> curves) {
        ChartPhrase phrase = new ChartPhrase(units);
        if (curves.size() == 1) {
            List<PressureCurve.SweepPoint> known = curves.get(0).points().stream()
                    .filter(PressureCurve.SweepPoint::solved)
                    .toList();
            return known.isEmpty()
                    ? ChartPhrase.notKnown(tap.name())
                    : phrase.tap(
                            tap.name(),
                            known.get(0).pressure(),
                            known.get(0).speed(),
                            known.get(known.size() - 1).pressure(),
                            known.get(known.size() - 1).speed());
        }
        String furthest = ChartPhrase.notKnown(tap.name());
        double most = -1;
        for (int i = 0; i < curves.get(0).points().size(); i++) {
            FigureCurve low = null;
            FigureCurve high = null;
            for (FigureCurve curve : curves) {
                if (curve.points().get(i).solved()) {
                    low = low == null || at(curve, i) < at(low, i) ? curve : low;
                    high = high == null || at(curve, i) > at(high, i) ? curve : high;
                }
            }
            if (low != null && at(high, i) - at(low, i) > most) {
                most = at(high, i) - at(low, i);
                furthest = phrase.tapsApart(
                        tap.name(),
                        low.build(),
                        high.build(),
                        most,
                        low.points().get(i).speed());
            }
        }
        return furthest;
    }

    private static double at(FigureCurve curve, int i) {
        return curve.points().get(i).pressure();
    }
}
