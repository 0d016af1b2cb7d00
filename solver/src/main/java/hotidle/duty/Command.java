package hotidle.duty;

import hotidle.network.Network;
import hotidle.part.SpoolValve;

/**
 * How line pressure is commanded: engine torque to line pressure, line pressure to pilot pressure, pilot to the regulator.
 *
 * @param line         node of the line
 * @param regulator    name of the regulator, a spool valve
 * @param edge         its first metering opening, whose zero overlap defines the set pressure
 * @param solenoid     name of the solenoid that makes the pilot pressure
 * @param lineByTorque line pressure [Pa] commanded at an engine torque [N·m]
 * @param pilotByLine  pilot pressure [Pa] for a commanded line pressure [Pa]
 */
public record Command(
        String line, String regulator, String edge, String solenoid, Curve lineByTorque, Curve pilotByLine) {

    /** Commanded pilot pressure [Pa] at an engine torque [N·m]. */
    public double pilot(double engineTorque) {
        return pilotByLine.at(lineByTorque.at(engineTorque));
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
        String pilotNode = network.part(solenoid).orElseThrow().nodes().get(1);
        return valve.pressureForce(range, port -> nodeOf(network, port).equals(pilotNode) ? pilot : 0);
    }

    private String nodeOf(Network network, int port) {
        return network.part(regulator).orElseThrow().nodes().get(port);
    }

    /** The same command with other tables. */
    public Command with(Curve otherLineByTorque) {
        return new Command(line, regulator, edge, solenoid, otherLineByTorque, pilotByLine);
    }
}
