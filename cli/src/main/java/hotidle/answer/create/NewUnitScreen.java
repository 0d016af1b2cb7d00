package hotidle.answer.create;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.Wrap;
import hotidle.answer.margins.MarginsAnswer;
import hotidle.answer.margins.MarginsScreen;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.LimitPhrase;
import hotidle.answer.phrase.NewPhrase;
import hotidle.assess.NotCommanded;
import hotidle.circuits.create.MeasureFirst;
import hotidle.study.JudgedBuild;
import hotidle.study.SameSpeedFilms;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What new says of the unit that it made: what it would be as sound, what was assumed, what to measure first and which command is next.
 *
 * @param made         a line on the file
 * @param sound        the unit with all fits new, judged
 * @param films        of that build alone
 * @param measureFirst which assumed sizes move its verdict most
 * @param onSheet      sizes that its measurement sheet asks for
 * @param next         lines of which commands come next, and where answers are kept
 */
public record NewUnitScreen(
        Quantity.UnitSystem units,
        String made,
        JudgedBuild sound,
        SameSpeedFilms films,
        Optional<MeasureFirst> measureFirst,
        List<String> onSheet,
        String next) {

    /** Sizes that are named (chosen). */
    private static final int NAMED = 3;

    /** What moves the limit by less is not worth a measurement (chosen) [-]. */
    private static final double TOLD = 0.005;

    /** The first screen. */
    public String screen() {
        List<String> all =
                sound.duties().stream().map(judged -> judged.duty().name()).toList();
        String foot = measureFirst.map(this::sizes).orElse("")
                + next
                + Caution.of(sound.unit().commanded().isPresent(), false) + "\n";
        return new MarginsScreen(units, Wrap.lines(made, "", "  "), List.of(sound), all, List.of(), foot).text();
    }

    private String sizes(MeasureFirst first) {
        Map<String, Double> fits = named(first, true);
        Map<String, Double> others = named(first, false);
        String limit = HeadingPhrase.at(
                LimitPhrase.label(first.limit().kind()) + " (" + first.limit().part() + ")",
                first.limit().duty());
        return Wrap.lines(NewPhrase.measureFirst(limit, fits, others), "", "  ");
    }

    /** Those that move it most, of what the sheet asks for or of all else. */
    private Map<String, Double> named(MeasureFirst first, boolean asked) {
        Map<String, Double> sizes = new LinkedHashMap<>();
        first.effects().stream()
                .filter(effect -> onSheet.contains(effect.path()) == asked && Math.abs(effect.change()) >= TOLD)
                .limit(NAMED)
                .forEach(effect -> sizes.put(effect.path(), effect.change()));
        return sizes;
    }

    /** Every limit besides. */
    public String full() {
        return Wrap.lines(made, "", "  ")
                + measureFirst.map(this::sizes).orElse("")
                + next
                + "\n"
                + new MarginsAnswer(
                                units, sound.unit().circuit(), "", List.of(sound), NotCommanded.of(sound.unit()), films)
                        .full();
    }
}
