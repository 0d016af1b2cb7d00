package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.network.Group;
import hotidle.part.FaceGap;
import java.util.stream.Stream;

/** The words of a {@link FaceGap}. */
final class FaceGapKind {

    private FaceGapKind() {}

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
                                            width("width", "width of the gear or washer"),
                                            clearance("clearance", "depth of the pocket less that width"),
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
                                                    .allowed("1", "4")),
                                    FitKeys.pocketMaterials().stream())
                            .toList(),
                    FaceGapKind::make,
                    physics())
            .example("inner-diameter=50mm outer-diameter=70mm width=12mm clearance=0.05mm --drop 150psi")
            .passing(Passing.LEAK)
            .rule((given, around) -> rising(given, "inner-diameter", "outer-diameter"));

    private static LawText physics() {
        return LawText.of(
                        "q = π·h³·Δp/(6·μ·ln(ro/ri)) over its sector, h the share of the clearance when warm; before it the loss of"
                                + " entry and exit",
                        "B. Massey, J. Ward-Smith, Mechanics of Fluids, Ex. 6.2 (found); entry and exit: "
                                + LawText.SLOT_ENTRY)
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

    private static FaceGap make(Attributes given, Kind.Context around) {
        return new FaceGap(
                given.number("inner-diameter") / 2,
                given.number("outer-diameter") / 2,
                FitKeys.pocket(given, around, given.number("width"), given.number("clearance")),
                given.number("share"),
                given.number("sector"),
                given.count("faces"));
    }
}
