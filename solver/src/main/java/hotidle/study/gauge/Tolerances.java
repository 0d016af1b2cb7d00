package hotidle.study.gauge;

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
import java.util.Random;

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

    /** What one number that is not known does: the unit with it half a standard deviation up and down. */
    record Shift(String name, Network up, Network down) {}

    /** All numbers of the unit that are not known; those that cannot be moved both ways are left out. */
    List<Shift> shifts() {
        List<Shift> shifts = new ArrayList<>();
        for (WearSize size : build.dimensions()) {
            double deviation = sizes.getOrDefault(size.name(), 0.0);
            if (deviation > 0 && movable(build, size, deviation)) {
                shifts.add(
                        new Shift(size.name(), moved(build, size, deviation / 2), moved(build, size, -deviation / 2)));
            }
        }
        Network network = build.unit().network();
        for (Placed placed : network.parts()) {
            if (placed.part() instanceof SpoolValve valve && valve.spring().preload() != 0) {
                shifts.add(new Shift(
                        placed.name() + " spring",
                        sprung(network, placed, 1 + SPRING / 2),
                        sprung(network, placed, 1 - SPRING / 2)));
            }
        }
        return shifts;
    }

    /** Whether a size can be moved half a deviation both ways. */
    static boolean movable(Adjustable build, WearSize size, double deviation) {
        return build.with(size, size.value() + deviation / 2).isPresent()
                && build.with(size, size.value() - deviation / 2).isPresent();
    }

    private static Network moved(Adjustable build, WearSize size, double by) {
        return build.with(size, size.value() + by).orElseThrow().network();
    }

    private static Network sprung(Network network, Placed placed, double times) {
        SpoolValve valve = (SpoolValve) placed.part();
        return network.with(placed.with(
                valve.with(valve.spring().withPreload(times * valve.spring().preload()))));
    }

    /** Another unit of the same build, drawn at random; with its sizes as {@link Adjustable} takes them, for faults to be laid on. */
    public Twin twin(Random random) {
        Map<String, Double> drawn = new HashMap<>();
        for (WearSize size : build.dimensions()) {
            double deviation = sizes.getOrDefault(size.name(), 0.0);
            if (deviation > 0) {
                double value = size.value() + deviation * random.nextGaussian();
                if (build.with(size, value).isPresent()) {
                    drawn.put(size.name(), value);
                }
            }
        }
        Map<String, Double> springs = new HashMap<>();
        for (Placed placed : build.unit().network().parts()) {
            if (placed.part() instanceof SpoolValve) {
                springs.put(placed.name(), 1 + SPRING * random.nextGaussian());
            }
        }
        return new Twin(build, drawn, springs, 1 + SOLENOID * random.nextGaussian());
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
                    .map(size -> new WearSize(
                            size.part(),
                            size.key(),
                            size.kind(),
                            sizes.getOrDefault(size.name(), size.value()),
                            size.fresh(),
                            size.limit(),
                            size.measured(),
                            size.origin()))
                    .toList();
            Adjustable.Remake remake = changed -> {
                Map<String, Double> all = new HashMap<>(sizes);
                all.putAll(changed);
                return sprung(build.remake().with(all));
            };
            return new Adjustable(remake.with(Map.of()), own, remake);
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
