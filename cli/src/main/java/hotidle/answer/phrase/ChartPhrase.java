package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Titles of charts: what they show, not what is on their axes. Speeds in [rev/s], pressures in [Pa]. */
public record ChartPhrase(Quantity.UnitSystem units) {

    /** Findings that a title tells one by one; the others are counted (chosen). */
    private static final int MOST = 3;

    /** Several findings in one title, and what some builds have in common behind them. */
    public static String title(List<String> findings, List<String> common) {
        List<String> all = new ArrayList<>(findings.subList(0, Math.min(MOST, findings.size())));
        if (findings.size() > MOST) {
            all.add(findings.size() - MOST + " more do not hold everywhere");
        }
        all.addAll(common);
        return String.join("; ", all);
    }

    /**
     * The line is held only from some speed on.
     *
     * @param some whether some slower speed holds it too
     */
    public String holdsFrom(String build, double set, double onset, boolean some) {
        return some
                ? build + ": " + Quantity.PRESSURE.with(units, set) + " held at every speed only from "
                        + Quantity.SPEED.with(units, onset)
                : build + ": nothing under " + Quantity.SPEED.with(units, onset) + " holds "
                        + Quantity.PRESSURE.with(units, set);
    }

    /** The line is not held at the highest speed looked at. */
    public String notHeld(String build, double set, double highest, boolean some) {
        return build + (some ? ": not every speed up to " : ": no speed up to ") + Quantity.SPEED.with(units, highest)
                + " holds " + Quantity.PRESSURE.with(units, set);
    }

    /** Builds that hold it at every speed looked at. */
    public String hold(List<String> builds, double lowest) {
        return String.join(", ", builds) + ": line held at " + Quantity.SPEED.with(units, lowest)
                + " and every speed above";
    }

    /** Nothing was solved. */
    public static String notKnown(String build) {
        return build + ": not known";
    }

    /** How much of its oil slips back in a pump or runs back to the sump past fits, at the slowest and the fastest speed known. */
    public String oilLost(String build, double slow, double lostSlow, double fast, double lostFast) {
        return String.format(
                Locale.ROOT,
                "%s: slip and leaks give back %.0f %% of its oil at %s, %.0f %% at %s",
                build,
                100 * lostSlow,
                Quantity.SPEED.with(units, slow),
                100 * lostFast,
                Quantity.SPEED.with(units, fast));
    }

    /** Where the oil goes, where no two speeds are known. */
    public static String oil(String build) {
        return "Where the oil goes: " + build;
    }

    /** Whose hub film fails, is not known to hold, or holds. */
    public static String film(List<String> fails, List<String> open, List<String> holds) {
        List<String> all = new ArrayList<>();
        add(all, "too thin in ", fails);
        add(all, "not known whether it holds in ", open);
        add(all, "holds in ", holds);
        return "Hub film: " + String.join("; ", all);
    }

    private static void add(List<String> all, String said, List<String> builds) {
        if (!builds.isEmpty()) {
            all.add(said + String.join(", ", builds));
        }
    }

    /** The greatest load on the hub [N]. */
    public String load(String build, double load, double speed) {
        return "Hub load is greatest in " + build + ": " + Quantity.FORCE.with(units, load) + " at "
                + Quantity.SPEED.with(units, speed);
    }

    /** Under it, what makes the load. */
    public static final String TWO_CHAMBERS =
            "weight alone while both chambers carry line pressure, side load once one is unloaded";

    /** The same of a pump with one chamber. */
    public static final String ONE_CHAMBER = "side load of the pump and weight";

    /** What one gauge reads at both ends of a sweep; pressures in the unit shown, speeds in [rpm]. */
    public String tap(String tap, double slow, double slowSpeed, double fast, double fastSpeed) {
        return String.format(
                Locale.ROOT, "%s: %s at %.0f rpm, %s at %.0f rpm", tap, shown(slow), slowSpeed, shown(fast), fastSpeed);
    }

    /** Where a gauge tells two units apart most, if it does; a pressure in the unit shown, a speed in [rpm]. */
    public String tapsApart(String tap, String low, String high, double apart, double speed) {
        if (shown(apart).equals(shown(0))) {
            return tap + ": all read alike at every speed";
        }
        return String.format(
                Locale.ROOT, "%s: %s reads up to %s less than %s, at %.0f rpm", tap, low, shown(apart), high, speed);
    }

    private String shown(double pressure) {
        Quantity.Shown in = Quantity.PRESSURE.in(units);
        return String.format(Locale.ROOT, "%." + in.decimals() + "f %s", pressure, in.unit());
    }

    /** Axis of a film; builds differ in the film that they are allowed. */
    public static final String FILM_AXIS = "film / least film allowed [-]";

    /** The level below which a film fails. */
    public static final String LEAST_FILM = "below: fails (assumed from roughness)";

    /** The level above which a film is known to hold. */
    public static final String KNOWN_FILM = "above: holds (Trumpler's rule); between: not known";

    /** In place of a film. */
    public static final String NO_FILM = "metal contact or unsolved";
}
