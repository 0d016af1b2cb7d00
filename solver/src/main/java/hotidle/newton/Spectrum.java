package hotidle.newton;

import hotidle.result.Stability;
import org.ejml.data.Complex_F64;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * The spectrum of a circuit's dynamics at a steady state: node compliance and spool damping, as in {@link PseudoTransient}.
 *
 * <pre>
 * Dynamics  compliance·dp/dt = −imbalance, damping·dx/dt = −F/σ; a state that its stop holds stays there
 * Numerics  pressures are counted in bar and states in their way between the stops; a growth below 1e-12 of the fastest rate is
 *           rounding. The size of a rate hangs on the compliance and damping assumed, the sign of a real one does not.
 * </pre>
 */
final class Spectrum {

    private static final double ROUNDING = 1e-12;
    private static final double PRESSURE = 1e5;

    private Spectrum() {}

    static Stability stability(Balance balance, Pattern pattern, double[] unknowns) {
        EigenDecomposition_F64<DMatrixRMaj> spectrum = DecompositionFactory_DDRM.eig(balance.size(), false);
        if (!spectrum.decompose(rates(balance, pattern, unknowns))) {
            throw new IllegalStateException("no spectrum was found of " + balance.size() + " equations");
        }
        double fastest = 0;
        for (int i = 0; i < spectrum.getNumberOfEigenvalues(); i++) {
            fastest = Math.max(fastest, spectrum.getEigenvalue(i).getMagnitude());
        }
        Stability found = Stability.STABLE;
        for (int i = 0; i < spectrum.getNumberOfEigenvalues(); i++) {
            Complex_F64 rate = spectrum.getEigenvalue(i);
            if (rate.getReal() > ROUNDING * fastest) {
                if (rate.isReal()) {
                    return Stability.UNSTABLE;
                }
                found = Stability.SWINGING;
            }
        }
        return found;
    }

    private static DMatrixRMaj rates(Balance balance, Pattern pattern, double[] unknowns) {
        balance.still();
        balance.evaluate(unknowns);
        balance.differentiate();
        int n = balance.size();
        DMatrixRMaj rates = new DMatrixRMaj(n, n);
        for (int j = 0; j < n; j++) {
            for (int k = pattern.columnStarts()[j]; k < pattern.columnStarts()[j + 1]; k++) {
                int i = pattern.rows()[k];
                rates.set(i, j, -balance.matrix[k] * size(balance, j) * rate(balance, i) / size(balance, i));
            }
        }
        return rates;
    }

    private static double size(Balance balance, int i) {
        return i < balance.nodes() ? PRESSURE : balance.span(i);
    }

    /** How fast an unknown moves where its equation is 1 off. */
    private static double rate(Balance balance, int i) {
        return i < balance.nodes() ? 1 / Balance.COMPLIANCE : balance.span(i) / PseudoTransient.DAMPING_TIMES[0];
    }
}
