package hotidle.study;

import hotidle.network.Conditions;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.newton.SteadySolver;
import hotidle.part.OwnState;
import hotidle.part.SpoolValve;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A unit's regulator with every node that it touches held: the line and what it feeds at one pressure, the pilot as asked for. */
final class SpoolAlone {

    private SpoolAlone() {}

    /** Where the spool stands, the pilot at the highest that the tables ask for. */
    static double position(Transmission unit, double line) {
        Placed placed = unit.network().part(unit.command().regulator()).orElseThrow();
        var pilot = unit.command().pilot().orElseThrow();
        double boost = pilot.pilotByLine().at(pilot.lineByTorque().highest());
        String boostNode = unit.command().pilotNode(unit.network()).orElseThrow();
        // what the openings feed is held at the line's pressure too: without flow no jet closes the spool
        List<Node> held = placed.nodes().stream()
                .distinct()
                .map(name -> new Node(name, OptionalDouble.of(name.equals(boostNode) ? boost : line)))
                .toList();
        DutyPoint duty = unit.duty("hot-idle").orElseThrow();
        Conditions all = unit.conditions(duty);
        Conditions conditions = new Conditions(
                all.speed(),
                "first",
                all.lockup(),
                all.oil(),
                all.ambient(),
                all.temperatures(),
                Map.of(),
                all.sensed());
        return new SteadySolver(new Network(held, List.of(placed)))
                .solve(conditions, Optional.empty())
                .state()
                .orElseThrow()
                .own(placed.name(), OwnState.POSITION);
    }

    static double edge(Transmission unit) {
        SpoolValve valve = (SpoolValve)
                unit.network().part(unit.command().regulator()).orElseThrow().part();
        return valve.openings().stream()
                .filter(opening -> opening.name().equals(unit.command().edge()))
                .findFirst()
                .orElseThrow()
                .edge();
    }
}
