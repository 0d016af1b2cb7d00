package hotidle.study.gauge;

import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * What meters would read on a unit, before the gauge's own error.
 *
 * @param mean       of each row [Pa] or [m³/s]
 * @param covariance of what is not known of the unit and of what is set
 */
record Expectation(RealVector mean, RealMatrix covariance) {

    /** Between this and another, at a share of the way. */
    Expectation between(Expectation other, double share) {
        return new Expectation(
                mean.mapMultiply(1 - share).add(other.mean.mapMultiply(share)),
                covariance.scalarMultiply(1 - share).add(other.covariance.scalarMultiply(share)));
    }

    /**
     * Readings of one unit, and what a standard deviation of each of its sizes moves them by.
     *
     * @param mean   of each row
     * @param slopes a row for each reading, a column for each number that is not known
     */
    record Slopes(RealVector mean, RealMatrix slopes) {}
}
