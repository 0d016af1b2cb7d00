package hotidle.transmission;

import hotidle.network.Network;
import hotidle.part.SpoolValve;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What line pressure is asked for: the valve that regulates it, and what moves that valve beside its spring.
 *
 * @param line         node of the line
 * @param regulator    name of the regulator, a spool valve
 * @param edge         its first metering opening, whose zero overlap defines the set pressure
 * @param pilot        what asks for more than the spring does; empty where the spring alone sets the line
 * @param tablesHold   whether the pilot's tables say what the line comes to; false once the spring was changed and they were not
 */
public record Command(String line, String regulator, String edge, Optional<Pilot> pilot, boolean tablesHold) {

    /** A command whose tables and spring belong together. */
    public Command(String line, String regulator, String edge, Optional<Pilot> pilot) {
        this(line, regulator, edge, pilot, true);
    }

    /** Actual and commanded line pressure agree within this: 10 psi (common practice) [Pa]. */
    public static final double AGREE = 10 * SetPressure.PSI;

    /** A line pressure above that of any signal [Pa]: from there down the balance is straight from one check valve's turn to the next. */
    private static final double ABOVE_ALL = 1e9;

    /** More turns than any regulator has check valves. */
    private static final int ITERATIONS = 50;

    private static final double EXACT = 1e-14;

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

    /** A range with the pilot pressure of a commanded line pressure [Pa]; every other pilot valve is asked for nothing. */
    public Control control(String range, double linePressure) {
        return asking(
                range, pilot.map(made -> made.pilotByLine().at(linePressure)).orElse(0.0));
    }

    private Control asking(String range, double pressure) {
        return new Control(
                range, pilot.map(made -> Map.of(made.solenoid(), pressure)).orElse(Map.of()));
    }

    /** Node of the pilot pressure; empty where the spring alone sets the line. */
    public Optional<String> pilotNode(Network network) {
        return pilot.map(
                made -> network.part(made.solenoid()).orElseThrow().nodes().get(1));
    }

    /**
     * Highest set pressure in a range [Pa]: the highest commanded, where the tables hold; what the spring makes of that, where they do
     * not; what spring and signals ask for, where there is no pilot pressure.
     */
    public double highest(Network network, Control control) {
        return pilot.isPresent() && tablesHold
                ? pilot.get().lineByTorque().highest()
                : setPressure(network, atHighest(control));
    }

    /** The same with the pilot pressure of no engine torque. */
    Control atNoTorque(Control control) {
        return pilot.map(made -> control.asking(made.solenoid(), made.at(0))).orElse(control);
    }

    /** A control with the pilot pressure of the highest line pressure commanded. */
    Control atHighest(Control control) {
        return pilot.map(made -> control.asking(
                        made.solenoid(),
                        made.pilotByLine().at(made.lineByTorque().highest())))
                .orElse(control);
    }

    /**
     * Line pressure that balances the regulator with its first edge at zero overlap, flow force and friction zero [Pa]. Every area
     * counts whose pressure is known from the control, see {@link #unknown}: the pilot at what is asked for, oil of the line's at the
     * line's own pressure.
     *
     * @param network in which the regulator stands
     * @param control range, whose areas are fed, and what pilot valves are asked for
     * @return infinite where no line pressure moves the regulator off its seat
     */
    public double setPressure(Network network, Control control) {
        return balance(network, control, springAtEdge(regulator(network)));
    }

    /** Line pressure that signals alone hold, with a spring that pushes with nothing [Pa]. */
    double withoutSpring(Network network, Control control) {
        return balance(network, control, 0);
    }

    private double balance(Network network, Control control, double spring) {
        SpoolValve valve = regulator(network);
        double pressure = ABOVE_ALL;
        for (int i = 0; i < ITERATIONS; i++) {
            Signals.Known force = force(network, valve, control, pressure);
            if (!(force.slope() > 0)) {
                return Double.POSITIVE_INFINITY;
            }
            double step = (spring - force.value()) / force.slope();
            pressure += step;
            if (Math.abs(step) <= EXACT * Math.abs(pressure)) {
                break;
            }
        }
        return pressure;
    }

    /** Preload [N] with which the set pressure under a control becomes the one asked for [Pa]. */
    public double preloadFor(Network network, Control control, double setPressure) {
        SpoolValve valve = regulator(network);
        return force(network, valve, control, setPressure).value()
                - valve.spring().rate() * edgePosition(valve);
    }

    /**
     * Line pressure that would balance the regulator so with all else at the pressure that it has in a state [Pa]: signals made of
     * the line's oil in the proportion to it that they have there.
     *
     * @param pressures of each node [Pa]
     */
    public double setPressureIn(Network network, Control control, ToDoubleFunction<String> pressures) {
        SpoolValve valve = regulator(network);
        Signals signals = new Signals(network, line, control);
        double now = pressures.applyAsDouble(line);
        double opening = 0;
        double signal = 0;
        for (SpoolValve.Area area : valve.areas()) {
            if (area.fedIn(control.range())) {
                String node = nodeOf(network, area.port());
                double pressure = pressures.applyAsDouble(node);
                boolean follows = signals.at(node, ABOVE_ALL)
                        .filter(known -> known.slope() > 0)
                        .isPresent();
                if (follows && now > 0) {
                    opening += area.area() * pressure / now;
                } else {
                    signal += area.area() * pressure;
                }
            }
        }
        return (springAtEdge(valve) - signal) / opening;
    }

    /** Whether the pilot pressure acts on the regulator in a range, straight or through what hands it on. */
    public boolean pilotMoves(Network network, String range) {
        SpoolValve valve = regulator(network);
        double none = force(network, valve, asking(range, 0), ABOVE_ALL).value();
        double some = force(network, valve, asking(range, AGREE), ABOVE_ALL).value();
        return none != some;
    }

    /** Nodes that act on the regulator in a range and are not counted in the set pressure: what they carry is not known before a state. */
    public List<String> unknown(Network network, Control control) {
        Signals signals = new Signals(network, line, control);
        return regulator(network).areas().stream()
                .filter(area -> area.fedIn(control.range()))
                .map(area -> nodeOf(network, area.port()))
                .distinct()
                .filter(node -> signals.at(node, ABOVE_ALL).isEmpty())
                .toList();
    }

    /** Net opening force of all pressures that are known [N], and its slope by the line's [m²]. */
    private Signals.Known force(Network network, SpoolValve valve, Control control, double linePressure) {
        Signals signals = new Signals(network, line, control);
        double force = 0;
        double slope = 0;
        for (SpoolValve.Area area : valve.areas()) {
            if (area.fedIn(control.range())) {
                Optional<Signals.Known> known = signals.at(nodeOf(network, area.port()), linePressure);
                force += area.area() * known.map(Signals.Known::value).orElse(0.0);
                slope += area.area() * known.map(Signals.Known::slope).orElse(0.0);
            }
        }
        return new Signals.Known(force, slope);
    }

    private SpoolValve regulator(Network network) {
        return network.part(regulator)
                .map(placed -> placed.part() instanceof SpoolValve valve ? valve : null)
                .orElseThrow(() -> new IllegalArgumentException("the regulator " + regulator + " is no spool valve"));
    }

    double edgePosition(SpoolValve valve) {
        return valve.openings().stream()
                .filter(opening -> opening.name().equals(edge))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(regulator + " has no opening " + edge))
                .edge();
    }

    private double springAtEdge(SpoolValve valve) {
        return valve.spring().preload() + valve.spring().rate() * edgePosition(valve);
    }

    private String nodeOf(Network network, int port) {
        return network.part(regulator).orElseThrow().nodes().get(port);
    }

    /** The same command with another pilot. */
    public Command with(Pilot other) {
        return new Command(line, regulator, edge, Optional.of(other));
    }

    /** The same command to a regulator whose spring was changed alone. */
    Command onOtherSpring() {
        return new Command(line, regulator, edge, pilot, false);
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
