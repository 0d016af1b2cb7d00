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

    static final Shape RATING = new Shape(
            "rating",
            List.of(
                    Key.of(
                            "carries",
                            new Type.FreeText(),
                            "what loads it: case, the input or output, a shaft or clutch, or set.carrier, set.sun, set.ring; for"
                                    + " planet pins set.carrier"),
                    rated("torque that it bears, by its maker or by your own test")));

    static Key rated(String meaning) {
        return Key.quantity("rated-torque", Dimension.TORQUE, meaning)
                .allowed("1 N.m", "1000000 N.m")
                .usual("50 N.m", "20000 N.m");
    }

    static List<Key> ofShaft(Key joins) {
        String strength = "its strength is to be judged without a rating";
        return List.of(
                joins,
                rated("its rating, in place of the sizes below; left out with them: not judged")
                        .optional(),
                length("outer-diameter", "diameter at its thinnest place; at a spline that of its root", "1 mm")
                        .neededWhere(strength),
                length("inner-diameter", "of its bore", "0 mm").byDefault("0 mm", "a solid shaft (assumed)"),
                pressure("yield", "tensile yield strength of your material").neededWhere(strength),
                pressure("shear-endurance", "endurance strength in shear, with size, surface and load counted")
                        .neededWhere(strength),
                Key.quantity(
                                "stress-concentration",
                                Dimension.RATIO,
                                "of its notch in torsion: spline, hole, groove; or give its shoulder")
                        .byDefault("1", "no notch (assumed)")
                        .allowed("1", "6")
                        .usual("1", "4"),
                length("shoulder-diameter", "larger diameter at its shoulder, where that is its notch", "1 mm")
                        .optional(),
                length("fillet-radius", "radius of the fillet at the shoulder", "0.05 mm")
                        .neededWhere("shoulder-diameter is given"));
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
            oneWay.numberIf("rated-torque")
                    .ifPresent(rating -> links.add(new Link(oneWay.name(), oneWay.name(), rating)));
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
            if (!rating.broken()) {
                links.add(new Link(rating.name(), carries, rating.number("rated-torque")));
            }
        }
        return group.broken() ? Optional.empty() : Optional.of(links);
    }

    private static Set<String> loaded(GearTrain train) {
        Set<String> names = new LinkedHashSet<>(List.of(Coupling.CASE, train.input(), train.output()));
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

    private static OptionalDouble rating(Attributes shaft) {
        if (shaft.broken()) {
            return OptionalDouble.empty();
        }
        if (shaft.has("rated-torque") || STRENGTH.stream().noneMatch(shaft::stands)) {
            return shaft.numberIf("rated-torque");
        }
        for (String key : STRENGTH) {
            if (!shaft.stands(key)) {
                shaft.missing(
                        key, "diameter, yield and endurance together say what a shaft bears", "add '" + key + ": ...'");
            }
        }
        if (shaft.stands("shoulder-diameter") && !shaft.stands("fillet-radius")) {
            shaft.missing(
                    "fillet-radius",
                    "a shoulder's stress concentration follows from its fillet",
                    "add 'fillet-radius: ...'");
        }
        return shaft.broken() ? OptionalDouble.empty() : strength(shaft);
    }

    private static OptionalDouble strength(Attributes shaft) {
        try {
            double outer = shaft.number("outer-diameter");
            double notch = shaft.has("shoulder-diameter")
                    ? ShaftStrength.shoulder(shaft.number("shoulder-diameter"), outer, shaft.number("fillet-radius"))
                    : shaft.number("stress-concentration");
            return OptionalDouble.of(new ShaftStrength(
                            outer,
                            shaft.number("inner-diameter"),
                            shaft.number("yield"),
                            shaft.number("shear-endurance"),
                            notch)
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
