package hotidle.circuits.section;

import hotidle.circuits.kind.Materials;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.ReadingLog;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.text.Dimension;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What things are made of: keys of materials and of bearing materials, and how they are read. */
public final class MaterialSection {

    private MaterialSection() {}

    static final Shape MATERIAL = new Shape(
            "material",
            List.of(
                    Key.quantity("expansion", Dimension.EXPANSION, "linear thermal expansion")
                            .allowed("0 1/K", "1e-4 1/K")
                            .usual("5e-6 1/K", "35e-6 1/K"),
                    Key.text("source", "where it comes from")));

    static final Shape BEARING_MATERIAL = new Shape(
            "bearing material",
            List.of(
                    Key.quantity("permissible-load", Dimension.PRESSURE, "load over length and diameter that it bears")
                            .allowed("0.01 MPa", "500 MPa")
                            .usual("0.5 MPa", "40 MPa"),
                    Key.text("source", "where it comes from"),
                    Key.choice("assumed", "whether the figure is an assumption of yours", "yes", "no")
                            .byDefault("yes", "assumed unless you say otherwise")));

    /** The materials of a file; a faulty one counts as a common one, so that its users are checked all the same. */
    public static Materials of(Attributes file, ReadingLog used) {
        Map<String, Double> expansions = new LinkedHashMap<>();
        for (Materials.KnownMaterial known : Materials.KNOWN) {
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
