package hotidle.answer.margins;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.ClutchPhrase;
import hotidle.answer.phrase.DutyPhrase;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.HeldLinePhrase;
import hotidle.answer.phrase.HubLoadPhrase;
import hotidle.answer.phrase.LockupPhrase;
import hotidle.answer.phrase.MarginCausePhrase;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.assess.Figures;
import hotidle.result.Unsolved;
import hotidle.study.Judgement;
import hotidle.transmission.DutyPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One build at one duty point on the screen: its limits, and what must be said of them.
 *
 * @param many whether there are several builds, so that the heading names this one
 */
record DutyLimits(Quantity.UnitSystem units, Judgement judged, boolean many) {

    String text() {
        Optional<Figures> figures = judged.figures();
        StringBuilder text = new StringBuilder(Wrap.lines(heading(figures), "", "  "));
        if (figures.isEmpty()) {
            String why = why(judged.outcome().unsolved().orElseThrow());
            return text.append(Wrap.lines(UnsolvedPhrase.nothingKnownHere(why), "  ", "  "))
                    .toString();
        }
        LimitRows rows = new LimitRows(units, judged);
        TextTable table = new TextTable(List.of("limit", "part", "is", "needed or allowed", "headroom", "verdict"));
        rows.shown().forEach(row -> table.add(rows.cells(row)));
        text.append(table.aligned());
        sentences(rows, figures.get()).forEach(line -> text.append(Wrap.lines(line, "  ", "    ")));
        return text.toString();
    }

    private String heading(Optional<Figures> figures) {
        DutyPoint duty = judged.duty();
        String name = HeadingPhrase.titled(duty.name(), duty.about());
        return DutyPhrase.commanded(
                        units,
                        many ? DutyPhrase.ofBuild(judged.unit().build(), name) : name,
                        duty.speed(),
                        duty.range(),
                        LockupPhrase.of(duty.lockup()),
                        duty.temperatures().get("sump"),
                        Quantity.TORQUE.with(units, duty.engineTorque()))
                + figures.map(known -> DutyPhrase.line(units, known.line(), known.set()))
                        .orElse("");
    }

    private List<String> sentences(LimitRows rows, Figures figures) {
        MarginSentences sentences = new MarginSentences(units);
        List<String> lines = new ArrayList<>();
        rows.shown().stream()
                .filter(row -> row.margin().asksWhy())
                .forEach(row -> lines.add(
                        MarginCausePhrase.headed(row.margin(), row.label(), sentences.why(judged, row.margin()))));
        judged.draggingClutches().forEach(clutch -> lines.add(ClutchPhrase.fails(sentences.drags(clutch))));
        if (figures.farAboveSet()) {
            lines.add(new HeldLinePhrase(units)
                    .farAboveHere(figures.line(), figures.set().orElseThrow(), figures.reliefOpen()));
        }
        judged.leaky().forEach((clutch, below) -> lines.add(new ClutchPhrase(units).leaks(clutch, below)));
        notKnown().ifPresent(lines::add);
        judged.hubWhereThinnest()
                .ifPresent(hub -> lines.add(new HubLoadPhrase(units)
                        .whereThinnest(
                                hub.speed(),
                                hub.load(),
                                hub.unitLoad(),
                                hub.film(),
                                hub.edgeFilm(),
                                hub.trumplerFilm())));
        return lines;
    }

    private Optional<String> notKnown() {
        if (judged.regulationNotKnown().isPresent()) {
            return judged.regulationNotKnown().map(unsolved -> UnsolvedPhrase.regulation(why(unsolved)));
        }
        List<Double> speeds = judged.hubNotKnown();
        return speeds.isEmpty()
                ? Optional.empty()
                : Optional.of(new HubLoadPhrase(units).notKnown(speeds.size(), speeds.get(0)));
    }

    private static String why(Unsolved unsolved) {
        return UnsolvedPhrase.why(unsolved.culprit(), unsolved.residual(), unsolved.tried());
    }
}
