package hotidle.answer.sweep;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.HubFilmPhrase;
import hotidle.answer.phrase.MorePhrase;
import hotidle.answer.phrase.ShortOfOilPhrase;
import hotidle.answer.phrase.SweepPhrase;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.assess.Assessment;
import hotidle.study.FrictionBands;
import hotidle.study.ShownState;
import hotidle.study.SpeedSweep;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** One sweep on a first screen: what fails over speed, and as many of its speeds and columns as fit. */
record SweepScreen(SpeedSweep sweep, FrictionBands bands, Quantity.UnitSystem units) {

    /** Lines that it takes at least: head, rule, three speeds, and what is said around them. */
    static final int LEAST = 9;

    /** First and last speed, and the line that says that others are left out. */
    private static final int LEAST_ROWS = 3;

    /** What fails, and at which speeds. */
    List<String> fails() {
        SweepPhrase phrase = new SweepPhrase(units);
        List<String> lines = new ArrayList<>();
        List<Double> unsolved = sweep.shown().stream()
                .filter(outcome -> outcome.unsolved().isPresent())
                .map(outcome -> outcome.conditions().speed())
                .toList();
        if (!unsolved.isEmpty()) {
            lines.add(phrase.notKnown(unsolved));
        }
        List<Double> low = speeds(one -> one.figures().low());
        if (!low.isEmpty()) {
            lines.add(phrase.low(low));
        }
        List<Double> high = speeds(one -> one.figures().farAboveSet());
        if (!high.isEmpty()) {
            lines.add(phrase.high(high));
        }
        List<Double> starved = speeds(one -> one.figures().inletStarved());
        if (!starved.isEmpty()) {
            lines.add(phrase.inletStarved(starved));
        }
        List<Double> shortAt = speeds(one -> !one.starved().isEmpty());
        if (!shortAt.isEmpty()) {
            lines.add(ShortOfOilPhrase.speeds(units, shortAt));
        }
        List<Double> contact = sweep.contactSpeeds();
        if (!contact.isEmpty()) {
            lines.add(new HubFilmPhrase(units).contact(sweep.duty().name(), contact));
        }
        return lines;
    }

    private List<Double> speeds(Predicate<Assessment> where) {
        return Stream.concat(
                        sweep.assessed().stream(), sweep.lookedFor().stream().map(ShownState::assessed))
                .flatMap(Optional::stream)
                .filter(where)
                .map(one -> one.state().conditions().speed())
                .sorted()
                .toList();
    }

    /** The table in so many lines: all speeds, those alike in one line, or, where that is too long, speeds evenly drawn. */
    String table(int lines) {
        List<SweepColumns.Column> wide = fitting(this::gathered);
        List<AlikeSpeeds> gathered = gathered(wide);
        return head(wide, gathered) + gathered.size() <= lines
                ? table(wide, gathered).fitted(Wrap.WIDTH)
                : drawn(lines);
    }

    /** Speeds evenly drawn, first and last among them. */
    private String drawn(int lines) {
        List<ShownState> series = series();
        List<SweepColumns.Column> columns = fitting(any -> alone(series));
        int room = lines - head(columns, alone(series));
        if (room < Math.min(series.size(), LEAST_ROWS)) {
            return MorePhrase.speeds(0, series.size(), 0) + "\n";
        }
        List<ShownState> lookedFor = sweep.lookedFor();
        int rows = room - lookedFor.size();
        List<ShownState> drawn = series.size() <= rows ? series : evenly(series, rows - 1);
        return table(columns, alone(bySpeed(drawn))).fitted(Wrap.WIDTH)
                + (drawn.size() < series.size()
                        ? MorePhrase.speeds(drawn.size(), series.size(), lookedFor.size()) + "\n"
                        : "");
    }

    /** All states, those alike in one line. */
    private List<AlikeSpeeds> gathered(List<SweepColumns.Column> columns) {
        return AlikeSpeeds.gathered(bySpeed(series()), sweep.lookedFor(), columns);
    }

    /** With those of the speeds looked for, in the order of their speeds. */
    private List<ShownState> bySpeed(List<ShownState> asked) {
        return Stream.concat(asked.stream(), sweep.lookedFor().stream())
                .sorted(Comparator.comparingDouble(ShownState::speed))
                .toList();
    }

    private static List<AlikeSpeeds> alone(List<ShownState> states) {
        return states.stream().map(state -> new AlikeSpeeds(List.of(state))).toList();
    }

    /** So many of the states, evenly drawn, the first and the last among them; of one alone the last. */
    private static List<ShownState> evenly(List<ShownState> all, int rows) {
        if (rows < 2) {
            return all.subList(all.size() - Math.max(0, rows), all.size());
        }
        return IntStream.range(0, rows)
                .map(i -> (int) Math.round((double) i * (all.size() - 1) / (rows - 1)))
                .distinct()
                .mapToObj(all::get)
                .toList();
    }

    private List<ShownState> series() {
        return IntStream.range(0, sweep.shown().size())
                .mapToObj(i ->
                        new ShownState(sweep.shown().get(i), sweep.assessed().get(i)))
                .toList();
    }

    /** Lines over the rows: how wide cells are decides how heads are broken. */
    private int head(List<SweepColumns.Column> columns, List<AlikeSpeeds> rows) {
        return (int) table(columns, rows).fitted(Wrap.WIDTH).lines().count() - rows.size();
    }

    /** The columns that fit side by side, those left out that say least. */
    private List<SweepColumns.Column> fitting(Function<List<SweepColumns.Column>, List<AlikeSpeeds>> rows) {
        List<SweepColumns.Column> columns = new ArrayList<>(SweepColumns.deciding(sweep, bands, units));
        while (columns.size() > 1
                && table(columns, rows.apply(columns))
                        .fitted(Wrap.WIDTH)
                        .lines()
                        .anyMatch(line -> line.length() > Wrap.WIDTH)) {
            columns.remove(SweepColumns.least(columns));
        }
        return columns;
    }

    private TextTable table(List<SweepColumns.Column> columns, List<AlikeSpeeds> lines) {
        List<String> head = new ArrayList<>(List.of("rpm"));
        columns.forEach(column -> head.add(column.head()));
        TextTable table = new TextTable(head);
        for (AlikeSpeeds line : lines) {
            List<String> row = new ArrayList<>();
            row.add(line.cell(state -> Quantity.SPEED.number(units, state.speed())));
            columns.forEach(column ->
                    row.add(line.cell(state -> state.assessed().map(column::of).orElse(UnsolvedPhrase.CELL))));
            table.add(row);
        }
        return table;
    }
}
