package hotidle.answer.part;

import hotidle.answer.phrase.PartDoubtPhrase;
import hotidle.assess.PartDoubt;
import hotidle.assess.PartFlow;
import hotidle.circuits.single.OnePart;
import hotidle.circuits.text.Problem;
import hotidle.result.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A part, what it was put under, and its state.
 *
 * @param part     the part
 * @param asked    what it was put under
 * @param outcome  its state, or why there is none
 * @param flow     the oil that passes it, where there is a state
 * @param doubts   what to be careful about
 * @param problems warnings of reading it
 */
public record PartState(
        OnePart part,
        PartConditions asked,
        Outcome outcome,
        Optional<PartFlow> flow,
        List<PartDoubt> doubts,
        List<Problem> problems) {

    public PartState {
        doubts = List.copyOf(doubts);
        problems = List.copyOf(problems);
    }

    /** Its numbers; none where there is no state. */
    public Map<String, Double> numbers() {
        return outcome.state().map(state -> PartNumbers.of(this, state)).orElse(Map.of());
    }

    /** What to be careful about, in words: first what reading said. */
    List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        problems.forEach(
                problem -> warnings.add(problem.message() + (problem.why().isEmpty() ? "" : "; " + problem.why())));
        doubts.forEach(doubt -> warnings.add(PartDoubtPhrase.of(doubt)));
        return warnings;
    }
}
