package hotidle.geartrain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The direction of the power through each mesh: the one with which the balance gives powers of that direction. Found by iteration
 * from the balance without loss; then all other directions are tried, so that none that is as good goes unseen.
 */
final class MeshDirections {

    /** Most chains of meshes of which all directions are tried: 2^10 balances. */
    private static final int MOST_CHAINS = 10;

    private static final int ITERATIONS = 50;

    private MeshDirections() {}

    /**
     * A balance whose powers have the directions that it was made for.
     *
     * @param directions of each mesh
     * @param solved     the balance
     */
    @SuppressWarnings("ArrayRecordComponent") // work arrays of one solve, which do not leave the package
    record Consistent(int[] directions, TorqueBalance.Solved solved) {}

    /**
     * All consistent balances that differ and in which the output takes power: none, one or more. Where the train locks itself from
     * the output, there is a second balance in which input and output both push against the losses; that is none of a drive.
     */
    static List<Consistent> of(TorqueBalance balance) {
        return all(balance).stream()
                .filter(one -> balance.powerOut(one.solved().values()) > 0)
                .toList();
    }

    private static List<Consistent> all(TorqueBalance balance) {
        List<Consistent> found = new ArrayList<>();
        iterated(balance).ifPresent(found::add);
        TorqueBalance.Chains chains = balance.chains();
        int[] leaders = Arrays.stream(chains.leader())
                .distinct()
                .filter(leader -> loses(balance, chains, leader))
                .toArray();
        if (leaders.length == 0 || leaders.length > MOST_CHAINS) {
            return found;
        }
        for (int set = 0; set < 1 << leaders.length; set++) {
            int[] directions = new int[balance.meshes()];
            for (int i = 0; i < directions.length; i++) {
                int leader = indexOf(leaders, chains.leader()[i]);
                if (leader >= 0 && balance.loses(i)) {
                    directions[i] = chains.sign()[i] * ((set >> leader & 1) == 0 ? 1 : -1);
                }
            }
            TorqueBalance.Solved solved = balance.solve(directions);
            if (consistent(balance, directions, solved) && found.stream().noneMatch(other -> same(other, solved))) {
                found.add(new Consistent(directions, solved));
            }
        }
        return found;
    }

    private static Optional<Consistent> iterated(TorqueBalance balance) {
        int[] directions = new int[balance.meshes()];
        for (int iteration = 0; iteration < ITERATIONS; iteration++) {
            TorqueBalance.Solved solved = balance.solve(directions);
            int[] next = directions(balance, solved.values());
            if (Arrays.equals(next, directions)) {
                return consistent(balance, directions, solved)
                        ? Optional.of(new Consistent(directions, solved))
                        : Optional.empty();
            }
            directions = next;
        }
        return Optional.empty();
    }

    private static int[] directions(TorqueBalance balance, double[] values) {
        int[] directions = new int[balance.meshes()];
        for (int i = 0; i < directions.length; i++) {
            double power = balance.powerIn(i, values);
            directions[i] = balance.loses(i) && Math.abs(power) > TorqueBalance.NIL ? (int) Math.signum(power) : 0;
        }
        return directions;
    }

    private static boolean consistent(TorqueBalance balance, int[] directions, TorqueBalance.Solved solved) {
        if (solved.left() > TorqueBalance.NIL) {
            return false;
        }
        for (int i = 0; i < directions.length; i++) {
            double power = balance.powerIn(i, solved.values());
            boolean against = power * directions[i] < -TorqueBalance.NIL;
            boolean free = directions[i] == 0 && balance.loses(i) && Math.abs(power) > TorqueBalance.NIL;
            if (against || free) {
                return false;
            }
        }
        return true;
    }

    private static boolean loses(TorqueBalance balance, TorqueBalance.Chains chains, int leader) {
        for (int i = 0; i < chains.leader().length; i++) {
            if (chains.leader()[i] == leader && balance.loses(i)) {
                return true;
            }
        }
        return false;
    }

    private static boolean same(Consistent one, TorqueBalance.Solved other) {
        for (int i = 0; i < other.values().length; i++) {
            if (Math.abs(one.solved().values()[i] - other.values()[i]) > TorqueBalance.NIL * 100) {
                return false;
            }
        }
        return true;
    }

    private static int indexOf(int[] values, int value) {
        for (int i = 0; i < values.length; i++) {
            if (values[i] == value) {
                return i;
            }
        }
        return -1;
    }
}
