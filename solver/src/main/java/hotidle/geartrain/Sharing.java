package hotidle.geartrain;

import hotidle.geartrain.Drive.Driven;
import hotidle.geartrain.Drive.Load;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What each coupling carries. Where the balance does not divide a load between some, as few of them are left out as make it divide,
 * in every way in which one-way clutches are pushed the way they hold: each coupling is told with the most that it carries in any of
 * them, so that a brake and a one-way clutch beside it are each told alone.
 */
final class Sharing {

    /** Most couplings of which every selection is left out in turn; with more, the least torques that balance are told as shared. */
    private static final int MOST_UNDIVIDED = 10;

    private final GearTrain train;
    private final List<Coupling> engaged;
    private final Speeds speeds;

    /** One way to divide the loads. */
    @SuppressWarnings("ArrayRecordComponent") // work arrays of one solve, which do not leave the package
    private record Split(
            List<Coupling> carrying, TorqueBalance balance, int[] directions, TorqueBalance.Solved solved) {

        boolean divided(Coupling coupling) {
            int index = carrying.indexOf(coupling);
            return index < 0 || solved.divided()[balance.meshes() + index];
        }

        double torque(Coupling coupling) {
            int index = carrying.indexOf(coupling);
            return index < 0 ? 0 : solved.values()[balance.meshes() + index];
        }
    }

    Sharing(GearTrain train, List<Coupling> engaged, Speeds speeds) {
        this.train = train;
        this.engaged = engaged;
        this.speeds = speeds;
    }

    /** What is driven; empty where a one-way clutch would be pushed the way it does not hold. */
    Optional<Driven> driven(TorqueBalance balance, MeshDirections.Consistent found) {
        Split whole = new Split(engaged, balance, found.directions(), found.solved());
        List<Split> ways = ways(whole);
        return ways.isEmpty() ? Optional.empty() : Optional.of(driven(ways));
    }

    private List<Split> ways(Split whole) {
        List<Coupling> undivided = new ArrayList<>();
        for (int i = 0; i < engaged.size(); i++) {
            if (!whole.solved.divided()[whole.balance.meshes() + i]
                    && engaged.get(i).kind() != Coupling.Kind.SHAFT) {
                undivided.add(engaged.get(i));
            }
        }
        if (undivided.isEmpty() || undivided.size() > MOST_UNDIVIDED) {
            return holds(whole) ? List.of(whole) : List.of();
        }
        List<Split> ways = new ArrayList<>();
        int fewest = engaged.size();
        for (List<Coupling> left : TrainDrive.byCount(undivided)) {
            if (left.size() <= fewest && !left.isEmpty()) {
                Optional<Split> way = without(left);
                if (way.isPresent()) {
                    fewest = left.size();
                    way.filter(Sharing::holds).ifPresent(ways::add);
                }
            }
        }
        return ways;
    }

    /** The balance without some couplings, where it divides all loads. */
    private Optional<Split> without(List<Coupling> left) {
        List<Coupling> carrying = new ArrayList<>(engaged);
        carrying.removeAll(left);
        TorqueBalance balance = new TorqueBalance(train, carrying, speeds);
        List<MeshDirections.Consistent> found = MeshDirections.of(balance);
        if (found.size() != 1) {
            return Optional.empty();
        }
        TorqueBalance.Solved solved = found.get(0).solved();
        for (int i = 0; i < carrying.size(); i++) {
            if (!solved.divided()[balance.meshes() + i]) {
                return Optional.empty();
            }
        }
        return Optional.of(new Split(carrying, balance, found.get(0).directions(), solved));
    }

    /** Whether each one-way clutch is pushed the way it holds. */
    private static boolean holds(Split way) {
        return way.carrying.stream()
                .filter(one -> one.kind() == Coupling.Kind.ONE_WAY)
                .allMatch(one -> way.torque(one) >= -TorqueBalance.NIL);
    }

    private Driven driven(List<Split> ways) {
        Split first = ways.get(0);
        Map<String, Load> loads = new HashMap<>();
        for (Coupling coupling : engaged) {
            double most = 0;
            boolean shared = ways.size() == 1 && !first.divided(coupling);
            for (Split way : ways) {
                double torque = way.torque(coupling);
                shared |= Math.abs(torque - first.torque(coupling)) > TorqueBalance.NIL;
                most = Math.abs(torque) > Math.abs(most) ? torque : most;
            }
            loads.put(coupling.name(), new Load(most, shared));
        }
        Map<String, Double> slips = new HashMap<>();
        Set<Coupling> open = new HashSet<>(train.couplings());
        engaged.forEach(open::remove);
        open.forEach(coupling -> speeds.slip(coupling).ifPresent(slip -> slips.put(coupling.name(), slip)));
        double delivered = first.solved.values()[first.solved.values().length - 1];
        double loss = 0;
        for (int i = 0; i < first.balance.meshes(); i++) {
            loss += first.balance.loss(i, first.solved.values(), first.directions);
        }
        Map<String, Double> members = new HashMap<>(speeds.known());
        List<String> named = train.members();
        members.keySet().removeIf(name -> !name.equals(Coupling.CASE) && !named.contains(name));
        Map<String, Double> wheels = first.balance.onWheels(first.solved.values(), first.directions);
        return new Driven(
                1 / speeds.at(train.output()).orElseThrow(),
                delivered,
                members,
                wheels,
                loads,
                slips,
                delivered - 1,
                loss);
    }
}
