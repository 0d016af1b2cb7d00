package hotidle.circuits.create;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.assemble.Likes;
import hotidle.circuits.text.Problem;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Value;
import hotidle.circuits.text.Yaml;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A circuit file to change: mappings, lists and texts, every part written out. Work space of one creation. */
final class Draft {

    private final Map<String, Object> root;

    private Draft(Map<String, Object> root) {
        this.root = root;
    }

    /** Of a file that is known to be good. */
    static Draft of(String text) {
        Problems problems = new Problems("", text);
        Value.Entries tree = (Value.Entries) Yaml.read(text, problems).orElseThrow();
        Draft draft = new Draft(map(Likes.expand(tree, problems)));
        draft.section("parts").values().forEach(part -> map(part).ifPresent(keys -> keys.remove("like")));
        return draft;
    }

    private static Map<String, Object> map(Value.Entries entries) {
        Map<String, Object> map = new LinkedHashMap<>();
        entries.entries().forEach(entry -> map.put(entry.key(), plain(entry.value())));
        return map;
    }

    private static Object plain(Value value) {
        if (value instanceof Value.Entries entries) {
            return map(entries);
        }
        if (value instanceof Value.Items items) {
            List<Object> list = new ArrayList<>();
            items.items().forEach(item -> list.add(plain(item)));
            return list;
        }
        return ((Value.Text) value).text();
    }

    Map<String, Object> root() {
        return root;
    }

    /** The unit that it describes, in its first build; empty where it has faults. */
    Optional<Transmission> unit() {
        return unit(root);
    }

    /** The first fault of the file as it stands; empty where it has none. */
    Optional<String> fault() {
        return CircuitReader.read(CircuitWriter.write(List.of(), root), "new.yaml").problems().stream()
                .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                .map(problem -> problem.headline().replaceFirst("^[^ ]+ error: ", ""))
                .findFirst();
    }

    /** The same of the mapping of a whole file. */
    static Optional<Transmission> unit(Map<String, Object> whole) {
        return CircuitReader.read(CircuitWriter.write(List.of(), whole), "new.yaml")
                .circuit()
                .map(DescribedCircuit::unit);
    }

    /** A section; an empty one where the file has none. */
    Map<String, Object> section(String name) {
        return map(root.get(name)).orElseGet(LinkedHashMap::new);
    }

    /** A part. */
    Map<String, Object> part(String name) {
        return map(section("parts").get(name)).orElseThrow();
    }

    /** A value as a mapping; empty where it is none. */
    @SuppressWarnings("unchecked")
    static Optional<Map<String, Object>> map(Object value) {
        return value instanceof Map<?, ?> map ? Optional.of((Map<String, Object>) map) : Optional.empty();
    }

    /** A value as a list; empty where it is none. */
    @SuppressWarnings("unchecked")
    static Optional<List<Object>> list(Object value) {
        return value instanceof List<?> list ? Optional.of((List<Object>) list) : Optional.empty();
    }

    /** A text behind a key; empty where there is none. */
    static String text(Map<String, Object> keys, String key) {
        return keys.get(key) instanceof String text ? text : "";
    }
}
