package hotidle.result;

import hotidle.network.Conditions;
import java.util.Optional;

/**
 * A state, or the reason why there is none: one of both is there.
 *
 * @param conditions asked for
 * @param state      the state, where it was found
 * @param unsolved   the reason, where it was not
 */
public record Outcome(Conditions conditions, Optional<Solution> state, Optional<Unsolved> unsolved) {

    public Outcome {
        if (state.isPresent() == unsolved.isPresent()) {
            throw new IllegalArgumentException("an outcome is a state or a reason, never both or none");
        }
    }

    public static Outcome of(Solution state) {
        return new Outcome(state.conditions(), Optional.of(state), Optional.empty());
    }

    public static Outcome of(Conditions conditions, Unsolved unsolved) {
        return new Outcome(conditions, Optional.empty(), Optional.of(unsolved));
    }
}
