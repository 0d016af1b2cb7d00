package hotidle.geartrain;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;

/**
 * The balance of all members and planets of a train whose speeds are known, for one direction of the power through each mesh.
 *
 * <pre>
 * Unknown   torque of each mesh on its first wheel, of each engaged coupling on its first member, and what the output delivers;
 *           the input brings 1
 * Formula   torque of a mesh on its second wheel tb = ∓(zb/za)·ta·e; e = 1 without loss, η where power comes in by the first
 *           wheel and 1/η where it comes in by the second, both seen from the carrier. The torques of a planet balance about
 *           its own axis; the carrier bears what the suns and rings of its set leave over
 * Source    H. W. Müller, Die Umlaufgetriebe, 2nd ed., 1998, ch. 3 (from memory): sliding of teeth counts from the carrier
 * Numerics  least squares by singular values; equations left over by more than NIL are contradicted
 * </pre>
 */
final class TorqueBalance {

    /** Torque over the input's below which it is nil. */
    static final double NIL = 1e-9;

    private final GearTrain train;
    private final List<Coupling> engaged;
    private final Speeds speeds;
    private final Map<String, Integer> rowOf = new HashMap<>();
    private final int unknowns;

    /** A mesh with the set that it stands in. */
    private record InSet(PlanetarySet set, Mesh mesh, Wheel first, Wheel second) {}

    private final List<InSet> meshes;

    TorqueBalance(GearTrain train, List<Coupling> engaged, Speeds speeds) {
        this.train = train;
        this.engaged = engaged;
        this.speeds = speeds;
        meshes = train.sets().stream()
                .flatMap(set -> set.meshes().stream()
                        .map(mesh -> new InSet(
                                set,
                                mesh,
                                set.wheel(mesh.first()).orElseThrow(),
                                set.wheel(mesh.second()).orElseThrow())))
                .toList();
        train.members().forEach(member -> rowOf.put(member, rowOf.size()));
        for (InSet one : meshes) {
            for (Wheel wheel : List.of(one.first, one.second)) {
                if (wheel.isPlanet()) {
                    rowOf.putIfAbsent(Speeds.bodyOf(one.set, wheel), rowOf.size());
                }
            }
        }
        unknowns = meshes.size() + engaged.size() + 1;
    }

    /**
     * What balances.
     *
     * @param values   torques in the order of the unknowns
     * @param left     largest torque that does not balance
     * @param divided  whether each unknown follows from the balance
     */
    @SuppressWarnings("ArrayRecordComponent") // work arrays of one solve, which do not leave the package
    record Solved(double[] values, double left, boolean[] divided) {}

    int meshes() {
        return meshes.size();
    }

    /** Speed of the first wheel of a mesh as the carrier sees it [-]; zero where it is not known or the mesh does not roll. */
    double rolling(int mesh) {
        InSet one = meshes.get(mesh);
        OptionalDouble wheel = speeds.at(Speeds.bodyOf(one.set, one.first));
        OptionalDouble carrier = speeds.at(one.set.carrier());
        if (wheel.isEmpty() || carrier.isEmpty()) {
            return 0;
        }
        double speed = wheel.getAsDouble() - carrier.getAsDouble();
        return Math.abs(speed) < Speeds.NIL ? 0 : speed;
    }

    /** Whether a mesh rolls and loses. */
    boolean loses(int mesh) {
        return meshes.get(mesh).mesh.efficiency() < 1 && rolling(mesh) != 0;
    }

    /**
     * Solves the balance.
     *
     * @param direction for each mesh +1 where power comes in by its first wheel, −1 by its second, 0 without loss
     */
    Solved solve(int[] direction) {
        DMatrixRMaj rows = new DMatrixRMaj(rowOf.size(), unknowns);
        for (int i = 0; i < meshes.size(); i++) {
            InSet one = meshes.get(i);
            put(rows, one.set, one.first, i, 1);
            put(rows, one.set, one.second, i, secondOverFirst(one, direction[i]));
        }
        for (int k = 0; k < engaged.size(); k++) {
            add(rows, engaged.get(k).first(), meshes.size() + k, 1);
            add(rows, engaged.get(k).second(), meshes.size() + k, -1);
        }
        add(rows, train.output(), unknowns - 1, -1);
        double[] right = new double[rowOf.size()];
        right[rowOf.get(train.input())] = -1;
        NullSpace space = NullSpace.of(rows);
        double[] values = space.solve(right);
        boolean[] divided = new boolean[unknowns];
        for (int i = 0; i < unknowns; i++) {
            divided[i] = space.freedomOf(i) < NIL;
        }
        return new Solved(values, left(rows, values, right), divided);
    }

    private static double secondOverFirst(InSet one, int direction) {
        double without = -Speeds.sense(one.first, one.second) * one.second.teeth() / one.first.teeth();
        double efficiency = one.mesh.efficiency();
        return without * (direction == 0 ? 1 : direction > 0 ? efficiency : 1 / efficiency);
    }

    /** Torque of a mesh on a wheel: on its planet, or on its member and, turned round, on the carrier. */
    private void put(DMatrixRMaj rows, PlanetarySet set, Wheel wheel, int column, double factor) {
        add(rows, Speeds.bodyOf(set, wheel), column, factor);
        if (!wheel.isPlanet()) {
            add(rows, set.carrier(), column, -factor);
        }
    }

    private void add(DMatrixRMaj rows, String body, int column, double factor) {
        if (!body.equals(Coupling.CASE)) {
            rows.add(rowOf.get(body), column, factor);
        }
    }

    private static double left(DMatrixRMaj rows, double[] values, double[] right) {
        double worst = 0;
        for (int r = 0; r < rows.numRows; r++) {
            double sum = -right[r];
            for (int c = 0; c < rows.numCols; c++) {
                sum += rows.get(r, c) * values[c];
            }
            worst = Math.max(worst, Math.abs(sum));
        }
        return worst;
    }

    /** Power that comes into a mesh by its first wheel, over the input's [-]. */
    double powerIn(int mesh, double[] values) {
        return -values[mesh] * rolling(mesh);
    }

    /** Power that the output takes, over the input's [-]. */
    double powerOut(double[] values) {
        return values[unknowns - 1] * speeds.at(train.output()).orElseThrow();
    }

    /** Power that a mesh turns into heat, over the input's [-]. */
    double loss(int mesh, double[] values, int[] direction) {
        double in = powerIn(mesh, values);
        double efficiency = meshes.get(mesh).mesh.efficiency();
        return direction[mesh] == 0 ? 0 : direction[mesh] > 0 ? in * (1 - efficiency) : -in * (1 / efficiency - 1);
    }

    /** Torque that its meshes put on each sun, ring and carrier, as {@code set.wheel} and {@code set.carrier}. */
    Map<String, Double> onWheels(double[] values, int[] direction) {
        Map<String, Double> torques = new HashMap<>();
        for (int i = 0; i < meshes.size(); i++) {
            InSet one = meshes.get(i);
            collect(torques, one.set, one.first, values[i]);
            collect(torques, one.set, one.second, values[i] * secondOverFirst(one, direction[i]));
        }
        return torques;
    }

    private static void collect(Map<String, Double> torques, PlanetarySet set, Wheel wheel, double torque) {
        if (!wheel.isPlanet()) {
            torques.merge(set.name() + "." + wheel.name(), torque, Double::sum);
            torques.merge(set.name() + ".carrier", -torque, Double::sum);
        }
    }

    /**
     * Meshes whose powers follow each other, since each planet between them has no other mesh.
     *
     * @param leader the mesh that each one follows; itself where it follows none
     * @param sign   +1 where its direction is that of its leader, −1 where it is the opposite
     */
    @SuppressWarnings("ArrayRecordComponent") // work arrays of one solve, which do not leave the package
    record Chains(int[] leader, int[] sign) {}

    Chains chains() {
        int[] leader = new int[meshes.size()];
        int[] sign = new int[meshes.size()];
        for (int i = 0; i < leader.length; i++) {
            leader[i] = i;
            sign[i] = 1;
        }
        for (String planet : planets()) {
            List<Integer> touching = touching(planet);
            if (touching.size() == 2) {
                int one = touching.get(0);
                int other = touching.get(1);
                int turned = isSecond(one, planet) == isSecond(other, planet) ? -1 : 1;
                int between = turned * sign[one] * sign[other];
                int joined = leader[other];
                for (int i = 0; i < leader.length; i++) {
                    if (leader[i] == joined) {
                        leader[i] = leader[one];
                        sign[i] *= between;
                    }
                }
            }
        }
        return new Chains(leader, sign);
    }

    private boolean isSecond(int mesh, String body) {
        return Speeds.bodyOf(meshes.get(mesh).set, meshes.get(mesh).second).equals(body);
    }

    private Set<String> planets() {
        Set<String> planets = new HashSet<>(rowOf.keySet());
        planets.removeAll(train.members());
        return planets;
    }

    private List<Integer> touching(String planet) {
        return IntStream.range(0, meshes.size())
                .filter(i -> isSecond(i, planet)
                        || Speeds.bodyOf(meshes.get(i).set, meshes.get(i).first).equals(planet))
                .boxed()
                .toList();
    }
}
