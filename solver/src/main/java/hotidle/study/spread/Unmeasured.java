package hotidle.study.spread;

import hotidle.transmission.Adjustable;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which sizes of a build no gauge has read, and how each may lie.
 *
 * <pre>
 * Fits      sizes with a wear limit: it says how far they wear. Scores and nicks of a pump's mesh have none and no gauge reads them.
 *           All other sizes are taken as written
 * Measured  a build, or a measurement sheet, takes what was measured: known
 * Made      a build says that it is new again or another size: {@link SizePrior#sound}
 * Written   no build says anything of it: {@link SizePrior#worn} where any fit of the build is worn further than a sound one is made,
 *           for all have served alike; {@link SizePrior#sound} where none is
 * </pre>
 */
public final class Unmeasured {

    private Unmeasured() {}

    /** How a size that no build says anything of is taken. */
    public enum FitState {
        SOUND("sound"),
        WORN("worn");

        private final String word;

        FitState(String word) {
            this.word = word;
        }

        /** The word that users read. */
        public String word() {
            return word;
        }
    }

    /** What is not measured of a build, in the order of its sizes. */
    public static List<SizePrior> of(Adjustable build) {
        return of(build, taken(build));
    }

    /** The same with what no build says anything of taken as it is said here. */
    public static List<SizePrior> of(Adjustable build, FitState written) {
        List<SizePrior> priors = new ArrayList<>();
        for (WearSize size : build.dimensions()) {
            prior(size, written)
                    .filter(prior -> prior.basis() != SizePrior.Basis.MEASURED)
                    .ifPresent(priors::add);
        }
        return List.copyOf(priors);
    }

    /** How a size may lie, a measured one too; empty where it is taken as written. */
    public static Optional<SizePrior> prior(WearSize size, FitState written) {
        if (size.scores()) {
            return size.value() > 0 ? Optional.of(SizePrior.assumed(size)) : Optional.empty();
        }
        if (size.limit().isEmpty() || size.allowance() == 0) {
            return Optional.empty();
        }
        return Optional.of(
                switch (size.origin()) {
                    case MEASURED -> SizePrior.measured(size);
                    case MADE -> SizePrior.sound(size);
                    case WRITTEN -> written == FitState.WORN ? SizePrior.worn(size) : SizePrior.sound(size);
                });
    }

    /** How what no build says anything of is taken: worn where any fit is further worn than a sound one may be made. */
    public static FitState taken(Adjustable build) {
        return build.dimensions().stream().anyMatch(Unmeasured::served) ? FitState.WORN : FitState.SOUND;
    }

    private static boolean served(WearSize size) {
        return size.limit().isPresent()
                && size.worn()
                && Math.abs(size.value() - size.fresh()) > SizePrior.TOLERANCE * Math.abs(size.allowance());
    }
}
