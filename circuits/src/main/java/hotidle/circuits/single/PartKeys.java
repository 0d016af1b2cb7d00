package hotidle.circuits.single;

import hotidle.circuits.kind.Kind;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The keys of a part on its own: those of a circuit file, less what ties it to a circuit, and what stands in for that. */
public final class PartKeys {

    private PartKeys() {}

    /** Keys that every kind has and that are not asked for here, with the reason. */
    private static final Map<String, String> TIES = Map.of(
            "kind", "the kind stands in front of the keys",
            "like", "there is no other part here",
            "about", "it changes no number",
            "group", "it changes no number",
            "source", "it changes no number",
            "region", "the oil of a part on its own has one temperature: --temperature 100degC");

    /** The keys that are asked for. */
    public static List<Key> of(Kind kind) {
        List<Key> keys = new ArrayList<>();
        for (Key key : kind.shape().keys()) {
            if (why(kind, key).isEmpty()) {
                keys.add(withoutRanges(kind.facts().alone().asked().apply(key)));
            }
        }
        kind.facts().alone().asks().forEach(asked -> keys.add(asked.key()));
        return List.copyOf(keys);
    }

    /** A part on its own is in no range: all its passages are open, all its areas fed. */
    private static Key withoutRanges(Key key) {
        if (!(key.type() instanceof Type.NamedGroups groups)) {
            return key;
        }
        Shape inner = groups.shape();
        List<Key> asked = inner.keys().stream().filter(one -> !ranges(one)).toList();
        Type type = new Type.NamedGroups(new Shape(inner.what(), asked, inner.brief()));
        Key same = Key.of(key.name(), type, key.meaning());
        return key.needed() ? same : same.optional();
    }

    /** Why a key of a circuit file is not asked for here; empty where it is. */
    static Optional<String> why(Kind kind, Key key) {
        return node(key)
                ? Optional.of("its ports stand at pressures of your choice: --at " + key.name() + "=150psi")
                : Optional.ofNullable(kind.facts().alone().ties().get(key.name()))
                        .or(() -> Optional.ofNullable(TIES.get(key.name())));
    }

    private static boolean ranges(Key key) {
        return key.type() instanceof Type.NameList list && list.of() == Names.RANGE;
    }

    static boolean node(Key key) {
        return key.type() instanceof Type.Name name && name.of() == Names.NODE;
    }

    /** Keys under which the file would name a node, or another part. */
    static Stream<Key> named(Kind kind, Names of) {
        return kind.shape().keys().stream().filter(key -> key.type() instanceof Type.Name name && name.of() == of);
    }
}
