package hotidle.circuits.words;

import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.network.Group;
import hotidle.part.Orifice;
import java.util.List;

/** The words of an {@link Orifice}. */
final class OrificeWords {

    private OrificeWords() {}

    static final Kind KIND = Kind.through(
            "orifice",
            Orifice.class,
            "A hole in the separator plate, or a drilled hole.",
            Group.PLATE,
            "where the oil comes from",
            "where it goes",
            List.of(
                    diameter(),
                    Key.quantity("length", Dimension.LENGTH, "thickness of the plate or depth of the drilling")
                            .byDefault("0 mm", "a hole in a plate counts as sharp-edged (common practice)")
                            .allowed("0 mm", "500 mm")
                            .usual("0 mm", "30 mm"),
                    dischargeCoefficient("0.611", "sharp edge: pi/(pi + 2), Merritt 1967, section 3-4"),
                    Key.count("count", "equal holes side by side")
                            .byDefault("1", "one hole (assumed)")
                            .allowed("1", "1000")),
            (given, around) -> new Orifice(
                    given.number("diameter"), given.number("length"), given.number("cd"), given.count("count")));

    static Key diameter() {
        return Key.quantity("diameter", Dimension.LENGTH, "diameter of the hole")
                .allowed("0.01 mm", "1 m")
                .usual("0.3 mm", "15 mm")
                .measured("pin gauge or the shank of a drill that just enters");
    }

    static Key dischargeCoefficient(String value, String source) {
        return Key.quantity(
                        "cd",
                        Dimension.RATIO,
                        "discharge coefficient; a drilled hole 0.5 to 4 diameters long has 0.7 to 0.8")
                .byDefault(value, source)
                .allowed("0.3", "1");
    }
}
