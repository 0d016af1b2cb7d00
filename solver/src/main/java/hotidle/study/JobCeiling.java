package hotidle.study;

import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import hotidle.transmission.Workshop;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** The highest set pressure at which all jobs together keep every limit. */
record JobCeiling(Workshop shop, SetPressure.By by, JobTrial trial, List<Double> speeds) {

    /** Pressures tried: 400 psi down to 60 psi in steps of 20 psi, those between which a window is looked for (chosen) [Pa]. */
    private static final double HIGHEST = 400 * SetPressure.PSI;

    private static final double LOWEST = 60 * SetPressure.PSI;
    private static final double STEP = 20 * SetPressure.PSI;

    /** Narrowed down to this share of the pressure, as a window is (chosen) [-]. */
    private static final double NARROW = 2e-4;

    Optional<JobStudy.Ceiling> find() {
        Optional<Transmission> done = shop.after(shop.jobs());
        if (done.isEmpty() || done.get().commanded().isEmpty()) {
            return Optional.empty();
        }
        Optional<Transmission> above = Optional.empty();
        double over = HIGHEST;
        for (double pressure = HIGHEST; pressure > LOWEST - STEP / 2; pressure -= STEP) {
            Optional<Transmission> unit = set(done.get(), pressure);
            if (unit.isPresent() && keeps(unit.get())) {
                return Optional.of(
                        above.isEmpty()
                                ? ceiling(pressure, Optional.empty())
                                : narrowed(done.get(), unit.get(), pressure, above.get(), over));
            }
            above = unit;
            over = pressure;
        }
        return Optional.of(new JobStudy.Ceiling(OptionalDouble.empty(), Optional.empty(), LOWEST, HIGHEST));
    }

    /** Empty where it cannot be set so. */
    private Optional<Transmission> set(Transmission unit, double pressure) {
        try {
            return Optional.of(SetPressure.of(unit, pressure, by));
        } catch (IllegalArgumentException impossible) {
            return Optional.empty();
        }
    }

    private boolean keeps(Transmission unit) {
        return !trial.fails(unit) && JobTrial.fate(trial.judged(unit)) == JobTrial.TrialFate.KEEPS;
    }

    private static JobStudy.Ceiling ceiling(double pressure, Optional<Judgement.Key> endedBy) {
        return new JobStudy.Ceiling(OptionalDouble.of(pressure), endedBy, LOWEST, HIGHEST);
    }

    private JobStudy.Ceiling narrowed(
            Transmission done, Transmission under, double pressure, Transmission above, double over) {
        BoundarySearch search = new BoundarySearch(speeds);
        BoundarySearch.Probe holds = end(search, under, pressure);
        BoundarySearch.Probe fails = end(search, above, over);
        Set<Judgement.Key> gone = BoundarySearch.gone(
                fails.found(), new LinkedHashSet<>(holds.found().keySet()));
        if (gone.isEmpty()) {
            return ceiling(pressure, Optional.empty());
        }
        BoundarySearch.Boundary boundary = search.narrow(other -> set(done, other), holds, fails, gone, NARROW * over);
        return ceiling(boundary.holds(), Optional.of(boundary.gone().get(0)));
    }

    private static BoundarySearch.Probe end(BoundarySearch search, Transmission unit, double pressure) {
        Map<String, DutyChain> chains = search.chains(unit);
        return new BoundarySearch.Probe(pressure, search.all(unit, chains), chains);
    }
}
