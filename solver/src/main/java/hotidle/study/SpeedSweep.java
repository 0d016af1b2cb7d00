package hotidle.study;

import hotidle.assess.Figures;
import hotidle.assess.Roles;
import hotidle.network.Conditions;
import hotidle.network.Placed;
import hotidle.newton.SteadySolver;
import hotidle.part.Bushing;
import hotidle.part.SpoolValve;
import hotidle.result.Outcome;
import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * A unit over engine speed at one duty, rising and then falling, each state started from the one before it.
 *
 * @param unit    the unit
 * @param duty    range, temperatures, torque
 * @param rising  outcome at each speed, in rising speed
 * @param falling the same speeds swept downwards, given here in rising speed too
 * @param shown   the states that figures are taken from: the rising or the falling ones, or each solved from cold
 */
public record SpeedSweep(
        Transmission unit, DutyPoint duty, List<Outcome> rising, List<Outcome> falling, List<Outcome> shown) {

    /** Where each shown state was started from; where a circuit has two steady states, it decides which one is found. */
    public enum From {
        COLD,
        RISING,
        FALLING
    }

    /** Two sweeps differ where line pressures or positions differ by more than this share. */
    private static final double SAME = 1e-6;

    /** Crossing speeds are narrowed down to this [rev/s]: half a revolution a minute. */
    private static final double CROSSING = 0.5 / 60;

    public SpeedSweep {
        rising = List.copyOf(rising);
        falling = List.copyOf(falling);
        shown = List.copyOf(shown);
    }

    /** Sweeps and shows the rising sweep; speeds [rev/s] rise. */
    public static SpeedSweep run(Transmission unit, DutyPoint duty, List<Double> speeds) {
        return run(unit, duty, speeds, From.RISING);
    }

    /**
     * Sweeps.
     *
     * @param speeds engine speeds [rev/s], rising
     * @param from   which states are shown
     */
    public static SpeedSweep run(Transmission unit, DutyPoint duty, List<Double> speeds, From from) {
        SteadySolver solver = new SteadySolver(unit.network());
        Conditions conditions = unit.conditions(duty);
        List<Outcome> rising = pass(solver, conditions, speeds);
        List<Double> down = new ArrayList<>(speeds);
        Collections.reverse(down);
        List<Outcome> falling = new ArrayList<>(pass(solver, conditions, down));
        Collections.reverse(falling);
        List<Outcome> shown =
                switch (from) {
                    case COLD ->
                        speeds.stream()
                                .map(speed -> solver.solve(conditions.atSpeed(speed)))
                                .toList();
                    case RISING -> rising;
                    case FALLING -> falling;
                };
        return new SpeedSweep(unit, duty, rising, falling, shown);
    }

    /** The rising sweep alone; the falling one stands in it as the same. */
    static SpeedSweep rising(Transmission unit, DutyPoint duty, List<Double> speeds) {
        List<Outcome> rising = pass(new SteadySolver(unit.network()), unit.conditions(duty), speeds);
        return new SpeedSweep(unit, duty, rising, rising, rising);
    }

    private static List<Outcome> pass(SteadySolver solver, Conditions conditions, List<Double> speeds) {
        List<Outcome> outcomes = new ArrayList<>();
        Optional<Solution> before = Optional.empty();
        for (double speed : speeds) {
            Outcome outcome = solver.solve(conditions.atSpeed(speed), before);
            outcomes.add(outcome);
            before = outcome.state().isPresent() ? outcome.state() : before;
        }
        return outcomes;
    }

    /** States that were found, shown. */
    public List<Solution> states() {
        return shown.stream().flatMap(outcome -> outcome.state().stream()).toList();
    }

    /**
     * Onset of regulation [rev/s]: the lowest speed from which line pressure is at least the set pressure commanded, with the
     * regulator off its seat, at all higher speeds asked. Empty where there is none, where a state above is not known, and where
     * nothing is commanded.
     */
    public OptionalDouble onset() {
        return from(state -> Figures.of(unit, state).regulated());
    }

    /** Lowest speed from which the secondary unloads at all higher speeds [rev/s]. */
    public OptionalDouble unloading() {
        return openFrom(Roles.of(unit).unloading());
    }

    /** Lowest speed from which the line is bypassed at all higher speeds [rev/s]. */
    public OptionalDouble bypassing() {
        return openFrom(Roles.of(unit).bypass());
    }

    private OptionalDouble openFrom(Optional<SpoolValve.Opening> opening) {
        return opening.isEmpty()
                ? OptionalDouble.empty()
                : from(state -> state.own(unit.command().regulator(), "position")
                        > opening.get().edge());
    }

    /** Lowest speed from which a condition holds at all higher speeds asked, narrowed down between two of them. */
    private OptionalDouble from(Predicate<Solution> holds) {
        int first = shown.size();
        while (first > 0 && shown.get(first - 1).state().filter(holds).isPresent()) {
            first--;
        }
        if (first == shown.size()) {
            return OptionalDouble.empty();
        }
        double above = shown.get(first).conditions().speed();
        if (first == 0 || shown.get(first - 1).state().isEmpty()) {
            return OptionalDouble.of(above);
        }
        return OptionalDouble.of(narrow(
                shown.get(first - 1).conditions().speed(),
                shown.get(first).state().orElseThrow(),
                holds));
    }

    private double narrow(double below, Solution above, Predicate<Solution> holds) {
        SteadySolver solver = new SteadySolver(unit.network());
        double low = below;
        Solution high = above;
        while (high.conditions().speed() - low > CROSSING) {
            double middle = (low + high.conditions().speed()) / 2;
            Optional<Solution> state = solver.solve(high.conditions().atSpeed(middle), Optional.of(high))
                    .state();
            if (state.filter(holds).isPresent()) {
                high = state.get();
            } else {
                low = middle;
            }
        }
        return high.conditions().speed();
    }

    /** The state with the thinnest known film in the hub bushing; empty without a hub, or where all are in metal contact. */
    public Optional<Solution> thinnestFilm() {
        Optional<Placed> hub = Roles.of(unit).hub();
        return hub.flatMap(placed -> states().stream()
                .filter(state ->
                        state.measure(placed.name(), Bushing.LEAST_FILM).isPresent())
                .min(java.util.Comparator.comparingDouble(state ->
                        state.measure(placed.name(), Bushing.LEAST_FILM).orElseThrow())));
    }

    /** Speeds [rev/s] at which the hub runs in metal contact, its film not known. */
    public List<Double> contactSpeeds() {
        Optional<Placed> hub = Roles.of(unit).hub();
        return states().stream()
                .filter(state -> hub.filter(placed -> state.measure(placed.name(), Bushing.METAL_CONTACT)
                                        .orElseThrow()
                                > 0)
                        .isPresent())
                .map(state -> state.conditions().speed())
                .toList();
    }

    /**
     * A speed at which the rising and the falling sweep end in different states.
     *
     * @param speed   [rev/s]
     * @param part    the part with two positions, or the line
     * @param rising  its position or pressure, rising
     * @param falling the same, falling
     */
    public record Difference(double speed, String part, double rising, double falling) {}

    /** Speeds at which both sweeps were solved and differ. */
    public List<Difference> differences() {
        List<Difference> found = new ArrayList<>();
        for (int i = 0; i < rising.size(); i++) {
            if (rising.get(i).state().isPresent() && falling.get(i).state().isPresent()) {
                difference(rising.get(i).state().get(), falling.get(i).state().get())
                        .ifPresent(found::add);
            }
        }
        return found;
    }

    private Optional<Difference> difference(Solution up, Solution down) {
        Difference worst = null;
        double most = SAME;
        for (String part : up.states().keySet()) {
            for (String state : up.states().get(part).keySet()) {
                double one = up.own(part, state);
                double other = down.own(part, state);
                double share = Math.abs(one - other) / Math.max(Math.max(Math.abs(one), Math.abs(other)), 1e-6);
                if (share > most) {
                    most = share;
                    worst = new Difference(up.conditions().speed(), part, one, other);
                }
            }
        }
        return Optional.ofNullable(worst);
    }
}
