package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.network.Group;
import hotidle.part.Passage;
import java.util.List;

/** The words of a {@link Passage}. */
final class PassageKind {

    private PassageKind() {}

    static final Kind KIND = Kind.through(
                    "passage",
                    Passage.class,
                    "A drilled or cast passage, or a hose.",
                    Group.VALVE_BODY,
                    "where the oil comes from",
                    "where it goes",
                    List.of(
                            Key.quantity("diameter", Dimension.LENGTH, "inside diameter")
                                    .allowed("0.1 mm", "1 m")
                                    .usual("2 mm", "30 mm"),
                            Key.quantity("length", Dimension.LENGTH, "length along the flow")
                                    .allowed("0.1 mm", "100 m")
                                    .usual("2 mm", "5 m"),
                            Key.quantity("roughness", Dimension.LENGTH, "mean height of the wall's roughness")
                                    .byDefault(
                                            "10 um",
                                            "a drilled passage (assumed); cast iron has 0.25 mm (common practice)")
                                    .allowed("0 um", "5 mm")
                                    .usual("0 um", "0.5 mm"),
                            Key.quantity(
                                            "losses",
                                            Dimension.RATIO,
                                            "sum of the loss coefficients of bends, entry and exit")
                                    .byDefault("1.5", "sharp entry 0.5 and exit 1.0 (common practice)")
                                    .allowed("0", "1000")
                                    .usual("0", "30")),
                    (given, around) -> new Passage(
                            given.number("diameter"),
                            given.number("length"),
                            given.number("roughness"),
                            given.number("losses")),
                    physics())
            .example("diameter=8mm length=1.2m --drop 5psi")
            .passing(Passing.WIDE)
            .rule((given, around) -> check(given))
            .drawn(GraphicSymbol.PASSAGE);

    private static LawText physics() {
        return LawText.of(
                        "Δp = (f·L/d + ΣK)·ρ·v²/2, f by Churchill from laminar to turbulent",
                        "S. W. Churchill, Chemical Engineering 84 (1977) 91 (from memory)")
                .checkedIn("Passage");
    }

    private static void check(Attributes given) {
        if (given.number("roughness") > given.number("diameter") / 4) {
            String why = "roughness is at most a quarter of the diameter";
            given.error(ProblemCode.WALLS_TOO_ROUGH, "roughness", "has walls too rough for its diameter", why, "");
        }
    }
}
