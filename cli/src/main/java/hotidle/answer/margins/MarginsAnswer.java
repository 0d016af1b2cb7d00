package hotidle.answer.margins;

import hotidle.answer.Answer;
import hotidle.answer.NotKnown;
import hotidle.answer.Settling;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.page.Block;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.HeadroomPhrase;
import hotidle.answer.phrase.HubFilmPhrase;
import hotidle.answer.phrase.HubLoadPhrase;
import hotidle.answer.phrase.NoStallPhrase;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.assess.FiguresChange;
import hotidle.assess.Margin;
import hotidle.assess.NotCommanded;
import hotidle.study.JudgedBuild;
import hotidle.study.Judgement;
import hotidle.study.LooseWritten;
import hotidle.study.SameSpeedFilms;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Every limit of some builds at every duty point.
 *
 * @param units        of the user
 * @param circuit      its name
 * @param about        what its file says of it; may be empty
 * @param builds       judged, at least one
 * @param notCommanded why regulation is not judged; empty where it is
 * @param films        of all builds at the same speeds; none of one build alone
 * @param settling     at which temperatures
 * @param shown        names of the driving conditions whose limits are shown; a verdict rests on all
 * @param loose        fits within their written limits that bring a build down, where that was looked for
 */
public record MarginsAnswer(
        Quantity.UnitSystem units,
        String circuit,
        String about,
        List<JudgedBuild> builds,
        Optional<NotCommanded> notCommanded,
        SameSpeedFilms films,
        Settling settling,
        List<String> shown,
        List<LooseWritten> loose)
        implements Answer {

    public MarginsAnswer {
        builds = List.copyOf(builds);
        shown = List.copyOf(shown);
        loose = List.copyOf(loose);
    }

    /** All driving conditions shown, at the temperatures of the file, fits within their written limits not looked for. */
    public MarginsAnswer(
            Quantity.UnitSystem units,
            String circuit,
            String about,
            List<JudgedBuild> builds,
            Optional<NotCommanded> notCommanded,
            SameSpeedFilms films) {
        this(
                units,
                circuit,
                about,
                builds,
                notCommanded,
                films,
                Settling.AS_GIVEN,
                builds.get(0).duties().stream()
                        .map(judged -> judged.duty().name())
                        .toList(),
                List.of());
    }

    @Override
    public String screen() {
        String foot = notCommanded
                        .map(why -> Wrap.lines(MarginSentences.notCommanded(why), "", "  "))
                        .orElse("")
                + Caution.of(builds.get(0).unit().commanded().isPresent(), raised()) + "\n" + noStall();
        String heading = Wrap.lines(HeadingPhrase.headed(circuit, about), "", "  ") + settling.text();
        return new MarginsScreen(units, heading, builds, shown, loose, foot).text();
    }

    private boolean raised() {
        return builds.stream()
                .map(JudgedBuild::unit)
                .filter(unit -> unit.commanded().isPresent())
                .anyMatch(unit -> !FiguresChange.same(
                        unit.highestSet(), builds.get(0).unit().highestSet()));
    }

    private String noStall() {
        return NoStallPhrase.of(builds.stream()
                .filter(JudgedBuild::lowAtIdle)
                .map(build -> build.unit().build())
                .toList());
    }

    @Override
    public String full() {
        MarginSentences sentences = new MarginSentences(units);
        StringBuilder text =
                new StringBuilder(Wrap.lines(HeadingPhrase.headed(circuit, about), "", "  ") + settling.text());
        for (JudgedBuild build : builds) {
            text.append(Wrap.lines(sentences.verdict(build.unit().build(), build.verdict()), "", "  "));
            text.append(Wrap.lines(new LimitRows.LimitCount(units, build).said(), "  ", "  "));
            String undecided = NotKnown.said(build.verdict().undecided());
            text.append(undecided.isEmpty() ? "" : Wrap.lines(undecided, "  ", "  "));
            sentences.loose(build, loose).ifPresent(said -> text.append(Wrap.lines(said, "  ", "  ")));
        }
        notCommanded.ifPresent(why -> text.append(Wrap.lines(MarginSentences.notCommanded(why), "", "  ")));
        text.append("\n")
                .append(Caution.whole(builds.get(0).unit().commanded().isPresent()))
                .append("\n");
        text.append(noStall());
        boolean many = builds.size() > 1;
        for (JudgedBuild build : builds) {
            for (Judgement judged : build.duties()) {
                if (shown.contains(judged.duty().name())) {
                    text.append("\n").append(new DutyLimits(units, judged, many).text());
                }
            }
        }
        return text.append(many ? sameSpeed() : "")
                .append("\n")
                .append(Wrap.lines(HeadroomPhrase.LEGEND, "", ""))
                .toString();
    }

    /** The same on a page. */
    public List<Block> page() {
        List<Block> blocks = new ArrayList<>(new MarginsPage(units, builds, shown).blocks());
        notCommanded.ifPresent(why -> blocks.add(0, Block.said(MarginSentences.notCommanded(why))));
        return blocks;
    }

    /** What a build comes to. */
    public String verdict(JudgedBuild build) {
        return new MarginSentences(units).verdict(build.unit().build(), build.verdict());
    }

    /** The limit that is told first of a build, with its reason; empty where nothing is judged. */
    public String firstLimit(JudgedBuild build) {
        return new MarginSentences(units).first(build.verdict());
    }

    /**
     * What is told of one build, for who asks it again and again.
     *
     * @param verdict the worst of all limits, as a word; {@code fails} where a clutch drags, {@code not_known} where no state was found
     * @param limits  the worst first
     * @param noStall empty where a stall test may be run
     */
    public record MarginFindings(
            String verdict,
            String summary,
            String counted,
            List<String> notKnown,
            List<ToldLimit> limits,
            String noStall) {}

    /** The same of the first build. */
    public MarginFindings told() {
        JudgedBuild build = builds.get(0);
        return new MarginFindings(
                worst(build).word(),
                verdict(build),
                new LimitRows.LimitCount(units, build).said(),
                new MarginsScreen(units, "", builds, shown, loose, "").notKnown(build),
                build.duties().stream()
                        .flatMap(judged -> new LimitRows(units, judged)
                                .shown().stream().map(row -> ToldLimit.of(units, judged, row.margin())))
                        .sorted(Comparator.comparing(
                                        (ToldLimit one) -> !one.verdict().equals(Margin.Verdict.FAILS.word()))
                                .thenComparingDouble(ToldLimit::headroom))
                        .toList(),
                noStall().strip());
    }

    private static Margin.Verdict worst(JudgedBuild build) {
        if (build.duties().stream()
                .anyMatch(judged -> !judged.draggingClutches().isEmpty())) {
            return Margin.Verdict.FAILS;
        }
        Margin.Verdict unknown = build.known() ? Margin.Verdict.HOLDS : Margin.Verdict.NOT_KNOWN;
        return Stream.concat(
                        Stream.of(unknown),
                        build.duties().stream()
                                .flatMap(judged -> judged.margins().stream())
                                .map(Margin::verdict))
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    private String sameSpeed() {
        List<String> head = new ArrayList<>(List.of("duty", "rpm"));
        builds.forEach(build -> head.add(build.unit().build()));
        TextTable table = new TextTable(head);
        for (SameSpeedFilms.FilmsAtSpeed at : films.rows()) {
            List<String> row = new ArrayList<>(List.of(at.duty(), Quantity.SPEED.number(units, at.speed())));
            at.films().forEach(film -> row.add(film(film)));
            table.add(row);
        }
        return "\n" + new HubLoadPhrase(units).sameSpeed() + "\n" + table.aligned();
    }

    private String film(SameSpeedFilms.Film film) {
        return switch (film.found()) {
            case KNOWN -> Quantity.FILM.number(units, film.least().orElseThrow());
            case METAL_CONTACT -> HubFilmPhrase.CONTACT_SHORT;
            case UNSOLVED -> UnsolvedPhrase.CELL;
        };
    }

    @Override
    public TextTable table() {
        TextTable table = new TextTable(LimitRows.HEAD);
        List<LimitRows> rows = builds.stream()
                .flatMap(build -> build.duties().stream())
                .map(judged -> new LimitRows(units, judged))
                .toList();
        rows.forEach(one -> one.limits().forEach(table::add));
        rows.forEach(one -> one.dragging().forEach(table::add));
        return table;
    }

    @Override
    public Object json() {
        return MarginsRecord.of(this);
    }

    @Override
    public boolean complete() {
        return builds.stream().allMatch(JudgedBuild::known);
    }
}
