package hotidle.answer.sweep;

import hotidle.answer.format.Quantity;
import hotidle.study.SpeedSweep;
import java.util.List;

/** What a sweep has found, in a sentence: the title of its chart. */
public final class SweepFinding {

    private SweepFinding() {}

    /** From which speed the line holds. */
    public static String pressure(Quantity.UnitSystem units, SpeedSweep sweep) {
        return new ChartTitles(units, List.of(sweep)).pressure();
    }
}
