package hotidle.assess;

import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;

/**
 * What one state of a unit means, found once and handed on.
 *
 * @param unit    the unit
 * @param duty    the duty; in a sweep the state's speed is not the duty's own
 * @param state   the state
 * @param roles   of the unit's parts
 * @param budget  where the oil goes
 * @param figures what a reader asks of the state
 */
public record Assessment(
        Transmission unit, DutyPoint duty, Solution state, Roles roles, OilBudget budget, Figures figures) {

    /** Assesses a state. */
    public static Assessment of(Transmission unit, DutyPoint duty, Solution state) {
        return of(unit, duty, Roles.of(unit), state);
    }

    /** The same, of the unit's roles already found. */
    public static Assessment of(Transmission unit, DutyPoint duty, Roles roles, Solution state) {
        OilBudget budget = OilBudget.of(unit, roles, state);
        return new Assessment(unit, duty, state, roles, budget, Figures.of(unit, roles, budget, state));
    }

    /** Where it lies outside what a law was made for. */
    public List<Doubt> doubts() {
        return Doubt.of(unit.network(), state);
    }

    /** One margin a lube branch, the cooler's and the converter's; those that need nothing at the duty are left out. */
    public List<Margin> consumers() {
        return Consumers.of(roles, duty, state);
    }

    /** Those that get less than they need. */
    public List<Margin> starved() {
        return consumers().stream()
                .filter(margin -> margin.verdict() == Margin.Verdict.FAILS)
                .toList();
    }
}
