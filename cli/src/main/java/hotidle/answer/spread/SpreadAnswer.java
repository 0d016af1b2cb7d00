package hotidle.answer.spread;

import hotidle.answer.Answer;
import hotidle.answer.format.FirstScreen;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.MorePhrase;
import hotidle.answer.phrase.SpreadPhrase;
import hotidle.assess.Margin;
import hotidle.plots.Picture;
import hotidle.study.spread.MarginTally;
import hotidle.study.spread.SizePrior;
import hotidle.study.spread.SpreadFindings;
import hotidle.study.spread.SpreadQuestion;
import hotidle.study.spread.SpreadTally;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * How often the limits of a build hold with the sizes that nobody measured drawn as they may lie.
 *
 * @param units    of the user
 * @param about    what the circuit's file says of it; may be empty
 * @param question what was asked
 * @param tally    what came of the units drawn
 * @param findings what that comes to
 * @param part     as "part 3 of 10", empty where all was drawn
 */
public record SpreadAnswer(
        Quantity.UnitSystem units,
        String about,
        SpreadQuestion question,
        SpreadTally tally,
        SpreadFindings findings,
        String part)
        implements Answer {

    /** Rows of drivers on the first screen, and in all of the text (chosen). */
    private static final int DRIVERS = 4;

    private static final int ALL_DRIVERS = 12;

    /** What other commands judge over all speeds. */
    private static final Set<Margin.Kind> OF_HUB =
            EnumSet.of(Margin.Kind.FILM, Margin.Kind.FILM_OIL, Margin.Kind.UNIT_LOAD);

    @Override
    public String screen() {
        FirstScreen screen = new FirstScreen(next() + Caution.LINE);
        screen.add(head());
        if (tally.margins().isEmpty()) {
            return screen.add(nothing()).text();
        }
        screen.add(advice());
        SpreadRows rows = new SpreadRows(units, findings);
        List<MarginTally> first = findings.doubtful().isEmpty() ? findings.sure() : findings.doubtful();
        boolean drives = !findings.doubtful().isEmpty()
                && !findings.drivers(first.get(0)).isEmpty();
        int most = Math.max(1, screen.room() - (drives ? 8 + DRIVERS : 5));
        List<MarginTally> shown = first.subList(0, Math.min(most, first.size()));
        screen.add(rows.limits(shown).folded(Wrap.WIDTH));
        if (shown.size() < first.size()) {
            screen.add(MorePhrase.lines(first.size() - shown.size(), "limit") + "\n");
        }
        if (!findings.doubtful().isEmpty()) {
            screen.add(rows.sure());
        }
        if (drives) {
            screen.addWhereRoom(driven(first.get(0), DRIVERS));
        }
        return screen.text();
    }

    @Override
    public String full() {
        StringBuilder text =
                new StringBuilder(head()).append("\n").append(Caution.WHOLE).append("\n\n");
        if (tally.margins().isEmpty()) {
            return text.append(nothing()).append(costs()).toString();
        }
        SpreadRows rows = new SpreadRows(units, findings);
        List<MarginTally> all = Stream.concat(findings.doubtful().stream(), findings.sure().stream())
                .toList();
        text.append(advice()).append("\n").append(rows.limits(all).aligned()).append("\n");
        findings.doubtful().stream()
                .filter(margin -> !findings.drivers(margin).isEmpty())
                .forEach(margin -> text.append(driven(margin, ALL_DRIVERS)).append("\n"));
        if (!findings.worth().isEmpty()) {
            text.append(rows.worth(ALL_DRIVERS).aligned()).append("\n");
        }
        for (String note : List.of(SpreadPhrase.LEGEND, SpreadPhrase.DRIVER_LEGEND, SpreadPhrase.DRAWN)) {
            text.append(Wrap.lines(note, "", ""));
        }
        return text.append(costs()).toString();
    }

    private String head() {
        List<String> drawn = Stream.of(SizePrior.Basis.values())
                .filter(basis -> count(basis) > 0)
                .map(basis -> SpreadPhrase.basis(count(basis), basis.word()))
                .toList();
        String asked = SpreadPhrase.asked(
                question.build().unit().build(), question.duties(), drawn, tally.drawn(), question.seed(), part);
        boolean hub = tally.margins().stream()
                .anyMatch(margin -> OF_HUB.contains(margin.key().kind()));
        return Wrap.lines(HeadingPhrase.headed(question.build().unit().circuit(), about), "", "  ")
                + Wrap.lines(asked + (hub ? " " + SpreadPhrase.OWN_SPEED : ""), "", "  ");
    }

    private long count(SizePrior.Basis basis) {
        return question.sizes().stream().filter(size -> size.basis() == basis).count();
    }

    private String nothing() {
        return Wrap.lines(SpreadPhrase.notKnown(question.duties()), "", "  ");
    }

    /** How many units are sound, and what to measure. */
    private String advice() {
        SpreadRows rows = new SpreadRows(units, findings);
        List<String> said = new ArrayList<>();
        said.add(SpreadPhrase.all(SpreadRows.share(tally.allHold()), SpreadRows.share(tally.anyFails())));
        if (tally.impossible() > 0) {
            said.add(SpreadPhrase.impossible(tally.impossible(), tally.drawn()));
        }
        if (tally.unsolved() > 0) {
            said.add(SpreadPhrase.unsolved(tally.unsolved()));
        }
        said.add(question.sizes().isEmpty() ? SpreadPhrase.ALL_MEASURED : rows.best(tally.rows()));
        StringBuilder text = new StringBuilder();
        said.stream().filter(one -> !one.isEmpty()).forEach(one -> text.append(Wrap.lines(one, "", "  ")));
        return text.toString();
    }

    /** What to do where it is in doubt. */
    private String next() {
        return findings.doubtful().isEmpty() ? "" : Wrap.lines(SpreadPhrase.NEXT, "", "  ");
    }

    private String driven(MarginTally margin, int most) {
        SpreadRows rows = new SpreadRows(units, findings);
        return Wrap.lines(SpreadPhrase.driven(SpreadRows.limit(margin)), "", "  ")
                + rows.drivers(margin, most).fitted(Wrap.WIDTH);
    }

    /** Units solved: those drawn, and those of the pairs. */
    private String costs() {
        long all = tally.drawn() + tally.rows() * (question.sizes().size() + 2L);
        return Wrap.lines(SpreadPhrase.cost(tally.solves(), all), "", "");
    }

    @Override
    public TextTable table() {
        return new SpreadRows(units, findings).table(question.build().unit().build(), tally);
    }

    @Override
    public Object json() {
        return SpreadRecord.of(this);
    }

    @Override
    public Optional<Picture> picture() {
        return new SpreadPicture(this).picture();
    }

    @Override
    public boolean complete() {
        return !tally.margins().isEmpty() && tally.unsolved() == 0;
    }
}
