package hotidle.circuits.single;

import hotidle.circuits.kind.Alone;
import hotidle.circuits.kind.Kind;
import hotidle.circuits.kind.Kinds;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.network.Conditions;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.oil.Oil;
import hotidle.part.OwnState;
import hotidle.part.Sensed;
import hotidle.part.Setting;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A part on its own, with the keys of a circuit file; what a circuit would say of it is made up or asked for.
 *
 * @param kind       its kind
 * @param placed     the part, its ports at nodes of their own
 * @param around     what it reads besides
 * @param defaults   values left to the program, by key
 * @param speed      at which it turns [rev/s], 0 where it does not
 * @param command    pilot pressure asked of it [Pa], 0 where it is no solenoid
 * @param lockup     state of the lockup clutch
 * @param sensed     what a mechanical valve feels
 * @param measuredAt temperature at which its sizes were measured [K]
 */
public record OnePart(
        Kind kind,
        Placed placed,
        List<Placed> around,
        Map<String, Key.Default> defaults,
        double speed,
        double command,
        Setting.Lockup lockup,
        Sensed sensed,
        double measuredAt) {

    /** Name of the part's region. */
    static final String REGION = "sump";

    /** The one range there is. */
    static final String RANGE = Alone.RANGE;

    private static final double REFERENCE_TEMPERATURE = 293.15;

    public OnePart {
        around = List.copyOf(around);
    }

    /** What was read, and what stands around it. */
    static OnePart of(
            Kind kind, Placed placed, List<Placed> around, Map<String, Key.Default> defaults, Attributes given) {
        return new OnePart(
                kind,
                placed,
                around,
                defaults,
                given.numberIf("speed").orElse(0),
                given.numberIf("command").orElse(0),
                Setting.Lockup.valueOf(given.wordIf("lockup").orElse("off").toUpperCase(Locale.ROOT)),
                new Sensed(
                        given.numberIf("output-speed").orElse(0),
                        given.numberIf("throttle").orElse(0),
                        given.numberIf("manifold-vacuum").orElse(0)),
                given.numberIf("measured-at").orElse(REFERENCE_TEMPERATURE));
    }

    /**
     * Reads a part.
     *
     * @param kind  word of its kind, which must be one of {@link Kinds#words}
     * @param words each a key with its value, {@code bore=14.06mm}
     * @param stock oils and materials to choose from
     */
    public static ReadPart read(String kind, List<String> words, LibraryMaterials stock) {
        return new PartReader(Kinds.of(kind).orElseThrow(), words, stock).read();
    }

    /** Names of its ports; two ports at one node count once. */
    public List<String> ports() {
        return placed.nodes().stream().distinct().toList();
    }

    /**
     * The part between pressures.
     *
     * @param held gauge pressure at each port [Pa]; a port that is not among them finds its own
     */
    public Network network(Map<String, Double> held) {
        List<Placed> parts = new ArrayList<>(List.of(placed));
        parts.addAll(around);
        List<Node> nodes = ports().stream()
                .map(port -> held.containsKey(port) ? Node.held(port, held.get(port)) : Node.free(port))
                .toList();
        return new Network(nodes, parts);
    }

    /**
     * What is given besides.
     *
     * @param oil         that fills it
     * @param ambient     absolute ambient pressure [Pa]
     * @param temperature of the oil [K]
     */
    public Conditions conditions(Oil oil, double ambient, double temperature) {
        Map<String, Double> commands = new LinkedHashMap<>();
        commands.put(placed.name(), command);
        return new Conditions(speed, RANGE, lockup, oil, ambient, Map.of(REGION, temperature), commands, sensed);
    }

    /** Dimension of one of its own states, by the state's name. */
    public static Dimension ofState(String state) {
        return state.equals(OwnState.POSITION.name()) ? Dimension.LENGTH : Dimension.RATIO;
    }
}
