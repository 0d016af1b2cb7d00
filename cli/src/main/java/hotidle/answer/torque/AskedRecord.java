package hotidle.answer.torque;

import com.fasterxml.jackson.annotation.JsonProperty;
import hotidle.answer.torque.TorqueAnswer.BuildTorque;
import hotidle.study.TorqueHeld;
import hotidle.study.TorqueHeld.Carrier;
import java.util.Optional;
import java.util.OptionalDouble;

/** The engine torque that was asked for, as JSON; pressures are null where none tried holds it, holds where a range is not known. */
record AskedRecord(
        @JsonProperty("engine_torque_n_m") double engineTorque,
        Optional<Boolean> holds,
        OptionalDouble fromPa,
        OptionalDouble toPa,
        Optional<String> gives,
        Optional<String> range,
        @JsonProperty("gives_at_n_m") OptionalDouble givesAt) {

    /** Of a build; empty where nothing was asked. */
    static Optional<AskedRecord> of(BuildTorque build) {
        return build.asked()
                .map(asked -> new AskedRecord(
                        asked.torque(),
                        build.least().flatMap(TorqueHeld::held).map(held -> held.torque() >= asked.torque()),
                        asked.from(),
                        asked.from().isPresent() ? OptionalDouble.of(asked.to()) : OptionalDouble.empty(),
                        asked.gives().map(Carrier::name),
                        asked.gives().map(link -> asked.range()),
                        asked.gives().stream().mapToDouble(Carrier::torque).findFirst()));
    }
}
