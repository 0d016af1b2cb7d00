package hotidle.answer.torque;

import hotidle.answer.Answer;
import hotidle.answer.format.FirstScreen;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.Rpm;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.NoStallPhrase;
import hotidle.answer.phrase.StagePhrase;
import hotidle.answer.phrase.TorquePhrase;
import hotidle.study.ClutchFactors;
import java.util.ArrayList;
import java.util.List;

/**
 * Builds side by side as stages: the page from which a shop quotes.
 *
 * @param units     of the user
 * @param circuit   its name
 * @param before    the build that comes in; empty where none is known
 * @param stages    at least one
 * @param lowAtIdle names of the builds that do not hold their line at idle
 */
public record StagesAnswer(
        Quantity.UnitSystem units, String circuit, String before, List<Stage> stages, List<String> lowAtIdle)
        implements Answer {

    public StagesAnswer {
        stages = List.copyOf(stages);
        lowAtIdle = List.copyOf(lowAtIdle);
    }

    private TorqueAnswer whole() {
        return new TorqueAnswer(
                units, circuit, "", stages.stream().map(Stage::held).toList(), false, lowAtIdle);
    }

    @Override
    public String screen() {
        FirstScreen screen = new FirstScreen(foot());
        screen.add(heading()).add(table().aligned());
        sentences().forEach(line -> screen.addWhereRoom(Wrap.lines(line, "", "  ")));
        notes().forEach(line -> screen.addWhereRoom(Wrap.lines(line, "", "")));
        return screen.text();
    }

    @Override
    public String full() {
        StringBuilder text = new StringBuilder(heading()).append(table().aligned());
        sentences().forEach(line -> text.append(Wrap.lines(line, "", "  ")));
        notes().forEach(line -> text.append(Wrap.lines(line, "", "")));
        text.append("\n");
        return text.append(whole().full()).toString();
    }

    /** What was asked of each stage, then what makes it. */
    private List<String> sentences() {
        List<String> all = new ArrayList<>();
        stages.forEach(stage ->
                stage.held().asked().ifPresent(asked -> all.add(new AskedSentence(units).of(stage.held(), asked))));
        all.addAll(new StageRows(units, stages).work(before));
        return all;
    }

    /** What the words of the table mean, what a quote would get wrong without it first. */
    private List<String> notes() {
        List<String> all = new ArrayList<>(List.of(StagePhrase.SET_NOTE));
        String signs = new StageRows(units, stages).signs().strip();
        if (!signs.isEmpty()) {
            all.add(signs);
        }
        if (new StageRows(units, stages).anyBeyond()) {
            all.add(StagePhrase.BEYOND_NOTE);
        }
        all.add(StagePhrase.WEAR_NOTE);
        return all;
    }

    private String heading() {
        var at = stages.get(0).held().ranges().get(0).at();
        ClutchFactors factors = stages.stream()
                .map(stage -> stage.held().factors())
                .reduce(ClutchFactors::with)
                .orElseThrow();
        return Wrap.lines(
                StagePhrase.title(
                        circuit,
                        Rpm.of(at.speed()),
                        at.hottest().name(),
                        TorquePhrase.margin(factors.least(), factors.most())),
                "",
                "  ");
    }

    private String foot() {
        return TorquePhrase.ESTIMATE + "\n" + NoStallPhrase.of(lowAtIdle);
    }

    @Override
    public TextTable table() {
        return new StageRows(units, stages).table();
    }

    @Override
    public Object json() {
        return StagesRecord.of(this);
    }

    @Override
    public boolean complete() {
        return whole().complete()
                && stages.stream()
                        .allMatch(stage -> stage.window().notKnown().isEmpty()
                                && stage.wear().unsolved().isEmpty());
    }
}
