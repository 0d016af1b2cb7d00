package hotidle.answer.torque;

import hotidle.answer.Answer;
import hotidle.answer.UsefulPressureSentence;
import hotidle.answer.format.FirstScreen;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.page.Block;
import hotidle.answer.phrase.AskedTorquePhrase;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.LineNeededPhrase;
import hotidle.answer.phrase.NoStallPhrase;
import hotidle.answer.phrase.TorquePhrase;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.study.AskedTorque;
import hotidle.study.ClutchFactors;
import hotidle.study.HeldRanges;
import hotidle.study.LineNeeded;
import hotidle.study.TorqueHeld;
import hotidle.study.TorqueHeld.Carrier;
import hotidle.study.UsefulPressure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The engine torque that each range of some builds holds.
 *
 * @param units   of the user
 * @param circuit its name
 * @param about   what its file says of it; may be empty
 * @param builds  at least one
 * @param byTorque  whether the table is that of the line pressure needed
 * @param lowAtIdle names of the builds that do not hold their line at idle
 */
public record TorqueAnswer(
        Quantity.UnitSystem units,
        String circuit,
        String about,
        List<BuildTorque> builds,
        boolean byTorque,
        List<String> lowAtIdle)
        implements Answer {

    /**
     * What a build holds.
     *
     * @param build   its name
     * @param rated   whether anything but clutches was judged
     * @param ranges  in the order of the file
     * @param useful  up to which set pressure more is held
     * @param needed  line pressure that each range needs for each engine torque
     * @param set     highest set pressure of its forward ranges [Pa]
     * @param hardest highest engine torque of its driving conditions [N·m]
     * @param factors of its clutches
     * @param asked   whether it holds the engine torque that was asked for; empty where none was
     */
    public record BuildTorque(
            String build,
            boolean rated,
            List<TorqueHeld> ranges,
            UsefulPressure useful,
            List<LineNeeded> needed,
            double set,
            double hardest,
            ClutchFactors factors,
            Optional<AskedTorque> asked) {
        public BuildTorque {
            ranges = List.copyOf(ranges);
            needed = List.copyOf(needed);
        }

        /** The range that holds least; empty where none was found, or one is not known. */
        Optional<TorqueHeld> least() {
            return new HeldRanges(ranges).least();
        }

        /** What gives next after the first, in any range, with its range; empty where one is not known or nothing else carries. */
        Optional<Next> next() {
            return least().flatMap(least -> {
                String first = least.held().orElseThrow().links().get(0).name();
                return ranges.stream()
                        .flatMap(range ->
                                range.held().orElseThrow().links().stream().map(link -> new Next(range.range(), link)))
                        .filter(next -> !next.link().name().equals(first))
                        .min(Comparator.comparingDouble(next -> next.link().torque()));
            });
        }

        List<String> notKnown() {
            return ranges.stream()
                    .filter(range -> range.held().isEmpty())
                    .map(TorqueHeld::range)
                    .toList();
        }
    }

    /** Something that gives, and the range in which it does. */
    record Next(String range, Carrier link) {}

    public TorqueAnswer {
        builds = List.copyOf(builds);
        lowAtIdle = List.copyOf(lowAtIdle);
    }

    /** The engine torque that a build holds in every range [N·m]; empty where one is not known. */
    public OptionalDouble least(String build) {
        return builds.stream()
                .filter(one -> one.build().equals(build))
                .findFirst()
                .map(one -> new HeldRanges(one.ranges()).torque())
                .orElse(OptionalDouble.empty());
    }

    @Override
    public String screen() {
        FirstScreen screen = new FirstScreen(TorquePhrase.ESTIMATE + "\n" + NoStallPhrase.of(lowAtIdle));
        TorqueRows rows = new TorqueRows(units, builds);
        String signs = rows.signs().isEmpty() ? "" : Wrap.lines(rows.signs(), "", "");
        String table = table(rows.sideBySide()) + signs;
        screen.add(said(builds.size() > 1));
        String next = next();
        if ((next + table).lines().count() <= screen.room()) {
            screen.add(next);
        }
        screen.add(table);
        notes().forEach(screen::addWhereRoom);
        return screen.text();
    }

    @Override
    public String full() {
        TorqueRows rows = new TorqueRows(units, builds);
        return said(false) + next() + "\n" + table(rows.each(true)) + "\n"
                + (rows.signs().isEmpty() ? "" : Wrap.lines(rows.signs(), "", "")) + String.join("", notes()) + "\n"
                + needed() + "\n" + TorquePhrase.ESTIMATE + "\n" + NoStallPhrase.of(lowAtIdle);
    }

    /** The same on a page. */
    public List<Block> page() {
        TorqueRows rows = new TorqueRows(units, builds);
        NeededRows needed = new NeededRows(units, builds);
        List<String> remarks = new ArrayList<>(rows.signs().isEmpty() ? List.of() : List.of(rows.signs()));
        remarks.addAll(remarks());
        return List.of(
                Block.said(sentences(false)),
                Block.table(heading(), rows.each(true)),
                Block.said(remarks),
                Block.said(builds.stream().map(needed::summary).toList()),
                Block.said(TorquePhrase.ESTIMATE));
    }

    private String needed() {
        NeededRows rows = new NeededRows(units, builds);
        StringBuilder text = new StringBuilder(Wrap.lines(LineNeededPhrase.HEADING, "", ""));
        text.append(rows.table().aligned()).append("\n");
        builds.forEach(one -> text.append(Wrap.lines(rows.summary(one), "", "  ")));
        return text.append(Wrap.lines(LineNeededPhrase.NOTES, "", "")).toString();
    }

    private String said(boolean brief) {
        StringBuilder text = new StringBuilder(Wrap.lines(HeadingPhrase.headed(circuit, about), "", "  "));
        sentences(brief).forEach(sentence -> text.append(Wrap.lines(sentence, "", "  ")));
        return text.toString();
    }

    /** Which of the pressures told is to be changed, and by which command, which on paper is not at hand. */
    private String next() {
        return builds.stream()
                .filter(one -> one.asked().isEmpty())
                .findFirst()
                .map(one -> lowAtIdle.contains(one.build())
                        ? TorquePhrase.nextJobs(one.build())
                        : phrase().next(one.build(), one.set(), one.useful().pressure()))
                .map(sentence -> Wrap.lines(sentence, "", "  "))
                .orElse("");
    }

    /** @param brief whether of set pressure only the crossing is told */
    private List<String> sentences(boolean brief) {
        TorqueRows rows = new TorqueRows(units, builds);
        List<String> said = new ArrayList<>();
        for (BuildTorque one : builds) {
            one.asked().ifPresent(asked -> said.add(new AskedSentence(units).of(one, asked)));
            if (one.asked().isEmpty() || !brief) {
                boolean first = said.isEmpty();
                one.least().ifPresent(least -> said.add(rows.least(one, least, first)));
            }
            if (!one.notKnown().isEmpty()) {
                said.add(TorquePhrase.notKnown(one.build(), one.notKnown()));
            }
            if (brief && one.asked().isPresent()) {
                continue;
            }
            (brief
                            ? UsefulPressureSentence.brief(units, one.build(), one.useful())
                            : UsefulPressureSentence.of(units, one.build(), one.useful()))
                    .ifPresent(said::add);
        }
        return said;
    }

    private String table(TextTable table) {
        return Wrap.lines(heading(), "", "") + table.aligned();
    }

    private String heading() {
        ClutchFactors factors = builds.stream()
                .map(BuildTorque::factors)
                .reduce(ClutchFactors::with)
                .orElseThrow();
        return phrase().heading(builds.get(0).ranges().get(0).at().speed(), factors.least(), factors.most());
    }

    private List<String> notes() {
        return remarks().stream().map(remark -> Wrap.lines(remark, "", "")).toList();
    }

    /** What is not judged, first, for it limits what is said; where the pump does not bring the pressure; under which conditions. */
    private List<String> remarks() {
        TorqueRows rows = new TorqueRows(units, builds);
        List<String> notes = new ArrayList<>();
        if (builds.stream().noneMatch(BuildTorque::rated)) {
            notes.add(TorquePhrase.CLUTCHES_ALONE);
        }
        if (builds.stream().anyMatch(one -> one.asked().isPresent())) {
            notes.add(AskedTorquePhrase.OTHER_LIMITS);
        }
        notes.addAll(rows.slow());
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
        return byTorque ? new NeededRows(units, builds).table() : new TorqueRows(units, builds).each(false);
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
