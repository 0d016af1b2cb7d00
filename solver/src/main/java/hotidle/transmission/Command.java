package hotidle.transmission;

import hotidle.network.Network;
import hotidle.part.SpoolValve;
import java.util.Map;
import java.util.Optional;

/**
 * What line pressure is asked for: the valve that regulates it, and what moves that valve beside its spring.
 *
 * @param line         node of the line
 * @param regulator    name of the regulator, a spool valve
 * @param edge         its first metering opening, whose zero overlap defines the set pressure
 * @param pilot        what asks for more than the spring does; empty where the spring alone sets the line
 */
public record Command(String line, String regulator, String edge, Optional<Pilot> pilot) {

    /** Actual and commanded line pressure agree within this: 10 psi (common practice) [Pa]. */
    public static final double AGREE = 10 * 4.4482216152605 / 0.00064516;

    /**
     * A pilot pressure on the regulator: engine torque to line pressure, line pressure to pilot pressure.
     *
     * @param solenoid     name of the solenoid that makes it
     * @param lineByTorque line pressure [Pa] commanded at an engine torque [N·m]
     * @param pilotByLine  pilot pressure [Pa] for a commanded line pressure [Pa]
     */
    public record Pilot(String solenoid, Curve lineByTorque, Curve pilotByLine) {

        /** Commanded pilot pressure [Pa] at an engine torque [N·m]. */
        public double at(double engineTorque) {
            return pilotByLine.at(lineByTorque.at(engineTorque));
        }
    }

    /** The pilot pressure among those commanded [Pa]; 0 where the spring alone sets the line. */
    public double pilot(Map<String, Double> commands) {
        return pilot.map(made -> commands.getOrDefault(made.solenoid(), 0.0)).orElse(0.0);
    }

    /** Node of the pilot pressure; empty where the spring alone sets the line. */
    public Optional<String> pilotNode(Network network) {
        return pilot.map(
                made -> network.part(made.solenoid()).orElseThrow().nodes().get(1));
    }

    /** Highest set pressure in a range [Pa]: the highest commanded, or the spring's own. */
    public double highest(Network network, String range) {
        return pilot.map(made -> made.lineByTorque().highest()).orElseGet(() -> setPressure(network, range, 0));
    }

    /**
     * Line pressure that balances the regulator with its first edge at zero overlap, flow force and friction zero [Pa].
     *
     * @param network  in which the regulator stands
     * @param range    whose pressure areas are fed
     * @param pilot    pilot pressure at the regulator's boost area [Pa]
     */
    public double setPressure(Network network, String range, double pilot) {
        SpoolValve valve = regulator(network);
        return (springAtEdge(valve) - pilotForce(network, valve, range, pilot)) / lineArea(network, valve, range);
    }

    /** Preload [N] with which the set pressure in a range at a pilot pressure becomes the one asked for [Pa]. */
    public double preloadFor(Network network, String range, double pilot, double setPressure) {
        SpoolValve valve = regulator(network);
        double balanced = setPressure * lineArea(network, valve, range) + pilotForce(network, valve, range, pilot);
        return balanced - valve.spring().rate() * edgePosition(valve);
    }

    private SpoolValve regulator(Network network) {
        return network.part(regulator)
                .map(placed -> placed.part() instanceof SpoolValve valve ? valve : null)
                .orElseThrow(() -> new IllegalArgumentException("the regulator " + regulator + " is no spool valve"));
    }

    private double edgePosition(SpoolValve valve) {
        return valve.openings().stream()
                .filter(opening -> opening.name().equals(edge))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(regulator + " has no opening " + edge))
                .edge();
    }

    private double springAtEdge(SpoolValve valve) {
        return valve.spring().preload() + valve.spring().rate() * edgePosition(valve);
    }

    private double lineArea(Network network, SpoolValve valve, String range) {
        return valve.pressureForce(range, port -> nodeOf(network, port).equals(line) ? 1 : 0);
    }

    private double pilotForce(Network network, SpoolValve valve, String range, double pilot) {
        return pilotNode(network)
                .map(node ->
                        valve.pressureForce(range, port -> nodeOf(network, port).equals(node) ? pilot : 0))
                .orElse(0.0);
    }

    private String nodeOf(Network network, int port) {
        return network.part(regulator).orElseThrow().nodes().get(port);
    }

    /** The same command with another pilot. */
    public Command with(Pilot other) {
        return new Command(line, regulator, edge, Optional.of(other));
    }

    /** The same command, its highest line pressure set to another [Pa] by scaling it; the spring's is not changed by this. */
    Command scaledTo(double pressure) {
        return new Command(
                line,
                regulator,
                edge,
                pilot.map(made -> new Pilot(
                        made.solenoid(),
                        made.lineByTorque()
                                .scaled(pressure / made.lineByTorque().highest()),
                        made.pilotByLine())));
    }
}
