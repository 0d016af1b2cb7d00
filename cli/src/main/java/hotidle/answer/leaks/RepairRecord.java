package hotidle.answer.leaks;

import hotidle.study.Repairs;
import hotidle.transmission.WearSize;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A repair as JSON.
 *
 * @param sizes that it brings back to new, by part and key
 */
record RepairRecord(String repair, Map<String, SizeChange> sizes, AfterRecord after) {

    /** A size before and after. */
    record SizeChange(double from, double to, String unit) {
        static SizeChange of(WearSize size) {
            return new SizeChange(size.value(), size.fresh(), size.kind() == WearSize.SizeKind.AREA ? "m2" : "m");
        }
    }

    static List<RepairRecord> all(List<Repairs.Step> steps) {
        return steps.stream().map(RepairRecord::of).toList();
    }

    private static RepairRecord of(Repairs.Step step) {
        Map<String, SizeChange> sizes = new LinkedHashMap<>();
        step.repair().dimensions().forEach(size -> sizes.put(size.name(), SizeChange.of(size)));
        return new RepairRecord(step.repair().name(), sizes, AfterRecord.of(step.after()));
    }
}
