package hotidle.study.gauge;

/**
 * What a gauge or flow meter showed.
 *
 * @param meter     what was read
 * @param at        what was set
 * @param sense     whether it showed that value, less or more
 * @param value     [Pa] or [m³/s]
 * @param deviation standard deviation of gauge and reading, half of what the gauge's accuracy allows either way [as value]
 */
public record GaugeReading(Meter meter, TestPoint at, Sense sense, double value, double deviation) {

    /** What is known of the value. */
    public enum Sense {
        EXACT,
        /** The gauge showed less, as with a needle on its stop. */
        BELOW,
        /** The gauge showed more. */
        ABOVE
    }

    /** What was read, and at what. */
    public Row row() {
        return new Row(meter, at);
    }

    /** A meter at a test point. */
    public record Row(Meter meter, TestPoint at) {}
}
