package hotidle.circuits.kind;

import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import java.util.List;

/** The words of a circuit file besides its parts. */
public final class SectionWords {

    private SectionWords() {}

    /** The name of the one build of a file that has none. */
    public static final String AS_WRITTEN = "as-written";

    /** The region that every circuit has. */
    public static final String PAN = "sump";

    private static final Shape OIL = new Shape(
            "oil",
            List.of(
                    Key.text("about", "what it is"),
                    Key.of("viscosity", new Type.ViscosityLine(), "kinematic viscosity, from the data sheet"),
                    Key.quantity("density", Dimension.DENSITY, "density at 15 degC")
                            .allowed("101 kg/m3", "19999 kg/m3")
                            .usual("750 kg/m3", "1000 kg/m3"),
                    Key.quantity("density-slope", Dimension.DENSITY_SLOPE, "loss of density with temperature")
                            .byDefault("0.65 kg/m3/K", "mineral oil (common practice)")
                            .allowed("0 kg/m3/K", "4.9 kg/m3/K"),
                    Key.quantity(
                                    "pressure-viscosity",
                                    Dimension.PRESSURE_COEFFICIENT,
                                    "rise of viscosity with pressure")
                            .byDefault("15 1/GPa", "mineral oil, hot (assumed)")
                            .allowed("0 1/GPa", "900 1/GPa")
                            .usual("0 1/GPa", "35 1/GPa"),
                    Key.quantity("air", Dimension.RATIO, "entrained air, by volume, at ambient pressure")
                            .byDefault("1.5 %", "1 to 5 % (common practice)")
                            .allowed("0 %", "30 %")
                            .usual("0 %", "12 %"),
                    Key.quantity(
                                    "air-release",
                                    Dimension.PRESSURE,
                                    "absolute pressure at which air comes out and a pump no longer fills")
                            .byDefault("0.7 bar", "inlets are held above 70 kPa absolute, hot (common practice)")
                            .allowed("0 bar", "1.01 bar"),
                    Key.text("source", "where its numbers come from")));

    private static final Shape MATERIAL = new Shape(
            "material",
            List.of(
                    Key.quantity("expansion", Dimension.EXPANSION, "linear thermal expansion")
                            .allowed("0 1/K", "1e-4 1/K")
                            .usual("5e-6 1/K", "35e-6 1/K"),
                    Key.text("source", "where it comes from")));

    private static final Shape BEARING_MATERIAL = new Shape(
            "bearing material",
            List.of(
                    Key.quantity("permissible-load", Dimension.PRESSURE, "load over length and diameter that it bears")
                            .allowed("0.01 MPa", "500 MPa")
                            .usual("0.5 MPa", "40 MPa"),
                    Key.text("source", "where it comes from"),
                    Key.choice("assumed", "whether the figure is an assumption of yours", "yes", "no")
                            .byDefault("yes", "assumed unless you say otherwise")));

    private static final Shape NODE = new Shape(
            "node",
            List.of(
                    Key.text("about", "what it is"),
                    Key.quantity(
                                    "held",
                                    Dimension.PRESSURE,
                                    "gauge pressure at which it is held, as the sump is; left out: free")
                            .neededWhere("no other node is held")
                            .allowed("-1 bar", "500 bar")),
            "about");

    private static final Shape APPLIED = new Shape(
            "clutch",
            List.of(
                    Key.quantity(
                                    "torque-share",
                                    Dimension.RATIO,
                                    "what the gear set makes it hold: its torque over the turbine's torque, above 1 where it holds more")
                            .allowed("0", "20")
                            .usual("0", "5"),
                    Key.quantity("speed-ratio", Dimension.RATIO, "speed of its drum over the turbine's speed")
                            .byDefault("0", "a drum that stands (assumed)")
                            .allowed("-10", "10")));

    private static final Shape RANGE = new Shape(
            "range",
            List.of(
                    Key.text("about", "what it is"),
                    Key.choice("forward", "whether it drives forward; set pressure is quoted in these", "yes", "no")
                            .byDefault("no", "assumed"),
                    Key.of("clutches", new Type.Groups(APPLIED), "clutches that carry pressure in it")
                            .neededWhere("a clutch or band is applied in no other range")));

    private static final Key LINE_PRESSURE = Key.of(
            "line-pressure",
            new Type.Table(Dimension.TORQUE, Dimension.PRESSURE),
            "line pressure commanded at an engine torque: straight between the rows; beyond them that of the nearest,"
                    + " which is said");

    private static final Key PILOT_PRESSURE = Key.of(
            "pilot-pressure",
            new Type.Table(Dimension.PRESSURE, Dimension.PRESSURE),
            "pilot pressure for a commanded line pressure");

    private static final String PILOTED = "another of solenoid, line-pressure, pilot-pressure is given";

    private static final Shape COMMAND = new Shape(
            "command",
            List.of(
                    Key.node("line", "the line"),
                    Key.of("regulator", new Type.Name(Names.SPOOL_VALVE), "the valve that regulates it"),
                    Key.of("edge", new Type.Words(), "its first opening, whose zero overlap defines the set pressure"),
                    Key.of(
                                    "solenoid",
                                    new Type.Name(Names.SOLENOID),
                                    "the solenoid that makes its pilot pressure; left out, with both tables: the spring alone sets the"
                                            + " line")
                            .neededWhere(PILOTED),
                    LINE_PRESSURE.neededWhere(PILOTED),
                    PILOT_PRESSURE.neededWhere(PILOTED)));

    private static Key lockup() {
        return Key.choice("lockup", "state of the converter's lockup", "off", "slipping", "on");
    }

    private static final Shape DUTY = new Shape(
            "duty point",
            List.of(
                    Key.text("about", "what it is"),
                    Key.quantity("speed", Dimension.SPEED, "engine speed")
                            .neededWhere("a part turns with the engine")
                            .allowed("0 rpm", "20000 rpm")
                            .usual("400 rpm", "7000 rpm"),
                    Key.of("range", new Type.Name(Names.RANGE), "range engaged"),
                    lockup().byDefault("off", "assumed"),
                    Key.quantity("engine-torque", Dimension.TORQUE, "engine torque")
                            .neededWhere("a solenoid commands the line")
                            .allowed("-2000 N.m", "10000 N.m")
                            .usual("0 N.m", "2000 N.m"),
                    Key.quantity(
                                    "torque-ratio",
                                    Dimension.RATIO,
                                    "what the converter makes of engine torque: turbine torque over engine torque, about 2 at stall")
                            .byDefault("1", "coupled (assumed)")
                            .allowed("0", "10")
                            .usual("0.9", "3"),
                    Key.quantity(
                                    "turbine-speed-ratio",
                                    Dimension.RATIO,
                                    "turbine speed over engine speed; left out: 1 with lockup on, otherwise not known")
                            .optional()
                            .allowed("0", "2")
                            .usual("0", "1.1"),
                    Key.quantity(
                                    "lube-need",
                                    Dimension.RATIO,
                                    "share of what lubrication and cooler need that is needed here; less without load or heat")
                            .byDefault("100 %", "all of it (assumed)")
                            .allowed("0 %", "500 %"),
                    Key.of(
                                    "temperatures",
                                    new Type.PerName(Names.REGION, Dimension.TEMPERATURE),
                                    "oil temperature in each region")
                            .allowed("-60 degC", "250 degC")
                            .usual("-30 degC", "170 degC"),
                    Key.of(
                                    "commands",
                                    new Type.PerName(Names.SOLENOID, Dimension.PRESSURE),
                                    "pilot pressure of each solenoid other than that of the command; left out: 0")
                            .optional()
                            .allowed("0 psi", "500 psi")));

    private static final Shape TAP = new Shape(
            "tap",
            List.of(
                    Key.node("node", "whose pressure a gauge shows there"),
                    Key.text("port", "the port in the case, in your words"),
                    Key.text("between", "what lies between node and gauge, in your words")));

    /** A change of a build. */
    public static final Shape CHANGE = new Shape(
            "change",
            List.of(
                    Key.of("to", new Type.Anything(), "the new value; of a size that wears also measured, limit or new")
                            .optional(),
                    Key.of("by", new Type.Anything(), "what to add to the value, in place of to")
                            .optional(),
                    Key.of("times", new Type.Quantity(Dimension.RATIO), "what to multiply it with, in place of to")
                            .optional(),
                    Key.of("because", new Type.Words(), "the reason")));

    private static final Shape BUILD_COMMAND =
            new Shape("command", List.of(LINE_PRESSURE.optional(), PILOT_PRESSURE.optional()));

    private static final Shape BUILD_DUTY = new Shape(
            "duty point",
            List.of(
                    lockup().optional(),
                    Key.of(
                                    "commands",
                                    new Type.PerName(Names.SOLENOID, Dimension.PRESSURE),
                                    "pilot pressure of each solenoid that is commanded otherwise; the others stay")
                            .optional()
                            .allowed("0 psi", "500 psi")));

    private static final Shape BUILD = new Shape(
            "build",
            List.of(
                    Key.text("about", "what it is"),
                    Key.of("on", new Type.Name(Names.BUILD), "the build it stands on; left out: the file as written")
                            .optional(),
                    Key.of(
                                    "changes",
                                    new Type.Groups(CHANGE),
                                    "part.key of what is changed; * in a part's name stands for anything")
                            .optional(),
                    Key.of("command", new Type.Group(BUILD_COMMAND), "tables in place of those of the command")
                            .optional(),
                    Key.quantity(
                                    "set-pressure",
                                    Dimension.PRESSURE,
                                    "highest set pressure; command and spring are set to it after all changes")
                            .optional()
                            .allowed("1 psi", "5000 psi")
                            .usual("30 psi", "500 psi"),
                    Key.of(
                                    "duty",
                                    new Type.Groups(BUILD_DUTY),
                                    "what its control does otherwise at a duty point, as an added controller that applies the lockup"
                                            + " fully in place of modulating it")
                            .optional(),
                    Key.text("because", "the reason for set-pressure, command or duty")
                            .neededWhere("one of them is given")));

    /** The file. */
    public static final Shape CIRCUIT = new Shape(
            "circuit",
            List.of(
                    Key.of("circuit", new Type.Words(), "its name"),
                    Key.text("about", "what it is"),
                    Key.text(
                            "based-on",
                            "a file beside this one, or a ready circuit, that this one is laid over: it has all that stands there,"
                                    + " but for what stands here"),
                    Key.of("leave-out", new Type.Anything(), "list of what it leaves out of its base, as section.name")
                            .optional(),
                    Key.of("oil", new Type.Name(Names.OIL), "the oil in it"),
                    Key.quantity("ambient-pressure", Dimension.PRESSURE, "absolute pressure around it")
                            .byDefault("1.01325 bar", "standard atmosphere, ISO 2533")
                            .allowed("0.3 bar", "1.5 bar")
                            .usual("0.6 bar", "1.1 bar"),
                    Key.of("oils", new Type.Groups(OIL), "oils to choose from"),
                    Key.of("materials", new Type.Groups(MATERIAL), "materials of fits, besides aluminium and steel")
                            .neededWhere("a part names another"),
                    Key.of("bearing-materials", new Type.Groups(BEARING_MATERIAL), "what a hub can run on")
                            .neededWhere("there is a bushing"),
                    Key.of("regions", new Type.Notes(), "places of one oil temperature; one of them is sump"),
                    Key.of("nodes", new Type.Groups(NODE), "places of one pressure"),
                    Key.of("parts", new Type.Parts(), "what lies between the nodes"),
                    Key.of("ranges", new Type.Groups(RANGE), "ranges of the unit"),
                    Key.of(
                                    "command",
                                    new Type.Group(COMMAND),
                                    "what regulates the line, and what it is commanded to; left out: not commanded, and regulation is not judged")
                            .optional(),
                    Key.of("duty", new Type.Groups(DUTY), "points at which the unit is judged"),
                    Key.of("taps", new Type.Groups(TAP), "where a gauge can be fitted")
                            .optional(),
                    Key.of(
                                    "builds",
                                    new Type.Groups(BUILD),
                                    "named lists of changes; left out: one build " + AS_WRITTEN)
                            .optional()));

    /** A material that need not be written. */
    public record Known(String name, double expansion, Key.Default fallback) {}

    /** Materials that need not be written; a file may give its own value. */
    public static final List<Known> MATERIALS = List.of(
            new Known("aluminium", 24e-6, new Key.Default("24e-6 1/K", "die-cast aluminium (common practice)")),
            new Known("steel", 12e-6, new Key.Default("12e-6 1/K", "common practice")));
}
