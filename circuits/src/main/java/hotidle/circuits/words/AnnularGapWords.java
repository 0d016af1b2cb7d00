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
                            given.number("eccentricity")),
                    physics())
            .rule((given, around) -> FitWords.check(given, "bore", "valve"));

    private static Physics physics() {
        return Physics.of(
                "q = π·d·c³·(1 + 1.5·ε²)·Δp/(12·μ·L), c the radial clearance when warm; in series the loss of entry and exit",
                Physics.SLOT);
    }

    static Key length() {
        return Key.quantity("length", Dimension.LENGTH, "length of the land that seals")
                .allowed("0.01 mm", "1 m")
                .usual("0.5 mm", "60 mm")
                .measured("depth gauge or calliper: where land and bore overlap");
    }
}
