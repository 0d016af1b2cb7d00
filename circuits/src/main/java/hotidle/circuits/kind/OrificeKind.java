package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.law.SharpEdge;
import hotidle.network.Group;
import hotidle.part.Orifice;
import java.util.List;

/** The words of an {@link Orifice}. */
final class OrificeKind {

    private OrificeKind() {}

    static final Kind KIND = Kind.through(
                    "orifice",
                    Orifice.class,
                    "A hole in the separator plate, or a drilled hole.",
                    Group.PLATE,
                    "where the oil comes from",
                    "where it goes",
                    List.of(
                            diameter(),
                            Key.quantity("length", Dimension.LENGTH, "thickness of the plate or depth of the drilling")
                                    .byDefault("0 mm", "a hole in a plate counts as sharp-edged (common practice)")
                                    .allowed("0 mm", "500 mm")
                                    .usual("0 mm", "30 mm"),
                            knownCoefficient(),
                            Key.count("count", "equal holes side by side")
                                    .byDefault("1", "one hole (assumed)")
                                    .allowed("1", "1000"),
                            upstream()),
                    (given, around) -> new Orifice(
                            given.number("diameter"),
                            given.number("length"),
                            given.numberIf("cd"),
                            given.count("count"),
                            given.numberIf("upstream-diameter").orElse(Double.POSITIVE_INFINITY)),
                    physics())
            .example("diameter=2mm --drop 150psi")
            .passing(Passing.THROTTLE)
            .rule((given, around) -> check(given))
            .drawn(GraphicSymbol.ORIFICE);

    private static Key upstream() {
        return Key.quantity(
                        "upstream-diameter",
                        Dimension.LENGTH,
                        "diameter of the channel that leads up to the hole; left out: a chamber in which the oil is at rest")
                .optional()
                .allowed("0.02 mm", "2 m")
                .usual("1 mm", "50 mm");
    }

    private static void check(Attributes given) {
        if (given.numberIf("upstream-diameter").orElse(1) * SharpEdge.WIDEST < given.number("diameter")) {
            given.error(
                    ProblemCode.HOLE_AS_WIDE_AS_CHANNEL,
                    "upstream-diameter",
                    "has a hole nearly as wide as the channel before it",
                    "the coefficient of a hole is published up to 0.75 of the channel's diameter; here up to 0.8",
                    "leave it out where the hole opens from a chamber; a bore that hardly narrows is a passage");
        }
    }

    private static LawText physics() {
        return LawText.of(
                        "q = C·A·√(2·Δp/ρ)/√(1 - (d/D)⁴) from creeping flow on, C by the Reynolds number; from l/d 0.5 a short tube, unless"
                                + " cd is given",
                        "ISO 5167-2:2003, eq. 4, corner tappings (found); short tube: H. E. Merritt, Hydraulic Control Systems, 1967, in"
                                + " M. G. Rabie, Fluid Power Engineering, eq. 2.40 and 2.41 (found); creeping flow: Z. Dagan, S. Weinbaum,"
                                + " R. Pfeffer, J. Fluid Mech. 115 (1982) 505 (from memory)")
                .checkedIn("Orifice");
    }

    static Key diameter() {
        return Key.quantity("diameter", Dimension.LENGTH, "diameter of the hole")
                .allowed("0.01 mm", "1 m")
                .usual("0.3 mm", "15 mm")
                .measured("pin gauge or the shank of a drill that just enters");
    }

    /** A coefficient that takes the place of the law. */
    static Key knownCoefficient() {
        return Key.quantity(
                        "cd",
                        Dimension.RATIO,
                        "discharge coefficient, if it was measured; left out: sharp edge below half a diameter of length,"
                                + " above it the law of a short tube")
                .optional()
                .allowed("0.3", "1");
    }

    static Key dischargeCoefficient(String value, String source) {
        return Key.quantity("cd", Dimension.RATIO, "discharge coefficient")
                .byDefault(value, source)
                .allowed("0.3", "1");
    }
}
