package hotidle.answer.phrase;

import hotidle.answer.format.Digits;
import java.util.List;
import java.util.Locale;

/** How likely limits are to hold with sizes that nobody measured. */
public final class SpreadPhrase {

    /** What the columns mean. */
    public static final String LEGEND =
            "Shares of the units drawn, in brackets the 95 % interval of their sampling error (Wilson; Latin hypercubes do no worse)."
                    + " Not known is no failure. Headroom: mean and standard deviation over the units where it has a number; hub film and load"
                    + " at the condition's own speed.";

    /** What the two columns of drivers mean. */
    public static final String DRIVER_LEGEND =
            "Alone: share of the headroom's variance that goes when this size alone is known (first-order Sobol' index). With others:"
                    + " share that stays when all others are known (total index). Each with its standard error.";

    /** How sizes are drawn. */
    public static final String DRAWN =
            "Sound: about the size in use, within a fifth of the way from new to limit either way, as a maker's inspection lets it pass"
                    + " (assumed). Worn: between new and past the limit, half of all beyond two thirds of the way, one in four beyond the limit"
                    + " (assumed). Scores of a pump's mesh: about the area in the file, standard deviation a quarter (assumed). Sizes are"
                    + " drawn independently (assumed); fits of one unit wear together, so that really bad units are more frequent than told.";

    /** Where every limit holds in every unit, or fails in every one. */
    public static final String NOTHING_IN_DOUBT =
            "Nothing is in doubt: no size that is not measured changes whether a limit holds.";

    /** Where none stands out. */
    public static final String NONE_STANDS_OUT =
            "Most worth measuring: no fit stands out of the sampling error; draw more with --pairs.";

    /** Where nothing is drawn. */
    public static final String ALL_MEASURED =
            "Every fit with a wear limit is measured: one unit is all there is to draw.";

    private SpreadPhrase() {}

    /**
     * What was drawn.
     *
     * @param drawn   as "52 fits taken as worn"
     * @param units   drawn
     * @param part    as "part 3 of 10", empty for all of it
     */
    public static String asked(
            String build, List<String> duties, List<String> drawn, long units, long seed, String part) {
        return build + " at " + String.join(", ", duties) + ": "
                + (drawn.isEmpty() ? "no fit drawn" : String.join(", ", drawn)) + "; "
                + CountPhrase.of(units, "unit") + " drawn, seed " + seed + (part.isEmpty() ? "" : ", " + part) + ".";
    }

    /** Some of the sizes that were drawn. */
    public static String basis(long count, String basis) {
        return switch (basis) {
            case "assumed" -> CountPhrase.of(count, "area") + " of scores assumed";
            case "sound" -> CountPhrase.of(count, "fit") + " taken as sound";
            default -> CountPhrase.of(count, "fit") + " not measured, taken as " + basis;
        };
    }

    /** A part of a run. */
    public static String part(int number, int of) {
        return "part " + number + " of " + of + " alone";
    }

    /**
     * How many units are sound.
     *
     * @param sound   share in which all limits hold
     * @param failing share in which at least one fails
     */
    public static String all(String sound, String failing) {
        return "All limits hold in " + sound + " of them, at least one fails in " + failing + ".";
    }

    /** A share [-] with the ends of its interval: 71 % (69 to 73). */
    public static String share(double value, double low, double high) {
        if (Double.isNaN(value)) {
            return "-";
        }
        return percent(value) + " % (" + percent(low) + " to " + percent(high) + ")";
    }

    /** Shares nearer than this to none or all read as none or all [%]. */
    private static final double FINE = 0.05;

    /** More digits near none and all, where the last per cent counts. */
    private static String percent(double share) {
        double value = Math.min(Math.max(100 * share, 0), 100);
        boolean fine = (value >= FINE && value < 1) || (value > 99 && value <= 100 - FINE);
        return String.format(Locale.ROOT, fine ? "%.1f" : "%.0f", value);
    }

    /** Mean and standard deviation of a headroom [-]. */
    public static String headroom(double mean, double deviation) {
        if (Double.isNaN(mean)) {
            return "-";
        }
        return HeadroomPhrase.of(mean)
                + (Double.isNaN(deviation) ? "" : String.format(Locale.ROOT, " ± %.0f", 100 * deviation));
    }

    /** A share of the variance with its standard error [-]. */
    public static String variance(double share, double error) {
        return Double.isNaN(share)
                ? "-"
                : String.format(Locale.ROOT, "%.0f %% ± %.0f", 100 * Math.max(share, 0) + 0.0, 100 * error);
    }

    /** What drives a limit. */
    public static String driven(String limit) {
        return "What drives the headroom of " + limit + ":";
    }

    /** Limits that hold in all units; the least headroom on average is given. */
    public static String sure(long count, String least, String headroom) {
        return count == 1
                ? "1 more limit holds in every unit: " + least + " (" + headroom + ")."
                : count + " more limits hold in every unit, the closest " + least + " (" + headroom + ").";
    }

    /**
     * The fit most worth measuring.
     *
     * @param settles part of the doubt that is gone once it is known
     * @param asGood  others that may be as good
     */
    public static String best(String fit, String settles, List<String> asGood) {
        return "Most worth measuring before the build: " + fit + ", which settles " + settles
                + " of the doubt whether limits hold"
                + (asGood.isEmpty()
                        ? "."
                        : "; from so few pairs " + listed(asGood) + " cannot be told from it (--pairs draws more).");
    }

    private static final int MOST_NAMES = 3;

    private static String listed(List<String> names) {
        int shown = Math.min(names.size(), MOST_NAMES);
        return String.join(", ", names.subList(0, shown))
                + (names.size() > shown ? " and " + (names.size() - shown) + " more" : "");
    }

    /** What it cost. */
    public static String cost(long states, long units) {
        return CountPhrase.of(states, "state") + " solved, " + Digits.four(units == 0 ? 0 : (double) states / units)
                + " for each of " + units + " units (those of the pairs among them).";
    }

    /** Units that are not there. */
    public static String impossible(long count, long drawn) {
        return count + " of the " + drawn
                + " drawn cannot be built, as with a valve wider than its bore: the shares are of the other "
                + (drawn - count) + ".";
    }

    /** Where the film or load of a hub is among the limits. */
    public static final String OWN_SPEED =
            "Hub film and load are asked at its own speed; 'hotidle margins' asks all speeds.";

    /** What to do where a limit is in doubt. */
    public static final String NEXT =
            "Next: 'hotidle leaks' with --by job and the same --build, --job and --set says what more jobs win.";

    /** Units without a state. */
    public static String unsolved(long count) {
        return "No steady state was found in " + CountPhrase.of(count, "unit") + "; limits are not known there.";
    }

    /** Where no state was found in the typical unit. */
    public static String notKnown(List<String> duties) {
        return "Not known: no steady state was found at " + String.join(", ", duties)
                + " in the unit whose sizes are all at their median.";
    }
}
