package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.law.GearDisplacement;
import hotidle.network.Group;
import hotidle.part.PumpChamber;
import hotidle.part.PumpSlip;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The words of a {@link PumpChamber} with an internal gear and a crescent. */
final class CrescentPumpKind {

    private CrescentPumpKind() {}

    private static final List<String> GEARS = List.of("module", "inner-teeth", "ring-teeth", "ring-tip-diameter");
    private static final List<String> GAPS = List.of(
            "face-clearance",
            "face-inner-diameter",
            "face-outer-diameter",
            "inner-tip-clearance",
            "ring-tip-clearance",
            "tip-land",
            "sealing-teeth",
            "ring-diameter",
            "body-clearance",
            "body-land",
            "ring-tip-diameter");

    static final Kind KIND = Kind.of(
                    "crescent-pump",
                    PumpChamber.class,
                    "A gear in a ring gear with a crescent between them: what it displaces, less what slips back past faces, crescent,"
                            + " body and mesh.",
                    Group.PUMP,
                    PumpKeys.all(List.of(
                            PumpKeys.ports(),
                            List.of(
                                    PumpKeys.displacement("the gear data"),
                                    FaceGapKind.width("width", "width of the gears")),
                            List.of(GearKeys.hub()),
                            gears(),
                            PumpKeys.face(
                                    "outside diameter of the ring gear's root",
                                    PumpKeys.GEAR_FACES,
                                    PumpKeys.TWO_GEARS),
                            gaps(),
                            PumpKeys.tipLand(),
                            PumpKeys.slipAndTorque(),
                            FitKeys.pocketMaterials(),
                            PumpKeys.sideLoad("0.75", "assumed, as for an external gear (common practice)"))),
                    PumpKeys::paths,
                    CrescentPumpKind::make,
                    physics())
            .example("module=3mm inner-teeth=23 ring-teeth=31 tip-diameter=75mm ring-tip-diameter=87mm "
                    + "ring-diameter=105mm width=12mm face-clearance=0.04mm face-inner-diameter=40mm "
                    + "face-outer-diameter=100mm inner-tip-clearance=0.1mm ring-tip-clearance=0.12mm "
                    + "body-clearance=0.08mm body-land=30mm tip-land=1.5mm sealing-teeth=3 speed=800rpm --at to=150psi")
            .turning()
            .role(Names.PUMP_CHAMBER)
            .alone(PumpKeys.ALONE)
            .needs(given -> PumpKeys.needs(given, GEARS, GAPS))
            .rule(CrescentPumpKind::check)
            .drawn(GraphicSymbol.PUMP);

    static OptionalDouble geometry(Attributes given) {
        return GearKeys.geometry(given, "inner-teeth", "ring-teeth", "ring-tip-diameter", GearDisplacement::internal);
    }

    private static LawText physics() {
        return LawText.of(
                        "delivery = filling·V·n + drag along the crescent − slip past faces, crescent, body and mesh;"
                                + " torque = V·Δp/(2·π)·(1 + Cf) + Cv·μ·n·V + T0",
                        PumpKeys.SOURCE)
                .checkedIn("Pump");
    }

    private static List<Key> gears() {
        return List.of(
                GearKeys.module(),
                Key.count("inner-teeth", "teeth of the inner gear, which the hub drives")
                        .neededWhere("no displacement is given")
                        .allowed("5", "200"),
                Key.count("ring-teeth", "teeth of the ring gear")
                        .neededWhere("no displacement is given")
                        .allowed("6", "300"),
                FaceGapKind.diameter("tip-diameter", "outside diameter of the inner gear"),
                FaceGapKind.diameter("ring-tip-diameter", "inside diameter over the tips of the ring gear's teeth")
                        .neededWhere("no displacement or no slip-flow is given"),
                FaceGapKind.diameter("ring-diameter", "outside diameter of the ring gear, in its pocket")
                        .neededWhere(PumpKeys.BY_GAPS));
    }

    private static List<Key> gaps() {
        return List.of(
                PumpKeys.tipClearance(
                        "inner-tip-clearance", "clearance between the inner gear's tips and the crescent"),
                PumpKeys.tipClearance("ring-tip-clearance", "clearance between the ring gear's tips and the crescent"),
                PumpKeys.tipClearance("body-clearance", "radial clearance of the ring gear in its pocket"),
                Key.quantity(
                                "body-land",
                                Dimension.LENGTH,
                                "length along the pocket that seals between outlet and inlet, on each side")
                        .neededWhere(PumpKeys.BY_GAPS)
                        .allowed("1 mm", "500 mm")
                        .usual("5 mm", "100 mm"));
    }

    private static void check(Attributes given, Kind.Context around) {
        PumpKeys.check(given, around, GAPS);
        GearKeys.check(given, around);
        if (given.has("inner-teeth")
                && given.has("ring-teeth")
                && given.count("ring-teeth") <= given.count("inner-teeth")) {
            given.error(
                    ProblemCode.TEETH_EXCHANGED,
                    "ring-teeth",
                    "has no more teeth in the ring gear than in the inner one",
                    "the inner gear runs inside the ring gear",
                    "exchange the two");
        }
        PumpKeys.agree(given, geometry(given));
    }

    private static Kind.MadePart make(Attributes given, Kind.Context around) {
        double displacement = PumpKeys.displacement(given, geometry(given));
        return GearKeys.make(given, around, displacement, 1, () -> tips(given, around));
    }

    private static List<PumpSlip.Tip> tips(Attributes given, Kind.Context around) {
        double inner = given.number("tip-diameter");
        double ring = given.number("ring-tip-diameter");
        // of the ring gear over the inner one; without teeth given the tips' speeds are taken as equal
        double ratio = GearKeys.ratio(given, "inner-teeth", "ring-teeth").orElse(inner / ring);
        double width = given.number("width");
        return List.of(
                GearKeys.tip(
                        given,
                        "inner-tip",
                        FitKeys.pocket(given, around, inner, 2 * given.number("inner-tip-clearance")),
                        width,
                        inner,
                        GearKeys.hub(given, around)),
                GearKeys.tip(
                        given,
                        "ring-tip",
                        FitKeys.insideRing(given, around, ring, 2 * given.number("ring-tip-clearance")),
                        width,
                        ring * ratio,
                        Optional.empty()),
                // the ring gear turns with one arc of its pocket and against the other: what it drags cancels
                new PumpSlip.Tip(
                        "body",
                        FitKeys.pocket(
                                given, around, given.number("ring-diameter"), 2 * given.number("body-clearance")),
                        given.number("body-land"),
                        1,
                        2 * width,
                        0,
                        Optional.empty()));
    }
}
