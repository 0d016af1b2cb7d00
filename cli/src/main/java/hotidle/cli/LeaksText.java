package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.LinePressurePhrase;
import hotidle.answer.phrase.NoStallPhrase;
import hotidle.assess.IdlePressure;
import hotidle.assess.OilBudget;
import hotidle.assess.Roles;
import hotidle.study.Repairs;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * The oil budget and the repairs of a build, for readers.
 *
 * @param abouts what the file says of each part
 * @param lowest speed from which the onset of regulation was searched [rev/s]
 */
record LeaksText(
        Quantity.UnitSystem units,
        Transmission unit,
        DutyPoint duty,
        Map<String, String> abouts,
        OilBudget budget,
        Repairs repairs,
        double lowest) {

    /** A repair that leaves lubrication this much less is told; chosen, below it a table shows no change [-]. */
    private static final double LESS = 0.02;

    /** A repair that wins this share of what the best one wins is named beside it; chosen [-]. */
    private static final double NEARLY = 0.8;

    String tables(String about) {
        StringBuilder text = new StringBuilder();
        text.append(Wrap.lines(Choice.headed(unit.circuit(), about), "", "  "));
        text.append(Wrap.lines(
                unit.build() + " at " + duty.name() + ": " + Quantity.SPEED.with(units, duty.speed()) + ", "
                        + duty.range() + ", sump "
                        + Quantity.TEMPERATURE.with(units, duty.temperatures().get("sump"))
                        + ", line " + line(repairs.before()) + setPressure()
                        + ".",
                "",
                "  "));
        text.append("\nIn plain words\n");
        plain().forEach(line -> text.append(Wrap.lines(line, "  ", "  ")));
        text.append("\n").append(Caution.WHOLE).append("\n");
        Repairs.Effect now = repairs.before();
        boolean low = IdlePressure.low(unit, duty, OptionalDouble.of(now.line()), OptionalDouble.of(now.set()));
        text.append(NoStallPhrase.of(low ? List.of(unit.build()) : List.of()));
        text.append("\nWhere the oil goes [")
                .append(Quantity.FLOW.in(units).unit())
                .append("], counted as the pump takes it in\n");
        text.append(budgetTable().text());
        return text.append(repairTables().text()).toString();
    }

    String csv() {
        return repairTables().csv(budgetTable());
    }

    private BudgetTable budgetTable() {
        return new BudgetTable(units, budget, abouts);
    }

    private RepairTables repairTables() {
        return new RepairTables(units, unit, repairs, abouts, lowest);
    }

    private String line(Repairs.Effect effect) {
        return LinePressurePhrase.of(units, effect.line(), effect.set());
    }

    private String setPressure() {
        double set = repairs.before().set();
        if (Double.isNaN(set)) {
            return "";
        }
        return " of the " + Quantity.PRESSURE.with(units, set) + " commanded"
                + (repairs.before().regulated() ? ", regulated" : ", NOT HELD");
    }

    private List<String> plain() {
        List<String> lines = new ArrayList<>();
        lines.add(lost());
        double needed = Roles.of(unit).lubeNeeded(duty);
        if (needed > 0) {
            lines.add("Lubrication gets "
                    + Quantity.FLOW.with(units, repairs.before().lube()) + "; it needs "
                    + Quantity.FLOW.with(units, needed) + " here.");
        }
        if (!repairs.alone().isEmpty()) {
            lines.add(best());
        }
        less().ifPresent(lines::add);
        reach().ifPresent(lines::add);
        return lines;
    }

    private String lost() {
        String fresh = repairs.all()
                .map(all -> " With every fit as new it would lose " + Quantity.FLOW.with(units, all.lost())
                        + ", with the line at " + line(all) + ".")
                .orElse("");
        return "Of the " + Quantity.FLOW.with(units, budget.displaced()) + " that the pump displaces, "
                + Quantity.FLOW.with(units, budget.lost()) + " is lost ("
                + Math.round(100 * budget.lost() / budget.displaced()) + " %): "
                + Quantity.FLOW.with(units, budget.flow(OilBudget.Fate.SLIP)) + " slips back inside the pump, "
                + Quantity.FLOW.with(units, budget.flow(OilBudget.Fate.LEAK)) + " leaks outside it." + fresh;
    }

    private String best() {
        Repairs.Step first = repairs.alone().get(0);
        Gain gain = gain(first.after());
        List<String> near = repairs.alone().stream()
                .skip(1)
                .filter(step -> gain(step.after()).what == gain.what
                        && gain(step.after()).won >= NEARLY * gain.won
                        && gain.won > 0)
                .map(step -> repairTables().called(step.repair()) + ", to " + gain.what.shown(this, step.after()))
                .toList();
        return "The one repair that wins most: " + repairTables().job(first) + ", " + gain.what.word + " "
                + gain.what.shown(this, repairs.before()) + " to " + gain.what.shown(this, first.after()) + "."
                + (near.isEmpty() ? "" : " Nearly as much: " + String.join("; ", near) + ".");
    }

    /** What a repair wins: pressure up to the set pressure; where that is held, lubrication, and where that stays, oil. */
    private record Gain(What what, double won) {}

    private enum What {
        LINE("line"),
        LUBRICATION("lubrication"),
        OIL("oil lost");

        private final String word;

        What(String word) {
            this.word = word;
        }

        String shown(LeaksText text, Repairs.Effect effect) {
            return switch (this) {
                case LINE -> text.line(effect);
                case LUBRICATION -> Quantity.FLOW.with(text.units, effect.lube());
                case OIL -> Quantity.FLOW.with(text.units, effect.lost());
            };
        }
    }

    private Gain gain(Repairs.Effect after) {
        Repairs.Effect before = repairs.before();
        if (!before.regulated()) {
            return new Gain(What.LINE, after.held() - before.held());
        }
        boolean lube = !What.LUBRICATION.shown(this, before).equals(What.LUBRICATION.shown(this, after));
        return lube
                ? new Gain(What.LUBRICATION, after.lube() - before.lube())
                : new Gain(What.OIL, before.lost() - after.lost());
    }

    /** After how many of the repairs the line is held, and after how many what the regulator feeds has enough too. */
    private Optional<String> reach() {
        if (repairs.before().regulated() || repairs.order().isEmpty()) {
            return Optional.empty();
        }
        List<Repairs.Effect> after =
                repairs.order().stream().map(Repairs.Step::after).toList();
        for (int i = 0; i < after.size(); i++) {
            if (after.get(i).regulated()) {
                String names = repairs.order().subList(0, i + 1).stream()
                        .map(step -> repairTables().called(step.repair()))
                        .collect(Collectors.joining(", "));
                return Optional.of("The set pressure is held here after " + (i == 0 ? "one repair" : i + 1 + " repairs")
                        + ": " + names + "." + served(after, i)
                        + " What follows in the list saves oil; the regulator keeps the pressure near its set value.");
            }
        }
        Repairs.Effect last = after.get(after.size() - 1);
        return Optional.of("After the " + after.size() + " repairs listed the line stands at " + line(last)
                + (unit.commanded().isPresent() ? ", still below the set pressure." : "."));
    }

    private static String served(List<Repairs.Effect> after, int held) {
        int i = held;
        while (i < after.size() && !after.get(i).starved().isEmpty()) {
            i++;
        }
        return i == held
                ? ""
                : " Then still short of oil: "
                        + String.join(", ", after.get(held).starved()) + "; all are served "
                        + (i < after.size() ? "after repair " + (i + 1) + "." : "after none of the repairs listed.");
    }

    /** Repairs that alone starve the lubrication further, and why; only while the line is not held. */
    private Optional<String> less() {
        if (repairs.before().regulated() || unit.commanded().isEmpty()) {
            return Optional.empty();
        }
        List<String> names = repairs.alone().stream()
                .limit(RepairTables.MOST_ALONE)
                .filter(step -> step.after().lube() < repairs.before().lube() * (1 - LESS))
                .map(step -> repairTables().called(step.repair()))
                .toList();
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of(String.join(", ", names)
                        + (names.size() == 1 ? " done alone leaves" : ": each done alone leaves")
                        + " the lubrication LESS oil: while the line is not held, converter and lubrication live on what worn"
                        + " valves let by. Done with the others it does no harm: once the line is held, the regulator feeds"
                        + " them.");
    }
}
