package hotidle.answer.margins;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.Rpm;
import hotidle.answer.phrase.HeadroomPhrase;
import hotidle.answer.phrase.MarginsScreenPhrase;
import hotidle.assess.Margin;
import hotidle.study.Judgement;
import java.util.OptionalDouble;

/** A limit at a driving condition with what is said of it; value and need in the unit told. */
public record ToldLimit(
        String duty,
        String margin,
        String part,
        String label,
        String isOfNeeded,
        OptionalDouble value,
        double needed,
        String unit,
        double headroom,
        String headroomSaid,
        String verdict,
        String verdictSaid,
        double engineSpeedRpm,
        String why) {

    static ToldLimit of(Quantity.UnitSystem units, Judgement judged, Margin margin) {
        MarginsScreenPhrase phrase = new MarginsScreenPhrase(units);
        return new ToldLimit(
                judged.duty().name(),
                margin.kind().word(),
                margin.part(),
                phrase.limit(margin),
                phrase.isOfNeeded(margin),
                margin.value(),
                margin.needed(),
                margin.scale().word(),
                margin.headroom(),
                HeadroomPhrase.of(margin.headroom()),
                margin.verdict().word(),
                HeadroomPhrase.verdict(margin.verdict()),
                Rpm.of(margin.speed().orElse(judged.duty().speed())),
                new MarginSentences(units).why(judged, margin));
    }
}
