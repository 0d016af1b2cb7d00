package hotidle.circuits.single;

import hotidle.circuits.Library;
import hotidle.circuits.assemble.Declared;
import hotidle.circuits.kind.Materials;
import hotidle.circuits.section.CircuitFile;
import hotidle.circuits.section.MaterialSection;
import hotidle.circuits.section.OilSection;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.ReadingLog;
import hotidle.circuits.shape.ShapeReader;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Value;
import hotidle.circuits.text.Yaml;
import hotidle.oil.Oil;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * Oils and materials of the ready circuits, for a part on its own. A material that need not be written is the
 * program's own; where two circuits use another name, the first one has it.
 *
 * @param oils             by name
 * @param expansions       thermal expansion of each material [1/K]
 * @param permissibleLoads unit load of each bearing material [Pa]
 */
public record LibraryMaterials(
        Map<String, Oil> oils, Map<String, Double> expansions, Map<String, Double> permissibleLoads) {

    /** Keys of a circuit below which they stand. */
    private static final Set<String> MATERIALS = Set.of("oils", "materials", "bearing-materials");

    /** All that the ready circuits have. */
    public static LibraryMaterials ofLibrary() {
        LibraryMaterials stock =
                new LibraryMaterials(new LinkedHashMap<>(), new LinkedHashMap<>(), new LinkedHashMap<>());
        Materials.KNOWN.forEach(known -> stock.expansions.put(known.name(), known.expansion()));
        for (String name : Library.names()) {
            stock.add(Library.text(name).orElseThrow(), name);
        }
        return stock;
    }

    /** Reading what else stands in a circuit takes long, and nothing of it is asked. */
    private static Value.Entries onlyMaterials(Value.Entries file) {
        return new Value.Entries(
                file.entries().stream()
                        .filter(entry -> MATERIALS.contains(entry.key()))
                        .toList(),
                file.place());
    }

    private void add(String text, String name) {
        Problems problems = new Problems(name, text);
        if (Yaml.read(text, problems).orElse(null) instanceof Value.Entries whole) {
            Value.Entries file = onlyMaterials(whole);
            ShapeReader reader = new ShapeReader(Declared.in(file), problems, new ReadingLog());
            Attributes root =
                    reader.read(CircuitFile.CIRCUIT, "", "the circuit", new Value.Entry("", file.place(), file));
            root.groups("oils")
                    .keySet()
                    .forEach(oil -> OilSection.oil(root, oil).ifPresent(good -> oils.putIfAbsent(oil, good)));
            Materials materials = MaterialSection.of(root, new ReadingLog());
            materials.expansions().forEach(expansions::putIfAbsent);
            materials.permissibleLoads().forEach(permissibleLoads::putIfAbsent);
        }
    }
}
