package hotidle.answer.torque;

import hotidle.answer.Answer;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.TorquePhrase;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.study.TorqueHeld;
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
 */
public record TorqueAnswer(Quantity.UnitSystem units, String circuit, String about, List<BuildTorque> builds)
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
    }

    @Override
    public String screen() {
        return text(new TorqueRows(units, builds).sideBySide());
    }

    @Override
    public String full() {
        return text(new TorqueRows(units, builds).each());
    }

    private String text(TextTable table) {
        TorqueRows rows = new TorqueRows(units, builds);
        StringBuilder text = new StringBuilder(Wrap.lines(HeadingPhrase.headed(circuit, about), "", "  "));
        for (BuildTorque one : builds) {
            one.least().ifPresent(least -> text.append(Wrap.lines(rows.least(one, least), "", "  ")));
            if (!one.notKnown().isEmpty()) {
                text.append(Wrap.lines(TorquePhrase.notKnown(one.build(), one.notKnown()), "", "  "));
            }
        }
        TorqueHeld any = builds.get(0).ranges().get(0);
        text.append('\n')
                .append(Wrap.lines(phrase().heading(any.at().speed()), "", ""))
                .append(table.aligned())
                .append('\n')
                .append(Wrap.lines(rows.conditions(), "", ""))
                .append(rows.signs().isEmpty() ? "" : Wrap.lines(rows.signs(), "", ""));
        if (builds.stream().noneMatch(BuildTorque::rated)) {
            text.append(Wrap.lines(TorquePhrase.CLUTCHES_ALONE, "", ""));
        }
        return text.append(TorquePhrase.ESTIMATE).append('\n').toString();
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
