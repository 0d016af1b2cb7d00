package hotidle.circuits.kind;

import hotidle.circuits.shape.Key;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * How a kind of part is asked for on its own, without a circuit. Nodes, regions and ranges are left out of any kind.
 *
 * @param asks  what is asked for in place of what a circuit would say
 * @param ties  keys that tie it to other parts or to a duty, each with the reason why it is not asked for
 * @param asked a key of a circuit file as it is asked for here
 * @param finds ports whose pressure it makes itself, so that they are not held unless their pressure is given
 */
public record Alone(List<DutyKey> asks, Map<String, String> ties, UnaryOperator<Key> asked, Set<String> finds) {

    /** As in a circuit, with nothing asked for besides. */
    static final Alone AS_IN_A_CIRCUIT = new Alone(List.of(), Map.of(), UnaryOperator.identity(), Set.of());

    public Alone {
        asks = List.copyOf(asks);
        ties = Map.copyOf(ties);
        finds = Set.copyOf(finds);
    }

    /** What is asked for in place of what a circuit would say. */
    static Alone asking(DutyKey... keys) {
        return new Alone(List.of(keys), Map.of(), UnaryOperator.identity(), Set.of());
    }

    /** The same with keys that are not asked for. */
    Alone without(String why, String... keys) {
        Map<String, String> all = new LinkedHashMap<>(ties);
        List.of(keys).forEach(key -> all.put(key, why));
        return new Alone(asks, all, asked, finds);
    }

    /** The same with keys that are asked for otherwise than in a circuit. */
    Alone asked(UnaryOperator<Key> other) {
        return new Alone(asks, ties, other, finds);
    }

    /** The same with a port whose pressure it makes itself. */
    Alone finding(String port) {
        return new Alone(asks, ties, asked, Set.of(port));
    }
}
