package hotidle.circuits.assemble;

import hotidle.circuits.kind.SectionWords;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.ReadingLog;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What things are made of.
 *
 * @param expansions       thermal expansion of each material [1/K]
 * @param permissibleLoads unit load of each bearing material [Pa]
 */
public record Materials(Map<String, Double> expansions, Map<String, Double> permissibleLoads) {

    public Materials {
        expansions = Map.copyOf(expansions);
        permissibleLoads = Map.copyOf(permissibleLoads);
    }

    /** The materials of a file; a faulty one counts as a common one, so that its users are checked all the same. */
    public static Materials of(Attributes file, ReadingLog used) {
        Map<String, Double> expansions = new LinkedHashMap<>();
        for (SectionWords.Known known : SectionWords.MATERIALS) {
            expansions.put(known.name(), known.expansion());
            if (!file.groups("materials").containsKey(known.name())) {
                used.note("materials." + known.name() + ".expansion", known.fallback());
            }
        }
        file.groups("materials")
                .forEach((name, given) ->
                        expansions.put(name, given.numberIf("expansion").orElse(1e-5)));
        Map<String, Double> loads = new LinkedHashMap<>();
        file.groups("bearing-materials")
                .forEach((name, given) ->
                        loads.put(name, given.numberIf("permissible-load").orElse(1e6)));
        return new Materials(expansions, loads);
    }
}
