package hotidle.answer.phrase;

import java.util.List;
import java.util.OptionalInt;

/** What repairs win back, and in which order they are best done. */
public final class RepairPhrase {

    private RepairPhrase() {}

    /** Above the table of repairs on their own. */
    public static final String ALONE = "What each repair wins back on its own";

    /** Above the table of the order. */
    public static final String ORDER = "Best order: each repair on top of those above it";

    /** Above the short table of the order. */
    public static final String SHORT_ORDER = "repairs in the best order";

    /** Above a column of speeds from which the line is held. */
    public static final String HOLDS_FROM = "from rpm";

    /** What a repair changes where the line is held and a consumer is short of oil. */
    public static final String SERVED_LEAST = "what is served least gets";

    /** How much of its need a consumer gets [-]. */
    public static String ofNeed(double share) {
        return Math.round(100 * share) + " % of its need";
    }

    /** Above a column of the oil that is lost after each repair. */
    public static final String LOST = "lost";

    /** In a cell behind the line pressure that is held with that repair first. */
    public static final String HELD = ", held";

    /** In place of a repair where nothing is done. */
    public static final String AS_IS = "(as it is)";

    /** Beneath the tables of repairs. */
    public static final String LEGEND =
            "A repair brings a fit back to the size that the circuit file gives as new. The order takes the repair that adds most"
                    + " line pressure up to the set pressure; where the line is held, the one that gives most to what is served"
                    + " least while it is short of oil, else the one that saves most oil. Hours and prices are not counted. A bore is brought back by a sleeve, or by an oversize valve with the same clearance. From rpm: the"
                    + " engine speed from which the line holds its set pressure.";

    /** Beneath them where the pump has two chambers. */
    public static final String CHAMBERS =
            "Until the line is held both chambers feed it: which is repaired first is a matter of their wear only.";

    /** Beneath them where a pump is scored. */
    public static final String SCORES =
            "orifice-slip-area stands for scores and nicks, through which thick oil slips as fast as thin; only new or"
                    + " reground pump parts bring it back.";

    /** Fits are no jobs: where those stand. */
    public static final String NEXT_JOBS =
            "Next: 'hotidle leaks' with the same options and --by job says which shop jobs keep every limit.";

    /** In place of a table where there is nothing to repair. */
    public static final String NOTHING = "Nothing: no fit is worn beyond new.";

    /** Beside a repair that adds less line pressure than a gauge can show. */
    public static final String UNSEEN = "<- no gauge shows it";

    /** Beside the repair with which the line is held first. */
    public static final String HELD_FROM_HERE = "<- held";

    /** Beneath a table that leaves out those that win least. */
    public static String more(int left) {
        return "and " + left + " more that " + (left == 1 ? "wins" : "win") + " less; --format csv lists them";
    }

    /**
     * The best one.
     *
     * @param job  in words
     * @param what it changes: line, oil of what is served least, oil lost
     * @param near others that win nearly as much, each with what it brings that to
     */
    public static String best(String job, String what, String from, String to, List<String> near) {
        return "The single size that wins most: " + job + ", " + what + " " + from + " to " + to + "."
                + (near.isEmpty() ? "" : " Nearly as much: " + String.join("; ", near) + ".");
    }

    /** A repair as work to do, for example "bore-14.bore back to 0.8677 in". */
    public static String job(String name, boolean oneSize, String to) {
        return name + (oneSize ? " back to " : " as ") + to;
    }

    /** One size of a repair, as it is and as it will be. */
    public static String size(String key, String from, String to) {
        return key + " " + from + " to " + to;
    }

    /** Another one that wins nearly as much. */
    public static String near(String repair, String to) {
        return repair + ", to " + to;
    }

    /** Repairs that starve the lubrication when they are done alone. */
    public static String starving(List<String> repairs) {
        return String.join(", ", repairs)
                + (repairs.size() == 1 ? " done alone leaves" : ": each done alone leaves")
                + " the lubrication LESS oil: while the line is not held, converter and lubrication live on what worn"
                + " valves let by. Done with the others it does no harm: once the line is held, the regulator feeds"
                + " them.";
    }

    /** The same in short: names as {@link #held} takes them. */
    public static String heldShort(String pressure, List<String> repairs, List<String> starved, OptionalInt served) {
        int count = repairs.size();
        return "HOLDS " + pressure + " here after " + (count == 1 ? "one repair" : count + " repairs") + ": "
                + String.join(", ", repairs) + "." + (starved.isEmpty() ? "" : " " + stillShort(starved, served));
    }

    /** The same in short of those that starve the lubrication. */
    public static String starvingShort(List<String> repairs) {
        return "Not alone: " + String.join(", ", repairs) + " then leave" + (repairs.size() == 1 ? "s" : "")
                + " the lubrication LESS oil, which lives on what they let by.";
    }

    /**
     * After which repairs the line is held.
     *
     * @param repairs those that it takes, in order
     * @param starved what then is still short of oil
     * @param served  after how many of all nothing is; empty where after none
     */
    public static String held(List<String> repairs, List<String> starved, OptionalInt served) {
        int count = repairs.size();
        return "The set pressure is held here after " + (count == 1 ? "one repair" : count + " repairs") + ": "
                + String.join(", ", repairs) + "." + (starved.isEmpty() ? "" : " " + stillShort(starved, served))
                + " What follows in the list saves oil; the regulator keeps the pressure near its set value.";
    }

    private static String stillShort(List<String> starved, OptionalInt served) {
        return "Then still short of oil: " + String.join(", ", starved) + "; "
                + (served.isPresent()
                        ? "all are served after repair " + served.getAsInt() + "."
                        : "the repairs listed do not serve all of them.");
    }

    /** Where all of them do not hold it. */
    public static String notHeld(int repairs, String line, boolean commanded) {
        return "After the " + (repairs == 1 ? "one repair" : repairs + " repairs") + " listed the line stands at "
                + line + (commanded ? ", still below the set pressure." : ".");
    }
}
