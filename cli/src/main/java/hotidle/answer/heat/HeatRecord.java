package hotidle.answer.heat;

import hotidle.answer.StateRecord;
import hotidle.heat.HeatItem;
import hotidle.heat.WarmState;
import hotidle.heat.Warmed;
import hotidle.oil.Oil;
import hotidle.result.Outcome;
import hotidle.study.HeatStudy;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Where heat comes from and goes, as JSON. */
record HeatRecord(String circuit, List<HeatBuildRecord> builds) {

    record HeatBuildRecord(String build, List<HeatDutyRecord> duties) {}

    /**
     * A driving condition; what stands in it is at its temperatures.
     *
     * @param heatW           by source and sink, above zero where it warms the unit
     * @param throttlingW     what oil gives up on its way, by what it is booked under
     * @param storedW         what stays in sump and converter
     * @param imbalance       sources less sinks less what is stored, over the sources
     * @param nodesC          of the oil at each node
     * @param againstTheFirst what its heat costs against the first build
     */
    record HeatDutyRecord(
            String duty,
            String verdict,
            Optional<Double> seconds,
            Optional<String> after,
            List<Double> othersC,
            Optional<Map<String, Double>> heatW,
            Optional<Map<String, Double>> throttlingW,
            Optional<Double> storedW,
            Optional<Double> imbalance,
            Optional<Map<String, Double>> nodesC,
            Optional<CostRecord> againstTheFirst,
            Optional<StateRecord> state) {}

    record CostRecord(
            double sumpK, double converterK, double linePressurePa, double lubricationM3S, OptionalDouble leastFilmM) {}

    static HeatRecord of(String circuit, HeatStudy study) {
        return new HeatRecord(
                circuit,
                study.builds().stream()
                        .map(build -> new HeatBuildRecord(
                                build.unit().build(),
                                build.duties().stream()
                                        .map(duty -> duty(build, duty))
                                        .toList()))
                        .toList());
    }

    private static HeatDutyRecord duty(HeatStudy.BuildHeat build, HeatStudy.DutyHeat duty) {
        Warmed warmed = duty.warmed();
        Optional<WarmState> state = warmed.settled();
        return new HeatDutyRecord(
                warmed.duty().name(),
                word(warmed.verdict()),
                warmed.seconds(),
                warmed.from(),
                warmed.others().stream().map(one -> celsius(one.at().sump())).toList(),
                state.map(HeatRecord::heat),
                state.map(HeatRecord::throttling),
                state.map(one -> one.flows().sumpRate() + one.flows().converterRate()),
                state.map(one -> one.flows().imbalance()),
                state.map(one -> {
                    Map<String, Double> nodes = new TreeMap<>();
                    one.flows().temperatures().forEach((node, kelvin) -> nodes.put(node, celsius(kelvin)));
                    return nodes;
                }),
                duty.cost()
                        .map(cost ->
                                new CostRecord(cost.sump(), cost.converter(), cost.line(), cost.lube(), cost.film())),
                state.map(one -> StateRecord.of(build.unit(), one.duty(), Outcome.of(one.state()))));
    }

    private static Map<String, Double> heat(WarmState state) {
        Map<String, Double> watts = new LinkedHashMap<>();
        for (HeatItem.Kind kind : HeatItem.Kind.values()) {
            watts.put(word(kind), state.flows().watts(kind));
        }
        return watts;
    }

    private static Map<String, Double> throttling(WarmState state) {
        Map<String, Double> watts = new TreeMap<>();
        state.flows()
                .items()
                .forEach(item -> item.group().ifPresent(group -> watts.merge(word(group), item.watts(), Double::sum)));
        return watts;
    }

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Column of a source or sink. */
    static String key(HeatItem.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT) + "_w";
    }

    static Double celsius(double kelvin) {
        return kelvin - Oil.ZERO_CELSIUS;
    }
}
