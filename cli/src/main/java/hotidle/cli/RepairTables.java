package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.LinePressurePhrase;
import hotidle.assess.Roles;
import hotidle.study.Repairs;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What each repair wins back, and the order in which they are best done.
 *
 * @param abouts what the file says of each part
 * @param lowest speed from which the onset of regulation was searched [rev/s]
 */
record RepairTables(
        Quantity.UnitSystem units, Transmission unit, Repairs repairs, Map<String, String> abouts, double lowest) {

    /** Repairs that are listed on their own. */
    static final int MOST_ALONE = 15;

    /** Longest note of a part that stands beside a repair. */
    private static final int SHORT = 24;

    /** A repair that adds less line pressure than this is not worth its hours: what a gauge cannot show [Pa]. */
    private static final double UNSEEN = 6894.757;

    private static final String LEGEND =
            "A repair brings a fit back to the size that the circuit file gives as new. The order takes the repair that adds most"
                    + " line pressure up to the set pressure, then most lubrication, then saves most oil; hours and prices are not"
                    + " counted.";

    private static final String SLEEVES =
            " A bore is brought back by a sleeve, or by an oversize valve with the same clearance. Onset: the engine speed from"
                    + " which the line holds its set pressure.";

    private static final String CHAMBERS =
            " Until the line is held both chambers feed it: which is repaired first is a matter of their wear only.";

    private static final String SCORES =
            " orifice-slip-area stands for scores and nicks, through which thick oil slips as fast as thin; only new or"
                    + " reground pump parts bring it back.";

    String text() {
        StringBuilder text = new StringBuilder("\nWhat each repair wins back on its own\n");
        if (repairs.alone().isEmpty()) {
            return text.append("  Nothing: no fit is worn beyond new.\n").toString();
        }
        text.append(alone().aligned());
        int more = repairs.alone().size() - MOST_ALONE;
        if (more > 0) {
            text.append("  and ").append(more).append(" more that win less; --format csv lists them\n");
        }
        if (!repairs.order().isEmpty()) {
            text.append("\nBest order: each repair on top of those above it\n");
            text.append(order().aligned());
        }
        String chambers = Roles.of(unit).secondary().isPresent() ? CHAMBERS : "";
        boolean scored = repairs.alone().stream()
                .flatMap(step -> step.repair().dimensions().stream())
                .anyMatch(dimension -> dimension.key().equals("orifice-slip-area"));
        return text.append("\n")
                .append(Wrap.lines(LEGEND + SLEEVES + chambers + (scored ? SCORES : ""), "", ""))
                .toString();
    }

    /** Name of a repair, and what the file says of its part, where that is short. */
    String called(Repairs.Repair repair) {
        String about = abouts.getOrDefault(repair.dimensions().get(0).part(), "");
        return repair.name() + (about.isEmpty() || about.length() > SHORT ? "" : " (" + about + ")");
    }

    /** A repair in words, for example "bore-14.bore back to 0.8677 in". */
    String job(Repairs.Step step) {
        return called(step.repair())
                + (step.repair().dimensions().size() == 1 ? " back to " + to(step) : " as " + to(step));
    }

    private TextTable table() {
        TextTable table = new TextTable(known(List.of("repair", "from", "to new", "line"), "lube", "onset rpm"));
        row(table, "(as it is)", "", "", repairs.before());
        return table;
    }

    private TextTable alone() {
        TextTable table = table();
        repairs.alone().stream()
                .limit(MOST_ALONE)
                .forEach(step -> row(table, called(step.repair()), from(step), to(step), step.after()));
        return table;
    }

    private TextTable order() {
        TextTable table = table();
        Repairs.Effect before = repairs.before();
        int i = 1;
        for (Repairs.Step step : repairs.order()) {
            Repairs.Effect after = step.after();
            String mark = !before.regulated() && after.regulated()
                    ? "  <- holds " + Quantity.PRESSURE.with(units, after.set())
                    : after.held() - before.held() < UNSEEN && !before.regulated() ? "  <- no gauge shows it" : "";
            row(table, i++ + ". " + called(step.repair()) + mark, from(step), to(step), after);
            before = after;
        }
        return table;
    }

    private void row(TextTable table, String name, String from, String to, Repairs.Effect after) {
        table.add(known(
                List.of(name, from, to, LinePressurePhrase.of(units, after.line(), after.set())),
                Quantity.FLOW.with(units, after.lube()),
                onset(after)));
    }

    /** Cells with those on lubrication and onset of regulation, where the circuit has the one and commands the other. */
    private List<String> known(List<String> cells, String lube, String onset) {
        List<String> all = new ArrayList<>(cells);
        if (!Roles.of(unit).lube().isEmpty()) {
            all.add(lube);
        }
        if (!Double.isNaN(repairs.before().set())) {
            all.add(onset);
        }
        return all;
    }

    private String onset(Repairs.Effect effect) {
        if (effect.onset().isEmpty()) {
            return Double.isNaN(effect.set()) ? "-" : "none";
        }
        double onset = effect.onset().getAsDouble();
        return (onset <= lowest ? "<= " : "") + Quantity.SPEED.number(units, onset);
    }

    private String from(Repairs.Step step) {
        List<WearSize> sizes = step.repair().dimensions();
        return sizes.size() == 1 ? size(sizes.get(0), sizes.get(0).value()) : sizes.size() + " sizes";
    }

    private String to(Repairs.Step step) {
        List<WearSize> sizes = step.repair().dimensions();
        return sizes.size() == 1 ? size(sizes.get(0), sizes.get(0).fresh()) : "new";
    }

    private String size(WearSize dimension, double value) {
        return dimension.kind() == WearSize.Kind.AREA
                ? Quantity.AREA.with(units, value)
                : Quantity.SIZE.with(units, value);
    }

    /** Paths of the oil and repairs, as CSV. */
    String csv(BudgetTable budget) {
        String flow = Quantity.FLOW.in(units).unit();
        TextTable table = new TextTable(List.of(
                "kind",
                "name",
                "group or sizes",
                "fate",
                flow,
                "share",
                "line " + Quantity.PRESSURE.in(units).unit(),
                "lube " + flow,
                "onset rpm"));
        budget.rows().forEach(table::add);
        repairs.alone().forEach(step -> table.add(csv("repair", step, repairs.before())));
        Repairs.Effect before = repairs.before();
        for (Repairs.Step step : repairs.order()) {
            table.add(csv("order", step, before));
            before = step.after();
        }
        return table.csv();
    }

    private List<String> csv(String kind, Repairs.Step step, Repairs.Effect before) {
        return List.of(
                kind,
                step.repair().name(),
                step.repair().dimensions().stream()
                        .map(dimension -> dimension.key() + " " + size(dimension, dimension.value()) + " to "
                                + size(dimension, dimension.fresh()))
                        .collect(Collectors.joining("; ")),
                "saved",
                Quantity.FLOW.number(units, before.lost() - step.after().lost()),
                "",
                Quantity.PRESSURE.number(units, step.after().line()),
                Quantity.FLOW.number(units, step.after().lube()),
                onset(step.after()));
    }
}
