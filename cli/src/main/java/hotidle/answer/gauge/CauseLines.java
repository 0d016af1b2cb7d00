package hotidle.answer.gauge;

import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.GaugePhrase;
import hotidle.answer.phrase.UnitFaultPhrase;
import hotidle.fault.UnitFault;
import hotidle.study.gauge.Cause;
import hotidle.study.gauge.GaugeFindings;
import java.util.ArrayList;
import java.util.List;
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

    /** Where shares begin and end: what goes on stands under the name. */
    private static final String INDENT = "        ";

    /** A group each, then none of these. */
    List<String> lines(int groups, int others) {
        List<String> lines = new ArrayList<>();
        List<GaugeFindings.Group> leading = found.groups();
        OptionalDouble best = found.first().stream()
                .mapToDouble(group -> group.leader().chiSquare())
                .findFirst();
        for (GaugeFindings.Group group : leading.subList(0, Math.min(groups, leading.size()))) {
            lines.add(group(group, others));
        }
        found.pairs().stream()
                .filter(pair -> pair.share() > PAIR)
                .limit(2)
                .map(this::pair)
                .forEach(lines::add);
        boolean leads = found.first().map(group -> group.share() < found.none()).orElse(true);
        String none = Wrap.lines(GaugePhrase.none(best, leads), GaugePhrase.share(found.none()) + "  ", INDENT);
        lines.add(leads ? 0 : lines.size(), none);
        return lines;
    }

    private String pair(GaugeFindings.Pair pair) {
        return Wrap.lines(
                GaugePhrase.pair(sized(pair.one()), sized(pair.other()), pair.chiSquare()),
                GaugePhrase.share(pair.share()) + "  ",
                INDENT);
    }

    private String sized(UnitFault.Sized one) {
        return UnitFaultPhrase.brief(one.fault().kind(), one.fault().part()) + ", "
                + words.size(one.fault(), one.size());
    }

    private String group(GaugeFindings.Group group, int others) {
        Cause leader = group.leader();
        List<Cause> causes = group.causes();
        String said = causes.size() > 1
                ? GaugePhrase.oneOf(
                        causes.stream().map(CauseWords::brief).toList(),
                        causes.stream().map(Cause::share).toList(),
                        Math.min(others, causes.size()) + 1,
                        leader.chiSquare())
                : GaugePhrase.cause(
                        CauseWords.named(leader), words.size(leader.fault(), leader.size()), leader.chiSquare());
        return Wrap.lines(said, GaugePhrase.share(group.share()) + "  ", INDENT);
    }
}
