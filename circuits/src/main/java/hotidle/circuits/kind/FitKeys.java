package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.part.Fit;
import java.util.List;

/** The words of a fit of two pieces: their materials and the temperature at which they were measured. */
final class FitKeys {

    private FitKeys() {}

    /** Bore and valve with their materials. */
    static List<Key> boreAndValve() {
        return List.of(
                bore(),
                valve(),
                material("bore-material", "the bore", "aluminium"),
                material("valve-material", "the valve", "steel"),
                measuredAt());
    }

    static Key bore() {
        return Key.size("bore", "diameter of the bore")
                .allowed("1 mm", "300 mm")
                .usual("4 mm", "120 mm")
                .measured("small-hole or air gauge, three depths and two directions, at the land's place");
    }

    static Key valve() {
        return Key.shaft("valve", "diameter of the valve's land or of the shaft")
                .allowed("1 mm", "300 mm")
                .usual("4 mm", "120 mm")
                .measured("micrometer on the land");
    }

    static Key eccentricity() {
        return Key.quantity(
                        "eccentricity", Dimension.RATIO, "how far off centre it lies, 0 centred to 1 against the wall")
                .byDefault("1", "a valve lies against its bore; leaks 2.5 times as much as a centred one (assumed)")
                .allowed("0", "1");
    }

    static Key material(String name, String of, String usual) {
        return Key.of(name, new Type.Name(Names.MATERIAL), "material of " + of).byDefault(usual, "common practice");
    }

    static Key measuredAt() {
        return Key.quantity("measured-at", Dimension.TEMPERATURE, "temperature at which the sizes were measured")
                .byDefault("20 degC", "reference temperature of length measurement, ISO 1")
                .allowed("-20 degC", "150 degC")
                .usual("10 degC", "40 degC");
    }

    /** Sizes of a key that may stand in {@code sizes} and otherwise stands in {@code whole}. */
    static Attributes.Sizes sizes(Attributes sizes, Attributes whole, String key) {
        return sizes.sizes(key).or(() -> whole.sizes(key)).orElseThrow();
    }

    /** The fit of a bore and what runs in it. */
    static Fit fit(Attributes given, Kind.Context around, String outer, String inner) {
        return fit(given, given, around, outer, inner);
    }

    /** The same where a size may stand in {@code sizes} and otherwise stands in {@code whole}, as the materials do. */
    static Fit fit(Attributes sizes, Attributes whole, Kind.Context around, String outer, String inner) {
        return new Fit(
                sizes(sizes, whole, outer).inUse(),
                sizes(sizes, whole, inner).inUse(),
                around.expansions().get(whole.word(outer + "-material")),
                around.expansions().get(whole.word(inner + "-material")),
                whole.number("measured-at"));
    }

    /** A fit given by its inner size and the clearance: of a gear in its pocket. */
    static Fit pocket(Attributes given, Kind.Context around, double inner, double clearance) {
        return new Fit(
                inner + clearance,
                inner,
                around.expansions().get(given.word("pocket-material")),
                around.expansions().get(given.word("gear-material")),
                given.number("measured-at"));
    }

    /** A fit given by its outer size, that of a ring gear, and the clearance to the part of the pocket inside it: it closes when hot. */
    static Fit insideRing(Attributes given, Kind.Context around, double ring, double clearance) {
        return new Fit(
                ring,
                ring - clearance,
                around.expansions().get(given.word("gear-material")),
                around.expansions().get(given.word("pocket-material")),
                given.number("measured-at"));
    }

    static List<Key> pocketMaterials() {
        return List.of(
                material("pocket-material", "the pocket", "aluminium"),
                material("gear-material", "the gear", "steel"),
                measuredAt());
    }
}
