package hotidle.plots;

/**
 * What a gauge read at a speed.
 *
 * @param speed [rpm]
 * @param value on the upright axis
 * @param low   the least that it may have been
 * @param high  the most
 */
public record GaugePoint(double speed, double value, double low, double high) {}
