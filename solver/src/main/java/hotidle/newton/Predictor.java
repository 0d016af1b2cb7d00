package hotidle.newton;

/**
 * Foretells the next state of a series along one number, from the states behind it.
 *
 * <pre>
 * Formula   the polynomial through the last 1 to 5 states, continued (Lagrange); of these degrees the one that would have foretold
 *           the last state best
 * Numerics  a guess only: Newton starts from it and judges what comes of it. Where a valve opens or a spool meets its stop, low
 *           degrees win by themselves.
 * </pre>
 */
final class Predictor {

    private static final int DEPTH = 6;

    /** States behind, the youngest first. */
    private final double[][] states;

    private final double[] places = new double[DEPTH];
    private final double[] weights = new double[DEPTH];
    private int known;

    Predictor(int size) {
        states = new double[DEPTH][size];
    }

    void forget() {
        known = 0;
    }

    /** Takes in a state at its place. */
    void add(double place, double[] state) {
        double[] oldest = states[DEPTH - 1];
        System.arraycopy(states, 0, states, 1, DEPTH - 1);
        System.arraycopy(places, 0, places, 1, DEPTH - 1);
        System.arraycopy(state, 0, oldest, 0, state.length);
        states[0] = oldest;
        places[0] = place;
        known = Math.min(known + 1, DEPTH);
    }

    boolean empty() {
        return known == 0;
    }

    /** Writes a guess of the state at a place. */
    void foretell(double place, double[] guess) {
        int most = 0;
        while (most + 1 < known && onwards(most, place)) {
            most++;
        }
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        // a polynomial through the states behind the last one, tried on the last one
        for (int degree = 0; degree < most; degree++) {
            weigh(places[0], 1, degree);
            double miss = miss(degree);
            if (miss < least) {
                least = miss;
                best = degree;
            }
        }
        if (known == 2 && most == 1) {
            best = 1;
        }
        weigh(place, 0, best);
        combine(guess, best);
    }

    /** Whether places go on in one direction, in steps that do not grow by more than half. */
    private boolean onwards(int at, double place) {
        double after = at == 0 ? place : places[at - 1];
        double step = after - places[at];
        double before = places[at] - places[at + 1];
        return step * before > 0 && Math.abs(step) <= 1.5 * Math.abs(before);
    }

    /** Lagrange's weights at a place for the states from {@code first} on. */
    private void weigh(double place, int first, int degree) {
        for (int i = 0; i <= degree; i++) {
            double weight = 1;
            for (int j = 0; j <= degree; j++) {
                if (j != i) {
                    weight *= (place - places[first + j]) / (places[first + i] - places[first + j]);
                }
            }
            weights[i] = weight;
        }
    }

    private double miss(int degree) {
        double sum = 0;
        for (int x = 0; x < states[0].length; x++) {
            double guess = 0;
            for (int i = 0; i <= degree; i++) {
                guess += weights[i] * states[1 + i][x];
            }
            double miss = (guess - states[0][x]) / (1 + Math.abs(states[0][x]));
            sum += miss * miss;
        }
        return sum;
    }

    private void combine(double[] guess, int degree) {
        for (int x = 0; x < guess.length; x++) {
            double sum = 0;
            for (int i = 0; i <= degree; i++) {
                sum += weights[i] * states[i][x];
            }
            guess[x] = sum;
        }
    }
}
