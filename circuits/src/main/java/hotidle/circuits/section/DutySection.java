package hotidle.circuits.section;

import hotidle.circuits.check.Rules;
import hotidle.circuits.kind.DutyKey;
import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.ReadingLog;
import hotidle.circuits.shape.Scope;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.part.Sensed;
import hotidle.part.Setting;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Warming;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Points at which the unit is judged: keys, and how they are read, also as a build has them. */
public final class DutySection {

    private DutySection() {}

    static Key lockup() {
        return Key.choice("lockup", "state of the converter's lockup", "off", "slipping", "on");
    }

    static Key torque(String meaning) {
        return Key.quantity("engine-torque", Dimension.TORQUE, meaning)
                .allowed("-2000 N.m", "10000 N.m")
                .usual("0 N.m", "2000 N.m");
    }

    static final Shape DUTY = new Shape(
            "driving condition",
            List.of(
                    Key.text("about", "what it is"),
                    Key.quantity("speed", Dimension.SPEED, "engine speed")
                            .neededWhere("a part turns with the engine")
                            .allowed("0 rpm", "20000 rpm")
                            .usual("400 rpm", "7000 rpm"),
                    Key.of("range", new Type.Name(Names.RANGE), "range engaged"),
                    lockup().byDefault("off", "assumed"),
                    torque("engine torque; the command goes by it, clutches by it times torque-ratio")
                            .neededWhere("a solenoid commands the line"),
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
                            .neededWhere("temperatures follow from heat, unless lockup is on")
                            .allowed("0", "2")
                            .usual("0", "1.1"),
                    Key.quantity(
                                    "lube-need",
                                    Dimension.RATIO,
                                    "share of what lubrication and cooler need that is needed here; less without load or heat")
                            .byDefault("100 %", "all of it (assumed)")
                            .allowed("0 %", "500 %"),
                    DutyKey.THROTTLE.key().neededWhere("there is a throttle-valve"),
                    DutyKey.VACUUM.key().neededWhere("there is a vacuum-modulator"),
                    DutyKey.OUTPUT_SPEED.key().neededWhere("there is a governor"),
                    Key.of(
                                    "temperatures",
                                    new Type.PerName(Names.REGION, Dimension.TEMPERATURE),
                                    "oil temperature in each region; all commands but heat judge at these")
                            .allowed("-60 degC", "250 degC")
                            .usual("-30 degC", "170 degC"),
                    Key.choice("balance", "whether it lasts until its temperatures settle by heat", "yes", "no")
                            .byDefault("no", "temperatures are given (assumed)"),
                    Key.of(
                                    "after",
                                    new Type.Name(Names.DUTY),
                                    "a driving condition at whose settled temperatures it begins; with lasts")
                            .neededWhere("lasts is given"),
                    Key.quantity("lasts", Dimension.TIME, "how long it lasts after the other")
                            .neededWhere("after is given")
                            .allowed("1 s", "24 h")
                            .usual("5 s", "1 h"),
                    Key.of(
                                    "commands",
                                    new Type.PerName(Names.SOLENOID, Dimension.PRESSURE),
                                    "pilot pressure of each solenoid other than that of the command; left out: 0")
                            .optional()
                            .allowed("0 psi", "500 psi")));

    /** All duty points. */
    public static List<DutyPoint> duties(Attributes file, Parts parts, Scope scope, ReadingLog used) {
        List<DutyPoint> duties = new ArrayList<>();
        for (Attributes duty : file.groups("duty").values()) {
            if (!duty.has("temperatures")) {
                continue;
            }
            Rules.ofDuty(file, duty, parts);
            noteSilentSolenoids(file, duty, scope, used);
            if (!duty.broken()) {
                duties.add(duty(duty));
            }
        }
        return duties;
    }

    /**
     * Duty points as a build has them.
     *
     * @param duties as the build it stands on has them
     * @param build  whose engine or control does something otherwise at some of them
     */
    public static List<DutyPoint> withControl(List<DutyPoint> duties, Attributes file, Attributes build, Parts parts) {
        Map<String, Attributes> others = build.groups("duty");
        others.values().forEach(other -> Rules.ofChangedDuty(file, other, parts));
        return duties.stream()
                .map(duty -> others.containsKey(duty.name()) ? controlled(duty, others.get(duty.name())) : duty)
                .toList();
    }

    private static DutyPoint controlled(DutyPoint duty, Attributes other) {
        return duty.with(
                        other.wordIf("lockup").map(DutySection::lockup).orElse(duty.lockup()),
                        other.numbers("commands"))
                .withTorque(other.numberIf("engine-torque").orElse(duty.engineTorque()));
    }

    private static Setting.Lockup lockup(String word) {
        return Setting.Lockup.valueOf(word.toUpperCase(Locale.ROOT));
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
        DutyPoint point = new DutyPoint(
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
                duty.numbers("commands"),
                new Sensed(
                        duty.numberIf("output-speed").orElse(0),
                        duty.numberIf("throttle").orElse(0),
                        duty.numberIf("manifold-vacuum").orElse(0)));
        return warming(duty).map(point::warmedBy).orElse(point);
    }

    private static Optional<Warming> warming(Attributes duty) {
        if (duty.has("after")) {
            return Optional.of(new Warming.After(duty.word("after"), duty.number("lasts")));
        }
        return duty.word("balance").equals("yes") ? Optional.of(new Warming.ToBalance()) : Optional.empty();
    }
}
