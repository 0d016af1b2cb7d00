package hotidle.answer;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hotidle.result.Outcome;
import hotidle.result.Unsolved;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A state that was not found, as JSON: what was commanded, and how far each way of solving came. */
record UnsolvedRecord(
        @JsonUnwrapped ConditionsRecord conditions,
        OptionalDouble setPressurePa,
        boolean solved,
        Optional<Reason> unsolved)
        implements StateRecord {

    /**
     * How near the solver came.
     *
     * @param residual the largest imbalance, as a share of its own scale
     * @param culprit  the node or part that does not settle
     * @param tried    the ways of solving, in order
     */
    record Reason(double residual, String culprit, List<String> tried) {
        static Reason of(Unsolved unsolved) {
            return new Reason(unsolved.residual(), unsolved.culprit(), unsolved.tried());
        }
    }

    static UnsolvedRecord of(ConditionsRecord asked, Transmission unit, Outcome outcome) {
        return new UnsolvedRecord(
                asked,
                unit.setPressure(outcome.conditions()),
                false,
                outcome.unsolved().map(Reason::of));
    }
}
