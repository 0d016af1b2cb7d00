package hotidle.circuits.sheet;

import hotidle.circuits.kind.Kinds;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import java.util.List;

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
        return Kinds.of(kind)
                .map(known -> of(known.shape(), List.of(path.split("\\.", -1))))
                .orElse("");
    }

    private static String of(Shape shape, List<String> path) {
        if (path.isEmpty()) {
            return "";
        }
        List<String> rest = path.subList(1, path.size());
        return shape.key(path.get(0))
                .map(key -> rest.isEmpty() ? key.measure() : of(key, rest))
                .orElse("");
    }

    private static String of(Key key, List<String> rest) {
        if (key.type() instanceof Type.OneGroup group) {
            return of(group.shape(), rest);
        }
        return key.type() instanceof Type.NamedGroups groups ? of(groups.shape(), rest.subList(1, rest.size())) : "";
    }
}
