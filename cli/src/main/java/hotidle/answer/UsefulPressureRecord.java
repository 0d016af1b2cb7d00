package hotidle.answer;

import com.fasterxml.jackson.annotation.JsonProperty;
import hotidle.study.TorqueHeld.Carrier;
import hotidle.study.UsefulPressure;
import java.util.Optional;
import java.util.OptionalDouble;

/** Up to which set pressure more torque is held, as JSON; all but the pressures tried is null where nothing has a rating. */
public record UsefulPressureRecord(
        Optional<String> link,
        Optional<String> range,
        @JsonProperty("engine_torque_n_m") OptionalDouble engineTorque,
        OptionalDouble firstFromPa,
        double lowestTriedPa,
        double highestTriedPa) {

    /** Of what was found. */
    public static UsefulPressureRecord of(UsefulPressure useful) {
        return new UsefulPressureRecord(
                useful.weakest().map(Carrier::name),
                useful.weakest().map(link -> useful.range()),
                useful.weakest().stream().mapToDouble(Carrier::torque).findFirst(),
                useful.pressure(),
                useful.lowest(),
                useful.highest());
    }
}
