package hotidle.newton;

import hotidle.network.Conditions;
import hotidle.network.Placed;
import hotidle.part.Part;
import java.util.IdentityHashMap;

/** Laws of parts of networks that are compared, each settled once for the conditions under which they are. */
final class ComparedLaws {

    /** Once more are kept, all are forgotten: more than a unit has parts and sizes (chosen). */
    private static final int MOST_KEPT = 1000;

    private final Laws laws;
    private final IdentityHashMap<Placed, Part.Law> kept = new IdentityHashMap<>();
    private Conditions conditions;

    ComparedLaws(Laws laws) {
        this.laws = laws;
    }

    /** Takes the conditions; laws that were settled for others are forgotten. */
    void under(Conditions given) {
        if (kept.size() > MOST_KEPT || !given.equals(conditions)) {
            kept.clear();
        }
        conditions = given;
    }

    Part.Law of(Placed placed) {
        return kept.computeIfAbsent(placed, one -> laws.law(one, conditions.setting(one)));
    }
}
