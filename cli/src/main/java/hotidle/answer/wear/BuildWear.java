package hotidle.answer.wear;

import hotidle.answer.NotKnown;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.WearLimitPhrase;
import hotidle.assess.WornShares;
import hotidle.study.Judgement;
import hotidle.study.Wear;
import hotidle.study.WearFindings;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How far the fits of a build may wear.
 *
 * @param build   which
 * @param set     its highest set pressure [Pa]; empty where nothing commands one
 * @param wearing all sizes of the build that wear
 * @param wear    what was found
 */
public record BuildWear(String build, OptionalDouble set, List<WearSize> wearing, Wear wear) {

    public BuildWear {
        wearing = List.copyOf(wearing);
    }

    WearFindings findings() {
        return wear.findings();
    }

    /**
     * How far its most worn fit is on its way from new to its written limit [-], where that is past the share to which all may wear from
     * new; else empty. A limit that fails with all fits new is another matter.
     */
    OptionalDouble pastTogether() {
        List<Double> shares = WornShares.of(wearing).shares();
        if (shares.isEmpty()) {
            return OptionalDouble.empty();
        }
        double most = shares.get(shares.size() - 1);
        return wear.together().stream()
                .filter(all -> all.already().isEmpty())
                .flatMap(all -> all.share().stream())
                .filter(share -> most > share)
                .mapToDouble(share -> most)
                .findFirst();
    }

    /** What is said of it in full. */
    String said() {
        if (wear.held() == 0) {
            return Wrap.lines(WearLimitPhrase.noneHolds(build, wear.already().size()), "", "  ")
                    + notKnown()
                    + undecided();
        }
        String already = wear.already().isEmpty()
                ? ""
                : Wrap.lines(WearLimitPhrase.failAlready(listed(wear.already())), "  ", "  ");
        return Wrap.lines(build + ": " + worn() + together(), "", "  ") + already + notKnown() + undecided();
    }

    private String notKnown() {
        return wear.unsolved().isEmpty() ? "" : Wrap.lines(WearLimitPhrase.notKnown(wear.unsolved()), "  ", "  ");
    }

    /** Its fits as a table, and those that take nothing away; empty where no limit holds. */
    String fits(boolean named) {
        if (wear.held() == 0) {
            return "";
        }
        List<Wear.WornFit> found = findings().tightest();
        List<String> none = wear.fits().stream()
                .filter(fit -> fit.size().isEmpty())
                .map(fit -> fit.dimension().name())
                .toList();
        return "\n" + WearLimitPhrase.eachAlone(named ? build : "") + "\n"
                + (found.isEmpty()
                        ? WearLimitPhrase.NO_FIT_ALONE + "\n"
                        : FitRows.shown(found).aligned())
                + (none.isEmpty() ? "" : Wrap.lines(WearLimitPhrase.noneOfThese(none), "", "  "))
                + hub(Quantity.UnitSystem.METRIC);
    }

    /** Said once, whatever the number of fits. */
    private String undecided() {
        String said = NotKnown.said(wear.undecided());
        return said.isEmpty() ? "" : Wrap.lines(said, "  ", "  ");
    }

    /** What no film tells of the bushing's wear, and how tight the fits may be that feed its film. */
    String hub(Quantity.UnitSystem units) {
        StringBuilder text = new StringBuilder();
        hubSaid(units).forEach(line -> text.append(Wrap.lines(line, "", "  ")));
        return text.toString();
    }

    /** The same, a sentence each. */
    List<String> hubSaid(Quantity.UnitSystem units) {
        List<String> said = new ArrayList<>();
        wear.fits().stream().filter(fit -> fit.published().isPresent()).forEach(fit -> {
            String allowed = Quantity.SIZE.with(units, fit.published().getAsDouble());
            String name = fit.dimension().name();
            said.add(
                    fit.moreGenerous()
                            ? WearLimitPhrase.moreThanPublished(name, allowed)
                            : WearLimitPhrase.withinPublished(name, allowed));
        });
        wear.feeds().stream()
                .filter(feed -> feed.least().isPresent())
                .forEach(feed -> said.add(WearLimitPhrase.leastFeed(
                        feed.dimension().name(),
                        Quantity.SIZE.with(units, feed.least().get()),
                        feed.by().orElseThrow().duty())));
        return said;
    }

    private String worn() {
        WornShares shares = WornShares.of(wearing);
        return shares.worn() == 0
                ? ""
                : WearLimitPhrase.wornAlready(shares.worn(), wearing.size(), shares.shares(), shares.past());
    }

    private String together() {
        if (wear.together().isEmpty()) {
            return WearLimitPhrase.NO_WRITTEN_LIMIT;
        }
        Wear.Together all = wear.together().get();
        String said = all.share()
                .map(share -> WearLimitPhrase.togetherTo(
                        share, FitRows.listed(all.gone().get(0))))
                .orElseGet(() -> WearLimitPhrase.togetherNone(all.searched()));
        return said + (all.already().isEmpty() ? "" : WearLimitPhrase.failWhenNew(listed(all.already())));
    }

    static List<String> listed(List<Judgement.Key> keys) {
        return keys.stream().map(FitRows::listed).toList();
    }
}
