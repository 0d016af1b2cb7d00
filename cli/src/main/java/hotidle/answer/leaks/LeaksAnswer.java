package hotidle.answer.leaks;

import hotidle.answer.Answer;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.page.Block;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.DutyLinePhrase;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.LinePressurePhrase;
import hotidle.answer.phrase.NoStallPhrase;
import hotidle.answer.phrase.OilLostPhrase;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.assess.Assessment;
import hotidle.assess.Figures;
import hotidle.assess.Roles;
import hotidle.result.Outcome;
import hotidle.study.LeakStudy;
import hotidle.study.Repairs;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where the oil of a build goes at a duty point, and what each repair wins back.
 *
 * @param units   in which it is shown
 * @param about   what the file says of the circuit
 * @param abouts  and of each part
 * @param unit    the build
 * @param roles   of its parts
 * @param duty    the duty point
 * @param outcome its state there
 * @param assessed what that state means
 * @param found   what was found; empty where there is no state
 * @param faulted whether a fault lies over the build, beside which no jobs are asked for
 */
public record LeaksAnswer(
        Quantity.UnitSystem units,
        String about,
        Map<String, String> abouts,
        Transmission unit,
        Roles roles,
        DutyPoint duty,
        Outcome outcome,
        Optional<Assessment> assessed,
        Optional<LeakStudy.Found> found,
        boolean faulted)
        implements Answer {

    /** Repairs on their own that the screen lists. */
    public static final int MOST_ALONE = RepairTables.MOST_ALONE;

    public LeaksAnswer {
        abouts = Map.copyOf(abouts);
    }

    @Override
    public String screen() {
        return found.map(known -> new LeaksScreen(
                                units, unit, line(known.repairs().before()), names(), sentences(known), known, faulted)
                        .text())
                .orElseGet(this::full);
    }

    @Override
    public String full() {
        return found.map(this::known).orElseGet(() -> Wrap.lines(headed() + why(), "", "  "));
    }

    private String known(LeakStudy.Found known) {
        StringBuilder text = new StringBuilder();
        text.append(Wrap.lines(HeadingPhrase.headed(unit.circuit(), about), "", "  "));
        text.append(Wrap.lines(line(known.repairs().before()), "", "  "));
        text.append("\n" + HeadingPhrase.IN_WORDS + "\n");
        sentences(known).all().forEach(line -> text.append(Wrap.lines(line, "  ", "  ")));
        text.append('\n').append(Caution.WHOLE).append('\n');
        text.append(NoStallPhrase.of(known.lowAtIdle() ? List.of(unit.build()) : List.of()));
        text.append("\n" + OilLostPhrase.heading(units) + "\n");
        return text.append(budget(known).text()).append(repairs(known).text()).toString();
    }

    /** The same on a page. */
    public List<Block> page() {
        if (found.isEmpty()) {
            return List.of(Block.said(headed() + why()));
        }
        LeakStudy.Found known = found.get();
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.said(line(known.repairs().before())));
        blocks.add(Block.said(sentences(known).all()));
        blocks.add(Block.table(OilLostPhrase.heading(units), budget(known).table()));
        blocks.add(Block.said(budget(known).closes()));
        blocks.addAll(repairs(known).page());
        return blocks;
    }

    /** How much oil is lost, and what is left for the lubrication; the reason alone where there is no state. */
    public List<String> lost() {
        return found.map(known -> sentences(known).lostAndLeft()).orElseGet(() -> List.of(headed() + why()));
    }

    private String line(Repairs.Effect now) {
        String line = LinePressurePhrase.of(units, now.line(), now.set());
        double sump = duty.temperatures().get("sump");
        Figures figures = assessed.orElseThrow().figures();
        return now.set().isEmpty()
                ? DutyLinePhrase.uncommanded(unit.build(), duty.name(), duty.speed(), duty.range(), sump, line, units)
                : DutyLinePhrase.commanded(
                        unit.build(),
                        duty.name(),
                        duty.speed(),
                        duty.range(),
                        sump,
                        line,
                        now.set().getAsDouble(),
                        figures.regulator(),
                        figures.low(),
                        units);
    }

    private RepairNames names() {
        return new RepairNames(abouts, units);
    }

    private LeaksSentences sentences(LeakStudy.Found known) {
        return new LeaksSentences(
                units,
                names(),
                known.budget(),
                known.repairs(),
                known.findings(),
                roles.lubeNeeded(duty),
                unit.commanded().isPresent());
    }

    private BudgetTable budget(LeakStudy.Found known) {
        return new BudgetTable(units, known.budget(), abouts);
    }

    private RepairTables repairs(LeakStudy.Found known) {
        return new RepairTables(
                units,
                names(),
                known.repairs(),
                known.findings(),
                !roles.lube().isEmpty(),
                roles.secondary().isPresent(),
                known.lowest());
    }

    private String headed() {
        return HeadingPhrase.at(unit.build(), duty.name()) + ": ";
    }

    private String why() {
        return outcome.unsolved()
                .map(unsolved -> UnsolvedPhrase.why(unsolved.culprit(), unsolved.residual(), unsolved.tried()))
                .orElseThrow();
    }

    @Override
    public TextTable table() {
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
        found.ifPresentOrElse(
                known -> {
                    budget(known).rows().forEach(table::add);
                    repairs(known).rows().forEach(table::add);
                },
                () -> table.add(List.of(UnsolvedPhrase.CELL, headed() + why(), "", "", "", "", "", "", "")));
        return table;
    }

    @Override
    public Object json() {
        return LeaksRecord.of(this);
    }

    @Override
    public boolean complete() {
        return found.isPresent();
    }
}
