package hotidle.circuits.sheet;

import hotidle.circuits.kind.Kinds;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import java.util.List;
import java.util.Optional;

/** Where and with what a size of a part is measured, as its kind says it. */
public final class HowMeasured {

    private HowMeasured() {}

    /**
     * In words; empty where its kind says nothing.
     *
     * @param kind word of the part's kind
     * @param path of the size's key
     */
    public static String of(String kind, String path) {
        return key(kind, path).map(Key::measure).orElse("");
    }

    /** The same where a row stands for so many equal ones: what to write then. */
    public static String ofEach(String how, int alike) {
        return alike == 1
                ? how
                : how + (how.isEmpty() ? "" : "; ") + "stands for " + alike
                        + " alike: one reading for all, or one of each, parted by semicolons";
    }

    /** Whether wear makes such a size smaller, as a shaft, and not larger, as a bore. */
    public static boolean shrinks(String kind, String path) {
        return key(kind, path)
                .map(key -> key.type() instanceof Type.Wearing wearing && wearing.shrinks())
                .orElse(false);
    }

    private static Optional<Key> key(String kind, String path) {
        return Kinds.of(kind).flatMap(known -> key(known.shape(), List.of(path.split("\\.", -1))));
    }

    private static Optional<Key> key(Shape shape, List<String> path) {
        if (path.isEmpty()) {
            return Optional.empty();
        }
        List<String> rest = path.subList(1, path.size());
        return shape.key(path.get(0)).flatMap(key -> rest.isEmpty() ? Optional.of(key) : key(key, rest));
    }

    private static Optional<Key> key(Key key, List<String> rest) {
        if (key.type() instanceof Type.OneGroup group) {
            return key(group.shape(), rest);
        }
        return key.type() instanceof Type.NamedGroups groups
                ? key(groups.shape(), rest.subList(1, rest.size()))
                : Optional.empty();
    }
}
