package hotidle.study;

import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;

/**
 * What a unit does at a driving condition without a job and with it.
 *
 * @param without the job, all else as it is
 * @param with    it
 * @param starves whether the job takes oil from the lubrication while the line is not held, which lives on what worn valves let by
 */
public record JobGain(Repairs.Effect without, Repairs.Effect with, boolean starves) {

    /**
     * Solves both.
     *
     * @return empty where one of the two states is not found
     */
    public static Optional<JobGain> of(Transmission without, Transmission with, DutyPoint duty) {
        Optional<Repairs.Effect> before = effect(without, duty);
        Optional<Repairs.Effect> after = effect(with, duty);
        return before.flatMap(one -> after.map(other ->
                new JobGain(one, other, without.commanded().isPresent() && RepairFindings.starves(one, other))));
    }

    private static Optional<Repairs.Effect> effect(Transmission unit, DutyPoint duty) {
        return AtDuty.solved(unit, duty)
                .state()
                .map(state -> Repairs.Bay.of(unit, duty, List.of(duty.speed()), Optional.of(state))
                        .effect(unit, state, false));
    }
}
