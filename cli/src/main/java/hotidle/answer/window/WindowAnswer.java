package hotidle.answer.window;

import hotidle.answer.Answer;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.page.Block;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.NoStallPhrase;
import hotidle.answer.phrase.OwnHeatPhrase;
import hotidle.answer.phrase.WindowPhrase;
import hotidle.study.Judgement;
import hotidle.study.UsefulPressure;
import hotidle.study.Window;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which set pressures each limit of some builds allows.
 *
 * @param units   of the user
 * @param circuit its name
 * @param about   what its file says of it; may be empty
 * @param work    what was done to each build, in words behind the name; may be empty
 * @param by      how the set pressures are reached
 * @param ownHeat whether each is judged at the temperatures that its own heat brings it to
 * @param builds  at least one, all tried at the same set pressures
 * @param lowAtIdle names of those that do not hold their line at idle as they are
 */
public record WindowAnswer(
        Quantity.UnitSystem units,
        String circuit,
        String about,
        String work,
        SetPressure.By by,
        boolean ownHeat,
        List<BuildWindow> builds,
        List<String> lowAtIdle)
        implements Answer {

    /**
     * A build that is commanded.
     *
     * @param useful up to which set pressure more torque is held; empty where torque cannot be asked of it
     */
    public record BuildWindow(Transmission unit, Window window, Optional<UsefulPressure> useful) {
        String name() {
            return unit.build();
        }

        /** Whether the file rates anything in its gear train. */
        boolean rated() {
            return unit.rated();
        }
    }

    public WindowAnswer {
        builds = List.copyOf(builds);
        lowAtIdle = List.copyOf(lowAtIdle);
    }

    @Override
    public String screen() {
        return new WindowScreen(units, circuit, work, ownHeat, builds, NoStallPhrase.of(lowAtIdle)).text();
    }

    @Override
    public String full() {
        StringBuilder text = new StringBuilder(Wrap.lines(HeadingPhrase.headed(circuit, about), "", "  "));
        WindowSentences sentences = new WindowSentences(units);
        for (BuildWindow one : builds) {
            text.append(Wrap.lines(sentences.summary(one), "", "  "));
            sentences.besides(one).forEach(line -> text.append(Wrap.lines(line, "", "  ")));
            sentences.useful(one, false).ifPresent(line -> text.append(Wrap.lines(line, "", "  ")));
        }
        text.append(ownHeat ? Wrap.lines(OwnHeatPhrase.RAISED, "", "  ") : "");
        text.append("\n").append(Caution.WHOLE).append("\n").append(NoStallPhrase.of(lowAtIdle));
        for (BuildWindow one : builds) {
            text.append("\n").append(WindowPhrase.heading(one.name())).append("\n");
            TextTable table = new TextTable(WindowRows.SHOWN);
            new WindowRows(units, one).shown().forEach(table::add);
            text.append(table.aligned());
        }
        return text.append("\n").append(Wrap.lines(legend(), "", "")).toString();
    }

    /** The same on a page. */
    public List<Block> page() {
        WindowSentences sentences = new WindowSentences(units);
        List<Block> blocks = new ArrayList<>();
        for (BuildWindow one : builds) {
            List<String> said = new ArrayList<>(List.of(sentences.summary(one)));
            said.addAll(sentences.besides(one));
            TextTable table = new TextTable(WindowRows.SHOWN);
            new WindowRows(units, one).shown().forEach(table::add);
            blocks.add(Block.said(said));
            blocks.add(Block.table(WindowPhrase.heading(one.name()), table));
        }
        blocks.add(Block.said(legend()));
        return blocks;
    }

    /** How high the build may be set, in a sentence that names what fails there. */
    public static String maySet(Quantity.UnitSystem units, BuildWindow one) {
        return new WindowSentences(units).maySet(one);
    }

    /** What was not found at the set pressures tried; empty where all was. */
    public static Optional<String> notKnown(Quantity.UnitSystem units, BuildWindow one) {
        return new WindowSentences(units).notKnown(one);
    }

    /** Which set pressures hold every limit of a build, in a sentence or two. */
    public String brief(String build) {
        return new WindowSentences(units).brief(of(build));
    }

    /** The same for who pays for the work; {@code when} says of which build it is told. */
    public String plain(String build, String when) {
        return new WindowSentences(units).plain(of(build), when);
    }

    /** Limits of which it is not known everywhere in its ranges whether they hold. */
    public List<Judgement.Key> undecided(String build) {
        return of(build).window().undecided();
    }

    private BuildWindow of(String build) {
        return builds.stream()
                .filter(one -> one.name().equals(build))
                .findFirst()
                .orElseThrow();
    }

    private String legend() {
        List<Window.SetPoint> tried = builds.get(0).window().points();
        return new WindowPhrase(units)
                .legend(
                        tried.get(0).pressure(),
                        tried.get(tried.size() - 1).pressure(),
                        by,
                        builds.get(0).rated());
    }

    @Override
    public TextTable table() {
        TextTable table = new TextTable(WindowRows.head(units));
        builds.forEach(one -> new WindowRows(units, one).all().forEach(table::add));
        return table;
    }

    @Override
    public Object json() {
        return WindowRecord.of(this);
    }

    @Override
    public boolean complete() {
        return builds.stream().allMatch(one -> one.window().notKnown().isEmpty());
    }
}
