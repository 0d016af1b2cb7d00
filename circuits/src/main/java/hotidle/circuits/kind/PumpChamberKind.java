package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.text.Dimension;
import hotidle.law.GearDisplacement;
import hotidle.network.Group;
import hotidle.part.Fit;
import hotidle.part.PumpChamber;
import hotidle.part.PumpSlip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The words of a {@link PumpChamber} with external gears. */
final class PumpChamberKind {

    private PumpChamberKind() {}

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
                    PumpKeys.all(List.of(
                            PumpKeys.ports(),
                            List.of(
                                    PumpKeys.displacement("the gear data"),
                                    FaceGapKind.width("width", "width of the gears")),
                            List.of(GearKeys.hub()),
                            gears(),
                            PumpKeys.face("root diameter of the teeth", PumpKeys.GEAR_FACES, PumpKeys.TWO_GEARS),
                            tip(),
                            PumpKeys.slipAndTorque(),
                            FitKeys.pocketMaterials(),
                            PumpKeys.sideLoad(
                                    "0.78",
                                    "0.7 to 0.85 for an external gear with one mesh (common practice); 0.62 for each of two"
                                            + " opposite ones (derived), 0.50 to 0.75 over a mesh"))),
                    PumpKeys::paths,
                    PumpChamberKind::make,
                    physics())
            .example("displacement=18cm3/rev width=12mm face-clearance=0.04mm face-inner-diameter=20mm "
                    + "face-outer-diameter=32mm tip-diameter=84mm tip-clearance=0.07mm tip-land=1.5mm sealing-teeth=4 "
                    + "speed=800rpm --at to=150psi")
            .turning()
            .role(Names.PUMP_CHAMBER)
            .alone(PumpKeys.ALONE)
            .needs(given -> PumpKeys.needs(given, GEARS, GAPS))
            .rule((given, around) -> {
                PumpKeys.check(given, around, GAPS);
                GearKeys.check(given, around);
                PumpKeys.agree(given, geometry(given));
            })
            .drawn(GraphicSymbol.PUMP);

    static OptionalDouble geometry(Attributes given) {
        return GearKeys.geometry(
                given, "drive-teeth", "driven-teeth", "driven-tip-diameter", GearDisplacement::involute);
    }

    private static LawText physics() {
        return LawText.of(
                        "delivery = filling·V·n + drag of the tips − slip past faces, tips and mesh;"
                                + " torque = V·Δp/(2·π)·(1 + Cf) + Cv·μ·n·V + T0",
                        PumpKeys.SOURCE)
                .checkedIn("Pump");
    }

    private static List<Key> gears() {
        return List.of(
                GearKeys.module(),
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
        return PumpKeys.all(List.of(
                List.of(
                        FaceGapKind.diameter("tip-diameter", "outside diameter of the drive gear"),
                        PumpKeys.tipClearance("tip-clearance", "radial clearance between tooth tips and housing")),
                PumpKeys.tipLand(),
                List.of(Key.count("tip-gears", "gears whose tips leak side by side, the drive gear first")
                        .byDefault("2", "drive and driven gear (assumed)")
                        .allowed("1", "4"))));
    }

    /** Displacement and tips of one mesh, for a turn of the drive gear. */
    private static Kind.MadePart make(Attributes given, Kind.Context around) {
        double displacement = PumpKeys.displacement(given, geometry(given));
        double turns = GearKeys.ratio(given, "drive-teeth", "driven-teeth").orElse(1);
        return GearKeys.make(given, around, displacement, turns, () -> tips(given, around));
    }

    /** Each gear grows by its own radius; a driven gear whose diameter is not given is as wide as the drive gear. */
    private static List<PumpSlip.Tip> tips(Attributes given, Kind.Context around) {
        double drive = given.number("tip-diameter");
        double driven = given.numberIf("driven-tip-diameter").orElse(drive);
        // without teeth given the tips' speeds are taken as equal
        double ratio = GearKeys.ratio(given, "drive-teeth", "driven-teeth").orElse(drive / driven);
        double width = given.number("width");
        int others = given.count("tip-gears") - 1;
        List<PumpSlip.Tip> tips = new ArrayList<>(List.of(
                GearKeys.tip(given, "tip", pocket(given, around, drive), width, drive, GearKeys.hub(given, around))));
        if (others > 0) {
            Fit pocket = pocket(given, around, driven);
            tips.add(GearKeys.tip(given, "driven-tip", pocket, others * width, driven * ratio, Optional.empty()));
        }
        return tips;
    }

    private static Fit pocket(Attributes given, Kind.Context around, double diameter) {
        return FitKeys.pocket(given, around, diameter, 2 * given.number("tip-clearance"));
    }
}
