package hotidle.answer.compare;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.BandPhrase;
import hotidle.study.spread.FirstOrderBand;
import java.util.ArrayList;
import java.util.List;

/**
 * How far the leading answers of a build may lie with fits that nobody measured, at the first driving condition shown.
 *
 * @param build       its name
 * @param notMeasured sizes that nobody measured, those that do not wear too
 * @param band        to first order
 */
public record BuildBand(String build, long notMeasured, FirstOrderBand band) {

    /** In words. */
    String said(Quantity.UnitSystem units) {
        List<String> said = new ArrayList<>();
        band.line().ifPresent(line -> said.add(BandPhrase.reads(between(units, Quantity.PRESSURE, line))));
        band.holds().ifPresent(speed -> said.add(BandPhrase.holds(between(units, Quantity.SPEED, speed))));
        return BandPhrase.said(build, notMeasured, band.sizes(), said);
    }

    private static String between(
            Quantity.UnitSystem units, Quantity quantity, FirstOrderBand.MiddleAndDeviation band) {
        return BandPhrase.between(
                quantity.number(units, Math.max(band.low(), 0)),
                quantity.number(units, band.high()),
                quantity.in(units).unit());
    }
}
