package hotidle.circuits.kind;

import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.network.Group;
import hotidle.part.Filter;
import java.util.stream.Stream;

/** The words of a {@link Filter}. */
final class FilterKind {

    private FilterKind() {}

    static final Kind KIND = Kind.through(
                    "filter",
                    Filter.class,
                    "A filter, known by one measured point of flow and drop; a suction filter also lifts the oil.",
                    Group.PUMP,
                    "the sump",
                    "the pump's inlet",
                    Stream.concat(
                                    RatedKeys.keys("0", "a filter's medium is laminar (common practice)").stream(),
                                    Stream.of(
                                            RatedKeys.blocked("the medium"),
                                            Key.quantity(
                                                            "rise",
                                                            Dimension.LENGTH,
                                                            "height of the outlet above the oil level")
                                                    .byDefault("0 mm", "outlet at the oil level (assumed)")
                                                    .allowed("-2 m", "2 m")
                                                    .usual("-300 mm", "300 mm")))
                            .toList(),
                    (given, around) ->
                            new Filter(RatedKeys.point(given), given.number("blocked"), given.number("rise")),
                    physics())
            .example("flow=60L/min drop=0.1bar viscosity=6mPa.s rise=60mm --drop 1psi")
            .passing(Passing.WIDE)
            .drawn(GraphicSymbol.FILTER);

    private static LawText physics() {
        return LawText.of("Δp = a·μ·q + b·ρ·q² + ρ·g·rise, a and b from one measured point", LawText.RATED);
    }
}
