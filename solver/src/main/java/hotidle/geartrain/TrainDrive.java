package hotidle.geartrain;

import hotidle.geartrain.Drive.DriveFault;
import hotidle.geartrain.Drive.NotDriven;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds what a train does with some clutches applied. One-way clutches hold where they must: the state with the fewest holding is
 * taken in which each one that is free overruns and each one that holds is pushed the way it holds. One that neither overruns nor
 * is needed stands beside what does its work, and the two share.
 */
public final class TrainDrive {

    private final GearTrain train;
    private final List<Coupling> always;
    private final List<Coupling> oneWays;

    private TrainDrive(GearTrain train, Set<String> applied) {
        this.train = train;
        always = train.couplings().stream()
                .filter(one -> one.kind() == Coupling.Kind.SHAFT
                        || (one.kind() == Coupling.Kind.CLUTCH && applied.contains(one.name())))
                .toList();
        oneWays = train.couplings().stream()
                .filter(one -> one.kind() == Coupling.Kind.ONE_WAY)
                .toList();
    }

    /**
     * The train with some clutches applied, driven by its input.
     *
     * @param applied names of clutches, brakes and bands
     * @throws IllegalArgumentException where one of them is not in the train
     */
    public static Drive of(GearTrain train, Set<String> applied) {
        for (String name : applied) {
            if (train.couplings().stream()
                    .noneMatch(one -> one.name().equals(name) && one.kind() == Coupling.Kind.CLUTCH)) {
                throw new IllegalArgumentException("the gear train has no clutch " + name);
            }
        }
        return new TrainDrive(train, applied).drive();
    }

    private Drive drive() {
        Optional<Drive> refusal = Optional.empty();
        for (List<Coupling> holding : byCount(oneWays)) {
            List<Coupling> engaged = joined(always, holding);
            Speeds speeds = Speeds.of(train, engaged);
            Optional<NotDriven> fault = fault(engaged, speeds);
            if (fault.isEmpty() && overrun(speeds, holding)) {
                Optional<? extends Drive> driven = loaded(holding, speeds);
                if (driven.isPresent()) {
                    return driven.get();
                }
            }
            refusal = refusal.isPresent() ? refusal : fault.map(found -> found);
        }
        return refusal.orElseGet(() -> new NotDriven(
                DriveFault.CONTRADICTION, oneWays.stream().map(Coupling::name).toList()));
    }

    /** Why speeds do not drive; empty where they do. */
    private Optional<NotDriven> fault(List<Coupling> engaged, Speeds speeds) {
        if (speeds.locked()) {
            return Optional.of(new NotDriven(DriveFault.CONTRADICTION, contradicting(engaged)));
        }
        if (speeds.at(train.output()).isEmpty()) {
            List<String> loose = train.members().stream()
                    .filter(member -> speeds.at(member).isEmpty())
                    .toList();
            return Optional.of(new NotDriven(DriveFault.OUTPUT_FREE, loose));
        }
        return Math.abs(speeds.at(train.output()).getAsDouble()) < Speeds.NIL
                ? Optional.of(new NotDriven(DriveFault.OUTPUT_STANDS, List.of()))
                : Optional.empty();
    }

    /** Couplings without any one of which the input could turn. */
    private List<String> contradicting(List<Coupling> engaged) {
        List<String> names = new ArrayList<>();
        for (Coupling one : engaged) {
            List<Coupling> others = new ArrayList<>(engaged);
            others.remove(one);
            if (!Speeds.of(train, others).locked()) {
                names.add(one.name());
            }
        }
        return names;
    }

    /** Whether each one-way clutch that is free overruns, or is free to. */
    private boolean overrun(Speeds speeds, List<Coupling> holding) {
        return oneWays.stream()
                .filter(one -> !holding.contains(one))
                .allMatch(one -> speeds.slip(one).orElse(0) >= -Speeds.NIL);
    }

    /** The loads where some one-way clutches hold; empty where one of them is pushed the way it does not hold. */
    private Optional<? extends Drive> loaded(List<Coupling> holding, Speeds speeds) {
        List<Coupling> beside = oneWays.stream()
                .filter(one ->
                        holding.contains(one) || Math.abs(speeds.slip(one).orElse(1)) < Speeds.NIL)
                .toList();
        List<Coupling> engaged = joined(always, beside);
        TorqueBalance balance = new TorqueBalance(train, engaged, speeds);
        List<MeshDirections.Consistent> found = MeshDirections.of(balance);
        if (found.size() != 1) {
            return Optional.of(
                    new NotDriven(found.isEmpty() ? DriveFault.SELF_LOCKING : DriveFault.LOSS_AMBIGUOUS, List.of()));
        }
        return new Sharing(train, engaged, speeds).driven(balance, found.get(0));
    }

    private static List<Coupling> joined(List<Coupling> some, List<Coupling> others) {
        List<Coupling> all = new ArrayList<>(some);
        all.addAll(others);
        return all;
    }

    /** All selections, those of fewer first. */
    static <T> List<List<T>> byCount(List<T> from) {
        List<List<T>> all = new ArrayList<>();
        for (int count = 0; count <= from.size(); count++) {
            for (int bits = 0; bits < 1 << from.size(); bits++) {
                if (Integer.bitCount(bits) == count) {
                    List<T> some = new ArrayList<>();
                    for (int i = 0; i < from.size(); i++) {
                        if ((bits >> i & 1) == 1) {
                            some.add(from.get(i));
                        }
                    }
                    all.add(some);
                }
            }
        }
        return all;
    }
}
