package hotidle.circuits;

import hotidle.circuits.section.BuildSection;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Value;
import hotidle.circuits.text.Yaml;
import java.util.List;
import java.util.Optional;

/**
 * What a ready circuit is called and which builds it has, without making any of it: a list of them needs no more.
 *
 * @param name   as its file has it
 * @param about  what it is
 * @param builds names, in the order of the file
 */
public record ReadyCircuit(String name, String about, List<String> builds) {

    public ReadyCircuit {
        builds = List.copyOf(builds);
    }

    /** All of the library, in alphabetical order. */
    public static List<ReadyCircuit> all() {
        return Library.names().stream().map(ReadyCircuit::of).toList();
    }

    private static ReadyCircuit of(String library) {
        String text = Library.text(library).orElseThrow();
        Value tree = Yaml.read(text, new Problems(library, text)).orElseThrow();
        Value.Entries file = (Value.Entries) tree;
        List<String> builds = file.entry("builds")
                .map(Value.Entry::value)
                .filter(Value.Entries.class::isInstance)
                .map(named -> ((Value.Entries) named).keys())
                .orElse(List.of(BuildSection.AS_WRITTEN));
        return new ReadyCircuit(word(file, "circuit"), word(file, "about"), builds);
    }

    private static String word(Value.Entries file, String key) {
        Optional<Value> value = file.entry(key).map(Value.Entry::value);
        return value.isPresent() && value.get() instanceof Value.Text text ? text.text() : "";
    }
}
