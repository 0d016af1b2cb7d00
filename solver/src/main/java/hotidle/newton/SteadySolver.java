package hotidle.newton;

import hotidle.network.Conditions;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.part.Form;
import hotidle.part.Measure;
import hotidle.part.Stream;
import hotidle.result.Outcome;
import hotidle.result.State;
import hotidle.result.Unsolved;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Solves one network under any conditions: a state that is a solution, or the reason why there is none. Keep one for each thread.
 */
public final class SteadySolver {

    /** Pressures from which a cold solve starts, one after the other [Pa]. */
    private static final double[] COLD_STARTS = {1e3, 1e5};

    private final Equations equations;
    private final Newton newton;

    public SteadySolver(Network network) {
        equations = new Equations(network);
        newton = new Newton(equations);
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
    public Outcome solve(Conditions conditions, Optional<State> start) {
        equations.set(conditions);
        newton.reset();
        List<String> tried = new ArrayList<>();
        if (start.isPresent()) {
            Optional<State> found = attempt(warm(start.get()), "the state before", tried);
            if (found.isPresent()) {
                return Outcome.of(found.get());
            }
        }
        for (double pressure : COLD_STARTS) {
            Optional<State> found = attempt(cold(pressure), "a cold start at " + pressure / 1e5 + " bar", tried);
            if (found.isPresent()) {
                return Outcome.of(found.get());
            }
        }
        double[] last = cold(COLD_STARTS[0]);
        newton.settle(last, Newton.DAMPING_TIMES[0]);
        Newton.Worst worst = newton.worstAt(last);
        return Outcome.of(conditions, new Unsolved(worst.share(), equations.name(worst.unknown()), tried));
    }

    private Optional<State> attempt(double[] start, String from, List<String> tried) {
        double[] unknowns = start.clone();
        tried.add("Newton from " + from);
        if (newton.solve(unknowns)) {
            return Optional.of(state(unknowns, "Newton"));
        }
        for (double damping : Newton.DAMPING_TIMES) {
            unknowns = start.clone();
            tried.add("pseudo-transient continuation from " + from + ", spools settling in " + damping + " s");
            if (newton.settle(unknowns, damping)) {
                return Optional.of(state(unknowns, "pseudo-transient continuation"));
            }
        }
        return Optional.empty();
    }

    private double[] cold(double pressure) {
        double[] unknowns = new double[equations.size()];
        for (int i = 0; i < unknowns.length; i++) {
            unknowns[i] = i < equations.nodes() ? pressure : equations.state(i).start();
        }
        return unknowns;
    }

    private double[] warm(State start) {
        double[] unknowns = cold(COLD_STARTS[0]);
        for (Node node : equations.network().nodes()) {
            Integer unknown = equations.unknown(node.name());
            if (unknown != null && start.pressures().containsKey(node.name())) {
                unknowns[unknown] = start.pressure(node.name());
            }
        }
        start.states()
                .forEach((part, states) -> states.forEach((state, value) -> {
                    Integer unknown = equations.unknown(part + "." + state);
                    if (unknown != null) {
                        unknowns[unknown] = value;
                    }
                }));
        return unknowns;
    }

    private State state(double[] unknowns, String method) {
        Newton.Worst worst = newton.worstAt(unknowns);
        double forceError = newton.forceError(unknowns);
        Map<String, Double> pressures = new LinkedHashMap<>();
        for (Node node : equations.network().nodes()) {
            Integer unknown = equations.unknown(node.name());
            pressures.put(node.name(), unknown == null ? node.held().orElseThrow() : unknowns[unknown]);
        }
        Map<String, Map<String, Double>> states = new LinkedHashMap<>();
        List<State.PartStream> streams = new ArrayList<>();
        Map<String, Map<String, Double>> measures = new LinkedHashMap<>();
        equations.read(unknowns, (placed, at) -> {
            states(placed, unknowns).ifPresent(own -> states.put(placed.name(), own));
            for (Stream stream : at.law().streams(at.reading())) {
                streams.add(new State.PartStream(
                        placed.name(),
                        stream.name(),
                        placed.nodes().get(stream.from()),
                        placed.nodes().get(stream.to()),
                        stream.mass(),
                        stream.volume()));
            }
            Map<String, Double> reported = new LinkedHashMap<>();
            for (Measure measure : at.law().measures(at.reading())) {
                reported.put(measure.name(), measure.value());
            }
            if (!reported.isEmpty()) {
                measures.put(placed.name(), reported);
            }
        });
        return new State(
                equations.conditions(),
                pressures,
                states,
                streams,
                measures,
                worst.imbalance() / equations.scaleDensity(),
                forceError,
                newton.steps(),
                method);
    }

    private Optional<Map<String, Double>> states(Placed placed, double[] unknowns) {
        List<Form.State> forms = placed.part().form().states();
        if (forms.isEmpty()) {
            return Optional.empty();
        }
        Map<String, Double> own = new LinkedHashMap<>();
        for (Form.State form : forms) {
            own.put(form.name(), unknowns[equations.unknown(placed.name() + "." + form.name())]);
        }
        return Optional.of(own);
    }
}
