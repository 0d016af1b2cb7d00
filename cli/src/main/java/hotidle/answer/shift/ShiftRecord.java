package hotidle.answer.shift;

import com.fasterxml.jackson.annotation.JsonProperty;
import hotidle.study.LockupHeat;
import hotidle.study.ShiftHeat;
import hotidle.study.ShiftHeat.Closing;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Shifts and lockup, as JSON. */
record ShiftRecord(
        String circuit,
        String build,
        double turbineSpeedRpm,
        @JsonProperty("turbine_torque_n_m") double turbineTorque,
        @JsonProperty("inertia_kg_m2") double inertia,
        List<OneShift> shifts,
        List<String> closeAtRest,
        @JsonProperty("lockup_time_s") double lockupTime,
        List<OneLockup> lockup) {

    /** A shift; figures are null where none were found, those over an area where the area is not known. */
    record OneShift(
            String from,
            String to,
            Optional<String> clutch,
            String says,
            OptionalDouble pressurePa,
            @JsonProperty("carries_n_m") OptionalDouble carries,
            @JsonProperty("asked_n_m") OptionalDouble asked,
            OptionalDouble slipRpm,
            @JsonProperty("time_s") OptionalDouble time,
            @JsonProperty("heat_j") OptionalDouble heat,
            @JsonProperty("heat_over_area_j_m2") OptionalDouble heatOverArea,
            @JsonProperty("power_over_area_w_m2") OptionalDouble powerOverArea,
            @JsonProperty("steel_rise_k") OptionalDouble steelRise) {}

    /** The lockup at a duty point. */
    record OneLockup(
            String duty,
            @JsonProperty("engine_torque_n_m") double engineTorque,
            double slipRpm,
            @JsonProperty("applied_j") double applied,
            @JsonProperty("held_slipping_w") double held,
            boolean heldSlippingThere) {}

    static ShiftRecord of(ShiftAnswer answer) {
        return new ShiftRecord(
                answer.circuit(),
                answer.build(),
                60 * answer.asked().speed(),
                answer.asked().torque(),
                answer.asked().inertia(),
                answer.shifts().stream().map(ShiftRecord::shift).toList(),
                answer.still(),
                answer.time(),
                answer.lockups().stream().map(ShiftRecord::lockup).toList());
    }

    private static OneShift shift(ShiftHeat shift) {
        return new OneShift(
                shift.from(),
                shift.to(),
                Optional.of(shift.clutch()).filter(name -> !name.isEmpty()),
                shift.why().name().toLowerCase(Locale.ROOT),
                of(shift, Closing::pressure),
                of(shift, Closing::torque),
                of(shift, Closing::asked),
                of(shift, closing -> rpm(closing.slip())),
                of(shift, Closing::time),
                of(shift, Closing::heat),
                over(shift, Closing::heatOverArea),
                over(shift, Closing::powerOverArea),
                over(shift, Closing::steel));
    }

    private static OneLockup lockup(LockupHeat heat) {
        return new OneLockup(heat.duty(), heat.torque(), rpm(heat.slip()), heat.applied(), heat.held(), heat.slips());
    }

    private static double rpm(double speed) {
        return 60 * speed / (2 * Math.PI);
    }

    private static OptionalDouble of(ShiftHeat shift, Function<Closing, Double> figure) {
        return shift.closing().map(figure).stream()
                .mapToDouble(Double::doubleValue)
                .findFirst();
    }

    private static OptionalDouble over(ShiftHeat shift, Function<Closing, OptionalDouble> figure) {
        return shift.closing().map(figure).orElse(OptionalDouble.empty());
    }
}
