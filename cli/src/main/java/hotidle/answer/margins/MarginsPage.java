package hotidle.answer.margins;

import hotidle.answer.NotKnown;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.page.Block;
import hotidle.answer.phrase.HeadroomPhrase;
import hotidle.answer.phrase.MarginsScreenPhrase;
import hotidle.study.JudgedBuild;
import hotidle.study.Judgement;
import java.util.ArrayList;
import java.util.List;

/**
 * Judged builds on a page: how many limits hold, and each of those that do not hold with ease, with the reason.
 *
 * @param shown names of the driving conditions whose limits are listed
 */
record MarginsPage(Quantity.UnitSystem units, List<JudgedBuild> builds, List<String> shown) {

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        builds.forEach(build -> blocks.addAll(blocks(build)));
        blocks.add(Block.said(HeadroomPhrase.LEGEND));
        return blocks;
    }

    private List<Block> blocks(JudgedBuild build) {
        MarginsScreen screen = new MarginsScreen(units, "", builds, shown, List.of(), "");
        List<String> said = new ArrayList<>();
        said.add(
                MarginsScreenPhrase.headed(build.unit().build(), false, new LimitRows.LimitCount(units, build).said()));
        said.addAll(screen.notKnown(build));
        said.add(NotKnown.said(build.verdict().undecided()));
        List<ListedLimits.DutyLimit> told = new ListedLimits(units, build, shown).told();
        return told.isEmpty()
                ? List.of(Block.said(said))
                : List.of(
                        Block.said(said),
                        Block.table(MarginsScreenPhrase.worstFirst(build.unit().build()), table(build, told)));
    }

    private TextTable table(JudgedBuild build, List<ListedLimits.DutyLimit> told) {
        MarginsScreenPhrase phrase = new MarginsScreenPhrase(units);
        List<String> head = new ArrayList<>(MarginsScreenPhrase.HEAD);
        head.add(MarginsScreenPhrase.WHY);
        TextTable table = new TextTable(head);
        told.forEach(one -> table.add(List.of(
                phrase.verdict(one.margin()),
                one.duty(),
                phrase.limit(one.margin()),
                phrase.isOfNeeded(one.margin()),
                new MarginSentences(units).why(judged(build, one.duty()), one.margin()))));
        return table;
    }

    private static Judgement judged(JudgedBuild build, String duty) {
        return build.duties().stream()
                .filter(judged -> judged.duty().name().equals(duty))
                .findFirst()
                .orElseThrow();
    }
}
