package hotidle.newton;

import hotidle.network.Conditions;
import hotidle.network.Network;
import hotidle.result.Outcome;
import hotidle.result.Solution;
import hotidle.result.SolveCount;

/**
 * States of one network one after the other, each started from those before it and read as plain numbers. For studies that solve
 * thousands of states and want a few figures of each. Keep one for each thread.
 *
 * <p>Where nothing but the speed changes, the next state is foretold from the last ones, {@link Predictor}. Where Newton fails from
 * there, all the methods of {@link SteadySolver} follow, so that a series solves whatever a single solve would.
 */
public final class Series {

    private final Equations equations;
    private final SolveStrategy ladder;
    private final SteadySolver solver;
    private final Predictor foresight;
    private final double[] unknowns;
    private final double aim;
    private Conditions before;
    private boolean found;

    public Series(Network network) {
        this(new Equations(network, Laws.OWN), Newton.POLISHED);
    }

    /**
     * A series with an aim of its own.
     *
     * @param aim largest equation as a share of its scale [-]
     */
    Series(Equations equations, double aim) {
        this.equations = equations;
        this.aim = aim;
        solver = new SteadySolver(equations);
        ladder = solver.ladder();
        foresight = new Predictor(equations.size());
        unknowns = new double[equations.size()];
    }

    /** Forgets the states before, so that the next one starts cold. */
    public void restart() {
        foresight.forget();
    }

    /** Forgets the states before, so that the next one starts from a state of a network with the same names, whatever its speed. */
    public void restart(Solution from) {
        solver.warm(from, unknowns);
        foresight.forget();
        foresight.add(from.conditions().speed(), unknowns);
        before = null;
    }

    /**
     * Goes on with another network of the same shape whose sizes differ; states before it are still what the next one starts from.
     *
     * @throws IllegalArgumentException where nodes, parts or what they are joined to differ
     */
    public void use(Network like) {
        equations.use(like);
        ladder.newton().balance().restate();
        before = null;
    }

    /**
     * Solves the next state.
     *
     * @return whether it was solved; if not, nothing may be read
     */
    public boolean solve(Conditions conditions) {
        boolean alone = before == null || !conditions.differsInSpeedOnly(before);
        before = conditions;
        equations.set(conditions);
        ladder.reset();
        found = solved(conditions.speed(), alone);
        SolveCount.add(ladder.newton().steps());
        if (!found) {
            return false;
        }
        if (alone) {
            foresight.forget();
        }
        foresight.add(conditions.speed(), unknowns);
        return true;
    }

    private boolean solved(double speed, boolean alone) {
        if (!foresight.empty()) {
            foresight.foretell(alone ? Double.NaN : speed, unknowns);
            if (ladder.quick(unknowns, aim)) {
                return true;
            }
            foresight.foretell(Double.NaN, unknowns);
            if (ladder.climb(unknowns, "the state before")) {
                return true;
            }
        }
        return ladder.cold(unknowns);
    }

    /**
     * Number by which {@link #value} knows a pressure or a state.
     *
     * @param name of a node whose pressure is solved, or of a part and its state with a dot between them
     */
    public int number(String name) {
        Integer unknown = equations.unknown(name);
        if (unknown == null) {
            throw new IllegalArgumentException(name + " is no pressure and no state that is solved here");
        }
        return unknown;
    }

    /** Whether a pressure or a state is solved here. */
    public boolean knows(String name) {
        return equations.unknown(name) != null;
    }

    /** A pressure [Pa] or a state of the state solved last. */
    public double value(int number) {
        return unknowns[number];
    }

    /** Evaluations with factorisation that the last state took. */
    public int steps() {
        return ladder.newton().steps();
    }

    /** What came of the last question, whole. */
    public Outcome outcome() {
        return found ? Outcome.of(state()) : solver.unsolved(before);
    }

    /** The equations about the state solved last; good until the next one is solved. */
    public Linearised linearised() {
        return new Linearised(solver, before, unknowns.clone());
    }

    /** The state solved last, whole. */
    public Solution state() {
        return solver.state(unknowns);
    }
}
