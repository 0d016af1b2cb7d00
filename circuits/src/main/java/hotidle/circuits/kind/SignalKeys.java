package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.network.Group;
import hotidle.part.SignalValve;
import hotidle.part.Solenoid;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** The words that all mechanical valves share that make a pressure from their supply. */
final class SignalKeys {

    private SignalKeys() {}

    /**
     * A kind of such valve.
     *
     * @param asks   what of a duty it feels
     * @param keys   its own
     * @param demand makes what it is asked for of them
     */
    static Kind kind(
            String word,
            String about,
            DutyKey asks,
            List<Key> keys,
            Function<Attributes, SignalValve.Demand> demand,
            LawText physics) {
        return Kind.of(
                        word,
                        SignalValve.class,
                        about,
                        Group.SOLENOIDS,
                        Stream.of(ports(), keys, openings())
                                .flatMap(List::stream)
                                .toList(),
                        SolenoidKind::paths,
                        (given, around) -> new Kind.MadePart(
                                new SignalValve(valve(given), demand.apply(given)),
                                List.of(given.word("supply"), given.word("pilot"), given.word("exhaust")),
                                List.of()),
                        physics)
                .passing(Passing.BY_STATE)
                .alone(Alone.asking(asks).finding("pilot"))
                .drawn((given, paths) -> ValveFigures.piloting(GraphicSymbol.SIGNAL_VALVE, paths));
    }

    private static List<Key> ports() {
        return List.of(
                Key.node("supply", "where it is fed from"),
                Key.node("pilot", "where its pressure goes"),
                Key.node("exhaust", "where it exhausts to"),
                Key.quantity("area", Dimension.AREA, "area on which its own pressure pushes back")
                        .allowed("0.1 mm2", "100 cm2")
                        .usual("10 mm2", "500 mm2")
                        .measured("pi/4 times the square of the land's diameter, less that of the next land"));
    }

    private static List<Key> openings() {
        return List.of(
                SolenoidKind.hole("feed-diameter", "diameter of a hole as large as its feed, wide open"),
                SolenoidKind.hole("exhaust-diameter", "diameter of a hole as large as its exhaust, wide open"),
                SolenoidKind.droop("fall of its pressure over the full stroke"));
    }

    private static Solenoid valve(Attributes given) {
        return new Solenoid(
                given.number("feed-diameter"), given.number("exhaust-diameter"), given.number("droop"), false);
    }
}
