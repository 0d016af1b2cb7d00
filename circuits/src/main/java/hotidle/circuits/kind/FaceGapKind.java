package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Remedy;
import hotidle.network.Group;
import hotidle.part.FaceGap;
import java.util.List;
import java.util.stream.Stream;

/** The words of a {@link FaceGap}. */
final class FaceGapKind {

    private FaceGapKind() {}

    private static final String OWN = "no faces-of is given";

    private static final List<String> SIZES = List.of("width", "clearance");

    /** There is no other gap here whose faces it could have, so that it needs sizes of its own. */
    private static final Alone ALONE = Alone.AS_IN_A_CIRCUIT
            .without("there is no other part here", "faces-of")
            .without("a gap on its own stands", "turns")
            .asked(key -> SIZES.contains(key.name()) ? key.demanded() : key);

    static final Kind KIND = Kind.through(
                    "face-gap",
                    FaceGap.class,
                    "The leak along the face of a gear or a thrust washer, outwards or inwards.",
                    Group.PUMP,
                    "side of higher pressure",
                    "side of lower pressure",
                    Stream.concat(
                                    Stream.of(
                                            diameter(
                                                    "inner-diameter",
                                                    "diameter on the inner side of the face that seals"),
                                            diameter(
                                                    "outer-diameter",
                                                    "diameter on the outer side of the face that seals"),
                                            width("width", "width of the gear or washer")
                                                    .neededWhere(OWN),
                                            clearance("clearance", "depth of the pocket less that width")
                                                    .neededWhere(OWN),
                                            Key.of(
                                                            "faces-of",
                                                            new Type.Name(Names.FACE_GAP),
                                                            "the gap at the same faces in another sector: width, clearance, materials and"
                                                                    + " the temperature of measurement are then that gap's")
                                                    .neededWhere("width and clearance are not given"),
                                            Key.quantity(
                                                            "share",
                                                            Dimension.RATIO,
                                                            "share of the clearance on the face that leaks")
                                                    .byDefault(
                                                            "50 %",
                                                            "the gear floats in the middle of its pocket (assumed)")
                                                    .allowed("1 %", "100 %"),
                                            sector("sector", "share of the circle that is under pressure")
                                                    .byDefault("100 %", "all round (assumed)"),
                                            Key.count("faces", "faces that leak side by side")
                                                    .byDefault("1", "one face (assumed)")
                                                    .allowed("1", "4"),
                                            Key.quantity(
                                                            "turns",
                                                            Dimension.RATIO,
                                                            "speed of the face over the engine's; what its oil shears all round"
                                                                    + " belongs to the pump's power, and is counted where the faces"
                                                                    + " have their sizes")
                                                    .byDefault("0", "a face that stands (assumed)")
                                                    .allowed("0", "10")),
                                    FitKeys.pocketMaterials().stream())
                            .toList(),
                    FaceGapKind::make,
                    physics())
            .example("inner-diameter=50mm outer-diameter=70mm width=12mm clearance=0.05mm --drop 150psi")
            .passing(Passing.LEAK)
            .role(Names.FACE_GAP)
            .alone(ALONE)
            .needs(FaceGapKind::needs)
            .rule(FaceGapKind::check)
            .drawn(GraphicSymbol.GAP);

    private static LawText physics() {
        return LawText.of(
                        "q = π·h³·Δp/(6·μ·ln(ro/ri)) over its sector, h the share of the clearance when warm; before it the loss of"
                                + " entry and exit; where it turns it takes π·μ·ω²·(ro⁴ − ri⁴)/(2·h) a face, in"
                                + " deep cold less, for the film then heats itself",
                        "B. Massey, J. Ward-Smith, Mechanics of Fluids, Ex. 6.2 (found); entry and exit: "
                                + LawText.SLOT_ENTRY
                                + "; drag: C. Schaschke, Fluid Mechanics: Worked Examples for Engineers, ex. 3.20"
                                + " (found)")
                .checkedIn("Gap");
    }

    static Key diameter(String name, String meaning) {
        return Key.quantity(name, Dimension.LENGTH, meaning)
                .allowed("1 mm", "1 m")
                .usual("5 mm", "300 mm");
    }

    static Key width(String name, String meaning) {
        return Key.quantity(name, Dimension.LENGTH, meaning)
                .allowed("0.5 mm", "500 mm")
                .usual("2 mm", "60 mm")
                .measured("micrometer, at four places");
    }

    static Key clearance(String name, String meaning) {
        return Key.size(name, meaning)
                .allowed("0.1 um", "5 mm")
                .usual("10 um", "0.3 mm")
                .measured("straightedge over the pocket and feeler on the gear");
    }

    static Key sector(String name, String meaning) {
        return Key.quantity(name, Dimension.RATIO, meaning).allowed("0.1 %", "100 %");
    }

    /** Notes an error where an outer diameter is not above its inner one. */
    static void rising(Attributes given, String inner, String outer) {
        if (given.number(outer) <= given.number(inner) * 1.0001) {
            given.error(
                    ProblemCode.DIAMETERS_EXCHANGED,
                    outer,
                    "has " + outer + " no larger than its " + inner,
                    "the outer one must be larger",
                    "exchange the two, or measure again; diameters, not radii");
        }
    }

    private static void needs(Attributes given) {
        for (String size : SIZES) {
            if (given.lacks("faces-of") && given.lacks(size)) {
                given.error(
                        ProblemCode.MISSING_KEY,
                        size,
                        "has no " + size,
                        "oil passes between pocket and gear",
                        Remedy.set("add '", size, "...")
                                .then("' as measured, or faces-of: and the gap at the same faces"));
            } else if (given.has("faces-of") && given.has(size)) {
                given.error(
                        ProblemCode.FACES_OF_ANOTHER_SIZE,
                        size,
                        "has a " + size + " of its own and the faces of another gap",
                        "the same faces have one width and one clearance",
                        "leave " + size + " out here, or faces-of");
            }
        }
        if (given.has("faces-of") && given.stands("turns")) {
            given.error(
                    ProblemCode.FACES_OF_ANOTHER_SPEED,
                    "turns",
                    "has a speed of its own and the faces of another gap",
                    "the same faces turn at one speed, and their drag is counted once",
                    "write turns at that gap");
        }
    }

    private static void check(Attributes given, Kind.Context around) {
        rising(given, "inner-diameter", "outer-diameter");
        Attributes faces = faces(given, around);
        if (faces.broken()) {
            given.breakIt();
        } else if (!SIZES.stream().allMatch(faces::has)) {
            given.error(
                    ProblemCode.FACES_WITHOUT_SIZES,
                    "faces-of",
                    "has the faces of a gap that has no sizes of its own",
                    "width and clearance are written once, where the faces are measured",
                    "name the gap that has them");
        }
    }

    /** What has the sizes of the faces. */
    private static Attributes faces(Attributes given, Kind.Context around) {
        return given.wordIf("faces-of").map(around.parts()::get).orElse(given);
    }

    private static FaceGap make(Attributes given, Kind.Context around) {
        Attributes faces = faces(given, around);
        return new FaceGap(
                given.number("inner-diameter") / 2,
                given.number("outer-diameter") / 2,
                FitKeys.pocket(faces, around, faces.number("width"), faces.number("clearance")),
                given.number("share"),
                given.number("sector"),
                given.count("faces"),
                given.has("faces-of") ? 0 : given.number("turns"));
    }
}
