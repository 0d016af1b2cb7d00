package hotidle.circuits;

import hotidle.circuits.kind.Kind;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The keys of a part on its own: those of a circuit file, less what ties it to a circuit, and what stands in for that. */
public final class PartKeys {

    private PartKeys() {}

    private static final String HEAT = "its outlet temperature follows from the temperatures of a duty, in a circuit";

    /** Keys of a circuit file that are not asked for here, with the reason. */
    private static final Map<String, String> TIES = Map.ofEntries(
            Map.entry("kind", "the kind stands in front of the keys"),
            Map.entry("like", "there is no other part here"),
            Map.entry("land-of", "there is no other part here"),
            Map.entry("about", "it changes no number"),
            Map.entry("group", "it changes no number"),
            Map.entry("source", "it changes no number"),
            Map.entry("region", "the oil of a part on its own has one temperature: --temperature 100degC"),
            Map.entry("ranges", "a part on its own is in no range: all its passages are open, all its areas fed"),
            Map.entry("ports", "its ports are those that its passages name"),
            Map.entry("heat", HEAT),
            Map.entry("heat-flow", HEAT),
            Map.entry("heat-oil", HEAT),
            Map.entry("heat-medium", HEAT),
            Map.entry("inlet-region", HEAT),
            Map.entry("medium-region", HEAT),
            Map.entry("inlet", "an inlet of its own stands in for it"),
            Map.entry("loaded-by", "load is all that it carries"),
            Map.entry("weight", "load is all that it carries"),
            Map.entry("weight-angle", "load is all that it carries"));

    /** Keys that take the place of what a circuit would say. */
    private static final Map<String, List<Key>> STANDING_IN = Map.of(
            "bushing", List.of(load(), speed()),
            "pump-chamber", List.of(speed()),
            "crescent-pump", List.of(speed()),
            "vane-pump", List.of(speed()),
            "solenoid", List.of(command()),
            "converter", List.of(lockup()));

    private static Key load() {
        return Key.quantity("load", Dimension.FORCE, "load that it carries, side loads and weight together")
                .allowed("0 N", "1000000 N")
                .usual("10 N", "20000 N");
    }

    private static Key speed() {
        return Key.quantity("speed", Dimension.SPEED, "speed at which it turns")
                .allowed("0 rpm", "20000 rpm")
                .usual("400 rpm", "7000 rpm");
    }

    private static Key command() {
        return Key.quantity("command", Dimension.PRESSURE, "pilot pressure that it is asked for")
                .allowed("0 psi", "5000 psi")
                .usual("0 psi", "300 psi");
    }

    private static Key lockup() {
        return Key.choice("lockup", "state of the lockup clutch", "off", "slipping", "on")
                .byDefault("off", "assumed");
    }

    /** The keys that are asked for. */
    public static List<Key> of(Kind kind) {
        List<Key> keys = new ArrayList<>();
        for (Key key : kind.shape().keys()) {
            if (why(key).isEmpty()) {
                keys.add(asked(kind, key));
            }
        }
        keys.addAll(STANDING_IN.getOrDefault(kind.word(), List.of()));
        return List.copyOf(keys);
    }

    /** A key as it is asked for on its own: a gap without a valve that it is a land of needs its own sizes. */
    private static Key asked(Kind kind, Key key) {
        if (kind.word().equals("annular-gap") && key.type() instanceof Type.Size) {
            return key.demanded();
        }
        return key.name().equals("bushing-material") ? anyBushing(key) : withoutTies(key);
    }

    private static Key anyBushing(Key key) {
        return key.byDefault("babbitt", "a fitted bushing (assumed)");
    }

    private static Key withoutTies(Key key) {
        if (!(key.type() instanceof Type.Groups groups)) {
            return key;
        }
        Shape inner = groups.shape();
        List<Key> asked = inner.keys().stream()
                .filter(one -> !one.name().equals("ranges"))
                .toList();
        Type type = new Type.Groups(new Shape(inner.what(), asked, inner.brief()));
        Key same = Key.of(key.name(), type, key.meaning());
        return key.needed() ? same : same.optional();
    }

    /** Why a key of a circuit file is not asked for here; empty where it is. */
    static Optional<String> why(Key key) {
        return node(key)
                ? Optional.of("its ports stand at pressures of your choice: --at " + key.name() + "=150psi")
                : Optional.ofNullable(TIES.get(key.name()));
    }

    static boolean node(Key key) {
        return key.type() instanceof Type.Name name && name.of() == Names.NODE;
    }

    /** Keys under which the file would name a node, or another part. */
    static Stream<Key> named(Kind kind, Names of) {
        return kind.shape().keys().stream().filter(key -> key.type() instanceof Type.Name name && name.of() == of);
    }
}
