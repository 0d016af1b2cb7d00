package hotidle.answer.compare;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.ChangePhrase;
import hotidle.answer.phrase.OnsetPhrase;
import hotidle.assess.Figures;
import hotidle.assess.FiguresChange;
import hotidle.study.Comparison;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is told of a build against the one that it stands on, at one duty point. */
record ChangeSentences(Quantity.UnitSystem units) {

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
        if (new FiguresChange(was.get(), is.get()).noMoreOil()) {
            sentences.add(ChangePhrase.NO_MORE_OIL);
        }
        onset(before, after).ifPresent(sentences::add);
        return List.of(String.join(" ", sentences));
    }

    /** The line in any case, all else where it has changed. */
    private List<String> figures(Figures was, Figures is, boolean lubricated) {
        List<String> all = new ArrayList<>();
        ChangePhrase phrase = new ChangePhrase(units);
        all.add(
                FiguresChange.same(was.line(), is.line())
                        ? phrase.stays("line", Quantity.PRESSURE, was.line(), is.line())
                        : phrase.moves("line", Quantity.PRESSURE, was.line(), is.line()));
        if (is.commanded()) {
            moved(
                            "commanded",
                            Quantity.PRESSURE,
                            was.set().orElse(Double.NaN),
                            is.set().orElse(Double.NaN))
                    .ifPresent(all::add);
        }
        moved("oil lost", Quantity.FLOW, was.lost(), is.lost()).ifPresent(all::add);
        if (lubricated) {
            moved("lubrication", Quantity.FLOW, was.lube(), is.lube()).ifPresent(all::add);
        }
        return all;
    }

    private Optional<String> moved(String what, Quantity quantity, double was, double is) {
        return FiguresChange.same(was, is)
                ? Optional.empty()
                : Optional.of(new ChangePhrase(units).moves(what, quantity, was, is));
    }

    private Optional<String> onset(Comparison.BuildAtDuty before, Comparison.BuildAtDuty after) {
        return switch (after.onsetSince(before)) {
            case NONE_BEFORE, SAME -> Optional.empty();
            case LOST -> Optional.of(OnsetPhrase.LOST);
            case MOVED ->
                Optional.of(new OnsetPhrase(units)
                        .moves(
                                before.sweep().onset().orElseThrow(),
                                after.sweep().onset().orElseThrow(),
                                CompareRow.lowest(before.sweep())));
        };
    }
}
