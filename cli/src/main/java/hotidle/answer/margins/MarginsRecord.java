package hotidle.answer.margins;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hotidle.answer.LimitRecord;
import hotidle.answer.Settling;
import hotidle.answer.StateRecord;
import hotidle.answer.format.Rpm;
import hotidle.assess.Margin;
import hotidle.study.JudgedBuild;
import hotidle.study.Judgement;
import hotidle.study.LooseWritten;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Every limit of some builds at every duty point, as JSON.
 *
 * @param notJudged there only where regulation is not judged
 * @param noTemperature there only where some are left out for it
 */
record MarginsRecord(
        String circuit,
        @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<NotJudgedRecord> notJudged,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<Settling.NeverSettledRecord> noTemperature,
        List<JudgedBuildRecord> builds) {

    /** Why something is not judged. */
    record NotJudgedRecord(String regulation) {}

    /** @param wornWithinLimit there only where such fits bring the first limit down */
    record JudgedBuildRecord(
            String build,
            String summary,
            List<LimitRecord> notKnown,
            @JsonInclude(JsonInclude.Include.NON_EMPTY) List<String> wornWithinLimit,
            List<JudgedState> states) {}

    /** A state with its margins. */
    record JudgedState(
            @JsonUnwrapped StateRecord state,
            List<LimitAt> margins,
            Map<String, Double> clutchOnThoughNotAppliedPa,
            Map<String, Double> clutchPressureFarBelowLinePa) {}

    /** A margin; value and need in the unit told. */
    record LimitAt(
            String margin,
            String part,
            OptionalDouble value,
            double needed,
            String unit,
            String limit,
            double headroom,
            String verdict,
            double engineSpeedRpm,
            String why) {}

    static MarginsRecord of(MarginsAnswer answer) {
        MarginSentences sentences = new MarginSentences(answer.units());
        return new MarginsRecord(
                answer.circuit(),
                answer.notCommanded().map(why -> new NotJudgedRecord(MarginSentences.notCommanded(why))),
                answer.settling().records(),
                answer.builds().stream()
                        .map(build -> build(sentences, answer.loose(), build))
                        .toList());
    }

    private static JudgedBuildRecord build(MarginSentences sentences, List<LooseWritten> loose, JudgedBuild judged) {
        String name = judged.unit().build();
        return new JudgedBuildRecord(
                name,
                sentences.verdict(name, judged.verdict()),
                LimitRecord.of(judged.verdict().undecided()),
                loose.stream()
                        .filter(one -> one.build().equals(name))
                        .flatMap(one -> one.sizes().stream())
                        .map(WearSize::name)
                        .toList(),
                judged.duties().stream().map(duty -> state(sentences, duty)).toList());
    }

    private static JudgedState state(MarginSentences sentences, Judgement judged) {
        return new JudgedState(
                StateRecord.of(judged.unit(), judged.duty(), judged.outcome()),
                judged.margins().stream()
                        .map(margin -> limit(sentences, judged, margin))
                        .toList(),
                judged.dragging(),
                judged.leaky());
    }

    private static LimitAt limit(MarginSentences sentences, Judgement judged, Margin margin) {
        return new LimitAt(
                margin.kind().word(),
                margin.part(),
                margin.value(),
                margin.needed(),
                margin.scale().word(),
                margin.kind().upper() ? "upper" : "lower",
                margin.headroom(),
                margin.verdict().word(),
                Rpm.of(margin.speed().orElse(judged.duty().speed())),
                sentences.why(judged, margin));
    }
}
