package hotidle.study;

import hotidle.assess.Assessment;
import hotidle.result.Outcome;
import java.util.Optional;

/** A state of a sweep with what it means, which is empty where it was not found. */
public record ShownState(Outcome outcome, Optional<Assessment> assessed) {

    /** Engine speed [rev/s]. */
    public double speed() {
        return outcome.conditions().speed();
    }
}
