package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.network.Group;
import hotidle.part.Converter;
import java.util.List;
import java.util.Optional;

/** The words of a {@link Converter}. */
final class ConverterKind {

    private ConverterKind() {}

    /** What a lockup clutch is known by. */
    private static final List<String> LOCKUP = List.of("lockup-area", "lockup-radius", "losses.slipping", "losses.on");

    private static final String LOCKING = "there is a lockup clutch";

    static final Kind KIND = Kind.through(
                    "converter",
                    Converter.class,
                    "A torque converter, with a lockup clutch or without: then leave out lockup-area, lockup-radius and the losses"
                            + " slipping and on.",
                    Group.CONVERTER,
                    "the release side, where oil enters with lockup off",
                    "the apply side, where it leaves with lockup off",
                    keys(),
                    (given, around) -> make(given),
                    physics())
            .passing(Passing.BY_STATE)
            .example("losses.off.flow=6L/min losses.off.drop=0.3bar losses.off.viscosity=5mPa.s "
                    + "losses.slipping.flow=6L/min losses.slipping.drop=2bar losses.slipping.viscosity=5mPa.s "
                    + "losses.on.flow=0.6L/min losses.on.drop=5bar losses.on.viscosity=5mPa.s charge-needed=30psi "
                    + "lockup-area=300cm2 lockup-radius=120mm --at from=60psi --at to=55psi")
            .turning()
            .alone(Alone.asking(DutyKey.LOCKUP))
            .rule((given, around) -> check(given))
            .drawn(GraphicSymbol.CONVERTER);

    private static List<Key> keys() {
        return List.of(
                Key.of(
                        "losses",
                        new Type.OneGroup(new Shape(
                                "losses",
                                List.of(
                                        loss("off"),
                                        loss("slipping").neededWhere(LOCKING),
                                        loss("on").neededWhere(LOCKING)))),
                        "one measured point of flow and drop for each state of lockup"),
                Key.quantity("charge-needed", Dimension.PRESSURE, "charge pressure that it needs against cavitation")
                        .allowed("0 psi", "300 psi")
                        .usual("10 psi", "150 psi"),
                Key.quantity("lockup-area", Dimension.AREA, "area of the lockup piston")
                        .neededWhere(LOCKING)
                        .allowed("0 cm2", "2000 cm2")
                        .usual("50 cm2", "700 cm2"),
                Key.quantity("lockup-radius", Dimension.LENGTH, "mean radius of its lining")
                        .neededWhere(LOCKING)
                        .allowed("0 mm", "500 mm")
                        .usual("50 mm", "200 mm"),
                Key.count("lockup-surfaces", "its rubbing surfaces")
                        .byDefault("1", "one lining (common practice)")
                        .allowed("1", "12"),
                ClutchKind.friction(),
                ClutchKind.factor());
    }

    private static LawText physics() {
        return LawText.of(
                "Δp = a·μ·q + b·ρ·q² for each state of lockup; lockup torque = μ·z·r·A·(apply − release)",
                LawText.RATED);
    }

    private static Key loss(String state) {
        Shape rated =
                new Shape("rated point", RatedKeys.keys("50 %", "between a laminar gap and an orifice (assumed)"));
        return Key.of(state, new Type.OneGroup(rated), "with lockup " + state);
    }

    private static boolean has(Attributes given, String key) {
        return key.startsWith("losses.")
                ? given.group("losses").orElseThrow().has(key.substring("losses.".length()))
                : given.has(key);
    }

    /** Whether it has a lockup clutch. */
    static boolean lockup(Attributes given) {
        return LOCKUP.stream().allMatch(key -> has(given, key));
    }

    private static void check(Attributes given) {
        List<String> there = LOCKUP.stream().filter(key -> has(given, key)).toList();
        List<String> missing = LOCKUP.stream().filter(key -> !has(given, key)).toList();
        if (!there.isEmpty() && !missing.isEmpty()) {
            given.error(
                    ProblemCode.LOCKUP_HALF_GIVEN,
                    there.get(0).startsWith("losses") ? "losses" : there.get(0),
                    "has " + PumpKeys.and(there) + ", but no " + PumpKeys.and(missing),
                    "a lockup clutch needs all of them; a converter without lockup has none",
                    "add " + PumpKeys.and(missing) + ", or leave out " + PumpKeys.and(there));
        }
    }

    private static Converter make(Attributes given) {
        Attributes losses = given.group("losses").orElseThrow();
        Optional<Converter.LockupClutch> clutch = lockup(given)
                ? Optional.of(new Converter.LockupClutch(
                        RatedKeys.point(losses.group("slipping").orElseThrow()),
                        RatedKeys.point(losses.group("on").orElseThrow()),
                        given.number("lockup-area"),
                        given.number("lockup-radius"),
                        given.count("lockup-surfaces"),
                        given.number("friction"),
                        given.number("capacity-factor")))
                : Optional.empty();
        return new Converter(RatedKeys.point(losses.group("off").orElseThrow()), given.number("charge-needed"), clutch);
    }
}
