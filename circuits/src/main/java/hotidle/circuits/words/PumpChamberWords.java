package hotidle.circuits.words;

import hotidle.circuits.shape.Given;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.law.Channel;
import hotidle.law.GearDisplacement;
import hotidle.network.Group;
import hotidle.network.Signal;
import hotidle.part.PumpChamber;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The words of a {@link PumpChamber}. */
final class PumpChamberWords {

    private PumpChamberWords() {}

    static final Kind KIND = Kind.of(
                    "pump-chamber",
                    PumpChamber.class,
                    "One chamber of a gear pump: what it displaces, less what slips back past faces, tips and mesh.",
                    Group.PUMP,
                    keys(),
                    given -> given.has("from") && given.has("to")
                            ? List.of(Kind.Path.between(given.word("from"), given.word("to")))
                            : List.of(),
                    PumpChamberWords::make,
                    physics())
            .rule(PumpChamberWords::check);

    private static Physics physics() {
        return Physics.of(
                        "delivery = filling·V·n + drag of the tips − slip past faces, tips and mesh;"
                                + " torque = V·Δp/(2·π)·(1 + Cf) + Cv·μ·n·V + T0",
                        "torque: W. E. Wilson, Trans. ASME 68 (1946) 371 (from memory); slip: " + Physics.SLOT)
                .channels(
                        PumpChamber.class,
                        pump -> Map.of(
                                "face-slip",
                                Channel.slot(2
                                        * Math.PI
                                        * pump.face().inner()
                                        * pump.face().sector()
                                        * pump.face().faces()),
                                "tip-slip",
                                Channel.slot(pump.tip().width()),
                                "mesh-slip",
                                Channel.hole(Math.sqrt(4 * pump.orificeArea() / Math.PI), 1)))
                .fits(
                        PumpChamber.class,
                        pump -> Map.of(
                                "face clearance", pump.face().fit(),
                                "diametral tip clearance", pump.tip().fit()));
    }

    private static List<Key> keys() {
        List<Key> keys = new ArrayList<>(List.of(
                Key.node("from", "the pump's inlet"),
                Key.node("to", "the pump's outlet"),
                Key.of("inlet", new Type.Name(Names.PUMP_INLET), "the pump-inlet that says how far the chamber fills"),
                Key.quantity(
                                "displacement",
                                Dimension.DISPLACEMENT,
                                "oil moved in a turn of the engine, without slip; left out: from the gear data")
                        .optional()
                        .allowed("0.01 cm3/rev", "1000 cm3/rev")
                        .usual("3 cm3/rev", "80 cm3/rev"),
                FaceGapWords.width("width", "width of the gears")));
        keys.addAll(gears());
        keys.addAll(face());
        keys.addAll(tip());
        keys.addAll(slipAndTorque());
        keys.addAll(FitWords.pocketMaterials());
        keys.addAll(sideLoad());
        return keys;
    }

    private static List<Key> gears() {
        return List.of(
                Key.quantity("module", Dimension.LENGTH, "module of the gears: pitch diameter over teeth")
                        .optional()
                        .allowed("0.2 mm", "20 mm")
                        .usual("1.5 mm", "5 mm"),
                Key.count("drive-teeth", "teeth of the drive gear").optional().allowed("5", "200"),
                Key.count("driven-teeth", "teeth of the driven gear").optional().allowed("5", "200"),
                Key.quantity("driven-tip-diameter", Dimension.LENGTH, "outside diameter of the driven gear")
                        .optional()
                        .allowed("2 mm", "1 m")
                        .usual("20 mm", "120 mm"));
    }

    private static List<Key> face() {
        return List.of(
                FaceGapWords.clearance(
                        "face-clearance", "depth of the pocket less the width of the gears, both faces together"),
                FaceGapWords.diameter("face-inner-diameter", "diameter of the shaft, hub or pin that the oil reaches"),
                FaceGapWords.diameter("face-outer-diameter", "root diameter of the teeth"),
                FaceGapWords.sector("face-sector", "share of the circle that is under pressure")
                        .byDefault("50 %", "about half of the circle (assumed)"),
                Key.count("faces", "gear faces that leak side by side")
                        .byDefault("4", "two gears with two faces each (assumed)")
                        .allowed("1", "8"));
    }

    private static List<Key> tip() {
        return List.of(
                FaceGapWords.diameter("tip-diameter", "outside diameter of the drive gear"),
                Key.size("tip-clearance", "radial clearance between tooth tips and housing")
                        .allowed("0.1 um", "5 mm")
                        .usual("20 um", "0.4 mm")
                        .measured("feeler between tip and housing, gear pushed to the inlet side"),
                Key.quantity("tip-land", Dimension.LENGTH, "thickness of a tooth at its tip")
                        .allowed("0.05 mm", "50 mm")
                        .usual("0.5 mm", "5 mm"),
                Key.count("sealing-teeth", "teeth that seal one after the other")
                        .allowed("1", "100")
                        .usual("2", "20"),
                Key.count("tip-gears", "gears whose tips leak side by side")
                        .byDefault("2", "drive and driven gear (assumed)")
                        .allowed("1", "4"));
    }

    private static List<Key> slipAndTorque() {
        return List.of(
                Key.quantity("opening", Dimension.OPENING, "rise of both clearances with pressure")
                        .byDefault("0 um/bar", "a stiff body (assumed)")
                        .allowed("0 um/bar", "10 um/bar")
                        .usual("0 um/bar", "2 um/bar"),
                Key.quantity(
                                "orifice-slip-area",
                                Dimension.AREA,
                                "area of the slip that viscosity does not change, at the mesh")
                        .byDefault("0.3 mm2", "about 0.5 L/min at 7 bar (assumed)")
                        .allowed("0.0001 mm2", "1000 mm2")
                        .usual("0.01 mm2", "10 mm2"),
                Key.quantity("viscous-drag", Dimension.RATIO, "torque over viscosity, revolutions and displacement")
                        .byDefault("2e4", "about 0.02 N.m at hot idle and 3 N.m in deep cold (assumed)")
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

    private static List<Key> sideLoad() {
        return List.of(
                Key.quantity("side-load-factor", Dimension.RATIO, "side force over pressure, width and tip diameter")
                        .byDefault("0.78", "0.7 to 0.85 for an external gear (common practice)")
                        .allowed("0.01", "2")
                        .usual("0.5", "1"),
                Key.quantity("angle", Dimension.ANGLE, "direction of the side force on the hub")
                        .byDefault("0 deg", "assumed; two chambers opposite each other need two angles")
                        .allowed("-360 deg", "360 deg"));
    }

    private static void check(Given given, Kind.Around around) {
        FaceGapWords.rising(given, "face-inner-diameter", "face-outer-diameter");
        if (!given.has("displacement") && !GEARS.stream().allMatch(given::has)) {
            given.error(
                    "displacement",
                    "needs either displacement, or module, drive-teeth, driven-teeth and driven-tip-diameter",
                    "the pump's delivery follows from one or the other",
                    "write displacement: 20 cm3/rev, for example");
        }
        Given inlet = around.parts().get(given.word("inlet"));
        if (inlet != null && inlet.has("node") && !inlet.word("node").equals(given.word("from"))) {
            given.error(
                    "inlet",
                    "draws from '" + given.word("from") + "', but its inlet stands at '" + inlet.word("node") + "'",
                    "the inlet says how far the chamber fills, so both stand at one node",
                    "write the same node in both");
        }
    }

    private static final List<String> GEARS = List.of("module", "drive-teeth", "driven-teeth", "driven-tip-diameter");

    /** Of one mesh, for a turn of the drive gear. */
    private static double displacement(Given given, double width) {
        return GearDisplacement.involute(
                given.number("module"),
                given.count("drive-teeth"),
                given.count("driven-teeth"),
                given.number("tip-diameter"),
                given.number("driven-tip-diameter"),
                width);
    }

    private static Kind.Made make(Given given, Kind.Around around) {
        double width = given.number("width");
        PumpChamber.Face face = new PumpChamber.Face(
                FitWords.pocket(given, around, width, given.number("face-clearance")),
                given.number("face-inner-diameter") / 2,
                given.number("face-outer-diameter") / 2,
                given.number("face-sector"),
                given.count("faces"));
        PumpChamber.Tip tip = new PumpChamber.Tip(
                FitWords.pocket(given, around, given.number("tip-diameter"), 2 * given.number("tip-clearance")),
                given.number("tip-land"),
                given.count("sealing-teeth"),
                width * given.count("tip-gears"));
        PumpChamber chamber = new PumpChamber(
                given.has("displacement") ? given.number("displacement") : displacement(given, width),
                face,
                tip,
                given.number("opening"),
                given.number("orifice-slip-area"),
                new PumpChamber.Drag(
                        given.number("viscous-drag"), given.number("friction"), given.number("constant-torque")));
        return new Kind.Made(
                chamber,
                List.of(given.word("from"), given.word("to")),
                List.of(Signal.state(given.word("inlet"), "filling")));
    }
}
