package hotidle.study.gauge;

/** No steady state was found for the unit as built where gauges were read, so that nothing can be expected of them. */
public final class UnsolvedPointException extends IllegalStateException {

    private static final long serialVersionUID = 1;

    private final transient TestPoint point;

    UnsolvedPointException(TestPoint point) {
        super("no steady state was found at " + point);
        this.point = point;
    }

    /** Where. */
    public TestPoint point() {
        return point;
    }
}
