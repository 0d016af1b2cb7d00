package hotidle.circuits.section;

import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import java.util.List;

/** The whole file: its sections in their order. */
public final class CircuitFile {

    private CircuitFile() {}

    /** The keys of the file. */
    public static final Shape CIRCUIT = new Shape(
            "circuit",
            List.of(
                    Key.of("circuit", new Type.FreeText(), "its name"),
                    Key.text("about", "what it is"),
                    Key.text(
                            "based-on",
                            "a file beside this one, or a ready circuit, that this one is laid over: it has all that stands there,"
                                    + " but for what stands here"),
                    Key.of("leave-out", new Type.Anything(), "list of what it leaves out of its base, as section.name")
                            .optional(),
                    Key.choice(
                                    "units",
                                    "in which its numbers are shown where nobody asks otherwise",
                                    "shop",
                                    "metric",
                                    "si")
                            .optional(),
                    Key.of("oil", new Type.Name(Names.OIL), "the oil in it"),
                    Key.quantity("ambient-pressure", Dimension.PRESSURE, "absolute pressure around it")
                            .byDefault("1.01325 bar", "standard atmosphere, ISO 2533")
                            .allowed("0.3 bar", "1.5 bar")
                            .usual("0.6 bar", "1.1 bar"),
                    Key.of("oils", new Type.NamedGroups(OilSection.OIL), "oils to choose from"),
                    Key.of(
                                    "materials",
                                    new Type.NamedGroups(MaterialSection.MATERIAL),
                                    "materials of fits, besides aluminium and steel")
                            .neededWhere("a part names another"),
                    Key.of(
                                    "bearing-materials",
                                    new Type.NamedGroups(MaterialSection.BEARING_MATERIAL),
                                    "what a hub can run on")
                            .neededWhere("there is a bushing"),
                    Key.of("regions", new Type.Notes(), "places of one oil temperature; one of them is sump"),
                    Key.of("nodes", new Type.NamedGroups(NodeSection.NODE), "places of one pressure"),
                    Key.of("parts", new Type.PartNames(), "what lies between the nodes"),
                    Key.of(
                                    "gearsets",
                                    new Type.OneGroup(GearSection.TRAIN),
                                    "the gear train; with it, ratios, torque shares and drum speeds are computed, and checked where they are written")
                            .neededWhere("a clutch has no torque-share of its own"),
                    Key.of("ranges", new Type.NamedGroups(RangeSection.RANGE), "ranges of the unit"),
                    Key.of(
                                    "command",
                                    new Type.OneGroup(CommandSection.COMMAND),
                                    "what regulates the line, and what it is commanded to; left out: not commanded, and regulation is not judged")
                            .optional(),
                    Key.of(
                                    "heat",
                                    new Type.OneGroup(HeatSection.HEAT),
                                    "what heat depends on beside the oil circuit; left out: temperatures are as the duty gives them")
                            .neededWhere("temperatures of a driving condition follow from heat"),
                    Key.of("duty", new Type.NamedGroups(DutySection.DUTY), "points at which the unit is judged"),
                    Key.of("taps", new Type.NamedGroups(TapSection.TAP), "where a gauge can be fitted")
                            .optional(),
                    Key.of(
                                    "jobs",
                                    new Type.NamedGroups(JobSection.JOB),
                                    "what a shop does in one go; left out: worn fits back to new, by kind and place")
                            .optional(),
                    Key.of(
                                    "builds",
                                    new Type.NamedGroups(BuildSection.BUILD),
                                    "named lists of changes; left out: one build " + BuildSection.AS_WRITTEN)
                            .optional()));
}
