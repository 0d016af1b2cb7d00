package hotidle.study.gauge;

import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Readings that can stand beside a unit swept over engine speed at a duty point: taken in its range, with the sump about as warm and
 * about the same set pressure commanded.
 *
 * @param taken  those that can, pressures alone
 * @param others how many cannot
 */
public record ReadingsAtDuty(List<GaugeReading> taken, int others) {

    /** As warm as a thermometer and its reader tell (assumed) [K]. */
    private static final double WARM = 5;

    /** As far off as spring and pilot pressure may be (assumed) [-]. */
    private static final double SET = Tolerances.SPRING;

    public ReadingsAtDuty {
        taken = List.copyOf(taken);
    }

    /** Those of a sheet. */
    public static ReadingsAtDuty of(List<GaugeReading> readings, Transmission unit, DutyPoint duty) {
        List<GaugeReading> taken = readings.stream()
                .filter(reading -> reading.meter().reads() == Meter.Reads.PRESSURE)
                .filter(reading -> reading.at().range().equals(duty.range()))
                .filter(reading -> Math.abs(reading.at().temperature()
                                - duty.temperatures().getOrDefault(TestPoint.SUMP, Double.NaN))
                        <= WARM)
                .filter(reading -> sameSet(reading, unit, duty))
                .toList();
        return new ReadingsAtDuty(taken, readings.size() - taken.size());
    }

    private static boolean sameSet(GaugeReading reading, Transmission unit, DutyPoint duty) {
        OptionalDouble then = unit.setPressure(reading.at().conditions(unit));
        OptionalDouble here = unit.setPressure(unit.conditions(duty));
        return then.isPresent() == here.isPresent()
                && (then.isEmpty() || Math.abs(then.getAsDouble() / here.getAsDouble() - 1) <= SET);
    }
}
