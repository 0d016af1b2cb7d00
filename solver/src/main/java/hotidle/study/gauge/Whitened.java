package hotidle.study.gauge;

import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/** Readings counted so that those of a sound unit are independent and of deviation 1: L⁻¹·y with C = L·Lᵀ. */
record Whitened(RealMatrix lower) {

    /** A difference of readings, in independent deviations. */
    RealVector of(RealVector difference) {
        RealVector counted = difference.copy();
        MatrixUtils.solveLowerTriangularSystem(lower, counted);
        return counted;
    }
}
