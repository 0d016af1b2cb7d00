package hotidle.answer.torque;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.phrase.StagePhrase;
import hotidle.answer.phrase.TorquePhrase;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.study.StageJobs;
import hotidle.study.TorqueHeld;
import hotidle.study.TorqueHeld.Carrier;
import hotidle.study.TorqueHeld.Held;
import hotidle.study.UsefulPressure;
import hotidle.study.Wear;
import hotidle.study.Window;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
                        .map(held ->
                                Quantity.TORQUE.with(units, held.torque()) + (held.beyond() ? TorquePhrase.BEYOND : ""))
                        .orElse(UnsolvedPhrase.CELL));
        row(
                table,
                StagePhrase.FIRST,
                stage -> stage.held()
                        .least()
                        .map(range -> StagePhrase.first(
                                range.held().orElseThrow().links().get(0).name(), range.range()))
                        .orElse(StagePhrase.NOTHING));
        row(table, StagePhrase.THEN, this::second);
        row(table, StagePhrase.SET, stage -> Quantity.PRESSURE.with(units, stage.set()));
        row(table, StagePhrase.MORE, stage -> useful(stage.held().useful(), stage.set()));
        row(table, StagePhrase.ALLOWED, this::allowed);
        row(table, StagePhrase.WEAR, stage -> wear(stage.wear()));
        row(
                table,
                StagePhrase.JOBS,
                stage -> stage.jobs()
                        .map(jobs -> StagePhrase.jobs(jobs.jobs().size(), jobs.hours(), jobs.price()))
                        .orElse(StagePhrase.NOTHING));
        return table;
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
                .flatMap(least -> {
                    Carrier first = least.links().get(0);
                    return stage.held().ranges().stream()
                            .flatMap(range -> range.held().stream())
                            .flatMap(held -> held.links().stream())
                            .filter(link -> !link.name().equals(first.name()))
                            .min(Comparator.comparingDouble(Carrier::torque))
                            .map(next -> next.name() + " " + TorquePhrase.factor(next.torque() / least.torque()));
                })
                .orElse(StagePhrase.NOTHING);
    }

    /** What the signs of the table mean; empty where it has none. */
    String signs() {
        return TorquePhrase.signs(
                stages.stream()
                        .anyMatch(stage -> held(stage).filter(Held::beyond).isPresent()),
                false);
    }

    private String useful(UsefulPressure useful, double set) {
        if (useful.weakest().isEmpty() || useful.pressure().isEmpty()) {
            return StagePhrase.HELPS_ON;
        }
        if (!useful.crosses()) {
            return StagePhrase.HELPS_NOT;
        }
        double most = useful.pressure().getAsDouble();
        return set > most ? phrase().enough(most) : phrase().helpsTo(most);
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
                .map(all -> !all.already().isEmpty()
                        ? StagePhrase.NO_WEAR
                        : all.share().map(StagePhrase::wear).orElseGet(() -> StagePhrase.wearsOn(all.searched())))
                .orElse(StagePhrase.NOTHING);
    }

    /** What is done for each stage, by name. */
    List<String> work(String before) {
        return stages.stream()
                .filter(stage -> stage.jobs().isPresent())
                .map(stage -> {
                    StageJobs jobs = stage.jobs().orElseThrow();
                    List<String> besides = new ArrayList<>(jobs.links());
                    besides.addAll(jobs.parts());
                    return StagePhrase.work(
                            stage.name(),
                            before,
                            jobs.jobs().stream().map(job -> job.name()).toList(),
                            besides);
                })
                .toList();
    }
}
