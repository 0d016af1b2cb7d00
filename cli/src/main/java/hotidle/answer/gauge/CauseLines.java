package hotidle.answer.gauge;

import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.GaugePhrase;
import hotidle.answer.phrase.UnitFaultPhrase;
import hotidle.fault.UnitFault;
import hotidle.study.gauge.Cause;
import hotidle.study.gauge.GaugeFindings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What may be behind readings: faults that look alike, pairs and none of these, each with its share.
 *
 * @param words in which faults and their sizes are told
 * @param found by the readings
 */
record CauseLines(CauseWords words, GaugeFindings found) {

    /** A pair with less is not worth a line (chosen) [-]. */
    private static final double PAIR = 0.03;

    /** Pairs with a line of their own (chosen). */
    private static final int MOST_PAIRS = 2;

    /** Where shares begin and end: what goes on stands under the name. */
    private static final String INDENT = "        ";

    /**
     * Something that may be behind the readings.
     *
     * @param share of what is believed [-]
     * @param text  with the share before it
     */
    record CauseLine(double share, String text) {}

    /** A group each, pairs and none of these, the most likely first. */
    List<CauseLine> lines(int groups, int others) {
        List<CauseLine> lines = new ArrayList<>();
        List<GaugeFindings.Group> leading = found.groups();
        OptionalDouble best = found.first().stream()
                .mapToDouble(group -> group.leader().chiSquare())
                .findFirst();
        for (GaugeFindings.Group group : leading.subList(0, Math.min(groups, leading.size()))) {
            lines.add(line(group.share(), group(group, others)));
        }
        pairs(found).forEach(pair -> lines.add(line(pair.share(), pair(pair))));
        boolean leads = lines.stream().allMatch(line -> line.share() < found.none());
        lines.add(line(found.none(), GaugePhrase.none(best, leads)));
        lines.sort(Comparator.comparingDouble((CauseLine line) -> -line.share()));
        return lines;
    }

    /** Pairs that are worth a line. */
    static List<GaugeFindings.Pair> pairs(GaugeFindings found) {
        return found.pairs().stream()
                .filter(pair -> pair.share() > PAIR)
                .limit(MOST_PAIRS)
                .toList();
    }

    /** What is left to causes that are not among these lines; nothing where that is not worth a line. */
    static Optional<CauseLine> rest(List<CauseLine> lines) {
        double rest = 1 - lines.stream().mapToDouble(CauseLine::share).sum();
        return rest > PAIR ? Optional.of(line(rest, GaugePhrase.REST)) : Optional.empty();
    }

    private static CauseLine line(double share, String said) {
        return new CauseLine(share, Wrap.lines(said, GaugePhrase.share(share) + "  ", INDENT));
    }

    private String pair(GaugeFindings.Pair pair) {
        return GaugePhrase.pair(sized(pair.one()), sized(pair.other()), left(pair.chiSquare()));
    }

    private String left(double chiSquare) {
        return GaugePhrase.left(chiSquare, found.fitsPoorly(chiSquare));
    }

    private String sized(UnitFault.Sized one) {
        return UnitFaultPhrase.brief(one.fault().kind(), one.fault().part()) + ", "
                + words.size(one.fault(), one.size());
    }

    private String group(GaugeFindings.Group group, int others) {
        Cause leader = group.leader();
        List<Cause> causes = group.causes();
        return causes.size() > 1
                ? GaugePhrase.oneOf(
                        causes.stream().map(CauseWords::brief).toList(),
                        causes.stream().map(Cause::share).toList(),
                        Math.min(others, causes.size()) + 1,
                        left(leader.chiSquare()))
                : GaugePhrase.cause(
                        CauseWords.named(leader), words.size(leader.fault(), leader.size()), left(leader.chiSquare()));
    }
}
