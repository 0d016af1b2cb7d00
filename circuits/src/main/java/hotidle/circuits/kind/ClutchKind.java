package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.network.Group;
import hotidle.part.Clutch;
import hotidle.part.Lining;
import hotidle.part.OilRing;
import java.util.List;
import java.util.Optional;

/** The words of a {@link Clutch}. */
final class ClutchKind {

    private ClutchKind() {}

    /** A diameter that is not given. */
    private static final String NONE = "0 mm";

    static final Kind KIND = Kind.through(
                    "clutch",
                    Clutch.class,
                    "A multi-plate clutch: what its piston seals let by, and the torque that it holds.",
                    Group.RINGS,
                    "the space behind its piston",
                    "the sump",
                    PumpKeys.all(List.of(servo(), plates(), seal())),
                    (given, around) -> make(given),
                    physics())
            .example("piston-area=150cm2 return-force=900N surfaces=14 lining-inner-diameter=130mm "
                    + "lining-outer-diameter=164mm seal-diameter=160mm seal-gap=2um --drop 150psi")
            .turning()
            .passing(Passing.LEAK)
            .role(Names.CLUTCH)
            .alone(Alone.AS_IN_A_CIRCUIT.without("there is no other part here", "pack-feed"))
            .rule((given, around) -> check(given))
            .drawn(GraphicSymbol.CLUTCH);

    private static LawText physics() {
        return LawText.of(
                        "torque = μ·z·r·(p·A − F + head), r = (ro + ri)/2 run in, ⅔·(ro³ − ri³)/(ro² − ri²) new; head of the turning oil"
                                + " = π·ρ·ω²·[(Ro⁴ − Ri⁴)/4 − r0²·(Ro² − Ri²)/2], less that of the balance chamber; seals leak as an"
                                + " annular gap, a bleed as a hole",
                        "R. S. Khurmi, J. K. Gupta, Theory of Machines, §10.32 (from memory); head: J. F. Douglas, J. M. Gasiorek,"
                                + " J. A. Swaffield, Fluid Mechanics, Ex. 6.9 (found); leak: Merritt 1967 §2-5 and §3-4 (from memory)")
                .checkedIn("Clutch");
    }

    /** Keys of the piston that applies it. */
    static List<Key> servo() {
        return List.of(
                Key.quantity("piston-area", Dimension.AREA, "area of the piston")
                        .allowed("0.1 cm2", "5000 cm2")
                        .usual("20 cm2", "300 cm2")
                        .measured("pi/4 times outer less inner seal diameter, each squared"),
                Key.quantity("return-force", Dimension.FORCE, "force of the return spring with the clutch applied")
                        .allowed("0 N", "20000 N")
                        .usual("100 N", "3000 N"));
    }

    private static List<Key> plates() {
        return List.of(
                Key.count("surfaces", "rubbing surfaces").allowed("1", "40").usual("2", "20"),
                FaceGapKind.diameter("lining-inner-diameter", "inside diameter of the lining"),
                FaceGapKind.diameter("lining-outer-diameter", "outside diameter of the lining"),
                friction(),
                sliding(),
                Key.choice("linings", "whether they press evenly or are run in", "new", "run-in")
                        .byDefault("run-in", "run-in linings carry a little less (assumed)"),
                factor(),
                turning("piston-outer-diameter", "outside diameter of the piston's oil space, 0 mm: not given")
                        .byDefault(NONE, "oil that turns with the drum is counted as giving no pressure (assumed)")
                        .neededWhere("piston-inner-diameter is given"),
                turning("piston-inner-diameter", "inside diameter of the piston's oil space")
                        .neededWhere("piston-outer-diameter is given"),
                turning("oil-diameter", "diameter at which oil enters the turning drum; left out: the piston's inside")
                        .optional(),
                turning("balance-outer-diameter", "outside diameter of the balance chamber, 0 mm for none")
                        .byDefault(NONE, "no balance chamber (assumed)")
                        .neededWhere("balance-inner-diameter is given"),
                turning("balance-inner-diameter", "inside diameter of the balance chamber")
                        .neededWhere("balance-outer-diameter is given"),
                turning("balance-oil-diameter", "diameter at which the balance chamber spills; left out: its inside")
                        .optional(),
                Key.quantity(
                                "pack-clearance",
                                Dimension.LENGTH,
                                "running clearance between each lining and its plate, pack open; left out: its drag is not counted")
                        .optional()
                        .allowed("0.01 mm", "3 mm")
                        .usual("0.08 mm", "0.6 mm"),
                Key.of(
                                "pack-feed",
                                new Type.Name(Names.PART),
                                "lube-branch whose oil runs through the open pack; left out: it is taken as full")
                        .optional());
    }

    static Key sliding() {
        return Key.quantity("sliding-friction", Dimension.RATIO, "coefficient of friction while it slips")
                .byDefault("0.12", "0.12 to 0.14 with the right oil (common practice)")
                .allowed("0.01", "1")
                .usual("0.07", "0.2");
    }

    /** Keys of what leaks at the piston. */
    static List<Key> seal() {
        return List.of(
                FaceGapKind.diameter("seal-diameter", "diameter of the piston's seal"),
                Key.size("seal-gap", "radial gap that leaks as much as the seals do")
                        .allowed("0.01 um", "1 mm")
                        .usual("0.5 um", "60 um")
                        .foundBy("an air test of the piston in its drum, a new seal beside it; blank where in doubt"),
                Key.quantity("seal-length", Dimension.LENGTH, "length of the seal along the flow")
                        .byDefault("2 mm", "a lip or square ring (assumed)")
                        .allowed("0.05 mm", "50 mm")
                        .usual("0.5 mm", "10 mm"),
                Key.quantity("bleed", Dimension.LENGTH, "diameter of a bleed hole in piston or drum, 0 mm for none")
                        .byDefault("0 mm", "none (assumed)")
                        .allowed("0 mm", "10 mm")
                        .usual("0 mm", "1.5 mm"));
    }

    static Clutch.Seal seal(Attributes given) {
        return new Clutch.Seal(
                given.number("seal-diameter"),
                given.number("seal-gap"),
                given.number("seal-length"),
                given.number("bleed"));
    }

    static Key friction() {
        return Key.quantity("friction", Dimension.RATIO, "static coefficient of friction of the lining")
                .byDefault("0.12", "0.11 to 0.12 is used for capacity (common practice)")
                .allowed("0.01", "1")
                .usual("0.07", "0.2");
    }

    /** Carrying capacity wanted over what is asked; margins judge by it. */
    static Key factor() {
        return Key.quantity(
                        "capacity-factor", Dimension.RATIO, "torque that it should carry over the torque asked of it")
                .byDefault("1.2", "1.2 to 1.5 on holding clutches (common practice)")
                .allowed("0.1", "10")
                .usual("1", "3");
    }

    private static Key turning(String name, String meaning) {
        return Key.quantity(name, Dimension.LENGTH, meaning)
                .allowed("0 mm", "1 m")
                .usual("0 mm", "300 mm");
    }

    private static void check(Attributes given) {
        FaceGapKind.rising(given, "lining-inner-diameter", "lining-outer-diameter");
        ring(given, "piston-inner-diameter", "piston-outer-diameter", "oil-diameter");
        ring(given, "balance-inner-diameter", "balance-outer-diameter", "balance-oil-diameter");
        if (given.number("balance-outer-diameter") > 0 && !(given.number("piston-outer-diameter") > 0)) {
            given.error(
                    ProblemCode.BALANCE_WITHOUT_OIL_SPACE,
                    "balance-outer-diameter",
                    "has a balance chamber and no oil space behind its piston",
                    "the chamber balances the oil that turns behind the piston",
                    "add piston-inner-diameter and piston-outer-diameter");
        }
    }

    private static void ring(Attributes given, String inner, String outer, String oil) {
        boolean started = given.number(outer) > 0;
        if (started != given.has(inner)) {
            String missing = started ? inner : outer;
            given.error(
                    ProblemCode.OIL_SPACE_HALF_GIVEN,
                    started ? outer : inner,
                    "needs " + missing + " too",
                    "turning oil presses between an inside and an outside diameter",
                    "add " + missing + ", or leave both out");
        } else if (!started && given.has(oil)) {
            given.error(
                    ProblemCode.OIL_DIAMETER_WITHOUT_SPACE,
                    oil,
                    "needs " + inner + " and " + outer + " too",
                    "",
                    "add both, or leave " + oil + " out");
        } else if (started) {
            FaceGapKind.rising(given, inner, outer);
            if (given.numberIf(oil).orElse(0) > given.number(inner)) {
                given.error(
                        ProblemCode.OIL_DIAMETER_TOO_LARGE,
                        oil,
                        "has " + oil + " larger than its " + inner,
                        "oil enters inside the piston or at its inner edge",
                        "measure both again; diameters, not radii");
            }
        }
    }

    private static Optional<OilRing> oil(Attributes given, String inner, String outer, String oil) {
        if (!(given.number(outer) > 0)) {
            return Optional.empty();
        }
        double inside = given.number(inner) / 2;
        double surface = given.has(oil) ? given.number(oil) / 2 : inside;
        return Optional.of(new OilRing(inside, given.number(outer) / 2, surface));
    }

    private static Clutch make(Attributes given) {
        return new Clutch(
                new Clutch.Piston(
                        given.number("piston-area"),
                        given.number("return-force"),
                        oil(given, "piston-inner-diameter", "piston-outer-diameter", "oil-diameter"),
                        oil(given, "balance-inner-diameter", "balance-outer-diameter", "balance-oil-diameter")),
                new Lining(
                        given.count("surfaces"),
                        given.number("lining-inner-diameter") / 2,
                        given.number("lining-outer-diameter") / 2,
                        given.number("friction"),
                        given.number("sliding-friction"),
                        given.word("linings").equals("run-in")),
                given.number("capacity-factor"),
                seal(given),
                given.has("pack-clearance")
                        ? Optional.of(new Clutch.OpenPack(given.number("pack-clearance"), given.wordIf("pack-feed")))
                        : Optional.empty());
    }
}
