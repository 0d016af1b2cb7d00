package hotidle.circuits.words;

import hotidle.circuits.shape.Given;
import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.law.GearDisplacement;
import hotidle.network.Group;
import hotidle.part.PumpChamber;
import hotidle.part.PumpSlip;
import java.util.List;

/** The words of a {@link PumpChamber} with external gears. */
final class PumpChamberWords {

    private PumpChamberWords() {}

    private static final List<String> GEARS = List.of("module", "drive-teeth", "driven-teeth", "driven-tip-diameter");
    private static final List<String> GAPS = List.of(
            "face-clearance",
            "face-inner-diameter",
            "face-outer-diameter",
            "tip-clearance",
            "tip-land",
            "sealing-teeth");

    static final Kind KIND = Kind.of(
                    "pump-chamber",
                    PumpChamber.class,
                    "One chamber of a gear pump: what it displaces, less what slips back past faces, tips and mesh.",
                    Group.PUMP,
                    PumpWords.all(List.of(
                            PumpWords.ports(),
                            List.of(
                                    PumpWords.displacement("the gear data"),
                                    FaceGapWords.width("width", "width of the gears")),
                            gears(),
                            PumpWords.face("root diameter of the teeth"),
                            tip(),
                            PumpWords.slipAndTorque(),
                            FitWords.pocketMaterials(),
                            PumpWords.sideLoad("0.78", "0.7 to 0.85 for an external gear (common practice)"))),
                    PumpWords::paths,
                    PumpChamberWords::make,
                    physics())
            .rule((given, around) -> PumpWords.check(given, around, GEARS, GAPS));

    private static Physics physics() {
        return Physics.of(
                "delivery = filling·V·n + drag of the tips − slip past faces, tips and mesh;"
                        + " torque = V·Δp/(2·π)·(1 + Cf) + Cv·μ·n·V + T0",
                PumpWords.SOURCE);
    }

    private static List<Key> gears() {
        return List.of(
                module(),
                Key.count("drive-teeth", "teeth of the drive gear").optional().allowed("5", "200"),
                Key.count("driven-teeth", "teeth of the driven gear").optional().allowed("5", "200"),
                Key.quantity("driven-tip-diameter", Dimension.LENGTH, "outside diameter of the driven gear")
                        .optional()
                        .allowed("2 mm", "1 m")
                        .usual("20 mm", "120 mm"));
    }

    static Key module() {
        return Key.quantity("module", Dimension.LENGTH, "module of the gears: pitch diameter over teeth")
                .optional()
                .allowed("0.2 mm", "20 mm")
                .usual("1.5 mm", "5 mm");
    }

    private static List<Key> tip() {
        return PumpWords.all(List.of(
                List.of(
                        FaceGapWords.diameter("tip-diameter", "outside diameter of the drive gear"),
                        PumpWords.tipClearance("tip-clearance", "radial clearance between tooth tips and housing")),
                PumpWords.tipLand(),
                List.of(Key.count("tip-gears", "gears whose tips leak side by side")
                        .byDefault("2", "drive and driven gear (assumed)")
                        .allowed("1", "4"))));
    }

    /** Of one mesh, for a turn of the drive gear. */
    private static double displacement(Given given) {
        return given.numberIf("displacement")
                .orElseGet(() -> GearDisplacement.involute(
                        given.number("module"),
                        given.count("drive-teeth"),
                        given.count("driven-teeth"),
                        given.number("tip-diameter"),
                        given.number("driven-tip-diameter"),
                        given.number("width")));
    }

    private static Kind.Made make(Given given, Kind.Around around) {
        if (given.has("slip-flow")) {
            return PumpWords.fixed(given, displacement(given), PumpWords.slip(given, List.of(), List.of()));
        }
        double diameter = given.number("tip-diameter");
        double turns = given.has("drive-teeth") && given.has("driven-teeth")
                ? (double) given.count("drive-teeth") / given.count("driven-teeth")
                : 1;
        PumpSlip.Tip tip = new PumpSlip.Tip(
                "tip",
                FitWords.pocket(given, around, diameter, 2 * given.number("tip-clearance")),
                given.number("tip-land"),
                given.count("sealing-teeth"),
                given.number("width") * given.count("tip-gears"),
                diameter);
        PumpSlip slip = PumpWords.slip(given, List.of(PumpWords.face(given, around, turns)), List.of(tip));
        return PumpWords.fixed(given, displacement(given), slip);
    }
}
