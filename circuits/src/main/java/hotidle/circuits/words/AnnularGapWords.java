package hotidle.circuits.words;

import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.network.Group;
import hotidle.part.AnnularGap;
import java.util.stream.Stream;

/** The words of an {@link AnnularGap}. */
final class AnnularGapWords {

    private AnnularGapWords() {}

    static final Kind KIND = Kind.through(
                    "annular-gap",
                    AnnularGap.class,
                    "The leak between a bore and the valve or shaft in it.",
                    Group.VALVE_BODY,
                    "side of higher pressure",
                    "side of lower pressure",
                    Stream.concat(FitWords.boreAndValve().stream(), Stream.of(length(), FitWords.eccentricity()))
                            .toList(),
                    (given, around) -> new AnnularGap(
                            FitWords.fit(given, around, "bore", "valve"),
                            given.number("length"),
                            given.number("eccentricity")))
            .rule((given, around) -> FitWords.check(given, "bore", "valve"));

    static Key length() {
        return Key.quantity("length", Dimension.LENGTH, "length of the land that seals")
                .allowed("0.01 mm", "1 m")
                .usual("0.5 mm", "60 mm")
                .measured("depth gauge or calliper: where land and bore overlap");
    }
}
