package hotidle.circuits.check;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;

/** A build gives tables only to a command that has a solenoid. */
final class TablesNeedASolenoid implements Rule.OfBuild {

    @Override
    public void check(Attributes file, Attributes build) {
        if (build.has("command")
                && file.group("command")
                        .filter(own -> !own.broken() && !own.has("solenoid"))
                        .isPresent()) {
            build.error(
                    ProblemCode.TABLES_WITHOUT_SOLENOID,
                    "command",
                    "has tables for a command that has no solenoid",
                    "without one the spring alone sets the line",
                    "change the regulator's spring, or write set-pressure");
        }
    }
}
