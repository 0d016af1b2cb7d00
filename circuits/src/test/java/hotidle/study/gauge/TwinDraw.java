package hotidle.study.gauge;

import hotidle.assess.SlipBand;
import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.network.Conditions;
import hotidle.network.Placed;
import hotidle.newton.OffLaws;
import hotidle.newton.SteadySolver;
import hotidle.part.PumpChamber;
import hotidle.part.SpoolValve;
import hotidle.result.Solution;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * Draws units of one build that differ from it as real ones do, lays known faults over them and reads their gauges, with errors of
 * speed, temperature and gauge. The truth is solved anew, at the drawn sizes.
 *
 * @param build      that all are of
 * @param tolerances by which they differ
 * @param offLaws    whether each part passes more or less than its law says, by the law's stated error: a pump by that of its delivery
 *                   where clearances are measured, {@link SlipBand}, all others by {@link Tolerances#FLOW_LAW}
 */
record TwinDraw(Adjustable build, Tolerances tolerances, boolean offLaws) {

    /** Of what a pump delivers, as {@link SlipBand} has it [-]. */
    private static final double DELIVERY = SlipBand.of(1, 0).measured();

    /** What each part passes over what its law says; nothing is drawn where laws are as they are. */
    private Map<String, Double> laws(Random random) {
        Map<String, Double> times = new HashMap<>();
        if (offLaws) {
            for (Placed placed : build.unit().network().parts()) {
                double error = placed.part() instanceof PumpChamber ? DELIVERY : Tolerances.FLOW_LAW;
                times.put(placed.name(), 1 + error * random.nextGaussian());
            }
        }
        return times;
    }

    /** Another unit of the same build; each size that cannot be as drawn is as the build has it. */
    private Tolerances.Twin drawn(Random random) {
        Map<String, Double> sizes = new HashMap<>();
        for (WearSize size : build.dimensions()) {
            sizes.put(
                    size.name(),
                    size.value() + tolerances.sizes().getOrDefault(size.name(), 0.0) * random.nextGaussian());
        }
        if (build.with(sizes).isEmpty()) {
            sizes.entrySet()
                    .removeIf(size ->
                            build.with(Map.of(size.getKey(), size.getValue())).isEmpty());
        }
        Map<String, Double> springs = new HashMap<>();
        for (Placed placed : build.unit().network().parts()) {
            if (placed.part() instanceof SpoolValve) {
                springs.put(placed.name(), 1 + Tolerances.SPRING * random.nextGaussian());
            }
        }
        return new Tolerances.Twin(build, sizes, springs, 1 + Tolerances.SOLENOID * random.nextGaussian());
    }

    /** Another unit with faults, on the stand; empty where what they leave of it cannot be. */
    Optional<OnStand> onStand(List<UnitFault.Sized> faults, Random random) {
        Tolerances.Twin twin = drawn(random);
        Adjustable own = twin.adjustable();
        List<UnitFault> all = UnitFaults.of(own);
        return UnitFault.in(
                        own,
                        faults.stream()
                                .map(sized -> all.stream()
                                        .filter(one ->
                                                one.name().equals(sized.fault().name()))
                                        .findFirst()
                                        .orElseThrow()
                                        .of(sized.size()))
                                .toList())
                .map(unit -> new OnStand(unit, twin.pilot(), laws(random), random));
    }

    /** A twin with its thermometer: what is read twice at one test point is read of one state. */
    final class OnStand {
        private final Transmission unit;
        private final double pilot;
        private final Random random;
        private final double common;
        private final SteadySolver solver;
        private final Map<TestPoint, Solution> states = new HashMap<>();

        private OnStand(Transmission unit, double pilot, Map<String, Double> laws, Random random) {
            this.unit = unit;
            this.pilot = pilot;
            this.random = random;
            common = Tolerances.COMMON_TEMPERATURE * random.nextGaussian();
            solver = laws.isEmpty() ? new SteadySolver(unit.network()) : OffLaws.solver(unit.network(), laws);
        }

        /** What gauges show at places, whose deviations are those of the gauges; empty where a state is not found. */
        Optional<List<GaugeReading>> read(List<GaugeReading> at) {
            List<GaugeReading> readings = new ArrayList<>();
            for (GaugeReading place : at) {
                if (!states.containsKey(place.at())) {
                    TestPoint real = place.at()
                            .atSpeed(place.at().speed() * (1 + Tolerances.SPEED * random.nextGaussian()))
                            .atTemperature(
                                    place.at().temperature() + common + Tolerances.TEMPERATURE * random.nextGaussian());
                    Optional<Solution> found =
                            solver.solve(piloted(real.conditions(unit), pilot)).state();
                    if (found.isEmpty()) {
                        return Optional.empty();
                    }
                    states.put(place.at(), found.get());
                }
                Solution state = states.get(place.at());
                double shown = place.meter().reads() == Meter.Reads.FLOW
                        ? state.flow(place.meter().name())
                        : state.pressure(place.meter().node());
                double value = shown + place.deviation() * random.nextGaussian();
                readings.add(new GaugeReading(place.meter(), place.at(), place.sense(), value, place.deviation()));
            }
            return Optional.of(readings);
        }
    }

    private Conditions piloted(Conditions own, double times) {
        Map<String, Double> commands = new HashMap<>(own.commands());
        String solenoid = build.unit().command().pilot().orElseThrow().solenoid();
        commands.computeIfPresent(solenoid, (name, asked) -> asked * times);
        return own.commanding(commands);
    }
}
