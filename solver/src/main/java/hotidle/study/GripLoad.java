package hotidle.study;

import hotidle.part.Clutch;
import hotidle.part.Converter;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;

/**
 * What a clutch, or the lockup, has to carry at a duty point.
 *
 * @param torque without sign [N·m]
 * @param factor capacity factor, by which it is taken larger [-]
 */
public record GripLoad(double torque, double factor) {

    /** Of an applied clutch. */
    static GripLoad of(DutyPoint duty, Range.Applied applied, Clutch clutch) {
        return new GripLoad(Math.abs(duty.turbineTorque() * applied.torqueShare()), clutch.factor());
    }

    /** Of a lockup, which carries the engine's torque. */
    static GripLoad of(DutyPoint duty, Converter.LockupClutch lockup) {
        return new GripLoad(Math.abs(duty.engineTorque()), lockup.factor());
    }

    /**
     * Of the clutch or converter of a name.
     *
     * @throws java.util.NoSuchElementException where the part is not there, its range does not apply it or it has no lockup
     */
    static GripLoad of(Transmission unit, DutyPoint duty, String name) {
        if (unit.network().part(name).orElseThrow().part() instanceof Converter converter) {
            return of(duty, converter.lockup().orElseThrow());
        }
        Range.Applied applied = unit.range(duty.range()).orElseThrow().applied().get(name);
        return of(
                duty, applied, (Clutch) unit.network().part(name).orElseThrow().part());
    }
}
