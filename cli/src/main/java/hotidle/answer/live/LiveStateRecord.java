package hotidle.answer.live;

import com.fasterxml.jackson.annotation.JsonProperty;
import hotidle.answer.StateRecord;
import hotidle.answer.draw.DrawnLabels;
import hotidle.answer.phrase.FatePhrase;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.assess.Assessment;
import hotidle.assess.OilBudget;
import hotidle.result.Outcome;
import hotidle.study.LineCurve;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Tap;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is shown at once while somebody turns at the unit.
 *
 * @param kept     the curve of what is kept as reference; empty where nothing is
 * @param linePa   at the driving condition looked at; empty where no state was found
 * @param setPa    commanded there; empty where nothing is
 * @param state    there, as the commands write it
 * @param oil      where it goes
 * @param taps     what gauges would show
 * @param labels   of the drawing; empty where nobody asked for them
 * @param unsolved why there is no state, in words; empty where there is one
 */
public record LiveStateRecord(
        LiveCurveRecord curve,
        Optional<LiveCurveRecord> kept,
        OptionalDouble linePa,
        OptionalDouble setPa,
        StateRecord state,
        List<OilEnd> oil,
        List<TapReading> taps,
        Optional<DrawnLabels> labels,
        Optional<String> unsolved) {

    /** One end of the oil, counted as the pump takes it in, and its share of what the pump displaces. */
    public record OilEnd(
            String fate,
            String group,
            String part,
            @JsonProperty("flow_m3_s") double flow,
            double share) {}

    /** A gauge at a tap. */
    public record TapReading(String tap, OptionalDouble pressurePa) {}

    public static LiveStateRecord of(
            Transmission unit,
            DutyPoint duty,
            LineCurve curve,
            Optional<LineCurve> kept,
            Optional<DrawnLabels> labels) {
        Outcome outcome = curve.own();
        Optional<Assessment> assessed = outcome.state().map(state -> Assessment.of(unit, duty, state));
        return new LiveStateRecord(
                LiveCurveRecord.of(curve),
                kept.map(LiveCurveRecord::of),
                assessed.map(one -> OptionalDouble.of(one.figures().line())).orElse(OptionalDouble.empty()),
                unit.setPressure(outcome.conditions()),
                StateRecord.of(unit, duty, outcome, assessed),
                assessed.map(one -> oil(one.budget())).orElse(List.of()),
                taps(unit, outcome),
                labels,
                outcome.unsolved()
                        .map(why -> UnsolvedPhrase.nothingKnownHere(
                                UnsolvedPhrase.why(why.culprit(), why.residual(), why.tried()))));
    }

    private static List<OilEnd> oil(OilBudget budget) {
        List<OilEnd> ends = new ArrayList<>();
        for (OilBudget.Path path : budget.paths()) {
            ends.add(new OilEnd(
                    FatePhrase.of(path.fate()),
                    path.group().label(),
                    path.key(),
                    path.flow(),
                    path.flow() / budget.displaced()));
        }
        return ends;
    }

    private static List<TapReading> taps(Transmission unit, Outcome outcome) {
        List<TapReading> readings = new ArrayList<>();
        for (Tap tap : unit.taps()) {
            readings.add(new TapReading(
                    tap.name(),
                    outcome.state()
                            .map(state -> OptionalDouble.of(state.pressure(tap.node())))
                            .orElse(OptionalDouble.empty())));
        }
        return readings;
    }
}
