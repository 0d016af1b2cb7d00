package hotidle.study;

import hotidle.geartrain.Drive.Driven;
import hotidle.part.Setting;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Under what torque is asked for: engine speed as stated, temperatures of the hottest duty point under load, the converter's highest
 * torque ratio in the lowest range and in reverse and 1 elsewhere, lockup off.
 *
 * @param range       the range
 * @param speed       of the engine [rev/s]
 * @param torqueRatio turbine torque over engine torque [-]
 * @param hottest     the duty point whose temperatures are taken
 * @param control     the duty point whose solenoid commands are taken: one in this range, or else the hottest
 */
public record TorqueConditions(Range range, double speed, double torqueRatio, DutyPoint hottest, DutyPoint control) {

    /** A duty point is under load from this share of the highest engine torque on (chosen). */
    private static final double LOADED = 0.5;

    /** Engine speed where none is asked for: 2000 rpm (chosen) [rev/s]. */
    public static final double USUAL_SPEED = 2000 / 60.0;

    /** Whether torque can be asked of a unit: it applies a clutch, and a duty point gives all temperatures. */
    public static boolean given(Transmission unit) {
        return unit.ranges().stream().anyMatch(range -> !range.applied().isEmpty())
                && hottest(unit).isPresent();
    }

    /**
     * Of a range.
     *
     * @throws IllegalArgumentException where no duty point under load gives the temperatures of all regions
     */
    static TorqueConditions of(Transmission unit, Range range, double speed) {
        DutyPoint hottest = hottest(unit)
                .orElseThrow(() ->
                        new IllegalArgumentException("no duty point under load gives the temperatures of all regions"));
        double converter =
                unit.duties().stream().mapToDouble(DutyPoint::torqueRatio).max().orElse(1);
        DutyPoint control = unit.duties().stream()
                .filter(duty -> duty.range().equals(range.name()))
                .max(Comparator.comparingDouble(DutyPoint::engineTorque))
                .orElse(hottest);
        return new TorqueConditions(range, speed, slowest(unit, range) ? converter : 1, hottest, control);
    }

    /** The duty point under load whose sump is hottest; empty where none gives the temperatures of all regions. */
    public static Optional<DutyPoint> hottest(Transmission unit) {
        Set<String> regions = unit.duties().stream()
                .flatMap(duty -> duty.temperatures().keySet().stream())
                .collect(Collectors.toSet());
        double highest = unit.duties().stream()
                .mapToDouble(DutyPoint::engineTorque)
                .max()
                .orElse(0);
        return unit.duties().stream()
                .filter(duty -> duty.engineTorque() >= LOADED * highest)
                .filter(duty -> duty.temperatures().keySet().containsAll(regions))
                .max(Comparator.comparingDouble(duty -> duty.temperatures().getOrDefault("sump", 0.0)));
    }

    /** Whether it is the lowest forward range or drives backwards; by the gear train, or else by the order of the file. */
    private static boolean slowest(Transmission unit, Range range) {
        if (!range.forward()) {
            return true;
        }
        List<Range> forward = unit.ranges().stream()
                .filter(one -> one.forward() && !one.applied().isEmpty())
                .toList();
        Optional<Range> slowest = forward.stream().allMatch(one -> one.driven().isPresent())
                ? forward.stream()
                        .max(Comparator.comparingDouble(
                                one -> one.driven().map(Driven::ratio).orElse(0.0)))
                : forward.stream().findFirst();
        return slowest.map(one -> one.name().equals(range.name())).orElse(false);
    }

    /** The duty point at which an engine torque [N·m] is tried at an engine speed [rev/s]. */
    public DutyPoint duty(double engineTorque, double atSpeed) {
        return new DutyPoint(
                "torque",
                "",
                atSpeed,
                range.name(),
                Setting.Lockup.OFF,
                engineTorque,
                torqueRatio,
                torqueRatio == 1 ? OptionalDouble.of(1) : OptionalDouble.empty(),
                1,
                hottest.temperatures(),
                Map.copyOf(control.commands()),
                control.sensed());
    }
}
