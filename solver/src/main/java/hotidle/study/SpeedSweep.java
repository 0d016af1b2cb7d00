package hotidle.study;

import hotidle.assess.Assessment;
import hotidle.assess.Figures;
import hotidle.assess.Roles;
import hotidle.network.Conditions;
import hotidle.network.Placed;
import hotidle.newton.Series;
import hotidle.part.Bushing;
import hotidle.part.OwnState;
import hotidle.part.SpoolValve;
import hotidle.result.Outcome;
import hotidle.result.Solution;
import hotidle.study.search.SignChange;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * A unit over engine speed at one duty, rising and then falling, each state started from the one before it. Past 300 lines, since
 * what is asked of a sweep is narrowed down by states of its own chain.
 */
public final class SpeedSweep {

    private final Transmission unit;
    private final DutyPoint duty;
    private final Roles roles;
    private final List<Outcome> rising;
    private final List<Outcome> falling;
    private final List<Outcome> shown;

    /** What the shown states mean, once asked for. */
    private List<Optional<Assessment>> assessed;

    /** States at the speeds that a reader looks for, once asked for. */
    private List<ShownState> lookedFor;

    /** Crossings found so far: each takes states of its own, and a command asks for them more than once. */
    private final Map<String, OptionalDouble> crossings = new ConcurrentHashMap<>();

    /** Where each shown state was started from; where a circuit has two steady states, it decides which one is found. */
    public enum From {
        COLD,
        RISING,
        FALLING
    }

    /** Two sweeps differ where line pressures or positions differ by more than this share: a thousand times the solver's tolerance (ours) [-]. */
    private static final double SAME = 1e-6;

    /** Crossing speeds are narrowed down to this [rev/s]: half a revolution a minute, below what a tachometer shows (assumed). */
    private static final double CROSSING = 0.5 / 60;

    private SpeedSweep(
            Transmission unit, DutyPoint duty, List<Outcome> rising, List<Outcome> falling, List<Outcome> shown) {
        this.unit = unit;
        this.duty = duty;
        this.roles = Roles.of(unit);
        this.rising = List.copyOf(rising);
        this.falling = List.copyOf(falling);
        this.shown = List.copyOf(shown);
    }

    /** The unit. */
    public Transmission unit() {
        return unit;
    }

    /** Range, temperatures, torque. */
    public DutyPoint duty() {
        return duty;
    }

    /** Of the unit's parts. */
    public Roles roles() {
        return roles;
    }

    /**
     * States at the driving condition's own speed and at the one from which the line holds, rising; none where a shown state has that
     * speed, or the series does not reach it. They are shown beside the series and are no part of it.
     */
    public synchronized List<ShownState> lookedFor() {
        if (lookedFor == null) {
            lookedFor = LookedFor.in(this).stream()
                    .map(outcome -> new ShownState(outcome, outcome.state().map(this::assess)))
                    .toList();
        }
        return lookedFor;
    }

    /** The shown states and those looked for, in rising speed: a curve through all of them passes where the line begins to hold. */
    public List<ShownState> drawn() {
        List<ShownState> all = new ArrayList<>(lookedFor());
        for (int i = 0; i < shown.size(); i++) {
            all.add(new ShownState(shown.get(i), assessed().get(i)));
        }
        all.sort(Comparator.comparingDouble(ShownState::speed));
        return List.copyOf(all);
    }

    /** What each shown state means, empty where it was not found; assessed once. */
    public synchronized List<Optional<Assessment>> assessed() {
        if (assessed == null) {
            assessed = shown.stream()
                    .map(outcome -> outcome.state().map(this::assess))
                    .toList();
        }
        return assessed;
    }

    private Assessment assess(Solution state) {
        return Assessment.of(unit, duty, roles, state);
    }

    /** The outcome at each speed, in rising speed. */
    public List<Outcome> rising() {
        return rising;
    }

    /** The same speeds swept downwards, given here in rising speed too. */
    public List<Outcome> falling() {
        return falling;
    }

    /** The states that figures are taken from: the rising or the falling ones, or each solved from cold. */
    public List<Outcome> shown() {
        return shown;
    }

    /** Whether no gauge in this range tells it from another over the same speeds, see {@link TellingReading}. */
    public boolean readsAs(SpeedSweep other) {
        List<Integer> all = IntStream.range(0, shown().size()).boxed().toList();
        return TellingReading.of(List.of(this), List.of(other), all).isEmpty();
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
        Series series = new Series(unit.network());
        Conditions conditions = unit.conditions(duty);
        List<Outcome> rising = pass(series, conditions, speeds);
        List<Double> down = new ArrayList<>(speeds);
        Collections.reverse(down);
        List<Outcome> falling = new ArrayList<>(pass(series, conditions, down));
        Collections.reverse(falling);
        List<Outcome> shown =
                switch (from) {
                    case COLD -> {
                        List<Outcome> cold = new ArrayList<>();
                        for (double speed : speeds) {
                            series.restart();
                            series.solve(conditions.atSpeed(speed));
                            cold.add(series.outcome());
                        }
                        yield cold;
                    }
                    case RISING -> rising;
                    case FALLING -> falling;
                };
        return new SpeedSweep(unit, duty, rising, falling, shown);
    }

    /**
     * The rising sweep alone, for who does not ask for {@link #differences}; the falling one stands in it as the same.
     *
     * @param start state from which the slowest is started; empty for a cold start
     */
    public static SpeedSweep rising(Transmission unit, DutyPoint duty, List<Double> speeds, Optional<Solution> start) {
        Series series = new Series(unit.network());
        start.ifPresent(series::restart);
        List<Outcome> rising = going(series, unit.conditions(duty), speeds);
        return new SpeedSweep(unit, duty, rising, rising, rising);
    }

    private static List<Outcome> pass(Series series, Conditions conditions, List<Double> speeds) {
        series.restart();
        return going(series, conditions, speeds);
    }

    private static List<Outcome> going(Series series, Conditions conditions, List<Double> speeds) {
        List<Outcome> outcomes = new ArrayList<>();
        for (double speed : speeds) {
            series.solve(conditions.atSpeed(speed));
            outcomes.add(series.outcome());
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
        return crossing("onset", state -> {
            OptionalDouble set = unit.setPressure(state.conditions());
            double over = set.isPresent() ? state.pressure(roles.line()) / set.getAsDouble() - 1 : NOT_YET;
            return over >= 0 && !Figures.offSeat(roles, state) ? NOT_YET : over;
        });
    }

    /** The film in the hub over the speeds at which the unit runs; empty without a hub, or where none is known. */
    public Optional<RunningFilm> runningFilm() {
        return RunningFilm.of(this);
    }

    /** Lowest speed from which the secondary unloads at all higher speeds [rev/s]. */
    public OptionalDouble unloading() {
        return openFrom("unloading", roles.unloading());
    }

    /** Lowest speed from which the line is bypassed at all higher speeds [rev/s]. */
    public OptionalDouble bypassing() {
        return openFrom("bypassing", roles.bypass());
    }

    /** This sweep with all of these speeds found already, on the caller's thread. */
    SpeedSweep withCrossings() {
        onset();
        unloading();
        bypassing();
        return this;
    }

    /** What has not come about yet, by how much nobody knows, as {@link SignChange} takes it. */
    private static final double NOT_YET = Double.NEGATIVE_INFINITY;

    private OptionalDouble openFrom(String name, Optional<SpoolValve.Opening> opening) {
        return opening.isEmpty()
                ? OptionalDouble.empty()
                : crossing(name, state -> {
                    double open = state.own(unit.command().regulator(), OwnState.POSITION)
                            - opening.get().edge();
                    return open == 0 ? NOT_YET : open;
                });
    }

    private OptionalDouble crossing(String name, ToDoubleFunction<Solution> figure) {
        return crossings.computeIfAbsent(name, asked -> from(figure));
    }

    /** Lowest speed from which a figure is zero or more at all higher speeds asked, narrowed down between two of them. */
    private OptionalDouble from(ToDoubleFunction<Solution> figure) {
        int first = shown.size();
        while (first > 0
                && shown.get(first - 1)
                        .state()
                        .filter(state -> figure.applyAsDouble(state) >= 0)
                        .isPresent()) {
            first--;
        }
        if (first == shown.size()) {
            return OptionalDouble.empty();
        }
        Solution above = shown.get(first).state().orElseThrow();
        if (first == 0 || shown.get(first - 1).state().isEmpty()) {
            return OptionalDouble.of(above.conditions().speed());
        }
        return OptionalDouble.of(narrow(first, figure));
    }

    /**
     * Each state starts from the slowest at which the figure holds, as the engine would come to it from there; the first is asked where
     * the curve leads on which that speed and the next faster one lie.
     */
    private double narrow(int first, ToDoubleFunction<Solution> figure) {
        Series series = new Series(unit.network());
        Solution above = shown.get(first).state().orElseThrow();
        Solution below = shown.get(first - 1).state().orElseThrow();
        Solution high = above;
        SignChange search = new SignChange(
                above.conditions().speed(),
                figure.applyAsDouble(above),
                below.conditions().speed(),
                figure.applyAsDouble(below),
                CROSSING);
        if (first + 1 < shown.size()) {
            shown.get(first + 1)
                    .state()
                    .ifPresent(next -> search.follow(next.conditions().speed(), figure.applyAsDouble(next)));
        }
        while (search.open()) {
            double speed = search.next();
            series.restart(high);
            Optional<Solution> state =
                    series.solve(above.conditions().atSpeed(speed)) ? Optional.of(series.state()) : Optional.empty();
            double value = state.map(figure::applyAsDouble).orElse(NOT_YET);
            high = value >= 0 ? state.orElseThrow() : high;
            search.tell(speed, value);
        }
        return search.holds();
    }

    /** The state with the thinnest known film in the hub bushing; empty without a hub, or where all are in metal contact. */
    public Optional<Solution> thinnestFilm() {
        Optional<Placed> hub = roles.hub();
        return hub.flatMap(placed -> states().stream()
                .filter(state ->
                        state.measure(placed.name(), Bushing.LEAST_FILM).isPresent())
                .min(java.util.Comparator.comparingDouble(state ->
                        state.measure(placed.name(), Bushing.LEAST_FILM).orElseThrow())));
    }

    /** What the film in the hub is in one of its states, of a unit with a hub. */
    public RunningFilm filmIn(Solution state) {
        return RunningFilm.at(this, state);
    }

    /** Speeds [rev/s] at which the hub runs in metal contact, its film not known. */
    public List<Double> contactSpeeds() {
        Optional<Placed> hub = roles.hub();
        return states().stream()
                .filter(state -> hub.filter(placed -> state.measure(placed.name(), Bushing.METAL_CONTACT)
                                        .orElseThrow()
                                > 0)
                        .isPresent())
                .map(state -> state.conditions().speed())
                .toList();
    }

    /** What was asked for beyond what the circuit or its oil is good for. */
    public List<SweepCaveat> caveats() {
        return SweepCaveat.of(this);
    }

    /**
     * A speed at which the rising and the falling sweep end in different states.
     *
     * @param speed   [rev/s]
     * @param part    the part with two positions, or the line
     * @param rising  its position or pressure, rising
     * @param falling the same, falling
     */
    public record Hysteresis(double speed, String part, double rising, double falling) {}

    /** Speeds at which both sweeps were solved and differ. */
    public List<Hysteresis> differences() {
        List<Hysteresis> found = new ArrayList<>();
        for (int i = 0; i < rising.size(); i++) {
            if (rising.get(i).state().isPresent() && falling.get(i).state().isPresent()) {
                difference(rising.get(i).state().get(), falling.get(i).state().get())
                        .ifPresent(found::add);
            }
        }
        return found;
    }

    private Optional<Hysteresis> difference(Solution up, Solution down) {
        Hysteresis worst = null;
        double most = SAME;
        for (String part : up.states().keySet()) {
            for (OwnState state : up.states().get(part).keySet()) {
                double one = up.own(part, state);
                double other = down.own(part, state);
                double share = Math.abs(one - other) / Math.max(Math.max(Math.abs(one), Math.abs(other)), 1e-6);
                if (share > most) {
                    most = share;
                    worst = new Hysteresis(up.conditions().speed(), part, one, other);
                }
            }
        }
        return Optional.ofNullable(worst);
    }
}
