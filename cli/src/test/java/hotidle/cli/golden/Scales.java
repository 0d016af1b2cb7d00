package hotidle.cli.golden;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The scale of each number of a tree: the largest of its quantity beside it. A leak of 1e-20 m³/s beside a flow of 1e-5 m³/s is
 * nothing, and is not compared digit by digit.
 *
 * <p>Of one quantity are: all numbers in a map whose key ends in a unit ({@code pressures_pa}); in {@code states} and {@code parts} of
 * a state those of one name; in {@code figures} those of one unit; else those of one key in all rows of an array, and of one unit where
 * the row names it.
 */
final class Scales {

    private static final Pattern UNIT = Pattern.compile(".*_(pa|m3_s|kg_s|m|c|k|rpm|w|n|n_m|rad|m2)");

    private final Map<String, Double> largest = new HashMap<>();

    Scales(JsonNode root) {
        collect(root, JsonPath.ROOT);
    }

    private void collect(JsonNode node, JsonPath path) {
        if (node.isNumber()) {
            largest.merge(quantity(path), Math.abs(node.doubleValue()), Math::max);
        }
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            collect(node.get(i), path.index(node, i));
        }
        node.properties().forEach(one -> collect(one.getValue(), path.key(node, one.getKey())));
    }

    double at(JsonPath path) {
        return largest.getOrDefault(quantity(path), 0.0);
    }

    static String quantity(JsonPath path) {
        int size = path.steps().size();
        for (int i = 0; i < size - 1; i++) {
            String key = path.steps().get(i);
            boolean map = !path.isIndex(i + 1);
            if (map && (UNIT.matcher(key).matches() || key.equals("reynolds_by_path"))) {
                return path.upTo(i + 1);
            }
            if (map && key.equals("states")) {
                return path.upTo(i + 1) + " " + path.last().replaceFirst("^.*\\.", "");
            }
            if (map && key.equals("parts")) {
                return path.upTo(i + 1) + " " + path.last();
            }
            Matcher unit = UNIT.matcher(path.last());
            if (map && key.equals("figures") && unit.matches()) {
                return path.upTo(i + 1) + " " + unit.group(1);
            }
        }
        int array = path.innermostArray();
        String rows = array < 0
                ? path.toString()
                : path.upTo(array) + " " + String.join("/", path.steps().subList(array + 1, size));
        return rows + " " + path.beside("unit") + path.beside("size_unit");
    }
}
