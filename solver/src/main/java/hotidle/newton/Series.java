package hotidle.newton;

import hotidle.network.Conditions;
import hotidle.network.Network;
import hotidle.part.Measure;
import hotidle.result.Outcome;
import hotidle.result.Solution;
import hotidle.result.SolveCount;
import java.util.List;
import java.util.Optional;

/**
 * States of one network one after the other, each started from those before it and read as plain numbers. For studies that solve
 * thousands of states and want a few figures of each. Keep one for each thread.
 *
 * <p>Where nothing but the speed changes, the next state is foretold from the last ones, {@link Predictor}. Where Newton fails from
 * there, all the methods of {@link SteadySolver} follow, so that a series solves whatever a single solve would.
 */
public final class Series {

    /** A level from which Newton is there in two steps (ours) [-]. */
    private static final double NEAR = 1e-8;

    private static final String BEFORE = "the state before";

    private final Equations equations;
    private final SolveStrategy ladder;
    private final SteadySolver solver;
    private final Predictor foresight;
    private final double[] unknowns;
    private final double aim;
    private Conditions before;
    private boolean found;
    private Optional<SolvedState> guess = Optional.empty();
    private Optional<SolvedState> otherwise = Optional.empty();

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

    /** Forgets the states before, so that the next one starts from one that it has solved, whatever its speed. */
    public void restart(SolvedState from) {
        foresight.forget();
        foresight.add(from.speed(), from.unknowns());
        before = null;
    }

    /** Lets the next state start from a guess, where that leaves less out of balance than what is foretold from the states before. */
    public void guess(SolvedState likely) {
        guess = Optional.of(likely);
    }

    /** Lets the next state start from this one too, where Newton fails from those before it, ahead of time steps. */
    public void otherwise(SolvedState from) {
        otherwise = Optional.of(from);
    }

    /** A state of a network with the same names as a start of this series. */
    public SolvedState start(Solution from) {
        return new SolvedState(from.conditions(), solver.unknowns(from), 0, "");
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

    /** What goes on with another network from no state: this series where the shape is the same, else a new one. */
    public Series onwards(Network other) {
        if (!equations.alike(other)) {
            return new Series(other);
        }
        use(other);
        restart();
        return this;
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
        guess = Optional.empty();
        otherwise = Optional.empty();
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
        if (start(speed, alone)) {
            if (ladder.quick(unknowns, aim)) {
                return true;
            }
            if (!foresight.empty()) {
                foresight.foretell(Double.NaN, unknowns);
                if (ladder.newtonsNear(unknowns, BEFORE)) {
                    return true;
                }
            }
            if (otherwise.isPresent() && quick(otherwise.get())) {
                return true;
            }
            if (!foresight.empty()) {
                foresight.foretell(Double.NaN, unknowns);
                if (ladder.timeSteps(unknowns, BEFORE)) {
                    return true;
                }
            }
        }
        return ladder.cold(unknowns);
    }

    private boolean quick(SolvedState from) {
        System.arraycopy(from.unknowns(), 0, unknowns, 0, unknowns.length);
        return ladder.quick(unknowns, aim);
    }

    /** Writes what the next state starts from; false where nothing is known. */
    private boolean start(double speed, boolean alone) {
        if (!foresight.empty()) {
            foresight.foretell(alone ? Double.NaN : speed, unknowns);
        }
        boolean better =
                guess.isPresent() && (foresight.empty() || better(guess.get().unknowns()));
        if (better) {
            System.arraycopy(guess.get().unknowns(), 0, unknowns, 0, unknowns.length);
        }
        return better || !foresight.empty();
    }

    /** Whether a guess leaves less out of balance than the unknowns; one that leaves next to nothing is not compared. */
    private boolean better(double[] guessed) {
        double level = level(guessed);
        return level < NEAR || level < level(unknowns);
    }

    /** How far from balance, as Newton counts it. */
    private double level(double[] at) {
        double[] possible = at.clone();
        Balance balance = ladder.newton().balance();
        balance.still();
        balance.project(possible, Newton.LOWEST);
        return balance.evaluate(possible);
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

    /** The state solved last as plain numbers, which cost next to nothing to keep. */
    public SolvedState kept() {
        return new SolvedState(before, unknowns.clone(), steps(), ladder.method());
    }

    /**
     * A state solved earlier, whole.
     *
     * @param kept of this series, solved since it took the network that it has
     */
    public Solution state(SolvedState kept) {
        equations.set(kept.conditions());
        ladder.newton().balance().still();
        ladder.newton().balance().evaluate(kept.unknowns());
        return solver.state(kept.unknowns(), kept.steps(), kept.method());
    }

    /** What a part gives beside its flow in the state solved last; none for a part that is not there. */
    public List<Measure.Reported> measures(String part) {
        return equations.measures(part, unknowns);
    }

    /** The same as it would be at the unknowns of a state of a network alike, which is not solved here. */
    public List<Measure.Reported> measures(String part, SolvedState alike, Conditions conditions) {
        if (!equations.settledBut(conditions)) {
            equations.set(conditions);
        }
        return equations.measuresAt(conditions.speed(), part, alike.unknowns());
    }
}
