package hotidle.circuits.kind;

import hotidle.circuits.shape.Key;
import java.util.List;
import java.util.Map;

/**
 * What things are made of.
 *
 * @param expansions       thermal expansion of each material [1/K]
 * @param permissibleLoads unit load of each bearing material [Pa]
 */
public record Materials(Map<String, Double> expansions, Map<String, Double> permissibleLoads) {

    /**
     * A material that need not be written.
     *
     * @param name      of the file language
     * @param expansion linear thermal expansion [1/K]
     * @param fallback  the same as a default, with its source
     */
    public record KnownMaterial(String name, double expansion, Key.Default fallback) {}

    /** Materials that need not be written; a file may give its own value. */
    public static final List<KnownMaterial> KNOWN = List.of(
            new KnownMaterial(
                    "aluminium",
                    21.8e-6,
                    new Key.Default(
                            "21.8e-6 1/K",
                            "die-casting alloy A380, the usual alloys 21.0 to 22.0e-6, NADCA Product Specification Standards for"
                                    + " Die Castings, table A-3-2 (found)")),
            new KnownMaterial("steel", 12e-6, new Key.Default("12e-6 1/K", "common practice")),
            new KnownMaterial("cast-iron", 11e-6, new Key.Default("11e-6 1/K", "grey iron (common practice)")));

    public Materials {
        expansions = Map.copyOf(expansions);
        permissibleLoads = Map.copyOf(permissibleLoads);
    }
}
