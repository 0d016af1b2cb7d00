package hotidle.circuits.shape;

import java.util.List;
import java.util.Optional;

/**
 * The keys that may stand in one place.
 *
 * @param what  what has them, for example orifice
 * @param keys  in the order of the reference
 * @param brief key that a plain text stands for, where keys would be too much; empty for none
 */
public record Shape(String what, List<Key> keys, String brief) {

    public Shape {
        keys = List.copyOf(keys);
    }

    public Shape(String what, List<Key> keys) {
        this(what, keys, "");
    }

    /** The key of a name. */
    public Optional<Key> key(String name) {
        for (Key key : keys) {
            if (key.name().equals(name)) {
                return Optional.of(key);
            }
        }
        return Optional.empty();
    }

    /** The names of all keys. */
    public List<String> names() {
        return keys.stream().map(Key::name).toList();
    }
}
