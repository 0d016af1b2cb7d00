package hotidle.study;

import hotidle.assess.Assessment;
import hotidle.assess.Figures;
import hotidle.assess.Margin;
import hotidle.network.Conditions;
import hotidle.newton.Series;
import hotidle.part.SealingRing;
import hotidle.result.Solution;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What each repair wins back at a duty point, and in which order repairs are best done.
 *
 * @param before as the build is
 * @param alone  each repair on its own, the best first; those that win nothing are left out
 * @param order  each next repair on top of those before it, the one that then wins most
 * @param all    with all repairs done, those that win nothing too; empty where no fit is worn or the state is not found
 */
public record Repairs(Effect before, List<Step> alone, List<Step> order, Optional<Effect> all) {

    /** A gain below this share is nothing: rounding (ours) [-]. */
    private static final double NOTHING = 1e-6;

    /**
     * A repair: sizes of one part brought back to new.
     *
     * @param name       of the part and key, or of the part alone where several sizes are one job
     * @param dimensions what is restored
     */
    public record Repair(String name, List<WearSize> dimensions) {
        public Repair {
            dimensions = List.copyOf(dimensions);
        }

        /** Whether it takes scores and nicks away. */
        public boolean takesScoresAway() {
            return dimensions.stream().anyMatch(WearSize::scores);
        }

        /** The sizes that it leaves behind. */
        public Map<String, Double> sizes() {
            Map<String, Double> sizes = new LinkedHashMap<>();
            dimensions.forEach(dimension -> sizes.put(dimension.name(), dimension.fresh()));
            return sizes;
        }
    }

    /**
     * What a unit does at the duty.
     *
     * @param line      line pressure [Pa]
     * @param set       set pressure commanded [Pa]; empty where nothing is commanded
     * @param regulated whether the regulator holds it
     * @param lube      flow of all lube branches [m³/s]
     * @param lost      slip and leaks [m³/s]
     * @param starved   what gets less than it needs, of converter, cooler and lube branches
     * @param served    what the one of those gets that is served least, over what it needs [-], 0 to 1; 1 where none is short
     * @param onset     onset of regulation [rev/s]; empty where there is none
     */
    public record Effect(
            double line,
            OptionalDouble set,
            boolean regulated,
            double lube,
            double lost,
            List<String> starved,
            double served,
            OptionalDouble onset) {

        public Effect {
            starved = List.copyOf(starved);
        }

        /** Line pressure up to the set pressure [Pa]: what is above it is no gain. */
        public double held() {
            return Math.min(line, set.orElse(line));
        }
    }

    /** A repair and what the unit does after it. */
    public record Step(Repair repair, Effect after) {}

    /**
     * More line pressure first, up to the set pressure; then more of what the consumer served least needs; then less oil lost. A line
     * that is held and consumers that have what they need win nothing by more of it.
     */
    static final Comparator<Effect> BETTER = Comparator.comparingDouble(Effect::held)
            .thenComparingDouble(Effect::served)
            .thenComparing(Comparator.comparingDouble(Effect::lost).reversed());

    public Repairs {
        alone = List.copyOf(alone);
        order = List.copyOf(order);
    }

    /** All repairs that a build offers: fits that are worn beyond new, the sizes of one set of rings together. */
    public static List<Repair> of(Adjustable build) {
        Map<String, List<WearSize>> jobs = new LinkedHashMap<>();
        for (WearSize dimension : build.dimensions()) {
            if (dimension.worn()) {
                boolean rings = build.unit()
                                .network()
                                .part(dimension.part())
                                .orElseThrow()
                                .part()
                        instanceof SealingRing;
                jobs.computeIfAbsent(rings ? dimension.part() : dimension.name(), name -> new ArrayList<>())
                        .add(dimension);
            }
        }
        List<Repair> repairs = new ArrayList<>();
        jobs.forEach((name, dimensions) -> repairs.add(new Repair(name, dimensions)));
        return repairs;
    }

    /**
     * Tries all repairs.
     *
     * @param speeds over which the onset of regulation is searched [rev/s], rising
     * @param most   repairs that are put in order; the onset is searched for these
     * @param step   called after each repair that was tried, from any thread
     * @return empty where the build itself is not solved at the duty
     */
    public static Optional<Repairs> study(
            Adjustable build, DutyPoint duty, List<Double> speeds, int most, Runnable step) {
        return AtDuty.solved(build.unit(), duty).state().map(state -> study(build, duty, state, speeds, most, step));
    }

    /** The same of a build whose state at the duty is known. */
    static Repairs study(
            Adjustable build, DutyPoint duty, Solution state, List<Double> speeds, int most, Runnable step) {
        Bay bay = Bay.of(build.unit(), duty, speeds, Optional.of(state));
        Effect before = bay.effect(build.unit(), state, true);
        List<Repair> offered = of(build);
        List<Step> useful = offered.parallelStream()
                .flatMap(repair -> {
                    Optional<Effect> after = build.with(repair.sizes()).flatMap(unit -> bay.effect(unit, true));
                    step.run();
                    return after.stream().map(effect -> new Step(repair, effect));
                })
                .filter(one -> wins(before, one.after()))
                .sorted(Comparator.comparing(Step::after, BETTER).reversed())
                .toList();
        return new Repairs(before, useful, order(build, bay, useful, most, step), renewed(build, bay, offered));
    }

    private static Optional<Effect> renewed(Adjustable build, Bay bay, List<Repair> offered) {
        Map<String, Double> sizes = new LinkedHashMap<>();
        offered.forEach(repair -> sizes.putAll(repair.sizes()));
        return sizes.isEmpty() ? Optional.empty() : build.with(sizes).flatMap(unit -> bay.effect(unit, false));
    }

    private static boolean wins(Effect before, Effect after) {
        return after.held() > before.held() * (1 + NOTHING)
                || after.served() > before.served() * (1 + NOTHING)
                || after.lost() < before.lost() * (1 - NOTHING);
    }

    private static List<Step> order(Adjustable build, Bay bay, List<Step> useful, int most, Runnable step) {
        List<Step> order = new ArrayList<>();
        List<Repair> open = new ArrayList<>(useful.stream().map(Step::repair).toList());
        Map<String, Double> done = new LinkedHashMap<>();
        while (!open.isEmpty() && order.size() < most) {
            Optional<Step> best = open.parallelStream()
                    .flatMap(repair -> build
                            .with(with(done, repair))
                            .flatMap(unit -> bay.effect(unit, false))
                            .map(effect -> new Step(repair, effect))
                            .stream())
                    .max(Comparator.comparing(Step::after, BETTER));
            if (best.isEmpty()) {
                break;
            }
            Repair chosen = best.get().repair();
            done.putAll(chosen.sizes());
            open.remove(chosen);
            order.add(new Step(
                    chosen,
                    build.with(done)
                            .flatMap(unit -> bay.effect(unit, true))
                            .orElse(best.get().after())));
            step.run();
        }
        return order;
    }

    private static Map<String, Double> with(Map<String, Double> done, Repair repair) {
        Map<String, Double> sizes = new LinkedHashMap<>(done);
        sizes.putAll(repair.sizes());
        return sizes;
    }

    /**
     * Solves units of one shape, each from what the first of them does.
     *
     * @param own     its state at the duty; empty where none is found
     * @param slowest the same at the slowest speed
     */
    record Bay(DutyPoint duty, List<Double> speeds, Optional<Solution> own, Optional<Solution> slowest) {

        /** @param own its state at the duty, where it is known */
        static Bay of(Transmission unit, DutyPoint duty, List<Double> speeds, Optional<Solution> own) {
            Conditions slow = unit.conditions(duty).atSpeed(speeds.get(0));
            Optional<Solution> slowest =
                    unit.commanded().isEmpty() ? Optional.empty() : solved(new Series(unit.network()), slow);
            return new Bay(duty, speeds, own, slowest);
        }

        private static Optional<Solution> solved(Series series, Conditions conditions) {
            return series.solve(conditions) ? Optional.of(series.state()) : Optional.empty();
        }

        /** What one of them does; empty where its state is not found. */
        Optional<Effect> effect(Transmission unit, boolean onset) {
            Series series = new Series(unit.network());
            own.ifPresent(series::restart);
            return solved(series, unit.conditions(duty)).map(state -> effect(unit, state, onset));
        }

        Effect effect(Transmission unit, Solution state, boolean onset) {
            Assessment assessed = Assessment.of(unit, duty, state);
            Figures figures = assessed.figures();
            List<Margin> starved = assessed.starved();
            return new Effect(
                    figures.line(),
                    figures.set(),
                    unit.commanded().isPresent() && figures.regulated(),
                    figures.lube(),
                    figures.lost(),
                    starved.stream().map(Margin::part).toList(),
                    starved.stream()
                            .mapToDouble(margin -> Math.max(0, margin.value().orElse(0) / margin.needed()))
                            .min()
                            .orElse(1),
                    onset && unit.commanded().isPresent()
                            ? SpeedSweep.rising(unit, duty, speeds, slowest).onset()
                            : OptionalDouble.empty());
        }
    }
}
