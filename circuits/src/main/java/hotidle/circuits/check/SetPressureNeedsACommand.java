package hotidle.circuits.check;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import java.util.List;

/** A build sets a pressure, or gives other tables, only where line pressure is commanded. */
final class SetPressureNeedsACommand implements Rule.OfBuild {

    @Override
    public void check(Attributes file, Attributes build) {
        if (build.has("set-by") && !build.has("set-pressure")) {
            build.error(
                    ProblemCode.SET_BY_WITHOUT_PRESSURE,
                    "set-by",
                    "has a set-by without a set-pressure",
                    "it says what the set-pressure changes",
                    "add set-pressure, or leave it out");
        }
        for (String key : List.of("set-pressure", "command")) {
            if (build.has(key) && !file.stands("command")) {
                build.error(
                        ProblemCode.SET_PRESSURE_WITHOUT_COMMAND,
                        key,
                        "has a " + key + " in a circuit that is not commanded",
                        "only a circuit with a command has a set pressure",
                        "add command: to the circuit, or leave out " + key);
            }
        }
    }
}
