package hotidle.answer.jobs;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.phrase.JobPhrase;
import hotidle.answer.phrase.LinePressurePhrase;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.study.JobStudy;
import hotidle.study.Repairs;
import hotidle.transmission.Job;
import hotidle.transmission.JobCost;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What jobs win back, as rows. */
record JobRows(Quantity.UnitSystem units, JobsAnswer answer) {

    /** For readers: the best jobs, at most so many, each alone, those recommended together, and all of them. */
    TextTable shown(int most) {
        JobStudy study = answer.study();
        TextTable table = new TextTable(head(
                new JobPhrase(units).table(answer.duty().name(), answer.duty().speed())));
        table.add(shown(JobPhrase.AS_IS, study.before()));
        study.alone().stream()
                .limit(most)
                .forEach(state -> table.add(shown(state.jobs().get(0).name(), state)));
        study.done()
                .filter(state -> state.jobs().size() > 1
                        && state.jobs().size() < answer.shop().jobs().size())
                .ifPresent(state ->
                        table.add(shown(JobPhrase.recommended(state.jobs().size()), state)));
        study.all().ifPresent(state -> table.add(shown(JobPhrase.ALL, state)));
        return table;
    }

    private List<String> head(String first) {
        List<String> head = new ArrayList<>(List.of(first, "line", "lube", "lost", JobPhrase.FAILING));
        if (costs()) {
            head.add(answer.study().measure() == JobCost.PRICE ? "price" : "hours");
        }
        return head;
    }

    private boolean costs() {
        return answer.study().measure() != JobCost.JOBS;
    }

    private List<String> shown(String name, JobStudy.JobState state) {
        List<String> row = new ArrayList<>(List.of(
                name,
                cell(state, effect -> LinePressurePhrase.of(units, effect.line(), effect.set())),
                cell(state, effect -> Quantity.FLOW.with(units, effect.lube())),
                cell(state, effect -> Quantity.FLOW.with(units, effect.lost())),
                state.failing().size() + (state.known() ? "" : JobPhrase.MORE_NOT_KNOWN)));
        if (costs()) {
            double cost = answer.study().measure().cost(state.jobs());
            row.add(state.jobs().isEmpty() ? "" : JobPhrase.amount(cost));
        }
        return row;
    }

    /** Whether a job alone raises the line and loses more oil than nothing done. */
    boolean losesMoreByPressure() {
        return answer.study().before().effect().isPresent()
                && answer.study().alone().stream()
                        .flatMap(state -> state.effect().stream())
                        .anyMatch(this::losesMoreByPressure);
    }

    private boolean losesMoreByPressure(Repairs.Effect effect) {
        Repairs.Effect before = answer.study().before().effect().orElseThrow();
        return effect.lost() > before.lost() && effect.line() > before.line();
    }

    private static String cell(JobStudy.JobState state, Function<Repairs.Effect, String> shown) {
        return state.effect().map(shown).orElse(UnsolvedPhrase.CELL);
    }

    /** For a spreadsheet: every job alone, all of them, and the sets that keep every limit. */
    TextTable all() {
        String flow = Quantity.FLOW.in(units).unit();
        TextTable table = new TextTable(List.of(
                "kind",
                "jobs",
                "line " + Quantity.PRESSURE.in(units).unit(),
                "lube " + flow,
                "lost " + flow,
                "limits failing",
                "hours",
                "price",
                "least headroom"));
        JobStudy study = answer.study();
        table.add(row("before", study.before()));
        study.alone().forEach(state -> table.add(row("alone", state)));
        study.all().ifPresent(state -> table.add(row("all", state)));
        study.done().ifPresent(state -> table.add(row("done", state)));
        study.chosen().ifPresent(set -> table.add(row("chosen", set)));
        study.equal().forEach(set -> table.add(row("equal", set)));
        study.fewest().ifPresent(set -> table.add(row("fewest", set)));
        return table;
    }

    private List<String> row(String kind, JobStudy.JobState state) {
        return List.of(
                kind,
                names(state.jobs()),
                cell(state, effect -> Quantity.PRESSURE.number(units, effect.line())),
                cell(state, effect -> Quantity.FLOW.number(units, effect.lube())),
                cell(state, effect -> Quantity.FLOW.number(units, effect.lost())),
                String.valueOf(state.failing().size()),
                sum(state.jobs(), Job::hours),
                sum(state.jobs(), Job::price),
                "");
    }

    private static List<String> row(String kind, JobStudy.JobSet set) {
        return List.of(
                kind,
                names(set.jobs()),
                "",
                "",
                "",
                "0",
                sum(set.jobs(), Job::hours),
                sum(set.jobs(), Job::price),
                set.least()
                        .map(limit -> String.valueOf(limit.margin().headroom()))
                        .orElse(""));
    }

    private static String names(List<Job> jobs) {
        return jobs.stream().map(Job::name).collect(Collectors.joining(" + "));
    }

    /** A sum of what all of them say; empty where one does not. */
    private static String sum(List<Job> jobs, Function<Job, OptionalDouble> what) {
        boolean said =
                !jobs.isEmpty() && jobs.stream().allMatch(job -> what.apply(job).isPresent());
        return said
                ? JobPhrase.amount(jobs.stream()
                        .mapToDouble(job -> what.apply(job).orElseThrow())
                        .sum())
                : "";
    }
}
