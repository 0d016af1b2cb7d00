package hotidle.answer.check;

import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.AssumedPhrase;
import hotidle.answer.phrase.DefaultsPhrase;
import hotidle.circuits.DescribedCircuit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What a circuit file leaves to the program, grouped by what it concerns: once for each value, with how many parts take it. */
final class DefaultsByOwner {

    /** Most parts named of a value that was left out (chosen). */
    private static final int MOST_NAMED = 4;

    private static final String SEVERAL = DefaultsPhrase.SEVERAL;
    private static final String WHOLE = DefaultsPhrase.WHOLE;

    private final Map<String, String> kinds = new LinkedHashMap<>();

    private DefaultsByOwner(DescribedCircuit circuit) {
        circuit.parts().forEach(part -> kinds.put(part.name(), part.kind()));
    }

    /** One value: key, value and source, and the parts or other things that take it. */
    private record Taken(String text, Set<String> owners) {}

    /** Each value under the kind of part, or the section, that takes it. */
    static String of(DescribedCircuit circuit) {
        return new DefaultsByOwner(circuit).text(circuit.defaults());
    }

    /** The same as rows: what takes it, and the value with its source. */
    static TextTable table(DescribedCircuit circuit) {
        DefaultsByOwner owners = new DefaultsByOwner(circuit);
        TextTable table = new TextTable(List.of(AssumedPhrase.TAKEN_BY, AssumedPhrase.VALUE));
        owners.groups(circuit.defaults()).forEach((group, all) -> {
            Set<String> members = owners.members(group);
            all.forEach(taken -> table.add(List.of(title(group, members), taken.text + takers(taken.owners, members))));
        });
        return table;
    }

    private String text(List<DescribedCircuit.DefaultLine> defaults) {
        StringBuilder text = new StringBuilder();
        groups(defaults).forEach((group, all) -> {
            Set<String> members = members(group);
            text.append("  ").append(title(group, members)).append("\n");
            all.forEach(taken -> text.append(Wrap.lines(taken.text + takers(taken.owners, members), "    ", "      ")));
        });
        return text.toString();
    }

    private Set<String> members(String group) {
        Set<String> members = new TreeSet<>();
        kinds.forEach((part, kind) -> {
            if (kind.equals(group)) {
                members.add(part);
            }
        });
        return members;
    }

    private Map<String, List<Taken>> groups(List<DescribedCircuit.DefaultLine> defaults) {
        Map<String, Taken> values = new LinkedHashMap<>();
        for (DescribedCircuit.DefaultLine line : defaults) {
            String key = line.where().substring(line.where().lastIndexOf('.') + 1);
            String text = DefaultsPhrase.value(key, line.value(), line.source());
            values.computeIfAbsent(text, one -> new Taken(one, new LinkedHashSet<>()))
                    .owners
                    .add(owner(line.where()));
        }
        Map<String, List<Taken>> groups = new LinkedHashMap<>();
        groups.put(WHOLE, new ArrayList<>());
        values.values()
                .forEach(taken -> groups.computeIfAbsent(group(taken), name -> new ArrayList<>())
                        .add(taken));
        if (groups.containsKey(SEVERAL)) {
            groups.put(SEVERAL, groups.remove(SEVERAL));
        }
        groups.values().removeIf(List::isEmpty);
        return groups;
    }

    private static String title(String group, Set<String> members) {
        return DefaultsPhrase.heading(group, List.copyOf(members));
    }

    /** The part, or in a section what is described there: oils.atf.air belongs to atf. */
    private String owner(String where) {
        String[] path = where.split("\\.", -1);
        return kinds.containsKey(path[0]) || path.length < 3 ? path[0] : path[0] + "." + path[1];
    }

    private String group(Taken taken) {
        Set<String> groups =
                taken.owners.stream().map(this::groupOf).collect(Collectors.toCollection(LinkedHashSet::new));
        boolean parts = taken.owners.stream().allMatch(kinds::containsKey);
        return groups.size() == 1 ? groups.iterator().next() : parts ? SEVERAL : WHOLE;
    }

    private String groupOf(String owner) {
        if (kinds.containsKey(owner)) {
            return kinds.get(owner);
        }
        return owner.contains(".") ? owner.substring(0, owner.indexOf('.')) : WHOLE;
    }

    /** Nothing where all of a kind take it; otherwise which, or how many. */
    private static String takers(Set<String> owners, Set<String> members) {
        boolean whole = members.isEmpty()
                && owners.size() == 1
                && !owners.iterator().next().contains(".");
        if (owners.equals(members) || whole) {
            return "";
        }
        List<String> named = owners.stream()
                .map(owner -> owner.substring(owner.indexOf('.') + 1))
                .toList();
        return named.size() <= MOST_NAMED
                ? DefaultsPhrase.takers(named)
                : DefaultsPhrase.takers(named.size(), !members.isEmpty());
    }
}
