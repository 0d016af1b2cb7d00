package hotidle.cli.golden;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/**
 * How JSON is recorded: short enough to keep, and a state, a map or a row a line, so that a diff can be read. Numbers keep twelve
 * digits, far more than are compared. Rows with the same keys become a table: {@code {"@columns": [keys], "@rows": [[values], …]}}.
 */
final class GoldenJson {

    private static final int WIDTH = 150;
    private static final MathContext DIGITS = new MathContext(12);
    private static final String COLUMNS = "@columns";
    private static final String ROWS = "@rows";

    private GoldenJson() {}

    static String text(JsonNode node) {
        StringBuilder text = new StringBuilder();
        append(text, node, 0);
        return text.append("\n").toString();
    }

    private static void append(StringBuilder text, JsonNode node, int indent) {
        String compact = compact(node);
        if (compact.length() + indent <= WIDTH || !node.isContainerNode()) {
            text.append(compact);
            return;
        }
        if (node.isArray() && columns((ArrayNode) node).size() > 1) {
            appendTable(text, (ArrayNode) node, indent);
            return;
        }
        String pad = " ".repeat(indent + 1);
        text.append(node.isArray() ? "[" : "{").append("\n").append(pad);
        int column = pad.length();
        boolean first = true;
        for (Member member : members(node)) {
            StringBuilder one = new StringBuilder(member.key);
            append(one, member.value, indent + 1);
            boolean fits = member.value.isValueNode() && column + one.length() + 2 <= WIDTH;
            if (!first) {
                text.append(fits ? ", " : ",\n" + pad);
                column = fits ? column + 2 : pad.length();
            }
            text.append(one);
            column = member.value.isValueNode() ? column + one.length() : WIDTH;
            first = false;
        }
        text.append("\n").append(" ".repeat(indent)).append(node.isArray() ? "]" : "}");
    }

    private static void appendTable(StringBuilder text, ArrayNode rows, int indent) {
        String pad = " ".repeat(indent + 1);
        List<String> keys = columns(rows);
        text.append("{\"" + COLUMNS + "\": [\"")
                .append(String.join("\", \"", keys))
                .append("\"], \"" + ROWS + "\": [");
        for (int i = 0; i < rows.size(); i++) {
            ArrayNode row = JsonNodeFactory.instance.arrayNode();
            for (String key : keys) {
                row.add(rows.get(i).get(key));
            }
            text.append(i == 0 ? "\n" : ",\n").append(pad).append(compact(row));
        }
        text.append("\n").append(" ".repeat(indent)).append("]}");
    }

    /** The keys that all rows have in the same order and with plain values; none where they differ. */
    private static List<String> columns(ArrayNode rows) {
        List<String> keys = rows.isEmpty() ? List.of() : keys(rows.get(0));
        for (JsonNode row : rows) {
            boolean plain = row.isObject() && keys(row).equals(keys);
            for (JsonNode value : row) {
                plain &= value.isValueNode();
            }
            if (!plain || rows.size() < 2) {
                return List.of();
            }
        }
        return keys;
    }

    private static List<String> keys(JsonNode node) {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    private record Member(String key, JsonNode value) {}

    private static List<Member> members(JsonNode node) {
        List<Member> members = new ArrayList<>();
        if (node.isArray()) {
            node.forEach(value -> members.add(new Member("", value)));
        } else {
            node.properties().forEach(one -> members.add(new Member("\"" + one.getKey() + "\": ", one.getValue())));
        }
        return members;
    }

    private static String compact(JsonNode node) {
        if (node.isContainerNode()) {
            List<String> all = new ArrayList<>();
            members(node).forEach(member -> all.add(member.key + compact(member.value)));
            return (node.isArray() ? "[" : "{") + String.join(", ", all) + (node.isArray() ? "]" : "}");
        }
        if (node.isFloatingPointNumber()) {
            return Double.toString(
                    new BigDecimal(node.doubleValue()).round(DIGITS).doubleValue());
        }
        return node.toString();
    }

    /** A recorded tree with its tables written out as rows again. */
    static JsonNode plain(JsonNode recorded) {
        if (recorded.has(COLUMNS)) {
            ArrayNode rows = JsonNodeFactory.instance.arrayNode();
            for (JsonNode row : recorded.get(ROWS)) {
                ObjectNode one = rows.addObject();
                for (int i = 0; i < row.size(); i++) {
                    one.set(recorded.get(COLUMNS).get(i).textValue(), row.get(i));
                }
            }
            return rows;
        }
        if (recorded.isArray()) {
            ArrayNode all = JsonNodeFactory.instance.arrayNode();
            recorded.forEach(one -> all.add(plain(one)));
            return all;
        }
        if (recorded.isObject()) {
            ObjectNode all = JsonNodeFactory.instance.objectNode();
            recorded.properties().forEach(one -> all.set(one.getKey(), plain(one.getValue())));
            return all;
        }
        return recorded;
    }
}
