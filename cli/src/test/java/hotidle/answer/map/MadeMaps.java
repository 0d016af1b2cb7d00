package hotidle.answer.map;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Margin;
import hotidle.study.Judgement;
import hotidle.study.WindowMap;
import hotidle.transmission.SetPressure;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A map of two set pressures, 5 and 10 bar, and two clearances, 0.1 and 0.2 mm: made values, nothing is solved. */
final class MadeMaps {

    private MadeMaps() {}

    static final Judgement.Key LUBE = new Judgement.Key("hot-idle", Margin.Kind.LUBRICATION, "lube-rear");
    static final Judgement.Key FILM = new Judgement.Key("stall", Margin.Kind.FILM, "hub");
    static final double LOW = 5e5;
    static final double HIGH = 10e5;

    static WindowMap.Axis axis(WearSize.SizeKind kind, OptionalDouble limit) {
        return new WindowMap.Axis(
                "hub.clearance",
                new WearSize("hub", "bore", kind, 0.0501, 0.05005, limit, OptionalDouble.empty()),
                0.05);
    }

    static WindowMap.MapCell lube(double pressure, double size, double headroom) {
        Margin margin = Margin.of(Margin.Kind.LUBRICATION, "lube-rear", 1e-4 * (1 + headroom), 1e-4, Margin.Scale.FLOW);
        return new WindowMap.MapCell(
                pressure,
                size,
                Optional.of(new WindowMap.LeastMargin(LUBE, margin)),
                Optional.empty(),
                List.of(),
                Map.of());
    }

    static WindowMap.MapCell contact(double pressure, double size) {
        Margin margin = Margin.notKnown(Margin.Kind.FILM, "hub", 3e-6, Margin.Scale.LENGTH);
        return new WindowMap.MapCell(
                pressure,
                size,
                Optional.of(new WindowMap.LeastMargin(FILM, margin)),
                Optional.empty(),
                List.of(),
                Map.of());
    }

    static WindowMap.MapCell unknown(double pressure, double size) {
        return new WindowMap.MapCell(
                pressure,
                size,
                Optional.empty(),
                Optional.of(new WindowMap.UnknownCell(WindowMap.UnknownCell.Obstacle.UNSOLVED, Optional.of("stall"))),
                List.of(),
                Map.of());
    }

    static WindowMap map(double unit, WindowMap.MapCell lastCell, WindowMap.NamedCell... marks) {
        return new WindowMap(
                axis(WearSize.SizeKind.LENGTH, OptionalDouble.of(0.05018)),
                List.of(LOW, HIGH),
                List.of(unit, 2 * unit),
                List.of(
                        List.of(lube(LOW, unit, 0.05), lube(HIGH, unit, 0.32)),
                        List.of(contact(LOW, 2 * unit), lastCell)),
                List.of(marks));
    }

    static final WindowMap KNOWN =
            map(1e-4, lube(HIGH, 2e-4, -0.12), new WindowMap.NamedCell("worn", lube(LOW, 1e-4, 0.05)));

    static MapAnswer answer(WindowMap map, UnitSystem units) {
        return new MapAnswer(
                units,
                "rig",
                "a bench",
                "",
                SetPressure.By.COMMAND_AND_SPRING,
                List.of(new MapAnswer.Mapped("worn", map, false)));
    }
}
