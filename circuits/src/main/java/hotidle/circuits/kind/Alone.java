package hotidle.circuits.kind;

import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Place;
import hotidle.circuits.text.Value;
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
 * @param added what is written with what a circuit would say besides
 * @param finds ports whose pressure it makes itself, so that they are not held unless their pressure is given
 */
public record Alone(
        List<DutyKey> asks,
        Map<String, String> ties,
        UnaryOperator<Key> asked,
        UnaryOperator<Value.Entries> added,
        Set<String> finds) {

    /** The one range there is. */
    public static final String RANGE = "any";

    /** As in a circuit, with nothing asked for besides. */
    static final Alone AS_IN_A_CIRCUIT = asking();

    public Alone {
        asks = List.copyOf(asks);
        ties = Map.copyOf(ties);
        finds = Set.copyOf(finds);
    }

    /** What is asked for in place of what a circuit would say. */
    static Alone asking(DutyKey... keys) {
        return new Alone(List.of(keys), Map.of(), UnaryOperator.identity(), UnaryOperator.identity(), Set.of());
    }

    /** The same with keys that are not asked for. */
    Alone without(String why, String... keys) {
        Map<String, String> all = new LinkedHashMap<>(ties);
        List.of(keys).forEach(key -> all.put(key, why));
        return new Alone(asks, all, asked, added, finds);
    }

    /** The same with keys that are asked for otherwise than in a circuit. */
    Alone asked(UnaryOperator<Key> other) {
        return new Alone(asks, ties, other, added, finds);
    }

    /** The same, with what a circuit would say besides. */
    Alone adding(UnaryOperator<Value.Entries> other) {
        return new Alone(asks, ties, asked, other, finds);
    }

    /** What is written, with a key that a circuit would give; its place is the beginning. */
    static Value.Entries put(Value.Entries written, String key, Value value) {
        return written.with(new Value.Entry(key, Place.START, value));
    }

    /** A word that a circuit would say. */
    static Value text(String text) {
        return new Value.Text(text, Place.START);
    }

    /** The same with a port whose pressure it makes itself. */
    Alone finding(String port) {
        return new Alone(asks, ties, asked, added, Set.of(port));
    }
}
