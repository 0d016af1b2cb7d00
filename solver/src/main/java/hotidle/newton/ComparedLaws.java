package hotidle.newton;

import hotidle.network.Conditions;
import hotidle.network.Placed;
import hotidle.part.Part;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;

/** Laws of parts of networks that are compared, each settled once for each of the conditions under which they are. */
final class ComparedLaws {

    /** Once more are kept, all are forgotten: more than a unit has parts and sizes (chosen). */
    private static final int MOST_KEPT = 1000;

    /** Conditions beyond these make all be forgotten: some test points, each with its other temperature (chosen). */
    private static final int MOST_CONDITIONS = 32;

    private final Laws laws;
    private final Map<Conditions, IdentityHashMap<Placed, Part.Law>> all = new HashMap<>();
    private IdentityHashMap<Placed, Part.Law> kept = new IdentityHashMap<>();
    private Conditions conditions;

    ComparedLaws(Laws laws) {
        this.laws = laws;
    }

    /** Takes the conditions; laws that were settled for others are kept for when these come back. */
    void under(Conditions given) {
        if (!given.equals(conditions)) {
            if (all.size() >= MOST_CONDITIONS && !all.containsKey(given)) {
                all.clear();
            }
            kept = all.computeIfAbsent(given, unused -> new IdentityHashMap<>());
        }
        if (kept.size() > MOST_KEPT) {
            kept.clear();
        }
        conditions = given;
    }

    Part.Law of(Placed placed) {
        return kept.computeIfAbsent(placed, one -> laws.law(one, conditions.setting(one)));
    }
}
