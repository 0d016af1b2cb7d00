package hotidle.newton;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The methods of solving, tried in turn until one has the answer; on plain arrays.
 *
 * <p>From cold Newton by the residual's level, then by the natural level from where that ends, then time steps through the dynamics;
 * from a near start first the natural level alone. The natural level goes on only as long as it does not creep; the residual's does from
 * cold. A state whose determinant shows it unstable is left the way the circuit would leave it, by time steps from beside it.
 */
final class SolveStrategy {

    /** Pressures from which a cold solve starts, one after the other [Pa]. */
    private static final double[] COLD_STARTS = {1e3, 1e5};

    /** Way beside an unstable state from which the circuit is let go: this share of the way between the stops (ours) [-]. */
    private static final double BESIDE = 1e-3;

    private final Equations equations;
    private final Newton newton;
    private final PseudoTransient settling;
    private final double[] start;
    private final double[] unstable;
    private final List<String> tried = new ArrayList<>();
    private String method = "";

    SolveStrategy(Equations equations) {
        this.equations = equations;
        newton = new Newton(equations);
        settling = new PseudoTransient(newton);
        start = new double[equations.size()];
        unstable = new double[equations.size()];
    }

    Newton newton() {
        return newton;
    }

    /** What was tried since the last {@link #reset}, and where it ended. */
    List<String> tried() {
        return tried;
    }

    /** What had the answer. */
    String method() {
        return method;
    }

    void reset() {
        tried.clear();
        newton.reset();
    }

    /**
     * Newton by the natural level alone, from a start that is likely to be near. An answer that took no step is as stable as the one
     * before it.
     */
    boolean quick(double[] unknowns, double aim) {
        method = "Newton";
        return newton.natural(unknowns, aim) && (newton.steps() == 0 || !newton.negativeDeterminant());
    }

    /** All methods from one start; the unknowns are moved to the answer, and are of no use where there is none. */
    boolean climb(double[] unknowns, String from) {
        System.arraycopy(unknowns, 0, start, 0, start.length);
        if (newtons(unknowns, from)) {
            return true;
        }
        System.arraycopy(start, 0, unknowns, 0, start.length);
        return timeSteps(unknowns, from);
    }

    /** Newton by both levels; the unknowns are of no use where there is no answer. */
    boolean newtons(double[] unknowns, String from) {
        return newtons(unknowns, from, newton.solve(unknowns, Newton.POLISHED));
    }

    /** The same from a start that is likely to be near: by the residual's level only as long as it does not creep. */
    boolean newtonsNear(double[] unknowns, String from) {
        return newtons(unknowns, from, newton.nearByResidual(unknowns));
    }

    private boolean newtons(double[] unknowns, String from, boolean byResidual) {
        return (ended("Newton", from, byResidual)
                        || ended("Newton by the natural level", from, newton.natural(unknowns, Newton.POLISHED)))
                && (!newton.negativeDeterminant() || leave(unknowns));
    }

    /** Time steps through the dynamics; the unknowns are of no use where there is no answer. */
    boolean timeSteps(double[] unknowns, String from) {
        System.arraycopy(unknowns, 0, start, 0, start.length);
        for (double damping : PseudoTransient.DAMPING_TIMES) {
            System.arraycopy(start, 0, unknowns, 0, start.length);
            boolean settled = settling.settle(unknowns, damping);
            String moving = settling.moving() ? ", still moving after the last time step, so that it may hunt" : "";
            String how = from + ", spools settling in " + damping + " s" + moving;
            if (ended("pseudo-transient continuation", how, settled)) {
                return true;
            }
        }
        return false;
    }

    private boolean ended(String how, String from, boolean solved) {
        method = how;
        if (!solved) {
            Balance balance = newton.balance();
            tried.add(String.format(
                    Locale.ROOT,
                    "%s from %s: ended %.2g off at %s",
                    how,
                    from,
                    balance.worst(),
                    equations.name(balance.culprit())));
        }
        return solved;
    }

    /** From an unstable state to a stable one beside it, either way; where neither way leads to one, the unstable one stays. */
    private boolean leave(double[] unknowns) {
        String found = method;
        System.arraycopy(unknowns, 0, unstable, 0, unstable.length);
        for (double beside : new double[] {BESIDE, -BESIDE}) {
            System.arraycopy(unstable, 0, unknowns, 0, unstable.length);
            for (int i = equations.nodes(); i < unknowns.length; i++) {
                unknowns[i] += beside * newton.balance().span(i);
            }
            newton.balance().project(unknowns, Newton.LOWEST);
            method = "pseudo-transient continuation, away from an unstable state";
            if (settling.away(unknowns, PseudoTransient.DAMPING_TIMES[0]) && !newton.growing()) {
                return true;
            }
        }
        System.arraycopy(unstable, 0, unknowns, 0, unstable.length);
        method = found + ", an unstable state";
        return newton.solve(unknowns, Newton.POLISHED);
    }

    /** All methods from one cold start after the other: where Newton fails from the first, it seldom has more luck from the next. */
    boolean cold(double[] unknowns) {
        for (double pressure : COLD_STARTS) {
            chill(unknowns, pressure);
            if (climb(unknowns, from(pressure))) {
                return true;
            }
        }
        return false;
    }

    private static String from(double pressure) {
        return "a cold start at " + pressure / 1e5 + " bar";
    }

    /** A cold start: one pressure everywhere [Pa], each state where it starts. */
    private void chill(double[] unknowns, double pressure) {
        for (int i = 0; i < unknowns.length; i++) {
            unknowns[i] = i < equations.nodes() ? pressure : equations.state(i).start();
        }
    }

    /** The first cold start. */
    void chill(double[] unknowns) {
        chill(unknowns, COLD_STARTS[0]);
    }
}
