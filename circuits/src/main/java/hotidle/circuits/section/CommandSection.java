package hotidle.circuits.section;

import hotidle.circuits.check.Rules;
import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.transmission.Command;
import hotidle.transmission.Curve;
import java.util.List;
import java.util.Optional;

/** What regulates the line and what it is commanded to: keys, and how the command is read. */
public final class CommandSection {

    private CommandSection() {}

    static final Key LINE_PRESSURE = Key.of(
            "line-pressure",
            new Type.Table(Dimension.TORQUE, Dimension.PRESSURE),
            "line pressure commanded at an engine torque: straight between the rows; beyond them that of the nearest,"
                    + " which is said");

    static final Key PILOT_PRESSURE = Key.of(
            "pilot-pressure",
            new Type.Table(Dimension.PRESSURE, Dimension.PRESSURE),
            "pilot pressure for a commanded line pressure");

    private static final String PILOTED = "another of solenoid, line-pressure, pilot-pressure is given";

    static final Shape COMMAND = new Shape(
            "command",
            List.of(
                    Key.node("line", "the line"),
                    Key.of("regulator", new Type.Name(Names.SPOOL_VALVE), "the valve that regulates it"),
                    Key.of(
                            "edge",
                            new Type.FreeText(),
                            "its first opening, whose zero overlap defines the set pressure"),
                    Key.of(
                                    "solenoid",
                                    new Type.Name(Names.SOLENOID),
                                    "the solenoid that makes its pilot pressure; left out, with both tables: the spring alone sets the"
                                            + " line")
                            .neededWhere(PILOTED),
                    LINE_PRESSURE.neededWhere(PILOTED),
                    PILOT_PRESSURE.neededWhere(PILOTED)));

    /** The command; empty where it is faulty. */
    public static Optional<Command> command(Attributes file, Parts parts) {
        Optional<Attributes> given = file.group("command").filter(command -> !command.broken());
        if (given.isEmpty()) {
            return Optional.empty();
        }
        Attributes command = given.get();
        Parts.DeclaredPart regulator = parts.all().get(command.word("regulator"));
        if (regulator == null) {
            return Optional.empty();
        }
        Rules.ofCommand(file, command, parts);
        return command.broken()
                ? Optional.empty()
                : Optional.of(new Command(
                        command.word("line"),
                        command.word("regulator"),
                        command.word("edge"),
                        command.wordIf("solenoid")
                                .map(solenoid -> new Command.Pilot(
                                        solenoid, curve(command, "line-pressure"), curve(command, "pilot-pressure")))));
    }

    /** The command with the tables of a build in place of its own. */
    public static Command withTables(Command command, Attributes tables) {
        return command.pilot()
                .map(pilot -> command.with(new Command.Pilot(
                        pilot.solenoid(),
                        tables.has("line-pressure") ? curve(tables, "line-pressure") : pilot.lineByTorque(),
                        tables.has("pilot-pressure") ? curve(tables, "pilot-pressure") : pilot.pilotByLine())))
                .orElse(command);
    }

    private static Curve curve(Attributes given, String key) {
        return new Curve(given.rows(key).stream()
                .map(row -> new Curve.Knot(row.x(), row.y()))
                .toList());
    }
}
