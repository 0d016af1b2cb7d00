package hotidle.answer.sweep;

import hotidle.answer.Answer;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.LeftOutPhrase;
import hotidle.answer.phrase.NoStallPhrase;
import hotidle.answer.phrase.SweepPhrase;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.assess.Assessment;
import hotidle.circuits.DescribedCircuit;
import hotidle.plots.FigureChart;
import hotidle.plots.Picture;
import hotidle.plots.SpeedChart;
import hotidle.study.FrictionBands;
import hotidle.study.SpeedSweep;
import hotidle.study.gauge.GaugeReading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A circuit over engine speed, a sweep for each build and temperature asked for.
 *
 * @param described the circuit, for what its author says of it
 * @param sweeps    what was solved
 * @param bands     the friction bands of the states shown
 * @param warm      whether several temperatures were asked for
 * @param units     in which it is shown
 * @param lowAtIdle names of the builds that do not hold their line at idle
 */
public record SweepAnswer(
        DescribedCircuit described,
        List<SpeedSweep> sweeps,
        FrictionBands bands,
        boolean warm,
        Quantity.UnitSystem units,
        List<String> lowAtIdle)
        implements Answer {

    public SweepAnswer {
        sweeps = List.copyOf(sweeps);
        lowAtIdle = List.copyOf(lowAtIdle);
    }

    /** What was asked for beyond what the circuit or its oil is good for, a line each. */
    public List<String> warnings() {
        return SweepWarnings.of(sweeps);
    }

    @Override
    public String screen() {
        return new SweepsScreen(sweeps, bands, units).text(lowAtIdle);
    }

    @Override
    public String full() {
        StringBuilder text = new StringBuilder();
        sweeps.forEach(sweep -> text.append(screen(sweep)).append("\n"));
        return text.append(Caution.whole(sweeps.get(0).unit().commanded().isPresent()))
                .append("\n")
                .append(NoStallPhrase.of(lowAtIdle))
                .toString();
    }

    private String screen(SpeedSweep sweep) {
        SweepPhrase phrase = new SweepPhrase(units);
        StringBuilder text = new StringBuilder(new SweepHead(units).of(sweep));
        TextTable table = new TextTable(columns(sweep));
        rows(sweep).forEach(table::add);
        text.append(table.aligned());
        sweep.shown()
                .forEach(outcome -> outcome.unsolved()
                        .map(why -> UnsolvedPhrase.why(why.culprit(), why.residual(), why.tried()))
                        .ifPresent(why -> text.append(
                                        phrase.unsolved(outcome.conditions().speed(), why))
                                .append("\n")));
        return text.append(differences(sweep)).toString();
    }

    private String differences(SpeedSweep sweep) {
        List<SpeedSweep.Hysteresis> differences = sweep.differences();
        SweepPhrase phrase = new SweepPhrase(units);
        Stream<String> each =
                differences.stream().map(d -> phrase.difference(d.speed(), d.part(), d.rising(), d.falling()));
        Stream<String> lines = differences.isEmpty()
                ? Stream.of(SweepPhrase.AGREE)
                : Stream.concat(Stream.of(SweepPhrase.DIFFER), each);
        return String.join("", lines.map(line -> line + "\n").toList());
    }

    private List<String> columns(SpeedSweep sweep) {
        List<String> head = new ArrayList<>(List.of("rpm"));
        SweepColumns.of(sweep, bands, units).forEach(column -> head.add(column.head()));
        return head;
    }

    private List<List<String>> rows(SpeedSweep sweep) {
        List<SweepColumns.Column> columns = SweepColumns.of(sweep, bands, units);
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < sweep.shown().size(); i++) {
            Optional<Assessment> assessed = sweep.assessed().get(i);
            List<String> row = new ArrayList<>();
            row.add(Quantity.SPEED.number(
                    units, sweep.shown().get(i).conditions().speed()));
            columns.forEach(column -> row.add(assessed.map(one -> column.text().apply(one.figures(), one.state()))
                    .orElse(UnsolvedPhrase.CELL)));
            rows.add(row);
        }
        return rows;
    }

    @Override
    public TextTable table() {
        List<String> head = new ArrayList<>(List.of(
                "build", "duty", "sump " + Quantity.TEMPERATURE.in(units).unit()));
        head.addAll(columns(sweeps.get(0)));
        TextTable table = new TextTable(head);
        for (SpeedSweep sweep : sweeps) {
            for (List<String> figures : rows(sweep)) {
                List<String> row = new ArrayList<>(List.of(
                        sweep.unit().build(),
                        sweep.duty().name(),
                        Quantity.TEMPERATURE.number(units, SweepHead.sump(sweep))));
                row.addAll(figures);
                table.add(row);
            }
        }
        return table;
    }

    @Override
    public Object json() {
        return SweepRecord.of(sweeps, warm);
    }

    @Override
    public Optional<Picture> picture() {
        return Optional.of(pictureWith(List.of()));
    }

    /** The same with gauge readings of the line on it. */
    public Picture pictureWith(List<GaugeReading> readings) {
        return SweepPicture.of(described, sweeps, units, readings);
    }

    /** What the gauge ports read, with readings of them; empty where none reads anything. */
    public Optional<Picture> tapPicture(List<GaugeReading> readings) {
        return TapPicture.of(described, sweeps, units, readings);
    }

    /** What {@link #tapPicture} leaves out; empty where it shows all. */
    public String leftOutOfTapPicture() {
        return LeftOutPhrase.sweeps(FigureChart.MOST_CURVES, sweeps.size())
                + LeftOutPhrase.taps(
                        TapPicture.MOST_TAPS,
                        new TapCurves(units, sweeps).taps().size());
    }

    /** What {@link #picture} leaves out; empty where it shows all. */
    public String leftOutOfPicture() {
        return LeftOutPhrase.pressuresAndOil(
                Math.min(sweeps.size(), SpeedChart.MOST_CURVES), SweepPicture.MOST_OIL_CHARTS, sweeps.size());
    }

    /** The hub's film and load; empty where there is no film to draw. */
    public Optional<Picture> filmPicture() {
        return FilmPicture.of(described, sweeps, units);
    }

    /** What {@link #filmPicture} leaves out; empty where it shows all. */
    public String leftOutOfFilmPicture() {
        return LeftOutPhrase.sweeps(FigureChart.MOST_CURVES, sweeps.size());
    }

    @Override
    public boolean complete() {
        return sweeps.stream()
                .flatMap(sweep -> Stream.of(sweep.rising(), sweep.falling(), sweep.shown()))
                .flatMap(List::stream)
                .allMatch(outcome -> outcome.state().isPresent());
    }
}
