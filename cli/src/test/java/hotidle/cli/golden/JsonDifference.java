package hotidle.cli.golden;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** What differs between a recorded tree of JSON and another: structure, order of keys, words exactly, numbers by {@link Tolerance}. */
final class JsonDifference {

    private final Scales scales;
    private final List<String> found = new ArrayList<>();

    private JsonDifference(JsonNode expected) {
        scales = new Scales(expected);
    }

    /** A line for each place that differs, with its path. */
    static List<String> between(JsonNode expected, JsonNode actual) {
        JsonDifference difference = new JsonDifference(expected);
        difference.compare(JsonPath.ROOT, expected, actual);
        return List.copyOf(difference.found);
    }

    private void compare(JsonPath path, JsonNode expected, JsonNode actual) {
        if (expected.isNumber() && actual.isNumber()) {
            compareNumbers(path, expected.doubleValue(), actual.doubleValue());
        } else if (expected.isArray() && actual.isArray()) {
            compareArrays(path, expected, actual);
        } else if (expected.isObject() && actual.isObject()) {
            compareMaps(path, expected, actual);
        } else if (!expected.equals(actual) && !(bothWords(expected, actual) && Tolerance.anything(path))) {
            found.add("  " + path + ": expected " + expected + ", actual " + actual);
        }
    }

    private static boolean bothWords(JsonNode expected, JsonNode actual) {
        return expected.isTextual() && actual.isTextual();
    }

    private void compareNumbers(JsonPath path, double expected, double actual) {
        double most = Tolerance.at(path, expected, scales);
        if (!(Math.abs(actual - expected) <= most)) {
            found.add("  " + path + ": expected " + expected + " within " + most + ", actual " + actual);
        }
    }

    private void compareArrays(JsonPath path, JsonNode expected, JsonNode actual) {
        if (expected.size() != actual.size()) {
            found.add("  " + path + ": expected " + expected.size() + " elements, actual " + actual.size());
        }
        for (int i = 0; i < Math.min(expected.size(), actual.size()); i++) {
            compare(path.index(expected, i), expected.get(i), actual.get(i));
        }
    }

    private void compareMaps(JsonPath path, JsonNode expected, JsonNode actual) {
        List<String> was = keys(expected);
        List<String> is = keys(actual);
        if (!was.equals(is)) {
            List<String> gone = new ArrayList<>(was);
            gone.removeAll(is);
            List<String> come = new ArrayList<>(is);
            come.removeAll(was);
            found.add("  " + path + ": "
                    + (gone.isEmpty() && come.isEmpty()
                            ? "expected keys in the order " + was + ", actual " + is
                            : "keys that are gone " + gone + ", keys that are new " + come));
        }
        was.stream()
                .filter(actual::has)
                .forEach(key -> compare(path.key(expected, key), expected.get(key), actual.get(key)));
    }

    private static List<String> keys(JsonNode map) {
        List<String> keys = new ArrayList<>();
        map.fieldNames().forEachRemaining(keys::add);
        return keys;
    }
}
