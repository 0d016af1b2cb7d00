package hotidle.circuits.kind;

import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
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
                                    .allowed("1", "1000")),
                    (given, around) -> new Orifice(
                            given.number("diameter"),
                            given.number("length"),
                            given.numberIf("cd"),
                            given.count("count")),
                    physics())
            .example("diameter=2mm --drop 150psi")
            .passing(Passing.THROTTLE);

    private static LawText physics() {
        return LawText.of(
                        "q = Cd·A·√(2·Δp/ρ) from creeping flow on; from l/d 0.5 a short tube, unless cd is given",
                        "H. E. Merritt, Hydraulic Control Systems, 1967, §3-4; short tube: the same in M. G. Rabie, Fluid Power"
                                + " Engineering, eq. 2.40 and 2.41; creeping flow: Z. Dagan, S. Weinbaum, R. Pfeffer, J. Fluid Mech."
                                + " 115 (1982) 505 (from memory)")
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
