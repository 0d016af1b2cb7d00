package hotidle.circuits.section;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.ProblemCode;
import hotidle.geartrain.Coupling;
import hotidle.geartrain.GearTrain;
import hotidle.geartrain.Link;
import hotidle.geartrain.PlanetarySet;
import hotidle.geartrain.ShaftStrength;
import hotidle.geartrain.StressConcentration;
import hotidle.geartrain.WedgeStrength;
import hotidle.geartrain.Wheel;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** What bears a torque in the gear train: keys of ratings and of shafts, and how they are read. */
final class LinkKeys {

    private LinkKeys() {}

    private static final List<String> STRENGTH = List.of("outer-diameter", "yield", "shear-endurance");

    private static final List<String> WEDGE =
            List.of("wedges", "wedge-radius", "wedge-length", "race-diameter", "strut-angle", "contact-stress");

    private static final List<String> TANG =
            List.of("tangs", "tang-height", "tang-length", "tang-diameter", "bearing-stress");

    private static final String STRENGTH_ASKED = "its strength is to be judged without a rating";

    static final Shape RATING = new Shape(
            "rating",
            List.of(
                    Key.of(
                            "carries",
                            new Type.FreeText(),
                            "what loads it: case, the input or output, a shaft or clutch, or set.carrier, set.sun, set.ring; for"
                                    + " planet pins set.carrier; pump for the drive of the pump"),
                    rated("torque that it bears, by its maker or by your own test; in place of the tangs below")
                            .neededWhere("no tangs are given"),
                    Key.count("tangs", "flats, tangs or keys that carry alike, as those of a pump drive")
                            .neededWhere(STRENGTH_ASKED)
                            .allowed("1", "60"),
                    length("tang-height", "height of the face that bears, along the radius", "0.1 mm")
                            .neededWhere(STRENGTH_ASKED),
                    length("tang-length", "its length along the axis", "0.1 mm").neededWhere(STRENGTH_ASKED),
                    length("tang-diameter", "diameter on which the middle of these faces lies", "1 mm")
                            .neededWhere(STRENGTH_ASKED),
                    pressure("bearing-stress", "stress that its face bears, by your material")
                            .neededWhere(STRENGTH_ASKED)));

    /** The same shape without what says where something carries: what a build may change of it. */
    static Shape strengthOf(Shape shape) {
        return new Shape(
                shape.what(),
                shape.keys().stream()
                        .filter(key -> !List.of("joins", "carries").contains(key.name()))
                        .toList());
    }

    static Key rated(String meaning) {
        return Key.quantity("rated-torque", Dimension.TORQUE, meaning)
                .allowed("1 N.m", "1000000 N.m")
                .usual("50 N.m", "20000 N.m");
    }

    static List<Key> ofShaft(Key joins) {
        return List.of(
                joins,
                rated("its rating, in place of the sizes below; left out with them: not judged")
                        .optional(),
                length("outer-diameter", "diameter at its thinnest place; at a spline that of its root", "1 mm")
                        .neededWhere(STRENGTH_ASKED),
                length("inner-diameter", "of its bore", "0 mm").byDefault("0 mm", "a solid shaft (assumed)"),
                pressure("yield", "tensile yield strength of your material").neededWhere(STRENGTH_ASKED),
                pressure("shear-endurance", "endurance strength in shear, with size, surface and load counted")
                        .neededWhere(STRENGTH_ASKED),
                Key.quantity(
                                "stress-concentration",
                                Dimension.RATIO,
                                "of a notch in torsion that you know, as a groove; of that, shoulder, hole and spline the sharpest"
                                        + " counts")
                        .byDefault("1", "no notch (assumed)")
                        .allowed("1", "6")
                        .usual("1", "4"),
                length("shoulder-diameter", "larger diameter at its shoulder, where it has one", "1 mm")
                        .optional(),
                length("fillet-radius", "radius of the fillet at the shoulder", "0.05 mm")
                        .neededWhere("shoulder-diameter is given"),
                length("hole-diameter", "of a hole right through it, as an oil hole", "0.2 mm")
                        .optional(),
                length("spline-diameter", "over the teeth of its spline; that of their roots is outer-diameter", "1 mm")
                        .optional(),
                length("spline-radius", "radius at the roots of the spline's teeth", "0.02 mm")
                        .neededWhere("spline-diameter is given"));
    }

    static List<Key> ofOneWay(Key joins) {
        return List.of(
                joins,
                rated("its maker's rating, in place of the sizes below; left out with them: not judged")
                        .optional(),
                Key.count("wedges", "rollers or sprags that carry")
                        .neededWhere(STRENGTH_ASKED)
                        .allowed("1", "100"),
                length("wedge-radius", "radius of the roller, or of the sprag's face, on the inner race", "0.2 mm")
                        .neededWhere(STRENGTH_ASKED),
                length("wedge-length", "length of its line of contact", "0.2 mm")
                        .neededWhere(STRENGTH_ASKED),
                length("race-diameter", "diameter of the inner race", "2 mm").neededWhere(STRENGTH_ASKED),
                Key.quantity("strut-angle", Dimension.ANGLE, "angle of the strut to the radius at the inner race")
                        .neededWhere(STRENGTH_ASKED)
                        .allowed("0.5 deg", "15 deg")
                        .usual("2 deg", "6 deg"),
                pressure("contact-stress", "largest pressure of the contact that your material bears")
                        .neededWhere(STRENGTH_ASKED));
    }

    private static Key length(String name, String meaning, String least) {
        return Key.quantity(name, Dimension.LENGTH, meaning).allowed(least, "500 mm");
    }

    private static Key pressure(String name, String meaning) {
        return Key.quantity(name, Dimension.PRESSURE, meaning).allowed("10 MPa", "4000 MPa");
    }

    /** What bears a torque and has a rating; empty where something is faulty. */
    static Optional<List<Link>> links(Attributes group, GearTrain train) {
        List<Link> links = new ArrayList<>();
        for (Attributes shaft : group.groups("shafts").values()) {
            rating(shaft).ifPresent(rating -> links.add(new Link(shaft.name(), shaft.name(), rating)));
        }
        for (Attributes oneWay : group.groups("one-way-clutches").values()) {
            ofOneWay(oneWay).ifPresent(rating -> links.add(new Link(oneWay.name(), oneWay.name(), rating)));
        }
        Set<String> loaded = loaded(train);
        for (Attributes rating : group.groups("ratings").values()) {
            String carries = rating.text("carries");
            if (!rating.broken() && !loaded.contains(carries)) {
                rating.error(
                        ProblemCode.NOTHING_TO_CARRY,
                        "carries",
                        "carries '" + carries + "', which is nothing in the gear train that is loaded",
                        "",
                        Nearest.mend(carries, List.copyOf(loaded)));
            }
            ofTangs(rating).ifPresent(torque -> links.add(new Link(rating.name(), carries, torque)));
        }
        return group.broken() ? Optional.empty() : Optional.of(links);
    }

    private static Set<String> loaded(GearTrain train) {
        Set<String> names = new LinkedHashSet<>(List.of(Coupling.CASE, train.input(), train.output(), Link.PUMP));
        train.couplings().forEach(one -> names.add(one.name()));
        for (PlanetarySet set : train.sets()) {
            names.add(set.name() + ".carrier");
            set.wheels().stream()
                    .filter(wheel -> !wheel.isPlanet())
                    .map(Wheel::name)
                    .forEach(wheel -> names.add(set.name() + "." + wheel));
        }
        return names;
    }

    /** Whether a link is rated as it stands, or by none of some keys; where by some of them, the others are asked for. */
    private static boolean ratedAlone(Attributes link, List<String> keys, String why) {
        if (link.broken() || link.stands("rated-torque") || keys.stream().noneMatch(link::stands)) {
            return true;
        }
        keys.stream().filter(key -> !link.stands(key)).forEach(key -> link.missing(key, why, "add '" + key + ": ...'"));
        return link.broken();
    }

    private static OptionalDouble asRated(Attributes link) {
        return link.broken() ? OptionalDouble.empty() : link.numberIf("rated-torque");
    }

    private static OptionalDouble ofOneWay(Attributes oneWay) {
        if (ratedAlone(oneWay, WEDGE, "count, sizes, angle and stress together say what rollers or sprags bear")) {
            return asRated(oneWay);
        }
        return OptionalDouble.of(new WedgeStrength(
                        oneWay.count("wedges"),
                        oneWay.number("wedge-radius"),
                        oneWay.number("wedge-length"),
                        oneWay.number("race-diameter") / 2,
                        oneWay.number("strut-angle"),
                        oneWay.number("contact-stress"))
                .rating());
    }

    /** Faces that bear alike on a circle: T = z·σ·h·l·d/2. */
    private static OptionalDouble ofTangs(Attributes rating) {
        if (!rating.broken() && TANG.stream().noneMatch(rating::stands) && !rating.stands("rated-torque")) {
            rating.missing("rated-torque", "nothing says what it bears", "add 'rated-torque: ...', or tangs");
        }
        if (ratedAlone(rating, TANG, "count, sizes and stress together say what flats or tangs bear")) {
            return asRated(rating);
        }
        return OptionalDouble.of(rating.count("tangs")
                * rating.number("bearing-stress")
                * rating.number("tang-height")
                * rating.number("tang-length")
                * rating.number("tang-diameter")
                / 2);
    }

    private static OptionalDouble rating(Attributes shaft) {
        if (ratedAlone(shaft, STRENGTH, "diameter, yield and endurance together say what a shaft bears")) {
            return asRated(shaft);
        }
        needs(shaft, "shoulder-diameter", "fillet-radius", "a shoulder's stress concentration follows from its fillet");
        needs(shaft, "spline-diameter", "spline-radius", "a spline's stress concentration follows from its roots");
        return shaft.broken() ? OptionalDouble.empty() : strength(shaft);
    }

    private static void needs(Attributes shaft, String given, String other, String why) {
        if (shaft.stands(given) && !shaft.stands(other)) {
            shaft.missing(other, why, "add '" + other + ": ...'");
        }
    }

    /** Of its sharpest notch. */
    private static double notch(Attributes shaft, double outer, double inner) {
        double sharpest = shaft.number("stress-concentration");
        if (shaft.has("shoulder-diameter")) {
            double shoulder = StressConcentration.shoulder(
                    shaft.number("shoulder-diameter"), outer, shaft.number("fillet-radius"));
            sharpest = Math.max(sharpest, shoulder);
        }
        if (shaft.has("hole-diameter")) {
            sharpest = Math.max(sharpest, StressConcentration.hole(shaft.number("hole-diameter"), outer, inner));
        }
        if (shaft.has("spline-diameter")) {
            double spline = StressConcentration.spline(
                    shaft.number("spline-diameter"), outer, inner, shaft.number("spline-radius"));
            sharpest = Math.max(sharpest, spline);
        }
        return sharpest;
    }

    private static OptionalDouble strength(Attributes shaft) {
        try {
            double outer = shaft.number("outer-diameter");
            double inner = shaft.number("inner-diameter");
            return OptionalDouble.of(new ShaftStrength(
                            outer,
                            inner,
                            shaft.number("yield"),
                            shaft.number("shear-endurance"),
                            notch(shaft, outer, inner))
                    .rating());
        } catch (IllegalArgumentException impossible) {
            shaft.error(
                    ProblemCode.NO_SUCH_SHAFT,
                    "outer-diameter",
                    "has sizes that make no shaft",
                    impossible.getMessage(),
                    "");
            return OptionalDouble.empty();
        }
    }
}
