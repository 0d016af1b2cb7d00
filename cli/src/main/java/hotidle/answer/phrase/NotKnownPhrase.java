package hotidle.answer.phrase;

import hotidle.assess.Margin;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Limits of which it is not known whether they hold: named once a build, beside what is given without them. */
public final class NotKnownPhrase {

    /** What puts them there. */
    public static final String WHY =
            "Such a film is thicker than its roughness asks and thinner than Trumpler's rule asks of"
                    + " machined bearings, or gets less oil than a full one takes.";

    private NotKnownPhrase() {}

    /** A limit of a part at a duty point. */
    public record OpenLimit(Margin.Kind kind, String part, String duty) {}

    /** Behind what is not known at some of several values, though it may be known at the one that a build has. */
    public static final String SOMEWHERE = " somewhere in that range";

    /**
     * One sentence of them and one of why; empty without any.
     *
     * @param where of what it is said, beginning with a blank; empty where it is of the builds as they are
     */
    public static String of(List<OpenLimit> keys, String where) {
        if (keys.isEmpty()) {
            return "";
        }
        Map<String, String> duties = new LinkedHashMap<>();
        keys.forEach(key -> duties.merge(
                LimitPhrase.label(key.kind()) + " (" + key.part() + ")",
                key.duty(),
                (one, other) -> one + ", " + other));
        StringBuilder listed = new StringBuilder();
        duties.forEach((limit, at) -> listed.append(listed.isEmpty() ? "" : "; ")
                .append(limit)
                .append(" at ")
                .append(at));
        return "Not known" + where + ", and left out: " + listed + ". " + WHY;
    }

    /** Limits that are named in a line; the others are counted (chosen). */
    private static final int NAMED = 3;

    /** The same in a line: each limit with where it is, beyond some counted; empty without any. */
    public static String brief(List<OpenLimit> keys, String where) {
        return keys.isEmpty() ? "" : "NOT KNOWN" + where + ", and left out: " + counted(keys) + ".";
    }

    /** The same beneath a table of limits that are known, and why where that is not said elsewhere; empty without any. */
    public static String beside(List<OpenLimit> keys, boolean why) {
        return keys.isEmpty() ? "" : "Not known, and no failure: " + counted(keys) + "." + (why ? " " + WHY : "");
    }

    private static String counted(List<OpenLimit> keys) {
        Map<String, List<String>> duties = new LinkedHashMap<>();
        keys.forEach(key -> duties.computeIfAbsent(
                        LimitPhrase.label(key.kind()) + " (" + key.part() + ")", limit -> new ArrayList<>())
                .add(key.duty()));
        int more = duties.size() - NAMED;
        return duties.entrySet().stream()
                        .limit(NAMED)
                        .map(one -> one.getKey() + " at " + places(one.getValue()))
                        .collect(Collectors.joining("; "))
                + (more > 0 ? "; and " + CountPhrase.of(more, "more limit") : "");
    }

    private static String places(List<String> duties) {
        return duties.size() == 1 ? duties.get(0) : CountPhrase.of(duties.size(), "driving condition");
    }
}
