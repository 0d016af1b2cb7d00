package hotidle.circuits.words;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.law.GearDisplacement;
import hotidle.network.Group;
import hotidle.part.PumpChamber;
import java.util.List;
import java.util.OptionalDouble;

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
                            PumpWords.face("root diameter of the teeth", PumpWords.GEAR_FACES, PumpWords.TWO_GEARS),
                            tip(),
                            PumpWords.slipAndTorque(),
                            FitWords.pocketMaterials(),
                            PumpWords.sideLoad("0.78", "0.7 to 0.85 for an external gear (common practice)"))),
                    PumpWords::paths,
                    PumpChamberWords::make,
                    physics())
            .needs(given -> PumpWords.needs(given, GEARS, GAPS))
            .rule((given, around) -> {
                PumpWords.check(given, around, GAPS);
                PumpWords.agree(given, geometry(given));
            });

    private static OptionalDouble geometry(Attributes given) {
        return GearWords.geometry(
                given, "drive-teeth", "driven-teeth", "driven-tip-diameter", GearDisplacement::involute);
    }

    private static Physics physics() {
        return Physics.of(
                "delivery = filling·V·n + drag of the tips − slip past faces, tips and mesh;"
                        + " torque = V·Δp/(2·π)·(1 + Cf) + Cv·μ·n·V + T0",
                PumpWords.SOURCE);
    }

    private static List<Key> gears() {
        return List.of(
                GearWords.module(),
                Key.count("drive-teeth", "teeth of the drive gear")
                        .neededWhere("no displacement is given")
                        .allowed("5", "200"),
                Key.count("driven-teeth", "teeth of the driven gear")
                        .neededWhere("no displacement is given")
                        .allowed("5", "200"),
                Key.quantity("driven-tip-diameter", Dimension.LENGTH, "outside diameter of the driven gear")
                        .neededWhere("no displacement is given")
                        .allowed("2 mm", "1 m")
                        .usual("20 mm", "120 mm"));
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

    /** Displacement and tips of one mesh, for a turn of the drive gear. */
    private static Kind.Made make(Attributes given, Kind.Context around) {
        double displacement = PumpWords.displacement(given, geometry(given));
        double turns = GearWords.ratio(given, "drive-teeth", "driven-teeth").orElse(1);
        return GearWords.make(given, around, displacement, turns, () -> {
            double diameter = given.number("tip-diameter");
            double width = given.number("width") * given.count("tip-gears");
            return List.of(GearWords.tip(given, around, "tip", diameter, width, diameter));
        });
    }
}
