package hotidle.circuits.shape;

import java.util.LinkedHashMap;
import java.util.Map;

/** What a reading notes besides problems: defaults taken and sizes that wear, by path. Work space of one reading. */
public final class ReadingLog {

    private final Map<String, Key.Default> defaults = new LinkedHashMap<>();
    private final Map<String, Map<String, Attributes.Sizes>> sizes = new LinkedHashMap<>();

    /** Notes a default. */
    public void note(String path, Key.Default fallback) {
        defaults.put(path, fallback);
    }

    /** Takes a default back that was not needed, since the value follows from something else. */
    public void forget(String path) {
        defaults.remove(path);
    }

    /** Notes a size as it is in use. */
    void note(String path, Attributes.Sizes size) {
        // a part that is read on its own has no name in front of its keys
        String part = path.substring(0, Math.max(path.indexOf('.'), 0));
        sizes.computeIfAbsent(part, name -> new LinkedHashMap<>()).put(path, size);
    }

    /** Notes the sizes of a part that another reading has read. */
    public void noteSizes(String part, ReadingLog other) {
        if (other.sizes.containsKey(part)) {
            sizes.put(part, other.sizes.get(part));
        }
    }

    /** Defaults taken, by path. */
    public Map<String, Key.Default> defaults() {
        return defaults;
    }

    /** Sizes that wear, by path. */
    public Map<String, Attributes.Sizes> sizes() {
        Map<String, Attributes.Sizes> all = new LinkedHashMap<>();
        sizes.values().forEach(all::putAll);
        return all;
    }
}
