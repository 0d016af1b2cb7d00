package hotidle.study;

import hotidle.assess.Margin;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Fits of a build that are worn, yet within the limits written for them, and bring down the limit that is told first: with them new, and
 * all else as it is, that limit would not fail.
 *
 * @param build its name
 * @param first the limit
 * @param sizes those fits, at least one: those of the part whose limit it is, or else all of the build
 */
public record LooseWritten(String build, Judgement.Key first, List<WearSize> sizes) {

    public LooseWritten {
        sizes = List.copyOf(sizes);
    }

    /**
     * Looks for them; solves one driving condition where there may be any.
     *
     * @param judged the build as it is
     * @param speeds over which the hub's film and load are searched [rev/s], as they were for it
     * @return empty where the first limit does not fail, where no fit is worn within its limit, and where that is not why
     */
    public static Optional<LooseWritten> of(Adjustable build, JudgedBuild judged, List<Double> speeds) {
        return judged.verdict()
                .first()
                .filter(first -> first.margin().verdict() == Margin.Verdict.FAILS)
                .flatMap(first -> of(build, judged, first, speeds));
    }

    private static Optional<LooseWritten> of(
            Adjustable build, JudgedBuild judged, BuildVerdict.FirstLimit first, List<Double> speeds) {
        List<WearSize> within =
                build.dimensions().stream().filter(LooseWritten::isWithin).toList();
        List<WearSize> own = within.stream()
                .filter(size -> size.part().equals(first.margin().part()))
                .toList();
        List<WearSize> sizes = own.isEmpty() ? within : own;
        DutyPoint duty = judged.unit().duty(first.duty()).orElseThrow();
        Judgement.Key key = Judgement.Key.of(duty, first.margin());
        return sizes.isEmpty() || !holds(Judgement.of(made(build, sizes), duty, speeds), key)
                ? Optional.empty()
                : Optional.of(new LooseWritten(judged.unit().build(), key, sizes));
    }

    /** Worn, and not past the limit that is written for it. */
    private static boolean isWithin(WearSize size) {
        return size.worn()
                && size.limit().isPresent()
                && (size.value() - size.limit().getAsDouble()) * size.allowance() <= 0;
    }

    private static Transmission made(Adjustable build, List<WearSize> sizes) {
        Map<String, Double> fresh = sizes.stream().collect(Collectors.toMap(WearSize::name, WearSize::fresh));
        return build.remake().with(fresh);
    }

    private static boolean holds(Judgement judged, Judgement.Key key) {
        return judged.margins().stream()
                .filter(margin -> margin.kind() == key.kind() && margin.part().equals(key.part()))
                .findFirst()
                .map(margin -> margin.verdict() != Margin.Verdict.FAILS)
                .orElse(false);
    }
}
