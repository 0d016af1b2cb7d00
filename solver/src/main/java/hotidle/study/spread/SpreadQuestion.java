package hotidle.study.spread;

import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is asked: how often the margins of a build hold, with the sizes that nobody measured drawn as they may lie.
 *
 * @param build   the build
 * @param sizes   that are drawn, each on its own
 * @param duties  names of the duty points at which units are judged, each at its own speed
 * @param samples units drawn
 * @param rows    rows of the design that tells which sizes drive the answers, {@link SobolSums}: each takes as many units as there
 *                are sizes, and two
 * @param seed    of all draws
 */
public record SpreadQuestion(
        Adjustable build, List<SizePrior> sizes, List<String> duties, int samples, int rows, long seed) {

    private static final double HALF = 0.5;

    public SpreadQuestion {
        sizes = List.copyOf(sizes);
        duties = List.copyOf(duties);
    }

    /** The unit with its drawn sizes at some shares of all that they may be; empty where the sizes cannot go together. */
    Optional<Transmission> unit(double[] shares) {
        Map<String, Double> drawn = new HashMap<>();
        for (int i = 0; i < shares.length; i++) {
            drawn.put(sizes.get(i).size().name(), sizes.get(i).quantile(shares[i]));
        }
        return build.with(drawn);
    }

    /** The unit whose drawn sizes are all at their median but for some; empty where the sizes cannot go together. */
    Optional<Transmission> medianBut(Map<String, Double> others) {
        Map<String, Double> all = new HashMap<>();
        sizes.forEach(size -> all.put(size.size().name(), size.quantile(HALF)));
        all.putAll(others);
        return build.with(all);
    }

    /** The unit whose drawn sizes are all at their median; as the build has it where those cannot go together. */
    Transmission median() {
        return medianBut(Map.of()).orElse(build.unit());
    }
}
