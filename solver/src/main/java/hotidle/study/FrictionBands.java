package hotidle.study;

import hotidle.result.Solution;
import hotidle.transmission.Transmission;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The friction bands of the states of a study, each solved once; sweeps and duties side by side, which tell each other nothing. */
public final class FrictionBands {

    private final Map<String, Boolean> asked = new ConcurrentHashMap<>();
    private final Map<Solution, FrictionBand> found = Collections.synchronizedMap(new IdentityHashMap<>());

    private FrictionBands() {}

    /** Those of the states at the duties' own speeds. */
    public static FrictionBands of(Comparison comparison) {
        FrictionBands bands = new FrictionBands();
        comparison.cells().parallelStream()
                .forEach(cell ->
                        bands.add(cell.sweep(), cell.outcome().state().stream().toList()));
        return bands;
    }

    /** Those of the states that sweeps show, those that are looked for among them. */
    public static FrictionBands of(List<SpeedSweep> sweeps) {
        FrictionBands bands = new FrictionBands();
        sweeps.parallelStream().forEach(sweep -> {
            bands.add(sweep, sweep.states());
            bands.add(sweep, lookedFor(sweep));
        });
        return bands;
    }

    private static List<Solution> lookedFor(SpeedSweep sweep) {
        return sweep.lookedFor().stream()
                .flatMap(one -> one.outcome().state().stream())
                .toList();
    }

    private void add(SpeedSweep sweep, List<Solution> states) {
        Transmission unit = sweep.unit();
        String line = sweep.roles().line();
        if (asked.computeIfAbsent(unit.build(), build -> FrictionBand.asked(unit))) {
            FrictionBand.Search search = new FrictionBand.Search(unit, line);
            states.forEach(state -> search.of(state).ifPresent(band -> found.put(state, band)));
        }
    }

    /** Whether a spool of one of the units has friction. */
    public boolean asked(Transmission unit) {
        return asked.getOrDefault(unit.build(), false);
    }

    /** The band of a state; empty where its spools are free, or an end of the band is not found. */
    public Optional<FrictionBand> of(Solution state) {
        return Optional.ofNullable(found.get(state));
    }
}
