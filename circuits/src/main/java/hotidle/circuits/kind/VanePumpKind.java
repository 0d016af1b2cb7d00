package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.law.GearDisplacement;
import hotidle.network.Group;
import hotidle.network.Signal;
import hotidle.part.PumpChamber;
import hotidle.part.PumpInlet;
import hotidle.part.PumpSlip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The words of a {@link PumpChamber} with vanes and a slide. */
final class VanePumpKind {

    private VanePumpKind() {}

    private static final List<String> GAPS = List.of("face-clearance", "face-inner-diameter", "face-outer-diameter");

    static final Kind KIND = Kind.of(
                    "vane-pump",
                    PumpChamber.class,
                    "A variable vane pump: a control pressure moves its slide against a spring, towards less displacement.",
                    Group.PUMP,
                    PumpKeys.all(List.of(
                            PumpKeys.ports(),
                            List.of(
                                    Key.node(
                                            "control",
                                            "whose pressure moves the slide; give it a bleed to the sump, else leaks alone decide it"),
                                    PumpKeys.displacement("ring, eccentricity and width"),
                                    FaceGapKind.width("width", "width of rotor and vanes"),
                                    FaceGapKind.diameter("ring-diameter", "inside diameter of the slide's ring"),
                                    FaceGapKind.diameter("tip-diameter", "diameter of the rotor")),
                            slide(),
                            PumpKeys.face(
                                    "diameter of the rotor or of the slide's ring, where the oil ends",
                                    "2",
                                    "one rotor with two faces (assumed)"),
                            PumpKeys.slipAndTorque(),
                            FitKeys.pocketMaterials(),
                            PumpKeys.sideLoad("0.75", "assumed, as for an external gear (common practice)"))),
                    PumpKeys::paths,
                    VanePumpKind::make,
                    physics())
            .example("ring-diameter=78mm tip-diameter=68mm greatest-eccentricity=3mm width=18mm control-area=6cm2 "
                    + "spring-rate=40N/mm preload=200N face-clearance=0.03mm face-inner-diameter=40mm "
                    + "face-outer-diameter=78mm speed=800rpm --at to=150psi --at control=80psi")
            .turning()
            .role(Names.PUMP_CHAMBER)
            .alone(PumpKeys.ALONE)
            .needs(given ->
                    PumpKeys.needs(given, List.of("ring-diameter", "tip-diameter", "greatest-eccentricity"), GAPS))
            .rule(VanePumpKind::check)
            .drawn(VanePumpKind::figure);

    private static PartFigure figure(Attributes given, List<Kind.FlowPath> paths) {
        List<PartFigure.FigurePort> ports = new ArrayList<>(PartFigure.ports(paths));
        ports.add(new PartFigure.FigurePort(given.word("control"), PartFigure.FigureRole.PILOT));
        return new PartFigure(GraphicSymbol.VARIABLE_PUMP, ports, List.of());
    }

    private static LawText physics() {
        return LawText.of(
                        "delivery = filling·V·n·e/e_max − slip past faces and vanes; slide: p·A = preload + k·(e_max − e);"
                                + " V = 2·π·D·e·b, D of the ring, many thin vanes",
                        "M. G. Rabie, Fluid Power Engineering, 2009, p. 134 (found); " + PumpKeys.SOURCE)
                .checkedIn("Pump");
    }

    private static List<Key> slide() {
        return List.of(
                eccentricity("greatest-eccentricity", "of slide to rotor at its upper stop: full displacement"),
                eccentricity("least-eccentricity", "at its lower stop").byDefault("0 mm", "no displacement (assumed)"),
                Key.quantity("control-area", Dimension.AREA, "area on which the control pressure acts on the slide")
                        .allowed("1 mm2", "200 cm2")
                        .usual("50 mm2", "20 cm2")
                        .measured("width times the chord of the control chamber, times its arm over the spring's"),
                Key.quantity("spring-rate", Dimension.SPRING_RATE, "rate of the slide's spring")
                        .allowed("0.001 N/mm", "1000 N/mm")
                        .usual("5 N/mm", "200 N/mm"),
                Key.quantity("preload", Dimension.FORCE, "force of that spring at the greatest eccentricity")
                        .allowed("0 N", "10000 N")
                        .usual("20 N", "2000 N"));
    }

    private static Key eccentricity(String name, String meaning) {
        return Key.quantity(name, Dimension.LENGTH, meaning)
                .allowed("0 mm", "50 mm")
                .usual("0 mm", "8 mm");
    }

    private static void check(Attributes given, Kind.Context around) {
        PumpKeys.check(given, around, GAPS);
        double room = (given.number("ring-diameter") - given.number("tip-diameter")) / 2;
        if (given.number("greatest-eccentricity") > room) {
            given.error(
                    ProblemCode.ROTOR_IN_RING,
                    "greatest-eccentricity",
                    "lets the rotor run into its ring",
                    "the eccentricity can be no more than half of ring-diameter less tip-diameter",
                    "measure all three again");
        } else if (given.number("least-eccentricity") >= given.number("greatest-eccentricity")) {
            given.error(
                    ProblemCode.SLIDE_WITHOUT_WAY,
                    "least-eccentricity",
                    "has a least-eccentricity no smaller than its greatest-eccentricity",
                    "the slide needs a way to move",
                    "exchange the two, or measure again");
        }
        PumpKeys.agree(given, geometry(given));
    }

    static OptionalDouble geometry(Attributes given) {
        boolean all = List.of("ring-diameter", "greatest-eccentricity", "width").stream()
                .allMatch(given::has);
        return all
                ? OptionalDouble.of(GearDisplacement.vanes(
                        given.number("ring-diameter"), given.number("greatest-eccentricity"), given.number("width")))
                : OptionalDouble.empty();
    }

    private static Kind.MadePart make(Attributes given, Kind.Context around) {
        double high = given.number("greatest-eccentricity");
        double displacement = PumpKeys.displacement(given, geometry(given));
        List<PumpSlip.Face> faces = given.has("slip-flow") ? List.of() : List.of(PumpKeys.face(given, around, 1));
        PumpChamber pump = new PumpChamber(
                displacement,
                PumpKeys.slip(given, faces, List.of()),
                PumpKeys.drag(given),
                Optional.of(new PumpChamber.Slide(
                        given.number("control-area"),
                        given.number("spring-rate"),
                        given.number("preload"),
                        given.number("least-eccentricity"),
                        high)));
        return new Kind.MadePart(
                pump,
                List.of(given.word("from"), given.word("to"), given.word("control")),
                List.of(Signal.state(given.word("inlet"), PumpInlet.FILLING)));
    }
}
