package hotidle.answer.torque;

import hotidle.answer.Answer;
import hotidle.answer.format.FirstScreen;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.page.Block;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.NoStallPhrase;
import hotidle.answer.phrase.TorquePhrase;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.study.TorqueHeld;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The engine torque that each range of some builds holds.
 *
 * @param units   of the user
 * @param circuit its name
 * @param about   what its file says of it; may be empty
 * @param builds  at least one
 * @param lowAtIdle names of the builds that do not hold their line at idle
 */
public record TorqueAnswer(
        Quantity.UnitSystem units, String circuit, String about, List<BuildTorque> builds, List<String> lowAtIdle)
        implements Answer {

    /**
     * What a build holds.
     *
     * @param build   its name
     * @param rated   whether anything but clutches was judged
     * @param ranges  in the order of the file
     */
    public record BuildTorque(String build, boolean rated, List<TorqueHeld> ranges) {
        public BuildTorque {
            ranges = List.copyOf(ranges);
        }

        /** The range that holds least; empty where none was found, or one is not known. */
        Optional<TorqueHeld> least() {
            return ranges.stream().anyMatch(range -> range.held().isEmpty())
                    ? Optional.empty()
                    : ranges.stream()
                            .min(Comparator.comparingDouble(
                                    range -> range.held().orElseThrow().torque()));
        }

        List<String> notKnown() {
            return ranges.stream()
                    .filter(range -> range.held().isEmpty())
                    .map(TorqueHeld::range)
                    .toList();
        }
    }

    public TorqueAnswer {
        builds = List.copyOf(builds);
        lowAtIdle = List.copyOf(lowAtIdle);
    }

    @Override
    public String screen() {
        FirstScreen screen = new FirstScreen(TorquePhrase.ESTIMATE + "\n" + NoStallPhrase.of(lowAtIdle));
        screen.add(said()).add(table(new TorqueRows(units, builds).sideBySide()));
        notes().forEach(screen::addWhereRoom);
        return screen.text();
    }

    @Override
    public String full() {
        return said() + "\n" + table(new TorqueRows(units, builds).each()) + "\n" + String.join("", notes())
                + TorquePhrase.ESTIMATE + "\n" + NoStallPhrase.of(lowAtIdle);
    }

    /** The same on a page. */
    public List<Block> page() {
        return List.of(
                Block.said(sentences()),
                Block.table(heading(), new TorqueRows(units, builds).each()),
                Block.said(remarks()),
                Block.said(TorquePhrase.ESTIMATE));
    }

    private String said() {
        StringBuilder text = new StringBuilder(Wrap.lines(HeadingPhrase.headed(circuit, about), "", "  "));
        sentences().forEach(sentence -> text.append(Wrap.lines(sentence, "", "  ")));
        return text.toString();
    }

    private List<String> sentences() {
        TorqueRows rows = new TorqueRows(units, builds);
        List<String> said = new ArrayList<>();
        for (BuildTorque one : builds) {
            one.least().ifPresent(least -> said.add(rows.least(one, least)));
            if (!one.notKnown().isEmpty()) {
                said.add(TorquePhrase.notKnown(one.build(), one.notKnown()));
            }
        }
        return said;
    }

    private String table(TextTable table) {
        return Wrap.lines(heading(), "", "") + table.aligned();
    }

    private String heading() {
        return phrase().heading(builds.get(0).ranges().get(0).at().speed());
    }

    private List<String> notes() {
        return remarks().stream().map(remark -> Wrap.lines(remark, "", "")).toList();
    }

    /** Under which conditions, what the signs mean, and what is not judged; the last stands first, for it limits what is said. */
    private List<String> remarks() {
        TorqueRows rows = new TorqueRows(units, builds);
        List<String> notes = new ArrayList<>();
        if (builds.stream().noneMatch(BuildTorque::rated)) {
            notes.add(TorquePhrase.CLUTCHES_ALONE);
        }
        if (!rows.signs().isEmpty()) {
            notes.add(rows.signs());
        }
        notes.add(rows.conditions());
        return notes;
    }

    private TorquePhrase phrase() {
        return new TorquePhrase(units);
    }

    /** In the cell of a range that was not found. */
    static final String NONE = UnsolvedPhrase.CELL;

    @Override
    public TextTable table() {
        return new TorqueRows(units, builds).each();
    }

    @Override
    public Object json() {
        return TorqueRecord.of(this);
    }

    @Override
    public boolean complete() {
        return builds.stream().allMatch(one -> one.notKnown().isEmpty());
    }
}
