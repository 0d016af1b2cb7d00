package hotidle.geartrain;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.ejml.data.DMatrixRMaj;

/**
 * Speeds of a train with some couplings engaged, over the input's speed.
 *
 * <pre>
 * Formula   of each mesh (na − nc)·za = ±(nb − nc)·zb, c the carrier; plus where one of the two wheels is a ring
 * Source    R. Willis, Principles of Mechanism, 1841 (from memory); R. S. Khurmi, J. K. Gupta, Theory of Machines, §13.8 (from memory)
 * </pre>
 *
 * @param known  speed of each member and, as {@code set.planet}, of each planet; those that nothing fixes are left out
 * @param locked whether nothing can turn while the input does: the engaged couplings contradict each other
 */
record Speeds(Map<String, Double> known, boolean locked) {

    /** A share of the input's speed below which a speed is nil, and a freedom below which there is none. */
    static final double NIL = 1e-9;

    static Speeds of(GearTrain train, List<Coupling> engaged) {
        Map<String, Integer> index = new HashMap<>();
        train.members().forEach(member -> index.put(member, index.size()));
        train.sets()
                .forEach(set -> set.wheels().stream()
                        .filter(Wheel::isPlanet)
                        .forEach(planet -> index.put(planetName(set, planet), index.size())));
        int meshes = train.sets().stream().mapToInt(set -> set.meshes().size()).sum();
        DMatrixRMaj rows = new DMatrixRMaj(meshes + engaged.size(), index.size());
        int row = 0;
        for (PlanetarySet set : train.sets()) {
            for (Mesh mesh : set.meshes()) {
                Wheel first = set.wheel(mesh.first()).orElseThrow();
                Wheel second = set.wheel(mesh.second()).orElseThrow();
                double a = first.teeth() / (first.teeth() + second.teeth());
                double b = sense(first, second) * second.teeth() / (first.teeth() + second.teeth());
                add(rows, row, index, bodyOf(set, first), a);
                add(rows, row, index, bodyOf(set, second), -b);
                add(rows, row, index, set.carrier(), b - a);
                row++;
            }
        }
        for (Coupling coupling : engaged) {
            add(rows, row, index, coupling.first(), 1);
            add(rows, row, index, coupling.second(), -1);
            row++;
        }
        return from(index, NullSpace.of(rows), index.get(train.input()));
    }

    private static Speeds from(Map<String, Integer> index, NullSpace space, int input) {
        double[] ofInput = row(space, input);
        double square = dot(ofInput, ofInput);
        if (square < NIL * NIL) {
            return new Speeds(Map.of(), true);
        }
        Map<String, Double> known = new HashMap<>();
        index.forEach((name, i) -> {
            double[] own = row(space, i);
            double speed = dot(own, ofInput) / square;
            double rest = 0;
            for (int k = 0; k < own.length; k++) {
                rest = Math.max(rest, Math.abs(own[k] - speed * ofInput[k]));
            }
            if (rest < NIL) {
                known.put(name, Math.abs(speed) < 1e-13 ? 0 : speed);
            }
        });
        known.put(Coupling.CASE, 0.0);
        return new Speeds(Map.copyOf(known), false);
    }

    /** −1 for two outer wheels, which turn against each other; +1 where one is a ring. */
    static int sense(Wheel first, Wheel second) {
        return first.internal() || second.internal() ? 1 : -1;
    }

    /** The name under which a wheel's speed is found. */
    static String bodyOf(PlanetarySet set, Wheel wheel) {
        return wheel.member().orElseGet(() -> planetName(set, wheel));
    }

    private static String planetName(PlanetarySet set, Wheel planet) {
        return set.name() + "." + planet.name();
    }

    private static void add(DMatrixRMaj rows, int row, Map<String, Integer> index, String body, double factor) {
        if (!body.equals(Coupling.CASE)) {
            rows.add(row, index.get(body), factor);
        }
    }

    private static double[] row(NullSpace space, int unknown) {
        double[] row = new double[space.freedom()];
        for (int k = 0; k < row.length; k++) {
            row[k] = space.free().get(unknown, k);
        }
        return row;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int k = 0; k < a.length; k++) {
            sum += a[k] * b[k];
        }
        return sum;
    }

    /** Speed of a member over the input's [-]; empty where nothing fixes it. */
    OptionalDouble at(String member) {
        return known.containsKey(member) ? OptionalDouble.of(known.get(member)) : OptionalDouble.empty();
    }

    /** Slip of a coupling over the input's speed [-]; empty where nothing fixes it. */
    OptionalDouble slip(Coupling coupling) {
        OptionalDouble first = at(coupling.first());
        OptionalDouble second = at(coupling.second());
        return first.isPresent() && second.isPresent()
                ? OptionalDouble.of(first.getAsDouble() - second.getAsDouble())
                : OptionalDouble.empty();
    }
}
