package hotidle.answer.wear;

import hotidle.answer.Answer;
import hotidle.answer.NotKnown;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.WearLimitPhrase;
import hotidle.assess.WornShares;
import hotidle.study.Judgement;
import hotidle.study.Wear;
import hotidle.transmission.WearSize;
import java.util.List;

/**
 * How far the fits of a build may wear.
 *
 * @param circuit its name
 * @param about   what its file says of it; may be empty
 * @param build   which
 * @param wearing all sizes of the build that wear
 * @param wear    what was found
 */
public record WearAnswer(String circuit, String about, String build, List<WearSize> wearing, Wear wear)
        implements Answer {

    public WearAnswer {
        wearing = List.copyOf(wearing);
    }

    @Override
    public String full() {
        String head = Wrap.lines(HeadingPhrase.headed(circuit, about), "", "  ");
        if (wear.held() == 0) {
            return head
                    + Wrap.lines(WearLimitPhrase.noneHolds(build, wear.already().size()), "", "  ")
                    + notKnown()
                    + undecided();
        }
        String already = wear.already().isEmpty()
                ? ""
                : Wrap.lines(WearLimitPhrase.failAlready(listed(wear.already())), "  ", "  ");
        return head + Wrap.lines(build + ": " + worn() + together(), "", "  ") + already + notKnown() + undecided()
                + "\n" + Caution.WHOLE + "\n\n" + fits() + hub() + "\n" + Wrap.lines(WearLimitPhrase.LEGEND, "", "");
    }

    private String notKnown() {
        return complete() ? "" : Wrap.lines(WearLimitPhrase.notKnown(wear.unsolved()), "  ", "  ");
    }

    private String fits() {
        List<Wear.WornFit> found =
                wear.fits().stream().filter(fit -> fit.size().isPresent()).toList();
        List<String> none = wear.fits().stream()
                .filter(fit -> fit.size().isEmpty())
                .map(fit -> fit.dimension().name())
                .toList();
        return WearLimitPhrase.EACH_ALONE + "\n"
                + (found.isEmpty()
                        ? WearLimitPhrase.NO_FIT_ALONE + "\n"
                        : FitRows.shown(found).aligned())
                + (none.isEmpty() ? "" : Wrap.lines(WearLimitPhrase.noneOfThese(none), "", "  "));
    }

    /** Said once, whatever the number of fits. */
    private String undecided() {
        String said = NotKnown.said(wear.undecided());
        return said.isEmpty() ? "" : Wrap.lines(said, "  ", "  ");
    }

    /** What no film tells of the bushing's wear, and how tight the fits may be that feed its film. */
    private String hub() {
        StringBuilder text = new StringBuilder();
        wear.fits().stream().filter(fit -> fit.published().isPresent()).forEach(fit -> {
            String allowed = Quantity.SIZE.with(
                    Quantity.UnitSystem.METRIC, fit.published().getAsDouble());
            String name = fit.dimension().name();
            text.append(Wrap.lines(
                    fit.moreGenerous()
                            ? WearLimitPhrase.moreThanPublished(name, allowed)
                            : WearLimitPhrase.withinPublished(name, allowed),
                    "",
                    "  "));
        });
        wear.feeds().stream()
                .filter(feed -> feed.least().isPresent())
                .forEach(feed -> text.append(Wrap.lines(
                        WearLimitPhrase.leastFeed(
                                feed.dimension().name(),
                                Quantity.SIZE.with(
                                        Quantity.UnitSystem.METRIC, feed.least().get()),
                                feed.by().orElseThrow().duty()),
                        "",
                        "  ")));
        return text.toString();
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

    private static List<String> listed(List<Judgement.Key> keys) {
        return keys.stream().map(FitRows::listed).toList();
    }

    @Override
    public TextTable table() {
        return FitRows.all(wear.fits());
    }

    @Override
    public Object json() {
        return WearRecord.of(circuit, build, wear);
    }

    @Override
    public boolean complete() {
        return wear.unsolved().isEmpty();
    }
}
