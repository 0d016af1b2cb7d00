package hotidle.answer.compare;

import hotidle.answer.format.FirstScreen;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.BenchPhrase;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.study.Comparison;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;

/** The first screen of builds in which nothing is commanded: gauges and flows at one driving condition, as far as they fit. */
record BenchScreen(
        Comparison comparison, DutyPoint duty, String heading, List<CompareRow> rows, Quantity.UnitSystem units) {

    /** More builds than these are not put side by side on one screen (chosen). */
    private static final int MOST_ACROSS = 5;

    String text() {
        FirstScreen screen = new FirstScreen(Caution.BENCH_LINE);
        screen.add(Wrap.lines(heading, "", "  "));
        List<Transmission> builds = comparison.units();
        List<Transmission> across = builds.subList(0, Math.min(MOST_ACROSS, builds.size()));
        List<String> head = new ArrayList<>(List.of(""));
        across.forEach(unit -> head.add(unit.build()));
        List<CompareRow> fit = rows.subList(
                0,
                Math.min(
                        rows.size(),
                        screen.room()
                                - (int) new TextTable(head)
                                        .fitted(Wrap.WIDTH)
                                        .lines()
                                        .count()
                                - LEFT));
        TextTable table = new TextTable(head);
        for (CompareRow row : fit) {
            List<String> cells = new ArrayList<>(List.of(row.label()));
            across.forEach(unit -> cells.add(row.text().apply(comparison.cell(unit.build(), duty.name()))));
            table.add(cells);
        }
        screen.add(table.fitted(Wrap.WIDTH));
        List<String> unsolved = comparison.cells().stream()
                .filter(cell -> cell.outcome().unsolved().isPresent())
                .map(cell -> HeadingPhrase.at(cell.unit().build(), cell.duty().name()))
                .toList();
        if (!unsolved.isEmpty()) {
            screen.add(Wrap.lines(BenchPhrase.notKnown(unsolved.size(), unsolved.get(0)), "", "  "));
        }
        String more = BenchPhrase.more(
                rows.size() - fit.size(), comparison.duties().size() - 1, builds.size() - across.size());
        screen.addWhereRoom(more.isEmpty() ? "" : Wrap.lines(more, "", "  "));
        return screen.text();
    }

    /** Lines kept for what is said under the table. */
    private static final int LEFT = 4;
}
