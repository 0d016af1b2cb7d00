package hotidle.circuits.assemble;

import hotidle.circuits.check.SumpIsARegion;
import hotidle.circuits.kind.Kinds;
import hotidle.circuits.kind.Materials;
import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Scope;
import hotidle.circuits.text.MissingColon;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Value;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds the names that a file declares, before anything else is read. */
public final class Declared {

    private Declared() {}

    /** The names that a file declares. */
    public static Scope in(Value.Entries file) {
        Map<Names, List<String>> names = new EnumMap<>(Names.class);
        names.put(Names.OIL, keys(file, "oils"));
        names.put(Names.BEARING_MATERIAL, keys(file, "bearing-materials"));
        Set<String> regions = new LinkedHashSet<>(keys(file, "regions"));
        regions.add(SumpIsARegion.PAN);
        names.put(Names.REGION, List.copyOf(regions));
        names.put(Names.NODE, keys(file, "nodes"));
        names.put(Names.DUTY, keys(file, "duty"));
        names.put(Names.PART, keys(file, "parts"));
        names.put(Names.RANGE, keys(file, "ranges"));
        names.put(Names.BUILD, keys(file, "builds"));
        Set<String> materials = new LinkedHashSet<>(keys(file, "materials"));
        Materials.KNOWN.forEach(known -> materials.add(known.name()));
        names.put(Names.MATERIAL, List.copyOf(materials));
        names.put(Names.MEMBER, GearMembers.in(file));
        Kinds.ROLES.forEach(role -> names.put(role, partsOf(file, Kinds.words(role))));
        return new Scope(names);
    }

    /** Notes every name that cannot stand in part.key. */
    public static void checkNames(Value.Entries file, Problems problems) {
        for (String section : SECTIONS) {
            if (file.entry(section).map(Value.Entry::value).orElse(null) instanceof Value.Entries entries) {
                entries.entries().stream()
                        .filter(entry -> !Parts.isName(entry.key()))
                        .forEach(entry -> problems.error(
                                entry.keyPlace(),
                                ProblemCode.NO_NAME,
                                "'" + entry.key() + "' cannot be a name",
                                "a name has letters, digits and hyphens only",
                                MissingColon.mend(entry.key()).orElse("")));
            }
        }
    }

    private static final List<String> SECTIONS = List.of(
            "oils",
            "materials",
            "bearing-materials",
            "regions",
            "nodes",
            "parts",
            "ranges",
            "duty",
            "taps",
            "jobs",
            "builds");

    private static List<String> keys(Value.Entries file, String section) {
        return file.entry(section).map(Value.Entry::value).map(Declared::names).orElse(List.of());
    }

    private static List<String> names(Value section) {
        if (section instanceof Value.Entries entries) {
            return entries.keys();
        }
        return section instanceof Value.Items items
                ? items.items().stream()
                        .filter(item -> item instanceof Value.Text)
                        .map(item -> ((Value.Text) item).text())
                        .toList()
                : List.of();
    }

    private static List<String> partsOf(Value.Entries file, List<String> kinds) {
        List<String> parts = new ArrayList<>();
        if (file.entry("parts").map(Value.Entry::value).orElse(null) instanceof Value.Entries entries) {
            for (Value.Entry part : entries.entries()) {
                if (kinds.contains(Parts.kindOf(part.value())) || Parts.unresolved(part.value())) {
                    parts.add(part.key());
                }
            }
        }
        return parts;
    }
}
