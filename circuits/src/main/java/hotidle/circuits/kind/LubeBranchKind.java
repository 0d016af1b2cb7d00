package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Remedy;
import hotidle.network.Group;
import hotidle.part.AnnularGap;
import hotidle.part.LubeBranch;
import hotidle.part.Orifice;
import java.util.List;
import java.util.stream.Stream;

/** The words of a {@link LubeBranch}. */
final class LubeBranchKind {

    private LubeBranchKind() {}

    private static final String BUSHING = "no diameter is given";
    private static final List<String> GAP = List.of("bore", "valve", "length");

    static final Kind KIND = Kind.through(
                    "lube-branch",
                    LubeBranch.class,
                    "A branch of the lubrication: a hole, or the gap of a plain bushing, and the flow that it needs.",
                    Group.LUBE,
                    "the lubrication passage",
                    "the sump",
                    Stream.concat(
                                    Stream.of(
                                            OrificeKind.diameter().neededWhere("no bore is given"),
                                            OrificeKind.knownCoefficient(),
                                            Key.count("count", "equal holes side by side")
                                                    .byDefault("1", "one hole (assumed)")
                                                    .allowed("1", "1000")),
                                    Stream.concat(
                                            FitKeys.boreAndValve().stream()
                                                    .map(key -> key.name().equals("bore")
                                                                    || key.name()
                                                                            .equals("valve")
                                                            ? key.neededWhere(BUSHING)
                                                            : key),
                                            Stream.of(
                                                    Key.quantity(
                                                                    "length",
                                                                    Dimension.LENGTH,
                                                                    "length of the bushing; of the hole, where it is one and longer than a sharp edge")
                                                            .neededWhere(BUSHING)
                                                            .allowed("0 mm", "1 m")
                                                            .usual("0 mm", "60 mm"),
                                                    FitKeys.eccentricity(),
                                                    Key.quantity("needs", Dimension.FLOW, "flow that it needs")
                                                            .byDefault(
                                                                    "0.3 L/min",
                                                                    "a planetary set at light load has 0.3 to 0.5 L/min (common practice)")
                                                            .allowed("0 L/min", "100 L/min")
                                                            .usual("0.05 L/min", "10 L/min"))))
                            .toList(),
                    LubeBranchKind::make,
                    physics())
            .passing(Passing.BY_STATE)
            .example("diameter=1.5mm --drop 10psi")
            .needs(LubeBranchKind::needs)
            .rule((given, around) -> check(given))
            .drawn(GraphicSymbol.LUBRICATED);

    private static LawText physics() {
        return LawText.of(
                        "a hole as orifice has it, or a gap as annular-gap has it",
                        "those of orifice and annular-gap: H. E. Merritt, Hydraulic Control Systems, 1967, §3-4 and §2-5 (from memory)")
                .checkedIn("Orifice");
    }

    private static void needs(Attributes given) {
        if (given.lacks("diameter") && GAP.stream().anyMatch(given::lacks)) {
            either(given);
        }
    }

    private static void check(Attributes given) {
        boolean hole = given.has("diameter");
        boolean gap = given.numberIf("length").orElse(0) > 0;
        if (hole ? given.has("bore") || given.has("valve") : !gap) {
            either(given);
        } else if (!hole) {
            ValveFitsItsBore.check(given, "bore", "valve");
        }
    }

    private static void either(Attributes given) {
        given.error(
                ProblemCode.NOT_ONE_END_OF_BRANCH,
                "diameter",
                "needs either diameter, or bore, valve and length",
                "a branch ends in a hole or in the gap of a bushing",
                Remedy.set("write ", "diameter", "1.2 mm").then(", for example"));
    }

    private static LubeBranch make(Attributes given, Kind.Context around) {
        return new LubeBranch(
                given.has("diameter")
                        ? new Orifice(
                                given.number("diameter"),
                                given.numberIf("length").orElse(0),
                                given.numberIf("cd"),
                                given.count("count"))
                        : new AnnularGap(
                                FitKeys.fit(given, around, "bore", "valve"),
                                given.number("length"),
                                given.number("eccentricity")),
                given.number("needs"));
    }
}
