package hotidle.answer.margins;

import hotidle.answer.NotKnown;
import hotidle.answer.format.FirstScreen;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.MarginsScreenPhrase;
import hotidle.assess.Margin;
import hotidle.study.JudgedBuild;
import hotidle.study.Judgement;
import hotidle.study.LooseWritten;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The first screen of judged builds: what each comes to, the limits that do not hold with ease, the worst first, and a count of what
 * finds no room.
 *
 * @param shown names of the driving conditions whose limits are listed; a build's verdict rests on all
 * @param loose fits within their written limits that bring a build down
 * @param foot  cautions under it
 */
public record MarginsScreen(
        Quantity.UnitSystem units,
        String heading,
        List<JudgedBuild> builds,
        List<String> shown,
        List<LooseWritten> loose,
        String foot) {

    /** More builds than these are told in two lines each (chosen). */
    private static final int MOST_LISTED = 2;

    /** Limits that are listed where fewer do not hold with ease: a reader wants to see the next ones (chosen). */
    private static final int AT_LEAST = 5;

    /** Rows kept for a build that stands under another one (chosen). */
    private static final int KEPT_ROWS = 2;

    /** Lines of a table besides its rows. */
    private static final int HEAD = 2;

    public String text() {
        FirstScreen screen = new FirstScreen(foot);
        screen.add(heading);
        if (builds.size() <= MOST_LISTED) {
            for (int i = 0; i < builds.size(); i++) {
                listed(screen, builds.get(i), builds.subList(i + 1, builds.size()));
            }
        } else {
            counted(screen);
        }
        return screen.text();
    }

    private void listed(FirstScreen screen, JudgedBuild build, List<JudgedBuild> after) {
        List<ListedLimits.DutyLimit> told = limits(build).told();
        int share = screen.room() - after.stream().mapToInt(this::least).sum();
        List<String> head = head(build);
        head.forEach(screen::add);
        String open = notKnownLimits(build, after.isEmpty());
        long room = share
                - head.stream().flatMap(String::lines).count()
                - open.lines().count();
        int rows = told.size();
        while (rows > 0 && HEAD + rows + more(told, rows).lines().count() > room) {
            rows--;
        }
        List<ListedLimits.DutyLimit> listed = new ArrayList<>(told.subList(0, rows));
        if (rows == told.size()) {
            limits(build).held().stream()
                    .limit(Math.max(0, Math.min(AT_LEAST, room - HEAD) - rows))
                    .forEach(listed::add);
        }
        if (!listed.isEmpty()) {
            screen.add(table(listed));
        }
        screen.add(more(told, rows));
        screen.add(open);
    }

    private List<String> head(JudgedBuild build) {
        List<String> head = new ArrayList<>();
        head.add(Wrap.lines(new MarginSentences(units).verdict(build.unit().build(), build.verdict()), "", "  "));
        head.add(Wrap.lines(new LimitRows.LimitCount(units, build).said(), "  ", "  "));
        notKnown(build).forEach(line -> head.add(Wrap.lines(line, "  ", "  ")));
        new MarginSentences(units).loose(build, loose).ifPresent(said -> head.add(Wrap.lines(said, "  ", "  ")));
        return head;
    }

    /** Lines that are kept for a build: all but its table, and the worst of that. */
    private int least(JudgedBuild build) {
        int rows = Math.min(KEPT_ROWS, limits(build).told().size());
        long said = Stream.concat(head(build).stream(), Stream.of(notKnownLimits(build, true)))
                .flatMap(String::lines)
                .count();
        return (int) said + (rows == 0 ? 0 : HEAD + rows + 1);
    }

    /** What the table leaves out. */
    private static String more(List<ListedLimits.DutyLimit> told, int rows) {
        List<ListedLimits.DutyLimit> rest = told.subList(rows, told.size());
        return rest.isEmpty() ? "" : Wrap.lines(MarginsScreenPhrase.more(counts(rest)), "  ", "  ");
    }

    private String table(List<ListedLimits.DutyLimit> told) {
        MarginsScreenPhrase phrase = new MarginsScreenPhrase(units);
        TextTable table = new TextTable(MarginsScreenPhrase.HEAD);
        told.forEach(one -> table.add(List.of(
                phrase.verdict(one.margin()),
                one.duty(),
                phrase.limit(one.margin()),
                phrase.isOfNeeded(one.margin()))));
        return table.fitted(Wrap.WIDTH);
    }

    /** The builds in two lines each; those that find no room hold, or are counted. */
    private void counted(FirstScreen screen) {
        List<JudgedBuild> sorted = builds.stream()
                .sorted(Comparator.comparingInt(build -> failing(build) ? 0 : 1))
                .toList();
        List<JudgedBuild> left = new ArrayList<>();
        for (JudgedBuild build : sorted) {
            String lines = Wrap.lines(
                            MarginsScreenPhrase.headed(
                                    build.unit().build(),
                                    failing(build),
                                    new LimitRows.LimitCount(units, build).said()),
                            "",
                            "  ")
                    + worst(build);
            if (!left.isEmpty() || screen.room() <= lines.lines().count()) {
                left.add(build);
            } else {
                screen.add(lines);
            }
        }
        if (!left.isEmpty()) {
            screen.add(Wrap.lines(
                    MarginsScreenPhrase.moreBuilds(
                            left.size(),
                            left.stream()
                                    .filter(this::failing)
                                    .map(build -> build.unit().build())
                                    .toList()),
                    "",
                    "  "));
        }
    }

    private String worst(JudgedBuild build) {
        StringBuilder text = new StringBuilder();
        build.verdict()
                .first()
                .ifPresent(first -> text.append(Wrap.lines(
                        new MarginsScreenPhrase(units)
                                .worst(
                                        first.duty(),
                                        first.margin(),
                                        counts(limits(build).open())),
                        "  ",
                        "  ")));
        notKnown(build).forEach(line -> text.append(Wrap.lines(line, "  ", "  ")));
        return text.toString();
    }

    private boolean failing(JudgedBuild build) {
        return build.duties().stream()
                .anyMatch(judged -> !judged.draggingClutches().isEmpty()
                        || judged.margins().stream().anyMatch(margin -> margin.verdict() == Margin.Verdict.FAILS)
                        || !judged.known());
    }

    private ListedLimits limits(JudgedBuild build) {
        return new ListedLimits(units, build, shown);
    }

    /** They stand beneath the table; why they are not known is said once. */
    private String notKnownLimits(JudgedBuild build, boolean why) {
        String said = NotKnown.beside(limits(build).undecided(), why);
        return said.isEmpty() ? "" : Wrap.lines(said, "  ", "  ");
    }

    /** How many by verdict and driving condition. */
    private static Map<Margin.Verdict, Map<String, Long>> counts(List<ListedLimits.DutyLimit> told) {
        Map<Margin.Verdict, Map<String, Long>> counts = new LinkedHashMap<>();
        told.forEach(one -> counts.computeIfAbsent(one.margin().verdict(), verdict -> new LinkedHashMap<>())
                .merge(one.duty(), 1L, Long::sum));
        return counts;
    }

    /** Clutches that drag, and driving conditions at which something could not be found. */
    List<String> notKnown(JudgedBuild build) {
        List<String> lines = new ArrayList<>();
        List<String> open = new ArrayList<>();
        for (Judgement judged : build.duties()) {
            judged.draggingClutches()
                    .forEach(clutch -> lines.add(MarginsScreenPhrase.drags(clutch.clutch(), clutch.duty())));
            if (!judged.known()) {
                open.add(judged.duty().name());
            }
        }
        if (!open.isEmpty()) {
            lines.add(MarginsScreenPhrase.notKnown(open));
        }
        return lines;
    }
}
