package hotidle.study;

import hotidle.assess.OilBudget;
import hotidle.result.Outcome;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;

/**
 * Where the oil of a build goes at a duty point, and what each repair wins back.
 *
 * @param outcome the build's state there
 * @param found   what was found; empty where there is no state
 */
public record LeakStudy(Outcome outcome, Optional<Found> found) {

    /**
     * What was found of a state.
     *
     * @param budget    where its oil goes
     * @param repairs   that were tried
     * @param findings  what they come to
     * @param lowAtIdle whether the duty is the slowest and the line is not held there
     * @param lowest    speed from which the onset of regulation was searched [rev/s]
     */
    public record Found(OilBudget budget, Repairs repairs, RepairFindings findings, boolean lowAtIdle, double lowest) {}

    /**
     * Tries all repairs.
     *
     * @param speeds over which the onset of regulation is searched [rev/s], rising
     * @param most   repairs that are put in order
     * @param looked how many of the best repairs are looked at for what they take from the lubrication
     * @param step   called after each repair that was tried, from any thread
     */
    public static LeakStudy of(
            Adjustable build, DutyPoint duty, List<Double> speeds, int most, int looked, Runnable step) {
        Transmission unit = build.unit();
        Outcome outcome = AtDuty.solved(unit, duty);
        Optional<Repairs> repairs = outcome.state().map(state -> Repairs.study(build, duty, state, speeds, most, step));
        return new LeakStudy(
                outcome,
                repairs.map(tried -> new Found(
                        OilBudget.of(unit, outcome.state().orElseThrow()),
                        tried,
                        RepairFindings.of(tried, unit.commanded().isPresent(), looked),
                        low(unit, duty, tried.before()),
                        speeds.get(0))));
    }

    private static boolean low(Transmission unit, DutyPoint duty, Repairs.Effect now) {
        return LowAtIdle.at(unit, duty, now.regulated());
    }
}
