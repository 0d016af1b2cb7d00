package hotidle.answer.compare;

import com.fasterxml.jackson.annotation.JsonProperty;
import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.AskedTorquePhrase;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.study.HeldRanges;
import hotidle.study.TorqueHeld;
import hotidle.study.TorqueHeld.Held;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An engine torque that builds are to hold in every range, hot, as each is set.
 *
 * @param torque asked for [N·m]
 * @param speed  of the engine [rev/s]
 * @param ranges what each range holds, by build
 */
public record TorqueAsked(double torque, double speed, Map<String, List<TorqueHeld>> ranges) {

    public TorqueAsked {
        ranges = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(ranges));
    }

    private Optional<TorqueHeld> least(String build) {
        return new HeldRanges(ranges.get(build)).least();
    }

    private Optional<Held> held(String build) {
        return least(build).flatMap(TorqueHeld::held);
    }

    /** Whether a build holds it; empty where that is not known. */
    Optional<Boolean> holds(String build) {
        return held(build).map(held -> held.torque() >= torque);
    }

    /** What its row is called. */
    String label(Quantity.UnitSystem units) {
        return new AskedTorquePhrase(units).row(torque);
    }

    /** Of a build, in a cell: what it holds stands behind a no. */
    String cell(String build, Quantity.UnitSystem units) {
        return held(build)
                .map(held -> held.torque() >= torque
                        ? AskedTorquePhrase.YES
                        : AskedTorquePhrase.no(Quantity.TORQUE.number(units, held.torque())))
                .orElse(UnsolvedPhrase.CELL);
    }

    /** Of all builds, in words: where each that does not hold it gives. */
    String said(Quantity.UnitSystem units) {
        AskedTorquePhrase phrase = new AskedTorquePhrase(units);
        List<String> not = ranges.keySet().stream()
                .filter(build -> !holds(build).orElse(false))
                .map(build -> held(build)
                        .map(held -> phrase.gives(
                                build,
                                held.torque(),
                                held.links().get(0).name(),
                                least(build).orElseThrow().range()))
                        .orElse(AskedTorquePhrase.unknown(build)))
                .toList();
        return phrase.asked(torque, speed, not);
    }

    /** The same of a build as JSON; what is held is null where it is not known. */
    record AskedOfBuild(
            @JsonProperty("engine_torque_n_m") double engineTorque,
            Optional<Boolean> holds,
            @JsonProperty("gives_at_n_m") OptionalDouble givesAt,
            Optional<String> gives,
            Optional<String> range) {}

    AskedOfBuild record(String build) {
        return new AskedOfBuild(
                torque,
                holds(build),
                held(build).stream().mapToDouble(Held::torque).findFirst(),
                held(build).map(held -> held.links().get(0).name()),
                least(build).map(TorqueHeld::range));
    }
}
