package hotidle.cli;

import hotidle.duty.Dimension;
import hotidle.duty.DutyPoint;
import hotidle.duty.Unit;
import hotidle.network.Group;
import hotidle.study.OilBudget;
import hotidle.study.Repairs;
import hotidle.study.Roles;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** The oil budget and the repairs of a build, for readers. */
record LeaksText(Quantity.UnitSystem units, Unit unit, DutyPoint duty, Map<String, String> abouts) {

    /** Paths below this share of the oil displaced are put together [-]. */
    private static final double SMALL = 0.005;

    /** Longest note of a part that stands in a table. */
    private static final int MOST_WORDS = 35;

    /** Longest one that stands beside a repair. */
    private static final int SHORT = 24;

    /** Repairs that are listed on their own. */
    private static final int MOST_ALONE = 15;

    /** A repair that leaves lubrication this much less is told [-]. */
    private static final double LESS = 0.02;

    /** A repair that adds less line pressure than this is not worth its hours: what a gauge cannot show [Pa]. */
    private static final double UNSEEN = 6894.757;

    String tables(String about, OilBudget budget, Repairs repairs) {
        StringBuilder text = new StringBuilder();
        text.append(Wrap.lines(Choice.headed(unit.circuit(), about), "", "  "));
        text.append(Wrap.lines(
                unit.build() + " at " + duty.name() + ": " + Quantity.SPEED.with(units, duty.speed()) + ", "
                        + duty.range() + ", sump "
                        + Quantity.TEMPERATURE.with(units, duty.temperatures().get("sump"))
                        + ", line " + line(repairs.before()) + setPressure(repairs)
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
        String chambers = Roles.of(unit).secondary().isPresent() ? CHAMBERS : "";
        return text.append("\n").append(Wrap.lines(LEGEND + chambers, "", "")).toString();
    }

    private static final String LEGEND =
            "A repair brings a fit back to the size that the circuit file gives as new. The order takes the repair that adds most"
                    + " line pressure up to the set pressure, then most lubrication, then saves most oil; hours and prices are not"
                    + " counted.";

    private static final String CHAMBERS =
            " Until the line is held both chambers feed it: which is repaired first is a matter of their wear only.";

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
        Map<OilBudget.Fate, Integer> percents = percents(budget);
        int slip = percents.getOrDefault(OilBudget.Fate.SLIP, 0);
        int leak = percents.getOrDefault(OilBudget.Fate.LEAK, 0);
        lines.add("Of the " + Quantity.FLOW.with(units, budget.displaced()) + " that the pump displaces, "
                + (slip + leak) + " % is lost: " + slip + " % slips back inside the pump, " + leak
                + " % leaks outside it. New fits lose some too.");
        double needed = Roles.of(unit).lubeNeeded(duty);
        if (needed > 0) {
            lines.add("Lubrication gets "
                    + Quantity.FLOW.with(units, repairs.before().lube()) + "; it needs "
                    + Quantity.FLOW.with(units, needed) + " here.");
        }
        if (!repairs.alone().isEmpty()) {
            Repairs.Step first = repairs.alone().get(0);
            lines.add(
                    "The one repair that wins most: " + job(first) + ", " + won(repairs.before(), first.after()) + ".");
        }
        less(repairs).ifPresent(lines::add);
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
                        .map(step -> called(step.repair()))
                        .toList();
                return List.of(
                        "The set pressure is held here after " + (i + 1) + " repairs: " + String.join(", ", names)
                                + ". What follows in the list saves oil; the regulator keeps the pressure near its set value.");
            }
        }
        Repairs.Effect last = repairs.order().get(repairs.order().size() - 1).after();
        return List.of("After the " + repairs.order().size() + " repairs listed the line stands at " + line(last)
                + (unit.commanded().isPresent() ? ", still below the set pressure." : "."));
    }

    /** Repairs that alone starve the lubrication further, and why; only while the line is not held. */
    private Optional<String> less(Repairs repairs) {
        if (repairs.before().regulated() || unit.commanded().isEmpty()) {
            return Optional.empty();
        }
        List<String> names = repairs.alone().stream()
                .limit(MOST_ALONE)
                .filter(step -> step.after().lube() < repairs.before().lube() * (1 - LESS))
                .map(step -> called(step.repair()))
                .toList();
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of(String.join(", ", names)
                        + (names.size() == 1 ? " alone leaves" : ": each alone leaves")
                        + " the lubrication LESS oil: while the line is not held, converter and lubrication live on what worn"
                        + " valves let by. Once it is held, the regulator feeds them.");
    }

    /** Name of a repair, and what the file says of its part, where that is short. */
    private String called(Repairs.Repair repair) {
        String about = abouts.getOrDefault(repair.dimensions().get(0).part(), "");
        return repair.name() + (about.isEmpty() || about.length() > SHORT ? "" : " (" + about + ")");
    }

    /** Line pressure, with as many decimals as tell it from a set pressure that is not quite reached. */
    private String line(Repairs.Effect effect) {
        Quantity.Shown shown = Quantity.PRESSURE.in(units);
        String text = Quantity.PRESSURE.number(units, effect.line());
        boolean shortOf = !Double.isNaN(effect.set()) && effect.line() < effect.set();
        for (int more = 1; more <= 3 && shortOf; more++) {
            String set = number(shown, effect.set(), more - 1);
            if (!text.equals(set)) {
                break;
            }
            text = number(shown, effect.line(), more);
        }
        return text + " " + shown.unit();
    }

    private static String number(Quantity.Shown shown, double value, int more) {
        return String.format(
                Locale.ROOT, "%." + (shown.decimals() + more) + "f", value * shown.factor() + shown.offset());
    }

    private String job(Repairs.Step step) {
        Dimension first = step.repair().dimensions().get(0);
        return called(step.repair())
                + (step.repair().dimensions().size() == 1 ? " back to " + size(first, first.fresh()) : " as new");
    }

    /** What a repair wins: pressure up to the set pressure; where that is held, lubrication, and where that stays, oil. */
    private String won(Repairs.Effect before, Repairs.Effect after) {
        if (!before.regulated()) {
            return "line " + line(before) + " to " + line(after);
        }
        boolean lube = !Quantity.FLOW.number(units, before.lube()).equals(Quantity.FLOW.number(units, after.lube()));
        return lube
                ? "lubrication " + Quantity.FLOW.number(units, before.lube()) + " to "
                        + Quantity.FLOW.with(units, after.lube())
                : "oil lost " + Quantity.FLOW.number(units, before.lost()) + " to "
                        + Quantity.FLOW.with(units, after.lost());
    }

    private static Map<OilBudget.Fate, Integer> percents(OilBudget budget) {
        List<OilBudget.Fate> fates = Arrays.stream(OilBudget.Fate.values())
                .filter(fate -> budget.paths().stream().anyMatch(path -> path.fate() == fate))
                .toList();
        return shared(fates, budget::flow, 100);
    }

    /** Whole percents of what each of some has, in order, so that they add up to the whole. */
    private static <T> Map<T, Integer> shared(List<T> some, ToDoubleFunction<T> flow, int whole) {
        List<Integer> percents =
                WholePercents.of(some.stream().map(flow::applyAsDouble).toList(), whole);
        Map<T, Integer> shared = new LinkedHashMap<>();
        for (int i = 0; i < some.size(); i++) {
            shared.put(some.get(i), percents.get(i));
        }
        return shared;
    }

    private TextTable budget(OilBudget budget) {
        TextTable table = new TextTable(List.of("", flowUnit(), "share"));
        row(table, "pump displaces", budget.displaced(), 100);
        percents(budget).forEach((fate, percent) -> {
            List<OilBudget.Path> all =
                    budget.paths().stream().filter(path -> path.fate() == fate).toList();
            row(table, fate.words(), budget.flow(fate), percent);
            if (fate != OilBudget.Fate.LEAK && fate != OilBudget.Fate.USED) {
                paths(table, "  ", all, percent, budget);
                return;
            }
            List<Group> groups = Arrays.stream(Group.values())
                    .filter(group -> all.stream().anyMatch(path -> path.group() == group))
                    .toList();
            shared(groups, group -> sum(of(all, group)), percent).forEach((group, part) -> {
                row(table, "  " + group.label(), sum(of(all, group)), part);
                if (of(all, group).stream().anyMatch(path -> !small(path, budget))) {
                    paths(table, "    ", of(all, group), part, budget);
                }
            });
        });
        return table;
    }

    private static List<OilBudget.Path> of(List<OilBudget.Path> paths, Group group) {
        return paths.stream().filter(path -> path.group() == group).toList();
    }

    private static boolean small(OilBudget.Path path, OilBudget budget) {
        return Math.abs(path.flow()) < SMALL * budget.displaced();
    }

    /** Each path that is not small, and the small ones together. */
    private void paths(TextTable table, String indent, List<OilBudget.Path> paths, int percent, OilBudget budget) {
        List<OilBudget.Path> small =
                paths.stream().filter(path -> small(path, budget)).toList();
        List<List<OilBudget.Path>> rows = new ArrayList<>();
        paths.stream().filter(path -> !small(path, budget)).forEach(path -> rows.add(List.of(path)));
        if (!small.isEmpty()) {
            rows.add(small);
        }
        shared(rows, LeaksText::sum, percent).forEach((row, part) -> {
            String label = row == small
                    ? small.size() + (small.size() == 1 ? " smaller one" : " smaller ones")
                    : row.get(0).key() + about(row.get(0));
            row(table, indent + label, sum(row), part);
        });
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

    private void row(TextTable table, String label, double flow, int percent) {
        table.add(List.of(label, Quantity.FLOW.number(units, flow), percent + " %"));
    }

    private TextTable alone(Repairs repairs) {
        TextTable table = new TextTable(
                known(List.of("repair", "from", "to new", "line"), repairs.before(), "lube", "onset rpm"));
        row(table, "(as it is)", "", "", repairs.before());
        repairs.alone().stream().limit(MOST_ALONE).forEach(step -> row(table, step));
        return table;
    }

    private TextTable order(Repairs repairs) {
        TextTable table = new TextTable(
                known(List.of("repair", "from", "to new", "line"), repairs.before(), "lube", "onset rpm"));
        row(table, "(as it is)", "", "", repairs.before());
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

    private void row(TextTable table, Repairs.Step step) {
        row(table, called(step.repair()), from(step), to(step), step.after());
    }

    private void row(TextTable table, String name, String from, String to, Repairs.Effect after) {
        table.add(known(
                List.of(name, from, to, line(after)), after, Quantity.FLOW.with(units, after.lube()), onset(after)));
    }

    /** Cells with those on lubrication and onset of regulation, where the circuit has the one and commands the other. */
    private List<String> known(List<String> cells, Repairs.Effect effect, String lube, String onset) {
        List<String> all = new ArrayList<>(cells);
        if (!Roles.of(unit).lube().isEmpty()) {
            all.add(lube);
        }
        if (!Double.isNaN(effect.set())) {
            all.add(onset);
        }
        return all;
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
