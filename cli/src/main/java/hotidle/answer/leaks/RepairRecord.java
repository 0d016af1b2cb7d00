package hotidle.answer.leaks;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import hotidle.answer.format.Rpm;
import hotidle.study.Repairs;
import hotidle.transmission.WearSize;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A repair as JSON.
 *
 * @param sizes that it brings back to new, by part and key
 */
record RepairRecord(String repair, Map<String, SizeChange> sizes, After after) {

    /** A size before and after. */
    record SizeChange(double from, double to, String unit) {
        static SizeChange of(WearSize size) {
            return new SizeChange(size.value(), size.fresh(), size.kind() == WearSize.SizeKind.AREA ? "m2" : "m");
        }
    }

    /** What the unit does after it. */
    @JsonInclude
    record After(
            double linePa,
            double setPressurePa,
            boolean regulated,
            List<String> starved,
            @JsonProperty("lube_m3_s") double lube,
            @JsonProperty("lost_m3_s") double lost,
            OptionalDouble onsetRpm) {

        static After of(Repairs.Effect effect) {
            return new After(
                    effect.line(),
                    effect.set(),
                    effect.regulated(),
                    effect.starved(),
                    effect.lube(),
                    effect.lost(),
                    Rpm.of(effect.onset()));
        }
    }

    static List<RepairRecord> all(List<Repairs.Step> steps) {
        return steps.stream().map(RepairRecord::of).toList();
    }

    private static RepairRecord of(Repairs.Step step) {
        Map<String, SizeChange> sizes = new LinkedHashMap<>();
        step.repair().dimensions().forEach(size -> sizes.put(size.name(), SizeChange.of(size)));
        return new RepairRecord(step.repair().name(), sizes, After.of(step.after()));
    }
}
