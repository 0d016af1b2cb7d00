package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Remedy;
import hotidle.law.Bow;
import hotidle.network.Group;
import hotidle.part.FlatGap;
import java.util.List;

/** The words of a {@link FlatGap}. */
final class FlatGapKind {

    private FlatGapKind() {}

    private static final String FEELER = "feeler";

    static final Kind KIND = Kind.through(
                    "flat-gap",
                    FlatGap.class,
                    "The leak between two faces that are bolted together: valve body, separator plate, pump cover.",
                    Group.PLATE,
                    "side of higher pressure",
                    "side of lower pressure",
                    List.of(
                            Key.quantity("width", Dimension.LENGTH, "length of the joint that leaks, across the flow")
                                    .allowed("0.1 mm", "10 m")
                                    .usual("2 mm", "2 m"),
                            Key.quantity(
                                            "length",
                                            Dimension.LENGTH,
                                            "width of the land between the two sides, along the flow")
                                    .allowed("0.01 mm", "1 m")
                                    .usual("0.5 mm", "60 mm"),
                            gap("gap", "height of the gap, bolted down, roughness included", "no gap-in is given"),
                            gap("gap-in", "its height where the oil enters, in place of gap", "gap-out is given"),
                            gap("gap-out", "its height where the oil leaves, in place of gap", "gap-in is given"),
                            Key.size("bow", "height added in the middle of the width")
                                    .byDefault("0 mm", "not bowed (assumed)")
                                    .allowed("0 mm", "2 mm")
                                    .usual("0 mm", "0.15 mm")
                                    .measured("straightedge and feeler, less what the bolts pull out"),
                            Key.size(
                                            FEELER,
                                            "height midway between two bolts, bolted down as in service; gap is then the height at the bolts"
                                                    + " themselves, and the mean of the cube between them leaks")
                                    .optional()
                                    .allowed("0.1 um", "2 mm")
                                    .usual("2 um", "0.2 mm")
                                    .measured("thickest feeler that enters midway between two bolts")),
                    (given, around) -> make(given),
                    physics())
            .example("width=160mm length=4mm gap=6um --drop 150psi")
            .passing(Passing.LEAK)
            .needs(FlatGapKind::needs)
            .rule((given, around) -> check(given))
            .drawn(GraphicSymbol.JOINT);

    private static LawText physics() {
        return LawText.of(
                        "q = w·h³·Δp/(12·μ·L); tapered 2·h1²·h2²/(h1 + h2), bowed the mean of h³, between bolts that of a clamped"
                                + " beam; in series the loss of entry and exit",
                        LawText.SLOT)
                .checkedIn("Gap");
    }

    private static Key gap(String name, String meaning, String where) {
        return Key.size(name, meaning)
                .neededWhere(where)
                .allowed("0.01 um", "2 mm")
                .usual("1 um", "0.15 mm")
                .measured("straightedge and feeler, less what the bolts pull out, plus the roughness");
    }

    private static boolean even(Attributes given) {
        return given.has("gap");
    }

    private static void needs(Attributes given) {
        if (given.lacks("gap") && (given.lacks("gap-in") || given.lacks("gap-out"))) {
            either(given);
        }
    }

    private static void either(Attributes given) {
        given.error(
                ProblemCode.NOT_ONE_GAP,
                "gap",
                "needs either gap, or gap-in and gap-out",
                "a gap is even, or tapers from one height to another",
                Remedy.set("write ", "gap", "5 um").then(", for example"));
    }

    private static void check(Attributes given) {
        boolean tapered = given.has("gap-in") && given.has("gap-out");
        if (even(given) && (given.has("gap-in") || given.has("gap-out"))) {
            either(given);
        } else if (given.has(FEELER)) {
            feeler(given, tapered);
        } else if (tapered && given.number("bow") > 0) {
            given.error(
                    ProblemCode.TAPERED_AND_BOWED,
                    "bow",
                    "is tapered and bowed",
                    "a gap is tapered along the flow or bowed across it, not both",
                    "");
        }
    }

    private static void feeler(Attributes given, boolean tapered) {
        if (tapered || given.number("bow") > 0) {
            given.error(
                    ProblemCode.FEELER_NOT_ALONE,
                    FEELER,
                    "has a feeler between bolts and is tapered or bowed as well",
                    "between bolts a gap rises from gap at the bolts to feeler midway, and in no other way",
                    "write gap and feeler alone");
        } else if (given.number(FEELER) < given.number("gap")) {
            given.error(
                    ProblemCode.FEELER_BELOW_GAP,
                    FEELER,
                    "has a feeler thinner than its gap",
                    "a gap is least at the bolts and highest midway between them",
                    "write as gap what is left at the bolts, roughness included: 4 um, for example");
        }
    }

    private static FlatGap make(Attributes given) {
        if (given.has(FEELER)) {
            double gap = given.number("gap");
            double rise = given.number(FEELER) - gap;
            return new FlatGap(given.number("width"), gap, gap, rise, Bow.BETWEEN, given.number("length"));
        }
        double in = given.number(even(given) ? "gap" : "gap-in");
        double out = given.number(even(given) ? "gap" : "gap-out");
        return new FlatGap(given.number("width"), in, out, given.number("bow"), given.number("length"));
    }
}
