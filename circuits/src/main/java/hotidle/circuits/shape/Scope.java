package hotidle.circuits.shape;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The names that a file declares.
 *
 * @param names by what they stand for
 */
public record Scope(Map<Names, List<String>> names) {

    public Scope {
        Map<Names, List<String>> all = new EnumMap<>(Names.class);
        for (Names of : Names.values()) {
            all.put(of, List.copyOf(names.getOrDefault(of, List.of())));
        }
        names = Map.copyOf(all);
    }

    /** The names of one sort. */
    public List<String> of(Names sort) {
        return names.get(sort);
    }
}
