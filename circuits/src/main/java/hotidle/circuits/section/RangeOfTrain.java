package hotidle.circuits.section;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.ProblemCode;
import hotidle.geartrain.Coupling;
import hotidle.geartrain.Drive;
import hotidle.geartrain.Drive.Driven;
import hotidle.geartrain.Drive.NotDriven;
import hotidle.geartrain.GearTrain;
import hotidle.geartrain.TrainDrive;
import hotidle.transmission.Range;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the gear train makes of a range, and whether what the range says by hand agrees. */
final class RangeOfTrain {

    /** What is written may be rounded to this share, or to this much where it is small. */
    private static final double ROUNDED = 0.01;

    private static final double SMALL = 0.005;

    private RangeOfTrain() {}

    /** What the train does in a range; empty where nothing is applied, or it is faulty. */
    static Optional<Driven> driven(GearTrain train, Attributes range) {
        Map<String, Attributes> clutches = range.groups("clutches");
        if (clutches.isEmpty() || range.broken() || range.text("drives").equals("no")) {
            return Optional.empty();
        }
        List<String> known = train.couplings().stream()
                .filter(one -> one.kind() == Coupling.Kind.CLUTCH)
                .map(Coupling::name)
                .toList();
        for (Attributes clutch : clutches.values()) {
            if (!known.contains(clutch.name())) {
                clutch.error(
                        ProblemCode.CLUTCH_NOT_IN_TRAIN,
                        "",
                        "joins nothing in the gear train",
                        "what it holds follows from the members that it joins",
                        Nearest.mend(clutch.name(), known));
                return Optional.empty();
            }
        }
        Drive drive = TrainDrive.of(train, Set.copyOf(clutches.keySet()));
        if (drive instanceof NotDriven not) {
            range.error(ProblemCode.RANGE_DOES_NOT_DRIVE, "clutches", says(not), why(not), mend(not));
        }
        return drive instanceof Driven driven ? Optional.of(driven) : Optional.empty();
    }

    private static String says(NotDriven not) {
        String names = String.join(", ", not.names());
        return switch (not.why()) {
            case OUTPUT_FREE -> "leaves the output's speed undetermined";
            case CONTRADICTION -> "applies elements that contradict each other: " + names;
            case OUTPUT_STANDS -> "holds the output while the turbine turns";
            case SELF_LOCKING -> "locks itself: with its mesh losses the gear train passes no power";
            case LOSS_AMBIGUOUS -> "has two ways for power to pass its meshes, so that their losses are not known";
        };
    }

    private static String why(NotDriven not) {
        return switch (not.why()) {
            case OUTPUT_FREE -> "nothing fixes the speed of " + String.join(", ", not.names());
            case CONTRADICTION -> "with all of them engaged the turbine cannot turn";
            default -> "";
        };
    }

    private static String mend(NotDriven not) {
        return not.why() == Drive.DriveFault.OUTPUT_FREE
                ? "apply one more clutch or brake, or say drives: no"
                : "check which clutches the range applies and what they join";
    }

    /** What a clutch carries; told where the file says otherwise. */
    static Range.Applied applied(GearTrain train, Driven driven, Attributes clutch) {
        double share = Math.abs(driven.loads().get(clutch.name()).torque());
        double drum = drum(train, driven, clutch.name());
        if (clutch.stands("torque-share") && !agree(clutch.number("torque-share"), share)) {
            clutch.error(
                    ProblemCode.SHARE_AGAINST_TRAIN,
                    "torque-share",
                    "has a torque-share that the gear train does not give it",
                    "by the gear train it holds " + rounded(share) + " times the turbine's torque",
                    "leave torque-share out, or write " + rounded(share));
        }
        if (clutch.stands("speed-ratio") && !agree(clutch.number("speed-ratio"), drum)) {
            clutch.error(
                    ProblemCode.DRUM_AGAINST_TRAIN,
                    "speed-ratio",
                    "has a speed-ratio that the gear train does not give it",
                    "by the gear train its drum turns at " + rounded(drum) + " times the turbine's speed",
                    "leave speed-ratio out, or write " + rounded(drum));
        }
        return new Range.Applied(share, drum);
    }

    /** Speed of what carries the piston: it stands in a brake. */
    private static double drum(GearTrain train, Driven driven, String clutch) {
        return train.couplings().stream()
                .filter(one -> one.name().equals(clutch))
                .filter(one -> !one.isBrake())
                .mapToDouble(one -> driven.speed(one.first()).orElse(0))
                .findFirst()
                .orElse(0);
    }

    /** Slip of each clutch that is not applied, where the train fixes it. */
    static Map<String, Double> open(GearTrain train, Driven driven) {
        Map<String, Double> open = new LinkedHashMap<>();
        for (Coupling one : train.couplings()) {
            if (one.kind() == Coupling.Kind.CLUTCH && driven.slips().containsKey(one.name())) {
                open.put(one.name(), driven.slips().get(one.name()));
            }
        }
        return open;
    }

    private static boolean agree(double written, double computed) {
        return Math.abs(written - computed) <= Math.max(ROUNDED * Math.abs(computed), SMALL);
    }

    private static String rounded(double value) {
        return String.format(java.util.Locale.ROOT, "%.3f", value);
    }
}
