package hotidle.circuits.section;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Scope;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.ProblemCode;
import hotidle.transmission.Range;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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
                    Key.of("clutches", new Type.NamedGroups(APPLIED), "clutches that carry pressure in it")
                            .neededWhere("a clutch or band is applied in no other range"),
                    Key.of(
                                    "open",
                                    new Type.PerName(Names.CLUTCH, Dimension.RATIO),
                                    "slip of open packs over the turbine's speed, for their drag; those left out drag nothing")
                            .optional()
                            .allowed("-20", "20")));

    /** All ranges. */
    public static List<Range> ranges(Attributes file, Scope scope) {
        List<Range> ranges = new ArrayList<>();
        for (Attributes range : file.groups("ranges").values()) {
            Map<String, Range.Applied> applied = new LinkedHashMap<>();
            for (Attributes clutch : range.groups("clutches").values()) {
                if (!scope.of(Names.CLUTCH).contains(clutch.name())) {
                    clutch.error(
                            ProblemCode.NO_CLUTCH,
                            "",
                            "is no clutch of the parts",
                            "",
                            Nearest.mend(clutch.name(), scope.of(Names.CLUTCH)));
                } else if (!clutch.broken()) {
                    applied.put(
                            clutch.name(),
                            new Range.Applied(clutch.number("torque-share"), clutch.number("speed-ratio")));
                }
            }
            ranges.add(new Range(range.name(), range.text("forward").equals("yes"), applied, range.numbers("open")));
        }
        return ranges;
    }
}
