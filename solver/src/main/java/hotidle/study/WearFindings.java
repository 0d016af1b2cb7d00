package hotidle.study;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What the wear of a build comes to.
 *
 * @param tightest fits that take a limit away alone, the one with least wear left first; scores and nicks, which are no length, last
 * @param tooLoose fits that take a limit away before they reach their written wear limit, the one that does it earliest on its way there
 *                 first
 * @param written  how many of the fits that were looked at have a written limit
 * @param fails    the limit that fails before anything wears; where there is one, no wear is left
 */
public record WearFindings(
        List<Wear.WornFit> tightest, List<Wear.WornFit> tooLoose, long written, Optional<Judgement.Key> fails) {

    public WearFindings {
        tightest = List.copyOf(tightest);
        tooLoose = List.copyOf(tooLoose);
    }

    /** Of a wear that was found. */
    static WearFindings of(Wear wear) {
        List<Wear.WornFit> gone =
                wear.fits().stream().filter(fit -> fit.size().isPresent()).toList();
        return new WearFindings(
                gone.stream()
                        .sorted(Comparator.comparing(
                                        (Wear.WornFit fit) -> fit.dimension().scores())
                                .thenComparingDouble(Wear.WornFit::left))
                        .toList(),
                gone.stream()
                        .filter(fit -> fit.dimension().limit().isPresent() && fit.limitShare() < 1)
                        .sorted(Comparator.comparingDouble(Wear.WornFit::limitShare))
                        .toList(),
                wear.fits().stream()
                        .filter(fit -> fit.dimension().limit().isPresent())
                        .count(),
                wear.already().stream().findFirst());
    }
}
