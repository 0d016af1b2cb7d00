package hotidle.circuits.check;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;

/** The pilot pressure of the command's solenoid acts on the regulator. */
final class PilotActsOnRegulator implements Rule.OfCommand {

    @Override
    public void check(Attributes file, Attributes command, Parts parts) {
        Attributes regulator = parts.all().get(command.word("regulator")).given();
        Parts.DeclaredPart solenoid = parts.all().get(command.text("solenoid"));
        String pilot = solenoid == null ? "" : solenoid.given().text("pilot");
        boolean piloted = regulator.groups("areas").values().stream()
                .anyMatch(area -> area.text("node").equals(pilot));
        if (!pilot.isEmpty() && !piloted) {
            command.warning(
                    ProblemCode.PILOT_ACTS_NOT_ON_REGULATOR,
                    "solenoid",
                    "has a solenoid whose pilot '" + pilot + "' does not act on the regulator",
                    "then the command does not move line pressure",
                    "add an area with node: " + pilot + " to the regulator");
        }
    }
}
