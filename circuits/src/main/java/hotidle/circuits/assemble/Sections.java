package hotidle.circuits.assemble;

import hotidle.circuits.kind.DutyKey;
import hotidle.circuits.kind.SectionWords;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.ReadingLog;
import hotidle.circuits.shape.Scope;
import hotidle.circuits.text.Nearest;
import hotidle.network.Node;
import hotidle.oil.Oil;
import hotidle.part.Setting;
import hotidle.transmission.Command;
import hotidle.transmission.Curve;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Tap;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The sections of a file besides its parts, as the solver takes them. Faults are noted and the faulty thing left out. */
public final class Sections {

    private Sections() {}

    /** The oil of a name; empty where it is faulty. */
    public static Optional<Oil> oil(Attributes file, String name) {
        Attributes given = file.groups("oils").get(name);
        if (given == null || given.broken()) {
            return Optional.empty();
        }
        try {
            List<Oil.Point> points = given.rows("viscosity").stream()
                    .map(row -> new Oil.Point(row.x(), row.y()))
                    .toList();
            Oil.Walther line = points.size() == 1
                    ? Oil.Walther.constant(points.get(0).kinematicViscosity())
                    : Oil.Walther.through(points.get(0), points.get(1));
            return Optional.of(new Oil(
                    name,
                    line,
                    given.number("density"),
                    given.number("density-slope"),
                    given.number("pressure-viscosity"),
                    given.number("air"),
                    given.number("air-release")));
        } catch (IllegalArgumentException impossible) {
            given.error("viscosity", "has viscosities that make no line", impossible.getMessage(), "");
            return Optional.empty();
        }
    }

    /** All nodes. */
    public static List<Node> nodes(Attributes file) {
        return file.groups("nodes").values().stream()
                .map(node -> new Node(node.name(), node.numberIf("held")))
                .toList();
    }

    /** All ranges. */
    public static List<Range> ranges(Attributes file, Scope scope) {
        List<Range> ranges = new ArrayList<>();
        for (Attributes range : file.groups("ranges").values()) {
            Map<String, Range.Applied> applied = new LinkedHashMap<>();
            for (Attributes clutch : range.groups("clutches").values()) {
                if (!scope.of(Names.CLUTCH).contains(clutch.name())) {
                    clutch.error(
                            "", "is no clutch of the parts", "", Nearest.mend(clutch.name(), scope.of(Names.CLUTCH)));
                } else if (!clutch.broken()) {
                    applied.put(
                            clutch.name(),
                            new Range.Applied(clutch.number("torque-share"), clutch.number("speed-ratio")));
                }
            }
            ranges.add(new Range(range.name(), range.text("forward").equals("yes"), applied));
        }
        return ranges;
    }

    /** Notes a circuit without the region by whose temperature a duty is called. */
    public static void needSump(Attributes file) {
        if (file.has("regions") && !file.words("regions").contains(SectionWords.PAN)) {
            file.error(
                    "regions",
                    "has no region '" + SectionWords.PAN + "'",
                    "the temperature of a duty is that of its sump, and parts lie there unless they say otherwise",
                    "add sump: the pan");
        }
    }

    /** All duty points; every region that a part is in needs a temperature in each. */
    public static List<DutyPoint> duties(Attributes file, Parts parts, Scope scope, ReadingLog used) {
        Set<String> regions = new LinkedHashSet<>(Set.of(SectionWords.PAN));
        parts.all().values().forEach(part -> part.given().wordIf("region").ifPresent(regions::add));
        List<DutyPoint> duties = new ArrayList<>();
        for (Attributes duty : file.groups("duty").values()) {
            if (!duty.has("temperatures")) {
                continue;
            }
            List<String> missing = regions.stream()
                    .filter(region -> !duty.numbers("temperatures").containsKey(region))
                    .toList();
            if (!missing.isEmpty()) {
                duty.error(
                        "temperatures",
                        "has no temperature for region " + String.join(", ", missing),
                        "parts lie there, and their oil needs one",
                        "add " + missing.get(0) + ": 90 degC, for example");
            }
            needTorqueAndSpeed(file, duty, parts);
            needLockup(duty, parts);
            noteSilentSolenoids(file, duty, scope, used);
            refuseLineSolenoid(file, duty);
            if (!duty.broken()) {
                duties.add(duty(duty));
            }
        }
        return duties;
    }

    /** Notes a duty point that commands the solenoid of the line, whose pilot pressure follows engine torque. */
    private static void refuseLineSolenoid(Attributes file, Attributes duty) {
        String commanded =
                file.group("command").map(command -> command.text("solenoid")).orElse("");
        if (duty.numbers("commands").containsKey(commanded)) {
            duty.error(
                    "commands",
                    "commands '" + commanded + "', the solenoid of the line",
                    "its pilot pressure follows from engine torque by the tables of command:",
                    "leave it out; a build may give other tables under its own command:");
        }
    }

    /**
     * Duty points as a build has them.
     *
     * @param duties as the build it stands on has them
     * @param build  whose control does something otherwise at some of them
     */
    public static List<DutyPoint> withControl(List<DutyPoint> duties, Attributes file, Attributes build, Parts parts) {
        Map<String, Attributes> others = build.groups("duty");
        for (Attributes other : others.values()) {
            if (!file.groups("duty").containsKey(other.name())) {
                other.error(
                        "",
                        "is no duty point of the circuit",
                        "a build changes what its control does at one that is there",
                        Nearest.mend(other.name(), file.groups("duty").keySet()));
            }
            refuseLineSolenoid(file, other);
            needLockup(other, parts);
        }
        return duties.stream()
                .map(duty -> others.containsKey(duty.name()) ? controlled(duty, others.get(duty.name())) : duty)
                .toList();
    }

    private static DutyPoint controlled(DutyPoint duty, Attributes other) {
        return duty.with(other.wordIf("lockup").map(Sections::lockup).orElse(duty.lockup()), other.numbers("commands"));
    }

    private static Setting.Lockup lockup(String word) {
        return Setting.Lockup.valueOf(word.toUpperCase(Locale.ROOT));
    }

    private static void needTorqueAndSpeed(Attributes file, Attributes duty, Parts parts) {
        boolean piloted =
                file.group("command").filter(command -> command.has("solenoid")).isPresent();
        if (!duty.has("engine-torque") && piloted) {
            duty.missing(
                    "engine-torque",
                    "the command takes line pressure from it",
                    "add 'engine-torque: 40 N.m', for example");
        }
        boolean applies = duty.has("range")
                && Optional.ofNullable(file.groups("ranges").get(duty.word("range")))
                        .filter(range -> !range.groups("clutches").isEmpty())
                        .isPresent();
        if (!duty.has("engine-torque") && !piloted && applies) {
            duty.warning(
                    "",
                    "has no engine-torque, though its range applies clutches",
                    "without it no torque is asked of them, and none can slip",
                    "add 'engine-torque: 40 N.m', for example");
        }
        boolean turns = parts.all().values().stream()
                .anyMatch(part -> part.kind().facts().turns());
        if (!duty.has("speed") && turns) {
            duty.missing("speed", "a part of the circuit turns with the engine", "add 'speed: 650 rpm', for example");
        }
    }

    /** A duty with lockup slipping or on needs a converter that has one; where there is no converter it says nothing. */
    private static void needLockup(Attributes duty, Parts parts) {
        List<Attributes> converters = parts.all().values().stream()
                .filter(part -> part.kind().asks(DutyKey.LOCKUP))
                .map(Parts.One::given)
                .toList();
        boolean none = converters.stream().noneMatch(converter -> converter.has("lockup-area"));
        if (!converters.isEmpty() && none && !duty.text("lockup").equals("off") && duty.has("lockup")) {
            duty.error(
                    "lockup",
                    "has lockup " + duty.text("lockup") + ", but "
                            + converters.get(0).label() + " has no lockup",
                    "it has no lockup-area",
                    "write lockup: off, or give the converter lockup-area, lockup-radius and its losses slipping and on");
        }
    }

    private static void noteSilentSolenoids(Attributes file, Attributes duty, Scope scope, ReadingLog used) {
        String commanded =
                file.group("command").map(command -> command.text("solenoid")).orElse("");
        scope.of(Names.SOLENOID).stream()
                .filter(name ->
                        !name.equals(commanded) && !duty.numbers("commands").containsKey(name))
                .forEach(name -> used.note(
                        "duty." + duty.name() + ".commands." + name,
                        new Key.Default("0 psi", "not commanded (assumed)")));
    }

    private static DutyPoint duty(Attributes duty) {
        return new DutyPoint(
                duty.name(),
                duty.text("about"),
                duty.numberIf("speed").orElse(0),
                duty.word("range"),
                lockup(duty.word("lockup")),
                duty.numberIf("engine-torque").orElse(0),
                duty.number("torque-ratio"),
                duty.numberIf("turbine-speed-ratio"),
                duty.number("lube-need"),
                duty.numbers("temperatures"),
                duty.numbers("commands"));
    }

    /** All taps. */
    public static List<Tap> taps(Attributes file) {
        return file.groups("taps").values().stream()
                .filter(tap -> !tap.broken())
                .map(tap -> new Tap(tap.name(), tap.word("node"), tap.text("port"), tap.text("between")))
                .toList();
    }

    /** The command; empty where it is faulty. */
    public static Optional<Command> command(Attributes file, Parts parts) {
        Optional<Attributes> given = file.group("command").filter(command -> !command.broken());
        if (given.isEmpty()) {
            return Optional.empty();
        }
        Attributes command = given.get();
        Parts.One regulator = parts.all().get(command.word("regulator"));
        if (regulator == null) {
            return Optional.empty();
        }
        Set<String> openings = regulator.given().groups("openings").keySet();
        if (!openings.contains(command.word("edge"))) {
            command.error(
                    "edge",
                    "has edge '" + command.word("edge") + "', which is no opening of " + command.word("regulator"),
                    "",
                    Nearest.mend(command.word("edge"), openings));
        }
        checkPilot(command);
        checkAreas(file, command, regulator.given(), parts);
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

    private static final List<String> PILOTED = List.of("solenoid", "line-pressure", "pilot-pressure");

    /** A solenoid and its two tables go together. */
    private static void checkPilot(Attributes command) {
        List<String> missing = PILOTED.stream().filter(key -> !command.has(key)).toList();
        if (!missing.isEmpty() && missing.size() < PILOTED.size()) {
            String given = PILOTED.stream().filter(command::has).findFirst().orElseThrow();
            command.error(
                    given,
                    "has " + given + " but no " + String.join(" and no ", missing),
                    "a solenoid commands the line by both tables; without all three the spring alone sets it",
                    "add " + String.join(" and ", missing) + ", or leave out "
                            + PILOTED.stream().filter(command::has).collect(Collectors.joining(" and ")));
        }
    }

    private static void checkAreas(Attributes file, Attributes command, Attributes regulator, Parts parts) {
        for (Attributes range : file.groups("ranges").values()) {
            double net = net(regulator, command.word("line"), range.name());
            if (!(net > 0)) {
                command.error(
                        "regulator",
                        "has a regulator on which '" + command.word("line") + "' does not act in range " + range.name(),
                        "line pressure must open it: areas that act open less those that act close",
                        "add an area with node: " + command.word("line") + ", acts: open");
                return;
            }
        }
        Parts.One solenoid = parts.all().get(command.text("solenoid"));
        String pilot = solenoid == null ? "" : solenoid.given().text("pilot");
        boolean piloted = regulator.groups("areas").values().stream()
                .anyMatch(area -> area.text("node").equals(pilot));
        if (!pilot.isEmpty() && !piloted) {
            command.warning(
                    "solenoid",
                    "has a solenoid whose pilot '" + pilot + "' does not act on the regulator",
                    "then the command does not move line pressure",
                    "add an area with node: " + pilot + " to the regulator");
        }
    }

    private static double net(Attributes regulator, String line, String range) {
        return regulator.groups("areas").values().stream()
                .filter(area -> area.text("node").equals(line)
                        && (area.words("ranges").isEmpty()
                                || area.words("ranges").contains(range)))
                .mapToDouble(area ->
                        area.numberIf("area").orElse(1) * (area.text("acts").equals("close") ? -1 : 1))
                .sum();
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
                .map(row -> new Curve.Point(row.x(), row.y()))
                .toList());
    }
}
