package hotidle.study;

import hotidle.assess.Margin;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Searches for where margins are gone while one number of a unit changes.
 *
 * @param speeds engine speeds searched for the hub's film and load [rev/s], rising
 */
record BoundarySearch(List<Double> speeds) {

    /** All margins of a unit at all its duties, in order; a state that is not found has none. */
    Map<Judgement.Key, Margin> all(Transmission unit) {
        Map<Judgement.Key, Margin> found = new LinkedHashMap<>();
        for (DutyPoint duty : unit.duties()) {
            for (Margin margin : Judgement.of(unit, duty, speeds).margins()) {
                found.put(Judgement.Key.of(duty, margin), margin);
            }
        }
        return found;
    }

    /** A margin that is not there any more, because its state is not found, is gone too. */
    static boolean gone(Optional<Margin> margin) {
        return margin.map(known -> known.verdict() == Margin.Verdict.FAILS).orElse(true);
    }

    /** Those of some margins that fail in a unit. */
    Set<Judgement.Key> gone(Transmission unit, Set<Judgement.Key> asked) {
        return asked.stream()
                .filter(key -> gone(Judgement.one(unit, unit.duty(key.duty()).orElseThrow(), speeds, key)))
                .collect(Collectors.toCollection(java.util.LinkedHashSet::new));
    }

    /** The same of all margins asked, each duty solved once. */
    Set<Judgement.Key> goneOfAll(Transmission unit, Set<Judgement.Key> asked) {
        Map<Judgement.Key, Margin> now = all(unit);
        return asked.stream()
                .filter(key -> gone(Optional.ofNullable(now.get(key))))
                .collect(Collectors.toCollection(java.util.LinkedHashSet::new));
    }

    /**
     * A boundary.
     *
     * @param holds last number at which all hold
     * @param fails first number found at which one is gone
     * @param gone  those that are gone there
     */
    record Boundary(double holds, double fails, List<Judgement.Key> gone) {}

    /** Makes a unit for a number; empty where that is impossible. */
    interface Made {
        Optional<Transmission> at(double number);
    }

    /** Narrows a boundary between a number at which all hold and one at which some are gone; an impossible unit has none left. */
    Boundary narrow(Made made, double holds, double fails, Set<Judgement.Key> gone, double tolerance) {
        double good = holds;
        double bad = fails;
        Set<Judgement.Key> left = gone;
        while (Math.abs(bad - good) > tolerance) {
            double middle = (good + bad) / 2;
            Optional<Transmission> unit = made.at(middle);
            Set<Judgement.Key> now = unit.isEmpty() ? left : gone(unit.get(), left);
            if (now.isEmpty()) {
                good = middle;
            } else {
                bad = middle;
                left = now;
            }
        }
        List<Judgement.Key> names = new ArrayList<>(left);
        names.sort(Comparator.comparing(Judgement.Key::kind));
        return new Boundary(good, bad, names);
    }
}
