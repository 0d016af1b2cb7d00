package hotidle.answer.report;

import hotidle.answer.page.Block;
import hotidle.answer.page.Section;
import hotidle.answer.phrase.CustomerPhrase;
import hotidle.answer.phrase.ReportPhrase;
import hotidle.answer.phrase.TermPhrase;
import hotidle.study.JudgedBuild;
import java.util.ArrayList;
import java.util.List;

/** The sections of a report for who pays for the work: two pages in plain words. */
record CustomerSections(ReportSections whole) {

    private Findings found() {
        return whole.found();
    }

    List<Section> all() {
        List<Section> all = new ArrayList<>();
        all.add(new Section("answer", ReportPhrase.ANSWER, answer()));
        found().jobs()
                .ifPresent(jobs -> all.add(new Section("repair", ReportPhrase.REPAIR, whole.withFirst(jobs.page()))));
        found().leaks()
                .ifPresent(
                        leaks -> all.add(new Section("why", ReportPhrase.BECAUSE, List.of(Block.said(leaks.lost())))));
        whole.charts()
                .ifPresent(charts -> all.add(new Section(
                        "pressure", ReportPhrase.PRESSURE_CHART, List.of(Block.figure(charts.pressure())))));
        found().window()
                .ifPresent(window -> all.add(new Section(
                        "set",
                        ReportPhrase.MAY_BE_SET,
                        List.of(Block.said(found().margins().builds().stream()
                                .map(build -> window.brief(build.unit().build()))
                                .toList())))));
        whole.shown().ifPresent(all::add);
        all.add(new Section("words", ReportPhrase.WORDS, List.of(Block.said(words()))));
        all.add(cautions());
        return all;
    }

    private List<Block> answer() {
        List<Block.Line> lines = new ArrayList<>();
        found().gauge()
                .map(gauge -> gauge.findings().agreement().agrees())
                .ifPresent(agrees ->
                        lines.add(new Block.Line(CustomerPhrase.readings(agrees), agrees ? "" : Block.Line.CAUTION)));
        for (JudgedBuild build : found().margins().builds()) {
            CustomerPhrase.Looks looks = Verdicts.looks(build);
            lines.add(new Block.Line(
                    CustomerPhrase.verdict(
                            build.unit().build(),
                            looks,
                            looks == CustomerPhrase.Looks.HOLDS
                                    ? ""
                                    : found().margins().firstLimit(build)),
                    Verdicts.style(build)));
        }
        return List.of(new Block(lines, List.of(), List.of()));
    }

    private static List<String> words() {
        return TermPhrase.ALL.stream()
                .filter(term -> CustomerPhrase.WORDS.contains(term.word()))
                .map(term -> CustomerPhrase.word(term.word(), term.meaning()))
                .toList();
    }

    private Section cautions() {
        List<Block> blocks = new ArrayList<>(whole.cautions().blocks().subList(0, 1));
        blocks.add(Block.said(List.of(
                CustomerPhrase.WHOLE, ReportPhrase.VERSION + whole.made().version())));
        return new Section("cautions", ReportPhrase.CARE, blocks);
    }
}
