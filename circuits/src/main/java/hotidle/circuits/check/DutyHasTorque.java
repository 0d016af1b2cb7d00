package hotidle.circuits.check;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import java.util.Optional;

/** A duty point says its engine torque where line pressure follows it, or clutches must hold it. */
final class DutyHasTorque implements Rule.OfDuty {

    @Override
    public void check(Attributes file, Attributes duty, Parts parts) {
        if (duty.has("engine-torque")) {
            return;
        }
        boolean piloted =
                file.group("command").filter(command -> command.has("solenoid")).isPresent();
        boolean applies = duty.has("range")
                && Optional.ofNullable(file.groups("ranges").get(duty.word("range")))
                        .filter(range -> !range.groups("clutches").isEmpty())
                        .isPresent();
        if (piloted) {
            duty.missing(
                    "engine-torque",
                    "the command takes line pressure from it",
                    "add 'engine-torque: 40 N.m', for example");
        } else if (applies) {
            duty.warning(
                    ProblemCode.DUTY_WITHOUT_TORQUE,
                    "",
                    "has no engine-torque, though its range applies clutches",
                    "without it no torque is asked of them, and none can slip",
                    "add 'engine-torque: 40 N.m', for example");
        }
    }
}
