package hotidle.study;

import hotidle.part.Bushing;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;

/**
 * How far fits may wear before the first margin is gone: each alone, and all together in proportion to their wear limits.
 *
 * @param held    number of margins that are known to hold in the build as it is
 * @param already margins that fail in the build as it is; they are left out of what follows
 * @param fits    each fit alone, in the order of the build
 * @param together all fits that have a limit, wearing from new in proportion; empty where none has one
 * @param undecided margins of which it is not known whether they hold in the build as it is: they end no wear
 * @param feeds    how tight fits may be that feed the film of the hub bushing
 * @param unsolved duties at which a state looked for was not found, so that a limit counts as gone there that is not known
 */
public record Wear(
        int held,
        List<Judgement.Key> already,
        List<WornFit> fits,
        Optional<Together> together,
        List<Judgement.Key> undecided,
        List<FilmFeed> feeds,
        List<String> unsolved) {

    /** A fit is worn up to this many times its allowance beyond what the build has, no further (chosen). */
    private static final double FAR = 8;

    /** Sizes are narrowed down to this share of the wear, below what is measured (chosen) [-]. */
    private static final double NARROW = 1e-3;

    /**
     * A fit alone.
     *
     * @param dimension the size that wears
     * @param size      at which all margins that hold in the build still hold [m]; empty where none is gone up to {@code searched}
     * @param gone      margins that go first, at that size
     * @param searched  size up to which was searched [m]
     * @param published size that service manuals allow of bushings like it, whatever the film: {@link Bushing#WEAR_ALLOWANCE}; empty
     *                  for other fits
     */
    public record WornFit(
            WearSize dimension,
            Optional<Double> size,
            List<Judgement.Key> gone,
            double searched,
            OptionalDouble published) {
        public WornFit {
            gone = List.copyOf(gone);
        }

        /** Whether the limits that are judged would let it wear further than service manuals do. */
        public boolean moreGenerous() {
            double allowed = size.orElse(searched);
            return published.isPresent()
                    && Math.abs(allowed - dimension.fresh()) > Math.abs(published.getAsDouble() - dimension.fresh());
        }

        /** What it may still wear from what the build has [m] or [m²]; only where it takes a limit away. */
        public double left() {
            return Math.abs(size.orElseThrow() - dimension.value());
        }

        /** How far on its way from new to its written limit it takes a limit away [-]; only where it does. */
        public double limitShare() {
            return (size.orElseThrow() - dimension.fresh()) / dimension.allowance();
        }
    }

    /**
     * All together: every size at new plus a share of its way to its limit.
     *
     * @param share   at which all margins that hold in the new unit still hold; empty where none is gone up to {@code searched}
     * @param gone    margins that go first
     * @param already margins that fail with all fits new
     * @param searched share up to which was searched
     */
    public record Together(
            Optional<Double> share, List<Judgement.Key> gone, List<Judgement.Key> already, double searched) {
        public Together {
            gone = List.copyOf(gone);
            already = List.copyOf(already);
        }
    }

    public Wear {
        already = List.copyOf(already);
        fits = List.copyOf(fits);
        undecided = List.copyOf(undecided);
        feeds = List.copyOf(feeds);
        unsolved = List.copyOf(unsolved);
    }

    /** What it comes to. */
    public WearFindings findings() {
        return WearFindings.of(this);
    }

    /** The sizes that are looked at: those for which a limit or a measured value is written, or that are not as new. */
    public static List<WearSize> fits(Adjustable build) {
        return build.dimensions().stream().filter(WearSize::wears).toList();
    }

    /**
     * Searches.
     *
     * @param looked fits that are looked at alone
     * @param speeds engine speeds searched for the hub's film and load [rev/s], rising
     * @param step   called after each fit and after all together, from any thread
     */
    public static Wear study(Adjustable build, List<WearSize> looked, List<Double> speeds, Runnable step) {
        BoundarySearch limiting = new BoundarySearch(speeds);
        // filled from any thread, read in the order of the alphabet
        Set<String> unsolved = new ConcurrentSkipListSet<>();
        BoundarySearch.Probe now = start(build.unit(), limiting.chains(build.unit()), unsolved);
        Set<Judgement.Key> all = now.found().keySet();
        Set<Judgement.Key> already = BoundarySearch.gone(now.found(), all);
        Set<Judgement.Key> holding = new LinkedHashSet<>(all);
        holding.removeAll(already);
        List<WornFit> fits = looked.parallelStream()
                .map(dimension -> {
                    WornFit fit = fit(limiting, build, dimension, holding, now, unsolved);
                    step.run();
                    return fit;
                })
                .toList();
        Optional<Together> together = together(limiting, build, now, unsolved);
        step.run();
        List<Judgement.Key> undecided = BoundarySearch.undecided(now.found());
        return new Wear(
                holding.size() - undecided.size(),
                List.copyOf(already),
                fits,
                together,
                undecided,
                FilmFeed.study(build, now),
                List.copyOf(unsolved));
    }

    /** All margins of a unit, its chains gone on from where others stand. */
    private static BoundarySearch.Probe end(
            BoundarySearch limiting, double number, Transmission unit, Map<String, DutyChain> from) {
        Map<String, DutyChain> chains = BoundarySearch.branch(from);
        return new BoundarySearch.Probe(number, limiting.all(unit, chains), chains);
    }

    /** The same of a unit that is to be known. */
    private static BoundarySearch.Probe start(Transmission unit, Map<String, DutyChain> from, Set<String> unsolved) {
        Map<String, DutyChain> chains = BoundarySearch.branch(from);
        List<Judgement> judged = BoundarySearch.judged(unit, chains);
        judged.stream()
                .filter(one -> !one.known())
                .forEach(one -> unsolved.add(one.duty().name()));
        return new BoundarySearch.Probe(0, BoundarySearch.margins(judged), chains);
    }

    private static WornFit fit(
            BoundarySearch limiting,
            Adjustable build,
            WearSize dimension,
            Set<Judgement.Key> holding,
            BoundarySearch.Probe now,
            Set<String> unsolved) {
        OptionalDouble published = published(build, dimension);
        double allowance = dimension.allowance();
        double far = dimension.value() + FAR * allowance;
        while (build.with(dimension, far).isEmpty()
                && Math.abs(far - dimension.value()) > NARROW * Math.abs(allowance)) {
            far = (dimension.value() + far) / 2;
        }
        Optional<Transmission> worst = build.with(dimension, far);
        if (worst.isEmpty()) {
            return new WornFit(dimension, Optional.empty(), List.of(), far, published);
        }
        BoundarySearch.Probe end = end(limiting, far, worst.get(), now.chains());
        Set<Judgement.Key> gone = BoundarySearch.gone(end.found(), holding);
        if (gone.isEmpty()) {
            return new WornFit(dimension, Optional.empty(), List.of(), far, published);
        }
        double tolerance = NARROW * Math.abs(allowance);
        BoundarySearch.Probe start = new BoundarySearch.Probe(dimension.value(), now.found(), now.chains());
        BoundarySearch.Boundary boundary =
                limiting.narrow(size -> build.with(dimension, size), start, end, gone, tolerance);
        boundary.missing().forEach(key -> unsolved.add(key.duty()));
        return new WornFit(dimension, Optional.of(boundary.holds()), boundary.gone(), far, published);
    }

    private static OptionalDouble published(Adjustable build, WearSize dimension) {
        boolean bushing = build.unit()
                .network()
                .part(dimension.part())
                .filter(placed -> placed.part() instanceof Bushing)
                .isPresent();
        return bushing
                ? OptionalDouble.of(dimension.fresh() + Math.copySign(Bushing.WEAR_ALLOWANCE, dimension.allowance()))
                : OptionalDouble.empty();
    }

    private static Optional<Together> together(
            BoundarySearch limiting, Adjustable build, BoundarySearch.Probe now, Set<String> unsolved) {
        List<WearSize> limited = build.dimensions().stream()
                .filter(dimension -> dimension.limit().isPresent())
                .toList();
        Optional<Transmission> fresh = build.with(worn(build, limited, 0));
        Optional<Transmission> worst = build.with(worn(build, limited, FAR));
        if (limited.isEmpty() || fresh.isEmpty()) {
            return Optional.empty();
        }
        BoundarySearch.Probe start = start(fresh.get(), now.chains(), unsolved);
        Set<Judgement.Key> all = start.found().keySet();
        Set<Judgement.Key> already = BoundarySearch.gone(start.found(), all);
        Set<Judgement.Key> holding = new LinkedHashSet<>(all);
        holding.removeAll(already);
        BoundarySearch.Probe end = worst.map(unit -> end(limiting, FAR, unit, start.chains()))
                .orElse(new BoundarySearch.Probe(FAR, Map.of(), start.chains()));
        Set<Judgement.Key> gone = BoundarySearch.gone(end.found(), holding);
        if (gone.isEmpty()) {
            return Optional.of(new Together(Optional.empty(), List.of(), List.copyOf(already), FAR));
        }
        BoundarySearch.Boundary boundary =
                limiting.narrow(share -> build.with(worn(build, limited, share)), start, end, gone, NARROW);
        boundary.missing().forEach(key -> unsolved.add(key.duty()));
        return Optional.of(new Together(Optional.of(boundary.holds()), boundary.gone(), List.copyOf(already), FAR));
    }

    /** Fits with a limit at a share of their way from new to it, all others as new. */
    private static Map<String, Double> worn(Adjustable build, List<WearSize> limited, double share) {
        Map<String, Double> sizes = new LinkedHashMap<>();
        build.dimensions().stream()
                .filter(dimension -> !dimension.isNew())
                .forEach(dimension -> sizes.put(dimension.name(), dimension.fresh()));
        limited.forEach(dimension -> sizes.put(
                dimension.name(), dimension.fresh() + share * (dimension.limit().orElseThrow() - dimension.fresh())));
        return sizes;
    }
}
