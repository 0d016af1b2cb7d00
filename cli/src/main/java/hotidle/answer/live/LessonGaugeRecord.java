package hotidle.answer.live;

import hotidle.answer.format.Rpm;
import hotidle.oil.Oil;
import hotidle.study.gauge.GaugeReading;
import java.util.OptionalDouble;

/**
 * A gauge and what is set, as a page asks for it.
 *
 * @param sumpTemperatureC empty where the oil has one temperature
 */
public record LessonGaugeRecord(String tap, String range, double engineSpeedRpm, OptionalDouble sumpTemperatureC) {

    public static LessonGaugeRecord of(GaugeReading.Row row) {
        double temperature = row.at().temperature();
        return new LessonGaugeRecord(
                row.meter().name(),
                row.at().range(),
                Rpm.of(row.at().speed()),
                Double.isNaN(temperature) ? OptionalDouble.empty() : OptionalDouble.of(temperature - Oil.ZERO_CELSIUS));
    }
}
