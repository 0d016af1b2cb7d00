package hotidle.transmission;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Set pressures by which a unit is quoted, balanced by spring and signals whatever its tables say. */
public final class QuotedSet {

    private QuotedSet() {}

    /** The highest of the forward ranges [Pa]. */
    public static double now(Transmission unit) {
        Command command = unit.command();
        return unit.forwardControls().stream()
                .mapToDouble(control -> command.setPressure(unit.network(), command.atHighest(control)))
                .max()
                .orElseThrow();
    }

    /** In forward ranges without engine torque [Pa]; where no solenoid follows torque, the lowest of the forward duty points. */
    public static double noTorque(Transmission unit) {
        Command command = unit.command();
        return unit.forwardControls().stream()
                .mapToDouble(control -> command.setPressure(unit.network(), command.atNoTorque(control)))
                .min()
                .orElseThrow();
    }

    /**
     * The highest of the ranges that apply clutches and are no forward ones [Pa]; empty without one. Where no solenoid commands the line,
     * it is quoted at {@link #reverseDuties}, since what presses on the regulator depends on the throttle there.
     */
    public static OptionalDouble reverse(Transmission unit) {
        Command command = unit.command();
        return back(unit).stream()
                .flatMapToDouble(range -> {
                    List<Control> ofDuties = unit.duties().stream()
                            .filter(duty -> duty.range().equals(range.name()))
                            .map(duty -> Control.of(unit.conditions(duty)))
                            .toList();
                    List<Control> asked = ofDuties.isEmpty() ? List.of(new Control(range.name(), Map.of())) : ofDuties;
                    return asked.stream()
                            .mapToDouble(control -> command.setPressure(unit.network(), command.atHighest(control)));
                })
                .max();
    }

    /** Names of the duty points in such ranges, in the order of the circuit. */
    public static List<String> reverseDuties(Transmission unit) {
        List<String> ranges = back(unit).stream().map(Range::name).toList();
        return unit.duties().stream()
                .filter(duty -> ranges.contains(duty.range()))
                .map(DutyPoint::name)
                .toList();
    }

    private static List<Range> back(Transmission unit) {
        return unit.ranges().stream()
                .filter(range -> !range.forward() && !range.applied().isEmpty())
                .toList();
    }
}
