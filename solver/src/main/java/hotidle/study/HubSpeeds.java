package hotidle.study;

import hotidle.network.Conditions;
import hotidle.newton.Series;
import hotidle.study.HubAlike.Moved;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * The hub at the speeds asked. Where a unit alike has been solved at all of them, a speed is passed over at which neither the thinnest
 * film nor the largest load can be. Work space of one search.
 *
 * <pre>
 * Passed    film and load are read in this unit at the pressures of the unit alike. They are off by what pressures have moved: by how
 * over      much is seen where this unit is solved, and elsewhere taken for as much again to either side. What then is thicker than
 *           the thinnest film and less than the largest load that were found is not solved (ours)
 * Not       where nothing is known, or metal touches anywhere, or a film may hide between two speeds; and where the pressures alike
 * passed    are further from balance than they were where this unit was solved, as when a valve has opened or a pump is starved
 * </pre>
 */
final class HubSpeeds {

    /** A load that grows by this from one speed to the next rises steeply (ours) [-]. */
    private static final double STEEP = 1.1;

    /** Films and loads nearer than this are solved, however little pressures have moved (ours) [-]. */
    private static final double NEAR = 1e-3;

    /** Times as far from balance as where it was solved, at which a speed is not passed over (ours); a level counts squares [-]. */
    private static final double FAR = 4 * 4;

    private final Series series;
    private final Conditions conditions;
    private final String hub;
    private final List<Double> speeds;
    private final Map<Double, HubAlike> known;

    /** As solved, or as it would be at the pressures of the unit alike; nothing where neither is known. */
    private final HubState[] states;

    private final HubState[] alike;
    private final double[] level;
    private final BitSet asked = new BitSet();
    private Moved film = Moved.NOT;
    private Moved load = Moved.NOT;

    /**
     * Speeds.
     *
     * @param series     of the unit's network, standing where the slowest state is to start from
     * @param conditions of the duty
     * @param hub        name of the bushing
     * @param speeds     [rev/s], rising
     * @param known      of a unit alike by speed; what is known here then takes their place
     */
    HubSpeeds(Series series, Conditions conditions, String hub, List<Double> speeds, Map<Double, HubAlike> known) {
        this.series = series;
        this.conditions = conditions;
        this.hub = hub;
        this.speeds = speeds;
        this.known = known;
        states = new HubState[speeds.size()];
        alike = new HubState[speeds.size()];
        level = new double[speeds.size()];
    }

    /** Solves what has to be. */
    void solve() {
        BitSet next = known.keySet().containsAll(speeds) ? first() : all();
        while (!next.isEmpty()) {
            next.stream().forEach(this::solve);
            moved();
            next = left();
        }
        for (int i = asked.nextClearBit(0); i < speeds.size(); i = asked.nextClearBit(i + 1)) {
            known.computeIfPresent(speeds.get(i), (speed, one) -> one.onwards(film, load));
        }
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

    /** The slowest, the last that is not above the duty's own, and where the unit alike leads to thinnest film and largest load. */
    private BitSet first() {
        for (int i = 0; i < speeds.size(); i++) {
            Conditions here = conditions.atSpeed(speeds.get(i));
            alike[i] = HubState.of(
                    known.get(speeds.get(i)).state(),
                    series.measures(hub, known.get(speeds.get(i)).state(), here));
            level[i] = series.imbalance(known.get(speeds.get(i)).state(), here);
            states[i] = alike[i];
        }
        BitSet first = new BitSet();
        first.set(0);
        first.set((int) Math.max(
                0, speeds.stream().filter(speed -> speed <= conditions.speed()).count() - 1));
        first.set(least(HubState::film));
        first.set(least(state -> -state.unitLoad()));
        return first;
    }

    private int least(ToDoubleFunction<HubState> figure) {
        return IntStream.range(0, states.length)
                .boxed()
                .min(Comparator.comparingDouble(i -> figure.applyAsDouble(states[i])))
                .orElseThrow();
    }

    private void solve(int i) {
        HubAlike before = known.remove(speeds.get(i));
        int slower = asked.previousSetBit(i);
        if (asked.nextSetBit(i) >= 0 && slower >= 0 && states[slower] != null) {
            series.restart(states[slower].state());
        }
        if (before != null) {
            series.guess(
                    slower >= 0 && states[slower] != null && alike[slower] != null
                            ? before.state().moved(alike[slower].state(), states[slower].state())
                            : before.state());
        }
        asked.set(i);
        states[i] = null;
        if (series.solve(conditions.atSpeed(speeds.get(i)))) {
            states[i] = HubState.last(series, hub);
            known.put(speeds.get(i), HubAlike.of(states[i].state()));
        }
    }

    /** By how much film and load have moved where it was solved, and as much again to either side. */
    private void moved() {
        film = moved(HubState::film);
        load = moved(HubState::unitLoad);
    }

    private Moved moved(ToDoubleFunction<HubState> figure) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = asked.nextSetBit(0); i >= 0; i = asked.nextSetBit(i + 1)) {
            if (alike[i] != null && states[i] != null) {
                double by = figure.applyAsDouble(states[i]) / figure.applyAsDouble(alike[i]);
                least = Math.min(least, by);
                most = Math.max(most, by);
            }
        }
        return new Moved(least - (most - least), most + (most - least));
    }

    /** What is still to be solved. */
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
        double furthest = asked.stream().mapToDouble(i -> level[i]).max().orElseThrow();
        BitSet looked = new BitSet();
        brackets()
                .forEach(one ->
                        looked.set(one.first(), one.first() + one.states().size()));
        for (int i = left.nextSetBit(0); i >= 0; i = left.nextSetBit(i + 1)) {
            HubAlike one = known.get(speeds.get(i));
            double least = states[i].film() * one.film().then(film).least();
            double most = states[i].unitLoad() * one.load().then(load).most();
            boolean passed = least > (1 + NEAR) * thinnest
                    && most < (1 - NEAR) * heaviest
                    && level[i] <= FAR * furthest
                    && !looked.get(i);
            left.set(i, !passed);
        }
        return left;
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
