package hotidle.circuits.check;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import java.util.List;
import java.util.stream.Collectors;

/** A solenoid and its two tables go together. */
final class PilotHasBothTables implements Rule.OfCommand {

    private static final List<String> PILOTED = List.of("solenoid", "line-pressure", "pilot-pressure");

    @Override
    public void check(Attributes file, Attributes command, Parts parts) {
        List<String> missing = PILOTED.stream().filter(key -> !command.has(key)).toList();
        if (!missing.isEmpty() && missing.size() < PILOTED.size()) {
            String given = PILOTED.stream().filter(command::has).findFirst().orElseThrow();
            command.error(
                    ProblemCode.COMMAND_TABLE_MISSING,
                    given,
                    "has " + given + " but no " + String.join(" and no ", missing),
                    "a solenoid commands the line by both tables; without all three the spring alone sets it",
                    "add " + String.join(" and ", missing) + ", or leave out "
                            + PILOTED.stream().filter(command::has).collect(Collectors.joining(" and ")));
        }
    }
}
