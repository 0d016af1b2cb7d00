package hotidle.answer;

import hotidle.assess.Assessment;
import hotidle.result.Outcome;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;

/** One state as JSON, solved or not: the conditions come first, then what is known of it. */
public sealed interface StateRecord permits SolvedRecord, UnsolvedRecord {

    /** The state of a unit at a duty; the speed is that of the outcome, which in a sweep is not the duty's own. */
    static StateRecord of(Transmission unit, DutyPoint duty, Outcome outcome) {
        ConditionsRecord conditions = ConditionsRecord.of(duty, outcome.conditions());
        return outcome.state()
                .<StateRecord>map(state -> SolvedRecord.of(conditions, Assessment.of(unit, duty, state)))
                .orElseGet(() -> UnsolvedRecord.of(conditions, unit, outcome));
    }
}
