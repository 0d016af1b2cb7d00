package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Remedy;
import hotidle.network.Group;
import hotidle.part.AnnularGap;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The words of an {@link AnnularGap}. */
final class AnnularGapKind {

    private AnnularGapKind() {}

    private static final String DRAWN_AS = "drawn-as";

    /** There is no valve here whose land it could be, so that it needs sizes of its own. */
    private static final Alone ALONE = Alone.AS_IN_A_CIRCUIT
            .without("there is no other part here", "land-of")
            .without("nothing is drawn of a part on its own", DRAWN_AS)
            .asked(key -> key.type() instanceof Type.Wearing ? key.demanded() : key);

    static final Kind KIND = Kind.through(
                    "annular-gap",
                    AnnularGap.class,
                    "The leak between a bore and the valve or shaft in it.",
                    Group.VALVE_BODY,
                    "side of higher pressure",
                    "side of lower pressure",
                    keys(),
                    (given, around) -> new AnnularGap(
                            FitKeys.fit(given, whole(given, around), around, "bore", "valve"),
                            given.number("length"),
                            given.number("eccentricity"),
                            given.has("count") ? given.count("count") : 1),
                    physics())
            .example("bore=14.06mm valve=14.00mm length=8mm --drop 150psi")
            .passing(Passing.LEAK)
            .alone(ALONE)
            .needs(AnnularGapKind::needs)
            .rule(AnnularGapKind::check)
            .drawn(AnnularGapKind::figure);

    private static List<Key> keys() {
        Key landOf = Key.of(
                        "land-of",
                        new Type.Name(Names.SPOOL_VALVE),
                        "the valve of which it is an end land: bore and valve, where not written here, are then that valve's, and so are"
                                + " the materials and the temperature of measurement")
                .neededWhere("bore or valve is not given");
        return Stream.concat(
                        FitKeys.boreAndValve().stream()
                                .map(key -> key.type() instanceof Type.Wearing
                                        ? key.neededWhere("no land-of is given")
                                        : key),
                        Stream.of(landOf, length(), FitKeys.eccentricity(), count(), drawnAs()))
                .toList();
    }

    /** What has the sizes that are not written in the gap itself. */
    private static Attributes whole(Attributes given, Kind.Context around) {
        return given.wordIf("land-of").map(around.parts()::get).orElse(given);
    }

    private static void needs(Attributes given) {
        List<String> missing = Stream.of("bore", "valve").filter(given::lacks).toList();
        if (given.lacks("land-of") && !missing.isEmpty()) {
            String sizes = String.join(" and no ", missing);
            given.error(
                    missing.size() == 1 ? ProblemCode.MISSING_KEY : ProblemCode.GAP_WITHOUT_SIZES,
                    missing.get(0),
                    "has no " + sizes,
                    "the gap lies between the two",
                    Remedy.set("add '", missing.get(0), "...").then("' as measured, or land-of: and the valve"));
        }
    }

    private static void check(Attributes given, Kind.Context around) {
        Attributes whole = whole(given, around);
        for (String size : List.of("bore", "valve")) {
            if (given.has(size) && given != whole && whole.has(size)) {
                disagree(given, whole, size);
            }
        }
        boolean known = Stream.of("bore", "valve").allMatch(size -> given.has(size) || whole.has(size));
        if (!known) {
            given.breakIt();
        } else if (!given.broken()) {
            ValveFitsItsBore.check(given, whole, "bore", "valve");
        }
    }

    /** Two lands of one size, of which one was changed or measured and the other was not. */
    private static void disagree(Attributes given, Attributes valve, String size) {
        Attributes.Sizes here = given.sizes(size).orElseThrow();
        Attributes.Sizes there = valve.sizes(size).orElseThrow();
        if (here.fresh() == there.fresh() && here.inUse() != there.inUse()) {
            given.warning(
                    ProblemCode.LAND_OF_ANOTHER_SIZE,
                    size,
                    String.format(
                            Locale.ROOT,
                            "has a %s of %.4f mm, but %s, whose land it is, one of %.4f mm",
                            size,
                            here.inUse() * 1000,
                            valve.name(),
                            there.inUse() * 1000),
                    "new, the two have one size; a build has changed one of them only",
                    "leave " + size + " out here, so that it follows " + valve.name() + ", or change both");
        }
    }

    private static PartFigure figure(Attributes given, List<Kind.FlowPath> paths) {
        GraphicSymbol symbol = given.has(DRAWN_AS) ? GraphicSymbol.ACCUMULATOR : GraphicSymbol.GAP;
        return new PartFigure(symbol, PartFigure.ports(paths), List.of());
    }

    private static Key drawnAs() {
        return Key.choice(
                        DRAWN_AS,
                        "what its symbol is in the drawing where it is the piston of something: an accumulator; left out: a leak",
                        "accumulator")
                .optional();
    }

    private static Key count() {
        return Key.count("count", "bores of this size that wear alike, side by side; left out: one")
                .optional()
                .allowed("1", "200");
    }

    private static LawText physics() {
        return LawText.of(
                        "q = π·d·c³·(1 + 1.5·ε²)·Δp/(12·μ·L), c the radial clearance when warm; in series the loss of entry and exit",
                        LawText.SLOT)
                .checkedIn("Gap");
    }

    static Key length() {
        return Key.quantity("length", Dimension.LENGTH, "length of the land that seals")
                .allowed("0.01 mm", "1 m")
                .usual("0.5 mm", "60 mm")
                .measured("depth gauge or calliper: where land and bore overlap");
    }
}
