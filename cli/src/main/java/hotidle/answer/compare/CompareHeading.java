package hotidle.answer.compare;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.DutyPhrase;
import hotidle.answer.phrase.LockupPhrase;
import hotidle.study.Comparison;
import hotidle.transmission.DutyPoint;
import java.util.LinkedHashMap;
import java.util.Map;

/** The line above a table: a driving condition as all builds have it, and in what they differ. */
record CompareHeading(Comparison comparison, Quantity.UnitSystem units) {

    /** The line; {@code name} is how the condition is called in it. */
    String of(DutyPoint duty, String name) {
        double sump = duty.temperatures().get("sump");
        return comparison.units().get(0).commanded().isPresent()
                ? DutyPhrase.commanded(units, name, duty.speed(), duty.range(), lockup(duty), sump, torque(duty))
                : DutyPhrase.uncommanded(units, name, duty.speed(), duty.range(), sump);
    }

    /** The lockup's state, where all builds have the same; a line of the table says it where they do not. */
    private String lockup(DutyPoint duty) {
        boolean same = comparison.units().stream()
                .allMatch(unit -> unit.duty(duty.name()).orElseThrow().lockup() == duty.lockup());
        return same ? LockupPhrase.of(duty.lockup()) : DutyPhrase.LOCKUP_AS_BUILT;
    }

    /** The engine's torque, of each build where they differ in it. */
    private String torque(DutyPoint duty) {
        Map<String, Double> torques = new LinkedHashMap<>();
        comparison
                .units()
                .forEach(unit -> torques.put(
                        unit.build(), unit.duty(duty.name()).orElseThrow().engineTorque()));
        return torques.values().stream().distinct().count() == 1
                ? Quantity.TORQUE.with(units, duty.engineTorque())
                : DutyPhrase.torques(units, torques);
    }
}
