package hotidle.answer.live;

import hotidle.answer.format.Rpm;
import hotidle.study.LineCurve;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Line pressure over engine speed as plain numbers.
 *
 * @param linePa empty where no state was found
 * @param setPa  empty where none is commanded
 */
public record LiveCurveRecord(List<Double> engineSpeedRpm, List<OptionalDouble> linePa, List<OptionalDouble> setPa) {

    public static LiveCurveRecord of(LineCurve curve) {
        return new LiveCurveRecord(
                curve.points().stream().map(point -> Rpm.of(point.speed())).toList(),
                curve.points().stream().map(LineCurve.LineAtSpeed::line).toList(),
                curve.points().stream().map(LineCurve.LineAtSpeed::set).toList());
    }
}
