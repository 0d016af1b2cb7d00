package hotidle.answer.sweep;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.Rpm;
import hotidle.plots.GaugePoint;
import hotidle.study.gauge.GaugeReading;
import java.util.List;

/** Gauge readings as points of a chart against speed. */
record ReadPoints(Quantity.UnitSystem units, List<GaugeReading> readings) {

    /** Deviations that a gauge may be off by, as its accuracy is taken. */
    private static final double BAND = 2;

    /** Those of a node within the speeds of a chart [rpm]. */
    List<GaugePoint> of(String node, double low, double high) {
        return readings.stream()
                .filter(reading -> reading.meter().node().equals(node))
                .filter(reading -> Rpm.of(reading.at().speed()) >= low
                        && Rpm.of(reading.at().speed()) <= high)
                .map(this::point)
                .toList();
    }

    /** A reading below or above a value goes on to where the gauge's own band ends. */
    private GaugePoint point(GaugeReading reading) {
        double off = BAND * reading.deviation();
        double low = reading.sense() == GaugeReading.Sense.BELOW ? 0 : Math.max(0, reading.value() - off);
        return new GaugePoint(
                Rpm.of(reading.at().speed()), value(reading.value()), value(low), value(reading.value() + off));
    }

    private double value(double pressure) {
        return Quantity.PRESSURE.value(units, pressure);
    }
}
