package hotidle.study;

import hotidle.assess.Assessment;
import hotidle.assess.Margin;
import hotidle.geartrain.Drive.Driven;
import hotidle.geartrain.Link;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Limits by ratings: of what carries in the gear train, of the drive of the pump, of housings and pistons. */
record RatedLimits(Assessment assessed) {

    List<Margin> all() {
        List<Margin> margins = new ArrayList<>(torques());
        margins.addAll(pumpDrive());
        margins.addAll(pressures());
        return margins;
    }

    /** What the turbine's torque puts on shafts, one-way clutches and all else that has a rating; no pressure changes it. */
    private List<Margin> torques() {
        Optional<Driven> driven =
                assessed.unit().range(assessed.duty().range()).orElseThrow().driven();
        if (assessed.unit().gears().isEmpty() || driven.isEmpty()) {
            return List.of();
        }
        List<Margin> margins = new ArrayList<>();
        for (Link link : assessed.unit().gears().get().links()) {
            link.share(assessed.unit().gears().get().train(), driven.get())
                    .ifPresent(share -> margins.add(Margin.of(
                            Margin.Kind.RATED_TORQUE,
                            link.name(),
                            share * Math.abs(assessed.duty().turbineTorque()),
                            link.rating(),
                            Margin.Scale.TORQUE)));
        }
        return margins;
    }

    /** What turns the pump, by the torque that the pump takes there. */
    private List<Margin> pumpDrive() {
        double torque =
                assessed.figures().pumpPower() / (2 * Math.PI * assessed.duty().speed());
        return assessed.unit().gears().stream()
                .flatMap(gears -> gears.links().stream())
                .filter(link -> link.carries().equals(Link.PUMP))
                .map(link ->
                        Margin.of(Margin.Kind.RATED_TORQUE, link.name(), torque, link.rating(), Margin.Scale.TORQUE))
                .toList();
    }

    /** Housings and pistons, by the pressure that the file rates for the place they bear it at. */
    private List<Margin> pressures() {
        return assessed.unit().network().nodes().stream()
                .filter(node -> node.rated().isPresent())
                .map(node -> Margin.of(
                        Margin.Kind.RATED_PRESSURE,
                        node.name(),
                        assessed.state().pressure(node.name()),
                        node.rated().getAsDouble(),
                        Margin.Scale.PRESSURE))
                .toList();
    }
}
