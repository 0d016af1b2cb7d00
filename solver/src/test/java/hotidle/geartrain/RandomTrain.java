package hotidle.geartrain;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

/**
 * A gear train drawn at random: one to three sets that share members, some members held or joined.
 *
 * @param train   the train
 * @param applied clutches that are applied
 */
record RandomTrain(GearTrain train, Set<String> applied) {

    static RandomTrain of(long seed, double least) {
        Random random = new Random(seed);
        int count = 1 + random.nextInt(3);
        List<String> members = new ArrayList<>();
        for (int i = 0; i < count + 3; i++) {
            members.add("m" + i);
        }
        List<PlanetarySet> sets = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            sets.add(set(random, "set" + i, members, least + (1 - least) * random.nextDouble()));
        }
        List<Coupling> couplings = new ArrayList<>();
        Set<String> applied = new HashSet<>();
        for (int i = 0; i < count + 2; i++) {
            String first = members.get(random.nextInt(members.size()));
            String second = random.nextBoolean() ? Coupling.CASE : members.get(random.nextInt(members.size()));
            if (!first.equals(second)) {
                couplings.add(new Coupling("k" + i, Coupling.Kind.CLUTCH, first, second));
                if (random.nextInt(4) > 0) {
                    applied.add("k" + i);
                }
            }
        }
        return new RandomTrain(new GearTrain("m0", "m1", sets, couplings), applied);
    }

    private static PlanetarySet set(Random random, String name, List<String> members, double efficiency) {
        List<String> drawn = new ArrayList<>(members);
        java.util.Collections.shuffle(drawn, random);
        int sun = 20 + random.nextInt(30);
        int ring = sun + 30 + random.nextInt(40);
        PlanetarySet.Central a = new PlanetarySet.Central(drawn.get(0), sun);
        PlanetarySet.Central b = new PlanetarySet.Central(drawn.get(1), ring);
        return switch (random.nextInt(3)) {
            case 0 -> PlanetarySet.single(name, a, b, drawn.get(2), efficiency);
            case 1 -> PlanetarySet.paired(name, a, b, drawn.get(2), efficiency);
            default ->
                PlanetarySet.ravigneaux(
                        name,
                        a,
                        new PlanetarySet.Central(drawn.get(3), 20 + random.nextInt(20)),
                        b,
                        drawn.get(2),
                        efficiency);
        };
    }

    /** The same train with other names and another order. */
    RandomTrain renumbered(long seed) {
        Random random = new Random(seed);
        List<PlanetarySet> sets = new ArrayList<>();
        for (PlanetarySet set : train.sets()) {
            List<Wheel> wheels = new ArrayList<>(set.wheels().stream()
                    .map(wheel -> new Wheel(
                            wheel.name(),
                            wheel.teeth(),
                            wheel.internal(),
                            wheel.member().map(RandomTrain::other)))
                    .toList());
            List<Mesh> meshes = new ArrayList<>(set.meshes().stream()
                    .map(mesh -> random.nextBoolean()
                            ? mesh
                            : new Mesh(/* first= */ mesh.second(), /* second= */ mesh.first(), mesh.efficiency()))
                    .toList());
            java.util.Collections.shuffle(wheels, random);
            java.util.Collections.shuffle(meshes, random);
            sets.add(new PlanetarySet(other(set.name()), other(set.carrier()), wheels, meshes));
        }
        java.util.Collections.shuffle(sets, random);
        List<Coupling> couplings = new ArrayList<>(train.couplings().stream()
                .map(one -> new Coupling(one.name(), one.kind(), other(one.first()), other(one.second())))
                .toList());
        java.util.Collections.shuffle(couplings, random);
        return new RandomTrain(new GearTrain(other("m0"), other("m1"), sets, couplings), applied);
    }

    private static String other(String name) {
        return name.equals(Coupling.CASE) ? name : "x" + (name.hashCode() * 31 % 1009);
    }
}
