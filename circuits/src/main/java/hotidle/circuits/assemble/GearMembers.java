package hotidle.circuits.assemble;

import hotidle.circuits.text.Value;
import hotidle.geartrain.Coupling;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The members of a gear train: what its sets and shafts name, and the case. A clutch names them only. */
final class GearMembers {

    private GearMembers() {}

    private static final List<String> OF_A_SET = List.of("sun", "short-sun", "ring", "carrier");

    static List<String> in(Value.Entries file) {
        Set<String> members = new LinkedHashSet<>(List.of(Coupling.CASE));
        Optional<Value.Entries> train = entries(file, "gearsets");
        train.flatMap(gears -> entries(gears, "sets"))
                .ifPresent(sets ->
                        sets.entries().forEach(set -> OF_A_SET.forEach(key -> add(members, set.value(), key))));
        train.flatMap(gears -> entries(gears, "shafts"))
                .ifPresent(shafts -> shafts.entries().forEach(shaft -> {
                    add(members, shaft.value());
                    add(members, shaft.value(), "joins");
                }));
        return List.copyOf(members);
    }

    private static Optional<Value.Entries> entries(Value.Entries of, String key) {
        return of.entry(key).map(Value.Entry::value).map(value -> value instanceof Value.Entries all ? all : null);
    }

    private static void add(Set<String> members, Value group, String key) {
        if (group instanceof Value.Entries entries) {
            entries.entry(key).map(Value.Entry::value).ifPresent(value -> add(members, value));
        }
    }

    private static void add(Set<String> members, Value value) {
        if (value instanceof Value.Text text && !text.text().isEmpty()) {
            members.add(text.text());
        } else if (value instanceof Value.Items items) {
            items.items().forEach(item -> add(members, item));
        }
    }
}
