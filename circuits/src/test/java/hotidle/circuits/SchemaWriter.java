package hotidle.circuits;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hotidle.circuits.kind.Kind;
import hotidle.circuits.kind.Kinds;
import hotidle.circuits.section.CircuitFile;
import hotidle.circuits.shape.Bounds;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Writes the JSON Schema of the language from its declarations. What it refuses, the reader refuses; the reader knows more. There
 * are two forms of everything: whole, where needed keys must stand, and a part of it, for a file that is based on another and
 * for a part that is like another.
 */
final class SchemaWriter {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final String NUMBER = "[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d{1,2})?";

    private final ObjectNode definitions = JSON.objectNode();

    private SchemaWriter() {}

    static ObjectNode schema() {
        SchemaWriter writer = new SchemaWriter();
        for (Dimension dimension : Dimension.values()) {
            writer.definitions.set(name(dimension), quantity(dimension));
        }
        for (Kind kind : Kinds.ALL) {
            writer.definitions.set("whole-" + kind.word(), writer.keys(kind.shape(), true));
            writer.definitions.set("some-" + kind.word(), writer.keys(kind.shape(), false));
        }
        writer.definitions.set("whole-part", writer.part(true));
        writer.definitions.set("some-part", writer.part(false));
        ObjectNode root = JSON.objectNode();
        root.put("$schema", "http://json-schema.org/draft-07/schema#");
        root.put("title", "Circuit file of Hot Idle");
        root.put("description", "Written from the declarations that files are checked against; do not edit.");
        root.set("if", required("based-on"));
        root.set("then", writer.keys(CircuitFile.CIRCUIT, false));
        root.set("else", writer.keys(CircuitFile.CIRCUIT, true));
        root.set("definitions", writer.definitions);
        return root;
    }

    private static String name(Dimension dimension) {
        return dimension.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static ObjectNode ref(String name) {
        return JSON.objectNode().put("$ref", "#/definitions/" + name);
    }

    private static ObjectNode required(String... keys) {
        ObjectNode node = JSON.objectNode();
        ArrayNode names = node.putArray("required");
        List.of(keys).forEach(names::add);
        return node;
    }

    private static ObjectNode any(ObjectNode... ways) {
        ObjectNode node = JSON.objectNode();
        ArrayNode all = node.putArray("anyOf");
        List.of(ways).forEach(all::add);
        return node;
    }

    private static ObjectNode type(String... types) {
        ObjectNode node = JSON.objectNode();
        if (types.length == 1) {
            return node.put("type", types[0]);
        }
        ArrayNode all = node.putArray("type");
        List.of(types).forEach(all::add);
        return node;
    }

    private static ObjectNode pattern(String pattern) {
        return type("string").put("pattern", pattern);
    }

    /** A number and one of its units, with the signs that the reader takes for plain letters. */
    private static ObjectNode quantity(Dimension dimension) {
        StringBuilder units = new StringBuilder();
        for (String unit : Units.spellings(dimension)) {
            units.append(units.length() == 0 ? "" : "|").append(word(unit));
        }
        ObjectNode text = pattern("^\\s*~?\\s*" + NUMBER + "\\s*(" + units + ")\\s*$");
        return dimension == Dimension.RATIO ? any(type("number"), text) : text;
    }

    private static String word(String unit) {
        return Pattern.compile("[.*/^]")
                .matcher(unit)
                .replaceAll("\\\\$0")
                .replace("\\.", "[.\u00b7]")
                .replaceFirst("^u", "[u\u00b5\u03bc]")
                .replaceFirst("^deg", "(deg|\u00b0)")
                .replace("2", "[2\u00b2]")
                .replace("3", "[3\u00b3]");
    }

    private ObjectNode keys(Shape shape, boolean whole) {
        ObjectNode node = type("object");
        ObjectNode properties = node.putObject("properties");
        ArrayNode needed = JSON.arrayNode();
        for (Key key : shape.keys()) {
            ObjectNode value = value(key.type(), whole);
            value.put("description", about(key));
            key.fallback().ifPresent(fallback -> value.put("default", fallback.text()));
            properties.set(key.name(), value);
            if (key.needed() && whole) {
                needed.add(key.name());
            }
        }
        node.put("additionalProperties", false);
        if (!needed.isEmpty()) {
            node.set("required", needed);
        }
        if (needed.isEmpty()) {
            return shape.brief().isEmpty() ? any(type("null"), node) : any(type("null", "string", "number"), node);
        }
        return shape.brief().isEmpty() ? node : any(type("string", "number"), node);
    }

    private static String about(Key key) {
        StringBuilder text = new StringBuilder(key.meaning() + ": " + key.type().says());
        key.usual()
                .map(Bounds::words)
                .ifPresent(usual -> text.append("; usual ").append(usual));
        key.allowed()
                .map(Bounds::words)
                .ifPresent(allowed -> text.append("; allowed ").append(allowed));
        key.fallback().ifPresent(one -> text.append("; left out: " + one.text() + ", " + one.source()));
        text.append(key.where().isEmpty() ? "" : "; needed where " + key.where());
        return text.append(key.measure().isEmpty() ? "" : "; measured: " + key.measure())
                .toString();
    }

    private ObjectNode value(Type type, boolean whole) {
        if (type instanceof Type.Dimensioned quantity) {
            return any(ref(name(quantity.dimension())));
        } else if (type instanceof Type.Wearing) {
            ObjectNode sizes = type("object");
            List.of("new", "limit", "measured")
                    .forEach(one -> sizes.withObject("/properties").set(one, ref("length")));
            sizes.put("additionalProperties", false);
            return any(ref("length"), sizes);
        } else if (type instanceof Type.WholeNumber) {
            return any(type("integer"), pattern("^~?\\d{1,6}$"));
        } else if (type instanceof Type.Choice choice) {
            return choice(choice.words());
        } else if (type instanceof Type.Name) {
            return type("string", "number");
        } else if (type instanceof Type.NameList) {
            return any(type("string", "number"), list(type("string", "number")));
        } else if (type instanceof Type.RisingPair pair) {
            return list(ref(name(pair.dimension()))).put("minItems", 2).put("maxItems", 2);
        } else if (type instanceof Type.OneGroup group) {
            return keys(group.shape(), whole);
        } else if (type instanceof Type.NamedGroups groups) {
            return named(keys(groups.shape(), whole));
        } else if (type instanceof Type.Ports) {
            return named(type("string", "number"));
        } else if (type instanceof Type.PerName per) {
            return named(ref(name(per.dimension())));
        } else if (type instanceof Type.Notes) {
            return any(named(words()), list(type("string", "number")));
        } else if (type instanceof Type.Table table) {
            ObjectNode row = type("array").put("minItems", 2).put("maxItems", 2);
            row.putArray("items").add(ref(name(table.x()))).add(ref(name(table.y())));
            return list(row).put("minItems", 1);
        } else if (type instanceof Type.PartNames) {
            return named(ref(whole ? "whole-part" : "some-part"));
        } else if (type instanceof Type.ViscosityLine) {
            return any(type("string"), list(type("string")).put("minItems", 1).put("maxItems", 4));
        }
        return type instanceof Type.Anything ? JSON.objectNode() : words();
    }

    private static ObjectNode words() {
        return type("string", "number", "boolean", "null");
    }

    private static ObjectNode list(ObjectNode item) {
        ObjectNode node = type("array");
        node.set("items", item);
        return node;
    }

    /** Names of one's own, each with a value; nothing at all counts as none. */
    private static ObjectNode named(ObjectNode value) {
        ObjectNode node = type("object", "null");
        node.set("additionalProperties", value);
        return node;
    }

    /** Some editors still read yes, no, on and off as true and false. */
    private static ObjectNode choice(List<String> words) {
        ObjectNode node = JSON.objectNode();
        ArrayNode all = node.putArray("enum");
        words.forEach(all::add);
        if (words.contains("yes") || words.contains("on")) {
            all.add(true).add(false);
        }
        return node;
    }

    private ObjectNode part(boolean whole) {
        ObjectNode node = type("object");
        ArrayNode kinds = node.withObject("/properties/kind").putArray("enum");
        node.withObject("/properties/kind").put("description", "what sort of part it is");
        Kinds.words().forEach(kinds::add);
        ArrayNode all = node.putArray("allOf");
        if (whole) {
            all.add(any(required("kind"), required("like")));
        }
        for (String word : Kinds.words()) {
            ObjectNode of = JSON.objectNode();
            of.withObject("/properties/kind").put("const", word);
            of.putArray("required").add("kind");
            ObjectNode then = JSON.objectNode();
            if (whole) {
                then.set("if", required("like"));
                then.set("then", ref("some-" + word));
                then.set("else", ref("whole-" + word));
            }
            ObjectNode rule = all.addObject();
            rule.set("if", of);
            rule.set("then", whole ? then : ref("some-" + word));
        }
        return node;
    }
}
