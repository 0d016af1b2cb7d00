package hotidle.answer.sweep;

import hotidle.answer.phrase.SweepPhrase;
import hotidle.assess.Assessment;
import hotidle.study.ShownState;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Engine speeds in a row at which a unit does the same: one line of a table.
 *
 * @param states in the order of their speeds, at least one
 */
record AlikeSpeeds(List<ShownState> states) {

    /** Numbers that differ by no more are alike (chosen): a gauge and a flow meter of the shop tell no finer [-]. */
    private static final double NEAR = 0.05;

    /** Fewer speeds stand each in a line of their own (chosen). */
    private static final int AT_LEAST = 4;

    AlikeSpeeds {
        states = List.copyOf(states);
    }

    /**
     * All states, those gathered that lie in a row and are alike in what fails and in the columns that decide.
     *
     * @param states in the order of their speeds
     * @param alone  those that keep a line of their own: a speed at which something begins or is judged
     */
    static List<AlikeSpeeds> gathered(
            List<ShownState> states, List<ShownState> alone, List<SweepColumns.Column> columns) {
        List<AlikeSpeeds> gathered = new ArrayList<>();
        List<ShownState> run = new ArrayList<>();
        for (ShownState state : states) {
            boolean goesOn = !run.isEmpty() && !alone.contains(state) && alike(run.get(0), state, columns);
            if (!goesOn) {
                gathered.addAll(lines(run));
                run.clear();
            }
            run.add(state);
            if (alone.contains(state)) {
                gathered.addAll(lines(run));
                run.clear();
            }
        }
        gathered.addAll(lines(run));
        return gathered;
    }

    private static List<AlikeSpeeds> lines(List<ShownState> run) {
        return run.size() >= AT_LEAST
                ? List.of(new AlikeSpeeds(run))
                : run.stream().map(state -> new AlikeSpeeds(List.of(state))).toList();
    }

    private static boolean alike(ShownState one, ShownState other, List<SweepColumns.Column> columns) {
        Optional<Assessment> first = one.assessed();
        Optional<Assessment> second = other.assessed();
        return first.isPresent()
                && second.isPresent()
                && failsAlike(first.get(), second.get())
                && columns.stream()
                        .filter(SweepColumns.Column::decides)
                        .allMatch(column -> near(column.of(first.get()), column.of(second.get())));
    }

    private static boolean failsAlike(Assessment one, Assessment other) {
        return one.figures().low() == other.figures().low()
                && one.figures().farAboveSet() == other.figures().farAboveSet()
                && one.figures().inletStarved() == other.figures().inletStarved()
                && one.starved().equals(other.starved());
    }

    private static boolean near(String one, String other) {
        if (one.equals(other)) {
            return true;
        }
        Optional<Double> first = number(one);
        Optional<Double> second = number(other);
        return first.isPresent()
                && second.isPresent()
                && Math.abs(first.get() - second.get()) <= NEAR * Math.abs(first.get());
    }

    /** What several states come to in a cell: the one thing that all say, or the least and the largest number. */
    String cell(Function<ShownState, String> text) {
        List<String> cells = states.stream().map(text).toList();
        Comparator<String> byNumber =
                Comparator.comparingDouble(cell -> number(cell).orElse(Double.NaN));
        String least = cells.stream().min(byNumber).orElseThrow();
        String most = cells.stream().max(byNumber).orElseThrow();
        return least.equals(most) ? least : SweepPhrase.range(least, most);
    }

    /** What stands in a cell, where it is a number. */
    private static Optional<Double> number(String cell) {
        return cell.matches("-?[0-9.]+") ? Optional.of(Double.valueOf(cell)) : Optional.empty();
    }
}
