package hotidle.circuits.words;

import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.network.Group;
import hotidle.part.Cooler;
import java.util.stream.Stream;

/** The words of a {@link Cooler}. */
final class CoolerWords {

    private CoolerWords() {}

    static final Kind KIND = Kind.through(
            "cooler",
            Cooler.class,
            "A cooler with its hoses, known by one measured point of flow and drop.",
            Group.COOLER,
            "where the oil comes from",
            "where it goes",
            Stream.concat(
                            RatedWords.keys("0", "cooler loops are laminar at workshop temperature (common practice)")
                                    .stream(),
                            Stream.of(
                                    RatedWords.blocked("the tubes"),
                                    Key.quantity("needs", Dimension.FLOW, "flow that it should have")
                                            .byDefault(
                                                    "2 L/min",
                                                    "accepted at hot idle in neutral: 1 L in 30 s (common practice)")
                                            .allowed("0 L/min", "200 L/min")
                                            .usual("0.5 L/min", "20 L/min")))
                    .toList(),
            (given, around) -> new Cooler(RatedWords.point(given), given.number("blocked"), given.number("needs")),
            physics());

    private static Physics physics() {
        return Physics.of("Δp = a·μ·q + b·ρ·q², a and b from one measured point", Physics.RATED);
    }
}
