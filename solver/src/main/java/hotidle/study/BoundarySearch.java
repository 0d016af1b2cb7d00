package hotidle.study;

import hotidle.assess.Margin;
import hotidle.study.search.SignChange;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Searches for where margins are gone while one number of a unit changes.
 *
 * @param speeds engine speeds searched for the hub's film and load [rev/s], rising
 */
record BoundarySearch(List<Double> speeds) {

    /** All margins of a unit at all its duties, in order; a state that is not found has none. */
    Map<Judgement.Key, Margin> all(Transmission unit) {
        return all(unit, chains(unit));
    }

    /** The same, each duty by its chain, which then stands there. */
    Map<Judgement.Key, Margin> all(Transmission unit, Map<String, DutyChain> chains) {
        return margins(judged(unit, chains));
    }

    /** A unit at all its duties, each by its chain, which then stands there. */
    static List<Judgement> judged(Transmission unit, Map<String, DutyChain> chains) {
        return unit.duties().stream()
                .map(duty -> chains.get(duty.name()).judged(unit))
                .toList();
    }

    /** All margins of judged duties, in order. */
    static Map<Judgement.Key, Margin> margins(List<Judgement> judged) {
        Map<Judgement.Key, Margin> found = new LinkedHashMap<>();
        judged.forEach(one -> one.margins().forEach(margin -> found.put(Judgement.Key.of(one.duty(), margin), margin)));
        return found;
    }

    /** Cold chains of all duties. */
    Map<String, DutyChain> chains(Transmission unit) {
        Map<String, DutyChain> chains = new LinkedHashMap<>();
        unit.duties().forEach(duty -> chains.put(duty.name(), new DutyChain(duty.name(), speeds)));
        return chains;
    }

    /** Chains that go on from where others stand. */
    static Map<String, DutyChain> branch(Map<String, DutyChain> chains) {
        Map<String, DutyChain> branched = new LinkedHashMap<>();
        chains.forEach((duty, chain) -> branched.put(duty, chain.branch()));
        return branched;
    }

    /** A margin that is not there any more, because its state is not found, is gone too. */
    static boolean gone(Optional<Margin> margin) {
        return margin.map(known -> known.verdict() == Margin.Verdict.FAILS).orElse(true);
    }

    /** Those of which it is not known whether they hold. */
    static List<Judgement.Key> undecided(Map<Judgement.Key, Margin> found) {
        return found.entrySet().stream()
                .filter(entry -> !entry.getValue().known())
                .map(Map.Entry::getKey)
                .toList();
    }

    /** Those of some margins that are gone from what was found. */
    static Set<Judgement.Key> gone(Map<Judgement.Key, Margin> found, Set<Judgement.Key> asked) {
        Set<Judgement.Key> gone = new LinkedHashSet<>(asked);
        gone.removeIf(key -> !gone(Optional.ofNullable(found.get(key))));
        return gone;
    }

    /**
     * A boundary.
     *
     * @param holds last number at which all hold
     * @param fails first number found at which one is gone
     * @param gone  those that are gone there
     * @param missing those of them that are not known there, because no state was found
     */
    record Boundary(double holds, double fails, List<Judgement.Key> gone, List<Judgement.Key> missing) {}

    /** Makes a unit for a number; empty where that is impossible. */
    interface UnitAt {
        Optional<Transmission> at(double number);
    }

    /** What was found at one number, and the chains that stand there. */
    record Probe(double number, Map<Judgement.Key, Margin> found, Map<String, DutyChain> chains) {

        /** The least headroom of some margins, minus infinity where one has no size. One that is below its need and yet not gone does not count. */
        private double least(Set<Judgement.Key> asked) {
            double least = Double.POSITIVE_INFINITY;
            for (Judgement.Key key : asked) {
                Margin margin = found.get(key);
                double headroom = margin == null ? Double.NEGATIVE_INFINITY : margin.headroom();
                if (margin != null && headroom < 0 && !margin.known()) {
                    continue;
                }
                least = Math.min(least, headroom);
            }
            return least;
        }
    }

    /**
     * Narrows a boundary between a number at which all hold and one at which some are gone; an impossible unit has none left. Each
     * unit is started from the nearest at which all held.
     *
     * @param holds with the chains that stand there
     * @param fails at which all of {@code gone} are gone
     */
    Boundary narrow(UnitAt made, Probe holds, Probe fails, Set<Judgement.Key> gone, double tolerance) {
        Set<Judgement.Key> left = gone;
        Probe good = holds;
        Probe bad = fails;
        Map<String, DutyChain.WorkSpace> work = new HashMap<>();
        SignChange search = new SignChange(good.number, good.least(left), fails.number, fails.least(left), tolerance);
        while (search.open()) {
            double number = search.next();
            Optional<Transmission> unit = made.at(number);
            if (unit.isEmpty()) {
                search.tell(number, Double.NEGATIVE_INFINITY);
                continue;
            }
            Probe end = at(unit.get(), number, left, good.chains, work);
            Set<Judgement.Key> now = gone(end.found, left);
            search.tell(number, end.least(left));
            if (now.isEmpty()) {
                good = end;
                continue;
            }
            bad = end;
            if (now.size() < left.size()) {
                left = now;
                search.restate(good.least(left), end.least(left));
            }
        }
        List<Judgement.Key> names = new ArrayList<>(left);
        names.sort(Comparator.comparing(Judgement.Key::kind));
        Set<Judgement.Key> known = bad.found.keySet();
        return new Boundary(
                search.holds(),
                search.fails(),
                names,
                names.stream().filter(key -> !known.contains(key)).toList());
    }

    private static Probe at(
            Transmission unit,
            double number,
            Set<Judgement.Key> asked,
            Map<String, DutyChain> chains,
            Map<String, DutyChain.WorkSpace> work) {
        Map<String, DutyChain> here = new LinkedHashMap<>(chains);
        Map<Judgement.Key, Margin> found = new HashMap<>();
        for (DutyPoint duty : unit.duties()) {
            Set<Judgement.Key> own = new LinkedHashSet<>(asked);
            own.removeIf(key -> !key.duty().equals(duty.name()));
            if (!own.isEmpty()) {
                DutyChain chain = chains.get(duty.name())
                        .branch(work.computeIfAbsent(duty.name(), any -> new DutyChain.WorkSpace()));
                here.put(duty.name(), chain);
                found.putAll(chain.margins(unit, own));
            }
        }
        return new Probe(number, found, here);
    }
}
