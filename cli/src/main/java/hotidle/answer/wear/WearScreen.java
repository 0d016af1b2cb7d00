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

/** The first screen: how far all may wear together, the tightest fits, and which written limits are too loose. */
record WearScreen(Quantity.UnitSystem units, String circuit, List<BuildWear> builds) {

    /** Fits that are listed at most. */
    private static final int TIGHTEST = 10;

    /** Written limits that are named. */
    private static final int WORST = 5;

    /** Lines of a table beside its rows: a blank one before and after, its head and rule. */
    private static final int AROUND = 4;

    String text() {
        StringBuilder text = new StringBuilder(WearLimitPhrase.heading(circuit)).append("\n");
        builds.forEach(one -> text.append(Wrap.lines(together(one), "", "  ")));
        StringBuilder end = new StringBuilder();
        builds.forEach(one -> end.append(tooLoose(one)));
        String open = NotKnown.brief(builds.stream()
                .flatMap(one -> one.wear().undecided().stream())
                .distinct()
                .toList());
        end.append(open.isEmpty() ? "" : Wrap.lines(open, "", "  "));
        if (builds.size() == 1) {
            end.append(tables().notGauged(builds.get(0)));
            end.append(builds.get(0).hub(units));
        }
        end.append(Wrap.lines(next(), "", "  "));
        end.append(Caution.LINE).append("\n");
        long left = Wrap.LINES
                - text.toString().lines().count()
                - end.toString().lines().count()
                - AROUND;
        int rows = (int) Math.max(1, Math.min(TIGHTEST, left));
        List<BuildWear> wearing = builds.stream()
                .filter(one -> one.findings().fails().isEmpty()
                        && !WearTables.gauged(one).isEmpty())
                .toList();
        String table = wearing.isEmpty()
                ? ""
                : (wearing.size() == 1 ? tables().alone(wearing.get(0), rows) : tables().beside(wearing, rows))
                        .fitted(Wrap.WIDTH);
        return text + "\n" + table + (table.isEmpty() ? "" : "\n") + end;
    }

    /** What to do with the first build: that which fails as it is before all others. */
    private String next() {
        return builds.stream()
                .filter(one -> !one.wear().already().isEmpty())
                .findFirst()
                .map(one -> WearLimitPhrase.nextJobs(one.build()))
                .orElseGet(() -> WearLimitPhrase.nextMeasure(builds.get(0).build()));
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
