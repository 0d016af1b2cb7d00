package hotidle.part;

/**
 * The spring of a throttle valve, pressed together by a cable or a lever.
 *
 * <pre>
 * Balance   p·A = preload + k·(travel·throttle + offset): force over area, no law of its own
 * </pre>
 *
 * @param area    A on which the valve's own pressure pushes back [m²]
 * @param preload with the throttle shut [N]
 * @param rate    k [N/m]
 * @param travel  of the spring's seat from shut to full throttle [m]
 * @param offset  how much further the cable presses than it should [m], below zero where it is slack
 */
public record ThrottleSpring(double area, double preload, double rate, double travel, double offset)
        implements SignalValve.Demand {

    public ThrottleSpring {
        Check.positive("area of a throttle valve", area);
        Check.positive("spring rate of a throttle valve", rate);
        Check.positive("travel of a throttle valve", travel);
    }

    @Override
    public double pressure(Sensed sensed) {
        return Math.max(0, (preload + rate * (travel * sensed.throttle() + offset)) / area);
    }
}
