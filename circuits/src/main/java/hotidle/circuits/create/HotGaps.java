package hotidle.circuits.create;

import hotidle.part.AnnularGap;
import hotidle.part.LubeBranch;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;

/** Gaps of lube branches that are bushings, as they stand hot. */
final class HotGaps {

    private HotGaps() {}

    /** By part, diametral at the oil of the slowest driving condition [m]; none where there is no such condition. */
    static Map<String, Double> of(Transmission unit) {
        Map<String, Double> gaps = new HashMap<>();
        unit.duties().stream()
                .min(Comparator.comparingDouble(DutyPoint::speed))
                .map(unit::conditions)
                .ifPresent(hot -> unit.network().parts().forEach(placed -> {
                    if (placed.part() instanceof LubeBranch branch && branch.outlet() instanceof AnnularGap gap) {
                        gaps.put(placed.name(), gap.fit().gap(hot.oil(placed).temperature()));
                    }
                }));
        return gaps;
    }
}
