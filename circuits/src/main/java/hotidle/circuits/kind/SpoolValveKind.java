package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Remedy;
import hotidle.network.Group;
import hotidle.part.SpoolValve;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The words of a {@link SpoolValve}. */
final class SpoolValveKind {

    private SpoolValveKind() {}

    private static final Shape OPENING = new Shape(
            "opening",
            List.of(
                    Key.node("from", "side of higher pressure"),
                    Key.node("to", "side of lower pressure"),
                    Key.quantity("edge", Dimension.LENGTH, "position of the spool at which it begins to open")
                            .allowed("-100 mm", "100 mm")
                            .usual("-10 mm", "20 mm")
                            .measured("calliper: overlap of land and port with the spool on its seat"),
                    Key.choice(
                                    "opens",
                                    "up where it opens as the spool moves against its spring, else down",
                                    "up",
                                    "down")
                            .byDefault("up", "assumed"),
                    Key.quantity("share", Dimension.RATIO, "share of the circumference that is open")
                            .byDefault("100 %", "a full ring (assumed)")
                            .allowed("0.1 %", "100 %"),
                    Key.count("holes", "round holes that the land uncovers in place of a ring")
                            .byDefault("0", "a ring (assumed)")
                            .allowed("0", "100"),
                    Key.quantity("hole-diameter", Dimension.LENGTH, "diameter of the holes")
                            .neededWhere("there are holes")
                            .allowed("0.1 mm", "50 mm")
                            .usual("0.8 mm", "10 mm"),
                    Key.count("notches", "square notches in the land that open before its ring")
                            .byDefault("0", "a plain edge (assumed)")
                            .allowed("0", "24"),
                    Key.quantity("notch-width", Dimension.LENGTH, "width of each notch, round the land")
                            .neededWhere("there are notches")
                            .allowed("0.1 mm", "50 mm")
                            .usual("0.5 mm", "6 mm"),
                    Key.quantity("notch-length", Dimension.LENGTH, "how far beyond the notches the ring opens")
                            .neededWhere("there are notches")
                            .allowed("0.05 mm", "50 mm")
                            .usual("0.2 mm", "4 mm"),
                    OrificeKind.dischargeCoefficient(
                            "0.611", "sharp edge: pi/(pi + 2), Merritt 1967, section 3-4 (from memory)"),
                    FitKeys.bore().neededWhere("this land has another bore than the valve"),
                    FitKeys.valve().neededWhere("this land has another bore than the valve"),
                    Key.quantity("eccentricity", Dimension.RATIO, "of this land, in place of the valve's")
                            .optional()
                            .allowed("0", "1")));

    private static final Shape AREA = new Shape(
            "area",
            List.of(
                    Key.node("node", "whose pressure acts on it"),
                    Key.quantity("area", Dimension.AREA, "the area")
                            .allowed("0.1 mm2", "100 cm2")
                            .usual("5 mm2", "1000 mm2")
                            .measured("pi/4 times the square of the land's diameter, less that of the next land"),
                    Key.choice(
                            "acts",
                            "open where the pressure moves the spool against its spring, else close, as it does where it pushes a boost",
                            "open",
                            "close"),
                    Key.of(
                                    "ranges",
                                    new Type.NameList(Names.RANGE),
                                    "ranges in which it is fed; it is drained in all others, as by a manual valve; left out: all")
                            .optional()));

    static final Kind KIND = Kind.of(
                    "spool-valve",
                    SpoolValve.class,
                    "A spool on a spring, with openings that it meters and areas that pressures act on: regulator, boost, converter"
                            + " limit, lockup and solenoid-feed valves.",
                    Group.VALVE_BODY,
                    Stream.of(
                                    FitKeys.boreAndValve().stream(),
                                    Stream.of(
                                            FitKeys.eccentricity(),
                                            Key.of(
                                                    "openings",
                                                    new Type.NamedGroups(OPENING),
                                                    "openings that it meters"),
                                            Key.of("areas", new Type.NamedGroups(AREA), "areas that pressures act on"),
                                            Key.quantity(
                                                            "compensation",
                                                            Dimension.RATIO,
                                                            "share of the flow force that the valve's form takes away: turned stem, shaped"
                                                                    + " chamber")
                                                    .byDefault("0 %", "plain lands, the whole flow force (assumed)")
                                                    .allowed("0 %", "100 %")
                                                    .usual("0 %", "90 %")),
                                    SpoolSpringKeys.keys().stream(),
                                    Stream.of(
                                            Key.of(
                                                            "stops",
                                                            new Type.RisingPair(Dimension.LENGTH),
                                                            "positions between which the spool can move")
                                                    .allowed("-50 mm", "50 mm")
                                                    .usual("-10 mm", "25 mm"),
                                            Key.quantity(
                                                            "friction",
                                                            Dimension.FORCE,
                                                            "friction of the spool: a band of line pressure in compare and sweep")
                                                    .byDefault(
                                                            "0 N",
                                                            "a free spool (assumed); sticking ones have 1 to 5 N (common practice)")
                                                    .allowed("0 N", "500 N")
                                                    .usual("0 N", "20 N"),
                                            Key.quantity(
                                                            "stuck-at",
                                                            Dimension.LENGTH,
                                                            "position in which it is stuck; left out: free")
                                                    .optional()
                                                    .allowed("-50 mm", "50 mm")))
                            .flatMap(keys -> keys)
                            .toList(),
                    SpoolValveKind::paths,
                    SpoolValveKind::make,
                    physics())
            .passing(Passing.BY_STATE)
            .example("bore=20.026mm valve=20mm openings.bypass.from=line openings.bypass.to=sump "
                    + "openings.bypass.edge=1mm areas.line.node=line areas.line.area=200mm2 areas.line.acts=open "
                    + "areas.boost.node=boost areas.boost.area=150mm2 areas.boost.acts=close spring-rate=8N/mm "
                    + "preload=120N stops=[0mm,4mm] --at line=130psi --at boost=20psi")
            .role(Names.SPOOL_VALVE)
            .needs(SpoolSpringKeys::needs)
            .rule((given, around) -> check(given))
            .drawn(ValveFigures::spool);

    private static LawText physics() {
        return LawText.of(
                        "Σ p·A = preload + k·x + flow force 2·Cd·Cv·cos 69°·w·a·Δp, less its compensation; openings q = Cd·w·√(a² + c²)·√(2·Δp/ρ), closed"
                                + " lands leak as an annular gap of their overlap",
                        "H. E. Merritt, Hydraulic Control Systems, 1967, §5-2 and eq. 5-93 (from memory)")
                .checkedIn("Spool valve");
    }

    private static List<Kind.FlowPath> paths(Attributes given) {
        List<Kind.FlowPath> paths = new ArrayList<>();
        for (Attributes opening : given.groups("openings").values()) {
            if (opening.has("from") && opening.has("to")) {
                paths.add(Kind.FlowPath.between(opening.word("from"), opening.word("to")));
            }
        }
        for (Attributes area : given.groups("areas").values()) {
            area.wordIf("node").ifPresent(node -> paths.add(Kind.FlowPath.between(node, node)));
        }
        return paths;
    }

    private static void check(Attributes given) {
        for (Attributes opening : given.groups("openings").values()) {
            ValveFitsItsBore.check(opening, given, "bore", "valve");
            if (opening.count("holes") > 0 && !opening.has("hole-diameter")) {
                opening.error(
                        ProblemCode.HOLES_WITHOUT_DIAMETER,
                        "holes",
                        "has holes without a hole-diameter",
                        "their area follows from it",
                        Remedy.set("write ", path(opening, "hole-diameter"), "3 mm")
                                .then(", for example"));
            }
            notches(opening, given);
        }
        OpeningRules.check(given);
        if (given.groups("areas").isEmpty()) {
            given.error(ProblemCode.SPOOL_WITHOUT_AREAS, "areas", "has no areas", "nothing would move its spool", "");
        }
        SpoolSpringKeys.check(given);
        double low = given.rows("stops").get(0).x();
        double high = given.rows("stops").get(1).x();
        double stuck = given.numberIf("stuck-at").orElse(low);
        if (stuck < low || stuck > high) {
            given.error(
                    ProblemCode.STUCK_BEYOND_STOPS,
                    "stuck-at",
                    "is stuck beyond its stops",
                    "it can only stick where it can move",
                    "");
        }
    }

    private static String path(Attributes opening, String key) {
        return "openings." + opening.name() + "." + key;
    }

    private static Kind.MadePart make(Attributes given, Kind.Context around) {
        Set<String> touched = new LinkedHashSet<>();
        for (Kind.FlowPath path : paths(given)) {
            touched.add(path.from());
            touched.add(path.to());
        }
        List<String> ports = List.copyOf(touched);
        List<SpoolValve.Opening> openings = new ArrayList<>();
        given.groups("openings")
                .forEach((name, opening) ->
                        openings.addAll(openings(opening(name, opening, given, around, ports), opening)));
        List<SpoolValve.Area> areas = new ArrayList<>();
        given.groups("areas")
                .values()
                .forEach(area -> areas.add(new SpoolValve.Area(
                        ports.indexOf(area.word("node")),
                        area.word("acts").equals("open") ? area.number("area") : -area.number("area"),
                        Set.copyOf(area.words("ranges")))));
        return new Kind.MadePart(
                new SpoolValve(ports, openings, areas, SpoolSpringKeys.make(given), given.numberIf("stuck-at")),
                ports,
                List.of());
    }

    private static SpoolValve.Opening opening(
            String name, Attributes opening, Attributes valve, Kind.Context around, List<String> ports) {
        return new SpoolValve.Opening(
                name,
                ports.indexOf(opening.word("from")),
                ports.indexOf(opening.word("to")),
                FitKeys.fit(opening, valve, around, "bore", "valve"),
                opening.number("share"),
                opening.number("edge"),
                opening.word("opens").equals("up"),
                opening.numberIf("eccentricity").orElse(valve.number("eccentricity")),
                opening.number("cd"),
                opening.count("holes"),
                opening.numberIf("hole-diameter").orElse(0),
                valve.number("compensation"));
    }

    private static void notches(Attributes opening, Attributes valve) {
        if (opening.count("notches") == 0) {
            return;
        }
        if (!opening.has("notch-width") || !opening.has("notch-length")) {
            opening.error(
                    ProblemCode.NOTCHES_WITHOUT_SIZE,
                    "notches",
                    "has notches without a notch-width and a notch-length",
                    "their area follows from them",
                    Remedy.set("write ", path(opening, "notch-width"), "2 mm")
                            .then(", ")
                            .set(path(opening, "notch-length"), "1 mm")
                            .then(", for example"));
        } else if (opening.count("holes") > 0) {
            opening.error(
                    ProblemCode.NOTCHES_AND_HOLES,
                    "notches",
                    "has both notches and holes",
                    "a land meters by the one or the other",
                    "");
        } else {
            Attributes holder = opening.has("bore") ? opening : valve;
            double ring = Math.PI * holder.number("bore") * opening.number("share");
            if (opening.count("notches") * opening.number("notch-width") >= ring) {
                opening.error(
                        ProblemCode.NOTCHES_TAKE_ALL,
                        "notch-width",
                        "has notches that leave nothing of its land",
                        String.format(java.util.Locale.ROOT, "the land is %.1f mm long round its bore", ring * 1000),
                        "write fewer or narrower notches");
            }
        }
    }

    /** A notched land is two openings side by side: the notches' share of the ring opens first, the rest of it later. */
    private static List<SpoolValve.Opening> openings(SpoolValve.Opening plain, Attributes opening) {
        if (opening.count("notches") == 0) {
            return List.of(plain);
        }
        double share = opening.count("notches")
                * opening.number("notch-width")
                / (Math.PI * plain.fit().outer());
        double later = (plain.opensUp() ? 1 : -1) * opening.number("notch-length");
        return List.of(
                plain.part(plain.name(), share, plain.edge()),
                plain.part(plain.name() + "-ring", plain.share() - share, plain.edge() + later));
    }
}
