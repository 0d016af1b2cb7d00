package hotidle.circuits.check;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A clutch or band whose oil the selector neither feeds nor lets out in some ranges. */
final class ShutIn {

    private ShutIn() {}

    /** Notes it at the passage that vents it elsewhere, else at the one that feeds it, else at the clutch. */
    static void warn(
            List<Attributes> behind, List<String> ranges, Optional<Attributes> vent, Optional<Attributes> feeder) {
        String where = String.join(", ", ranges);
        String names = behind.stream().map(Attributes::name).collect(Collectors.joining(", "));
        String shut = "leaves " + names + " shut in " + where + ", neither fed nor vented";
        String rule = "oil behind its piston can leave by leaks alone, and nobody can say how long it stays applied";
        String add = "add a passage from '" + behind.get(0).word("from") + "' to the sump, open in " + where;
        vent.or(() -> feeder)
                .orElse(behind.get(0))
                .warning(
                        ProblemCode.CLUTCH_SHUT_IN,
                        vent.or(() -> feeder).isPresent() ? "ranges" : "from",
                        shut,
                        rule,
                        vent.map(passage -> "add " + where + " to the ranges of " + passage.name())
                                .orElse(add));
    }
}
