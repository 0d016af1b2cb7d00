package hotidle.circuits;

import static hotidle.circuits.Golden.resource;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.kind.Kinds;
import hotidle.circuits.section.CircuitFile;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Problem;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Value;
import hotidle.circuits.text.Yaml;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Every key that may be left out, left out: what is then an error must be said in its declaration, by where it is needed. */
class LeftOutTest {

    /** A key of the file: its path, with the words that name its shape, and its declaration. */
    private record Written(List<String> path, String what, Key key) {}

    private static Value.Entries tree(String text) {
        return (Value.Entries) Yaml.read(text, new Problems("x.yaml", text)).orElseThrow();
    }

    /** Builds would change what is left out; nothing else goes. */
    private static Value.Entries without(Value.Entries entries, List<String> path) {
        List<Value.Entry> kept = new ArrayList<>();
        for (Value.Entry entry : entries.entries()) {
            boolean here = entry.key().equals(path.get(0));
            if (here && path.size() > 1) {
                Value inner = without((Value.Entries) entry.value(), path.subList(1, path.size()));
                kept.add(new Value.Entry(entry.key(), entry.keyPlace(), inner));
            } else if (!here) {
                kept.add(entry);
            }
        }
        return new Value.Entries(kept, entries.place());
    }

    private static List<Written> written(Value.Entries file) {
        List<Written> found = new ArrayList<>();
        collect(CircuitFile.CIRCUIT, file, List.of(), "circuit", found);
        Value parts = file.entry("parts").orElseThrow().value();
        for (Value.Entry part : ((Value.Entries) parts).entries()) {
            Value.Entries keys = (Value.Entries) part.value();
            keys.entry("kind").ifPresent(kind -> {
                String word = ((Value.Text) kind.value()).text();
                Shape shape = Kinds.of(word).orElseThrow().shape();
                collect(shape, keys, List.of("parts", part.key()), word, found);
            });
        }
        return found;
    }

    private static void collect(Shape shape, Value.Entries keys, List<String> path, String what, List<Written> found) {
        for (Key key : shape.keys()) {
            Optional<Value> value = keys.entry(key.name()).map(Value.Entry::value);
            List<String> here = new ArrayList<>(path);
            here.add(key.name());
            if (value.isPresent() && !key.needed()) {
                found.add(new Written(here, what + "." + key.name(), key));
            }
            if (value.orElse(null) instanceof Value.Entries inner) {
                if (key.type() instanceof Type.OneGroup group) {
                    collect(group.shape(), inner, here, what + "." + key.name(), found);
                } else if (key.type() instanceof Type.NamedGroups groups) {
                    for (Value.Entry one : inner.entries()) {
                        List<String> named = new ArrayList<>(here);
                        named.add(one.key());
                        if (one.value() instanceof Value.Entries keysOfOne) {
                            collect(groups.shape(), keysOfOne, named, what + "." + key.name(), found);
                        }
                    }
                }
            }
        }
    }

    private static List<String> errors(Value.Entries file, String text) {
        Problems problems = new Problems("x.yaml", text);
        new CircuitAssembly(file, problems, Optional.empty()).circuit();
        return problems.inOrder().stream()
                .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                .map(Problem::message)
                .toList();
    }

    @Test
    void aKeyThatIsAnErrorToLeaveOutIsDeclaredAsNeededOrSaysWhereItIs() throws IOException {
        Map<String, String> unsaid = new LinkedHashMap<>();
        TreeSet<String> said = new TreeSet<>();
        TreeSet<String> free = new TreeSet<>();
        List<String> texts = new ArrayList<>(List.of(resource("every-kind.yaml")));
        for (String name : List.of("crescent-four", "vane-six", "shuttle-five")) {
            texts.add(Library.text(name).orElseThrow());
        }
        for (String text : texts) {
            Value.Entries file = without(tree(text), List.of("builds"));
            assertEquals(List.of(), errors(file, text));
            Map<String, Integer> seen = new LinkedHashMap<>();
            for (Written written : written(file)) {
                // two of a sort in a file tell as much as twenty
                if (seen.merge(written.what, 1, Integer::sum) > 2) {
                    continue;
                }
                List<String> errors = errors(without(file, written.path), text);
                if (errors.isEmpty()) {
                    free.add(written.what);
                } else if (written.key.where().isEmpty()) {
                    unsaid.put(written.what, errors.get(0));
                } else {
                    said.add(written.what);
                }
            }
        }
        assertEquals(Map.of(), unsaid);
        assertTrue(said.contains("crescent-pump.body-land"), said.toString());
        assertTrue(said.contains("spool-valve.preload") && said.size() >= 20, said.toString());
        assertTrue(free.size() >= 40, free.toString());
    }
}
