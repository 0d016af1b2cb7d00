package hotidle.answer.phrase;

import java.util.Locale;

/** What was asked of a sweep beyond what the circuit or its oil is good for. */
public final class SweepWarningPhrase {

    private SweepWarningPhrase() {}

    /** A sump temperature outside the range of the oil's viscosity line, all in °C. */
    public static String temperature(double sump, double coldest, double hottest) {
        return String.format(
                Locale.ROOT,
                "warning: %.0f degC lies outside %.0f to %.0f degC, where the oil's viscosity line can be trusted",
                sump,
                coldest,
                hottest);
    }

    /** A lifted relief valve of the line. */
    public static String relief(String build) {
        return "warning: " + build + ": the relief valve opens at some of these speeds; the line"
                + " is then held by it, not by the regulator";
    }

    /** Speeds far above those of the duty points, all in rpm. */
    public static String tooFast(double asked, double fastest) {
        return String.format(
                Locale.ROOT,
                "warning: %.0f rpm is far beyond the circuit's fastest driving condition, %.0f rpm",
                asked,
                fastest);
    }
}
