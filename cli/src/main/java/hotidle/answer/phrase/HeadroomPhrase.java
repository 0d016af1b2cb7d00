package hotidle.answer.phrase;

import hotidle.assess.Margin;
import java.util.Locale;

/** Headroom and verdict of a limit. */
public final class HeadroomPhrase {

    /** Headroom beyond this is not worth a number (chosen) [-]. */
    public static final double AMPLE = 9.99;

    private HeadroomPhrase() {}

    /** Headroom [-]; a dash where it is not known. */
    public static String of(double headroom) {
        if (Double.isNaN(headroom)) {
            return "-";
        }
        return headroom > AMPLE ? "ample" : String.format(Locale.ROOT, "%+.0f %%", 100 * headroom);
    }

    /** FAILS in capitals, so that it is seen. */
    public static String verdict(Margin.Verdict verdict) {
        return verdict == Margin.Verdict.FAILS ? verdict.word().toUpperCase(Locale.ROOT) : verdict.word();
    }
}
