package hotidle.answer.leaks;

import hotidle.answer.format.Digits;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.FatePhrase;
import hotidle.answer.phrase.OilLostPhrase;
import hotidle.assess.OilBudget;
import hotidle.network.Group;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * Where the oil goes, heading by heading. Each share is rounded on its own, so that it is that of the flow beside it; they may
 * therefore miss their sum by one.
 *
 * @param abouts what the file says of each part
 */
record BudgetTable(Quantity.UnitSystem units, OilBudget budget, Map<String, String> abouts) {

    /** Longest note of a part that stands in a table. */
    private static final int MOST_WORDS = 35;

    String text() {
        return table().aligned() + closing();
    }

    TextTable table() {
        TextTable table = new TextTable(List.of("", Quantity.FLOW.in(units).unit(), "share"));
        row(table, "pump displaces", budget.displaced());
        for (OilBudget.Fate fate : OilBudget.Fate.values()) {
            List<OilBudget.Path> all =
                    budget.paths().stream().filter(path -> path.fate() == fate).toList();
            if (!all.isEmpty()) {
                row(table, FatePhrase.of(fate), budget.flow(fate));
                fate(table, fate, all);
            }
        }
        return table;
    }

    private void fate(TextTable table, OilBudget.Fate fate, List<OilBudget.Path> all) {
        if (fate != OilBudget.Fate.LEAK && fate != OilBudget.Fate.USED) {
            paths(table, "  ", all);
            return;
        }
        Arrays.stream(Group.values()).forEach(group -> {
            List<OilBudget.Path> some =
                    all.stream().filter(path -> path.group() == group).toList();
            if (some.isEmpty()) {
                return;
            }
            row(table, "  " + group.label(), sum(some));
            if (some.stream().anyMatch(path -> !budget.small(path))) {
                paths(table, "    ", some);
            }
        });
    }

    private String closing() {
        return budget.closes() ? Wrap.lines(closes(), "", "") : closes() + "\n";
    }

    /** Whether all of it is accounted for. */
    String closes() {
        return budget.closes()
                ? OilLostPhrase.closes(budget.unexplained())
                : OilLostPhrase.doesNotClose(budget.unexplained());
    }

    /** Each path that is not small, and the small ones together. */
    private void paths(TextTable table, String indent, List<OilBudget.Path> paths) {
        paths.stream()
                .filter(path -> !budget.small(path))
                .forEach(path -> row(table, indent + path.key() + about(path), path.flow()));
        List<OilBudget.Path> small = paths.stream().filter(budget::small).toList();
        if (!small.isEmpty()) {
            row(table, indent + OilLostPhrase.smaller(small.size()), sum(small));
        }
    }

    private static double sum(List<OilBudget.Path> paths) {
        return paths.stream().mapToDouble(OilBudget.Path::flow).sum();
    }

    private String about(OilBudget.Path path) {
        String about = abouts.getOrDefault(path.part(), "");
        boolean said =
                !about.isEmpty() && about.length() <= MOST_WORDS && path.name().isEmpty();
        return (said ? ": " + about : "") + (path.flow() < 0 ? OilLostPhrase.BACK : "");
    }

    private void row(TextTable table, String label, double flow) {
        table.add(
                List.of(label, Quantity.FLOW.number(units, flow), Math.round(100 * flow / budget.displaced()) + " %"));
    }

    /** One row a path, for the head of {@link LeaksAnswer#table}. */
    List<List<String>> rows() {
        return budget.paths().stream()
                .map(path -> List.of(
                        "path",
                        path.key(),
                        path.group().label(),
                        FatePhrase.of(path.fate()),
                        Quantity.FLOW.number(units, path.flow()),
                        Digits.four(path.flow() / budget.displaced()),
                        "",
                        "",
                        ""))
                .toList();
    }
}
