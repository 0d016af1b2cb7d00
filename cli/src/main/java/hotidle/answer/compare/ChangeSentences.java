package hotidle.answer.compare;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.ChangePhrase;
import hotidle.answer.phrase.OnsetPhrase;
import hotidle.assess.Figures;
import hotidle.study.Comparison;
import hotidle.study.SpeedSweep;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What is told of a build against the one before it, at one duty point. */
record ChangeSentences(Quantity.UnitSystem units) {

    /** Onsets nearer than this are one and the same: 1 rpm, what a tachometer shows (assumed) [rev/s]. */
    private static final double SAME_ONSET = 1 / 60.0;

    /** One line; none where one of the two is not known. */
    List<String> between(Comparison.BuildAtDuty before, Comparison.BuildAtDuty after) {
        Optional<Figures> was = before.figures();
        Optional<Figures> is = after.figures();
        if (was.isEmpty() || is.isEmpty()) {
            return List.of();
        }
        List<String> sentences = new ArrayList<>();
        sentences.add(ChangePhrase.against(
                before.unit().build(),
                before.duty().name(),
                figures(was.get(), is.get(), !after.roles().lube().isEmpty())));
        if (CompareVerdicts.noMoreOil(was.get(), is.get())) {
            sentences.add(ChangePhrase.NO_MORE_OIL);
        }
        onset(before.sweep(), after.sweep()).ifPresent(sentences::add);
        return List.of(String.join(" ", sentences));
    }

    /** The line in any case, all else where it has changed. */
    private List<String> figures(Figures was, Figures is, boolean lubricated) {
        List<String> all = new ArrayList<>();
        ChangePhrase phrase = new ChangePhrase(units);
        all.add(
                CompareVerdicts.same(was.line(), is.line())
                        ? phrase.stays("line", Quantity.PRESSURE, was.line(), is.line())
                        : phrase.moves("line", Quantity.PRESSURE, was.line(), is.line()));
        if (is.commanded()) {
            moved(
                            "set pressure",
                            Quantity.PRESSURE,
                            was.set().orElse(Double.NaN),
                            is.set().orElse(Double.NaN))
                    .ifPresent(all::add);
        }
        moved("oil lost", Quantity.FLOW, was.slip() + was.leak(), is.slip() + is.leak())
                .ifPresent(all::add);
        if (lubricated) {
            moved("lubrication", Quantity.FLOW, was.lube(), is.lube()).ifPresent(all::add);
        }
        return all;
    }

    private Optional<String> moved(String what, Quantity quantity, double was, double is) {
        return CompareVerdicts.same(was, is)
                ? Optional.empty()
                : Optional.of(new ChangePhrase(units).moves(what, quantity, was, is));
    }

    private Optional<String> onset(SpeedSweep before, SpeedSweep after) {
        OptionalDouble was = before.onset();
        OptionalDouble is = after.onset();
        if (was.isEmpty()) {
            return Optional.empty();
        }
        if (is.isEmpty()) {
            return Optional.of(OnsetPhrase.LOST);
        }
        return Math.abs(is.getAsDouble() - was.getAsDouble()) >= SAME_ONSET
                ? Optional.of(
                        new OnsetPhrase(units).moves(was.getAsDouble(), is.getAsDouble(), CompareRow.lowest(before)))
                : Optional.empty();
    }
}
