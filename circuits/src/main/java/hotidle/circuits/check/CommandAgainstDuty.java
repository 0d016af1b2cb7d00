package hotidle.circuits.check;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import hotidle.transmission.Command;
import hotidle.transmission.Curve;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Warns where a duty point's engine torque lies beyond the table of commanded line pressure, which is then held at its end. */
final class CommandAgainstDuty implements Rule.OfUnits {

    @Override
    public void check(Attributes command, List<Transmission> units) {
        List<String> beyond = new ArrayList<>();
        for (Transmission unit : units) {
            unit.commanded()
                    .flatMap(Command::pilot)
                    .ifPresent(pilot -> beyond(unit, pilot.lineByTorque().points(), beyond));
        }
        if (!beyond.isEmpty()) {
            command.warning(
                    ProblemCode.TORQUE_BEYOND_COMMAND_TABLE,
                    "line-pressure",
                    "is asked beyond its table of engine torque: " + beyond.get(0),
                    "nothing is known there, so the pressure of the nearest row is taken; "
                            + (beyond.size() == 1
                                    ? "no other build and driving condition"
                                    : beyond.size() - 1 + " more like it"),
                    "add a row that reaches there, to the table of the circuit or of the build");
        }
    }

    private static void beyond(Transmission unit, List<Curve.Knot> rows, List<String> beyond) {
        double first = rows.get(0).x();
        double last = rows.get(rows.size() - 1).x();
        for (DutyPoint duty : unit.duties()) {
            double torque = duty.engineTorque();
            // one row alone means the same at every torque
            if (rows.size() > 1 && (torque < first || torque > last)) {
                beyond.add(String.format(
                        Locale.ROOT,
                        "%s has %.0f N.m at %s, the table goes from %.0f to %.0f N.m",
                        unit.build(),
                        torque,
                        duty.name(),
                        first,
                        last));
            }
        }
    }
}
