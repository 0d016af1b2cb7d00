package hotidle.answer.report;

import hotidle.answer.jobs.PlainJobs;
import hotidle.answer.page.Block;
import hotidle.answer.page.Section;
import hotidle.answer.phrase.CustomerLimitPhrase;
import hotidle.answer.phrase.CustomerPhrase;
import hotidle.answer.phrase.ReportPhrase;
import hotidle.answer.phrase.TermPhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.BuildVerdict;
import hotidle.study.JudgedBuild;
import hotidle.study.Judgement;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The sections of a report for who pays for the work: two pages in plain words. */
record CustomerSections(ReportSections whole) {

    private Findings found() {
        return whole.found();
    }

    List<Section> all() {
        List<Section> all = new ArrayList<>();
        all.add(new Section("answer", ReportPhrase.ANSWER, answer()));
        found().jobs()
                .map(jobs -> new PlainJobs(jobs).blocks())
                .ifPresent(blocks -> all.add(new Section("repair", ReportPhrase.REPAIR, blocks)));
        found().leaks()
                .ifPresent(leaks -> all.add(new Section(
                        "why",
                        ReportPhrase.BECAUSE,
                        List.of(
                                Block.said(CustomerPhrase.because(
                                        at(unit(), leaks.duty().name()))),
                                Block.said(leaks.lost())))));
        whole.charts()
                .ifPresent(charts -> all.add(new Section(
                        "pressure", ReportPhrase.PRESSURE_CHART, List.of(Block.figure(charts.pressure())))));
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
        found().margins().builds().forEach(build -> build(build, lines));
        List<String> open = notKnown();
        if (!open.isEmpty()) {
            lines.add(new Block.Line(CustomerPhrase.notKnown(open), ""));
        }
        return List.of(new Block(lines, List.of(), List.of()));
    }

    /** Limits of which it is not known of some build, as it is or may be set, whether they hold. */
    private List<String> notKnown() {
        Stream<Judgement.Key> asTheyAre =
                found().margins().builds().stream().flatMap(build -> build.verdict().undecided().stream());
        Stream<Judgement.Key> asSet = found().window().stream()
                .flatMap(window -> found().margins().builds().stream()
                        .flatMap(build -> window.undecided(build.unit().build()).stream()));
        Stream<Judgement.Key> afterRepairs =
                found().repaired().stream().flatMap(window -> window.undecided(repaired()).stream());
        return Stream.of(asTheyAre, asSet, afterRepairs)
                .flatMap(keys -> keys)
                .map(key -> CustomerLimitPhrase.of(key.kind()))
                .distinct()
                .toList();
    }

    private Transmission unit() {
        return found().margins().builds().get(0).unit();
    }

    private String first() {
        return unit().build();
    }

    private CustomerPhrase phrase() {
        return new CustomerPhrase(whole.units());
    }

    private String at(Transmission unit, String duty) {
        DutyPoint point = unit.duty(duty).orElseThrow();
        return phrase().at(
                        point.range(),
                        point.speed(),
                        Optional.ofNullable(point.temperatures().get("sump")));
    }

    private String repaired() {
        return CustomerPhrase.repaired(first());
    }

    /** What it comes to, what may be set, what must be repaired and what that leaves; what the trade calls it stands in the shop's own report. */
    private void build(JudgedBuild build, List<Block.Line> lines) {
        String name = build.unit().build();
        boolean first = name.equals(first());
        String when = first ? CustomerPhrase.AS_IT_IS : CustomerPhrase.built(name);
        String called = first ? CustomerPhrase.asItIs(name) : CustomerPhrase.builtAs(name, about(name));
        lines.add(new Block.Line(
                CustomerPhrase.verdict(called, Verdicts.looks(build), why(build)), Verdicts.style(build)));
        if (build.lowAtIdle()) {
            lines.add(new Block.Line(CustomerPhrase.lowAtIdle(when), Block.Line.CAUTION));
        }
        found().window().ifPresent(window -> lines.add(new Block.Line(window.plain(name, when), Block.Line.BELOW)));
        if (first) {
            String carries = found().repairedTorque().stream()
                    .mapToObj(torque -> " " + phrase().carries(CustomerPhrase.THEN, torque))
                    .findFirst()
                    .orElse("");
            found().jobs()
                    .ifPresent(
                            jobs -> lines.add(new Block.Line(new PlainJobs(jobs).said() + carries, Block.Line.BELOW)));
            found().repaired()
                    .ifPresent(window -> lines.add(
                            new Block.Line(window.plain(repaired(), CustomerPhrase.AFTER_REPAIRS), Block.Line.BELOW)));
            found().repaired()
                    .filter(window -> !window.lowAtIdle().isEmpty())
                    .ifPresent(low -> lines.add(new Block.Line(
                            CustomerPhrase.lowAtIdle(CustomerPhrase.AFTER_REPAIRS), Block.Line.CAUTION)));
        } else {
            other(build, when, lines);
        }
    }

    /** What tells a build from the unit that came in: what it takes, and what it carries where it holds. */
    private void other(JudgedBuild build, String when, List<Block.Line> lines) {
        String name = build.unit().build();
        if (Verdicts.looks(build) == CustomerPhrase.Looks.FAILS) {
            found().jobs(name)
                    .ifPresent(jobs -> lines.add(new Block.Line(new PlainJobs(jobs).said(), Block.Line.BELOW)));
            return;
        }
        found().torque()
                .ifPresent(held -> held.least(name)
                        .ifPresent(
                                torque -> lines.add(new Block.Line(phrase().carries(when, torque), Block.Line.BELOW))));
        lines.add(new Block.Line(CustomerPhrase.OTHER_WORK, Block.Line.BELOW));
    }

    private String about(String build) {
        return whole.circuit().builds().stream()
                .filter(one -> one.name().equals(build))
                .map(DescribedCircuit.Build::about)
                .findFirst()
                .orElse("");
    }

    private String why(JudgedBuild build) {
        Optional<BuildVerdict.FirstLimit> first = build.verdict().first();
        if (build.verdict().dragging().isPresent()) {
            return found().margins().firstLimit(build);
        }
        return switch (Verdicts.looks(build)) {
            case FAILS ->
                first.map(limit -> CustomerLimitPhrase.fails(limit.margin().kind(), at(build.unit(), limit.duty())))
                        .orElse("");
            case NARROW, OPEN ->
                first.map(limit -> CustomerLimitPhrase.nearest(limit.margin().kind(), at(build.unit(), limit.duty())))
                        .orElse("");
            case HOLDS -> "";
        };
    }

    private static List<String> words() {
        return TermPhrase.ALL.stream()
                .filter(term -> CustomerPhrase.WORDS.contains(term.word()))
                .map(term -> CustomerPhrase.word(term.word(), term.meaning()))
                .toList();
    }

    private Section cautions() {
        List<String> said = new ArrayList<>(
                List.of(CustomerPhrase.CAUTION, CustomerPhrase.notJudged(unit().rated()), CustomerPhrase.WHOLE));
        said.add(ReportPhrase.VERSION + whole.made().version());
        return new Section("cautions", ReportPhrase.CARE, List.of(Block.said(said)));
    }
}
