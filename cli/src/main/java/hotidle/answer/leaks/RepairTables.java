package hotidle.answer.leaks;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.page.Block;
import hotidle.answer.phrase.LinePressurePhrase;
import hotidle.answer.phrase.RepairPhrase;
import hotidle.study.RepairFindings;
import hotidle.study.Repairs;
import java.util.ArrayList;
import java.util.List;

/**
 * What each repair wins back, and the order in which they are best done.
 *
 * @param lube     whether the unit has lubrication
 * @param chambers whether its pump has two chambers
 * @param lowest   speed from which the onset of regulation was searched [rev/s]
 */
record RepairTables(
        Quantity.UnitSystem units,
        RepairNames names,
        Repairs repairs,
        RepairFindings findings,
        boolean lube,
        boolean chambers,
        double lowest) {

    /** Repairs that are listed on their own (chosen). */
    static final int MOST_ALONE = 15;

    /** Both tables with what stands beneath them. */
    String text() {
        StringBuilder text = new StringBuilder("\n" + RepairPhrase.ALONE + "\n");
        if (repairs.alone().isEmpty()) {
            return text.append("  ").append(RepairPhrase.NOTHING).append('\n').toString();
        }
        text.append(alone().aligned());
        int more = repairs.alone().size() - MOST_ALONE;
        text.append(more > 0 ? "  " + RepairPhrase.more(more) + "\n" : "");
        if (!repairs.order().isEmpty()) {
            text.append("\n" + RepairPhrase.ORDER + "\n").append(order().aligned());
        }
        return text.append('\n').append(Wrap.lines(legend(), "", "")).toString();
    }

    /** The same on a page. */
    List<Block> page() {
        if (repairs.alone().isEmpty()) {
            return List.of(Block.said(RepairPhrase.NOTHING));
        }
        List<Block> blocks = new ArrayList<>(List.of(Block.table(RepairPhrase.ALONE, alone())));
        if (!repairs.order().isEmpty()) {
            blocks.add(Block.table(RepairPhrase.ORDER, order()));
        }
        blocks.add(Block.said(legend()));
        return blocks;
    }

    private String legend() {
        boolean scored = repairs.alone().stream().anyMatch(step -> step.repair().takesScoresAway());
        return RepairPhrase.LEGEND
                + (chambers ? " " + RepairPhrase.CHAMBERS : "")
                + (scored ? " " + RepairPhrase.SCORES : "");
    }

    private TextTable table() {
        TextTable table = new TextTable(
                known(List.of("repair", "from", "to new", "line", RepairPhrase.LOST), "lube", RepairPhrase.HOLDS_FROM));
        row(table, RepairPhrase.AS_IS, "", "", repairs.before());
        return table;
    }

    private TextTable alone() {
        TextTable table = table();
        repairs.alone().stream().limit(MOST_ALONE).forEach(step -> row(table, names.called(step.repair()), step));
        return table;
    }

    private TextTable order() {
        TextTable table = table();
        for (int i = 0; i < repairs.order().size(); i++) {
            Repairs.Step step = repairs.order().get(i);
            row(
                    table,
                    (i + 1) + ". " + names.called(step.repair())
                            + mark(findings.marks().get(i)),
                    step);
        }
        return table;
    }

    private static String mark(RepairFindings.Mark mark) {
        return switch (mark) {
            case HOLDS -> "  " + RepairPhrase.HELD_FROM_HERE;
            case UNSEEN -> "  " + RepairPhrase.UNSEEN;
            case NONE -> "";
        };
    }

    private void row(TextTable table, String name, Repairs.Step step) {
        row(table, name, names.from(step.repair()), names.to(step.repair()), step.after());
    }

    private void row(TextTable table, String name, String from, String to, Repairs.Effect after) {
        table.add(known(
                List.of(
                        name,
                        from,
                        to,
                        LinePressurePhrase.of(units, after.line(), after.set()),
                        Quantity.FLOW.with(units, after.lost())),
                Quantity.FLOW.with(units, after.lube()),
                onset(after)));
    }

    /** Cells with those on lubrication and onset of regulation, where the circuit has the one and commands the other. */
    private List<String> known(List<String> cells, String lubrication, String onset) {
        List<String> all = new ArrayList<>(cells);
        if (lube) {
            all.add(lubrication);
        }
        if (repairs.before().set().isPresent()) {
            all.add(onset);
        }
        return all;
    }

    private String onset(Repairs.Effect effect) {
        if (effect.onset().isEmpty()) {
            return effect.set().isEmpty() ? "-" : "none";
        }
        double onset = effect.onset().getAsDouble();
        return (onset <= lowest ? "<= " : "") + Quantity.SPEED.number(units, onset);
    }

    /** One row a repair, for the head of {@link LeaksAnswer#table}. */
    List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        repairs.alone().forEach(step -> rows.add(row("repair", step, repairs.before())));
        Repairs.Effect before = repairs.before();
        for (Repairs.Step step : repairs.order()) {
            rows.add(row("order", step, before));
            before = step.after();
        }
        return rows;
    }

    private List<String> row(String kind, Repairs.Step step, Repairs.Effect before) {
        return List.of(
                kind,
                step.repair().name(),
                names.sizes(step.repair()),
                "saved",
                Quantity.FLOW.number(units, before.lost() - step.after().lost()),
                "",
                Quantity.PRESSURE.number(units, step.after().line()),
                Quantity.FLOW.number(units, step.after().lube()),
                onset(step.after()));
    }
}
