package hotidle.answer.margins;

import hotidle.answer.format.Digits;
import hotidle.answer.format.MarginQuantity;
import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.HeadroomPhrase;
import hotidle.answer.phrase.LimitCountPhrase;
import hotidle.answer.phrase.LimitPhrase;
import hotidle.answer.phrase.MarginPhrase;
import hotidle.assess.Margin;
import hotidle.study.DraggingClutch;
import hotidle.study.JudgedBuild;
import hotidle.study.Judgement;
import java.util.ArrayList;
import java.util.List;

/** The limits of one build at one duty point as rows. */
record LimitRows(Quantity.UnitSystem units, Judgement judged) {

    static final List<String> HEAD = List.of(
            "build", "duty", "limit", "part", "is", "needed or allowed", "unit", "headroom", "verdict", "rpm", "why");

    /** In place of a kind of limit where a clutch presses that should be off. */
    private static final String CLUTCH_OFF = "clutch-off";

    /**
     * A limit as it is shown.
     *
     * @param label what it is called
     */
    record LabelledMargin(String label, Margin margin) {}

    /** How many limits of a build fail, are narrow and hold, as they are shown. */
    record LimitCount(Quantity.UnitSystem units, JudgedBuild build) {
        String said() {
            List<Margin.Verdict> shown = build.duties().stream()
                    .flatMap(judged -> new LimitRows(units, judged).shown().stream())
                    .map(row -> row.margin().verdict())
                    .toList();
            return LimitCountPhrase.of(
                    build.duties().size(),
                    shown.stream().filter(Margin.Verdict.FAILS::equals).count(),
                    shown.stream().filter(Margin.Verdict.NOT_KNOWN::equals).count(),
                    shown.stream().filter(Margin.Verdict.CLOSE::equals).count(),
                    shown.stream().filter(Margin.Verdict.HOLDS::equals).count());
        }
    }

    /**
     * The limits in the order in which they are shown. A clutch that holds and slips with one coefficient of friction has one
     * limit, not two that read alike.
     */
    List<LabelledMargin> shown() {
        MarginPhrase phrase = new MarginPhrase(units);
        List<LabelledMargin> rows = new ArrayList<>();
        for (Margin margin : judged.margins()) {
            int last = rows.size() - 1;
            boolean again = last >= 0
                    && margin.kind() == Margin.Kind.APPLY_SLIDING
                    && figures(margin).equals(figures(rows.get(last).margin));
            if (again) {
                rows.set(last, new LabelledMargin(LimitPhrase.APPLY_BOTH, rows.get(last).margin));
            } else {
                rows.add(new LabelledMargin(phrase.label(margin), margin));
            }
        }
        return rows;
    }

    private List<String> figures(Margin margin) {
        MarginPhrase phrase = new MarginPhrase(units);
        return List.of(
                margin.part(),
                phrase.value(margin),
                phrase.bound(margin),
                HeadroomPhrase.of(margin.headroom()),
                HeadroomPhrase.verdict(margin.verdict()));
    }

    List<String> cells(LabelledMargin row) {
        List<String> cells = new ArrayList<>(List.of(row.label));
        cells.addAll(figures(row.margin));
        return cells;
    }

    /** Every limit for the spreadsheet, under {@link #HEAD}. */
    List<List<String>> limits() {
        return judged.margins().stream().map(this::limit).toList();
    }

    private List<String> limit(Margin margin) {
        Quantity quantity = MarginQuantity.of(margin);
        return List.of(
                judged.unit().build(),
                judged.duty().name(),
                margin.kind().word(),
                margin.part(),
                quantity.number(units, margin.value()),
                quantity.number(units, margin.needed()),
                new MarginPhrase(units).unit(margin),
                Double.isFinite(margin.headroom()) ? Digits.four(margin.headroom()) : "-",
                margin.verdict().word(),
                Quantity.SPEED.number(units, margin.speed().orElse(judged.duty().speed())),
                new MarginSentences(units).why(judged, margin));
    }

    /** Clutches that are on where they should be off, in the same columns. */
    List<List<String>> dragging() {
        return judged.draggingClutches().stream().map(this::dragging).toList();
    }

    private List<String> dragging(DraggingClutch clutch) {
        return List.of(
                judged.unit().build(),
                clutch.duty(),
                CLUTCH_OFF,
                clutch.clutch(),
                Quantity.PRESSURE.number(units, clutch.pressure()),
                Quantity.PRESSURE.number(units, clutch.yields()),
                Quantity.PRESSURE.in(units).unit(),
                Digits.four(clutch.headroom()),
                Margin.Verdict.FAILS.word(),
                Quantity.SPEED.number(units, judged.duty().speed()),
                new MarginSentences(units).drags(clutch));
    }
}
