package hotidle.circuits.assemble;

import hotidle.circuits.kind.Kind;
import hotidle.circuits.kind.Materials;
import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.NumberPath;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Problems;
import hotidle.network.Placed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Makes parts of a build anew with other numbers: those that have the numbers, and those that name these and so may draw on
 * them, as an end land on its valve or a bushing on the pump that it carries. All others stay the same objects.
 */
public final class Resizing {

    private final Map<String, Parts.DeclaredPart> parts;
    private final Materials materials;
    private final List<Placed> placed;

    /** Found when the first number changes: most builds are never changed. */
    private volatile Index index;

    /**
     * A build's parts, all without fault.
     *
     * @param parts  as read
     * @param placed the same, in the same order, as placed
     */
    public Resizing(Parts parts, Materials materials, List<Placed> placed) {
        this.parts = parts.all();
        this.materials = materials;
        this.placed = List.copyOf(placed);
    }

    /** A number in its part; {@code order} is its place among all numbers as they are read, in which faults are told. */
    private record Located(int part, NumberPath path, int order) {}

    /**
     * Where things are.
     *
     * @param numbers by part.key
     * @param names   of the parts, in their order
     * @param with    for each part itself, and the parts that must be made anew with it
     */
    private record Index(Map<String, Located> numbers, List<String> names, List<List<Integer>> with) {}

    /**
     * The parts with other numbers.
     *
     * @param values   by part.key [SI]
     * @param problems told what is wrong; if an error is, the answer lacks parts
     * @throws IllegalArgumentException where there is no such number
     */
    public List<Placed> with(Map<String, Double> values, Problems problems) {
        Index found = index();
        NavigableMap<Integer, Map.Entry<Located, Double>> changes = new TreeMap<>();
        NavigableMap<Integer, Attributes> anew = new TreeMap<>();
        values.forEach((name, value) -> {
            Located number = found.numbers().get(name);
            if (number == null) {
                throw new IllegalArgumentException("there is no size '" + name + "'");
            }
            changes.put(number.order(), Map.entry(number, value));
            found.with()
                    .get(number.part())
                    .forEach(part -> anew.computeIfAbsent(
                            part, i -> one(found, i).given().copy(problems)));
        });
        changes.values()
                .forEach(change -> change.getKey()
                        .path()
                        .change(change.getValue(), anew.get(change.getKey().part()), problems));
        Map<String, Attributes> givens = new HashMap<>();
        parts.forEach((name, one) -> givens.put(name, one.given()));
        anew.forEach((part, given) -> givens.put(given.name(), given));
        Kind.Context around = new Kind.Context(givens, materials.expansions(), materials.permissibleLoads());
        anew.forEach((part, given) -> one(found, part).kind().check(given, around));
        List<Placed> all = new ArrayList<>(placed);
        anew.forEach((part, given) -> {
            if (!given.broken()) {
                Optional<Placed> made =
                        Parts.make(new Parts.DeclaredPart(one(found, part).kind(), given), around);
                made.ifPresent(other -> all.set(part, other));
            }
        });
        return all;
    }

    /**
     * A number of a part.
     *
     * @param value as the build has it [SI]
     */
    public record NamedNumber(String part, String key, Dimension dimension, double value) {}

    /** All numbers of all parts, part by part. */
    public List<NamedNumber> numbers() {
        List<NamedNumber> all = new ArrayList<>();
        parts.forEach((name, one) -> NumberPath.of(one.kind().shape(), one.given())
                .forEach(path ->
                        all.add(new NamedNumber(name, path.name(), path.dimension(), path.value(one.given())))));
        return all;
    }

    private Parts.DeclaredPart one(Index found, int part) {
        return parts.get(found.names().get(part));
    }

    private Index index() {
        if (index == null) {
            List<String> names = List.copyOf(parts.keySet());
            index = new Index(numbers(names), names, with(names));
        }
        return index;
    }

    /** All numbers; those of parts that are like another come after all others, as these parts are read after them. */
    private Map<String, Located> numbers(List<String> names) {
        Map<String, Located> numbers = new HashMap<>();
        for (boolean like : new boolean[] {false, true}) {
            for (int part = 0; part < names.size(); part++) {
                Parts.DeclaredPart one = parts.get(names.get(part));
                if (one.given().has("like") == like) {
                    for (NumberPath path : NumberPath.of(one.kind().shape(), one.given())) {
                        numbers.put(names.get(part) + "." + path.name(), new Located(part, path, numbers.size()));
                    }
                }
            }
        }
        return numbers;
    }

    private List<List<Integer>> with(List<String> names) {
        Map<String, List<Integer>> namedBy = new LinkedHashMap<>();
        for (int part = 0; part < names.size(); part++) {
            for (String other : parts.get(names.get(part)).named()) {
                namedBy.computeIfAbsent(other, name -> new ArrayList<>()).add(part);
            }
            String pump = names.get(part);
            Parts.fillsBy(parts.get(pump))
                    .map(names::indexOf)
                    .filter(inlet -> inlet >= 0)
                    .ifPresent(inlet -> namedBy.computeIfAbsent(pump, name -> new ArrayList<>())
                            .add(inlet));
        }
        List<List<Integer>> with = new ArrayList<>();
        for (int part = 0; part < names.size(); part++) {
            List<Integer> all = new ArrayList<>(List.of(part));
            for (int i = 0; i < all.size(); i++) {
                namedBy.getOrDefault(names.get(all.get(i)), List.of()).stream()
                        .filter(other -> !all.contains(other))
                        .forEach(all::add);
            }
            with.add(List.copyOf(all));
        }
        return with;
    }
}
