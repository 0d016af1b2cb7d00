package hotidle.circuits.check;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;

/** No duty point commands the solenoid of the line, whose pilot pressure follows engine torque. */
final class LineSolenoidFollowsTorque implements Rule.OfDuty {

    @Override
    public void check(Attributes file, Attributes duty, Parts parts) {
        String commanded =
                file.group("command").map(command -> command.text("solenoid")).orElse("");
        if (duty.numbers("commands").containsKey(commanded)) {
            duty.error(
                    ProblemCode.LINE_SOLENOID_COMMANDED,
                    "commands",
                    "commands '" + commanded + "', the solenoid of the line",
                    "its pilot pressure follows from engine torque by the tables of command:",
                    "leave it out; a build may give other tables under its own command:");
        }
    }
}
