package hotidle.answer;

import hotidle.assess.Assessment;
import hotidle.result.Outcome;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.Optional;

/** One state as JSON, solved or not: the conditions come first, then what is known of it. */
public sealed interface StateRecord permits SolvedRecord, UnsolvedRecord {

    /** The state of a unit at a duty; the speed is that of the outcome, which in a sweep is not the duty's own. */
    static StateRecord of(Transmission unit, DutyPoint duty, Outcome outcome) {
        return of(unit, duty, outcome, outcome.state().map(state -> Assessment.of(unit, duty, state)));
    }

    /** The same of a state that was assessed before. */
    static StateRecord of(Transmission unit, DutyPoint duty, Outcome outcome, Optional<Assessment> assessed) {
        ConditionsRecord conditions = ConditionsRecord.of(duty, outcome.conditions());
        return assessed.<StateRecord>map(one -> SolvedRecord.of(conditions, one))
                .orElseGet(() -> UnsolvedRecord.of(conditions, unit, outcome));
    }
}
