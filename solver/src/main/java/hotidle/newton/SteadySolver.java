package hotidle.newton;

import hotidle.network.Conditions;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.part.Form;
import hotidle.part.Measure;
import hotidle.part.OwnState;
import hotidle.part.Stream;
import hotidle.result.Outcome;
import hotidle.result.Solution;
import hotidle.result.SolveCount;
import hotidle.result.Stability;
import hotidle.result.Unsolved;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Solves one network under any conditions: a state that is a solution, or the reason why there is none. Keep one for each thread.
 */
public final class SteadySolver {

    private final Equations equations;
    private final SolveStrategy ladder;

    public SteadySolver(Network network) {
        this(new Equations(network, Laws.OWN));
    }

    SteadySolver(Equations equations) {
        this.equations = equations;
        ladder = new SolveStrategy(equations);
    }

    /** Solves from a cold start. */
    public Outcome solve(Conditions conditions) {
        return solve(conditions, Optional.empty());
    }

    /**
     * Solves.
     *
     * @param conditions what is given
     * @param start      a state to start from, as in a sweep
     */
    public Outcome solve(Conditions conditions, Optional<Solution> start) {
        Outcome outcome = solved(conditions, start);
        SolveCount.add(ladder.newton().steps());
        return outcome;
    }

    private Outcome solved(Conditions conditions, Optional<Solution> start) {
        equations.set(conditions);
        ladder.reset();
        double[] unknowns = new double[equations.size()];
        if (start.isPresent()) {
            warm(start.get(), unknowns);
            if (ladder.climb(unknowns, "the state before")) {
                return Outcome.of(state(unknowns));
            }
        }
        if (ladder.cold(unknowns)) {
            return Outcome.of(state(unknowns));
        }
        return unsolved(conditions);
    }

    /** Why the state asked for last was not found. */
    Outcome unsolved(Conditions conditions) {
        Balance balance = ladder.newton().balance();
        return Outcome.of(conditions, new Unsolved(balance.worst(), equations.name(balance.culprit()), ladder.tried()));
    }

    /**
     * Whether the circuit would stay in a steady state of it, by the spectrum of its dynamics; costs far more than the solve.
     *
     * @param state a state of this network
     */
    public Stability stability(Solution state) {
        equations.set(state.conditions());
        double[] unknowns = new double[equations.size()];
        warm(state, unknowns);
        return Spectrum.stability(ladder.newton().balance(), equations.pattern(), unknowns);
    }

    SolveStrategy ladder() {
        return ladder;
    }

    Equations equations() {
        return equations;
    }

    /** The unknowns of a state of this network. */
    double[] unknowns(Solution state) {
        double[] unknowns = new double[equations.size()];
        warm(state, unknowns);
        return unknowns;
    }

    /** Writes a state as a start: what it does not name stands as in a cold start. */
    void warm(Solution start, double[] unknowns) {
        ladder.chill(unknowns);
        for (Node node : equations.network().nodes()) {
            Integer unknown = equations.unknown(node.name());
            if (unknown != null && start.pressures().containsKey(node.name())) {
                unknowns[unknown] = start.pressure(node.name());
            }
        }
        equations.takeStates(start.states(), unknowns);
    }

    /** The state at the unknowns, where the equations were evaluated last. */
    Solution state(double[] unknowns) {
        return state(unknowns, ladder.newton().steps(), ladder.method());
    }

    /** The same of one that was solved earlier. */
    Solution state(double[] unknowns, int steps, String method) {
        Map<String, Double> pressures = new LinkedHashMap<>();
        for (Node node : equations.network().nodes()) {
            Integer unknown = equations.unknown(node.name());
            pressures.put(node.name(), unknown == null ? node.held().orElseThrow() : unknowns[unknown]);
        }
        Map<String, Map<OwnState, Double>> states = new LinkedHashMap<>();
        List<Solution.PartStream> streams = new ArrayList<>();
        Map<String, Map<Measure, OptionalDouble>> measures = new LinkedHashMap<>();
        equations.read(unknowns, (placed, at) -> {
            if (!at.form().states().isEmpty()) {
                states.put(placed.name(), states(at));
            }
            for (Stream stream : at.law().streams(at.reading())) {
                streams.add(new Solution.PartStream(
                        placed.name(),
                        stream.name(),
                        placed.nodes().get(stream.from()),
                        placed.nodes().get(stream.to()),
                        stream.mass(),
                        stream.volume()));
            }
            List<Measure> given = placed.part().measures();
            if (!given.isEmpty()) {
                measures.put(placed.name(), Solution.measures(given, at.law().measures(at.reading())));
            }
        });
        return new Solution(
                equations.conditions(),
                pressures,
                states,
                streams,
                measures,
                equations.imbalance() / equations.scaleDensity(),
                ladder.newton().balance().forceError(),
                steps,
                method);
    }

    private static Map<OwnState, Double> states(Equations.LawAt at) {
        Map<OwnState, Double> own = new LinkedHashMap<>();
        List<Form.Unknown> states = at.form().states();
        for (int s = 0; s < states.size(); s++) {
            own.put(states.get(s).state(), at.reading().state(s));
        }
        return own;
    }
}
