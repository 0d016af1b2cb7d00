package hotidle.torture;

import hotidle.network.Placed;
import hotidle.newton.SteadySolver;
import hotidle.part.Bushing;
import hotidle.part.Form;
import hotidle.part.PumpChamber;
import hotidle.part.PumpInlet;
import hotidle.part.SpoolValve;
import hotidle.result.Outcome;
import hotidle.result.Solution;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What came of a case.
 *
 * @param method    what had the answer; empty where it is unsolved
 * @param reason    why it is unsolved, without numbers; empty where it is solved
 * @param outcome   the outcome
 * @param imbalance largest imbalance of a node, recomputed from the streams, as a share of its scale [-]
 * @param force     largest force left on a spool, recomputed from what is reported of it, as a share of its scale [-]
 * @param marks     how sick the state is
 */
public record Verdict(String method, String reason, Outcome outcome, double imbalance, double force, Set<Mark> marks) {

    /** What makes a state a hard one. */
    public enum Mark {
        /** The pump fills in part. */
        STARVED,
        /** The pump's inlet at or below the pressure at which air is released: in this model what starves it, in other words. */
        CAVITATING,
        /** A pressure as low elsewhere, where no pump draws. */
        RELEASING_ELSEWHERE,
        /** A spool or another state on its stop, stuck ones apart. */
        ON_A_STOP,
        METAL_CONTACT,
        STUCK
    }

    /** The balance is judged against 1 mL/s at least [m³/s]. */
    private static final double LEAST = 1e-6;

    private static final double AT_RELEASE = 1e-3;

    /** Nearer to its stop than this share of its stroke a spool is on it: the solver may creep up to it by ever smaller steps. */
    private static final double ON_STOP = 1e-12;

    /** Solves and judges. */
    public static Verdict of(Case one) {
        Outcome outcome = new SteadySolver(one.network()).solve(one.conditions());
        if (outcome.state().isEmpty()) {
            String culprit = outcome.unsolved().orElseThrow().culprit();
            String kind = culprit.startsWith("node") ? "a node" : culprit.replaceAll(".*\\((.*)\\)", "a state ($1)");
            return new Verdict("", kind + " does not settle", outcome, 0, 0, Set.of());
        }
        Solution state = outcome.state().get();
        return new Verdict(state.method(), "", outcome, imbalance(one, state), force(one, state), marks(one, state));
    }

    /** Sums up the streams of all parts at each node: the formulas that a reader sees, not those that were solved. */
    private static double imbalance(Case one, Solution state) {
        Map<String, Double> balance = new HashMap<>();
        for (Solution.PartStream stream : state.streams()) {
            balance.merge(stream.from(), -stream.mass(), Double::sum);
            balance.merge(stream.to(), stream.mass(), Double::sum);
        }
        one.network().nodes().stream()
                .filter(node -> node.held().isPresent())
                .forEach(node -> balance.remove(node.name()));
        double swept = 0;
        double density = 0;
        for (Placed placed : one.network().parts()) {
            density = Math.max(density, one.conditions().oil(placed).liquidDensity());
            if (placed.part() instanceof PumpChamber chamber) {
                swept += chamber.displacement() * one.conditions().speed();
            }
        }
        double worst = 0;
        for (double sum : balance.values()) {
            worst = Math.max(worst, Double.isNaN(sum) ? Double.POSITIVE_INFINITY : Math.abs(sum));
        }
        return worst / (density * Math.max(swept, LEAST));
    }

    /** What is left of pressure less spring less flow force on each spool that is free to move that way. */
    private static double force(Case one, Solution state) {
        double worst = 0;
        for (Placed placed : one.network().parts()) {
            if (placed.part() instanceof SpoolValve valve) {
                Form.Unknown form = valve.form().states().get(0);
                double at = state.measure(placed.name(), SpoolValve.PLACE).orElseThrow();
                double opening = state.measure(placed.name(), SpoolValve.PRESSURE_FORCE)
                                .orElseThrow()
                        - state.measure(placed.name(), SpoolValve.SPRING_FORCE).orElseThrow()
                        - state.measure(placed.name(), SpoolValve.FLOW_FORCE).orElseThrow();
                double hair = ON_STOP * (form.high() - form.low());
                boolean held = opening > 0 ? at >= form.high() - hair : at <= form.low() + hair;
                worst = Math.max(worst, held ? 0 : Double.isNaN(opening) ? opening : Math.abs(opening) / form.scale());
            }
        }
        return worst;
    }

    private static Set<Mark> marks(Case one, Solution state) {
        Set<Mark> marks = new HashSet<>();
        double release =
                one.conditions().oil().releasePressure() - one.conditions().ambient();
        Set<String> inlets = one.network().parts().stream()
                .filter(placed -> placed.part() instanceof PumpInlet)
                .flatMap(placed -> placed.nodes().stream())
                .collect(Collectors.toSet());
        state.pressures().forEach((node, pressure) -> {
            if (pressure <= release + AT_RELEASE) {
                marks.add(inlets.contains(node) ? Mark.CAVITATING : Mark.RELEASING_ELSEWHERE);
            }
        });
        for (Placed placed : one.network().parts()) {
            if (placed.part() instanceof Bushing
                    && state.measure(placed.name(), Bushing.METAL_CONTACT).orElseThrow() > 0) {
                marks.add(Mark.METAL_CONTACT);
            }
            for (Form.Unknown form : placed.part().form().states()) {
                double at = state.own(placed.name(), form.state());
                if (placed.part() instanceof PumpInlet) {
                    if (at < 1) {
                        marks.add(Mark.STARVED);
                    }
                } else if (form.low() == form.high()) {
                    marks.add(Mark.STUCK);
                } else if (at <= form.low() || at >= form.high()) {
                    marks.add(Mark.ON_A_STOP);
                }
            }
        }
        return marks;
    }
}
