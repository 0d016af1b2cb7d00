package hotidle.answer.torque;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import hotidle.answer.UsefulPressureRecord;
import hotidle.study.LineNeeded;
import hotidle.study.TorqueHeld;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** What builds hold, as JSON. */
record TorqueRecord(String circuit, double engineSpeedRpm, String temperaturesOf, List<TorqueOfBuild> builds) {

    record TorqueOfBuild(
            String build,
            List<RangeRecord> ranges,
            UsefulPressureRecord usefulPressure,
            @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<AskedRecord> asked,
            List<NeededRecord> lineNeeded) {}

    /** The line pressure that an engine torque needs; pressures are null where no state was found. */
    record NeededRecord(
            String range,
            @JsonProperty("engine_torque_n_m") double engineTorque,
            String clutch,
            OptionalDouble neededPa,
            OptionalDouble setPressurePa,
            OptionalDouble linePressurePa,
            @JsonProperty("line_pressure_at_1000_rpm_pa") OptionalDouble linePressureSlow,
            OptionalDouble linePressureAtIdlePa,
            String verdict) {}

    /** A range; torque and all that follows is null where no state was found. */
    record RangeRecord(
            String range,
            OptionalDouble ratio,
            double torqueRatio,
            boolean solved,
            @JsonProperty("engine_torque_n_m") OptionalDouble engineTorque,
            OptionalDouble linePressurePa,
            OptionalDouble setPressurePa,
            Optional<Boolean> beyondCommand,
            OptionalDouble heldFromRpm,
            List<LinkRecord> links) {}

    /** Something that carries, the first to give first. */
    record LinkRecord(
            String link,
            boolean heldByPressure,
            @JsonProperty("engine_torque_n_m") double engineTorque,
            boolean shared) {}

    static TorqueRecord of(TorqueAnswer answer) {
        TorqueHeld any = answer.builds().get(0).ranges().get(0);
        return new TorqueRecord(
                answer.circuit(),
                60 * any.at().speed(),
                any.at().hottest().name(),
                answer.builds().stream()
                        .map(one -> new TorqueOfBuild(
                                one.build(),
                                one.ranges().stream().map(TorqueRecord::range).toList(),
                                UsefulPressureRecord.of(one.useful()),
                                AskedRecord.of(one),
                                one.needed().stream().map(TorqueRecord::needed).toList()))
                        .toList());
    }

    private static NeededRecord needed(LineNeeded row) {
        return new NeededRecord(
                row.range(),
                row.torque(),
                row.clutch(),
                row.needed(),
                row.commanded(),
                row.line(),
                row.slow(),
                row.idle(),
                row.verdict().name().toLowerCase(Locale.ROOT));
    }

    private static RangeRecord range(TorqueHeld range) {
        Optional<TorqueHeld.Held> held = range.held();
        return new RangeRecord(
                range.range(),
                range.ratio(),
                range.at().torqueRatio(),
                held.isPresent(),
                held.stream().mapToDouble(TorqueHeld.Held::torque).findFirst(),
                held.stream().mapToDouble(TorqueHeld.Held::line).findFirst(),
                held.map(TorqueHeld.Held::commanded).orElse(OptionalDouble.empty()),
                held.map(TorqueHeld.Held::beyond),
                held.flatMap(one -> one.from().stream()
                                .map(speed -> 60 * speed)
                                .boxed()
                                .findFirst())
                        .map(OptionalDouble::of)
                        .orElse(OptionalDouble.empty()),
                held.stream()
                        .flatMap(one -> one.links().stream())
                        .map(one -> new LinkRecord(one.name(), one.clutch(), one.torque(), one.shared()))
                        .toList());
    }
}
