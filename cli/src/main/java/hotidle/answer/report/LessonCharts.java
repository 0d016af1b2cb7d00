package hotidle.answer.report;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.page.Figure;
import hotidle.answer.phrase.LessonPhrase;
import hotidle.answer.sweep.TapCurves;
import hotidle.plots.FigureChart;
import hotidle.plots.FigureCurve;
import hotidle.plots.Picture;
import hotidle.plots.PressureCurve;
import hotidle.study.SpeedSweep;
import hotidle.study.TellingReading;
import hotidle.transmission.Tap;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * What gauges read of some units that are called by letters.
 *
 * @param range  number of the range among those that are shown
 * @param sweeps a unit each in that range, in the order of the letters
 */
record LessonCharts(Quantity.UnitSystem units, int range, List<SpeedSweep> sweeps) {

    private static final int WIDTH = 700;
    private static final int HEIGHT = 360;

    /** Curves are shown up to the speed from which they lie closer to each other than this share of where they lie furthest (chosen). */
    private static final double NEAR = 0.4;

    /** So many speeds at least are shown, and behind the last of them so many more (chosen). */
    private static final int LEAST_SPEEDS = 10;

    private static final int BEHIND = 2;

    /** Room above and below the curves as a share of their height (chosen). */
    private static final double ROOM = 0.15;

    /** An axis begins at zero all the same where that takes no more than this share of it (chosen). */
    private static final double FROM_ZERO = 0.35;

    /** Ends of an upright axis lie on whole steps of so many to its height (chosen). */
    private static final double STEPS = 8;

    /** Curves that lie on one level are taken to be so high, in the unit shown, that an axis has steps (chosen). */
    private static final double FLAT = 1e-3;

    /** Gauges that read something in some unit. */
    List<Tap> taps() {
        return read().taps();
    }

    /** Those that tell two of the units apart; of one unit alone all. */
    List<Tap> telling() {
        return taps().stream().filter(this::tells).toList();
    }

    /** An earlier gauge of those that tell which reads the same in each unit, so that its picture would be the same; empty without one. */
    Optional<Tap> sameAs(Tap tap) {
        return telling().stream()
                .takeWhile(other -> !other.equals(tap))
                .filter(other -> IntStream.range(0, sweeps.size()).allMatch(unit -> same(unit, tap, other)))
                .findFirst();
    }

    private boolean same(int unit, Tap tap, Tap other) {
        return sweeps.get(unit).shown().stream()
                .flatMap(found -> found.state().stream())
                .noneMatch(state -> new TellingReading(
                                tap,
                                "",
                                state.conditions().speed(),
                                state.pressure(tap.node()),
                                state.pressure(other.node()))
                        .seen());
    }

    private boolean tells(Tap tap) {
        return sweeps.size() == 1
                || IntStream.range(0, speeds()).anyMatch(i -> {
                    DoubleSummaryStatistics at = at(tap, i);
                    return at.getCount() > 0 && reading(tap, i, at).seen();
                });
    }

    /** The least and the most that units read. */
    private TellingReading reading(Tap tap, int i, DoubleSummaryStatistics at) {
        SpeedSweep first = sweeps.get(0);
        return new TellingReading(
                tap, first.duty().range(), first.shown().get(i).conditions().speed(), at.getMin(), at.getMax());
    }

    /** How far units stand apart at a gauge where they do so most, as a share of the greatest reading there [-]. */
    double widest(Tap tap) {
        return IntStream.range(0, speeds())
                .mapToDouble(i -> spread(tap, i) / Math.max(at(tap, i).getMax(), TellingReading.APART))
                .max()
                .orElse(0);
    }

    private int speeds() {
        return sweeps.get(0).shown().size();
    }

    /** What the units read [Pa] that have a state there. */
    private DoubleSummaryStatistics at(Tap tap, int speed) {
        return sweeps.stream()
                .flatMap(sweep -> sweep.shown().get(speed).state().stream())
                .mapToDouble(state -> state.pressure(tap.node()))
                .summaryStatistics();
    }

    private double spread(Tap tap, int speed) {
        DoubleSummaryStatistics at = at(tap, speed);
        return at.getCount() == 0 ? 0 : at.getMax() - at.getMin();
    }

    private TapCurves read() {
        return new TapCurves(units, sweeps);
    }

    /** The units over speed, as far as they differ, on an axis of the pressures that occur. */
    Figure figure(Tap tap) {
        SpeedSweep first = sweeps.get(0);
        int last = lastSpeed(tap);
        List<FigureCurve> curves = new ArrayList<>();
        for (int i = 0; i < sweeps.size(); i++) {
            FigureCurve whole = read().curve(LessonPhrase.unit(i), sweeps.get(i), tap, LessonPhrase.NOT_KNOWN);
            curves.add(new FigureCurve(
                    whole.build(), whole.points().subList(0, last + 1), whole.mark(), whole.unloads(), whole.gap()));
        }
        double low = low(curves);
        FigureChart chart = new FigureChart(
                LessonPhrase.chart(
                        tap.name(),
                        units,
                        first.duty().range(),
                        first.duty().temperatures().get("sump")),
                "",
                low > 0 ? LessonPhrase.axisFrom(units, low) : LessonPhrase.axis(units),
                Optional.empty(),
                Optional.empty(),
                curves);
        return new Figure(
                new String(
                        new Picture(List.of(low > 0 ? chart.from(low) : chart), WIDTH, HEIGHT)
                                .svg("gauge" + range + "-" + tap.name() + "-"),
                        StandardCharsets.UTF_8),
                last < speeds() - 1 ? LessonPhrase.CHART_CUT : LessonPhrase.CHART,
                false);
    }

    private int lastSpeed(Tap tap) {
        double most = IntStream.range(0, speeds())
                .mapToDouble(i -> spread(tap, i))
                .max()
                .orElse(0);
        int last = IntStream.range(0, speeds())
                .filter(i -> spread(tap, i) >= NEAR * most)
                .max()
                .orElse(speeds() - 1);
        return Math.min(speeds() - 1, Math.max(last + BEHIND, LEAST_SPEEDS));
    }

    /** Where the upright axis begins, in the unit shown. */
    private static double low(List<FigureCurve> curves) {
        DoubleSummaryStatistics all = curves.stream()
                .flatMapToDouble(curve -> curve.points().stream().mapToDouble(PressureCurve.SweepPoint::pressure))
                .filter(Double::isFinite)
                .summaryStatistics();
        double height = all.getMax() - all.getMin();
        double step = Math.pow(10, Math.floor(Math.log10(Math.max(height, FLAT) / STEPS * 10)));
        double low = step * Math.floor((all.getMin() - ROOM * height) / step);
        return low < FROM_ZERO * all.getMax() ? 0 : low;
    }

    /** The gauges at which all units read alike, with what they read. */
    List<String> alike() {
        List<Tap> telling = telling();
        return taps().stream()
                .filter(tap -> !telling.contains(tap))
                .map(this::between)
                .toList();
    }

    private String between(Tap tap) {
        DoubleSummaryStatistics all = IntStream.range(0, speeds())
                .mapToObj(i -> at(tap, i))
                .filter(at -> at.getCount() > 0)
                .flatMapToDouble(at -> DoubleStream.of(at.getMin(), at.getMax()))
                .summaryStatistics();
        return LessonPhrase.between(
                tap.name(),
                Quantity.PRESSURE.number(units, all.getMin()),
                Quantity.PRESSURE.number(units, all.getMax()),
                Quantity.PRESSURE.in(units).unit());
    }

    /** What a unit reads at a gauge and the number of a speed. */
    String reading(int unit, Tap tap, int speed) {
        return sweeps.get(unit)
                .shown()
                .get(speed)
                .state()
                .map(state -> Quantity.PRESSURE.number(units, state.pressure(tap.node())))
                .orElse(LessonPhrase.NOT_KNOWN);
    }

    /** Gauges that tell and speeds down, units across. */
    TextTable readings() {
        List<String> head = new ArrayList<>(List.of(LessonPhrase.GAUGE, LessonPhrase.RPM));
        for (int i = 0; i < sweeps.size(); i++) {
            head.add(LessonPhrase.unit(i));
        }
        TextTable table = new TextTable(head);
        for (Tap tap : telling()) {
            for (int at : LessonAnswer.rows(speeds())) {
                List<String> cells = new ArrayList<>(List.of(
                        tap.name(),
                        Quantity.SPEED.number(
                                units,
                                sweeps.get(0).shown().get(at).conditions().speed())));
                IntStream.range(0, sweeps.size()).forEach(unit -> cells.add(reading(unit, tap, at)));
                table.add(cells);
            }
        }
        return table;
    }
}
