package hotidle.answer.wear;

import hotidle.answer.NotKnown;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.page.Block;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.LimitPhrase;
import hotidle.answer.phrase.WearLimitPhrase;
import hotidle.assess.WornShares;
import hotidle.study.Judgement;
import hotidle.study.Wear;
import hotidle.study.WearFindings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

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
            end.append(builds.get(0).hub(units));
        }
        end.append(Caution.LINE).append("\n");
        long left = Wrap.LINES
                - text.toString().lines().count()
                - end.toString().lines().count()
                - AROUND;
        int rows = (int) Math.max(1, Math.min(TIGHTEST, left));
        List<BuildWear> wearing = builds.stream()
                .filter(one -> one.findings().fails().isEmpty()
                        && !one.findings().tightest().isEmpty())
                .toList();
        String table = wearing.isEmpty()
                ? ""
                : (wearing.size() == 1 ? alone(wearing.get(0), rows) : beside(wearing, rows)).fitted(Wrap.WIDTH);
        return text + "\n" + table + (table.isEmpty() ? "" : "\n") + end;
    }

    /** The same on a page: every fit that takes a limit away, and every written limit that is too loose. */
    List<Block> page() {
        List<Block> blocks = new ArrayList<>();
        for (BuildWear one : builds) {
            List<String> said = new ArrayList<>(List.of(together(one)));
            said.add(tooLoose(one, Integer.MAX_VALUE));
            said.addAll(one.hubSaid(units));
            blocks.add(Block.said(said));
            if (one.findings().fails().isEmpty() && !one.findings().tightest().isEmpty()) {
                blocks.add(Block.table(WearLimitPhrase.eachAlone(one.build()), alone(one, Integer.MAX_VALUE)));
            }
        }
        blocks.add(Block.said(NotKnown.brief(builds.stream()
                .flatMap(one -> one.wear().undecided().stream())
                .distinct()
                .toList())));
        blocks.add(Block.said(WearLimitPhrase.LEGEND));
        return blocks;
    }

    private String name(BuildWear one) {
        return one.set().isEmpty()
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

    private TextTable alone(BuildWear one, int rows) {
        String size = " [" + Quantity.FIT.in(units).unit() + "]";
        TextTable table = new TextTable(List.of(
                WearLimitPhrase.TIGHTEST,
                WearLimitPhrase.AS_IT_IS + size,
                WearLimitPhrase.LEFT + " [" + Quantity.FILM.in(units).unit() + "]",
                WearLimitPhrase.GONE_AT + size,
                WearLimitPhrase.WRITTEN + size,
                WearLimitPhrase.THEN_FAILS));
        one.findings().tightest().stream()
                .limit(rows)
                .forEach(fit -> table.add(List.of(
                        fit.dimension().name(),
                        size(fit, fit.dimension().value()),
                        fit.dimension().scores() ? left(fit) : Quantity.FILM.number(units, fit.left()),
                        size(fit, fit.size().orElseThrow()),
                        limit(fit),
                        brief(fit.gone().get(0)))));
        return table;
    }

    private TextTable beside(List<BuildWear> some, int rows) {
        List<String> head = new ArrayList<>(List.of(WearLimitPhrase.TIGHTEST));
        some.forEach(one -> head.add(WearLimitPhrase.leftOf(one.build())));
        TextTable table = new TextTable(head);
        List<Map<String, Wear.WornFit>> fits = some.stream()
                .map(one -> one.findings().tightest().stream()
                        .collect(Collectors.toMap(fit -> fit.dimension().name(), fit -> fit)))
                .toList();
        fits.stream()
                .flatMap(found -> found.values().stream())
                .sorted(Comparator.comparing(
                                (Wear.WornFit fit) -> fit.dimension().scores())
                        .thenComparingDouble(Wear.WornFit::left)
                        .thenComparing(fit -> fit.dimension().name()))
                .map(fit -> fit.dimension().name())
                .distinct()
                .limit(rows)
                .forEach(name -> {
                    List<String> row = new ArrayList<>(List.of(name));
                    fits.forEach(
                            found -> row.add(found.containsKey(name) ? left(found.get(name)) : WearLimitPhrase.AMPLE));
                    table.add(row);
                });
        return table;
    }

    private String left(Wear.WornFit fit) {
        Quantity quantity = fit.dimension().scores() ? Quantity.AREA : Quantity.FILM;
        return quantity.with(units, fit.left());
    }

    /** All lengths in the one unit of their column; the area of scores has its own behind it. */
    private String size(Wear.WornFit fit, double value) {
        return fit.dimension().scores() ? Quantity.AREA.with(units, value) : Quantity.FIT.number(units, value);
    }

    private String limit(Wear.WornFit fit) {
        OptionalDouble limit = fit.dimension().limit();
        return limit.isPresent() ? size(fit, limit.getAsDouble()) : "-";
    }

    /** A limit in a cell: kind and driving condition, without the part. */
    private static String brief(Judgement.Key key) {
        return LimitPhrase.brief(key.kind(), key.duty());
    }

    private static String at(Judgement.Key key) {
        return LimitPhrase.at(key.kind(), key.part(), key.duty());
    }
}
