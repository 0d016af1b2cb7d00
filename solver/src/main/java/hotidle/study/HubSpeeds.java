package hotidle.study;

import hotidle.assess.Roles;
import hotidle.network.Conditions;
import hotidle.network.Network;
import hotidle.newton.Series;
import hotidle.newton.SolvedState;
import hotidle.study.HubAlike.Moved;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * The hub at the speeds asked. Where a unit alike has been solved at all of them, a speed is passed over at which neither the thinnest
 * film nor the largest load can be. Work space of one search. Past 300 lines, since what may be passed over is read off all that it has
 * found up to then.
 *
 * <pre>
 * Order     from where the unit alike begins to give its pump's oil back, speed by speed as the engine would come to it, until this
 *           one does and the film grows again; then the ends, and in the middle of what is left
 * Passed    a speed between two that were solved, where all three give oil back or none of them does, here and in the unit alike. Film
 * over      and load are read in this unit at the pressures of the unit alike. They are off by what pressures have moved: by how much
 *           is seen at the two, and between them taken for that, and for as much again as the two differ to either side. What then is
 *           thicker than the thinnest film and less than the largest load that were found is not solved (ours)
 * Not       where nothing is known, or metal touches anywhere, or a film may hide between two speeds
 * passed
 * </pre>
 */
final class HubSpeeds {

    /** A load that grows by this from one speed to the next rises steeply (ours) [-]. */
    private static final double STEEP = 1.1;

    /** Films and loads nearer than this are solved, however little pressures have moved (ours) [-]. */
    private static final double NEAR = 1e-3;

    /** Speeds below the one from which the unit alike gave oil back, from which on each is solved (ours). */
    private static final int BEFORE = 2;

    private final Series series;
    private final Conditions conditions;
    private final String hub;
    private final List<Double> speeds;
    private final Map<Double, HubAlike> known;
    private final PumpReturn back;

    /** As solved, or as it would be at the pressures of the unit alike; nothing where neither is known. */
    private final HubState[] states;

    /** Where this unit was solved, whether it gives oil back. */
    private final BitSet open = new BitSet();

    private final HubState[] alike;
    private final HubAlike[] before;
    private final BitSet asked = new BitSet();

    /**
     * Speeds.
     *
     * @param series     of the unit's network, standing where the slowest state is to start from
     * @param network    the same
     * @param roles      of its parts; it has a hub
     * @param conditions of the duty
     * @param speeds     [rev/s], rising
     * @param known      of a unit alike by speed; what is known here then takes their place
     */
    HubSpeeds(
            Series series,
            Network network,
            Roles roles,
            Conditions conditions,
            List<Double> speeds,
            Map<Double, HubAlike> known) {
        this.series = series;
        this.conditions = conditions;
        hub = roles.hub().orElseThrow().name();
        this.speeds = speeds;
        this.known = known;
        back = new PumpReturn(series, network, roles);
        states = new HubState[speeds.size()];
        alike = new HubState[speeds.size()];
        before = new HubAlike[speeds.size()];
    }

    /** Solves what has to be. */
    void solve() {
        if (!known.keySet().containsAll(speeds)) {
            all().stream().forEach(this::solve);
            return;
        }
        alike();
        rising();
        for (BitSet next = first(); !next.isEmpty(); next = left()) {
            next.stream().forEach(this::solve);
        }
        for (int i = asked.nextClearBit(0); i < speeds.size(); i = asked.nextClearBit(i + 1)) {
            known.put(speeds.get(i), passedOver(i));
        }
    }

    /** Reads the hub in this unit at the pressures of the unit alike. */
    private void alike() {
        for (int i = 0; i < speeds.size(); i++) {
            before[i] = known.get(speeds.get(i));
            alike[i] = HubState.of(
                    before[i].state(), series.measures(hub, before[i].state(), conditions.atSpeed(speeds.get(i))));
            states[i] = alike[i];
        }
    }

    /** From before the unit alike gives oil back to where this one does and the film grows again. */
    private void rising() {
        int from = Math.max(
                0,
                IntStream.range(0, speeds.size())
                                .filter(i -> before[i].open())
                                .findFirst()
                                .orElse(speeds.size())
                        - BEFORE);
        solve(0);
        if (from > 0) {
            solve(from);
        }
        int i = from + 1;
        if (open.get(from)) {
            i = 1;
        }
        while (i < speeds.size() && !past(i - 1)) {
            solve(i);
            i++;
        }
    }

    /** Whether oil is given back at a speed and the one below, and the film is thicker than there. */
    private boolean past(int i) {
        return i > 0
                && open.get(i)
                && open.get(i - 1)
                && states[i] != null
                && states[i - 1] != null
                && states[i].film() > states[i - 1].film();
    }

    /** What is known of a speed that is not solved, for the unit after this one. */
    private HubAlike passedOver(int i) {
        SolvedState led = led(i);
        HubState there = HubState.of(led, series.measures(hub, led, conditions.atSpeed(speeds.get(i))));
        return new HubAlike(
                led,
                open.get(asked.nextSetBit(i)),
                film(i).times(alike[i].film() / there.film()),
                load(i).times(alike[i].unitLoad() / there.unitLoad()));
    }

    /** The state alike, moved as those have that were solved beside it and give oil back, or do not, as in the unit alike. */
    private SolvedState led(int i) {
        SolvedState one = before[i].state();
        int low = asked.previousSetBit(i);
        int high = asked.nextSetBit(i);
        Optional<SolvedState> bySlower = led(one, i, low);
        Optional<SolvedState> byFaster = led(one, i, high);
        return bySlower.isPresent() && byFaster.isPresent()
                ? SolvedState.between(
                        bySlower.get(),
                        byFaster.get(),
                        (speeds.get(i) - speeds.get(low)) / (speeds.get(high) - speeds.get(low)))
                : bySlower.or(() -> byFaster).orElse(one);
    }

    private Optional<SolvedState> led(SolvedState one, int i, int by) {
        boolean moved = by >= 0
                && states[by] != null
                && before[by].open() == before[i].open()
                && before[by].open() == open.get(by);
        return moved ? Optional.of(one.moved(alike[by].state(), states[by].state())) : Optional.empty();
    }

    /** What was solved, in rising speed. */
    List<HubState> solved() {
        return asked.stream().mapToObj(i -> states[i]).filter(Objects::nonNull).toList();
    }

    /** Speeds at which no state was found [rev/s]. */
    List<Double> unsolved() {
        return asked.stream()
                .filter(i -> states[i] == null)
                .mapToObj(speeds::get)
                .toList();
    }

    private BitSet all() {
        BitSet all = new BitSet();
        all.set(0, speeds.size());
        return all;
    }

    /** The last, the last that is not above the duty's own, and where the unit alike leads to thinnest film and largest load. */
    private BitSet first() {
        BitSet first = new BitSet();
        first.set(speeds.size() - 1);
        first.set((int) Math.max(
                0, speeds.stream().filter(speed -> speed <= conditions.speed()).count() - 1));
        first.set(least(HubState::film));
        first.set(least(state -> -state.unitLoad()));
        first.andNot(asked);
        return first.isEmpty() ? left() : first;
    }

    private int least(ToDoubleFunction<HubState> figure) {
        return IntStream.range(0, states.length)
                .boxed()
                .min(Comparator.comparingDouble(i -> figure.applyAsDouble(states[i])))
                .orElseThrow();
    }

    private void solve(int i) {
        int slower = asked.previousSetBit(i);
        if (asked.nextSetBit(i) >= 0 && slower >= 0 && states[slower] != null) {
            series.restart(states[slower].state());
        }
        if (before[i] != null) {
            series.guess(led(i));
        }
        known.remove(speeds.get(i));
        asked.set(i);
        states[i] = null;
        if (series.solve(conditions.atSpeed(speeds.get(i)))) {
            states[i] = HubState.last(series, hub);
            open.set(i, back.open(series));
            known.put(speeds.get(i), HubAlike.of(states[i].state(), open.get(i)));
        }
    }

    /** By what the film alike is multiplied here. */
    private Moved film(int i) {
        return before[i].film().then(moved(i, HubState::film, HubAlike::film));
    }

    /** By what the load alike is multiplied here. */
    private Moved load(int i) {
        return before[i].load().then(moved(i, HubState::unitLoad, HubAlike::load));
    }

    /** By how much a figure has moved from the unit before to this one, at a speed between two that were solved. */
    private Moved moved(int i, ToDoubleFunction<HubState> figure, Function<HubAlike, Moved> since) {
        return step(asked.previousSetBit(i), figure, since).around(step(asked.nextSetBit(i), figure, since));
    }

    /** The same at one that was solved: of all that it has moved since it was solved last, what is new. */
    private Moved step(int i, ToDoubleFunction<HubState> figure, Function<HubAlike, Moved> since) {
        return since.apply(before[i]).upTo(figure.applyAsDouble(states[i]) / figure.applyAsDouble(alike[i]));
    }

    /** What is to be solved next. */
    private BitSet left() {
        BitSet left = all();
        left.andNot(asked);
        boolean plain = Arrays.stream(states).allMatch(one -> one != null && !one.touches());
        if (left.isEmpty() || !plain) {
            return left;
        }
        double thinnest = solved().stream().mapToDouble(HubState::film).min().orElseThrow();
        double heaviest =
                solved().stream().mapToDouble(HubState::unitLoad).max().orElseThrow();
        left.stream().forEach(i -> states[i] = alike[i].times(film(i).middle(), load(i).middle()));
        BitSet looked = new BitSet();
        brackets()
                .forEach(one ->
                        looked.set(one.first(), one.first() + one.states().size()));
        BitSet next = new BitSet();
        int high;
        for (int low = asked.nextSetBit(0); (high = asked.nextSetBit(low + 1)) > 0; low = high) {
            int slower = low;
            int faster = high;
            IntStream.range(low + 1, high)
                    .filter(i -> looked.get(i) || !passed(i, slower, faster, thinnest, heaviest))
                    .boxed()
                    .min(Comparator.comparingInt(i -> Math.abs(2 * i - slower - faster)))
                    .ifPresent(next::set);
        }
        return next;
    }

    /** Whether a speed between two that were solved need not be. */
    private boolean passed(int i, int low, int high, double thinnest, double heaviest) {
        boolean same = open.get(low) == open.get(high)
                && IntStream.of(low, i, high).allMatch(one -> before[one].open() == open.get(low));
        return same
                && alike[i].film() * film(i).least() > (1 + NEAR) * thinnest
                && alike[i].unitLoad() * load(i).most() < (1 - NEAR) * heaviest;
    }

    /**
     * Where to look closer.
     *
     * @param first  number of the first speed
     * @param states two or three neighbours
     * @param jumps  whether the load rises steeply among them, so that the film may fall between them though it rises from the first
     */
    record Bracket(int first, List<HubState> states, boolean jumps) {}

    /** Around the thinnest film, and wherever the load rises steeply, as when a chamber is unloaded. */
    List<Bracket> brackets() {
        List<HubState> found = Arrays.stream(states).filter(Objects::nonNull).toList();
        int thinnest = IntStream.range(0, found.size())
                .boxed()
                .min(Comparator.comparingDouble(i -> found.get(i).film()))
                .orElseThrow();
        int last = found.size() - 1;
        int from = Math.max(thinnest - 1, 0);
        int to = Math.min(thinnest + 1, last);
        boolean jumps = false;
        List<Bracket> brackets = new ArrayList<>();
        for (int i = 0; i < last; i++) {
            boolean steep = found.get(i + 1).load() > STEEP * found.get(i).load();
            jumps |= steep && i >= from && i < to;
            boolean same = from == i && to == Math.min(i + 2, last);
            if (steep && !same) {
                brackets.add(new Bracket(i, found.subList(i, Math.min(i + 2, last) + 1), true));
            }
        }
        brackets.add(0, new Bracket(from, found.subList(from, to + 1), jumps));
        return brackets;
    }
}
