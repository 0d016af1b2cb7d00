package hotidle.answer.margins;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.BuildVerdictPhrase;
import hotidle.answer.phrase.ClutchPhrase;
import hotidle.answer.phrase.LimitPhrase;
import hotidle.answer.phrase.LineShortPhrase;
import hotidle.answer.phrase.MarginCausePhrase;
import hotidle.answer.phrase.MarginsScreenPhrase;
import hotidle.answer.phrase.NotCommandedPhrase;
import hotidle.assess.Figures;
import hotidle.assess.Margin;
import hotidle.assess.NotCommanded;
import hotidle.study.BuildVerdict;
import hotidle.study.DraggingClutch;
import hotidle.study.GripLoad;
import hotidle.study.JudgedBuild;
import hotidle.study.Judgement;
import hotidle.study.LineShort;
import hotidle.study.LooseWritten;
import hotidle.study.PumpShortage;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Optional;

/** Which sentence is said of what was judged. */
public record MarginSentences(Quantity.UnitSystem units) {

    /** What a build comes to in one line. */
    public String verdict(String build, BuildVerdict verdict) {
        return verdict.first()
                .map(first -> BuildVerdictPhrase.of(
                        build,
                        verdict.dragging().map(this::drags),
                        first.margin().verdict(),
                        limit(first),
                        verdict.notKnown(),
                        !verdict.undecided().isEmpty()))
                .orElseGet(() -> BuildVerdictPhrase.nothingJudged(
                        build, verdict.notKnown(), !verdict.undecided().isEmpty()));
    }

    /** Which fits bring a build down though each is within its written limit. */
    Optional<String> loose(JudgedBuild build, List<LooseWritten> all) {
        return all.stream()
                .filter(one -> one.build().equals(build.unit().build()))
                .findFirst()
                .map(one -> MarginsScreenPhrase.loose(
                        one.sizes().stream().map(WearSize::name).toList(),
                        LimitPhrase.at(
                                one.first().kind(),
                                one.first().part(),
                                one.first().duty())));
    }

    /** What is wrong first, or narrowest; empty where nothing is judged. */
    String first(BuildVerdict verdict) {
        return verdict.dragging()
                .map(this::drags)
                .or(() -> verdict.first().map(this::limit))
                .orElse("");
    }

    private String limit(BuildVerdict.FirstLimit first) {
        BuildVerdictPhrase phrase = new BuildVerdictPhrase(units);
        return first.shortage()
                .map(why -> phrase.pumpShort(
                        first.margin(), first.duty(), why.line(), why.set(), why.regulated(), why.follows()))
                .orElseGet(() -> phrase.limit(first.margin(), first.duty())
                        + first.line()
                                .map(why -> " " + line(why, first.margin().part()))
                                .orElse(""));
    }

    private String line(LineShort cause, String part) {
        LineShortPhrase phrase = new LineShortPhrase(units);
        return switch (cause.why()) {
            case COMMANDED_TOO_LITTLE -> phrase.tooLittle(cause.line(), cause.set());
            case LOST_ON_THE_WAY -> phrase.lostOnTheWay(cause.line(), part);
            case PASSES_TOO_LITTLE -> phrase.passesTooLittle(cause.line(), cause.set());
            case REGULATOR_LETS_GO -> phrase.letsGo(cause.line(), cause.set());
        };
    }

    String drags(DraggingClutch clutch) {
        return new ClutchPhrase(units)
                .drags(clutch.clutch(), clutch.pressure(), clutch.duty(), clutch.range(), clutch.yields());
    }

    static String notCommanded(NotCommanded why) {
        if (!why.valves()) {
            return NotCommandedPhrase.NO_VALVE;
        }
        return why.regulator()
                .map(one -> NotCommandedPhrase.write(one.line(), one.valve(), one.edge()))
                .orElseGet(NotCommandedPhrase::anyValve);
    }

    /** Why a margin is what it is. */
    String why(Judgement judged, Margin margin) {
        MarginCausePhrase phrase = new MarginCausePhrase(units);
        String cause =
                switch (margin.kind()) {
                    case REGULATION -> regulation(phrase, judged, margin);
                    case APPLY, APPLY_SLIDING -> {
                        GripLoad load = judged.gripLoad(margin);
                        yield phrase.clutch(margin, load.torque(), load.factor());
                    }
                    case LOCKUP -> {
                        GripLoad load = judged.gripLoad(margin);
                        yield phrase.lockup(margin, load.torque(), load.factor());
                    }
                    case LUBRICATION -> phrase.lubrication(margin);
                    case COOLER -> phrase.cooler(margin);
                    case CONVERTER_CHARGE -> phrase.charge(margin);
                    case FILM -> phrase.film(margin);
                    case FILM_OIL -> phrase.filmOil(margin);
                    case UNIT_LOAD -> phrase.unitLoad(margin);
                    case PUMP_INLET -> phrase.inlet(margin);
                    case RELIEF -> phrase.relief(margin);
                    case OIL_TEMPERATURE -> phrase.oilTemperature(margin);
                    case CONVERTER_TEMPERATURE -> phrase.converterTemperature(margin);
                    case RATED_TORQUE -> phrase.ratedTorque(margin);
                    case RATED_PRESSURE -> phrase.ratedPressure(margin);
                };
        return MarginCausePhrase.noted(cause, margin);
    }

    private static String regulation(MarginCausePhrase phrase, Judgement judged, Margin margin) {
        double set = judged.figures().map(Figures::set).orElseThrow().orElseThrow();
        return phrase.regulation(margin, set)
                + judged.shortage().map(why -> settles(phrase, why)).orElse("");
    }

    private static String settles(MarginCausePhrase phrase, PumpShortage why) {
        return phrase.settles(why.line(), why.regulated());
    }
}
