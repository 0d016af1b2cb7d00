package hotidle.newton;

import java.util.ArrayList;
import java.util.List;

/** The methods of solving, tried in turn until one has the answer; on plain arrays. */
final class Ladder {

    /** Pressures from which a cold solve starts, one after the other [Pa]. */
    private static final double[] COLD_STARTS = {1e3, 1e5};

    private final Equations equations;
    private final Newton newton;
    private final double[] start;
    private final List<String> tried = new ArrayList<>();
    private String method = "";

    Ladder(Equations equations) {
        this.equations = equations;
        newton = new Newton(equations);
        start = new double[equations.size()];
    }

    Newton newton() {
        return newton;
    }

    /** What was tried since the last {@link #reset}. */
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

    /** Newton alone, from a start that is likely to be near. */
    boolean quick(double[] unknowns, double aim) {
        method = "Newton";
        return newton.solve(unknowns, aim);
    }

    /** All methods from one start; the unknowns are moved to the answer, and are of no use where there is none. */
    boolean climb(double[] unknowns, String from) {
        System.arraycopy(unknowns, 0, start, 0, start.length);
        tried.add("Newton from " + from);
        if (quick(unknowns, Newton.POLISHED)) {
            return true;
        }
        method = "pseudo-transient continuation";
        for (double damping : Newton.DAMPING_TIMES) {
            System.arraycopy(start, 0, unknowns, 0, start.length);
            tried.add("pseudo-transient continuation from " + from + ", spools settling in " + damping + " s");
            if (newton.settle(unknowns, damping)) {
                return true;
            }
        }
        return false;
    }

    /** All methods from cold. */
    boolean cold(double[] unknowns) {
        for (double pressure : COLD_STARTS) {
            chill(unknowns, pressure);
            if (climb(unknowns, "a cold start at " + pressure / 1e5 + " bar")) {
                return true;
            }
        }
        chill(unknowns, COLD_STARTS[0]);
        newton.settle(unknowns, Newton.DAMPING_TIMES[0]);
        return false;
    }

    /** A cold start: one pressure everywhere [Pa], each state where it starts. */
    void chill(double[] unknowns, double pressure) {
        for (int i = 0; i < unknowns.length; i++) {
            unknowns[i] = i < equations.nodes() ? pressure : equations.state(i).start();
        }
    }

    void chill(double[] unknowns) {
        chill(unknowns, COLD_STARTS[0]);
    }
}
