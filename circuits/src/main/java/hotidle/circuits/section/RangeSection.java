package hotidle.circuits.section;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.ReadingLog;
import hotidle.circuits.shape.Scope;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.ProblemCode;
import hotidle.geartrain.Drive.Driven;
import hotidle.geartrain.GearTrain;
import hotidle.transmission.Range;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Ranges of the unit with the clutches that each applies: keys, and how they are read. */
public final class RangeSection {

    private RangeSection() {}

    private static final Shape APPLIED = new Shape(
            "clutch",
            List.of(
                    Key.quantity(
                                    "torque-share",
                                    Dimension.RATIO,
                                    "what the gear set makes it hold: its torque over the turbine's torque, above 1 where it holds more")
                            .neededWhere("there are no gearsets and the range drives")
                            .allowed("0", "20")
                            .usual("0", "5"),
                    Key.quantity("speed-ratio", Dimension.RATIO, "speed of its drum over the turbine's speed")
                            .byDefault("0", "a drum that stands (assumed)")
                            .allowed("-10", "10")));

    static final Shape RANGE = new Shape(
            "range",
            List.of(
                    Key.text("about", "what it is"),
                    Key.choice("forward", "whether it drives forward; set pressure is quoted in these", "yes", "no")
                            .byDefault("no", "assumed"),
                    Key.choice(
                                    "drives",
                                    "whether the clutches that carry pressure drive the vehicle; no for a neutral with one applied",
                                    "yes",
                                    "no")
                            .byDefault("yes", "where a clutch is applied (assumed)"),
                    Key.of("clutches", new Type.NamedGroups(APPLIED), "clutches that carry pressure in it")
                            .neededWhere("a clutch or band is applied in no other range"),
                    Key.of(
                                    "open",
                                    new Type.PerName(Names.CLUTCH, Dimension.RATIO),
                                    "slip of open packs over the turbine's speed, for their drag; those left out drag nothing")
                            .optional()
                            .allowed("-20", "20")));

    /** All ranges; what their clutches carry follows from the gear train where there is one. */
    public static List<Range> ranges(Attributes file, Scope scope, Optional<GearTrain> train, ReadingLog used) {
        List<Range> ranges = new ArrayList<>();
        for (Attributes range : file.groups("ranges").values()) {
            range.groups("clutches").values().forEach(clutch -> isAClutch(clutch, scope));
            Optional<Driven> driven = train.flatMap(gears -> RangeOfTrain.driven(gears, range));
            Map<String, Range.Applied> applied = new LinkedHashMap<>();
            for (Attributes clutch : range.groups("clutches").values()) {
                if (driven.isPresent()) {
                    used.forget("ranges." + range.name() + ".clutches." + clutch.name() + ".speed-ratio");
                } else if (!file.stands("gearsets") && !clutch.stands("torque-share")) {
                    clutch.missing(
                            "torque-share",
                            "without gearsets it is not known what the gear set makes it hold",
                            "add 'torque-share: ...', or gearsets to the circuit");
                }
                if (!clutch.broken()) {
                    applied.put(
                            clutch.name(),
                            driven.map(found -> RangeOfTrain.applied(train.orElseThrow(), found, clutch))
                                    .orElseGet(() -> asWritten(clutch)));
                }
            }
            Map<String, Double> open =
                    new LinkedHashMap<>(driven.map(found -> RangeOfTrain.open(train.orElseThrow(), found))
                            .orElse(Map.of()));
            open.putAll(range.numbers("open"));
            boolean forward = range.text("forward").equals("yes");
            ranges.add(new Range(range.name(), forward, applied, open, driven));
        }
        return ranges;
    }

    private static void isAClutch(Attributes clutch, Scope scope) {
        if (!scope.of(Names.CLUTCH).contains(clutch.name())) {
            clutch.error(
                    ProblemCode.NO_CLUTCH,
                    "",
                    "is no clutch of the parts",
                    "",
                    Nearest.mend(clutch.name(), scope.of(Names.CLUTCH)));
        }
    }

    private static Range.Applied asWritten(Attributes clutch) {
        return new Range.Applied(clutch.numberIf("torque-share").orElse(0), clutch.number("speed-ratio"));
    }
}
