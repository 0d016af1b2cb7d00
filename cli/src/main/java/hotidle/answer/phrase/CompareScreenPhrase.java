package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import hotidle.assess.Margin;
import hotidle.assess.StateFault;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The first screen of a comparison: its labels, and what is said under its table. */
public record CompareScreenPhrase(Quantity.UnitSystem units) {

    public static final String COMMANDED = "commanded here";

    /** The same over a narrow column. */
    public static final String ASKED = "asked";

    public static final String GAUGE = "gauge reads";
    public static final String HOLDS_FROM = "holds from [rpm]";
    public static final String LUBRICATION = "lube flow";
    public static final String LOST = "pump slip and leaks";
    public static final String FILM = "thinnest hub film";
    public static final String LINK = "weakest torque link";
    public static final String POWER = "pump power";
    public static final String FAILS = "fails at";

    /** Behind what is the worst of all driving conditions. */
    public static final String ANYWHERE = ", anywhere";

    /** Behind what is compared at one driving condition that is not the one shown. */
    public static String place(String duty) {
        return ", at " + duty;
    }

    /** Behind what is the worst of all engine speeds searched, with the oil as warm as at the condition that is shown. */
    public static String oil(String duty) {
        return ", " + duty + " oil";
    }

    public static final String BUILD = "build";

    public static final String LINK_PLACE = "Weakest torque link";
    public static final String GAUGE_MOVES = "gauge";

    /** Of a figure that is below its need. */
    public static final String LOW = "LOW";

    public static final String HIGH = "HIGH";
    public static final String SHORT = "SHORT";
    public static final String THIN = "THIN";

    /** Behind a film of which it is not known whether it holds. */
    public static final String OPEN = "?";

    public static final String NONE = "-";

    /**
     * At how many driving conditions something fails.
     *
     * @param narrow whether some limit holds only just
     */
    public static String failsAt(int fails, int all, boolean narrow) {
        return fails == 0 ? narrow ? "none, narrow" : "none" : fails + " of " + all;
    }

    /**
     * What the weakest link has left, so that nobody takes it for a verdict on a build that fails by something else.
     *
     * @param fails at how many driving conditions the build fails
     */
    public static String link(double headroom, int fails) {
        return HeadroomPhrase.of(headroom) + (headroom >= 0 && fails > 0 ? " but FAILS" : "");
    }

    /** Builds of which a limit holds only just, as the other method says each. */
    public static String narrow(List<String> builds) {
        return "NARROW: " + String.join("; ", builds) + ".";
    }

    /** A build with that limit, its headroom and where. */
    public static String narrow(String build, Margin margin, String duty) {
        return build + " " + HeadroomPhrase.of(margin.headroom()) + ", "
                + LimitPhrase.at(margin.kind(), margin.part(), duty);
    }

    /** In front of a row of what fails at a driving condition. */
    public static String at(String duty) {
        return "at " + duty;
    }

    /** Rows that found no room. */
    public static String more(List<String> duties) {
        return "also fails at " + String.join(", ", duties) + " (--full)";
    }

    /** Builds that found no room; what the worst of them fails in, empty where none fails. */
    public static String moreBuilds(int builds, int failing, String worst) {
        return CountPhrase.of(builds, "more build") + ", "
                + (failing == 0 ? "none of which fails" : failing + " of which fail; first " + worst) + " (--full)";
    }

    /** What fails first in a build, and where; then the other driving conditions at which something fails. */
    public String fails(String build, StateFault first, String duty, List<String> others) {
        return build + " at " + duty + " (" + new FaultPhrase(units).said(first) + ")"
                + (others.isEmpty() ? "" : ", " + String.join(", ", others));
    }

    /** All builds that fail, as {@link #fails} has each. */
    public static String fail(List<String> builds) {
        return "FAILS: " + String.join("; ", builds) + ".";
    }

    /** What to do about it. */
    public static String next(String build) {
        return "Next: 'hotidle leaks' with --build " + build
                + " says where its oil goes and which repair wins most back.";
    }

    /** What a lockup is called, in place of its converter. */
    public static final String LOCKUP = "lockup";

    /**
     * Builds in which nothing fails.
     *
     * @param torque of the engine in the hardest of the driving conditions [N·m]
     */
    public String holds(List<String> builds, int duties, double torque) {
        return String.join(", ", builds) + (builds.size() == 1 ? " holds" : " hold") + " at all "
                + CountPhrase.of(duties, "driving condition") + ", which ask up to "
                + Quantity.TORQUE.with(units, torque)
                + " of engine torque (more: --for), as far as asked here ('hotidle margins' judges"
                + " every limit).";
    }

    /** The same in short, where the next command judges every limit. */
    public String holdsHere(List<String> builds, int duties, double torque) {
        return String.join(", ", builds) + (builds.size() == 1 ? " holds" : " hold") + " at all "
                + CountPhrase.of(duties, "driving condition") + ", which ask up to "
                + Quantity.TORQUE.with(units, torque)
                + " of engine torque.";
    }

    /** What to do with a build that came of jobs or another set pressure and in which nothing fails here. */
    public static String nextHolds(String build) {
        return "Next: 'hotidle margins' with the same --build, --job and --set judges every limit of " + build + ".";
    }

    /** Where a build comes from a measurement sheet. */
    public static final String SAME_SHEET = " the same --sheet,";

    /** What to do about one that fails all the same. */
    public static String nextJobs(String from, String sheet, String set) {
        return "Next: 'hotidle leaks' with" + sheet + " --build " + from + " --by job" + set
                + " says which jobs together keep every limit.";
    }

    /** How another set pressure is asked for. */
    public String setTo(double pressure) {
        return " --set " + Quantity.PRESSURE.number(units, pressure)
                + Quantity.PRESSURE.in(units).unit();
    }

    /** What units are set to, where less is commanded at the condition shown. */
    public String setPressures(String duty, List<String> builds) {
        return "Set pressure, at full engine torque: " + String.join(", ", builds) + "; at " + duty
                + " less is commanded.";
    }

    /** A build with a pressure. */
    public String set(String build, double pressure) {
        return build + " " + Quantity.PRESSURE.with(units, pressure);
    }

    /** Builds whose hub film is neither known to hold nor to fail somewhere. */
    public static String filmNotKnown(List<String> builds, boolean all) {
        return "Not known (?), no failure: whether the hub film holds" + (all ? "" : " in " + String.join(", ", builds))
                + " ('hotidle margins --full' says why).";
    }

    /** Where something is found, with the builds in which it is there; one place alone is said without them. */
    public static String where(String what, Map<String, List<String>> builds) {
        return what + ": " + (builds.size() == 1 ? builds.keySet().iterator().next() : placed(builds)) + ".";
    }

    /** A pump power and where it is taken. */
    public static String power(String power, String duty) {
        return power + " at " + duty;
    }

    /** Builds that take more pump power elsewhere than where it is compared, by what they take there, as {@link #power} says it. */
    public static String morePower(Map<String, List<String>> elsewhere) {
        return "More pump power elsewhere: " + placed(elsewhere) + ".";
    }

    private static String placed(Map<String, List<String>> builds) {
        return builds.entrySet().stream()
                .map(one -> one.getKey() + " (" + String.join(", ", one.getValue()) + ")")
                .collect(Collectors.joining("; "));
    }

    /** A clutch, or what has a rating, at a driving condition. */
    public static String place(String link, String duty) {
        return link + " at " + duty;
    }

    /** In a cell: a link and what it has left. */
    public static String of(String link, double headroom) {
        return link + " " + HeadroomPhrase.of(headroom);
    }

    /** What a build changes against the one that it stands on. */
    public static String against(String build, String on, List<String> changes) {
        return build + " against " + on + ": " + String.join(", ", changes) + ".";
    }

    /** One figure, in SI, before and after. */
    public String moves(String what, Quantity quantity, double was, double is) {
        return what + " " + quantity.number(units, was) + " to " + quantity.with(units, is);
    }

    /** The speed from which it holds, as a cell has it, before and after. */
    public static String holdsFrom(String was, String is) {
        return "holds from " + is + " rpm, was " + was;
    }

    /** Behind a loss that is larger since the pressure is. */
    public static final String MORE_PRESSURE = " (more pressure, more loss)";

    public static final String HOLDS_NOWHERE = "holds at no speed searched";

    /** Said where more is asked of a pump that has no more oil. */
    public static final String NO_MORE_OIL =
            "the pump has no more oil to give, so a higher set pressure raises nothing";

    /** Nothing of what is looked at has moved. */
    public static final String NOTHING_MOVES = "nothing moves to speak of";
}
