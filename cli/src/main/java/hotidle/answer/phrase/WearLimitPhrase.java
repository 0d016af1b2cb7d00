package hotidle.answer.phrase;

import java.util.List;
import java.util.Locale;

/** How far fits may wear before a limit is gone. Limits come as {@link LimitPhrase#listed} says them. */
public final class WearLimitPhrase {

    /**
     * Above all.
     *
     * @param work what was done to each build, as {@link AfterWorkPhrase#heading} says it; may be empty
     */
    public static String heading(String circuit, String work) {
        return AfterWorkPhrase.named(circuit, work) + ": how far fits may wear before the first limit is gone";
    }

    /** Above the tightest fits. */
    public static final String TIGHTEST = "tightest, each alone";

    /** Heads of the columns of one build: lengths with their unit behind. */
    public static final String AS_IT_IS = "as it is";

    public static final String LEFT = "left";
    public static final String GONE_AT = "gone at";
    public static final String TOGETHER = "all together";
    public static final String WRITTEN = "limit in file";
    public static final String THEN_FAILS = "then fails";

    /**
     * Fits that a table leaves out since no gauge reads them, and the one that goes first.
     *
     * @param first as {@link #notGauged} says it
     */
    public static String leftOut(int fits, String first) {
        return "No gauge reads " + CountPhrase.of(fits, "more fit") + (fits == 1 ? ": " : ", first ") + first
                + ". An air test finds such leaks.";
    }

    /** Such a fit, with its unit behind each length. */
    public static String notGauged(String fit, String now, String gone, String limit) {
        return fit + ", " + now + ", gone at " + gone + " (" + limit + ")";
    }

    /** Above what is left in a build. */
    public static String leftOf(String build) {
        return "left in " + build;
    }

    /** In place of what is left where no limit goes. */
    public static final String AMPLE = "ample";

    /** A build of which a limit fails as it is; and how many more do. */
    public static String noneLeft(String build, String limit, int more) {
        return build + ": NONE LEFT. It fails as it is: " + limit + (more > 0 ? " and " + more + " more." : ".");
    }

    /** All fits together, wearing in proportion from new, take a limit away at a share of their written limits [-]. */
    public static String mayWear(double share, String limit) {
        return String.format(
                Locale.ROOT,
                "may wear %.0f %% of its written limits, all fits together; then %s fails.",
                100 * share,
                limit);
    }

    /** Behind it, where fits are worn already: how far the most worn one is on its way from new to its written limit [-]. */
    public static String wornTo(double share) {
        return String.format(
                Locale.ROOT, " That counts from new; its most worn fit is at %.0f %% already.", 100 * share);
    }

    /**
     * All fits together of a build whose most worn one is past the share of its written limit to which all may wear from new [-], so that
     * this tells nothing of what is left in it.
     *
     * @param most how far the most worn one is on its way from new to its written limit [-]
     */
    public static String wornUnevenly(double share, String limit, double most) {
        return String.format(
                Locale.ROOT,
                "worn unevenly, its most worn fit at %.0f %% of its written limit, so each is counted alone from today. All"
                        + " worn alike from new could reach %.0f %% of theirs; then %s fails.",
                100 * most,
                100 * share,
                limit);
    }

    /** A limit that fails with all fits new though it holds in the build. */
    public static String failsWhenNew(String limit) {
        return "with all fits new " + limit + " fails, so nothing is said of all together.";
    }

    /** How many written limits are too loose, and the worst of them as {@link #looseFit} says it; empty name for the only build. */
    public static String tooLoose(String build, int loose, long written, List<String> worst) {
        String head = build.isEmpty() ? "" : build + ": ";
        return head
                + (loose == 0
                        ? (build.isEmpty() ? "None" : "none") + " of " + written + " written limits is too loose alone."
                        : loose + " of " + written + " written limits " + (loose == 1 ? "is" : "are")
                                + " too loose for this pressure; alone each fails at so much of the way from new to it: "
                                + String.join(", ", worst)
                                + (loose > worst.size() ? " and " + (loose - worst.size()) + " more" : "") + ".");
    }

    /** A fit that takes a limit away at a share of its way from new to its written limit [-]. */
    public static String looseFit(String fit, double share) {
        return String.format(Locale.ROOT, "%s %.0f %%", fit, 100 * share);
    }

    /** Above the table of fits; empty name for the only build. */
    public static String eachAlone(String build) {
        return (build.isEmpty() ? "Each" : build + ": each")
                + " fit alone, all others as the build has them: what it may wear before the first limit is gone";
    }

    /** Where the table of fits would be empty. */
    public static final String NO_FIT_ALONE = "  No fit alone takes a limit away.";

    /** Where no fit has a limit written. */
    public static final String NO_WRITTEN_LIMIT =
            "no fit has a wear limit written, so nothing can be said of all together.";

    /** Beneath it all. */
    public static final String LEGEND =
            "Sizes are as measured cold. 'Shop limit' is the one written in the circuit file. A found"
                    + " limit counts only the limits that hold in this build, at its own driving conditions; it is an estimate, not a"
                    + " maker's limit, and the lower of both counts.";

    private WearLimitPhrase() {}

    /** A build in which no limit holds that wear could take away. */
    public static String noneHolds(String build, int failing) {
        return build + ": no limit holds or none is judged in this circuit (" + failing
                + " fail), so no wear can be said to take one away.";
    }

    /** Limits that fail before anything wears. */
    public static String failAlready(List<String> limits) {
        return "As it is, these fail already and are left out of the table: " + String.join("; ", limits) + ".";
    }

    /** Duties at which a state was not found, in the build as it is or where a limit is taken to go. */
    public static String notKnown(List<String> duties) {
        return "NOT KNOWN in full at " + String.join(", ", duties)
                + ": a steady state was not found there. A limit that is not known counts as gone, so that wear may go further"
                + " than is said here.";
    }

    /** A bushing that the limits judged would let wear further than service manuals do; sizes with their unit. */
    public static String moreThanPublished(String fit, String allowed) {
        return fit + ": service manuals let such a bore wear to " + allowed
                + " (0.05 mm beyond new), less than the limits judged here do: a film tells nothing of alignment and seal. The lower"
                + " counts.";
    }

    /** The same of one whose found limit is the lower. */
    public static String withinPublished(String fit, String allowed) {
        return fit + ": service manuals let such a bore wear to " + allowed
                + " (0.05 mm beyond new), more than the limits judged here do.";
    }

    /** How tight a fit may be that feeds the hub's film; sizes with their unit. */
    public static String leastFeed(String fit, String least, String duty) {
        return fit + " feeds the film of the hub: below " + least + " a full film gets too little oil at " + duty + ".";
    }

    /** Fits that take nothing away, however worn. */
    public static String noneOfThese(List<String> fits) {
        return "None of these takes a limit away alone, even worn eight times its allowance further: "
                + String.join(", ", fits) + ".";
    }

    /**
     * Fits that are worn in the build, so that what is said of all together, from new, is not taken for what is left.
     *
     * @param shares how far those with a written limit are on the way to it [-], rising; may be empty
     */
    public static String wornAlready(int worn, int fits, List<Double> shares, long past) {
        String ways = shares.isEmpty()
                ? ""
                : String.format(
                        Locale.ROOT,
                        ", %.0f to %.0f %% of the way from new to their written limits (%d past theirs)",
                        100 * shares.get(0),
                        100 * shares.get(shares.size() - 1),
                        past);
        return worn + " of its " + fits + " fits are worn already" + ways + ". Counted from new, not from there, ";
    }

    /** All fits together take a limit away at a share of their way from new to their written limits [-]. */
    public static String togetherTo(double share, String gone) {
        return String.format(
                Locale.ROOT,
                "all fits together may wear to %.0f %% of the way from new to their written limits; then %s is gone.",
                100 * share,
                gone);
    }

    /** All fits together take nothing away up to a share of their written limits [-]. */
    public static String togetherNone(double searched) {
        return String.format(
                Locale.ROOT,
                "all fits together, wearing in proportion, take no limit away up to %.0f %% of their written limits.",
                100 * searched);
    }

    /** Limits that fail with all fits new. */
    public static String failWhenNew(List<String> limits) {
        return " Even with all fits new these fail and are not counted: " + String.join("; ", limits) + ".";
    }

    /**
     * What to do about a build that fails as it is.
     *
     * @param options by which it is asked for
     */
    public static String nextJobs(String options) {
        return "Next: 'hotidle leaks' with " + options + " --by job says which jobs keep every limit.";
    }

    /** The same of one that has some wear left. */
    public static String nextMeasure(String options) {
        return "Next: measure the tightest fits first ('hotidle sheet'); 'hotidle wear' with --sheet then counts from there, and"
                + " 'hotidle margins' with " + options + " says how every limit stands now.";
    }
}
