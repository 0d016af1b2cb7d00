package hotidle.cli.golden;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/**
 * A place in a tree of JSON.
 *
 * @param steps  keys, and numbers in brackets within arrays, from the root
 * @param parent the map or array that holds the value
 */
record JsonPath(List<String> steps, JsonNode parent) {

    static final JsonPath ROOT = new JsonPath(List.of(), null);

    JsonPath key(JsonNode map, String key) {
        return with(map, key);
    }

    JsonPath index(JsonNode array, int index) {
        return with(array, "[" + index + "]");
    }

    private JsonPath with(JsonNode holder, String step) {
        List<String> longer = new ArrayList<>(steps);
        longer.add(step);
        return new JsonPath(List.copyOf(longer), holder);
    }

    String last() {
        return steps.isEmpty() ? "" : steps.get(steps.size() - 1);
    }

    /** The key of the map that holds the value. */
    String map() {
        return steps.size() < 2 ? "" : steps.get(steps.size() - 2);
    }

    /** The steps up to one, as text. */
    String upTo(int end) {
        return String.join("/", steps.subList(0, end));
    }

    /** The place of the innermost array among the steps, or -1. */
    int innermostArray() {
        for (int i = steps.size() - 1; i >= 0; i--) {
            if (isIndex(i)) {
                return i;
            }
        }
        return -1;
    }

    boolean isIndex(int step) {
        return steps.get(step).startsWith("[");
    }

    /** A text of the map that holds the value, or nothing. */
    String beside(String key) {
        JsonNode value = parent == null ? null : parent.get(key);
        return value == null || !value.isTextual() ? "" : value.textValue();
    }

    /** A number of the map that holds the value, or NaN. */
    double numberBeside(String key) {
        JsonNode value = parent == null ? null : parent.get(key);
        return value == null || !value.isNumber() ? Double.NaN : value.doubleValue();
    }

    @Override
    public String toString() {
        return ("$." + String.join(".", steps)).replace(".[", "[");
    }
}
