package hotidle.study.gauge;

import hotidle.fault.UnitFault;
import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.part.SpoolValve;
import hotidle.study.spread.SizePrior;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * By how much a sound unit may differ from its build: each size that was not measured, each spring, each solenoid, and what is set on a
 * test. All are independent and normal about the build.
 *
 * @param build of which the unit is one
 * @param sizes standard deviation of each size [m] or [m²], by name
 */
public record Tolerances(Adjustable build, Map<String, Double> sizes) {

    /** Of the preload of a spool's spring (assumed) [-]. */
    static final double SPRING = 0.02;

    /** Of the pilot pressure that a solenoid makes for what it is asked (assumed) [-]. */
    static final double SOLENOID = 0.02;

    /** Of the engine speed that is read at one test point (assumed) [-]. */
    static final double SPEED = 0.01;

    /** Of the temperature that is read at one test point (assumed) [K]. */
    static final double TEMPERATURE = 2;

    /** Of the thermometer and the oil's viscosity, the same at all test points, as a temperature (assumed) [K]. */
    static final double COMMON_TEMPERATURE = 3;

    /** Of a flow law's own constants, as a share of a flow (assumed) [-]. */
    static final double FLOW_LAW = 0.04;

    public Tolerances {
        sizes = Map.copyOf(sizes);
    }

    /** The usual ones of a build: what was measured is believed as its gauge, all else as sound parts are made, {@link SizePrior}. */
    public static Tolerances of(Adjustable build) {
        Map<String, Double> sizes = new HashMap<>();
        for (WearSize size : build.dimensions()) {
            double deviation = prior(size).standardDeviation();
            if (deviation > 0) {
                sizes.put(size.name(), deviation);
            }
        }
        return new Tolerances(build, sizes);
    }

    private static SizePrior prior(WearSize size) {
        if (size.scores()) {
            return SizePrior.assumed(size);
        }
        return size.origin() == WearSize.Origin.MEASURED ? SizePrior.measured(size) : SizePrior.sound(size);
    }

    /**
     * What one number that is not known does: the unit with it half a standard deviation up and down.
     *
     * @param name of the size, or of the valve whose spring it is
     * @param part in which it is
     */
    record Shift(String name, String part, Network up, Network down) {}

    /** All numbers of the unit that are not known; those that cannot be moved both ways are left out. */
    List<Shift> shifts() {
        List<Shift> shifts = new ArrayList<>();
        for (WearSize size : build.dimensions()) {
            double deviation = sizes.getOrDefault(size.name(), 0.0);
            if (deviation > 0) {
                sized(size, deviation, List.of()).ifPresent(shifts::add);
            }
        }
        for (Placed placed : build.unit().network().parts()) {
            if (placed.part() instanceof SpoolValve valve && valve.spring().preload() != 0) {
                shifts.add(sprung(build.unit().network(), placed));
            }
        }
        return shifts;
    }

    /**
     * The same numbers on a unit with faults. What is not known of a part that has one counts there as it does in that part, not as
     * in a sound one: a thousandth more on a bore that is torn open passes many times the oil that it does on a sound one, and the
     * spring of a spool that is stuck moves nothing. All other parts are as they were.
     *
     * @param sound  those of the unit without them
     * @param faults of it
     */
    List<Shift> shifts(List<Shift> sound, List<UnitFault.Sized> faults) {
        if (faults.stream().allMatch(one -> one.fault().part().isEmpty())) {
            return sound;
        }
        return sound.stream().map(shift -> shifted(shift, faults)).toList();
    }

    private Shift shifted(Shift sound, List<UnitFault.Sized> faults) {
        if (faults.stream().noneMatch(one -> one.fault().part().equals(sound.part()))) {
            return sound;
        }
        Optional<WearSize> size = build.dimension(sound.name());
        if (size.isPresent()) {
            return sized(size.get(), sizes.get(sound.name()), faults).orElse(sound);
        }
        return UnitFault.in(build, faults)
                .map(Transmission::network)
                .map(network -> sprung(network, network.part(sound.part()).orElseThrow()))
                .orElse(sound);
    }

    private Optional<Shift> sized(WearSize size, double deviation, List<UnitFault.Sized> faults) {
        Optional<Transmission> up = UnitFault.in(build, Map.of(size.name(), deviation / 2), faults);
        Optional<Transmission> down = UnitFault.in(build, Map.of(size.name(), -deviation / 2), faults);
        return up.isPresent() && down.isPresent()
                ? Optional.of(new Shift(
                        size.name(), size.part(), up.get().network(), down.get().network()))
                : Optional.empty();
    }

    private static Shift sprung(Network network, Placed placed) {
        return new Shift(
                placed.name() + " spring",
                placed.name(),
                sprung(network, placed, 1 + SPRING / 2),
                sprung(network, placed, 1 - SPRING / 2));
    }

    /** Whether a size can be moved half a deviation both ways. */
    static boolean movable(Adjustable build, WearSize size, double deviation) {
        return build.with(size, size.value() + deviation / 2).isPresent()
                && build.with(size, size.value() - deviation / 2).isPresent();
    }

    private static Network sprung(Network network, Placed placed, double times) {
        SpoolValve valve = (SpoolValve) placed.part();
        return network.with(placed.with(
                valve.with(valve.spring().withPreload(times * valve.spring().preload()))));
    }

    /**
     * A unit of a build that differs from it as real ones do.
     *
     * @param build   that it is of
     * @param sizes   that differ, by name
     * @param springs preload over the build's, by valve
     * @param pilot   pilot pressure over the one asked for
     */
    public record Twin(Adjustable build, Map<String, Double> sizes, Map<String, Double> springs, double pilot) {

        public Twin {
            sizes = Map.copyOf(sizes);
            springs = Map.copyOf(springs);
        }

        /** The twin as a unit whose sizes can be changed from what they are. */
        public Adjustable adjustable() {
            List<WearSize> own = build.dimensions().stream()
                    .map(size -> own(size, sizes.getOrDefault(size.name(), size.value())))
                    .toList();
            Adjustable.Remake remake = changed -> {
                Map<String, Double> all = new HashMap<>(sizes);
                all.putAll(changed);
                return sprung(build.remake().with(all));
            };
            return new Adjustable(remake.with(Map.of()), own, remake);
        }

        /**
         * A size at another value. What it may wear stays as the build has it: one whose end nobody has written or measured does not
         * wear because this unit's own is not the build's.
         */
        private static WearSize own(WearSize size, double value) {
            boolean ends = size.limit().isPresent() || size.measured().isPresent();
            return new WearSize(
                    size.part(),
                    size.key(),
                    size.kind(),
                    value,
                    ends ? size.fresh() : value - (size.value() - size.fresh()),
                    size.limit(),
                    size.measured(),
                    size.origin());
        }

        private Transmission sprung(Transmission unit) {
            Network network = unit.network();
            for (Map.Entry<String, Double> spring : springs.entrySet()) {
                network =
                        Tolerances.sprung(network, network.part(spring.getKey()).orElseThrow(), spring.getValue());
            }
            return unit.with(network, unit.assumed());
        }
    }
}
