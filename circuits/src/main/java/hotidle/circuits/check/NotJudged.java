package hotidle.circuits.check;

import hotidle.network.Placed;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Clutches and bands of which nothing is judged, because no duty point is in a range that applies them. */
public final class NotJudged {

    private NotJudged() {}

    /** Their names, in the order of the file, each with the ranges that apply it. */
    public static Map<String, List<String>> of(Transmission unit) {
        Set<String> driven = unit.duties().stream().map(DutyPoint::range).collect(Collectors.toSet());
        Map<String, List<String>> found = new LinkedHashMap<>();
        for (Placed placed : unit.network().parts()) {
            List<String> applied = unit.ranges().stream()
                    .filter(range -> range.applied().containsKey(placed.name()))
                    .map(Range::name)
                    .toList();
            if (!applied.isEmpty() && applied.stream().noneMatch(driven::contains)) {
                found.put(placed.name(), applied);
            }
        }
        return found;
    }
}
