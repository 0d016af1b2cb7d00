package hotidle.circuits.words;

import hotidle.circuits.shape.Given;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.law.RatedPoint;
import hotidle.network.Group;
import hotidle.part.Converter;
import hotidle.part.Setting;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** The words of a {@link Converter}. */
final class ConverterWords {

    private ConverterWords() {}

    static final Kind KIND = Kind.through(
            "converter",
            Converter.class,
            "A torque converter with a lockup clutch.",
            Group.CONVERTER,
            "the release side, where oil enters with lockup off",
            "the apply side, where it leaves with lockup off",
            List.of(
                    Key.of(
                            "losses",
                            new Type.Group(new Shape(
                                    "losses",
                                    Stream.of(Setting.Lockup.values())
                                            .map(ConverterWords::loss)
                                            .toList())),
                            "one measured point of flow and drop for each state of lockup"),
                    Key.quantity(
                                    "charge-needed",
                                    Dimension.PRESSURE,
                                    "charge pressure that it needs against cavitation")
                            .allowed("0 psi", "300 psi")
                            .usual("10 psi", "150 psi"),
                    Key.quantity("lockup-area", Dimension.AREA, "area of the lockup piston")
                            .allowed("0 cm2", "2000 cm2")
                            .usual("50 cm2", "700 cm2"),
                    Key.quantity("lockup-radius", Dimension.LENGTH, "mean radius of its lining")
                            .allowed("0 mm", "500 mm")
                            .usual("50 mm", "200 mm"),
                    Key.count("lockup-surfaces", "its rubbing surfaces")
                            .byDefault("1", "one lining (common practice)")
                            .allowed("1", "12"),
                    ClutchWords.friction(),
                    ClutchWords.factor()),
            (given, around) -> make(given),
            physics());

    private static Physics physics() {
        return Physics.of(
                "Δp = a·μ·q + b·ρ·q² for each state of lockup; lockup torque = μ·z·r·A·(apply − release)",
                Physics.RATED);
    }

    private static Key loss(Setting.Lockup state) {
        Shape rated =
                new Shape("rated point", RatedWords.keys("50 %", "between a laminar gap and an orifice (assumed)"));
        String word = state.name().toLowerCase(Locale.ROOT);
        return Key.of(word, new Type.Group(rated), "with lockup " + word);
    }

    private static Converter make(Given given) {
        Given losses = given.group("losses").orElseThrow();
        Map<Setting.Lockup, RatedPoint> points = new EnumMap<>(Setting.Lockup.class);
        for (Setting.Lockup state : Setting.Lockup.values()) {
            points.put(
                    state,
                    RatedWords.point(
                            losses.group(state.name().toLowerCase(Locale.ROOT)).orElseThrow()));
        }
        return new Converter(
                points,
                given.number("charge-needed"),
                given.number("lockup-area"),
                given.number("lockup-radius"),
                given.count("lockup-surfaces"),
                given.number("friction"),
                given.number("capacity-factor"));
    }
}
