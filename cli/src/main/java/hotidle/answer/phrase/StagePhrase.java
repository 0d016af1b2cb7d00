package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Builds side by side as stages; torques in [N·m], pressures in [Pa]. */
public record StagePhrase(Quantity.UnitSystem units) {

    /** Above all; the last as {@link TorquePhrase#margin} says it. */
    public static String title(String circuit, double speedRpm, String duty, String margin) {
        return String.format(
                Locale.ROOT,
                "%s: what each stage holds, hot (temperatures of %s), at %.0f rpm; %s",
                circuit,
                duty,
                speedRpm,
                margin);
    }

    public static final String HOLDS = "holds in every range";
    public static final String FIRST = "first to give";
    public static final String THEN = "then";
    public static final String LINE = "line pressure there";
    public static final String SET = "set pressure, forward";
    public static final String MORE = "more set pressure";
    public static final String ALLOWED = "every known limit";
    public static final String WEAR = "fits may wear";
    public static final String JOBS = "work";
    public static final String BEYOND = "beyond the jobs";

    /** In a cell without anything to say. */
    public static final String NOTHING = "-";

    /** The link that gives first and where. */
    public static String first(String link, String range) {
        return link + " in " + range;
    }

    /** Up to which set pressure more is held. */
    public String helpsTo(double pressure) {
        return "helps up to " + psi(pressure);
    }

    /** As much is held at a lower set pressure than the stage has. */
    public String enough(double pressure) {
        return psi(pressure) + " is enough";
    }

    /** It helps up to the highest one tried, whatever else may fail there. */
    public static final String HELPS_ON = "helps as far as tried";

    /** It helps beyond what the other limits of the build allow. */
    public String helpsPast(double end) {
        return "helps, other limits end at " + psi(end);
    }

    /** It helps at none tried. */
    public static final String HELPS_NOT = "does not help";

    /** A range of set pressures at which every limit holds. */
    public String allowed(double low, double high) {
        return "holds " + Quantity.PRESSURE.number(units, low) + " to " + psi(high);
    }

    /** No set pressure tried holds every limit. */
    public static final String NONE_ALLOWED = "NONE HOLDS";

    /** Behind the pressures, where the build's own lies outside. */
    public static final String OUTSIDE = ", NOT AT ITS OWN";

    /** How far all fits may wear together on their way to their limits, from new. */
    public static String wear(double share) {
        return String.format(Locale.ROOT, "%.0f %% of the way", 100 * share);
    }

    /** They may wear as far as was looked. */
    public static String wearsOn(double searched) {
        return String.format(Locale.ROOT, "over %.0f %%", 100 * searched);
    }

    /** A limit fails before anything wears. */
    public static final String NO_WEAR = "NONE LEFT";

    private static final String NO_JOB = "no job";

    /** How many jobs, and what they cost where all of it is known. */
    public static String jobs(int jobs, Optional<Double> hours, Optional<Double> price) {
        if (jobs == 0) {
            return NO_JOB;
        }
        return CountPhrase.of(jobs, "job")
                + hours.map(h -> ", " + JobPhrase.amount(h) + " h").orElse("")
                + price.map(p -> ", price " + JobPhrase.amount(p)).orElse("");
    }

    /** Names of the jobs and what else is another one, made of the build that comes in. */
    public static String work(String build, String before, List<String> jobs, List<String> beyond) {
        String done = jobs.isEmpty() ? NO_JOB : String.join(", ", jobs);
        return build + " from " + before + ": " + done
                + (beyond.isEmpty() ? "." : "; beyond the jobs: " + String.join(", ", beyond) + ".");
    }

    /** In place of a build: all of them. */
    public static final String EACH = "Each";

    /** What makes a build besides jobs that were told. */
    public static String beyond(String build, List<String> beyond) {
        return build + ", beyond the jobs: " + String.join(", ", beyond) + ".";
    }

    /** Another set pressure and what brings it. */
    public String set(double before, double after, List<String> by) {
        return "set from " + Quantity.PRESSURE.number(units, before) + " to " + psi(after) + " by "
                + String.join(" and ", by);
    }

    /** What brings another set pressure. */
    public static List<String> setBy(boolean spring, boolean areas, boolean command) {
        List<String> by = new ArrayList<>();
        if (spring) {
            by.add("spring");
        }
        if (areas) {
            by.add("regulator areas");
        }
        if (command) {
            by.add("command");
        }
        return by;
    }

    /** A shaft or another rated part that is not the one that came in. */
    public static String anotherLink(String link) {
        return "another " + link + ", bought or made";
    }

    /** Parts that are changed and belong to no job. */
    public static String otherParts(int parts) {
        return CountPhrase.of(parts, "other part");
    }

    /** The line where something gives, and what is commanded there. */
    public String line(double line, OptionalDouble commanded) {
        return psi(line)
                + (commanded.isPresent()
                        ? ", commanded " + Quantity.PRESSURE.number(units, commanded.getAsDouble())
                        : "");
    }

    /** What line and commanded pressure are, and why both stand here. */
    public static final String SET_NOTE =
            "Commanded: asked for there, in reverse raised by the regulator's areas; line: what is there.";

    /** That jobs are not all. */
    public static final String BEYOND_NOTE = "What is beyond the jobs is in neither their hours nor their price.";

    /** What the row of wear means. */
    public static final String WEAR_NOTE =
            "Fits may wear: all together, from new to their written limits, until the first limit is gone.";

    private String psi(double pressure) {
        return Quantity.PRESSURE.with(units, pressure);
    }
}
