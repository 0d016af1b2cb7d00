package hotidle.answer;

import com.fasterxml.jackson.annotation.JsonProperty;
import hotidle.answer.format.Rpm;
import hotidle.answer.phrase.LockupPhrase;
import hotidle.network.Conditions;
import hotidle.oil.Oil;
import hotidle.transmission.DutyPoint;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a state was asked for, as JSON.
 *
 * @param commandedPilotPa by solenoid
 * @param temperaturesC    by region
 */
record ConditionsRecord(
        String duty,
        double engineSpeedRpm,
        String range,
        String lockup,
        Map<String, Double> temperaturesC,
        @JsonProperty("engine_torque_n_m") double engineTorque,
        Map<String, Double> commandedPilotPa) {

    static ConditionsRecord of(DutyPoint duty, Conditions conditions) {
        Map<String, Double> celsius = new TreeMap<>();
        conditions.temperatures().forEach((region, kelvin) -> celsius.put(region, kelvin - Oil.ZERO_CELSIUS));
        return new ConditionsRecord(
                duty.name(),
                Rpm.of(conditions.speed()),
                conditions.range(),
                LockupPhrase.of(conditions.lockup()),
                celsius,
                duty.engineTorque(),
                new TreeMap<>(conditions.commands()));
    }
}
