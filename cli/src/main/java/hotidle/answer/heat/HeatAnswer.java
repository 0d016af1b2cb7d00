package hotidle.answer.heat;

import hotidle.answer.Answer;
import hotidle.answer.format.FirstScreen;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.page.Block;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.HeatPhrase;
import hotidle.heat.HeatFlows;
import hotidle.heat.HeatItem;
import hotidle.heat.WarmState;
import hotidle.heat.Warmed;
import hotidle.study.HeatStudy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * Where heat comes from and goes in some builds.
 *
 * @param circuit its name
 * @param about   what its file says of it; may be empty
 * @param study   what was found
 * @param units   in which numbers are shown
 */
public record HeatAnswer(String circuit, String about, HeatStudy study, UnitSystem units) implements Answer {

    @Override
    public String screen() {
        FirstScreen screen = new FirstScreen(Wrap.lines(HeatPhrase.CAUTION, "", "  "));
        screen.add(Wrap.lines(HeadingPhrase.headed(circuit, about), "", "  "));
        if (alone()) {
            hottest().forEach(line -> screen.add(Wrap.lines(line, "", "  ")));
        }
        screen.add(HeatPhrase.SETTLES).add(temperatures().fitted(Wrap.WIDTH));
        List<String> said = sentences(false);
        said.forEach(sentence -> screen.addWhereRoom(Wrap.lines(sentence, "", "  ")));
        shown(false)
                .forEach(duty -> screen.addWhereRoom(Wrap.lines(
                                HeatPhrase.most(
                                        duties().get(duty),
                                        study.builds().get(0).unit().build()),
                                "",
                                "  ")
                        + heat(duty, false).fitted(Wrap.WIDTH)));
        if (!alone()) {
            hottest().forEach(line -> screen.addWhereRoom(Wrap.lines(line, "", "  ")));
        }
        return screen.text();
    }

    /** Heat by source and sink of every driving condition, not only of the one that makes most of those that last. */
    @Override
    public String full() {
        boolean full = true;
        StringBuilder text = new StringBuilder(Wrap.lines(HeadingPhrase.headed(circuit, about), "", "  "));
        hottest().forEach(line -> text.append(Wrap.lines(line, "", "  ")));
        text.append(HeatPhrase.SETTLES).append('\n').append(temperatures().aligned());
        shown(full).forEach(duty -> text.append('\n').append(heat(duty, full).aligned()));
        sentences(full).forEach(sentence -> text.append(Wrap.lines(sentence, "", "  ")));
        return text.append(Wrap.lines(HeatPhrase.CAUTION, "", "  ")).toString();
    }

    /** The same on a page. */
    public List<Block> page() {
        List<Block> blocks =
                new ArrayList<>(List.of(Block.said(hottest()), Block.table(HeatPhrase.SETTLES, temperatures())));
        blocks.add(Block.said(sentences(false)));
        shown(false).forEach(duty -> blocks.add(Block.table(HeatPhrase.FROM_AND_TO, heat(duty, true))));
        return blocks;
    }

    /** Of several builds the table tells side by side how hot each gets. */
    private boolean alone() {
        return study.builds().size() == 1;
    }

    /** How hot each build gets, in a sentence. */
    private List<String> hottest() {
        return study.builds().stream().map(this::hottest).toList();
    }

    private String hottest(HeatStudy.BuildHeat build) {
        String name = build.unit().build();
        List<Warmed> warmed =
                build.duties().stream().map(HeatStudy.DutyHeat::warmed).toList();
        List<Warmed> known =
                warmed.stream().filter(one -> one.settled().isPresent()).toList();
        Optional<Warmed> sump = known.stream().max(Comparator.comparingDouble(HeatAnswer::sump));
        Optional<Warmed> converter = known.stream()
                .filter(one -> converter(one.settled().orElseThrow()).isPresent())
                .max(Comparator.comparingDouble(
                        one -> converter(one.settled().orElseThrow()).orElseThrow()));
        return sump.map(hot -> HeatPhrase.hottest(
                        units,
                        name,
                        sump(hot),
                        hot.duty().name(),
                        converter
                                .map(one -> converter(one.settled().orElseThrow()))
                                .orElse(OptionalDouble.empty()),
                        converter.map(one -> one.duty().name()).orElse(""),
                        warmed.stream()
                                .filter(one -> one.settled().isEmpty())
                                .map(one -> one.duty().name())
                                .toList()))
                .orElseGet(() -> HeatPhrase.nowhere(name));
    }

    private static double sump(Warmed warmed) {
        return warmed.settled().orElseThrow().at().sump();
    }

    private List<String> duties() {
        return study.builds().get(0).duties().stream()
                .map(duty -> duty.warmed().duty().name())
                .toList();
    }

    private TextTable temperatures() {
        TextTable whole = temperatures(true);
        boolean fits = whole.aligned().lines().allMatch(line -> line.length() <= Wrap.WIDTH);
        return fits ? whole : temperatures(false);
    }

    /** @param held whether it is said how long each driving condition lasts: with many builds there is no room */
    private TextTable temperatures(boolean held) {
        List<String> head =
                new ArrayList<>(held ? List.of("driving condition", HeatPhrase.HELD) : List.of("driving condition"));
        study.builds().forEach(build -> head.add(build.unit().build()));
        TextTable table = new TextTable(head);
        for (int i = 0; i < duties().size(); i++) {
            List<String> row =
                    new ArrayList<>(held ? List.of(duties().get(i), held().said(i)) : List.of(duties().get(i)));
            for (HeatStudy.BuildHeat build : study.builds()) {
                row.add(ends(build.duties().get(i).warmed()));
            }
            table.add(row);
        }
        return table;
    }

    private String ends(Warmed warmed) {
        return warmed.settled()
                .map(state -> HeatPhrase.ends(units, state.at().sump(), converter(state)))
                .orElseGet(() -> HeatPhrase.endsAt(warmed.verdict(), warmed.seconds()));
    }

    static OptionalDouble converter(WarmState state) {
        return state.flows().items().stream().anyMatch(item -> item.kind() == HeatItem.Kind.HOUSING)
                ? OptionalDouble.of(state.at().converter())
                : OptionalDouble.empty();
    }

    private Optional<String> hotterConverter(WarmState state, WarmState base) {
        return converter(state).isPresent()
                ? Optional.of(HeatPhrase.hotter(
                        units, state.at().converter(), base.at().converter()))
                : Optional.empty();
    }

    /** Driving conditions whose heat is shown. */
    private List<Integer> shown(boolean full) {
        List<Integer> known = new ArrayList<>();
        int most = -1;
        double heat = 0;
        for (int i = 0; i < duties().size(); i++) {
            Optional<HeatFlows> flows = flows(study.builds().get(0), i);
            if (flows.isPresent()) {
                known.add(i);
                if (held().lasting(i) && flows.get().generated() > heat) {
                    heat = flows.get().generated();
                    most = i;
                }
            }
        }
        return full || most < 0 ? known : List.of(most);
    }

    private HeldDuties held() {
        return new HeldDuties(study, units);
    }

    static Optional<HeatFlows> flows(HeatStudy.BuildHeat build, int duty) {
        return build.duties().get(duty).warmed().settled().map(WarmState::flows);
    }

    private TextTable heat(int duty, boolean full) {
        List<String> head = new ArrayList<>(List.of(HeatPhrase.at(units, duties().get(duty))));
        study.builds().forEach(build -> head.add(build.unit().build()));
        TextTable table = new TextTable(head);
        if (full) {
            for (HeatItem.Kind kind : HeatItem.Kind.values()) {
                add(table, HeatPhrase.named(kind), duty, flows -> flows.watts(kind));
            }
        } else {
            for (HeatPhrase.Sum sum : HeatPhrase.Sum.values()) {
                add(
                        table,
                        sum.words(),
                        duty,
                        flows -> Arrays.stream(HeatItem.Kind.values())
                                .filter(kind -> HeatPhrase.Sum.of(kind) == sum)
                                .mapToDouble(flows::watts)
                                .sum());
            }
        }
        return table;
    }

    /** A row, unless no build has any of it. */
    private void add(TextTable table, String name, int duty, ToDoubleFunction<HeatFlows> heat) {
        List<Optional<Double>> watts = study.builds().stream()
                .map(build -> flows(build, duty).map(heat::applyAsDouble))
                .toList();
        if (watts.stream().anyMatch(value -> value.orElse(0.0) != 0)) {
            List<String> row = new ArrayList<>(List.of(name));
            watts.forEach(value ->
                    row.add(value.map(one -> Quantity.HEAT.number(units, one)).orElse("-")));
            table.add(row);
        }
    }

    private List<String> sentences(boolean full) {
        List<String> said = new ArrayList<>();
        held().soonOver(shown(false)).ifPresent(said::add);
        Optional.ofNullable(held().duty(0).temperatures().get("sump"))
                .ifPresent(sump -> said.add(HeatPhrase.elsewhere(units, duties().get(0), sump)));
        String first = study.builds().get(0).unit().build();
        for (HeatStudy.BuildHeat build : study.builds()) {
            String name = build.unit().build();
            for (int i = 0; i < build.duties().size(); i++) {
                HeatStudy.DutyHeat duty = build.duties().get(i);
                Warmed warmed = duty.warmed();
                Optional<WarmState> base =
                        study.builds().get(0).duties().get(i).warmed().settled();
                String at = warmed.duty().name();
                if (warmed.verdict() == Warmed.WarmingEnd.SEVERAL) {
                    said.add(HeatPhrase.several(
                            units,
                            name,
                            at,
                            warmed.settled().get().at().sump(),
                            warmed.others().stream()
                                    .map(state -> state.at().sump())
                                    .toList()));
                }
                duty.cost()
                        .filter(cost -> full || at.equals(duties().get(0)))
                        .ifPresent(cost -> said.add(HeatPhrase.cost(
                                units,
                                name,
                                first,
                                at,
                                HeatPhrase.hotter(
                                        units,
                                        sump(warmed),
                                        base.orElseThrow().at().sump()),
                                hotterConverter(warmed.settled().orElseThrow(), base.orElseThrow()),
                                cost.line(),
                                cost.lube(),
                                cost.film())));
            }
        }
        if (!study.builds().stream().allMatch(HeatStudy.BuildHeat::known)) {
            said.add(HeatPhrase.LIMIT);
        }
        return said;
    }

    @Override
    public TextTable table() {
        return HeatRows.of(study);
    }

    @Override
    public Object json() {
        return HeatRecord.of(circuit, study);
    }

    @Override
    public boolean complete() {
        return study.builds().stream()
                .flatMap(build -> build.duties().stream())
                .noneMatch(duty -> duty.warmed().verdict() == Warmed.WarmingEnd.NOT_SOLVED
                        || duty.warmed().verdict() == Warmed.WarmingEnd.START_NOT_KNOWN);
    }
}
