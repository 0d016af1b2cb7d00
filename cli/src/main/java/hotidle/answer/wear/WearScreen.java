package hotidle.answer.wear;

import hotidle.answer.NotKnown;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.Wrap;
import hotidle.answer.page.Block;
import hotidle.answer.phrase.AfterWorkPhrase;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.LimitPhrase;
import hotidle.answer.phrase.WearLimitPhrase;
import hotidle.assess.WornShares;
import hotidle.study.Judgement;
import hotidle.study.Wear;
import hotidle.study.WearFindings;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The first screen: how far all may wear together, the tightest fits, and which written limits are too loose.
 *
 * @param work what was done to each build; may be empty
 */
record WearScreen(Quantity.UnitSystem units, String circuit, String work, List<BuildWear> builds) {

    /** Fits that are listed at most. */
    private static final int TIGHTEST = 10;

    /** Fits that a table lists before anything else is said (chosen). */
    private static final int LEAST = 3;

    /** Written limits that are named. */
    private static final int WORST = 5;

    /** Blank lines before and behind a table. */
    private static final int AROUND = 2;

    String text() {
        StringBuilder text = new StringBuilder(Wrap.lines(WearLimitPhrase.heading(circuit, work), "", "  "));
        builds.forEach(one -> text.append(Wrap.lines(together(one), "", "  ")));
        StringBuilder end = new StringBuilder();
        builds.forEach(one -> end.append(tooLoose(one)));
        String open = NotKnown.brief(builds.stream()
                .flatMap(one -> one.wear().undecided().stream())
                .distinct()
                .toList());
        end.append(open.isEmpty() ? "" : Wrap.lines(open, "", "  "));
        String last = Wrap.lines(next(), "", "  ") + Caution.LINE + "\n";
        long room = Wrap.LINES - (text + end.toString() + last).lines().count() - AROUND;
        List<BuildWear> wearing = builds.stream()
                .filter(one -> one.findings().fails().isEmpty()
                        && !WearTables.gauged(one).isEmpty())
                .toList();
        List<String> notes = notes();
        if (!wearing.isEmpty()) {
            long least = tightest(wearing, LEAST).lines().count();
            while (!notes.isEmpty() && room - lines(notes) < least) {
                notes.remove(notes.size() - 1);
            }
        }
        end.append(String.join("", notes)).append(last);
        String table = wearing.isEmpty() ? "" : tightest(wearing, room - lines(notes));
        return text + "\n" + table + (table.isEmpty() ? "" : "\n") + end;
    }

    /** What else is to be known of the only build, which makes room for the tightest fits: all of it stands in the full text. */
    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (builds.size() == 1) {
            notes.add(tables().notGauged(builds.get(0)));
            builds.get(0).hubSaid(units).forEach(said -> notes.add(Wrap.lines(said, "", "  ")));
        }
        return notes;
    }

    private static long lines(List<String> texts) {
        return String.join("", texts).lines().count();
    }

    /** As many of the tightest fits as have room, at least one. */
    private String tightest(List<BuildWear> wearing, long room) {
        int rows = TIGHTEST;
        String table = tightest(wearing, rows);
        while (rows > 1 && table.lines().count() > room) {
            rows--;
            table = tightest(wearing, rows);
        }
        return table;
    }

    private String tightest(List<BuildWear> wearing, int rows) {
        if (wearing.size() > 1) {
            return tables().beside(wearing, rows).fitted(Wrap.WIDTH);
        }
        String whole = tables().alone(wearing.get(0), rows).fitted(Wrap.WIDTH);
        return whole.lines().allMatch(line -> line.length() <= Wrap.WIDTH)
                ? whole
                : tables().alone(wearing.get(0), rows, false).fitted(Wrap.WIDTH);
    }

    /** What to do with the first build: that which fails as it is before all others. */
    private String next() {
        return builds.stream()
                .filter(one -> !one.wear().already().isEmpty())
                .findFirst()
                .map(one -> WearLimitPhrase.nextJobs(options(one)))
                .orElseGet(() -> WearLimitPhrase.nextMeasure(options(builds.get(0))));
    }

    private String options(BuildWear one) {
        return AfterWorkPhrase.options(one.build(), !work.isEmpty());
    }

    /** The same on a page: every fit that takes a limit away, and every written limit that is too loose. */
    List<Block> page() {
        List<Block> blocks = new ArrayList<>();
        for (BuildWear one : builds) {
            List<String> said = new ArrayList<>(List.of(together(one)));
            said.add(tooLoose(one, Integer.MAX_VALUE));
            said.add(tables().notGauged(one).strip().replaceAll("\\s+", " "));
            said.addAll(one.hubSaid(units));
            blocks.add(Block.said(said));
            if (one.findings().fails().isEmpty() && !WearTables.gauged(one).isEmpty()) {
                blocks.add(Block.table(WearLimitPhrase.eachAlone(one.build()), tables().alone(one, Integer.MAX_VALUE)));
            }
        }
        blocks.add(Block.said(NotKnown.brief(builds.stream()
                .flatMap(one -> one.wear().undecided().stream())
                .distinct()
                .toList())));
        blocks.add(Block.said(WearLimitPhrase.LEGEND));
        return blocks;
    }

    private WearTables tables() {
        return new WearTables(units);
    }

    private String name(BuildWear one) {
        return one.set().isEmpty() || AfterWorkPhrase.saysPressure(one.build())
                ? one.build()
                : HeadingPhrase.at(
                        one.build(), Quantity.PRESSURE.with(units, one.set().getAsDouble()));
    }

    private String together(BuildWear one) {
        Wear wear = one.wear();
        String unknown = wear.unsolved().isEmpty() ? "" : " " + WearLimitPhrase.notKnown(wear.unsolved());
        if (!wear.already().isEmpty()) {
            return WearLimitPhrase.noneLeft(
                            name(one), at(wear.already().get(0)), wear.already().size() - 1)
                    + unknown;
        }
        if (wear.held() == 0) {
            return WearLimitPhrase.noneHolds(name(one), 0) + unknown;
        }
        OptionalDouble past = one.pastTogether();
        if (past.isPresent()) {
            Wear.Together all = wear.together().orElseThrow();
            return name(one) + ": "
                    + WearLimitPhrase.wornUnevenly(
                            all.share().orElseThrow(), at(all.gone().get(0)), past.getAsDouble())
                    + unknown;
        }
        return name(one) + ": "
                + wear.together()
                        .map(all -> all.already().isEmpty()
                                ? all.share()
                                        .map(share -> WearLimitPhrase.mayWear(
                                                share, at(all.gone().get(0))))
                                        .orElseGet(() -> WearLimitPhrase.togetherNone(all.searched()))
                                : WearLimitPhrase.failsWhenNew(at(all.already().get(0))))
                        .orElse(WearLimitPhrase.NO_WRITTEN_LIMIT)
                + wornTo(one)
                + unknown;
    }

    private static String wornTo(BuildWear one) {
        List<Double> shares = WornShares.of(one.wearing()).shares();
        return shares.isEmpty() || one.wear().together().isEmpty()
                ? ""
                : WearLimitPhrase.wornTo(shares.get(shares.size() - 1));
    }

    /** Which written limits a build would fail before it reaches them. */
    private String tooLoose(BuildWear one) {
        String said = tooLoose(one, WORST);
        return said.isEmpty() ? "" : Wrap.lines(said, "", "  ");
    }

    private String tooLoose(BuildWear one, int most) {
        WearFindings found = one.findings();
        if (found.fails().isPresent() || found.written() == 0) {
            return "";
        }
        List<String> worst = found.tooLoose().stream()
                .limit(most)
                .map(fit -> WearLimitPhrase.looseFit(fit.dimension().name(), fit.limitShare()))
                .toList();
        return WearLimitPhrase.tooLoose(
                builds.size() == 1 ? "" : one.build(), found.tooLoose().size(), found.written(), worst);
    }

    private static String at(Judgement.Key key) {
        return LimitPhrase.at(key.kind(), key.part(), key.duty());
    }
}
