package hotidle.transmission;

import hotidle.geartrain.GearTrain;
import hotidle.geartrain.Link;
import hotidle.network.Conditions;
import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.oil.Oil;
import hotidle.part.ReliefValve;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A whole unit as one build has it.
 *
 * @param circuit name of the circuit
 * @param build   name of the build
 * @param network nodes and parts
 * @param oil     the oil in it
 * @param ambient absolute ambient pressure [Pa]
 * @param ranges  all ranges
 * @param commanded what line pressure is asked for; empty where nothing is
 * @param duties  duty points, in the order in which they are shown
 * @param taps    gauge taps
 * @param heat    what its heat depends on; empty where temperatures cannot follow from heat
 * @param assumed part and key of each number in use that is neither measured nor from a data sheet, as part.key
 * @param gears   its gear train with what carries in it; empty where it is not given
 */
public record Transmission(
        String circuit,
        String build,
        Network network,
        Oil oil,
        double ambient,
        List<Range> ranges,
        Optional<Command> commanded,
        List<DutyPoint> duties,
        List<Tap> taps,
        Optional<HeatInputs> heat,
        List<String> assumed,
        Optional<Gears> gears) {

    public Transmission {
        assumed = List.copyOf(assumed);
        ranges = List.copyOf(ranges);
        duties = List.copyOf(duties);
        taps = List.copyOf(taps);
    }

    /**
     * A gear train and what carries in it.
     *
     * @param train speeds and torques
     * @param links what bears a torque and has a rating
     */
    public record Gears(GearTrain train, List<Link> links) {
        public Gears {
            links = List.copyOf(links);
        }
    }

    /** A unit whose gear train is not given and of which nothing is marked as assumed. */
    public Transmission(
            String circuit,
            String build,
            Network network,
            Oil oil,
            double ambient,
            List<Range> ranges,
            Optional<Command> commanded,
            List<DutyPoint> duties,
            List<Tap> taps,
            Optional<HeatInputs> heat) {
        this(circuit, build, network, oil, ambient, ranges, commanded, duties, taps, heat, List.of(), Optional.empty());
    }

    /** A unit whose heat is not asked for. */
    public Transmission(
            String circuit,
            String build,
            Network network,
            Oil oil,
            double ambient,
            List<Range> ranges,
            Optional<Command> commanded,
            List<DutyPoint> duties,
            List<Tap> taps) {
        this(circuit, build, network, oil, ambient, ranges, commanded, duties, taps, Optional.empty());
    }

    /**
     * How line pressure is commanded.
     *
     * @throws NotCommandedException where nothing commands it
     */
    public Command command() {
        return commanded.orElseThrow(() -> new NotCommandedException(circuit));
    }

    /** The conditions of a duty point, with the line pressure command for its engine torque where there is one. */
    public Conditions conditions(DutyPoint duty) {
        Map<String, Double> commands = new HashMap<>(duty.commands());
        commanded
                .flatMap(Command::pilot)
                .ifPresent(pilot -> commands.put(pilot.solenoid(), pilot.at(duty.engineTorque())));
        return new Conditions(
                duty.speed(), duty.range(), duty.lockup(), oil, ambient, duty.temperatures(), commands, duty.sensed());
    }

    /** Set pressure commanded under some conditions, with the areas of their range [Pa]; empty where nothing is commanded. See {@link Command#setPressure}. */
    public OptionalDouble setPressure(Conditions conditions) {
        return commanded.stream()
                .mapToDouble(command -> command.setPressure(network, Control.of(conditions)))
                .findFirst();
    }

    /**
     * Highest set pressure of the forward ranges [Pa], of any range where none is forward: the highest commanded; where no solenoid
     * commands it, that of the duty point at which spring and signals ask for most.
     *
     * @throws NotCommandedException where nothing commands the line
     */
    public double highestSet() {
        return forwardControls().stream()
                .mapToDouble(control -> command().highest(network, control))
                .max()
                .orElseThrow();
    }

    /** The controls under which set pressure is quoted: of every duty point in a forward range, of each such range without one. */
    List<Control> forwardControls() {
        List<String> forward =
                ranges.stream().filter(Range::forward).map(Range::name).toList();
        List<String> quoted = forward.isEmpty() ? List.of(ranges.get(0).name()) : forward;
        List<Control> ofDuties = duties.stream()
                .filter(duty -> quoted.contains(duty.range()))
                .map(duty -> Control.of(conditions(duty)))
                .toList();
        return ofDuties.isEmpty()
                ? quoted.stream().map(range -> new Control(range, Map.of())).toList()
                : ofDuties;
    }

    /** The relief valves of a node; one elsewhere limits what it lies on. */
    public List<Placed> reliefs(String node) {
        return network.parts().stream()
                .filter(placed -> placed.part() instanceof ReliefValve
                        && placed.nodes().get(0).equals(node))
                .toList();
    }

    /** Whether anything in its gear train has a rating. */
    public boolean rated() {
        return gears.map(train -> !train.links().isEmpty()).orElse(false);
    }

    /** The duty point of a name. */
    public Optional<DutyPoint> duty(String name) {
        return duties.stream().filter(duty -> duty.name().equals(name)).findFirst();
    }

    /** The range of a name. */
    public Optional<Range> range(String name) {
        return ranges.stream().filter(range -> range.name().equals(name)).findFirst();
    }

    /** The duty points at which it is judged. */
    public List<DutyPoint> judgedDuties() {
        return duties.stream().filter(DutyPoint::judged).toList();
    }

    /** The same unit with its duty points at other temperatures. */
    public Transmission at(List<DutyPoint> others) {
        return new Transmission(
                circuit, build, network, oil, ambient, ranges, commanded, others, taps, heat, assumed, gears);
    }

    /** The same unit under another name of its build. */
    public Transmission named(String otherBuild) {
        return new Transmission(
                circuit, otherBuild, network, oil, ambient, ranges, commanded, duties, taps, heat, assumed, gears);
    }

    /**
     * The same unit with other sizes.
     *
     * @param otherNetwork of the same shape
     * @param stillAssumed numbers of it that are assumed, as part.key
     */
    public Transmission with(Network otherNetwork, List<String> stillAssumed) {
        return new Transmission(
                circuit, build, otherNetwork, oil, ambient, ranges, commanded, duties, taps, heat, stillAssumed, gears);
    }

    /** The same unit with another oil in it. */
    public Transmission filledWith(Oil other) {
        return new Transmission(
                circuit, build, network, other, ambient, ranges, commanded, duties, taps, heat, assumed, gears);
    }

    /** The same unit with another network and command. */
    public Transmission with(Network otherNetwork, Command otherCommand) {
        return new Transmission(
                circuit,
                build,
                otherNetwork,
                oil,
                ambient,
                ranges,
                Optional.of(otherCommand),
                duties,
                taps,
                heat,
                assumed,
                gears);
    }
}
