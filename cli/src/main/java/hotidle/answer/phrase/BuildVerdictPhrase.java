package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import hotidle.assess.Margin;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a build comes to in one line: whether it holds, and its first limit. */
public record BuildVerdictPhrase(Quantity.UnitSystem units) {

    /**
     * The verdict on a build of which something is judged.
     *
     * @param dragging a clutch that presses although it should be off, as {@link ClutchPhrase} says it
     * @param first    verdict on the limit that is told first
     * @param limit    that limit, by {@link #limit} or {@link #pumpShort}
     * @param notKnown duty at which no state was found
     * @param undecided whether there are limits of which it is not known whether they hold
     */
    public static String of(
            String build,
            Optional<String> dragging,
            Margin.Verdict first,
            String limit,
            Optional<String> notKnown,
            boolean undecided) {
        String fails = dragging.map(clutch -> "FAILS. " + clutch + " Apart from that: ")
                .orElse("");
        String known = undecided ? " as far as is known" : "";
        String words =
                switch (first) {
                    case FAILS -> "FAILS. First limit: ";
                    case NOT_KNOWN -> "NOT KNOWN. First limit: ";
                    case CLOSE -> "NARROW" + known + ". First limit: ";
                    case HOLDS -> "HOLDS" + known + ". Least headroom: ";
                };
        return build + ": " + fails + words + limit
                + notKnown.map(BuildVerdictPhrase::open).orElse("");
    }

    /** A build of which nothing is judged, because no state was found, because it cannot be told or because there is nothing. */
    public static String nothingJudged(String build, Optional<String> notKnown, boolean undecided) {
        return build
                + notKnown.map(duty -> ": NOT KNOWN." + open(duty))
                        .orElse(
                                undecided
                                        ? ": NOT KNOWN."
                                        : ": nothing to judge; the circuit has no pump, clutch, lubrication or hub.");
    }

    private static String open(String duty) {
        return " Not known at " + duty + ": no steady state was found.";
    }

    /** The limit with the least headroom. */
    public String limit(Margin margin, String duty) {
        return new MarginPhrase(units).brief(margin, duty) + ".";
    }

    /**
     * The pump brings too little to hold the line.
     *
     * @param line      line pressure as it is [Pa]
     * @param set       set pressure commanded [Pa]
     * @param regulated whether the line is held all the same
     * @param follows   what fails because of it
     */
    public String pumpShort(
            Margin regulation, String duty, double line, double set, boolean regulated, List<Margin.Kind> follows) {
        String said = regulated
                ? "the pump has too little oil for all that hangs on the line"
                : "line pressure is not held, " + Quantity.PRESSURE.shortOf(units, line, set) + " of the "
                        + Quantity.PRESSURE.fallenShortOf(units, line, set) + " commanded";
        String hangs = follows.stream().map(LimitPhrase::label).collect(Collectors.joining(", "));
        return LimitPhrase.at(regulation.kind(), regulation.part(), duty) + ": " + said + "; with the line held at "
                + Quantity.PRESSURE.with(units, set) + " " + new MarginCausePhrase(units).delivers(regulation)
                + " where " + new MarginPhrase(units).needed(regulation) + " is needed ("
                + HeadroomPhrase.of(regulation.headroom()) + ")."
                + (hangs.isEmpty() ? "" : " Short because of that: " + hangs + ".");
    }
}
