package hotidle.answer.phrase;

import hotidle.answer.format.MarginQuantity;
import hotidle.answer.format.Quantity;
import hotidle.assess.Margin;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The first screen of judged builds. */
public record MarginsScreenPhrase(Quantity.UnitSystem units) {

    public static final List<String> HEAD = List.of("headroom", "at", "limit", "is, of needed or allowed");

    /** Over the reasons, where there is room for them. */
    public static final String WHY = "why";

    /** Over a table of limits. */
    public static String worstFirst(String build) {
        return build + ": limits that do not hold with ease, the worst first";
    }

    /** Headroom and verdict in one cell. */
    public String verdict(Margin margin) {
        return HeadroomPhrase.of(margin.headroom()) + " " + HeadroomPhrase.verdict(margin.verdict());
    }

    /** The limit and the part that decides. */
    public String limit(Margin margin) {
        return LimitPhrase.label(margin.kind()) + " (" + margin.part() + ")";
    }

    /** Both figures, the unit once. */
    public String isOfNeeded(Margin margin) {
        MarginPhrase phrase = new MarginPhrase(units);
        return margin.value().isEmpty()
                ? phrase.value(margin) + ", " + phrase.asked(margin)
                : MarginQuantity.of(margin).number(units, margin.value().getAsDouble()) + " of " + phrase.bound(margin);
    }

    /** Fits within their written limits that are named (chosen). */
    private static final int MOST_FITS = 3;

    /**
     * Which fits bring a limit down though each is worn within the limit written for it.
     *
     * @param fits  by name, at least one
     * @param limit that fails, at its driving condition
     */
    public static String loose(List<String> fits, String limit) {
        boolean one = fits.size() == 1;
        boolean named = fits.size() <= MOST_FITS;
        return (named ? String.join(", ", fits) : fits.size() + " worn fits")
                + (one
                        ? " is within its written limit, but with it"
                        : " are within their written limits, but with them")
                + " new this would not fail: " + limit + ". 'hotidle wear' with this build"
                + (named ? " and --fit " + String.join(" --fit ", fits) : "") + " says how far "
                + (one ? "it" : "each") + " may wear.";
    }

    /** Limits that found no room, counted by verdict and driving condition. */
    public static String more(Map<Margin.Verdict, Map<String, Long>> counts) {
        return "More, less grave: " + counted(counts) + " (--full).";
    }

    /** The worst limit of a build, and how many there are of that sort. */
    public String worst(String duty, Margin worst, Map<Margin.Verdict, Map<String, Long>> counts) {
        return "First limit " + limit(worst) + " at " + duty + ", " + verdict(worst) + "."
                + (counts.isEmpty() ? "" : " " + counted(counts) + ".");
    }

    private static String counted(Map<Margin.Verdict, Map<String, Long>> counts) {
        return counts.entrySet().stream()
                .map(one -> HeadroomPhrase.verdict(one.getKey()) + " " + places(one.getKey(), one.getValue()))
                .collect(Collectors.joining("; "));
    }

    /** What fails is told at each place, all else summed up where the places are many. */
    private static String places(Margin.Verdict verdict, Map<String, Long> at) {
        return verdict == Margin.Verdict.FAILS || at.size() <= MOST_PLACES
                ? at.entrySet().stream()
                        .map(one -> one.getValue() + " at " + one.getKey())
                        .collect(Collectors.joining(", "))
                : at.values().stream().mapToLong(Long::longValue).sum() + " at " + at.size() + " driving conditions";
    }

    /** Driving conditions that are named one by one (chosen). */
    private static final int MOST_PLACES = 3;

    /** A build in front of what is said of it. */
    public static String headed(String build, boolean fails, String said) {
        return build + (fails ? " FAILS. " : ": ") + said;
    }

    /** Builds that found no room; those that fail are named. */
    public static String moreBuilds(int builds, List<String> failing) {
        return CountPhrase.of(builds, "more build")
                + (failing.isEmpty() ? " without a failing limit" : "; FAILS: " + String.join(", ", failing))
                + " (--full).";
    }

    /** A clutch that presses although it should be off. */
    public static String drags(String clutch, String duty) {
        return "FAILS: " + clutch + " drags at " + duty + ", though the range does not apply it.";
    }

    /** Driving conditions at which something could not be found. */
    public static String notKnown(List<String> duties) {
        return "NOT KNOWN in part or whole at " + String.join(", ", duties)
                + ": no steady state was found (--full says of what).";
    }
}
