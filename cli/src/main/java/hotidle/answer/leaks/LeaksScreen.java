package hotidle.answer.leaks;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.FatePhrase;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.LinePressurePhrase;
import hotidle.answer.phrase.NoStallPhrase;
import hotidle.answer.phrase.OilLostPhrase;
import hotidle.answer.phrase.RepairPhrase;
import hotidle.assess.OilBudget;
import hotidle.study.LeakStudy;
import hotidle.study.RepairFindings;
import hotidle.study.Repairs;
import hotidle.transmission.Transmission;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntFunction;

/**
 * The first screen: what to do, how much is lost, what loses most and the order.
 *
 * @param line    the build at its driving condition, in words
 * @param faulted whether a fault lies over the build, beside which no jobs are asked for
 */
record LeaksScreen(
        Quantity.UnitSystem units,
        Transmission unit,
        String line,
        RepairNames names,
        LeaksSentences sentences,
        LeakStudy.Found found,
        boolean faulted) {

    /** Rows of a short table, at most (chosen). */
    private static final int MOST_ROWS = 10;

    /** Where fewer could be named, all else stands in two rows (chosen). */
    private static final int LEAST_NAMED = 4;

    /** Lines of the screen that a short table has beside its rows: a blank one before, its head and rule. */
    private static final int HEAD = 3;

    String text() {
        StringBuilder text = new StringBuilder(Wrap.lines(HeadingPhrase.headed(unit.circuit(), line), "", "  "));
        sentences.first().forEach(said -> text.append(Wrap.lines(said, "", "  ")));
        String end = (faulted || found.repairs().order().isEmpty() ? "" : RepairPhrase.NEXT_JOBS + "\n")
                + NoStallPhrase.of(found.lowAtIdle() ? List.of(unit.build()) : List.of()) + Caution.LINE + "\n";
        long left = Wrap.LINES - lines(text.toString()) - lines(end);
        return text + "\n" + tables((int) Math.max(1, Math.min(MOST_ROWS, left - HEAD)), left) + end;
    }

    private static long lines(String text) {
        return text.lines().count();
    }

    /** What loses most beside the order; below each other, with fewer rows, where they are too wide. */
    private String tables(int rows, long left) {
        TextTable most = most(rows);
        if (found.repairs().order().isEmpty()) {
            return most.aligned();
        }
        String beside = TextTable.beside(most, order(rows));
        if (beside.lines().allMatch(one -> one.length() <= Wrap.WIDTH)) {
            return beside;
        }
        int each = (int) Math.max(1, (left - 2 * HEAD) / 2);
        return most(each).aligned() + "\n" + order(each).aligned();
    }

    /** What loses most, what all others lose, and what becomes of the rest: together all that the pump displaces. */
    private TextTable most(int rows) {
        OilBudget budget = found.budget();
        TextTable table = new TextTable(
                List.of(OilLostPhrase.MOST, Quantity.FLOW.in(units).unit(), "share"));
        List<OilBudget.Path> lost = budget.paths().stream()
                .filter(path -> path.fate() == OilBudget.Fate.SLIP || path.fate() == OilBudget.Fate.LEAK)
                .filter(budget::passes)
                .sorted(Comparator.comparingDouble(path -> -path.flow()))
                .toList();
        List<OilBudget.Fate> others = Arrays.stream(OilBudget.Fate.values())
                .filter(fate -> fate != OilBudget.Fate.SLIP && fate != OilBudget.Fate.LEAK && budget.flow(fate) != 0)
                .toList();
        int back = lost.stream().anyMatch(path -> path.flow() < 0) ? 1 : 0;
        boolean tight = rows - others.size() - 1 - back < LEAST_NAMED;
        int named = Math.min(lost.size(), Math.max(1, tight ? rows - 2 : rows - others.size() - 1 - back));
        lost.subList(0, named).forEach(path -> row(table, path.key(), path.flow()));
        List<OilBudget.Path> less = lost.subList(named, lost.size());
        if (tight) {
            together(table, less, OilLostPhrase::net);
            row(
                    table,
                    OilLostPhrase.NOT_LOST,
                    others.stream().mapToDouble(budget::flow).sum());
            return table;
        }
        together(table, less.stream().filter(path -> path.flow() > 0).toList(), OilLostPhrase::less);
        together(table, less.stream().filter(path -> path.flow() < 0).toList(), OilLostPhrase::back);
        others.forEach(fate -> row(table, FatePhrase.brief(fate), budget.flow(fate)));
        return table;
    }

    private void together(TextTable table, List<OilBudget.Path> paths, IntFunction<String> what) {
        if (!paths.isEmpty()) {
            row(
                    table,
                    what.apply(paths.size()),
                    paths.stream().mapToDouble(OilBudget.Path::flow).sum());
        }
    }

    private void row(TextTable table, String what, double flow) {
        table.add(List.of(
                what,
                Quantity.FLOW.number(units, flow),
                Math.round(100 * flow / found.budget().displaced()) + " %"));
    }

    private TextTable order(int rows) {
        boolean held = found.repairs().before().regulated();
        TextTable table = new TextTable(List.of(
                RepairPhrase.SHORT_ORDER,
                held ? RepairPhrase.LOST + " [" + Quantity.FLOW.in(units).unit() + "]" : "line"));
        List<Repairs.Step> order = found.repairs().order();
        for (int i = 0; i < Math.min(rows, order.size()); i++) {
            Repairs.Effect after = order.get(i).after();
            boolean holds = found.findings().marks().get(i) == RepairFindings.Mark.HOLDS;
            table.add(List.of(
                    (i + 1) + ". " + order.get(i).repair().name(),
                    held
                            ? Quantity.FLOW.number(units, after.lost())
                            : LinePressurePhrase.of(units, after.line(), after.set())
                                    + (holds ? RepairPhrase.HELD : "")));
        }
        return table;
    }
}
