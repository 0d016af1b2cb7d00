package hotidle.newton;

import hotidle.network.Conditions;

/** A state that a {@link Series} has solved, as plain numbers: to start from again, or to be made whole later by the same series. */
public final class SolvedState {

    private final Conditions conditions;
    private final double[] unknowns;
    private final int steps;
    private final String method;

    SolvedState(Conditions conditions, double[] unknowns, int steps, String method) {
        this.conditions = conditions;
        this.unknowns = unknowns;
        this.steps = steps;
        this.method = method;
    }

    /** Conditions under which it was solved. */
    public Conditions conditions() {
        return conditions;
    }

    /** Engine speed [rev/s]. */
    public double speed() {
        return conditions.speed();
    }

    /**
     * A guess of a state between two of networks alike, for {@link Series#guess}: a straight line through them.
     *
     * @param share of the way from the one to the other [-]
     */
    public static SolvedState between(SolvedState one, SolvedState other, double share) {
        double[] guess = one.unknowns.clone();
        for (int i = 0; i < guess.length; i++) {
            guess[i] += share * (other.unknowns[i] - guess[i]);
        }
        return new SolvedState(one.conditions, guess, 0, "");
    }

    /**
     * A guess of a state of a network alike, for {@link Series#guess}: this one, moved by as much as another has moved between the two
     * networks.
     *
     * @param from the other, of this state's network
     * @param to   the other, of the network alike
     */
    public SolvedState moved(SolvedState from, SolvedState to) {
        double[] guess = unknowns.clone();
        for (int i = 0; i < guess.length; i++) {
            guess[i] += to.unknowns[i] - from.unknowns[i];
        }
        return new SolvedState(conditions, guess, 0, "");
    }

    double[] unknowns() {
        return unknowns;
    }

    int steps() {
        return steps;
    }

    String method() {
        return method;
    }
}
