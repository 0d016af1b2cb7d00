package hotidle.part;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

/**
 * A part's answers as one of its columns moves and all else is given: are its values and slopes one smooth law?
 *
 * @param part    the part
 * @param law     its law at one duty
 * @param reading all else
 * @param column  what moves
 * @param origin  where a law may turn round: no flow
 * @param corners where it may bend, by declaration
 */
record Scan(Part part, Part.Law law, Reading reading, int column, double origin, List<Double> corners) {

    /** How near a slope must come to the difference of values, as a share of its scale. */
    private static final double AGREEMENT = 1e-6;

    private static final double ULP = Math.ulp(1.0);
    private static final int HALVINGS = 45;

    /** Slope of a row at a value. */
    double slope(int row, double value) {
        return at(value).slope(row, column);
    }

    private Stamp at(double value) {
        double before = reading.at(column);
        reading.set(column, value);
        Stamp stamp = new Stamp(part.form());
        law.evaluate(reading, stamp);
        reading.set(column, before);
        return stamp;
    }

    /** Distance to the nearest place where the law may bend. */
    double room(double value) {
        return corners.stream()
                .mapToDouble(corner -> Math.abs(value - corner))
                .reduce(Math.abs(value - origin), Math::min);
    }

    /** Central difference of fourth order against the slope. */
    void central(double value, double step) {
        compare(value, step, new double[] {1.0 / 12, -8.0 / 12, 0, 8.0 / 12, -1.0 / 12}, -2, value);
    }

    /**
     * Difference of fourth order to one side against the slope there.
     *
     * @param step its sign is that of the side
     * @param near where the slope is read: the value itself, or a hair's breadth off a corner
     */
    void oneSided(double value, double step, double near) {
        compare(value, step, new double[] {-25.0 / 12, 4, -3, 4.0 / 3, -0.25}, 0, near);
    }

    private void compare(double value, double step, double[] weights, int first, double near) {
        Stamp rest = at(origin);
        Stamp here = at(near);
        Stamp[] around = new Stamp[weights.length];
        for (int i = 0; i < weights.length; i++) {
            around[i] = at(value + (first + i) * step);
        }
        for (int row = 0; row < here.rows(); row++) {
            double difference = 0;
            double biggest = judgedAgainst(row, here, value);
            for (int i = 0; i < weights.length; i++) {
                difference += weights[i] * around[i].value(row) / step;
                biggest = Math.max(biggest, Math.abs(around[i].value(row)));
            }
            double rounding = 20 * ULP * biggest / Math.abs(step);
            double miss = Math.abs(difference - here.slope(row, column));
            double scale = Math.max(Math.abs(difference), scale(row, value, here, rest));
            assertTrue(
                    miss <= AGREEMENT * scale + rounding,
                    () -> name() + " at " + value + ": slopes differ by " + miss + " of " + scale + ", step " + step);
        }
    }

    /**
     * What goes into a row's sum, though it may be near zero: a state's scale, and what each thing that is read brings, slope by
     * value. An ulp of any of these is an ulp that no difference can be without.
     */
    private double judgedAgainst(int row, Stamp here, double value) {
        int state = row - part.form().ports().size();
        double biggest = state < 0 ? 0 : part.form().states().get(state).scale();
        for (int other = 0; other < here.columns(); other++) {
            double read = other == column ? value : reading.at(other);
            biggest = Math.max(biggest, Math.abs(here.slope(row, other) * read));
        }
        return biggest;
    }

    /** What a slope is judged by: itself, or the mean slope from the origin. */
    private double scale(int row, double value, Stamp here, Stamp rest) {
        double mean = value == origin ? 0 : Math.abs((here.value(row) - rest.value(row)) / (value - origin));
        return Math.max(Math.abs(here.slope(row, column)), mean);
    }

    /** Halves an interval again and again, always keeping the half that bends most, then that misses most: no jump may be left. */
    void noJumpBetween(double low, double high) {
        Stamp rest = at(origin);
        Stamp first = at(low);
        Stamp last = at(high);
        for (int row = 0; row < first.rows(); row++) {
            noJump(row, new Span(low, first, high, last), true, rest);
            noJump(row, new Span(low, first, high, last), false, rest);
        }
    }

    private void noJump(int row, Span whole, boolean slope, Stamp rest) {
        Span span = whole;
        double allowed = allowed(row, whole, slope, rest);
        for (int i = 0; i < HALVINGS && left(row, span, slope) > allowed; i++) {
            double middle = (span.low + span.high) / 2;
            Stamp between = at(middle);
            Span lower = new Span(span.low, span.first, middle, between);
            Span upper = new Span(middle, between, span.high, span.last);
            span = left(row, lower, slope) >= left(row, upper, slope) ? lower : upper;
        }
        double left = left(row, span, slope);
        double place = span.low;
        assertTrue(
                left <= allowed,
                () -> name() + ": " + (slope ? "slope" : "value") + " jumps by " + left + " at " + place);
    }

    private record Span(double low, Stamp first, double high, Stamp last) {}

    private double left(int row, Span span, boolean slope) {
        double bend = span.last.slope(row, column) - span.first.slope(row, column);
        double rise = span.last.value(row) - span.first.value(row);
        double straight = (span.high - span.low) * (span.first.slope(row, column) + bend / 2);
        return Math.abs(slope ? bend : rise - straight);
    }

    private double allowed(int row, Span span, boolean slope, Stamp rest) {
        double scale = Math.max(scale(row, span.low, span.first, rest), scale(row, span.high, span.last, rest));
        double reach = Math.max(Math.abs(span.low - origin), Math.abs(span.high - origin));
        double biggest = Math.max(Math.abs(span.first.value(row)), judgedAgainst(row, span.first, span.low));
        double rounding = 20 * ULP * biggest;
        return slope ? AGREEMENT * scale : AGREEMENT * scale * reach + rounding;
    }

    private String name() {
        return part + " column " + column + ", reading " + reading;
    }
}
