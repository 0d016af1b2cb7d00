package hotidle.answer.torque;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.phrase.AskedTorquePhrase;
import hotidle.answer.phrase.StagePhrase;
import hotidle.answer.phrase.TorquePhrase;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.study.StageJobs;
import hotidle.study.TorqueHeld;
import hotidle.study.TorqueHeld.Held;
import hotidle.study.UsefulPressure;
import hotidle.study.Wear;
import hotidle.study.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Stages side by side, a row a statement. */
record StageRows(Quantity.UnitSystem units, List<Stage> stages) {

    private StagePhrase phrase() {
        return new StagePhrase(units);
    }

    TextTable table() {
        List<String> head = new ArrayList<>(List.of(""));
        stages.forEach(stage -> head.add(stage.name()));
        TextTable table = new TextTable(head);
        row(
                table,
                StagePhrase.HOLDS,
                stage -> held(stage)
                        .map(held -> Quantity.TORQUE.with(units, held.torque())
                                + (held.beyond() ? TorquePhrase.BEYOND : "")
                                + (TorqueRows.bare(held) ? TorquePhrase.BARE : ""))
                        .orElse(UnsolvedPhrase.CELL));
        stages.get(0)
                .held()
                .asked()
                .ifPresent(asked -> row(
                        table,
                        new AskedTorquePhrase(units).row(asked.torque()),
                        stage -> new AskedSentence(units)
                                .cell(stage.held(), stage.held().asked().orElseThrow())));
        row(
                table,
                StagePhrase.FIRST,
                stage -> stage.held()
                        .least()
                        .map(range -> StagePhrase.first(
                                range.held().orElseThrow().links().get(0).name(), range.range()))
                        .orElse(StagePhrase.NOTHING));
        row(table, StagePhrase.LINE, this::line);
        row(table, StagePhrase.THEN, this::second);
        row(table, StagePhrase.SET, stage -> Quantity.PRESSURE.with(units, stage.set()));
        row(table, StagePhrase.MORE, this::useful);
        row(table, StagePhrase.ALLOWED, this::allowed);
        row(table, StagePhrase.WEAR, stage -> wear(stage.wear()));
        row(
                table,
                StagePhrase.JOBS,
                stage -> stage.jobs()
                        .map(jobs -> StagePhrase.jobs(jobs.jobs().size(), jobs.hours(), jobs.price()))
                        .orElse(StagePhrase.NOTHING));
        row(table, StagePhrase.BEYOND, stage -> {
            List<String> beyond = stage.jobs().map(StageRows::beyondBriefly).orElse(List.of());
            return beyond.isEmpty() ? StagePhrase.NOTHING : String.join(", ", beyond);
        });
        return table;
    }

    /** What makes the stage that no job names: in the hours and price of none. */
    private static List<String> beyondBriefly(StageJobs jobs) {
        List<String> beyond = new ArrayList<>();
        jobs.set().ifPresent(set -> beyond.addAll(StagePhrase.setBy(set.spring(), set.areas(), set.command())));
        beyond.addAll(jobs.links());
        if (!jobs.parts().isEmpty()) {
            beyond.add(StagePhrase.otherParts(jobs.parts().size()));
        }
        return beyond;
    }

    private List<String> beyond(StageJobs jobs) {
        List<String> beyond = new ArrayList<>();
        jobs.set()
                .ifPresent(set -> beyond.add(phrase().set(
                                set.before(),
                                set.after(),
                                StagePhrase.setBy(set.spring(), set.areas(), set.command()))));
        jobs.links().forEach(link -> beyond.add(StagePhrase.anotherLink(link)));
        beyond.addAll(jobs.parts());
        return beyond;
    }

    /** The line where the first gives, and what is commanded there. */
    private String line(Stage stage) {
        return held(stage)
                .map(held -> phrase().line(held.line(), held.commanded()))
                .orElse(StagePhrase.NOTHING);
    }

    private void row(TextTable table, String label, Function<Stage, String> cell) {
        List<String> row = new ArrayList<>(List.of(label));
        stages.forEach(stage -> row.add(cell.apply(stage)));
        table.add(row);
    }

    private static Optional<Held> held(Stage stage) {
        return stage.held().least().flatMap(TorqueHeld::held);
    }

    /** The next to give in any range. */
    private String second(Stage stage) {
        return held(stage)
                .flatMap(least -> stage.held()
                        .next()
                        .map(next -> StagePhrase.first(next.link().name(), next.range()) + " "
                                + TorquePhrase.factor(next.link().torque() / least.torque())))
                .orElse(StagePhrase.NOTHING);
    }

    /** What the signs of the table mean; empty where it has none. */
    String signs() {
        return TorquePhrase.signs(
                stages.stream()
                        .anyMatch(stage -> held(stage).filter(Held::beyond).isPresent()),
                false);
    }

    private String useful(Stage stage) {
        UsefulPressure useful = stage.held().useful();
        double set = stage.set();
        if (useful.weakest().isEmpty() || useful.pressure().isEmpty()) {
            OptionalDouble end = stage.window().all().stream()
                    .mapToDouble(Window.PressureRange::high)
                    .max();
            return end.isPresent() && end.getAsDouble() < last(stage)
                    ? phrase().helpsPast(end.getAsDouble())
                    : StagePhrase.HELPS_ON;
        }
        if (!useful.crosses()) {
            return StagePhrase.HELPS_NOT;
        }
        double most = useful.pressure().getAsDouble();
        return set > most ? phrase().enough(most) : phrase().helpsTo(most);
    }

    /** The highest set pressure tried [Pa]. */
    private static double last(Stage stage) {
        List<Window.SetPoint> points = stage.window().points();
        return points.isEmpty() ? 0 : points.get(points.size() - 1).pressure();
    }

    private String allowed(Stage stage) {
        List<Window.PressureRange> all = stage.window().all();
        if (all.isEmpty()) {
            return StagePhrase.NONE_ALLOWED;
        }
        boolean inside = all.stream().anyMatch(range -> range.low() <= stage.set() && stage.set() <= range.high());
        return all.stream()
                        .map(range -> phrase().allowed(range.low(), range.high()))
                        .collect(Collectors.joining("; "))
                + (inside ? "" : StagePhrase.OUTSIDE);
    }

    private static String wear(Wear wear) {
        return wear.together()
                .map(all -> !wear.already().isEmpty() || !all.already().isEmpty()
                        ? StagePhrase.NO_WEAR
                        : all.share().map(StagePhrase::wear).orElseGet(() -> StagePhrase.wearsOn(all.searched())))
                .orElse(StagePhrase.NOTHING);
    }

    /** Whether a stage takes more than jobs. */
    boolean anyBeyond() {
        return stages.stream()
                .flatMap(stage -> stage.jobs().stream())
                .anyMatch(jobs -> !beyondBriefly(jobs).isEmpty());
    }

    /** What is done for each stage, by name; jobs that are the same for all of them once. */
    List<String> work(String before) {
        List<Stage> made =
                stages.stream().filter(stage -> stage.jobs().isPresent()).toList();
        List<List<String>> jobs =
                made.stream().map(stage -> names(stage.jobs().orElseThrow())).toList();
        if (made.size() < 2 || jobs.stream().distinct().count() > 1) {
            return made.stream().map(stage -> work(stage, before)).toList();
        }
        List<String> lines =
                new ArrayList<>(List.of(StagePhrase.work(StagePhrase.EACH, before, jobs.get(0), List.of())));
        made.stream()
                .filter(stage -> !beyond(stage.jobs().orElseThrow()).isEmpty())
                .forEach(stage -> lines.add(
                        StagePhrase.beyond(stage.name(), beyond(stage.jobs().orElseThrow()))));
        return lines;
    }

    private String work(Stage stage, String before) {
        StageJobs jobs = stage.jobs().orElseThrow();
        return StagePhrase.work(stage.name(), before, names(jobs), beyond(jobs));
    }

    private static List<String> names(StageJobs jobs) {
        return jobs.jobs().stream().map(job -> job.name()).toList();
    }
}
