package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import hotidle.assess.Margin;
import hotidle.transmission.JobCost;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Which jobs keep every limit; limits come as {@link LimitPhrase#at} says them, pressures in [Pa]. */
public record JobPhrase(Quantity.UnitSystem units) {

    /** Limits that are named one by one; the others are counted (chosen). */
    private static final int NAMED = 3;

    /** In place of jobs where none is done. */
    public static final String AS_IS = "as it is";

    /** In place of jobs where all are done. */
    public static final String ALL = "all of them";

    /** In place of the jobs that are recommended together. */
    public static String recommended(int jobs) {
        return "these " + jobs + " together";
    }

    /** Beside a number of failing limits where a state was not found. */
    public static final String MORE_NOT_KNOWN = " + not known";

    /** Beneath all that is told of jobs the file does not name. */
    public static final String BY_PLACE =
            "Jobs: worn fits back to the size written as new, by kind and place. The section 'jobs' of a circuit file names"
                    + " others, with time and price.";

    /** Where no fit is worn and the file names no job. */
    public static final String NOTHING = "Nothing to do: no fit is worn beyond new, and the file names no job.";

    /** Above all: the build, and the set pressure that is asked for in words of {@link #at}. */
    public static String heading(String circuit, String build, String at) {
        return circuit + ", " + build + at + ": which jobs keep every limit";
    }

    /** Which set pressure that is; empty where nothing commands one. */
    public String at(OptionalDouble set, boolean asked) {
        return set.isEmpty() ? "" : (asked ? " set to " : ", ") + Quantity.PRESSURE.with(units, set.getAsDouble());
    }

    /** The build keeps every limit as it is. */
    public static String nothingNeeded(String least) {
        return "NO JOB IS NEEDED: every limit holds as it is." + least;
    }

    /**
     * The set that keeps every limit.
     *
     * @param of   jobs to choose from
     * @param cost in words; empty where jobs are counted
     */
    public static String chosen(List<String> jobs, int of, String cost, String least) {
        return "DO " + together(jobs) + ": "
                + (jobs.size() == 1 ? "this one job" : "these " + jobs.size() + " jobs") + " of " + of
                + " keep" + (jobs.size() == 1 ? "s" : "") + " every limit" + cost + "." + least;
    }

    /** Behind it the limit that then is nearest. */
    public static String least(String headroom, String limit) {
        return " Least headroom then " + headroom + ": " + limit + ".";
    }

    /** The same where that limit is narrow. */
    public static String narrow(String headroom, String limit) {
        return " NARROW then, " + headroom + ": " + limit + ".";
    }

    /** A job more with which every limit holds with ease; its cost as {@link #more} says it, empty where jobs are counted. */
    public static String easier(List<String> jobs, String cost, String headroom, String limit) {
        return "With " + together(jobs) + " too" + cost + ": least headroom " + headroom + ", " + limit + ".";
    }

    /** What jobs cost on top. */
    public static String more(JobCost measure, double cost) {
        return switch (measure) {
            case PRICE -> ", " + amount(cost) + " more";
            case HOURS -> ", " + amount(cost) + " hours more";
            case JOBS -> "";
        };
    }

    /** Above the column of limits that fail at any driving condition, not only at the one that the table is about. */
    public static final String FAILING = "limits failing anywhere";

    /** Beneath a table in which a job that raises the line loses more. */
    public static final String MORE_PRESSURE =
            "More pressure, more loss: a repair that raises the line can lose more oil and be none the worse.";

    /** The cost of a set. */
    public static String cost(JobCost measure, double cost) {
        return switch (measure) {
            case PRICE -> ", for " + amount(cost);
            case HOURS -> ", in " + amount(cost) + " hours";
            case JOBS -> "";
        };
    }

    /** A cost without more digits than it has. */
    public static String amount(double cost) {
        return String.format(Locale.ROOT, cost == Math.rint(cost) ? "%.0f" : "%.1f", cost);
    }

    private static String together(List<String> jobs) {
        return String.join(" + ", jobs);
    }

    /** Why just this set. */
    public static String why(JobCost measure, int most, boolean every) {
        String tried = every ? "" : " Sets of more than " + most + " jobs were not tried.";
        return switch (measure) {
            case PRICE -> "No cheaper set does." + tried;
            case HOURS -> "No set that takes less time does." + tried;
            case JOBS -> "No set of fewer jobs does.";
        };
    }

    /** Others that cost as much. */
    public static String equal(List<List<String>> sets) {
        String named = sets.stream()
                .limit(NAMED)
                .map(JobPhrase::together)
                .reduce((one, other) -> one + "; " + other)
                .orElseThrow();
        return "These do too, with less headroom: " + named + (sets.size() > NAMED ? "; and " + more(sets) : "") + ".";
    }

    private static String more(List<?> all) {
        return (all.size() - NAMED) + " more";
    }

    /** Builds without a job that was asked for. */
    public static String noSuchJob(String builds, boolean place) {
        return place
                ? "nothing there is worn in " + builds
                : builds + (builds.contains(",") ? " have" : " has") + " no such job";
    }

    /** What to do where a build has no jobs at all. */
    public static final String LEAVE_OUT = "leave --job out: there is no worn fit to bring back to new";

    /** What to ask of jobs that keep every limit. */
    public static final String NEXT =
            "Unmeasured fits count as new: 'hotidle spread' with --job for each says how likely all holds then.";

    /** Fewer jobs at a higher cost. */
    public static String fewest(List<String> jobs, String cost) {
        return "Fewer jobs do it too" + cost + ": " + together(jobs) + ".";
    }

    /** No set keeps every limit. */
    public static String none(int jobs, int most, boolean every) {
        return "NO SET of the " + CountPhrase.of(jobs, "job")
                + (every ? "" : " (sets of more than " + most + " were not tried)") + " keeps every limit.";
    }

    /** What fails before anything is done: the worst limit, and how many others. */
    public static String asItIs(String worst, int others) {
        return "Fails as it is: " + worst + (others == 0 ? "." : " and " + CountPhrase.of(others, "other limit") + ".");
    }

    /** What fails with all jobs done, as {@link #at(Margin.Kind, String, List)} says it. */
    public static String failWithAll(List<String> limits) {
        return "With all of them done " + (limits.size() == 1 ? "fails " : "fail ") + named(limits) + ".";
    }

    /** A limit and the driving conditions concerned: hub film (hub-bushing) at stall, climb. */
    public static String at(Margin.Kind kind, String part, List<String> duties) {
        return LimitPhrase.at(kind, part, String.join(", ", duties));
    }

    /** Limits, most of them counted. */
    private static String named(List<String> limits) {
        return String.join("; ", limits.subList(0, Math.min(NAMED, limits.size())))
                + (limits.size() > NAMED ? "; and " + more(limits) : "");
    }

    /** All jobs do, and yet no smaller set was found among those tried. */
    public static final String ALL_KEEP = "All of them together keep every limit.";

    /** How high the set pressure may be with all jobs done. */
    public String ceiling(double pressure) {
        return "The highest set pressure with all of them done is " + Quantity.PRESSURE.with(units, pressure);
    }

    /** Where that is above the one asked for, at which limits fail that more pressure mends. */
    public String more(double asked, double pressure) {
        return "MORE pressure than " + Quantity.PRESSURE.with(units, asked)
                + " is needed. With all of them done every limit holds at " + Quantity.PRESSURE.with(units, pressure)
                + ", the highest that does; from which on, 'hotidle window' with --job for each says.";
    }

    /** What ends it. */
    public static String endedBy(String limit) {
        return "; above, " + limit + " fails first.";
    }

    /** Where nothing ends it up to the highest pressure tried. */
    public static final String HIGHER_NOT_TRIED = "; higher ones were not tried.";

    /** With all jobs done no set pressure tried keeps every limit. */
    public String noPressure(double lowest, double highest) {
        return "No set pressure from " + Quantity.PRESSURE.with(units, lowest) + " to "
                + Quantity.PRESSURE.with(units, highest) + " keeps every limit with all of them done.";
    }

    /** Sets of which it is not known whether they keep every limit. */
    public static String notKnown(List<List<String>> sets) {
        return "NOT KNOWN of " + CountPhrase.of(sets.size(), "other set")
                + " that would cost no more, the first " + together(sets.get(0))
                + ": a steady state was not found.";
    }

    /** Jobs that win back less and are not listed. */
    public static String moreJobs(int more) {
        return CountPhrase.of(more, "more job") + " alone: --full.";
    }

    /** Above the table. */
    public String table(String duty, double speed) {
        return "each alone, at " + duty + " (" + Quantity.SPEED.with(units, speed) + ")";
    }
}
