package hotidle.circuits.section;

import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import java.util.List;

/** Named lists of changes: their keys. */
public final class BuildSection {

    private BuildSection() {}

    /** The name of the one build of a file that has none. */
    public static final String AS_WRITTEN = "as-written";

    /** What a set pressure of a build changes. */
    public static final String SET_BY = "set-by";

    /** A change of a build. */
    public static final Shape CHANGE = new Shape(
            "change",
            List.of(
                    Key.of("to", new Type.Anything(), "the new value; of a size that wears also measured, limit or new")
                            .neededWhere("neither by nor times is written"),
                    Key.of("by", new Type.Anything(), "what to add to the value, in place of to")
                            .optional(),
                    Key.of("times", new Type.Dimensioned(Dimension.RATIO), "what to multiply it with, in place of to")
                            .optional(),
                    Key.of("because", new Type.FreeText(), "the reason")));

    private static final Shape BUILD_COMMAND = new Shape(
            "command", List.of(CommandSection.LINE_PRESSURE.optional(), CommandSection.PILOT_PRESSURE.optional()));

    private static final Shape BUILD_DUTY = new Shape(
            "driving condition",
            List.of(
                    DutySection.lockup().optional(),
                    DutySection.torque(
                                    "engine torque in place of the circuit's, as with a stronger engine or another tune")
                            .optional(),
                    Key.of(
                                    "commands",
                                    new Type.PerName(Names.SOLENOID, Dimension.PRESSURE),
                                    "pilot pressure of each solenoid that is commanded otherwise; the others stay")
                            .optional()
                            .allowed("0 psi", "500 psi")));

    static final Shape BUILD = new Shape(
            "build",
            List.of(
                    Key.text("about", "what it is"),
                    Key.of(
                                    "on",
                                    new Type.Name(Names.BUILD),
                                    "the build it stands on, or sheet for that of a measurement sheet; left out: the file as written")
                            .optional(),
                    Key.of(
                                    "changes",
                                    new Type.NamedGroups(CHANGE),
                                    "part.key of what is changed, or the key of a shaft, one-way clutch or rating of the gear train; * in a part's"
                                            + " name stands for anything")
                            .optional(),
                    Key.of("command", new Type.OneGroup(BUILD_COMMAND), "tables in place of those of the command")
                            .optional(),
                    Key.quantity(
                                    "set-pressure",
                                    Dimension.PRESSURE,
                                    "highest set pressure; command and spring are set to it after all changes, or what set-by says")
                            .optional()
                            .allowed("1 psi", "5000 psi")
                            .usual("30 psi", "500 psi"),
                    Key.choice(
                                    SET_BY,
                                    "what set-pressure changes: spring leaves pilot and throttle pressure as they are; left out:"
                                            + " command-and-spring, the tables scaled and the spring made to agree",
                                    "command-and-spring",
                                    "spring")
                            .optional(),
                    Key.of(
                                    "duty",
                                    new Type.NamedGroups(BUILD_DUTY),
                                    "what engine and control do otherwise at a driving condition, as a stronger engine, or an added"
                                            + " controller that applies the lockup fully in place of modulating it")
                            .optional(),
                    Key.text("because", "the reason for set-pressure, command or duty")
                            .neededWhere("one of them is given")));
}
