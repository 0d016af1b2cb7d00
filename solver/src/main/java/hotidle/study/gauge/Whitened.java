package hotidle.study.gauge;

import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/** Readings counted so that those of a unit are independent and of deviation 1: L⁻¹·y with C = L·Lᵀ. */
final class Whitened {

    private final double[][] lower;

    /** Readings by the lower factor L of their covariance. */
    Whitened(RealMatrix lower) {
        this.lower = lower.getData();
    }

    /** A difference of readings, in independent deviations. */
    RealVector of(RealVector difference) {
        double[] counted = difference.toArray();
        count(counted);
        return new ArrayRealVector(counted, false);
    }

    /** The square of a difference of readings, χ² where it is what is left of them; the difference is overwritten. */
    double square(double[] difference) {
        count(difference);
        double square = 0;
        for (double one : difference) {
            square += one * one;
        }
        return square;
    }

    private void count(double[] counted) {
        for (int i = 0; i < counted.length; i++) {
            double[] row = lower[i];
            double left = counted[i];
            for (int k = 0; k < i; k++) {
                left -= row[k] * counted[k];
            }
            counted[i] = left / row[i];
        }
    }
}
