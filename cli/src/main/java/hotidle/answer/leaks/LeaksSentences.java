package hotidle.answer.leaks;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.LinePressurePhrase;
import hotidle.answer.phrase.OilLostPhrase;
import hotidle.answer.phrase.RepairPhrase;
import hotidle.assess.OilBudget;
import hotidle.study.RepairFindings;
import hotidle.study.Repairs;
import java.util.ArrayList;
import java.util.List;

/**
 * The oil budget and the repairs of a build, in plain words.
 *
 * @param lubeNeeded what the lubrication needs at the duty [m³/s], 0 where none is said
 * @param commanded  whether line pressure is commanded
 */
record LeaksSentences(
        Quantity.UnitSystem units,
        RepairNames names,
        OilBudget budget,
        Repairs repairs,
        RepairFindings findings,
        double lubeNeeded,
        boolean commanded) {

    /** How much is lost, and what is left for the lubrication. */
    List<String> lostAndLeft() {
        List<String> lines = new ArrayList<>(List.of(lost()));
        if (lubeNeeded > 0) {
            lines.add(OilLostPhrase.lubrication(repairs.before().lube(), lubeNeeded, units));
        }
        return lines;
    }

    List<String> all() {
        List<String> lines = new ArrayList<>(lostAndLeft());
        findings.best().map(this::best).ifPresent(lines::add);
        if (!findings.starving().isEmpty()) {
            lines.add(RepairPhrase.starving(
                    findings.starving().stream().map(names::called).toList()));
        }
        findings.reach().map(this::reach).ifPresent(lines::add);
        return lines;
    }

    /** Those of the first screen, the answer first. */
    List<String> first() {
        List<String> lines = new ArrayList<>();
        findings.reach().map(this::reachShort).ifPresent(lines::add);
        findings.best()
                .map(best -> RepairPhrase.best(
                        names.shortJob(best.step().repair()),
                        word(best.gain()),
                        shown(best.gain(), repairs.before()),
                        shown(best.gain(), best.step().after()),
                        List.of()))
                .ifPresentOrElse(lines::add, () -> lines.add(RepairPhrase.NOTHING));
        if (!findings.starving().isEmpty()) {
            lines.add(RepairPhrase.starvingShort(
                    findings.starving().stream().map(Repairs.Repair::name).toList()));
        }
        lines.add(String.join(" ", lostAndLeft()));
        return lines;
    }

    private String reachShort(RepairFindings.Reach reach) {
        return reach.held().isEmpty()
                ? reach(reach)
                : RepairPhrase.heldShort(
                        Quantity.PRESSURE.with(units, repairs.before().set().orElseThrow()),
                        repairs.order().stream()
                                .limit(reach.held().getAsInt())
                                .map(step -> step.repair().name())
                                .toList(),
                        reach.starved(),
                        reach.served());
    }

    private String lost() {
        String now = OilLostPhrase.lost(
                        budget.displaced(), budget.flow(OilBudget.Fate.SLIP), budget.flow(OilBudget.Fate.LEAK), units)
                + OilLostPhrase.back(
                        budget.flow(OilBudget.Fate.RECIRCULATED),
                        commanded && !repairs.before().regulated(),
                        units);
        return repairs.all()
                .map(all -> now + " " + OilLostPhrase.asNew(all.lost(), line(all), units))
                .orElse(now);
    }

    private String line(Repairs.Effect effect) {
        return LinePressurePhrase.of(units, effect.line(), effect.set());
    }

    private String best(RepairFindings.Best best) {
        RepairFindings.Gain gain = best.gain();
        return RepairPhrase.best(
                names.job(best.step().repair()),
                word(gain),
                shown(gain, repairs.before()),
                shown(gain, best.step().after()),
                best.near().stream()
                        .map(step -> RepairPhrase.near(names.called(step.repair()), shown(gain, step.after())))
                        .toList());
    }

    private static String word(RepairFindings.Gain gain) {
        return switch (gain) {
            case LINE -> "line";
            case SERVED -> RepairPhrase.SERVED_LEAST;
            case OIL -> "oil lost";
        };
    }

    private String shown(RepairFindings.Gain gain, Repairs.Effect effect) {
        return switch (gain) {
            case LINE -> line(effect);
            case SERVED -> RepairPhrase.ofNeed(effect.served());
            case OIL -> Quantity.FLOW.with(units, effect.lost());
        };
    }

    private String reach(RepairFindings.Reach reach) {
        if (reach.held().isEmpty()) {
            return RepairPhrase.notHeld(repairs.order().size(), line(reach.last()), commanded);
        }
        List<String> needed = repairs.order().stream()
                .limit(reach.held().getAsInt())
                .map(step -> names.called(step.repair()))
                .toList();
        return RepairPhrase.held(needed, reach.starved(), reach.served());
    }
}
