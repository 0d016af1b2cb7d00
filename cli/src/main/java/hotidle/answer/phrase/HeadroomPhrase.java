package hotidle.answer.phrase;

import hotidle.assess.Margin;
import java.util.Locale;

/** Headroom and verdict of a limit. */
public final class HeadroomPhrase {

    /** What headroom and verdict mean, beneath a table of limits. */
    public static final String LEGEND =
            "Headroom is what is to spare, as a share of what is needed (of an upper limit: as a share of what is there), from"
                    + " figures with all their digits. FAILS: below 0; narrow: up to 10 %; not known is no failure. Clutch figures carry the"
                    + " capacity factor of the circuit file. What film and unit load the hub is allowed follows from the roughness and the bushing-material in the"
                    + " circuit file (assumed), so that builds with another bushing have other limits.";

    /** Behind a figure that is as it should be. */
    public static final String OK = "ok";

    private HeadroomPhrase() {}

    /** Headroom [-]; a dash where it is minus infinity, below zero by an amount that is not known. */
    public static String of(double headroom) {
        if (headroom == Double.NEGATIVE_INFINITY) {
            return "-";
        }
        return Margin.ample(headroom)
                ? "ample"
                : String.format(Locale.ROOT, "%+." + digits(headroom) + "f %%", 100 * headroom);
    }

    /** A limit that only just fails or holds is not told as one that stands on it. */
    private static int digits(double headroom) {
        double percent = Math.abs(100 * headroom);
        return percent >= 0.5 || percent == 0 ? 0 : percent >= 0.05 ? 1 : 2;
    }

    /** FAILS in capitals, so that it is seen. */
    public static String verdict(Margin.Verdict verdict) {
        return switch (verdict) {
            case FAILS -> "FAILS";
            case NOT_KNOWN -> "not known";
            case CLOSE -> "narrow";
            case HOLDS -> "holds";
        };
    }
}
