package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import java.util.Locale;

/**
 * A valve is narrower than its bore, and a hub than its bushing: new, as measured and as a build has them. Asked by each kind with
 * such a fit, so that a part on its own and a size that a study changes are held to it too.
 */
final class ValveFitsItsBore {

    private ValveFitsItsBore() {}

    /** Notes an error where the inner piece does not go in, new, as measured or in use. */
    static void check(Attributes given, String outer, String inner) {
        check(given, given, outer, inner);
    }

    /** The same where a size may stand in {@code sizes} and otherwise stands in {@code whole}. */
    static void check(Attributes sizes, Attributes whole, String outer, String inner) {
        Attributes holder = sizes.has(inner) ? sizes : whole;
        Attributes.Sizes bore = FitKeys.sizes(sizes, whole, outer);
        Attributes.Sizes valve = FitKeys.sizes(sizes, whole, inner);
        if (bore.fresh() <= valve.fresh()) {
            tooWide(holder, outer, inner, "new", bore.fresh(), valve.fresh());
        } else if (bore.measuredOrNew() <= valve.measuredOrNew()) {
            tooWide(holder, outer, inner, "as measured", bore.measuredOrNew(), valve.measuredOrNew());
        } else if (bore.inUse() <= valve.inUse()) {
            boolean boreOnly = valve.inUse() == valve.fresh() && sizes.has(outer);
            String at = boreOnly ? outer : inner;
            tooWide(boreOnly ? sizes : holder, outer, inner, "as the build has it", bore.inUse(), valve.inUse(), at);
        }
    }

    private static void tooWide(Attributes given, String outer, String inner, String when, double bore, double valve) {
        tooWide(given, outer, inner, when, bore, valve, inner);
    }

    /** Notes the error at one of the two: at the bore where a build has changed that alone. */
    private static void tooWide(
            Attributes given, String outer, String inner, String when, double bore, double valve, String at) {
        given.error(
                ProblemCode.FIT_WITHOUT_CLEARANCE,
                at,
                String.format(
                        Locale.ROOT,
                        "has a %s of %.4f mm in a %s of %.4f mm, %s",
                        inner,
                        valve * 1000,
                        outer,
                        bore * 1000,
                        when),
                "the " + inner + " must be narrower than its " + outer + " at the temperature of measurement",
                "measure both again; diameters, not radii");
    }
}
