package hotidle.study;

import hotidle.assess.Margin;
import hotidle.assess.Roles;
import hotidle.network.Placed;
import hotidle.part.Bushing;
import hotidle.study.search.SignChange;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How tight a fit may be that lets oil through to the film of the hub bushing: what leaks there feeds the film, so that the
 * clearance has a least size too.
 *
 * @param dimension the size, of a part at the space that the bushing closes
 * @param least     at which the film gets the oil that a full one needs, at every duty point where the build gives it that [m];
 *                  empty where it gets it down to {@code searched}, or at no duty point as it is
 * @param by        duty point that decides
 * @param searched  size down to which was searched [m]
 */
public record FilmFeed(WearSize dimension, Optional<Double> least, Optional<Judgement.Key> by, double searched) {

    /** A fit is tried tighter by this many times what it may wear, as far as that is possible. */
    private static final double TIGHT = 2;

    /** Sizes are narrowed down to this share of what it may wear [-]. */
    private static final double NARROW = 1e-3;

    /** Of all fits of a build that let oil to the bushing's film and let more through as they wear. */
    static List<FilmFeed> study(Adjustable build, BoundarySearch.Probe now) {
        Set<Judgement.Key> fed = now.found().entrySet().stream()
                .filter(entry -> entry.getKey().kind() == Margin.Kind.FILM_OIL)
                .filter(entry -> entry.getValue().headroom() >= 0)
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(java.util.LinkedHashSet::new));
        List<FilmFeed> found = new ArrayList<>();
        for (WearSize size : sizes(build)) {
            found.add(new FeedSearch(build, size, fed, now).run());
        }
        return found;
    }

    private static List<WearSize> sizes(Adjustable build) {
        Optional<Placed> hub = Roles.of(build.unit()).hub();
        if (hub.isEmpty()) {
            return List.of();
        }
        String behind = hub.get().nodes().get(0);
        Set<String> feeding = build.unit().network().parts().stream()
                .filter(placed ->
                        !(placed.part() instanceof Bushing) && placed.nodes().contains(behind))
                .map(Placed::name)
                .collect(Collectors.toSet());
        return build.dimensions().stream()
                .filter(size -> feeding.contains(size.part()) && size.allowance() > 0)
                .toList();
    }

    /** One search from the build's size down. */
    private record FeedSearch(Adjustable build, WearSize size, Set<Judgement.Key> fed, BoundarySearch.Probe now) {

        FilmFeed run() {
            if (fed.isEmpty()) {
                return new FilmFeed(size, Optional.empty(), Optional.empty(), size.value());
            }
            double narrow = NARROW * size.allowance();
            double tight = size.value() - TIGHT * size.allowance();
            while (build.with(size, tight).isEmpty() && size.value() - tight > narrow) {
                tight = (size.value() + tight) / 2;
            }
            Map<Judgement.Key, Double> ends = headrooms(tight);
            OptionalDouble least = least(ends);
            if (least.isEmpty() || least.getAsDouble() >= 0) {
                return new FilmFeed(size, Optional.empty(), Optional.empty(), tight);
            }
            SignChange search = new SignChange(
                    size.value(),
                    fed.stream()
                            .mapToDouble(key -> now.found().get(key).headroom())
                            .min()
                            .orElseThrow(),
                    tight,
                    least.getAsDouble(),
                    narrow);
            Map<Judgement.Key, Double> failing = ends;
            while (search.open()) {
                double tried = search.next();
                Map<Judgement.Key, Double> here = headrooms(tried);
                double worst = least(here).orElse(Double.NEGATIVE_INFINITY);
                search.tell(tried, worst);
                failing = worst < 0 && !here.isEmpty() ? here : failing;
            }
            Optional<Judgement.Key> by = failing.entrySet().stream()
                    .min(Map.Entry.comparingByValue())
                    .map(Map.Entry::getKey);
            return new FilmFeed(size, Optional.of(search.holds()), by, tight);
        }

        private static OptionalDouble least(Map<Judgement.Key, Double> headrooms) {
            return headrooms.values().stream().mapToDouble(value -> value).min();
        }

        /** Of the duty points that are fed in the build; one that is not found any more is missing. */
        private Map<Judgement.Key, Double> headrooms(double tried) {
            Map<Judgement.Key, Double> found = new java.util.LinkedHashMap<>();
            Optional<Transmission> unit = build.with(size, tried);
            for (Judgement.Key key : fed) {
                unit.flatMap(made -> Optional.ofNullable(now.chains()
                                .get(key.duty())
                                .branch()
                                .margins(made, Set.of(key))
                                .get(key)))
                        .ifPresent(margin -> found.put(key, margin.headroom()));
            }
            return found;
        }
    }
}
