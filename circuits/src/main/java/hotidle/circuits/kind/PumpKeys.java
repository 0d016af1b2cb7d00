package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Remedy;
import hotidle.law.Hole;
import hotidle.part.PumpChamber;
import hotidle.part.PumpSlip;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * What all pumps have in common: ports, slip by a test, torque, side load. Past 300 lines, since a key, the rule that it breaks and
 * what is made of it stand together, and three kinds of pump share all of them.
 */
final class PumpKeys {

    private PumpKeys() {}

    /** How a pump is asked for on its own. */
    static final Alone ALONE = Alone.asking(DutyKey.SPEED)
            .without("an inlet of its own stands in for it", "inlet")
            .without("a pump on its own stands in the middle of its pocket", "hub");

    static final String SOURCE =
            "torque: W. E. Wilson, Trans. ASME 68 (1946) 371 (from memory); slip past gaps: " + LawText.SLOT;

    static List<Key> ports() {
        return List.of(
                Key.node("from", "the pump's inlet"),
                Key.node("to", "the pump's outlet"),
                Key.of("inlet", new Type.Name(Names.PUMP_INLET), "the pump-inlet that says how far the chamber fills"));
    }

    static Key displacement(String otherwise) {
        return Key.quantity(
                        "displacement",
                        Dimension.DISPLACEMENT,
                        "oil moved in a turn of the engine, without slip; left out: from " + otherwise)
                .neededWhere("not all of that is given")
                .allowed("0.01 cm3/rev", "1000 cm3/rev")
                .usual("3 cm3/rev", "80 cm3/rev");
    }

    /** The case in which clearances are needed. */
    static final String BY_GAPS = "no slip-flow is given";

    /** Faces of a pump of two gears. */
    static final String GEAR_FACES = "4";

    static final String TWO_GEARS = "two gears with two faces each (assumed)";

    /** Keys of the faces; left out where the slip is that of a test. */
    static List<Key> face(String outer, String faces, String which) {
        return List.of(
                FaceGapKind.clearance(
                                "face-clearance",
                                "depth of the pocket less the width of what turns in it, both faces together")
                        .neededWhere(BY_GAPS),
                FaceGapKind.diameter("face-inner-diameter", "diameter of the shaft, hub or pin that the oil reaches")
                        .neededWhere(BY_GAPS),
                FaceGapKind.diameter("face-outer-diameter", outer).neededWhere(BY_GAPS),
                FaceGapKind.sector("face-sector", "share of the circle that is under pressure")
                        .byDefault("50 %", "about half of the circle (assumed)"),
                Key.count("faces", "faces that leak side by side")
                        .byDefault(faces, which)
                        .allowed("1", "8"));
    }

    static Key tipClearance(String name, String meaning) {
        return Key.size(name, meaning)
                .neededWhere(BY_GAPS)
                .allowed("0.1 um", "5 mm")
                .usual("20 um", "0.4 mm")
                .measured("feeler between tip and housing, gear pushed to the inlet side");
    }

    static List<Key> tipLand() {
        return List.of(
                Key.quantity("tip-land", Dimension.LENGTH, "thickness of a tooth at its tip")
                        .neededWhere(BY_GAPS)
                        .allowed("0.05 mm", "50 mm")
                        .usual("0.5 mm", "5 mm"),
                Key.count("sealing-teeth", "teeth that seal one after the other")
                        .neededWhere(BY_GAPS)
                        .allowed("1", "100")
                        .usual("2", "20"));
    }

    static List<Key> slipAndTorque() {
        return List.of(
                Key.quantity("opening", Dimension.OPENING, "rise of all clearances with pressure")
                        .byDefault("0 um/bar", "a stiff body (assumed)")
                        .allowed("0 um/bar", "10 um/bar")
                        .usual("0 um/bar", "2 um/bar"),
                Key.quantity(
                                "orifice-slip-area",
                                Dimension.AREA,
                                "area of the slip that viscosity does not change, a sharp-edged hole: mesh, scores and nicks")
                        .byDefault("0.3 mm2", "about 0.5 L/min at 7 bar (assumed)")
                        .allowed("0.0001 mm2", "1000 mm2")
                        .usual("0.01 mm2", "10 mm2"),
                Key.quantity(
                                "slip-flow",
                                Dimension.FLOW,
                                "slip of the whole chamber in a test, in place of its clearances")
                        .neededWhere("a clearance is left out")
                        .allowed("0.001 L/min", "1000 L/min")
                        .usual("0.1 L/min", "60 L/min")
                        .measured("displacement times speed less the flow delivered, at slip-pressure"),
                Key.quantity("slip-pressure", Dimension.PRESSURE, "pressure rise in that test")
                        .neededWhere("slip-flow is given")
                        .allowed("1 psi", "10000 psi")
                        .usual("50 psi", "500 psi"),
                Key.quantity("slip-viscosity", Dimension.VISCOSITY, "dynamic viscosity of the oil in that test")
                        .neededWhere("slip-flow is given")
                        .allowed("0.1 mPa.s", "10000 mPa.s")
                        .usual("3 mPa.s", "100 mPa.s"),
                Key.quantity(
                                "slip-turbulent-share",
                                Dimension.RATIO,
                                "share of that slip that viscosity does not change, as through an orifice")
                        .byDefault("50 %", "both parts matter, their share is not known (assumed)")
                        .allowed("0.1 %", "100 %"),
                Key.quantity("slip-density", Dimension.DENSITY, "density of the oil in that test")
                        .byDefault("820 kg/m3", "mineral oil when warm (common practice)")
                        .allowed("500 kg/m3", "1500 kg/m3")
                        .usual("700 kg/m3", "950 kg/m3"),
                Key.quantity(
                                "slip-growth",
                                Dimension.RATIO,
                                "by how much its clearances are wider at slip-pressure than without pressure")
                        .byDefault("5 %", "0.1 um/bar at clearances of 20 um and 10 bar (assumed)")
                        .allowed("0 %", "100 %"),
                Key.quantity("speed-slip", Dimension.RATIO, "share of the displacement lost at every speed")
                        .byDefault("0 %", "assumed")
                        .allowed("0 %", "90 %")
                        .usual("0 %", "15 %"),
                Key.quantity("speed-loss", Dimension.RATIO, "share of the displacement that each 1000 rpm take from it")
                        .byDefault("0.2 %", "the teeth fill a little less at speed (assumed)")
                        .allowed("0 %", "20 %")
                        .usual("0 %", "2 %"),
                Key.quantity(
                                "viscous-drag",
                                Dimension.RATIO,
                                "torque of tips and mesh over viscosity, revolutions a second and the greatest displacement;"
                                        + " of the faces too where slip-flow is given")
                        .byDefault("5e3", "about 0.005 N.m at hot idle; with slip-flow 2e4 is nearer (assumed)")
                        .allowed("0", "1e8"),
                Key.quantity("friction", Dimension.RATIO, "friction torque over the torque of the pressure")
                        .byDefault("5 %", "assumed")
                        .allowed("0 %", "100 %")
                        .usual("0 %", "30 %"),
                Key.quantity("constant-torque", Dimension.TORQUE, "torque that it takes whatever else")
                        .byDefault("0 N.m", "assumed")
                        .allowed("0 N.m", "100 N.m")
                        .usual("0 N.m", "5 N.m"));
    }

    /** Side load on the hub: force over pressure, width and the diameter of what turns. */
    static List<Key> sideLoad(String factor, String source) {
        return List.of(
                Key.quantity("side-load-factor", Dimension.RATIO, "side force over pressure, width and tip diameter")
                        .byDefault(factor, source)
                        .allowed("0.01", "2")
                        .usual("0.5", "1"),
                Key.quantity("angle", Dimension.ANGLE, "direction of the side force on the hub")
                        .byDefault("0 deg", "assumed; two chambers opposite each other need two angles")
                        .allowed("-360 deg", "360 deg"));
    }

    static List<Kind.FlowPath> paths(Attributes given) {
        return given.has("from") && given.has("to")
                ? List.of(Kind.FlowPath.between(given.word("from"), given.word("to")))
                : List.of();
    }

    /** A displacement this far from that of the geometry is that of another pump (assumed) [-]. */
    private static final double ANOTHER_PUMP = 0.2;

    /** The displacement as written, or else that of the geometry [m³/rev]; one of them is there. */
    static double displacement(Attributes given, OptionalDouble geometry) {
        return given.numberIf("displacement").orElseGet(geometry::orElseThrow);
    }

    /** Warns of a displacement that is not that of the geometry beside it [m³/rev]. */
    static void agree(Attributes given, OptionalDouble geometry) {
        if (given.has("displacement") && geometry.isPresent() && !given.broken()) {
            double written = given.number("displacement");
            double displaced = geometry.getAsDouble();
            if (Math.abs(written / displaced - 1) > ANOTHER_PUMP) {
                given.warning(
                        ProblemCode.DISPLACEMENT_AGAINST_GEOMETRY,
                        "displacement",
                        String.format(
                                Locale.ROOT,
                                "is given %.1f cm3/rev, but its geometry displaces %.1f cm3/rev",
                                written * 1e6,
                                displaced * 1e6),
                        "the one written is used; both are of one pump",
                        "measure again, or leave out displacement");
            }
        }
    }

    /** Notes what is missing for displacement and slip. */
    static void needs(Attributes given, List<String> geometry, List<String> gaps) {
        if (given.lacks("displacement") && geometry.stream().anyMatch(given::lacks)) {
            given.error(
                    ProblemCode.NO_DISPLACEMENT,
                    "displacement",
                    "needs either displacement, or " + and(geometry),
                    "the pump's delivery follows from one or the other",
                    Remedy.set("write ", "displacement", "20 cm3/rev").then(", for example"));
        }
        List<String> missing = gaps.stream().filter(given::lacks).toList();
        if (given.lacks("slip-flow") && !missing.isEmpty()) {
            given.error(
                    ProblemCode.NO_SLIP,
                    "",
                    "needs " + and(missing) + ", or the slip-flow of a test",
                    "what slips back follows from one or the other",
                    "measure the clearances, or write slip-flow, slip-pressure and slip-viscosity");
        }
        List<String> test = List.of("slip-pressure", "slip-viscosity");
        if (given.has("slip-flow") && test.stream().anyMatch(given::lacks)) {
            given.error(
                    ProblemCode.SLIP_WITHOUT_TEST,
                    "slip-flow",
                    "has a slip-flow without " + and(test),
                    "a slip is worth nothing without its pressure and viscosity",
                    Remedy.set("write ", "slip-pressure", "100 psi")
                            .then(" and ")
                            .set("slip-viscosity", "6 mPa.s")
                            .then(", for example"));
        }
    }

    /** Notes clearances beside a test that stands in their place, and an inlet that stands elsewhere. */
    static void check(Attributes given, Kind.Context around, List<String> gaps) {
        slip(given, gaps);
        Attributes inlet = around.parts().get(given.word("inlet"));
        if (inlet != null && inlet.has("node") && !inlet.word("node").equals(given.word("from"))) {
            given.error(
                    ProblemCode.INLET_ELSEWHERE,
                    "inlet",
                    "draws from '" + given.word("from") + "', but its inlet stands at '" + inlet.word("node") + "'",
                    "the inlet says how far the chamber fills, so both stand at one node",
                    "write the same node in both");
        }
    }

    private static void slip(Attributes given, List<String> gaps) {
        if (!given.has("slip-flow")) {
            FaceGapKind.rising(given, "face-inner-diameter", "face-outer-diameter");
            return;
        }
        gaps.stream()
                .filter(given::has)
                .findFirst()
                .ifPresent(gap -> given.error(
                        ProblemCode.SLIP_GIVEN_TWICE,
                        gap,
                        "has both slip-flow and " + gap,
                        "the slip of a test stands in place of the clearances",
                        "leave one of the two out"));
    }

    /** Words joined by commas and a last "and". */
    static String and(List<String> words) {
        int last = words.size() - 1;
        return last == 0 ? words.get(0) : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    /** The gap under the faces, which turn so many times as fast as the engine. */
    static PumpSlip.Face face(Attributes given, Kind.Context around, double turns) {
        return new PumpSlip.Face(
                "face",
                FitKeys.pocket(given, around, given.number("width"), given.number("face-clearance")),
                given.number("face-inner-diameter") / 2,
                given.number("face-outer-diameter") / 2,
                given.number("face-sector"),
                given.count("faces"),
                turns);
    }

    /** Slip through gaps, or that of a test. */
    static PumpSlip slip(Attributes given, List<PumpSlip.Face> faces, List<PumpSlip.Tip> tips) {
        if (!given.has("slip-flow")) {
            return new PumpSlip(
                    faces,
                    tips,
                    given.number("opening"),
                    PumpSlip.Fitted.NONE,
                    given.number("orifice-slip-area"),
                    lost(given));
        }
        double rise = given.number("slip-pressure");
        double growth = given.number("slip-growth");
        double turbulent = given.number("slip-turbulent-share") * given.number("slip-flow");
        double laminar = (1 - given.number("slip-turbulent-share")) * given.number("slip-flow");
        double area = turbulent / (Hole.SHARP_EDGE * Math.sqrt(2 * rise / given.number("slip-density")));
        return new PumpSlip(
                List.of(),
                List.of(),
                0,
                new PumpSlip.Fitted(
                        laminar * given.number("slip-viscosity") / rise / Math.pow(1 + growth, 3), growth / rise),
                area,
                lost(given));
    }

    private static PumpSlip.Lost lost(Attributes given) {
        return new PumpSlip.Lost(given.number("speed-slip"), given.number("speed-loss") / THOUSAND_RPM);
    }

    /** [rev/s]. */
    private static final double THOUSAND_RPM = 1000.0 / 60;

    static PumpChamber.Drag drag(Attributes given) {
        return new PumpChamber.Drag(
                given.number("viscous-drag"), given.number("friction"), given.number("constant-torque"));
    }

    static List<Key> all(List<List<Key>> groups) {
        List<Key> keys = new ArrayList<>();
        groups.forEach(keys::addAll);
        return keys;
    }
}
