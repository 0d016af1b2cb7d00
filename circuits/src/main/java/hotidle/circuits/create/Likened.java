package hotidle.circuits.create;

import java.util.LinkedHashMap;
import java.util.Map;

/** Parts that differ little from one before them, written as like that one. */
final class Likened {

    /** Characters that a like must save to be worth reading (chosen). */
    private static final int SAVED = 25;

    private Likened() {}

    /** Parts by name, each with all of its keys or like another. */
    static Map<String, Object> of(Map<String, Object> parts) {
        Map<String, Object> written = new LinkedHashMap<>();
        Map<String, Map<String, Object>> before = new LinkedHashMap<>();
        parts.forEach((name, value) -> {
            Map<String, Object> part = Draft.map(value).orElseThrow();
            Map<String, Object> best = part;
            for (Map.Entry<String, Map<String, Object>> one : before.entrySet()) {
                Map<String, Object> shorter = likeOne(one.getKey(), one.getValue(), part);
                if (length(shorter) < length(best) - (best == part ? SAVED : 0)) {
                    best = shorter;
                }
            }
            written.put(name, best);
            before.put(name, part);
        });
        return written;
    }

    private static int length(Map<String, Object> part) {
        return part.toString().length();
    }

    /** The part as like another, or whole where it cannot be. */
    private static Map<String, Object> likeOne(String name, Map<String, Object> model, Map<String, Object> part) {
        Map<String, Object> over = new LinkedHashMap<>(Map.of("like", name));
        part.forEach((key, value) -> {
            if (!value.equals(model.get(key))) {
                over.put(key, value);
            }
        });
        boolean sameKind = part.get("kind").equals(model.get("kind"));
        Map<String, Object> laid = new LinkedHashMap<>(over);
        laid.remove("like");
        return sameKind && merged(model, laid).equals(part) ? over : part;
    }

    private static Map<String, Object> merged(Map<String, Object> under, Map<String, Object> over) {
        Map<String, Object> all = new LinkedHashMap<>(under);
        over.forEach((key, value) -> all.put(
                key,
                Draft.map(value)
                        .filter(inner -> Draft.map(under.get(key)).isPresent())
                        .<Object>map(inner -> merged(Draft.map(under.get(key)).orElseThrow(), inner))
                        .orElse(value)));
        return all;
    }
}
