package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.List;
import java.util.Locale;

/** What is written in a drawing of a circuit, and what is said of it. */
public final class DrawPhrase {

    private static final String SIGNS =
            "dashed: pilot pressure; drop: leaks to the sump; dial: gauge tap; bar: spool between its spring's stop and the far one";

    /** Why a leak reads otherwise than in another command. */
    public static final String FLOWS =
            "flows as they pass, at the pressure there; 'hotidle leaks' counts them as the pump takes oil in, a little more";

    private DrawPhrase() {}

    /**
     * What the signs of the drawing stand for.
     *
     * @param leaks whether leaks have signs of their own
     */
    public static String signs(boolean leaks) {
        return leaks ? SIGNS + "; sign in its place: bore, ring, joint or accumulator" : SIGNS;
    }

    /** What a shaded place stands for. */
    public static String marked(String against) {
        return "changed from " + against;
    }

    /** A node in its tag: what the gauge on it is called, on the readings sheet too. */
    public static String node(String node, List<String> taps) {
        return taps.isEmpty() || taps.equals(List.of(node)) ? node : String.join(", ", taps) + " (" + node + ")";
    }

    /** Heading of the sheet. */
    public static String heading(String circuit, String frame) {
        return frame.isEmpty() ? circuit : circuit + ": " + frame;
    }

    /** Which build is drawn, in which state. */
    public static String state(String build, String duty, double speed, String range) {
        return String.format(Locale.ROOT, "%s at %s: %.0f rpm, range %s", build, duty, speed * 60, range);
    }

    /** Which build is drawn, without a state. */
    public static String still(String build) {
        return build + ", no pressures: --duty shows them";
    }

    /** That there are no pressures to show. */
    public static String unsolved(String build, String duty) {
        return build + " at " + duty + ": not solved, so no pressures are shown";
    }

    /** What is marked. */
    public static String against(String build, int parts, int nets) {
        return "marked against " + build + ": " + parts + (parts == 1 ? " part" : " parts") + " with other sizes, "
                + nets + (nets == 1 ? " pressure" : " pressures") + " changed by 2 % or more";
    }

    /** What a pressure was in the build that this one is compared with. */
    public static String was(Quantity.UnitSystem units, double before) {
        return "was " + Quantity.PRESSURE.with(units, before);
    }

    /**
     * Leaks gathered at one place.
     *
     * @param parts their names
     * @param flow  of all of them [m³/s]; NaN where not known
     * @param named whether one alone is named
     */
    public static String leaks(Quantity.UnitSystem units, List<String> parts, double flow, boolean named) {
        String one = named ? parts.get(0) : "leak";
        String what = parts.size() == 1 ? one : parts.size() + " leaks";
        return visible(units, flow) ? what + " " + flow(units, flow) : what;
    }

    /** Whether a flow is more than nothing in the digits that are shown. */
    public static boolean visible(Quantity.UnitSystem units, double flow) {
        return !Double.isNaN(flow)
                && Quantity.FLOW.number(units, Math.abs(flow)).matches(".*[1-9].*");
    }

    /** A flow. */
    public static String flow(Quantity.UnitSystem units, double flow) {
        return Quantity.FLOW.with(units, Math.abs(flow));
    }

    /** Of a valve that is shut and lets through what its lands leak. */
    public static String shut(Quantity.UnitSystem units, double flow) {
        return "leaks " + flow(units, flow);
    }

    /** Where a spool stands between its stops, 0 at rest to 1 at the far one. */
    public static String stands(double share) {
        return String.format(Locale.ROOT, "at %.0f %% of travel", 100 * share);
    }

    /** Key of the widest line. */
    public static String widest(Quantity.UnitSystem units, double flow) {
        return "widest line " + flow(units, flow);
    }

    /** All of a part, for search and for reading aloud. */
    public static String part(String name, String kind, String about, List<String> lines, boolean changed) {
        String text = name + ", " + kind + (about.isEmpty() ? "" : ": " + about);
        return text + (lines.isEmpty() ? "" : "; " + String.join("; ", lines)) + (changed ? "; changed" : "");
    }

    /** A leak in the list of those of a net. */
    public static String leak(String name, boolean changed) {
        return changed ? name + " (changed)" : name;
    }

    /** All of a net, for search and for reading aloud. */
    public static String net(String name, String value, String was, List<String> leaks) {
        return name
                + (value.isEmpty() ? "" : ", " + value)
                + (was.isEmpty() ? "" : ", " + was)
                + (leaks.isEmpty() ? "" : "; leaks to the sump: " + String.join(", ", leaks));
    }

    /** What was drawn and where it lies. */
    public static String drawn(String file, String paper, int parts, int leaks, int nets) {
        return file + ": on " + paper + ", " + CountPhrase.of(parts, "symbol") + ", " + CountPhrase.of(leaks, "leak")
                + " gathered at " + (leaks == 1 ? "its place, " : "their places, ") + CountPhrase.of(nets, "pressure");
    }
}
