package hotidle.answer.sweep;

import hotidle.answer.StateRecord;
import hotidle.answer.format.Digits;
import hotidle.answer.format.Rpm;
import hotidle.oil.Oil;
import hotidle.study.SpeedSweep;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Sweeps as JSON, by build. */
record SweepRecord(String circuit, List<BuildSweeps> builds) {

    /** One build; maps are by duty point, with the temperature where several were asked for. */
    record BuildSweeps(
            String build,
            Map<String, OptionalDouble> onsetRpm,
            Map<String, OptionalDouble> secondaryUnloadsFromRpm,
            Map<String, OptionalDouble> primaryBypassesFromRpm,
            List<StateRecord> states,
            List<RisingFalling> risingFallingDifferences) {}

    /** A part, or the line, that ends in two places. */
    record RisingFalling(double engineSpeedRpm, String part, double rising, double falling) {
        static RisingFalling of(SpeedSweep.Hysteresis found) {
            return new RisingFalling(Rpm.of(found.speed()), found.part(), found.rising(), found.falling());
        }
    }

    /**
     * The record.
     *
     * @param warm whether several temperatures were asked for, so that a duty's name alone does not say which sweep is meant
     */
    static SweepRecord of(List<SpeedSweep> sweeps, boolean warm) {
        List<String> builds =
                sweeps.stream().map(sweep -> sweep.unit().build()).distinct().toList();
        return new SweepRecord(
                sweeps.get(0).unit().circuit(),
                builds.stream()
                        .map(name -> build(
                                name,
                                sweeps.stream()
                                        .filter(sweep -> sweep.unit().build().equals(name))
                                        .toList(),
                                warm))
                        .toList());
    }

    private static BuildSweeps build(String name, List<SpeedSweep> own, boolean warm) {
        return new BuildSweeps(
                name,
                speeds(own, warm, SpeedSweep::onset),
                speeds(own, warm, SpeedSweep::unloading),
                speeds(own, warm, SpeedSweep::bypassing),
                own.stream()
                        .flatMap(sweep -> IntStream.range(0, sweep.shown().size())
                                .mapToObj(i -> StateRecord.of(
                                        sweep.unit(),
                                        sweep.duty(),
                                        sweep.shown().get(i),
                                        sweep.assessed().get(i))))
                        .toList(),
                own.stream()
                        .flatMap(sweep -> sweep.differences().stream())
                        .map(RisingFalling::of)
                        .toList());
    }

    private static Map<String, OptionalDouble> speeds(
            List<SpeedSweep> own, boolean warm, Function<SpeedSweep, OptionalDouble> speed) {
        Map<String, OptionalDouble> found = new LinkedHashMap<>();
        List<Double> sumps = own.stream().map(SweepRecord::sump).toList();
        own.forEach(sweep -> found.put(
                sweep.duty().name() + (warm ? " at " + Digits.apart(sump(sweep), sumps, 'g', 4) + " degC" : ""),
                Rpm.of(speed.apply(sweep))));
        return found;
    }

    private static double sump(SpeedSweep sweep) {
        return sweep.duty().temperatures().get("sump") - Oil.ZERO_CELSIUS;
    }
}
