package hotidle.cli;

import hotidle.duty.Dimension;
import hotidle.duty.DutyPoint;
import hotidle.duty.Unit;
import hotidle.network.Group;
import hotidle.study.OilBudget;
import hotidle.study.Repairs;
import hotidle.study.Roles;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** The oil budget and the repairs of a build, for readers. */
record LeaksText(Quantity.UnitSystem units, Unit unit, DutyPoint duty, Map<String, String> abouts) {

    /** Paths below this share of the oil displaced are put together [-]. */
    private static final double SMALL = 0.005;

    /** Longest note of a part that stands in a table. */
    private static final int MOST_WORDS = 35;

    /** Repairs that are listed on their own. */
    private static final int MOST_ALONE = 15;

    /** A repair that adds less line pressure than this is not worth its hours: what a gauge cannot show [Pa]. */
    private static final double UNSEEN = 6894.757;

    String tables(String about, OilBudget budget, Repairs repairs) {
        StringBuilder text = new StringBuilder();
        text.append(Wrap.lines(Choice.headed(unit.circuit(), about), "", "  "));
        text.append(Wrap.lines(
                unit.build() + " at " + duty.name() + ": " + Quantity.SPEED.with(units, duty.speed()) + ", "
                        + duty.range() + ", sump "
                        + Quantity.TEMPERATURE.with(units, duty.temperatures().get("sump"))
                        + ", line "
                        + Quantity.PRESSURE.with(units, repairs.before().line()) + setPressure(repairs)
                        + ".",
                "",
                "  "));
        text.append("\nIn plain words\n");
        plain(budget, repairs).forEach(line -> text.append(Wrap.lines(line, "  ", "  ")));
        text.append("\n").append(Shared.CAUTION).append("\n");
        text.append("\nWhere the oil goes [").append(flowUnit()).append("], counted as the pump takes it in\n");
        text.append(budget(budget).aligned());
        text.append(String.format(
                Locale.ROOT, "Not accounted for: %.0e of what the pump displaces.%n", budget.unexplained()));
        text.append("\nWhat each repair wins back on its own\n");
        if (repairs.alone().isEmpty()) {
            return text.append("  Nothing: no fit is worn beyond new.\n").toString();
        }
        text.append(alone(repairs).aligned());
        int more = repairs.alone().size() - MOST_ALONE;
        if (more > 0) {
            text.append("  and ").append(more).append(" more that win less; --format csv lists them\n");
        }
        if (!repairs.order().isEmpty()) {
            text.append("\nBest order: each repair on top of those above it\n");
            text.append(order(repairs).aligned());
        }
        return text.append("\n").append(Wrap.lines(LEGEND, "", "")).toString();
    }

    private static final String LEGEND =
            "A repair brings a fit back to the size that the circuit file gives as new. The order takes the repair that adds most"
                    + " line pressure up to the set pressure, then most lubrication, then saves most oil; hours and prices are not"
                    + " counted.";

    private String setPressure(Repairs repairs) {
        double set = repairs.before().set();
        if (Double.isNaN(set)) {
            return "";
        }
        return " of the " + Quantity.PRESSURE.with(units, set) + " commanded"
                + (repairs.before().regulated() ? ", regulated" : ", NOT HELD");
    }

    private String flowUnit() {
        return Quantity.FLOW.in(units).unit();
    }

    private List<String> plain(OilBudget budget, Repairs repairs) {
        List<String> lines = new ArrayList<>();
        lines.add("Of the " + Quantity.FLOW.with(units, budget.displaced()) + " that the pump displaces, "
                + percent(budget.lost() / budget.displaced()) + " is lost: "
                + percent(budget.flow(OilBudget.Fate.SLIP) / budget.displaced()) + " slips back inside the pump, "
                + percent(budget.flow(OilBudget.Fate.LEAK) / budget.displaced())
                + " leaks outside it, past worn fits and past what leaks when new too.");
        double needed = Roles.of(unit).lubeNeeded(duty);
        if (needed > 0) {
            lines.add("Lubrication gets "
                    + Quantity.FLOW.with(units, repairs.before().lube()) + "; it needs "
                    + Quantity.FLOW.with(units, needed) + " here.");
        }
        if (!repairs.alone().isEmpty()) {
            lines.add("The one repair that wins most: " + job(repairs.alone().get(0)) + ", line "
                    + change(repairs.before(), repairs.alone().get(0).after()) + ".");
        }
        lines.addAll(reach(repairs));
        return lines;
    }

    private List<String> reach(Repairs repairs) {
        if (repairs.before().regulated() || repairs.order().isEmpty()) {
            return List.of();
        }
        for (int i = 0; i < repairs.order().size(); i++) {
            Repairs.Effect after = repairs.order().get(i).after();
            if (after.regulated()) {
                List<String> names = repairs.order().subList(0, i + 1).stream()
                        .map(step -> step.repair().name())
                        .toList();
                return List.of(
                        "The set pressure is held here after " + (i + 1) + " repairs: " + String.join(", ", names)
                                + ". What follows in the list saves oil; the regulator keeps the pressure near its set value.");
            }
        }
        Repairs.Effect last = repairs.order().get(repairs.order().size() - 1).after();
        return List.of("After the " + repairs.order().size() + " repairs listed the line stands at "
                + Quantity.PRESSURE.with(units, last.line())
                + (unit.commanded().isPresent() ? ", still below the set pressure." : "."));
    }

    private String job(Repairs.Step step) {
        Dimension first = step.repair().dimensions().get(0);
        return step.repair().name()
                + (step.repair().dimensions().size() == 1 ? " back to " + size(first, first.fresh()) : " as new");
    }

    private String change(Repairs.Effect before, Repairs.Effect after) {
        return Quantity.PRESSURE.number(units, before.line()) + " to " + Quantity.PRESSURE.with(units, after.line());
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    private TextTable budget(OilBudget budget) {
        TextTable table = new TextTable(List.of("", flowUnit(), "share"));
        row(table, "pump displaces", budget.displaced(), budget);
        for (OilBudget.Fate fate : OilBudget.Fate.values()) {
            List<OilBudget.Path> all =
                    budget.paths().stream().filter(path -> path.fate() == fate).toList();
            if (all.isEmpty()) {
                continue;
            }
            row(table, fate.words(), budget.flow(fate), budget);
            for (Group group : Group.values()) {
                group(
                        table,
                        fate,
                        group,
                        all.stream().filter(path -> path.group() == group).toList(),
                        budget);
            }
        }
        return table;
    }

    private void group(
            TextTable table, OilBudget.Fate fate, Group group, List<OilBudget.Path> paths, OilBudget budget) {
        if (paths.isEmpty()) {
            return;
        }
        boolean heading = fate == OilBudget.Fate.LEAK || fate == OilBudget.Fate.USED;
        String indent = heading ? "    " : "  ";
        if (heading) {
            row(table, "  " + group.label(), sum(paths), budget);
        }
        List<OilBudget.Path> small = new ArrayList<>();
        for (OilBudget.Path path : paths) {
            if (Math.abs(path.flow()) < SMALL * budget.displaced()) {
                small.add(path);
            } else {
                row(table, indent + path.key() + about(path), path.flow(), budget);
            }
        }
        if (small.size() == paths.size() && heading) {
            return;
        }
        if (!small.isEmpty()) {
            row(
                    table,
                    indent + small.size() + (small.size() == 1 ? " smaller one" : " smaller ones"),
                    sum(small),
                    budget);
        }
    }

    private static double sum(List<OilBudget.Path> paths) {
        return paths.stream().mapToDouble(OilBudget.Path::flow).sum();
    }

    private String about(OilBudget.Path path) {
        String about = abouts.getOrDefault(path.part(), "");
        boolean said =
                !about.isEmpty() && about.length() <= MOST_WORDS && path.name().isEmpty();
        return (said ? ": " + about : "") + (path.flow() < 0 ? " (carried forward)" : "");
    }

    private void row(TextTable table, String label, double flow, OilBudget budget) {
        table.add(List.of(label, Quantity.FLOW.number(units, flow), percent(flow / budget.displaced())));
    }

    private TextTable alone(Repairs repairs) {
        TextTable table = new TextTable(List.of("repair", "from", "to new", "line", "lube", "onset rpm"));
        row(table, "(as it is)", "", "", repairs.before());
        repairs.alone().stream().limit(MOST_ALONE).forEach(step -> row(table, step));
        return table;
    }

    private TextTable order(Repairs repairs) {
        TextTable table = new TextTable(List.of("repair", "from", "to new", "line", "lube", "onset rpm"));
        row(table, "(as it is)", "", "", repairs.before());
        Repairs.Effect before = repairs.before();
        int i = 1;
        for (Repairs.Step step : repairs.order()) {
            Repairs.Effect after = step.after();
            String mark = !before.regulated() && after.regulated()
                    ? "  <- holds the set pressure"
                    : after.held() - before.held() < UNSEEN && !before.regulated()
                            ? "  <- less than a gauge shows"
                            : "";
            row(table, i++ + ". " + step.repair().name() + mark, from(step), to(step), after);
            before = after;
        }
        return table;
    }

    private void row(TextTable table, Repairs.Step step) {
        row(table, step.repair().name(), from(step), to(step), step.after());
    }

    private void row(TextTable table, String name, String from, String to, Repairs.Effect after) {
        table.add(List.of(
                name,
                from,
                to,
                Quantity.PRESSURE.with(units, after.line()),
                Quantity.FLOW.with(units, after.lube()),
                onset(after)));
    }

    private String onset(Repairs.Effect effect) {
        return effect.onset().isPresent()
                ? Quantity.SPEED.number(units, effect.onset().getAsDouble())
                : Double.isNaN(effect.set()) ? "-" : "none";
    }

    private String from(Repairs.Step step) {
        return step.repair().dimensions().size() == 1
                ? size(
                        step.repair().dimensions().get(0),
                        step.repair().dimensions().get(0).value())
                : step.repair().dimensions().size() + " sizes";
    }

    private String to(Repairs.Step step) {
        return step.repair().dimensions().size() == 1
                ? size(
                        step.repair().dimensions().get(0),
                        step.repair().dimensions().get(0).fresh())
                : "new";
    }

    private String size(Dimension dimension, double value) {
        return dimension.kind() == Dimension.Kind.AREA
                ? Quantity.AREA.with(units, value)
                : Quantity.SIZE.with(units, value);
    }

    String csv(OilBudget budget, Repairs repairs) {
        TextTable paths = new TextTable(List.of(
                "kind",
                "name",
                "group or sizes",
                "fate",
                flowUnit(),
                "share",
                "line " + Quantity.PRESSURE.in(units).unit(),
                "lube " + flowUnit(),
                "onset rpm"));
        budget.paths()
                .forEach(path -> paths.add(List.of(
                        "path",
                        path.key(),
                        path.group().label(),
                        path.fate().words(),
                        Quantity.FLOW.number(units, path.flow()),
                        Digits.four(path.flow() / budget.displaced()),
                        "",
                        "",
                        "")));
        repairs.alone().forEach(step -> paths.add(csv("repair", step, repairs.before())));
        Repairs.Effect before = repairs.before();
        for (Repairs.Step step : repairs.order()) {
            paths.add(csv("order", step, before));
            before = step.after();
        }
        return paths.csv();
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
