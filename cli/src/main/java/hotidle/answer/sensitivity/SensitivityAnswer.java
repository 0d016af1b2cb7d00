package hotidle.answer.sensitivity;

import hotidle.answer.Answer;
import hotidle.answer.format.FirstScreen;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.HeadroomPhrase;
import hotidle.answer.phrase.MorePhrase;
import hotidle.answer.phrase.NoStallPhrase;
import hotidle.answer.phrase.SensitivityPhrase;
import hotidle.assess.Margin;
import hotidle.study.Judgement;
import hotidle.study.Sensitivity;
import java.util.List;
import java.util.Optional;

/**
 * How much each size of some builds moves the limit with the least headroom.
 *
 * @param units   of the user
 * @param circuit its name
 * @param about   what its file says of it; may be empty
 * @param builds  slopes of each
 * @param lowAtIdle names of the builds that do not hold their line at idle
 */
public record SensitivityAnswer(
        Quantity.UnitSystem units, String circuit, String about, List<BuildSlopes> builds, List<String> lowAtIdle)
        implements Answer {

    /** The slopes of one build. */
    public record BuildSlopes(String build, Sensitivity found) {}

    public SensitivityAnswer {
        builds = List.copyOf(builds);
        lowAtIdle = List.copyOf(lowAtIdle);
    }

    @Override
    public String screen() {
        FirstScreen screen = new FirstScreen(NoStallPhrase.of(lowAtIdle) + Caution.LINE);
        screen.add(Wrap.lines(HeadingPhrase.headed(circuit, about), "", "  "));
        for (int i = 0; i < builds.size(); i++) {
            int left = builds.size() - i;
            if (screen.room() <= LEAST * left) {
                screen.add(Wrap.lines(MorePhrase.lines(left, "build"), "", "  "));
                break;
            }
            screen.add(first(builds.get(i), screen.room() / left));
        }
        return screen.text();
    }

    /** Lines that a build takes at least on the first screen. */
    private static final int LEAST = 7;

    /** The steepest slopes of a build in some lines. */
    private String first(BuildSlopes one, int lines) {
        Sensitivity found = one.found();
        Optional<Judgement.Key> least = found.least();
        String open = found.unsolved().isEmpty() ? "" : SensitivityPhrase.leftOut(List.of(), found.unsolved());
        if (least.isEmpty()) {
            return Wrap.lines(SensitivityPhrase.nothingRanked(one.build()) + open, "", "  ");
        }
        Ranked ranked = new Ranked(units, found);
        List<Sensitivity.Rate> all = ranked.worth(ranked.of(least.get()));
        String text = Wrap.lines(head(one.build(), found, least.get()) + open, "", "  ");
        int rows = Math.max(1, lines - (int) text.lines().count() - 3);
        List<Sensitivity.Rate> wanted = all.subList(0, Math.min(rows, all.size()));
        // a table that is too wide has a head of two lines
        int high = wanted.isEmpty()
                ? 0
                : (int) ranked.brief(wanted).fitted(Wrap.WIDTH).lines().count() - wanted.size() - 2;
        List<Sensitivity.Rate> steepest = wanted.subList(0, Math.max(Math.min(1, wanted.size()), wanted.size() - high));
        return text
                + (steepest.isEmpty()
                        ? "  " + SensitivityPhrase.NONE_MOVES_IT + "\n"
                        : ranked.brief(steepest).fitted(Wrap.WIDTH))
                + Wrap.lines(MorePhrase.lines(ranked.of(least.get()).size() - steepest.size(), "size"), "  ", "  ");
    }

    @Override
    public String full() {
        StringBuilder text = new StringBuilder(Wrap.lines(HeadingPhrase.headed(circuit, about), "", "  "));
        text.append("\n").append(Caution.WHOLE).append("\n").append(NoStallPhrase.of(lowAtIdle));
        builds.forEach(one -> text.append("\n").append(ranking(one.build(), one.found())));
        return text.append("\n")
                .append(Wrap.lines(SensitivityPhrase.LEGEND, "", ""))
                .toString();
    }

    private String ranking(String build, Sensitivity found) {
        Optional<Judgement.Key> least = found.least();
        String leftOut = SensitivityPhrase.leftOut(NotCounted.of(found.leftOut()), found.unsolved());
        if (least.isEmpty()) {
            return Wrap.lines(SensitivityPhrase.nothingRanked(build) + leftOut, "", "  ");
        }
        Ranked ranked = new Ranked(units, found);
        List<Sensitivity.Rate> all = ranked.of(least.get());
        List<Sensitivity.Rate> shown = ranked.worth(all);
        StringBuilder text = new StringBuilder(Wrap.lines(head(build, found, least.get()), "", "  "));
        text.append(
                shown.isEmpty()
                        ? "  " + SensitivityPhrase.NONE_MOVES_IT + "\n"
                        : ranked.shown(shown).aligned());
        if (shown.size() < all.size()) {
            double next = Math.abs(ranked.effect(all.get(shown.size())));
            text.append("  ")
                    .append(SensitivityPhrase.more(all.size() - shown.size(), Math.max(next, Sensitivity.WORTH)))
                    .append("\n");
        }
        if (shown.stream().anyMatch(rate -> rate.dimension().wears() && ranked.effect(rate) > 0)) {
            text.append(Wrap.lines(SensitivityPhrase.PLUS_IS_NO_REPAIR, "  ", "    "));
        }
        if (found.rates().stream().anyMatch(Sensitivity.Rate::oneSided)) {
            text.append(Wrap.lines(SensitivityPhrase.ONE_SIDED, "  ", "    "));
        }
        return text.append(leftOut.isEmpty() ? "" : Wrap.lines(leftOut.strip(), "  ", "    "))
                .toString();
    }

    private String head(String build, Sensitivity found, Judgement.Key least) {
        Margin margin = found.margins().get(least);
        return SensitivityPhrase.ranked(
                build,
                HeadroomPhrase.of(margin.headroom()),
                Ranked.limit(least),
                margin.speed().isPresent()
                        ? Quantity.SPEED.with(units, margin.speed().getAsDouble())
                        : "",
                units);
    }

    @Override
    public TextTable table() {
        TextTable table = new TextTable(Ranked.head());
        for (BuildSlopes one : builds) {
            Ranked ranked = new Ranked(units, one.found());
            one.found().rates().forEach(rate -> table.add(ranked.row(one.build(), rate)));
        }
        return table;
    }

    @Override
    public Object json() {
        return SensitivityRecord.of(this);
    }

    @Override
    public boolean complete() {
        return builds.stream().allMatch(one -> one.found().unsolved().isEmpty());
    }
}
